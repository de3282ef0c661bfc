import { permissionWords } from "../board-words.ts";
import type { Action, Reply } from "../../define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { inEach, spokenLanguage } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { describeAgitation } from "../../sheet/step-words.ts";
import { washShortWords } from "../../plan/caution-words.ts";
import { washTime, type WashTime } from "../../plan/wash.ts";
import { plain, saySeconds } from "../../speech/wording.ts";
import type { Habits } from "../../../store/shapes/school.ts";
import { formatPeriod } from "../period-words.ts";
import { isSet, keysFor, SETUP_KEYS, type SetupFacts, type SetupKey, type ShownKey } from "../setup.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const VALUES = {
  name: ({ class: { name } }) => plain(name),
  language: ({ class: { habits } }) => words().languages[habits.language],
  zone: ({ class: { zone } }) => zone,
  channel: ({ channelRef, channelName, missingPermissions, class: { habits } }) => {
    if (channelRef === null) return words().noChannelYet;
    const name = channelName === null ? null : plain(channelName);
    if (missingPermissions.length > 0) return words().channelLacks(name, missingPermissions);
    return habits.answered.includes("channel") ? words().channelSet(name) : words().channelStandsIn(name);
  },
  roles: ({ class: { habits } }) => rolesOf(habits),
  bell: ({ class: { habits } }) =>
    habits.periods.length === 0 ? words().noPeriods : habits.periods.map(formatPeriod).map(plain).join("; "),
  sinks: ({ class: { habits } }) => `${habits.sinks}`,
  washplaces: ({ class: { habits } }) => words().washPlaces(habits.washPlaces),
  dryslots: ({ class: { habits } }) => words().drySlots(habits.drySlots, saySeconds(habits.drySeconds)),
  tanks: ({ tanks }) => (tanks === 0 ? words().noneYet : `${tanks}`),
  fix: ({ class: { habits } }) => saySeconds(habits.fixMinSeconds),
  wash: ({ class: { habits } }) => words().wash(saySeconds(usualWash(habits).seconds), habits),
  agitation: ({ class: { habits } }) =>
    habits.agitation === null ? words().asSheet : describeAgitation(habits.agitation),
  closedpages: ({ class: { habits } }) => (habits.push ? words().allowed : words().notAllowed),
  threads: ({ class: { habits }, threads }) => {
    if (!habits.threads) return words().noThread;
    const { missing = [], areOpen = false } = threads ?? {};
    if (missing.length > 0) return words().threadsLack(missing);
    return areOpen ? words().openThreads : words().ownThreads;
  },
  sheets: ({ sheets }) => (sheets === 0 ? words().noneYet : words().sheets(sheets)),
} as const satisfies Record<ShownKey, (facts: SetupFacts) => string>;

/** As a plan at 20 °C has it. */
function usualWash({ washMethod, washAid, washMinSeconds }: Habits): WashTime {
  return washTime(washMethod, washAid, washMinSeconds, 200, 300);
}

/** Said where the class sets it, and not again in every plan. */
function washWords({ class: { habits } }: SetupFacts, done: readonly NamedKey[]): string {
  const wash = usualWash(habits);
  return done.includes("wash") && wash.isShort ? washShortWords(wash) : "";
}

function rolesOf({ aideRole, teacherRole }: Habits): string {
  const named = (role: string | null): string | null => (role === null ? null : plain(role));
  return words().roles(named(teacherRole), named(aideRole));
}

const set = (label: string, options: Record<string, string | number>): Action => ({
  label,
  line: makeLine("class setup", options),
});
const numbers = (option: string, choices: readonly number[]): Action[] =>
  choices.map((choice) => set(`${choice}`, { [option]: choice }));
const minutes = (count: number): string => `${count} min`;

/** The usual answers where a part is missing, as buttons. */
const ANSWERS = {
  name: ({ class: { name } }) => [set(words().labels.keepName, { name })],
  zone: ({ class: { zone } }) => [set(words().labels.keepZone, { zone })],
  channel: () => [set(words().labels.thisChannel, { channel: "here" })],
  roles: () => [set(words().labels.managersOnly, { aiderole: "none", teacherrole: "none" })],
  bell: () => [],
  sinks: () => numbers("sinks", [6, 10, 15, 20, 30]),
  washplaces: () => numbers("washplaces", [2, 4, 6, 8, 12]),
  dryslots: () => numbers("dryslots", [6, 12, 20, 30, 40]),
  tanks: () => [],
  fix: () => [4, 5, 8, 10].map((count) => set(minutes(count), { fixmin: minutes(count) })),
  wash: () => [
    set(words().labels.running(minutes(20)), { washmin: "20 min", washmethod: "running", washaid: "no" }),
    set(words().labels.afterAid(minutes(5)), { washmin: "5 min", washmethod: "running", washaid: "yes" }),
    set(words().labels.fills(10), { washmethod: "fill-dump", washaid: "no" }),
  ],
  agitation: () => [set(words().labels.asSheet, { agitation: "sheet" })],
  sheets: () => [{ label: words().labels.sheets, line: "sheet list" }],
} as const satisfies Record<SetupKey, (facts: SetupFacts) => Action[]>;

function askFor(key: SetupKey, { class: { zone } }: SetupFacts): string {
  const question = words().questions[key];
  return words().next(words().titles[key], typeof question === "string" ? question : question(zone));
}

/** A teacher who reads another language than the class is spoken to in may want theirs for it. */
function languageActions({ class: { habits } }: SetupFacts): Action[] {
  const mine = spokenLanguage();
  return mine === habits.language || habits.answered.includes("language")
    ? []
    : [set(words().labels.speakMine, { language: mine })];
}

/** What is set, what stands at its default, and the next question. `done`: what this call has changed. */
export function setupReply(facts: SetupFacts, done: readonly NamedKey[]): Reply {
  const keys = keysFor(facts);
  const missing = keys.filter((key) => !isSet(key, facts));
  const next = missing[0];
  const head =
    missing.length === 0
      ? words().allSet(keys.length)
      : words().someSet(keys.length - missing.length, keys.length);
  const text = [
    done.length > 0 ? words().done(done.map((key) => words().named[key])) : "",
    head,
    ...shownOf(keys, facts).map((key) =>
      words().part(words().titles[key], VALUES[key](facts), !isAsked(key) || isSet(key, facts)),
    ),
    washWords(facts, done),
    permissionWords(missingOf(facts), facts.channelName),
    inviteWords(facts),
    next ? askFor(next, facts) : "",
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
      language: facts.class.habits.language,
      threads: facts.class.habits.threads,
      joinCode: facts.joinCode,
    },
    actions: [...(next ? ANSWERS[next](facts) : []), ...languageActions(facts)],
  };
}

/** Of the class's channel, each once. */
function missingOf({ missingPermissions, threads, class: { habits } }: SetupFacts): string[] {
  return [...new Set([...missingPermissions, ...(habits.threads ? (threads?.missing ?? []) : [])])];
}

/** The language stands after the name, where calls come at the end: they have a default that serves, and are not asked for. */
function shownOf(keys: readonly SetupKey[], { chat }: SetupFacts): ShownKey[] {
  const shown = keys.flatMap((key): ShownKey[] => (key === "name" ? ["name", "language"] : [key]));
  return [...shown, chat === "room" ? "closedpages" : "threads"];
}

const isAsked = (key: ShownKey): key is SetupKey => SETUP_KEYS.some((each) => each === key);

function inviteWords({ chat, joinCode }: SetupFacts): string {
  if (chat !== "room") return words().inviteToChannel;
  if (joinCode === null) return "";
  return words().inviteToRoom(`${joinCode.slice(0, 3)}-${joinCode.slice(3)}`.toUpperCase());
}

/** What a call can set, as it is named in the answer. */
export type NamedKey = keyof typeof en.named;

export const unknownZone = (typed: string, near: readonly string[]): string =>
  words().unknownZone(plain(typed), near);
export const noChannel = (): string => words().noChannel;
export const noChannels = (): string => words().noChannels;
export const noClosedPages = (): string => words().noClosedPages;
export const noThreads = (): string => words().noThreads;
export const rolesByPassphrase = (): string => words().rolesByPassphrase;

/** How a member is listed: `Mina (student)`. */
export const memberLabel = (name: string, role: Role): string => `${name} (${words().roleWords[role]})`;

export function roleReply(name: string, role: Role): Reply {
  return { text: words().role(plain(name), role), fields: { name, role } };
}

export const rolesByChat = (): string => words().rolesByChat;
export const unknownPerson = (name: string): string => words().unknownPerson(plain(name));
export const lastTeacher = (name: string): string => words().lastTeacher(plain(name));
