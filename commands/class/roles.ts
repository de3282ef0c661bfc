import type { Role } from "../../store/shapes/person.ts";
import type { Habits } from "../../store/shapes/school.ts";

/** A member of a chat that has roles of its own. */
export interface ChatMember {
  readonly roleIds: readonly string[];
  readonly roleNames: readonly string[];
  /** May change the place itself: a class can't lock its owner out. */
  readonly managesServer: boolean;
}

/** Who a member of such a chat is to the class, by the roles the class has named; the higher one counts. */
export function roleOfMember(
  habits: Pick<Habits, "aideRole" | "teacherRole"> | undefined,
  member: ChatMember,
): Role {
  if (member.managesServer || hasRole(member, habits?.teacherRole ?? null)) return "teacher";
  return hasRole(member, habits?.aideRole ?? null) ? "aide" : "student";
}

/** A role is written as its name, its number, or as the chat puts it into text: `<@&81384788765712384>`. */
function hasRole({ roleIds, roleNames }: ChatMember, wanted: string | null): boolean {
  if (wanted === null) return false;
  const id = /^(?:<@&)?(\d{15,20})>?$/.exec(wanted.trim())?.[1];
  if (id !== undefined) return roleIds.includes(id);
  const name = wanted.trim().replace(/^@/, "").toLowerCase();
  return roleNames.some((each) => each.toLowerCase() === name);
}
