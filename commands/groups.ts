import type { Role } from "../store/shapes/person.ts";

/*
 * What a person wants to do, for lists of all commands: a command's noun says where it stands, so that a new verb is in
 * its group unasked. A new noun is given its group here.
 */

const NOUNS = {
  develop: ["plan", "run"],
  print: ["contact", "print", "tray"],
  rolls: ["roll"],
  chemistry: ["mix", "batch"],
  times: ["sheet"],
  class: ["class", "tank"],
  help: ["help", "ask", "caution"],
  mine: ["mine"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type Group = keyof typeof NOUNS;
export const GROUPS = Object.keys(NOUNS) as readonly Group[];

/** What each role does most stands first; the others follow as they are listed above. */
const FIRST: Readonly<Record<Role, readonly Group[]>> = {
  student: ["develop", "print", "rolls"],
  aide: ["chemistry", "develop", "print"],
  teacher: ["class", "chemistry", "times"],
};

/** The few that each role needs on most days: above all groups. */
const DAILY: Readonly<Record<Role, readonly string[]>> = {
  student: ["plan", "print strip", "tray plan"],
  aide: ["batch test", "mix dilute", "batch mix"],
  teacher: ["class say", "class turns", "batch mix"],
};

const nounOf = (command: string): string => command.split(" ", 1)[0] ?? "";

/** Every group in which a command stands by its noun: one, or none where its noun was given no group. */
export function groupsOf(command: string): readonly Group[] {
  return GROUPS.filter((group) => (NOUNS[group] as readonly string[]).includes(nounOf(command)));
}

export interface Grouped<C> {
  readonly group: Group;
  /** By noun, as the nouns stand above; within a noun in the order they came in. Never empty. */
  readonly cards: readonly C[];
}

/** Commands by what one wants to do with them, this role's groups first. None is left out: what has no group stands with help. */
export function inGroups<C extends { readonly name: string }>(cards: readonly C[], role: Role): Grouped<C>[] {
  const order = [...new Set([...FIRST[role], ...GROUPS])];
  const groupOf = ({ name }: C): Group => groupsOf(name)[0] ?? "help";
  return order
    .map((group) => ({
      group,
      cards: byNoun(
        cards.filter((card) => groupOf(card) === group),
        NOUNS[group],
      ),
    }))
    .filter((each) => each.cards.length > 0);
}

function byNoun<C extends { readonly name: string }>(cards: readonly C[], nouns: readonly string[]): C[] {
  const at = ({ name }: C): number => nouns.indexOf(nounOf(name));
  return [...cards].sort((a, b) => at(a) - at(b));
}

/** In the order of the need; one that is not among the cards is left out. */
export function dailyOf<C extends { readonly name: string }>(cards: readonly C[], role: Role): C[] {
  return DAILY[role].flatMap((name) => cards.find((card) => card.name === name) ?? []);
}
