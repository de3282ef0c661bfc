import { redaction } from "./redact.ts";
import { z } from "zod";
import { whoMay } from "../who.ts";
import { type Context, defineCommand, UserError } from "../define.ts";
import { LANGUAGES } from "../../store/shapes/language.ts";
import { speaking } from "../speech/language.ts";
import { toRecord as toPrintRecord } from "../print/export/file.ts";
import { toRecord } from "../roll/export/file.ts";
import * as words from "./reply.ts";

export const mineShow = defineCommand({
  name: "mine show",
  summary: "What is kept about you, in plain words",
  options: () => ({}),
  who: whoMay("mine show"),
  visibility: "private",
  handle(_, { stores, class: { id }, person }) {
    const held = stores.mine.gather(id, person.id);
    const member = stores.members.find(id, person.id);
    return words.showReply({
      name: person.name,
      joinedAt: member?.joinedAt ?? 0,
      plans: held.plans.length,
      runs: held.runs.length,
      rolls: held.rolls.length,
      photos: held.photos,
      prints: held.prints.length,
      messages: held.messages.length,
      ledgerLines: held.ledger.length,
      devices: held.devices.length,
    });
  },
});

export const mineExport = defineCommand({
  name: "mine export",
  summary: "Everything that is kept about you, as a file to take along",
  options: () => ({}),
  who: whoMay("mine export"),
  visibility: "private",
  handle(_, { stores, class: school, person }) {
    const held = stores.mine.gather(school.id, person.id);
    const member = stores.members.find(school.id, person.id);
    const file = {
      format: "sinkside person",
      version: 1,
      class: school.name,
      person: {
        name: person.name,
        role: member?.role ?? null,
        language: stores.members.languageOf(school.id, person.id),
        joined_at: isoOf(member?.joinedAt),
        last_seen_at: isoOf(member?.seenAt),
      },
      rolls: held.rolls.map(toRecord),
      photos: held.photos,
      prints: held.prints.map(toPrintRecord),
      last_test_strip: held.strips,
      plans: held.plans.map(({ number, made_at, body }) => ({
        plan: number,
        made_at: isoOf(made_at),
        ...body,
      })),
      runs: held.runs.map(({ number, started_at, body, phase }) => ({
        run: number,
        started_at: isoOf(started_at),
        phase,
        record: body,
      })),
      messages: held.messages.map(({ at, body }) => ({ at: isoOf(at), text: body.text })),
      ledger_lines: held.ledger.map(({ at, batch, kind, body }) => ({ at: isoOf(at), batch, kind, body })),
      called_while_closed: held.pushed.map(({ endpoint, created_at }) => ({
        push_service: endpoint,
        turned_on_at: isoOf(created_at),
      })),
      presses_at_a_sink: held.presses.map(({ at, device, line }) => ({ at: isoOf(at), device, line })),
      devices: held.devices.map(({ device, created_at, seen_at }) => ({
        device,
        signed_in_at: isoOf(created_at),
        seen_at: isoOf(seen_at),
      })),
    };
    return words.exportReply(`${JSON.stringify(file, null, 2)}\n`);
  },
});

function isoOf(atMs: number | undefined): string | null {
  return atMs === undefined ? null : new Date(atMs).toISOString();
}

export const mineLanguage = defineCommand({
  name: "mine language",
  summary: "Which language I speak with you",
  options: () => ({
    language: z.enum([...LANGUAGES, "chat"]).describe("The language I speak to you in"),
  }),
  who: whoMay("mine language"),
  visibility: "private",
  rest: "language",
  handle({ language }, { stores, class: { id }, person }) {
    stores.members.chooseLanguage(id, person.id, language === "chat" ? null : language);
    return speaking(stores.members.languageOf(id, person.id), () => words.languageReply());
  },
});

export const mineErase = defineCommand({
  name: "mine erase",
  summary: "Take yourself out of this class's store, for good",
  options: () => ({
    name: z.string().trim().min(1).max(60).optional().describe("Your name, to confirm it"),
  }),
  who: whoMay("mine erase"),
  visibility: "private",
  rest: "name",
  handle({ name }, context) {
    const { person, stores, class: school } = context;
    if (name?.toLowerCase() !== person.name.toLowerCase())
      return words.askErase(person.name, name !== undefined);
    const teachers = stores.members.list(school.id).filter(({ role }) => role === "teacher");
    if (teachers.length === 1 && teachers[0]?.personId === person.id)
      throw new UserError("ERR_LAST_TEACHER", words.lastTeacher());
    const kept = erase(context, person.id);
    return words.erasedReply(kept.rolls, kept.prints);
  },
});

export const classForget = defineCommand({
  name: "class forget",
  summary: "Take somebody out of this class's store, for good",
  options: () => ({
    person: z.string().trim().min(1).max(60).describe("Whom"),
    sure: z.enum(["yes", "no"]).default("no").describe("I know what I am doing"),
  }),
  who: whoMay("class forget"),
  visibility: "private",
  complete: {
    person: (typed, { stores, class: { id } }) =>
      stores.members
        .list(id)
        .filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase()))
        .map(({ name }) => ({ label: name, value: name })),
  },
  handle({ person, sure }, context) {
    const { stores, class: school } = context;
    const member = stores.members.findByName(school.id, person);
    if (!member) throw new UserError("ERR_UNKNOWN_PERSON", words.unknownPerson(person));
    if (member.personId === context.person.id) return words.askErase(context.person.name, false);
    if (sure !== "yes") return words.askForget(member.name);
    const kept = erase(context, member.personId);
    return words.forgottenReply(kept.rolls, kept.prints);
  },
});

/** Returns how many rolls and prints stay, nameless. */
function erase(
  { stores, class: { id, key, habits }, now }: Context,
  personId: string,
): { rolls: number; prints: number } {
  const open = stores.runs.open(id, personId);
  if (open.length > 0) throw new UserError("ERR_RUN_GOING", words.runGoing(open.map(({ number }) => number)));
  const { rolls, prints } = stores.mine.gather(id, personId);
  // What stands for the name in notes is read by the whole class.
  speaking(habits.language, () => stores.privacy.erasePerson(id, personId, redaction));
  stores.erasures.addPerson({ classKey: key, personId }, now);
  return { rolls: rolls.length, prints: prints.length };
}
