import type { Role } from "../../../store/shapes/person.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { countOf, joinAnd } from "../../speech/wording.ts";
import type { Habits } from "../../../store/shapes/school.ts";
import type { SetupKey, ShownKey } from "../setup.ts";

/* Names and other words of people come made harmless, times and temperatures formatted. */

export const en = {
  titles: {
    name: "Name",
    language: "Language",
    zone: "Time zone",
    channel: "Class channel",
    roles: "Roles",
    bell: "Bell",
    sinks: "Places at the sinks",
    washplaces: "Wash places",
    dryslots: "Drying places",
    tanks: "Tanks",
    fix: "Minimum fixing time",
    wash: "Minimum washing time",
    agitation: "Agitation",
    sheets: "Films and developers",
    closedpages: "Calls to closed pages",
    threads: "A thread for each run",
  } satisfies Record<ShownKey, string>,

  languages: { en: "English", de: "German" } satisfies Record<Language, string>,
  noneYet: "none yet",
  noChannelYet: "none yet",
  channelSet: (name: string | null) => name ?? "set",
  channelStandsIn: (name: string | null) => `${name ?? "where I was called first"}, until you choose one`,
  channelLacks: (name: string | null, missing: readonly string[]) =>
    `${name ?? "set"}, but I may not ${joinAnd(missing)} there`,
  roles: (teacher: string | null, aide: string | null) =>
    `teacher: ${teacher ?? "whoever manages the server"}; aide: ${aide ?? "nobody"}`,
  noPeriods: "no periods yet",
  washPlaces: (tanks: number) => countOf(tanks, "tank"),
  drySlots: (films: number, time: string) => `${countOf(films, "film")}, ${time}`,
  wash: (time: string, { washMethod, washAid, stop }: Pick<Habits, "washMethod" | "washAid" | "stop">) =>
    `${time} ${washMethod === "running" ? "of running water" : "in fills"}${washAid ? ", with wash aid" : ""}, after ${stop === "acid" ? "a stop bath" : "rinses in place of a stop bath"}`,
  asSheet: "as each data sheet has it",
  allowed: "allowed, through the phone maker's service",
  notAllowed: "not allowed",
  noThread: "no, calls come by direct message",
  ownThreads: "yes, for runs started in the class channel",
  openThreads:
    "yes, for runs started in the class channel; everybody there sees them, since I may not Create Private Threads",
  threadsLack: (missing: readonly string[]) =>
    `yes, but I may not ${joinAnd(missing)} there, and calls come by direct message`,
  sheets: (count: number) => countOf(count, "data sheet"),

  questions: {
    name: "What is the class called? `/class setup name:…`",
    zone: (zone: string) => `In which time zone is the class? \`/class setup zone:…\` (${zone} now)`,
    channel:
      "Which channel speaks to the whole class? Choose it with `/class setup channel:`, or press the button for this one.",
    roles:
      "Which of the server's roles makes an aide, which a teacher? `/class setup aiderole:… teacherrole:…`",
    bell: "When does the class meet? `/class periods days:mon, wed from:18:00 to:20:30`",
    sinks: "How many can stand at the sinks with a tank at once, from pour-in to the end of the fixer?",
    washplaces: "How many tanks can wash at once?",
    dryslots: "How many films can hang to dry at once?",
    tanks: "Which tanks are there? `/tank add numbers:1-12 reels:2 volume:500 ml`; once for each kind.",
    fix: "How long does every film fix at least? (A slow fixer makes a plan longer, never shorter.)",
    wash: "How long does every film wash at least, and how? Handbooks ask for 20 to 30 min of running water, or 5 min after a wash aid.",
    agitation:
      "Does the class agitate in one way for every film? Times of a data sheet hold for its own way. `/class setup agitation:30/5/60`",
    sheets: "Which film in which developer? Add the times from the maker's data sheet: `/sheet add`.",
  } satisfies Record<SetupKey, string | ((zone: string) => string)>,
  labels: {
    keepName: "Keep this name",
    keepZone: "Keep this zone",
    thisChannel: "This channel",
    managersOnly: "Nobody but the server's managers",
    running: (time: string) => `${time} running`,
    afterAid: (time: string) => `${time} after wash aid`,
    fills: (count: number) => `${count} fills, no running water`,
    asSheet: "As each data sheet has it",
    sheets: "Films and developers",
    /** For a teacher who reads English, in a class that is spoken to in another language. */
    speakMine: "Speak English to the class",
  },

  done: (named: readonly string[]) => `Noted: ${joinAnd(named)}.`,
  allSet: (parts: number) => `**All ${parts} parts are set.** Any of them can be set again.`,
  someSet: (count: number, parts: number) =>
    `**${count} of ${parts}** parts ${count === 1 ? "is" : "are"} set.`,
  part: (title: string, value: string, isSet: boolean) =>
    `- ${title}: ${value}${isSet ? "" : " _(not set)_"}`,
  next: (title: string, question: string) => `**Next: ${title}.** ${question}`,
  inviteToChannel: "Invite: everybody who can see the class's channel can use me there.",
  inviteToRoom: (code: string) =>
    `Invite: open the room's page and enter the class code **${code}** with a name. Aides and teachers add the passphrase that was shown at the first start.`,

  named: {
    name: "the name",
    language: "the language",
    zone: "the time zone",
    channel: "the class channel",
    roles: "the roles",
    sinks: "the places at the sinks",
    washplaces: "the wash places",
    dryslots: "the drying places",
    fix: "the minimum fixing time",
    wash: "the minimum washing time",
    agitation: "the agitation",
    dry: "the drying time",
    room: "the room's temperature",
    sleeves: "the frames in a strip",
    pourout: "the seconds for pouring out",
    warn: "the call to get ready",
    closedpages: "calls to closed pages",
    threads: "the thread for each run",
  },

  unknownZone: (typed: string, near: readonly string[]) =>
    `There is no time zone "${typed}". ${near.length > 0 ? `Is it ${near.join(", ")}?` : "Write it like Europe/Lisbon."}`,
  noChannel:
    "This call came from no channel I can speak in. Give the command in the channel that is to be the class's.",
  noChannels: "The room has no channels: what is said to the class is seen by everyone in it.",
  noThreads: "The room has no threads: calls come to each person's own page.",
  noClosedPages: "This chat calls phones by itself, whether it is open or not: there is nothing to allow.",
  rolesByPassphrase:
    "In the room, roles go by passphrase: an aide or a teacher joins with the one shown at the first start. Or give a person a role: `/class role person:… role:aide`.",

  roleWords: { student: "student", aide: "aide", teacher: "teacher" } satisfies Record<Role, string>,
  role: (name: string, role: Role) =>
    `${name} is ${{ student: "a student", aide: "an aide", teacher: "a teacher" }[role]} of this class from now on.`,
  rolesByChat:
    "Here, roles come from the server's own roles. Name them with `/class setup aiderole:… teacherrole:…`, then give the person that role in the server.",
  unknownPerson: (name: string) => `Nobody in this class is called ${name}.`,
  lastTeacher: (name: string) => `${name} is the class's only teacher. Make somebody else a teacher first.`,
};
export type SetupWords = typeof en;
