export const ROLES = ["student", "aide", "teacher"] as const;

export type Role = (typeof ROLES)[number];

export function mayActAs(role: Role, needed: Role): boolean {
  return ROLES.indexOf(role) >= ROLES.indexOf(needed);
}

/** A person's id carries its chat in front: `room:amina`, `discord:81384788765712384`. */
export interface Person {
  readonly id: string;
  readonly name: string;
}

/** The name under which what an erased person did goes on. */
export const NAMELESS = "Somebody";
