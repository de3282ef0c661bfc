import { useEffect, useState } from "preact/hooks";
import { useRoom } from "./room-context.ts";

/** The room's time, drawn anew each `everyMs`; for the few parts that count. */
export function useRoomTime(everyMs = 250): number {
  const { clock } = useRoom();
  const [, draw] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => draw((count) => count + 1), everyMs);
    return () => clearInterval(timer);
  }, [everyMs]);
  // Read at each drawing: what was read before the room told its time is that of a phone that may be wrong.
  return clock.now();
}

/** Whole seconds to an instant, never less than there really is; those of a trial pass at its speed. */
export function secondsTo(atMs: number, now: number, speed = 1): number {
  return Math.ceil(((atMs - now) * speed) / 1000);
}
