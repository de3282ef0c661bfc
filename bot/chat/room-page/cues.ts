import type { RunName } from "../../../store/shapes/run.ts";
import type { PersonView } from "../room/view.ts";
import type { FeedEvent } from "../room/wire.ts";

/* Which call fills the screen. */

export interface OpenCue {
  readonly event: FeedEvent;
  /** Whose it is; empty where the call names no run. */
  readonly runs: readonly RunName[];
  /** Made by this page's own clock, since there is no link. */
  readonly isLocal: boolean;
}

/** From this lateness on a call says so: less, nobody at a sink can tell. The run machine has the same mark. */
export const LATE_FROM_MS = 2000;

/** A call of no run that is still open stays this long after its moment. */
const UNNAMED_STAYS_MS = 10 * 60_000;

/** What an answer is kept under: a run's number, or nothing for calls that name none. */
type AnswerKey = number | "";

function answerKeysOf({ runs }: Pick<FeedEvent, "runs">): AnswerKey[] {
  return runs.length === 0 ? [""] : runs.map(({ number }) => number);
}

/**
 * The calls that still want an answer, newest first: of each run only the newest one, since a later call makes an earlier
 * one worthless; none of a run that is over; none that was answered here.
 */
export function openCues(
  events: readonly FeedEvent[],
  views: readonly PersonView[],
  answeredUpTo: Readonly<Record<string, number>>,
  roomNow: number,
): OpenCue[] {
  // A call may come a little ahead of its moment; until then it is kept back.
  const called = events.filter((event) => event.kind === "cue" && moment(event) <= roomNow);
  const newest = new Map<AnswerKey, FeedEvent>();
  for (const event of called) {
    for (const key of answerKeysOf(event)) {
      const before = newest.get(key);
      if (!before || moment(before) <= moment(event)) newest.set(key, event);
    }
  }
  const isGoing = (number: number): boolean =>
    views.some(({ run, phase }) => run === number && (phase === "running" || phase === "waiting"));
  const isOpen = (event: FeedEvent, key: AnswerKey): boolean => {
    if (newest.get(key) !== event || isAnswered(event, answeredUpTo[key])) return false;
    return key === "" ? roomNow - moment(event) < UNNAMED_STAYS_MS : isGoing(key);
  };
  return called
    .filter((event) => answerKeysOf(event).some((key) => isOpen(event, key)))
    .map((event) => ({
      event,
      runs: event.runs.filter(({ number }) => isOpen(event, number)),
      isLocal: event.id < 0,
    }))
    .sort((a, b) => moment(b.event) - moment(a.event));
}

/** Answers are kept as instants: a call made here without a link and its twin from the room are one call. */
function isAnswered(event: FeedEvent, upTo: number | undefined): boolean {
  return upTo !== undefined && moment(event) <= upTo;
}

/** With this call answered: of each of its runs, and so no older one of theirs is asked for again. */
export function markAnswered(
  answered: Readonly<Record<string, number>>,
  event: FeedEvent,
): Readonly<Record<string, number>> {
  return { ...answered, ...Object.fromEntries(answerKeysOf(event).map((key) => [key, moment(event)])) };
}

export function moment(event: FeedEvent): number {
  return event.dueAt ?? event.at;
}

/** The calls this page can make by itself: each coming cue whose moment has passed since `sinceMs`. */
export function localCues(
  views: readonly PersonView[],
  sinceMs: number,
  untilMs: number,
  makeId: () => number,
): FeedEvent[] {
  return views.flatMap((view) => {
    const coming = view.coming ?? (view.nextCue ? [view.nextCue] : []);
    return coming
      .filter(({ at }) => at > sinceMs && at <= untilMs)
      .map(({ text, at }): FeedEvent => ({
        id: makeId(),
        at,
        kind: "cue",
        isPrivate: true,
        author: null,
        callsYou: false,
        text: `**${text}**`,
        runs: [{ number: view.run, tank: view.tank }],
        actions: [],
        pictures: [],
        files: [],
        dueAt: at,
      }));
  });
}
