import { useEffect, useRef, useState } from "preact/hooks";
import { useRoom } from "./room-context.ts";

/*
 * What counts on the page. All parts that look as often share one beat, so that what changes in it is drawn and laid out
 * once, and a part that shows the same as before is not drawn at all.
 */

interface Beat {
  readonly looks: Set<() => void>;
  readonly timer: ReturnType<typeof setInterval>;
}
const beats = new Map<number, Beat>();

function atEachBeat(everyMs: number, look: () => void): () => void {
  const known = beats.get(everyMs);
  const looks = known?.looks ?? new Set();
  looks.add(look);
  if (!known) {
    const timer = setInterval(() => {
      for (const each of looks) each();
    }, everyMs);
    beats.set(everyMs, { looks, timer });
  }
  return () => {
    looks.delete(look);
    if (looks.size > 0 || beats.get(everyMs)?.looks !== looks) return;
    clearInterval(beats.get(everyMs)?.timer);
    beats.delete(everyMs);
  };
}

/** The room's time, drawn anew each `everyMs`; for the few parts that show every beat. */
export function useRoomTime(everyMs = 250): number {
  const { clock } = useRoom();
  const [, draw] = useState(0);
  useEffect(() => atEachBeat(everyMs, () => draw((count) => count + 1)), [everyMs]);
  // Read at each drawing: what was read before the room told its time is that of a phone that may be wrong.
  return clock.now();
}

/** What `read` makes of the room's time: drawn anew only once that is something else. */
export function useToldTime<T extends string | number | boolean | null>(
  read: (now: number) => T,
  everyMs = 250,
): T {
  const { clock } = useRoom();
  const [, draw] = useState(0);
  const shown = read(clock.now());
  const last = useRef({ read, shown });
  last.current = { read, shown };
  useEffect(
    () =>
      atEachBeat(everyMs, () => {
        if (!Object.is(last.current.read(clock.now()), last.current.shown)) draw((count) => count + 1);
      }),
    [everyMs, clock],
  );
  return shown;
}

/** Whole seconds to an instant, never less than there really is; those of a trial pass at its speed. */
export function secondsTo(atMs: number, now: number, speed = 1): number {
  return Math.ceil(((atMs - now) * speed) / 1000);
}
