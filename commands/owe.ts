import type { CueKind } from "../store/shapes/cue.ts";
import { makeMessageKey, type MessageKey } from "../store/shapes/message-key.ts";
import { PRIORITIES } from "../store/shapes/priority.ts";
import type { RunName } from "../store/shapes/run.ts";
import type { Stores } from "../store/index.ts";
import type { Action, Picture } from "./define.ts";
import { DEFAULT_LANGUAGE, type Language } from "../store/shapes/language.ts";
import { speaking } from "./speech/language.ts";

/* How a message comes to be owed: one way for each kind. Inside `atomically`, with whatever it tells of. */

const PRIORITY_OF = {
  redirect: PRIORITIES.call,
  say: PRIORITIES.call,
  "wash-anew": PRIORITIES.reminder,
  fixing: PRIORITIES.call,
  changed: PRIORITIES.call,
  pressed: PRIORITIES.call,
  turn: PRIORITIES.call,
  "lights-wait": PRIORITIES.call,
  erasure: PRIORITIES.reminder,
  reprieve: PRIORITIES.reminder,
  unreached: PRIORITIES.reminder,
  "chat-off": PRIORITIES.reminder,
  "chat-slow": PRIORITIES.reminder,
  warning: PRIORITIES.news,
  fault: PRIORITIES.news,
  unreadable: PRIORITIES.news,
  // A film is in a tank.
  lost: PRIORITIES.bath,
  digest: PRIORITIES.news,
} as const satisfies Record<Exclude<MessageKey["kind"], "cue">, number>;

export const PRIORITY_OF_CUE = {
  "pour-out": PRIORITIES.bath,
  "next-bath": PRIORITIES.bath,
  "agitate-first": PRIORITIES.call,
  agitate: PRIORITIES.call,
  "get-ready": PRIORITIES.call,
  nudge: PRIORITIES.reminder,
} as const satisfies Record<CueKind, number>;

/** What is said, in the language being spoken; undefined: nothing after all. */
export interface Words {
  readonly text: string;
  readonly actions?: readonly Action[];
  readonly pictures?: readonly Picture[];
}

interface Told {
  readonly classId: number;
  readonly say: () => Words | undefined;
}

export interface Message extends Told {
  readonly of: Exclude<MessageKey, { kind: "cue" }>;
  /** null: to the class. */
  readonly personId: string | null;
  /** Which run it speaks of. */
  readonly run?: RunName;
  /** Of a word to many: whose it is. */
  readonly by?: string;
  /** Not before this instant (silence hours); it is for that moment then. */
  readonly dueAt?: number;
}

/** Owes a message, worded in the language of whoever it is for. A key that is there already changes nothing. */
export function owe(
  stores: Stores,
  { of, classId, personId, say, run, by, dueAt }: Message,
  now: number,
): void {
  const language = listenerOf(stores, classId, personId);
  const words = speaking(language, say);
  if (!words) return;
  stores.outbox.owe({
    key: makeMessageKey(of),
    classId,
    personId,
    runId: null,
    priority: PRIORITY_OF[of.kind],
    dueAt: dueAt ?? now,
    notBefore: dueAt ?? now,
    decidedAt: now,
    usefulUntil: null,
    body: {
      ...bodyOf(words, language, run ?? null),
      ...(of.kind === "say" && by !== undefined ? { say: { id: of.say, by } } : {}),
    },
  });
}

/** Owes every teacher of a class the same, each in their language; `of` gives the key of each. */
export function oweTeachers(
  stores: Stores,
  { of, ...told }: Told & Pick<Message, "run" | "dueAt"> & { of(teacher: number): Message["of"] },
  now: number,
): void {
  const teachers = stores.members.list(told.classId).filter(({ role }) => role === "teacher");
  for (const [index, { personId }] of teachers.entries())
    owe(stores, { ...told, of: of(index), personId }, now);
}

function listenerOf(stores: Stores, classId: number, personId: string | null): Language {
  if (personId !== null) return stores.members.languageOf(classId, personId);
  return stores.classes.get(classId)?.habits.language ?? DEFAULT_LANGUAGE;
}

function bodyOf({ text, actions = [], pictures }: Words, language: Language, run: RunName | null) {
  return {
    text,
    language,
    run,
    actions: [...actions],
    mentions: [],
    ...(pictures ? { pictures: [...pictures] } : {}),
  };
}
