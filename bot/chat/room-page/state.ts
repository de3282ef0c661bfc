import type { Language } from "../../../store/shapes/language.ts";
import { useEffect, useState } from "preact/hooks";
import type { CommandCard } from "../room/card.ts";
import type { DoorState, FeedEvent, RoomFacts, WallRow } from "../room/wire.ts";
import type { SaidFirstDay } from "../../../commands/class/first-day-words.ts";
import type { ReadyPlan } from "../../../commands/plan/ready.ts";
import type { PersonView } from "../room/view.ts";
import type { Answered } from "./calls.ts";
import type { Fill } from "./fill.ts";

export interface PendingLine {
  readonly id: string;
  readonly text: string;
  /** What stood on the button that sends it; null for a typed line. */
  readonly label: string | null;
  /** The phone's own clock, ms. */
  readonly at: number;
  /** `stale`: it could not be sent while it was fresh; its sender is asked. */
  readonly state: "sending" | "stale";
}

export type Theme = "auto" | "daylight" | "safelight";

export interface State {
  /** null: not known yet. */
  readonly door: DoorState | null;
  readonly isUnreachable: boolean;
  readonly facts: RoomFacts | null;
  readonly link: "opening" | "open" | "lost";
  /** Since when the room can call nobody, as its disk takes nothing; null: it can. */
  readonly troubleSince: number | null;
  readonly events: readonly FeedEvent[];
  readonly isFeedCut: boolean;
  readonly views: readonly PersonView[];
  readonly plan: ReadyPlan | null;
  readonly firstDay: SaidFirstDay | null;
  readonly wall: readonly WallRow[];
  readonly cards: readonly CommandCard[];
  readonly present: { readonly count: number; readonly names: readonly string[] };
  readonly pending: readonly PendingLine[];
  /** The room's last word to somebody whom it erased. */
  readonly farewell: string | null;
  /** What the room said of the last line it refused. */
  readonly fault: string | null;
  readonly answered: Answered;
  /** A form that is to open, filled in so far. */
  readonly fill: Fill | null;
  /** A form was sent after the event of this number, and its answer has not come; null: none is out. */
  readonly formSentAfter: number | null;
  readonly theme: Theme;
  readonly language: Language;
  readonly isSoundOn: boolean;
  /** Calls are said aloud as well. */
  readonly isSpeechOn: boolean;
}

/** Where nobody is in. */
export const OUT: DoorState = { state: "out", demo: null };
export const NOTHING_OF_ANYBODY = {
  facts: null,
  events: [],
  views: [],
  plan: null,
  firstDay: null,
  wall: [],
  pending: [],
  link: "opening",
  troubleSince: null,
  // Words are counted anew in another class, and after a class was begun anew.
  answered: {},
} as const;

export interface Store {
  get(): State;
  set(change: Partial<State> | ((state: State) => Partial<State>)): void;
  subscribe(listener: () => void): () => void;
}

export function createStore(initial: State): Store {
  let state = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set(change) {
      state = { ...state, ...(typeof change === "function" ? change(state) : change) };
      for (const listener of listeners) listener();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

/** Draws again when the picked part is another one than before. */
export function usePart<T>(store: Store, pick: (state: State) => T): T {
  const [part, setPart] = useState<{ value: T }>({ value: pick(store.get()) });
  useEffect(() => {
    const look = (): void => {
      const value = pick(store.get());
      setPart((before) => (Object.is(before.value, value) ? before : { value }));
    };
    look();
    return store.subscribe(look);
  }, [store]);
  return part.value;
}
