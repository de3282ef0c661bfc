import type { Action, Reply, Role } from "../define.ts";
import { makeLine } from "../line.ts";
import { describeAgitation } from "../plan/step-words.ts";
import { countOf, joinAnd, plain, saySeconds } from "../wording.ts";
import type { Habits } from "./habits.ts";
import { formatPeriod } from "./periods.ts";
import { isSet, keysFor, type SetupFacts, type SetupKey } from "./setup.ts";

const TITLES = {
  name: "Name",
  zone: "Time zone",
  channel: "Class channel",
  roles: "Roles",
  bell: "Bell",
  sinks: "Places at the sinks",
  washplaces: "Wash places",
  dryslots: "Drying places",
  tanks: "Tanks",
  fix: "Least fixing",
  wash: "Least washing",
  agitation: "Agitation",
  sheets: "Films and developers",
} as const satisfies Record<SetupKey, string>;

const VALUES = {
  name: ({ class: { name } }) => plain(name),
  zone: ({ class: { zone } }) => zone,
  channel: ({ channelRef, missingPermissions }) =>
    channelRef === null
      ? "none yet"
      : missingPermissions.length > 0
        ? `set, but I may not ${joinAnd(missingPermissions)} there`
        : "set",
  roles: ({ class: { habits } }) => rolesOf(habits),
  bell: ({ class: { habits } }) =>
    habits.periods.length === 0 ? "no periods yet" : habits.periods.map(formatPeriod).map(plain).join("; "),
  sinks: ({ class: { habits } }) => `${habits.sinks}`,
  washplaces: ({ class: { habits } }) => countOf(habits.washPlaces, "tank"),
  dryslots: ({ class: { habits } }) =>
    `${countOf(habits.drySlots, "film")}, ${saySeconds(habits.drySeconds)}`,
  tanks: ({ tanks }) => (tanks === 0 ? "none yet" : `${tanks}`),
  fix: ({ class: { habits } }) => saySeconds(habits.fixMinSeconds),
  wash: ({ class: { habits } }) =>
    `${saySeconds(habits.washMinSeconds)} ${habits.washMethod === "running" ? "of running water" : "in fills"}${habits.washAid ? ", with wash aid" : ""}, after ${habits.stop === "acid" ? "a stop bath" : "rinses in place of a stop bath"}`,
  agitation: ({ class: { habits } }) =>
    habits.agitation === null ? "as each sheet has it" : describeAgitation(habits.agitation),
  sheets: ({ sheets }) => (sheets === 0 ? "none yet" : countOf(sheets, "sheet")),
} as const satisfies Record<SetupKey, (facts: SetupFacts) => string>;

function rolesOf({ aideRole, teacherRole }: Habits): string {
  const teacher = teacherRole === null ? "whoever manages the server" : plain(teacherRole);
  return `teacher: ${teacher}; aide: ${aideRole === null ? "nobody" : plain(aideRole)}`;
}

interface Question {
  readonly text: string;
  readonly actions: readonly Action[];
}

const set = (label: string, options: Record<string, string | number>): Action => ({
  label,
  line: makeLine("class setup", options),
});
const numbers = (option: string, choices: readonly number[]): Action[] =>
  choices.map((choice) => set(`${choice}`, { [option]: choice }));

/** What is asked where a part is missing, with the usual answers as buttons. */
const QUESTIONS = {
  name: ({ class: { name } }) => ({
    text: "What is the class called? `/class setup name:…`",
    actions: [set("Keep this name", { name })],
  }),
  zone: ({ class: { zone } }) => ({
    text: `In which time zone does its clock hang? \`/class setup zone:…\` (${zone} now)`,
    actions: [set("Keep this zone", { zone })],
  }),
  channel: () => ({
    text: "Which channel speaks to the whole class? Go there and press the button.",
    actions: [set("This channel", { channel: "here" })],
  }),
  roles: () => ({
    text: "Which of the server's roles makes an aide, which a teacher? `/class setup aiderole:… teacherrole:…`",
    actions: [set("Nobody but the server's managers", { aiderole: "none", teacherrole: "none" })],
  }),
  bell: () => ({
    text: "When does the class meet? `/class bell days:mon, wed from:18:00 to:20:30`",
    actions: [],
  }),
  sinks: () => ({
    text: "How many can stand at the sinks with a tank at once, from pour-in to the end of the fixer?",
    actions: numbers("sinks", [6, 10, 15, 20, 30]),
  }),
  washplaces: () => ({
    text: "How many tanks can wash at once?",
    actions: numbers("washplaces", [2, 4, 6, 8, 12]),
  }),
  dryslots: () => ({
    text: "How many films can hang to dry at once?",
    actions: numbers("dryslots", [6, 12, 20, 30, 40]),
  }),
  tanks: () => ({
    text: "Which tanks are there? `/tank add numbers:1-12 reels:2 volume:500 ml`; once for each kind.",
    actions: [],
  }),
  fix: () => ({
    text: "How long does every film fix at least? (A slow fixer makes a plan longer, never shorter.)",
    actions: [
      set("4 min", { fixmin: "4 min" }),
      set("5 min", { fixmin: "5 min" }),
      set("8 min", { fixmin: "8 min" }),
      set("10 min", { fixmin: "10 min" }),
    ],
  }),
  wash: () => ({
    text: "How long does every film wash at least, and how? Handbooks ask for 20 to 30 min of running water, or 5 min after a wash aid.",
    actions: [
      set("20 min running", { washmin: "20 min", washmethod: "running", washaid: "no" }),
      set("5 min after wash aid", { washmin: "5 min", washmethod: "running", washaid: "yes" }),
      set("10 fills, no running water", { washmethod: "fill-dump", washaid: "no" }),
    ],
  }),
  agitation: () => ({
    text: "Does the class agitate in one way for every film? Times of a sheet hold for the sheet's own way. `/class setup agitation:30/5/60`",
    actions: [set("As each sheet has it", { agitation: "sheet" })],
  }),
  sheets: () => ({
    text: "Which film in which developer? Add the times from the maker's own sheet: `/sheet add`.",
    actions: [{ label: "Films and developers", line: "sheet list" }],
  }),
} as const satisfies Record<SetupKey, (facts: SetupFacts) => Question>;

/** What is set, what stands at its default, and the next question. `done`: what this call has changed. */
export function setupReply(facts: SetupFacts, done: readonly string[]): Reply {
  const keys = keysFor(facts);
  const missing = keys.filter((key) => !isSet(key, facts));
  const next = missing[0];
  const question: Question | undefined = next && QUESTIONS[next](facts);
  const head =
    missing.length === 0
      ? `**All ${keys.length} parts are set.** Any of them can be set again.`
      : `**${keys.length - missing.length} of ${keys.length}** parts are set.`;
  const text = [
    done.length > 0 ? `Noted: ${joinAnd(done)}.` : "",
    head,
    ...keys.map((key) => `- ${TITLES[key]}: ${VALUES[key](facts)}${isSet(key, facts) ? "" : " _(not set)_"}`),
    permissionWords(facts.missingPermissions),
    inviteWords(facts),
    question ? `**Next: ${TITLES[next as SetupKey]}.** ${question.text}` : "",
  ]
    .filter(Boolean)
    .join("\n");
  return {
    text,
    fields: {
      parts: keys.length,
      set: keys.length - missing.length,
      missing,
      next: next ?? null,
      joinCode: facts.joinCode,
    },
    actions: question?.actions ?? [],
  };
}

/** How the server's owner gives what the bot lacks; the names are the platform's own. */
export function permissionWords(missing: readonly string[]): string {
  if (missing.length === 0) return "";
  return `**I lack ${joinAnd(missing)} in this channel.** Open the channel's settings, then Permissions, choose my role, and turn on ${joinAnd(missing)}.`;
}

function inviteWords({ chat, joinCode }: SetupFacts): string {
  if (chat !== "room") return "Invite: everybody who can see the class's channel can use me there.";
  if (joinCode === null) return "";
  const code = `${joinCode.slice(0, 3)}-${joinCode.slice(3)}`.toUpperCase();
  return `Invite: open the room's page and enter the class code **${code}** with a name. Aides and teachers add the passphrase that was shown at the first start.`;
}

export const NAMED = {
  name: "the name",
  zone: "the time zone",
  channel: "the class channel",
  roles: "the roles",
  sinks: "the places at the sinks",
  washplaces: "the wash places",
  dryslots: "the drying places",
  fix: "the least fixing",
  wash: "the washing",
  agitation: "the agitation",
  dry: "the drying time",
  room: "the room's temperature",
  sleeves: "the frames in a strip",
  pourout: "the seconds for pouring out",
  warn: "the call to get ready",
} as const;

export const UNKNOWN_ZONE = (typed: string, near: readonly string[]): string =>
  `I know no time zone "${plain(typed)}". ${near.length > 0 ? `Is it ${near.join(", ")}?` : "Write it like Europe/Lisbon."}`;
export const NO_CHANNEL =
  "This call came from no channel I can speak in. Give the command in the channel that is to be the class's.";
export const NO_CHANNELS = "The room has no channels: what is said to the class is seen by everyone in it.";
export const ROLES_BY_PASSPHRASE =
  "In the room, roles go by passphrase: an aide or a teacher joins with the one shown at the first start. Or give a person a role: `/class role person:… role:aide`.";
export const HABIT_RANGE = (option: string, least: number, most: number): string =>
  `${option} goes from ${saySeconds(least)} to ${saySeconds(most)}.`;

const A_ROLE = { student: "a student", aide: "an aide", teacher: "a teacher" } as const satisfies Record<
  Role,
  string
>;

export function roleReply(name: string, role: Role): Reply {
  return { text: `${plain(name)} is ${A_ROLE[role]} of this class from now on.`, fields: { name, role } };
}

export const ROLES_BY_CHAT =
  "Here, roles come from the server's own roles. Name them with `/class setup aiderole:… teacherrole:…`, then give the person that role in the server.";
export const UNKNOWN_PERSON = (name: string): string => `I know nobody called ${plain(name)} in this class.`;
export const LAST_TEACHER = (name: string): string =>
  `${plain(name)} is the class's only teacher. Make somebody else a teacher first.`;
