import type { Action } from "../../commands/define.ts";
import { agoWords, deliveredEarly, lateWords, missedWords } from "../../commands/run/cue-words.ts";
import { kindOfCue } from "../../commands/run/cues.ts";
import { sayRun } from "../../commands/run/run-words.ts";
import { DEFAULT_LANGUAGE, type Language } from "../../store/shapes/language.ts";
import { speaking } from "../../commands/speech/language.ts";
import { LATE_FROM_MS, OLD_FROM_MS } from "../../commands/run/doing.ts";
import { joinAnd } from "../../commands/speech/wording.ts";
import { parseMessageKey, runCalledBy } from "../../store/shapes/message-key.ts";
import type { Owed } from "../../store/owed.ts";
import type { RunName } from "../../store/shapes/run.ts";
import type { Delivery } from "../chat/port.ts";
import type { Outgoing } from "./gather.ts";

/* What is said for one message that is owed, or for several that go out as one. Pure. */

/** Up to this much ahead nobody notices; beyond it a message says its moment. */
const EARLY_FROM_MS = 500;
type Where = Pick<Delivery, "classKey" | "channelRef">;

/** What is owed of a unit, as it goes out. */
export function compose({ unit, address }: Outgoing, several: readonly Owed[], now: number): Delivery {
  const [first] = several;
  if (!first) throw new Error("a message that was ready is gone");
  return unit.bundle === null
    ? composeOne(first, address, now)
    : composeBundle(unit.bundle, several, address, now);
}

export function composeOne(owed: Owed, where: Where, now: number): Delivery {
  const { run, mentions, language, pictures = [], say } = owed.body;
  const text = textAt(owed, now);
  // Written out, as are the others on a cue's way: a spread costs more here than all it copies.
  return {
    classKey: where.classKey,
    channelRef: where.channelRef,
    key: owed.key,
    personId: owed.personId,
    mentions,
    runs: run ? [run] : [],
    runId: owed.runId ?? runCalledBy(owed.key),
    text: run ? `${text}\n_${sayIn(language, run)}_` : text,
    actions: actionsOf(owed),
    pictures,
    attachments: [],
    dueAt: owed.dueAt,
    usefulUntil: owed.usefulUntil,
    language,
    ...(say ? { say } : {}),
  };
}

/**
 * One line for each thing to do, in the words of those it is for, with their runs; everyone who is meant is called by
 * name.
 */
export function composeBundle(key: string, several: readonly Owed[], where: Where, now: number): Delivery {
  const lines = new Map<string, Owed["body"][]>();
  for (const owed of several) {
    const text = textAt(owed, now);
    lines.set(text, [...(lines.get(text) ?? []), owed.body]);
  }
  const text = [...lines].map(([line, bodies]) => `${headingOf(bodies)}${line}`).join("\n\n");
  const people = several.flatMap(({ personId, body }) => [
    ...(personId === null ? [] : [personId]),
    ...body.mentions,
  ]);
  const first = several[0];
  return {
    classKey: where.classKey,
    channelRef: where.channelRef,
    key,
    personId: null,
    mentions: [...new Set(people)],
    runs: namesOf(several.map(({ body }) => body)),
    text,
    actions: several.flatMap(namedActions),
    pictures: several.flatMap(({ body }) => body.pictures ?? []),
    attachments: [],
    dueAt: first?.dueAt ?? now,
    ...(first ? { language: first.body.language } : {}),
  };
}

/** Each run once, in order. */
function namesOf(bodies: readonly Owed["body"][]): RunName[] {
  return [...new Map(bodies.flatMap(({ run }) => (run ? [[run.number, run] as const] : []))).values()];
}

/** Those who read the same line read the same language. */
function headingOf(bodies: readonly Owed["body"][]): string {
  const names = namesOf(bodies);
  if (names.length === 0) return "";
  return `**${speaking(bodies[0]?.language ?? DEFAULT_LANGUAGE, () => joinAnd(names.map(sayRun)))}**\n`;
}

const sayIn = (language: Language, run: RunName): string => speaking(language, () => sayRun(run));

function textAt(owed: Owed, now: number): string {
  return speaking(owed.body.language, () => wordsAt(owed, now));
}

/** Its text; before it the moment where it leaves earlier, after it how late it is as it leaves, and what was missed. */
function wordsAt({ key, dueAt, usefulUntil, missed, body }: Owed, now: number): string {
  const lateMs = now - dueAt;
  const others = missed > 0 ? [missedWords(missed)] : [];
  // To the second, as it is read: those who started together get one line.
  if (-lateMs > EARLY_FROM_MS)
    return [deliveredEarly(Math.round(dueAt / 1000) * 1000), body.text, ...others].join("\n");
  if (body.say) return lateMs < OLD_FROM_MS ? body.text : `${agoWords(dueAt)}\n${body.text}`;
  if (lateMs < LATE_FROM_MS) return [body.text, ...others].join("\n");
  const parsed = parseMessageKey(key);
  const kind = parsed?.kind === "cue" ? (kindOfCue(parsed.cue) ?? null) : null;
  const leftMs = usefulUntil === null ? null : usefulUntil - now;
  return `${body.text}\n${lateWords({ lateMs, dueAtMs: dueAt, missed, kind, leftMs })}`;
}

function actionsOf(owed: Owed): Action[] {
  return owed.body.actions.map(({ weight, ...action }) => (weight ? { ...action, weight } : action));
}

/** In a message for many a button says whose it is. */
function namedActions(owed: Owed): Action[] {
  const { run, language } = owed.body;
  const name = run ? `${sayIn(language, run)}: ` : "";
  return actionsOf(owed).map((action) => ({ ...action, label: `${name}${action.label}` }));
}
