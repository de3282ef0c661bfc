import { comingCall } from "../../../commands/run/doing.ts";
import type { PersonView } from "../room/view.ts";
import type { FeedEvent } from "../room/wire.ts";
import { openCalls, wordOf, type Call } from "./calls.ts";
import type { State, Store } from "./state.ts";
import { tonesOf, type Tone } from "./tones.ts";

/* What a room's page calls its person to, from what it knows at this moment. */

export interface Calling {
  /** What wants something now, the most pressing first. */
  calls(): Call[];
  /** Every tone of the runs and words it knows of; the same array as long as nothing has changed. */
  tones(): readonly Tone[];
  answer(call: Call): void;
}

export function createCalling(store: Store, now: () => number): Calling {
  let known: Pick<State, "views" | "events" | "answered"> | undefined;
  let tones: readonly Tone[] = [];
  let read: readonly FeedEvent[] = [];
  let words: readonly Call[] = [];

  /** Of a log of hundreds, asked for at each beat. */
  function wordsOf(events: readonly FeedEvent[]): readonly Call[] {
    if (events !== read) words = events.flatMap(wordOf);
    read = events;
    return words;
  }

  return {
    calls() {
      const { views, events, answered } = store.get();
      return openCalls(views, wordsOf(events), answered, now());
    },
    tones() {
      const { views, events, answered } = store.get();
      if (known?.views !== views || known.events !== events || known.answered !== answered) {
        known = { views, events, answered };
        tones = tonesOf(views, wordsOf(events), answered);
      }
      return tones;
    },
    answer({ of, mark }) {
      store.set(({ answered }) => ({
        answered: { ...answered, [of]: Math.max(mark, answered[of] ?? -Infinity) },
      }));
    },
  };
}

/** The next call of all these runs. */
export function nextOfAll(
  views: readonly PersonView[],
  now: number,
): { readonly view: PersonView; readonly at: number; readonly brief: string } | undefined {
  return views
    .flatMap((view) => {
      const call = comingCall(view, now);
      return call ? [{ view, at: call.at, brief: call.words.brief }] : [];
    })
    .sort((a, b) => a.at - b.at)[0];
}
