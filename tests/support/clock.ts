import type { Clock } from "../../bot/process/clock.ts";
import { START } from "./make.ts";

/** A clock that moves only when it is told to. */
export interface FakeClock extends Clock {
  advance(seconds: number): void;
  back(seconds: number): void;
}

export function createFakeClock(at = START): FakeClock {
  let now = at;
  return {
    now: () => now,
    advance: (seconds) => void (now += seconds * 1000),
    back: (seconds) => void (now -= seconds * 1000),
  };
}
