import { LATE_FROM_MS, OLD_FROM_MS, timedCalls, type TimedCall } from "../../../commands/run/doing.ts";
import { nameOfView } from "../../../commands/run/run-view.ts";
import type { RunName } from "../../../store/shapes/run.ts";
import type { PersonView } from "../room/view.ts";
import type { FeedEvent } from "../room/wire.ts";

/*
 * What a person is called to do now, told by the room's clock from the schedule of each run: so a call is true at the
 * moment it is seen, whether its message came at once, late or not at all.
 */

/** A word that names no run stays this long. */
const WORD_STAYS_MS = 10 * 60_000;

/** Per run the mark of the newest call that was answered here; under `WORDS` the newest such entry of the feed. */
export type Answered = Readonly<Record<string, number>>;
export const WORDS = "words";

export interface Call extends Omit<TimedCall, "kind"> {
  /** Names this call for ever. */
  readonly id: string;
  readonly kind: TimedCall["kind"] | "word";
  /** What it is answered under: a run's number, or `WORDS`. */
  readonly of: string;
  /**
   * What it is answered up to: ms since its run came to be, or its number in the feed. By the clock it would not be: once that
   * is set back, a call still to come would look like one from before.
   */
  readonly mark: number;
  /** Its film is in the developer. */
  readonly isDeveloping: boolean;
  /** null for a word that names none. */
  readonly run: RunName | null;
  /** The step of the run which a word gives another bottle, or none. */
  readonly rebottled?: number | undefined;
}

/** Every call of this run's present phase, in order. */
export function callsOf(view: PersonView): Call[] {
  const { run, begunAt, isDeveloping } = view;
  return timedCalls(view).map((call) => {
    const mark = call.at - begunAt;
    return {
      ...call,
      id: `${run} ${mark} ${call.kind}`,
      of: String(run),
      mark,
      isDeveloping,
      run: nameOfView(view),
    };
  });
}

/** What must be done within seconds comes first; a word to many waits for it. Other baths wait for a developer. */
const ORDER = ["pour-out", "next-bath", "nudge", "agitate-first", "agitate", "get-ready", "word"] as const;

const rankOf = ({ kind, isDeveloping }: Call): number =>
  ORDER.indexOf(kind) - (isDeveloping && kind !== "get-ready" ? ORDER.length : 0);

/**
 * The calls that want something now, the most pressing first: of each run only the newest that is neither over nor
 * answered, since a later call makes an earlier one worthless.
 */
export function openCalls(
  views: readonly PersonView[],
  words: readonly Call[],
  answered: Answered,
  now: number,
): Call[] {
  // What the feed holds has been said, also where the clock was set back since.
  const hasCome = ({ kind, at }: Call): boolean => at <= now || (kind === "word" && at - now < WORD_STAYS_MS);
  const isOpen = (call: Call): boolean =>
    hasCome(call) && now < call.until && call.mark > (answered[call.of] ?? -Infinity);
  return [
    ...views.flatMap((view) => callsOf(view).filter(isOpen).slice(-1)),
    ...words.filter((word) => isOpen(word) && !isOutdated(word, words)),
  ].sort((a, b) => rankOf(a) - rankOf(b) || a.at - b.at);
}

/** Whether a newer word names the bottle of the same bath: "no other is ready" must not be read once there is one. */
function isOutdated({ rebottled, run, mark }: Call, words: readonly Call[]): boolean {
  return (
    rebottled !== undefined &&
    words.some(
      (other) => other.mark > mark && other.rebottled === rebottled && other.run?.number === run?.number,
    )
  );
}

/** An entry of the feed that calls by itself: a word to many, or one to this person that is no call of a run's schedule. */
export function wordOf(event: FeedEvent): Call[] {
  const isOfNoRun = event.kind === "cue" && event.runs.length === 0;
  const calls = event.isWord || event.isChange || isOfNoRun;
  if (!calls || event.author?.isYou) return [];
  return [
    {
      id: `word ${event.id}`,
      of: WORDS,
      mark: event.id,
      isDeveloping: false,
      run: event.isChange ? (event.runs[0] ?? null) : null,
      rebottled: event.rebottled,
      kind: "word",
      at: event.at,
      until: event.at + WORD_STAYS_MS,
      // Said while the room could not be written, it is older than its entry.
      lateFrom: event.isWord ? (event.dueAt ?? event.at) : event.at,
      words: { does: "", how: event.text, spoken: "", seconds: null, brief: "", actions: event.actions },
    },
  ];
}

/** `12 s` of lateness as shown with a call; undefined where nobody could tell. */
export function lateSeconds(
  { kind, lateFrom }: Pick<Call, "kind" | "lateFrom">,
  now: number,
): number | undefined {
  const fromMs = kind === "word" ? OLD_FROM_MS : LATE_FROM_MS;
  return now - lateFrom >= fromMs ? Math.floor((now - lateFrom) / 1000) : undefined;
}
