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

/** Whole seconds to an instant, never less than there really is; those of a trial pass at its speed. */
export function secondsTo(atMs: number, now: number, speed = 1): number {
  return Math.ceil(((atMs - now) * speed) / 1000);
}
