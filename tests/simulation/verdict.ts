import { FAIR, type Shown } from "./chat.ts";
import { SLACK_MS, type Promised } from "./reference.ts";
import type { Course, CueRow, World } from "./world.ts";

/* When all is over: was every promise kept, once, in time, or else told as late? */

interface OutboxRow {
  readonly key: string;
  readonly state: "owed" | "sending" | "sent" | "failed" | "stale";
  readonly bundle: string | null;
  readonly detail: string | null;
  readonly due_at: number;
  readonly useful_until: number | null;
  readonly sent_at: number | null;
}

/** What the room shows and was never owed, in the same columns. */
const KEPT = `select substr(key, instr(key, '.') + 1) as key, 'sent' as state, null as bundle, null as detail, body ->> '$.dueAt' as due_at,
     null as useful_until, at as sent_at
   from messages where key like 'd:%' and substr(key, instr(key, '.') + 1) not in (select key from outbox)`;

const keyOf = (cue: CueRow): string => `${cue.run_id.toString(36)}.${cue.key}`;

/** From this lateness on a message must say so. */
const LATE_MS = 2000;
/** An undisturbed cue is there by then: a flight to the chat, a turn of the loop. */
const PROMPT_MS = 1500;

export interface Figures {
  runs: number;
  promises: number;
  shown: number;
  late: number;
  merged: number;
}

/** Throws with what is wrong. */
export function judge(world: World, isFair: boolean): Figures {
  const alive = world.bot;
  if (!alive) throw new Error("the bot must be up to be judged");
  for (const { courses } of world.students) courses.slice(-1).forEach(world.compare);
  alive.peek(world.chat.collect);
  const { cues, decided, kept, faults } = alive.peek(({ db }) => ({
    cues: db.prepare("select * from cues order by id").all() as CueRow[],
    decided: db.prepare("select * from outbox").all() as OutboxRow[],
    kept: db.prepare(KEPT).all() as OutboxRow[],
    faults: db.pragma("integrity_check", { simple: true }),
  }));
  if (faults !== "ok") throw new Error(`the store is damaged: ${String(faults)}`);
  // What the room kept as it was decided was never owed; it stands for a cue that was said, and for nothing else.
  const saidCues = new Set(cues.filter(({ state }) => state === "said").map(keyOf));
  const outbox = [...decided, ...kept.filter(({ key }) => saidCues.has(key))];
  const byKey = new Map(outbox.map((row) => [row.key, row]));
  const figures = { runs: 0, promises: 0, shown: 0, late: 0, merged: 0 };
  for (const course of world.students.flatMap(({ courses }) => courses)) {
    const own = cues.filter((each) => each.run_id === course.id);
    const { promises } = course.run;
    figures.runs += 1;
    const known = new Set(promises.map(({ key }) => key));
    const orphan = own.find(({ key }) => !known.has(key));
    if (orphan) fail(course, `nobody was to be called by ${JSON.stringify(orphan)}`);
    for (const promise of promises) {
      const row = own.find(({ key }) => key === promise.key);
      if (!row) fail(course, `no cue was written for ${JSON.stringify(promise)}`);
      const owed = byKey.get(keyOf(row));
      figures.promises += 1;
      const spoken = own.find(({ state, settled_at: at }) => state === "said" && at === row.settled_at);
      const standIn = spoken && byKey.get(keyOf(spoken));
      judgeOne({ world, course, promise, row, owed, standIn, isFair, figures });
    }
    judgeOrder(world, course, byKey);
  }
  const said = new Set(outbox.flatMap(({ key, bundle }) => [key, bundle]));
  const stranger = world.chat.shown.find(({ key }) => !said.has(key));
  if (stranger) throw new Error(`shown, and never owed: ${JSON.stringify(stranger)}`);
  return figures;
}

interface Case {
  readonly world: World;
  readonly course: Course;
  readonly promise: Promised;
  readonly row: CueRow;
  readonly owed: OutboxRow | undefined;
  /** For a merged one: what was said in its stead. */
  readonly standIn: OutboxRow | undefined;
  readonly isFair: boolean;
  readonly figures: Figures;
}

function fail({ student }: Course, words: string): never {
  throw new Error(`${student.name}: ${words}`);
}

function judgeOne(given: Case): void {
  const { world, course, promise, row, owed, isFair, figures } = given;
  const shown = owed ? world.chat.shown.filter(({ key }) => key === (owed.bundle ?? owed.key)) : [];
  const about = `${JSON.stringify(promise)} ${JSON.stringify(row)} ${JSON.stringify(owed)} shown ${JSON.stringify(shown)}`;
  const isFuture = promise.dueMs > world.time.trueMs() - LATE_MS;
  const bad = (words: string): never => fail(course, `${words}: ${about}`);
  if (shown.length > 1) bad("said twice");
  const isDisturbed = overlaps(
    world,
    promise.dueMs - world.leadMs - SLACK_MS,
    // A correction may make what was due before it.
    Math.max(promise.dueMs, promise.madeMs) + LATE_MS + SLACK_MS,
  );
  switch (row.state) {
    case "pending":
      if (!isFuture && promise.takenBackMs === undefined) bad("never decided");
      return;
    case "dropped":
      if (!wasOvertaken(world, course, promise)) bad("dropped, and the run had not moved on");
      return;
    case "merged":
      figures.merged += 1;
      judgeMerged(given, bad);
      if (!isDisturbed && promise.dueMs > promise.madeMs - SLACK_MS) bad("merged, and nothing was late");
      return;
  }
  if (!owed) return bad("decided, and never owed");
  const message = shown[0];
  if (message) judgeMessage(given, owed, message, bad);
  if (owed.state === "sent") {
    if (!message) bad("recorded as said, and nobody read it");
  } else if (owed.state === "stale") {
    const isUseless =
      owed.useful_until !== null && owed.sent_at !== null && owed.useful_until <= owed.sent_at + SLACK_MS;
    const isPast = owed.sent_at !== null && owed.sent_at >= owed.due_at;
    const isEnded = isPast && hasEnded(world, course, promise);
    const isRenewed = wasRenewed(given);
    if (!isUseless && !wasOvertaken(world, course, promise) && !isEnded && !isRenewed)
      bad("given up without a reason");
  } else if (!isFuture) bad("never said");
  const isMovedOn = promise.takenBackMs !== undefined || wasOvertaken(world, course, promise);
  const isClosed = world.chat.closed.size > 0;
  if (isFair && !isDisturbed && !isMovedOn && !isClosed && !isFuture) {
    const isPrompt = message && message.shownMs <= Math.max(promise.dueMs, promise.madeMs) + PROMPT_MS;
    if (!isPrompt) bad("nothing was in the way, and it was not said in time");
  }
}

/** A call that was missed is spoken of in the one that stands for it. */
function judgeMerged({ world, promise, row, standIn }: Case, bad: (words: string) => never): void {
  const settledAt = row.settled_at ?? 0;
  // As the bot reckons it: a row that is settled keeps the wall clock it was settled by.
  const lateMs = settledAt - Math.max(row.due_at, row.made_at);
  const message = standIn && world.chat.shown.find(({ key }) => key === (standIn.bundle ?? standIn.key));
  if (promise.isOptional || !message || lateMs < LATE_MS) return;
  if (!/missed|late\*\*/.test(message.text)) bad("missed, and nobody was told");
}

function judgeMessage(
  { world, promise, figures }: Case,
  owed: OutboxRow,
  message: Shown,
  bad: (words: string) => never,
): void {
  figures.shown += 1;
  if (message.askedMs < promise.dueMs - world.leadMs - SLACK_MS) bad("said before its time");
  if (promise.takenBackMs !== undefined && message.askedMs > promise.takenBackMs + SLACK_MS)
    bad("said after the run had moved on");
  const lateMs = message.askedMs - Math.max(promise.dueMs, promise.madeMs);
  const isToldLate = /\*\*.* late\*\*: this was for/.test(message.text);
  if (lateMs >= LATE_MS) figures.late += 1;
  if (owed.bundle !== null || promise.isOptional) return;
  // Its lateness is reckoned when it is put into words, a moment before it is sent.
  if (lateMs >= LATE_MS + 500 && !isToldLate) bad("late, and does not say so");
  if (lateMs < LATE_MS - SLACK_MS && isToldLate) bad("called late, and was not");
}

/** Whether somebody changed the run before this promise was to be kept (or while it could not be). */
function wasOvertaken(world: World, { changes }: Course, { dueMs, madeMs }: Promised): boolean {
  return changes.some(
    (atMs) => atMs >= madeMs && (atMs <= dueMs + PROMPT_MS || overlaps(world, dueMs - world.leadMs, atMs)),
  );
}

/** A later call of the same run was said in its place. */
function wasRenewed({ world, course, promise, owed }: Case): boolean {
  const prefix = `${course.id.toString(36)}.`;
  const later = course.run.promises.filter(({ key, dueMs }) => key !== undefined && dueMs > promise.dueMs);
  return (
    owed?.detail?.startsWith("overtaken") === true &&
    later.some(({ key }) => world.chat.shown.some((shown) => shown.key === `${prefix}${key}`))
  );
}

/** The clock took the run on. */
function hasEnded(world: World, { run }: Course, { step, dueMs, kind }: Promised): boolean {
  return (
    kind !== "next-bath" &&
    run.promises.some(
      (each) =>
        each.kind === "next-bath" &&
        each.step === step &&
        each.dueMs >= dueMs &&
        each.dueMs <= world.time.trueMs(),
    )
  );
}

function overlaps({ troubles, chat }: World, fromMs: number, toMs: number): boolean {
  return chat.weather !== FAIR || troubles.some((each) => each.fromMs <= toMs && each.toMs >= fromMs);
}

/** Nobody is sent back: after the call to the next bath nothing more of the bath before is asked of the chat. */
function judgeOrder(world: World, course: Course, byKey: ReadonlyMap<string, OutboxRow>): void {
  const prefix = `${course.id.toString(36)}.`;
  const said = course.run.promises.flatMap((promise) => {
    const owed = byKey.get(prefix + promise.key);
    // Given up, it is left out of the message that it was to share.
    if (owed?.state === "stale") return [];
    const message = owed && world.chat.shown.find(({ key }) => key === (owed.bundle ?? owed.key));
    return message ? [{ promise, message }] : [];
  });
  for (const end of said) {
    if (end.promise.kind !== "next-bath") continue;
    const after = said.find(
      ({ promise, message }) =>
        promise.step === end.promise.step &&
        promise.kind !== "next-bath" &&
        promise.kind !== "nudge" &&
        promise.dueMs < end.promise.dueMs &&
        message.askedMs > end.message.shownMs,
    );
    if (after) fail(course, `was sent back: ${JSON.stringify(after)} after ${JSON.stringify(end)}`);
  }
}
