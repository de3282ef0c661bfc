import { chatOf } from "../../store/shapes/chat-key.ts";
import { mayActAs, type Role } from "../../store/shapes/person.ts";

/* Who takes their place on another device by a code, and who may give whom one. */

interface Returning {
  readonly personId: string;
  readonly role: Role;
}

/**
 * Elsewhere than in the room an account is the place. A teacher comes in with the passphrase alone: a short code opens
 * only what a pupil or an aide may do.
 */
export function returnsByCode({ personId, role }: Returning): "yes" | "by-account" | "by-passphrase" {
  if (chatOf(personId) !== "room") return "by-account";
  return role === "teacher" ? "by-passphrase" : "yes";
}

/** Staff, to whoever has no more to say than they. */
export const mayGiveCode = (giver: Role, to: Returning): boolean =>
  mayActAs(giver, "aide") && mayActAs(giver, to.role);

/** As it is shown and read aloud: `K3M-T7P`. */
export const showCode = (code: string): string => `${code.slice(0, 3)}-${code.slice(3)}`.toUpperCase();
