import type { PersonView } from "../room/view.ts";
import type { FeedEvent } from "../room/wire.ts";
import { readAsWords } from "./marks.ts";

/* Which call fills the screen. */

export interface OpenCue {
  readonly event: FeedEvent;
  /** `R7`; null where the call names no run. */
  readonly run: string | null;
  /** Made by this page's own clock, since there is no link. */
  readonly isLocal: boolean;
}

/** From this lateness on a call says so: less, nobody at a sink can tell. The run machine has the same mark. */
export const LATE_FROM_MS = 2000;

/** A call of no run that is still open stays this long after its moment. */
const UNNAMED_STAYS_MS = 10 * 60_000;

/** The run a call speaks of: its button names it, or its last words do. */
export function runOf(event: Pick<FeedEvent, "text" | "actions">): string | null {
  for (const { line } of event.actions) {
    const named = /(?:^|\s)run:"?R?(\d+)/i.exec(line)?.[1];
    if (named !== undefined) return `R${named}`;
  }
  const said = /\bR(\d+)\b(?:, tank \d+)?\s*$/i.exec(readAsWords(event.text))?.[1];
  return said === undefined ? null : `R${said}`;
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
  const newest = new Map<string, OpenCue>();
  for (const event of events) {
    if (event.kind !== "cue") continue;
    const run = runOf(event);
    newest.set(run ?? "", { event, run, isLocal: event.id < 0 });
  }
  return [...newest.values()]
    .filter(({ event, run }) => {
      if (isAnswered(event, answeredUpTo[run ?? ""])) return false;
      // A call may come a little ahead of its moment; until then it is kept back.
      if (moment(event) > roomNow) return false;
      if (run === null) return roomNow - (event.dueAt ?? event.at) < UNNAMED_STAYS_MS;
      return views.some((view) => view.run === run && (view.phase === "running" || view.phase === "waiting"));
    })
    .sort((a, b) => moment(b.event) - moment(a.event));
}

/** Answers are kept as instants: a call made here without a link and its twin from the room are one call. */
function isAnswered(event: FeedEvent, upTo: number | undefined): boolean {
  return upTo !== undefined && moment(event) <= upTo;
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
        text: `${numberFirst(text)}\n_${view.run}_`,
        actions: [],
        pictures: [],
        files: [],
        dueAt: at,
      }));
  });
}

/** `Agitate 5 s` as the calls of the room say it: the number first. */
function numberFirst(text: string): string {
  const [, words, number] = /^(\D+) (\d+ .+)$/.exec(text) ?? [];
  return words === undefined ? `**${text}**` : `**${number}** ${words.toLowerCase()}`;
}
