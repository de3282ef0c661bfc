import { chatOf } from "../../../store/shapes/chat-key.ts";
import { z } from "zod";
import { type Context, defineCommand, type Here, type InputOf, picks, UserError } from "../../define.ts";
import { ROLES } from "../../../store/shapes/person.ts";
import { LANGUAGES } from "../../../store/shapes/language.ts";
import { parseAgitation } from "../../speech/measure.ts";
import { textIn, wholeIn } from "../../speech/shaped.ts";
import { durationIn, temperatureIn, wordMeasureFault } from "../../speech/quantity.ts";
import { habitsSchema, type Habits } from "../../../store/shapes/school.ts";
import { answer, type SetupFacts, type SetupKey } from "../setup.ts";
import * as words from "./reply.ts";
import { allowClosedPages } from "../closed-pages.ts";
import { callWaiting } from "../../run/turns.ts";
import { whoMay } from "../../who.ts";
import { findZone, suggestZones } from "./zones.ts";

const { shape } = habitsSchema;
const yesNo = z.enum(["yes", "no"]);

const options = () => ({
  name: z.string().trim().min(1).max(100).optional().describe("What the class is called"),
  language: z.enum(LANGUAGES).optional().describe("Language of the class's channel, board and digests"),
  zone: z.string().trim().min(1).max(60).optional().describe("Its time zone, like Europe/Lisbon"),
  channel: z
    .string()
    .trim()
    .min(1)
    .max(100)
    .optional()
    .meta(picks("channel"))
    .describe("The channel that speaks to the whole class; here: this one"),
  sinks: wholeIn(shape.sinks).optional().describe("How many can work at the sinks at once"),
  washplaces: wholeIn(shape.washPlaces).optional().describe("How many tanks can wash at once"),
  dryslots: wholeIn(shape.drySlots).optional().describe("How many films can hang to dry at once"),
  fixmin: durationIn(shape.fixMinSeconds).optional().describe("The minimum time in the fixer: 5 min"),
  washmin: durationIn(shape.washMinSeconds).optional().describe("The minimum time in running water: 20 min"),
  washmethod: shape.washMethod.unwrap().optional().describe("How film is washed"),
  washaid: yesNo.optional().describe("A wash aid is used"),
  stop: shape.stop.unwrap().optional().describe("What stops the developer"),
  agitation: z
    .string()
    .trim()
    .min(1)
    .max(60)
    .optional()
    .describe("first/each/every, in seconds, like 30/5/60; or sheet: as each data sheet has it"),
  dry: durationIn(shape.drySeconds).optional().describe("How long films hang to dry: 25 min"),
  room: temperatureIn(shape.roomTenthsC).optional().describe("The room's usual temperature: 19C"),
  sleeves: wholeIn(shape.stripFrames).optional().describe("Frames in one strip of your sleeves"),
  sleeves120: wholeIn(shape.stripFrames120)
    .optional()
    .describe("6x6 frames in one strip of your sleeves for 120: 3 or 4"),
  pourout: wholeIn(shape.pourOutSeconds)
    .optional()
    .describe("Seconds before the end of developing at which pouring out begins"),
  warn: wholeIn(shape.warnSeconds)
    .optional()
    .describe("Seconds before pour-out at which the next bath is called for"),
  closedpages: yesNo.optional().describe("Phones may be called while their page is closed, by the internet"),
  threads: yesNo.optional().describe("A run started in the class's channel is called in its own thread"),
  aiderole: textIn(shape.aideRole)
    .optional()
    .meta(picks("role"))
    .describe("The chat's role that makes an aide; or none"),
  teacherrole: textIn(shape.teacherRole)
    .optional()
    .meta(picks("role"))
    .describe("The chat's role that makes a teacher; or none"),
});
type Input = InputOf<typeof options>;

export const classSetup = defineCommand({
  name: "class setup",
  summary: "Set the class up, part by part; without options it shows what is set and asks the next",
  options,
  who: whoMay("class setup"),
  visibility: "private",
  complete: {
    zone: (typed) => suggestZones(typed, 25).map((zone) => ({ label: zone, value: zone })),
  },
  handle(input, context) {
    const { stores, class: school } = context;
    const chat = chatOf(context.class.key);
    if (input.channel !== undefined) setChannel(context, chat, input.channel);
    if (chat === "room" && (input.aiderole !== undefined || input.teacherrole !== undefined))
      throw new UserError("ERR_ROLES_BY_PASSPHRASE", words.rolesByPassphrase());
    if (chat !== "room" && input.closedpages !== undefined)
      throw new UserError("ERR_NO_CLOSED_PAGES", words.noClosedPages());
    if (chat === "room" && input.threads !== undefined)
      throw new UserError("ERR_NO_THREADS", words.noThreads());
    const zone = input.zone === undefined ? school.zone : readZone(input.zone);
    stores.classes.rename(school.id, input.name ?? school.name, zone);
    const changes = changesOf(input);
    const answered = answeredBy(input);
    stores.classes.setHabits(school.id, answer({ ...school.habits, ...changes }, answered as SetupKey[]));
    if (input.sinks !== undefined) callWaiting(stores, school.id, context.now);
    const changed = stores.classes.get(school.id);
    if (changed && input.closedpages !== undefined)
      allowClosedPages(stores, changed, input.closedpages === "yes");
    return words.setupReply(factsOf(context, chat), answered);
  },
});

function setChannel({ here, stores, class: { id } }: Context, chat: string, typed: string): void {
  if (chat === "room") throw new UserError("ERR_NO_CHANNELS", words.noChannels());
  const ref = here?.picked?.channelRef ?? (/^here$/i.test(typed) ? here?.channelRef : null);
  if (ref == null) throw new UserError("ERR_NO_CHANNEL", words.noChannel());
  stores.classes.setChannelRef(id, ref);
}

function readZone(typed: string): string {
  const zone = findZone(typed);
  if (zone !== undefined) return zone;
  throw new UserError("ERR_UNKNOWN_ZONE", words.unknownZone(typed, suggestZones(typed, 3)));
}

/** What a call changes in the habits; what it leaves out stays. */
function changesOf(input: Input): Partial<Habits> {
  const changes = {
    language: input.language,
    sinks: input.sinks,
    washPlaces: input.washplaces,
    drySlots: input.dryslots,
    fixMinSeconds: input.fixmin,
    washMinSeconds: input.washmin,
    washMethod: input.washmethod,
    washAid: input.washaid === undefined ? undefined : input.washaid === "yes",
    stop: input.stop,
    agitation: readAgitation(input.agitation),
    drySeconds: input.dry,
    roomTenthsC: input.room,
    stripFrames: input.sleeves,
    stripFrames120: input.sleeves120,
    pourOutSeconds: input.pourout,
    warnSeconds: input.warn,
    threads: input.threads === undefined ? undefined : input.threads === "yes",
    aideRole: readRole(input.aiderole),
    teacherRole: readRole(input.teacherrole),
  };
  return Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined));
}

function readAgitation(typed: string | undefined): Habits["agitation"] | undefined {
  if (typed === undefined) return undefined;
  if (/^(sheet|none)$/i.test(typed)) return null;
  const read = parseAgitation(typed);
  if (!read.ok) throw new UserError(read.fault.code, wordMeasureFault(read.fault));
  return read.value;
}

function readRole(typed: string | undefined): string | null | undefined {
  return typed === undefined ? undefined : /^none$/i.test(typed) ? null : typed;
}

const ANSWERS = {
  name: ["name"],
  language: ["language"],
  zone: ["zone"],
  channel: ["channel"],
  roles: ["aiderole", "teacherrole"],
  sinks: ["sinks"],
  washplaces: ["washplaces"],
  dryslots: ["dryslots"],
  fix: ["fixmin"],
  wash: ["washmin", "washmethod", "washaid", "stop"],
  agitation: ["agitation"],
  dry: ["dry"],
  room: ["room"],
  sleeves: ["sleeves", "sleeves120"],
  pourout: ["pourout"],
  warn: ["warn"],
  closedpages: ["closedpages"],
  threads: ["threads"],
} as const satisfies Record<words.NamedKey, readonly (keyof Input)[]>;

function answeredBy(input: Input): words.NamedKey[] {
  return (Object.keys(ANSWERS) as words.NamedKey[]).filter((key) =>
    ANSWERS[key].some((option) => input[option] !== undefined),
  );
}

/** Read anew, since the call has changed it. */
function factsOf({ stores, class: school, here }: Context, chat: string): SetupFacts {
  return {
    class: stores.classes.get(school.id) ?? school,
    chat,
    ...channelOf(stores.classes.channelRef(school.id), here),
    tanks: stores.tanks.list(school.id).length,
    sheets: stores.sheets.list(school.id).length,
    joinCode: stores.rooms.secret(school.id, "join") ?? null,
  };
}

/** What can be told of the class's channel from where the call came from. */
function channelOf(
  channelRef: string | null,
  here: Here | undefined,
): Pick<SetupFacts, "channelRef" | "channelName" | "missingPermissions" | "threads"> {
  const { picked, look } = here ?? {};
  const seen =
    picked?.channelRef === channelRef ? picked : channelRef === null ? undefined : look?.(channelRef);
  const told = seen
    ? { ...seen, channelName: seen.name }
    : here?.channelRef === channelRef
      ? here
      : undefined;
  return {
    channelRef,
    channelName: told?.channelName ?? null,
    missingPermissions: told?.missingPermissions ?? [],
    threads: told?.threads ?? null,
  };
}

export const classRole = defineCommand({
  name: "class role",
  summary: "Make somebody of the class a student, an aide or a teacher",
  options: () => ({
    person: z.string().trim().min(1).max(60).describe("Whose role"),
    role: z.enum(ROLES).describe("What they are to the class"),
  }),
  who: whoMay("class role"),
  visibility: "private",
  complete: {
    person: (typed, { stores, class: { id } }) =>
      stores.members
        .list(id)
        .filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase()))
        .map(({ name, role }) => ({ label: words.memberLabel(name, role), value: name })),
  },
  handle({ person, role }, context) {
    const { stores, class: school } = context;
    if (chatOf(context.class.key) !== "room") throw new UserError("ERR_ROLES_BY_CHAT", words.rolesByChat());
    const member = stores.members.findByName(school.id, person);
    if (!member) throw new UserError("ERR_UNKNOWN_PERSON", words.unknownPerson(person));
    const teachers = stores.members.list(school.id).filter((each) => each.role === "teacher");
    if (role !== "teacher" && teachers.length === 1 && teachers[0]?.personId === member.personId)
      throw new UserError("ERR_LAST_TEACHER", words.lastTeacher(member.name));
    stores.members.setRole(school.id, member.personId, role);
    return words.roleReply(member.name, role);
  },
});
