import { useEffect, useState } from "preact/hooks";
import { useRoom } from "./room-context.ts";

/** The room's time, anew each `everyMs`; for the few parts that count. */
export function useRoomTime(everyMs = 250): number {
  const { clock } = useRoom();
  const [now, setNow] = useState(clock.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(clock.now()), everyMs);
    return () => clearInterval(timer);
  }, [everyMs]);
  return now;
}

/** Whole seconds to an instant: never less than there really is. */
export function secondsTo(atMs: number, now: number): number {
  return Math.ceil((atMs - now) / 1000);
}
