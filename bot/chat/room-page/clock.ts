/* What time it is in the room, from a phone whose own clock may be minutes off. */

export interface Sync {
  /** The phone's clock when the question went out and when the answer came, ms. */
  readonly sentAt: number;
  readonly cameAt: number;
  /** The room's clock as the answer says, ms. */
  readonly roomNow: number;
}

export interface RoomClock {
  /** The room's time now, ms since the epoch. */
  now(): number;
  take(sync: Sync): void;
  /** A word of the room's time that came unasked: good enough until the first answer. */
  guess(roomNow: number): void;
  /** The room's clock was set by so much. */
  shift(byMs: number): void;
  setSpeed(speed: number): void;
}

interface Anchor {
  readonly phoneAt: number;
  readonly roomAt: number;
  readonly roundTripMs: number;
}

/** Beyond what delays explain, this much more means that a clock was set. */
const SET_MS = 250;

/** An older answer that came back quicker is better, but only for so long: clocks drift and phones sleep. */
const FRESH_MS = 60_000;

/**
 * The room's clock, told by the quickest answer of the last minute: half its round trip is the most it can be wrong.
 * `speed` is how many of the room's seconds pass in one of ours.
 */
export function createRoomClock(phoneNow: () => number = Date.now): RoomClock {
  let speed = 1;
  let anchor: Anchor | undefined;

  /** Two answers that no delay can explain: one of the clocks was set in between. */
  function isSameClock(before: Anchor, after: Anchor): boolean {
    const expected = before.roomAt + (after.phoneAt - before.phoneAt) * speed;
    const delay = (Math.min(before.roundTripMs, 1e6) + after.roundTripMs) / 2;
    return Math.abs(after.roomAt - expected) <= delay * speed + SET_MS;
  }

  return {
    now() {
      const phone = phoneNow();
      return anchor ? anchor.roomAt + (phone - anchor.phoneAt) * speed : phone;
    },
    take({ sentAt, cameAt, roomNow }) {
      const roundTripMs = cameAt - sentAt;
      const told = { phoneAt: cameAt - roundTripMs / 2, roomAt: roomNow, roundTripMs };
      const isFresh = anchor && cameAt - anchor.phoneAt <= FRESH_MS && cameAt >= anchor.phoneAt;
      if (anchor && isFresh && roundTripMs >= anchor.roundTripMs && isSameClock(anchor, told)) return;
      anchor = told;
    },
    guess(roomNow) {
      anchor ??= { phoneAt: phoneNow(), roomAt: roomNow, roundTripMs: Infinity };
    },
    shift(byMs) {
      if (anchor) anchor = { ...anchor, roomAt: anchor.roomAt + byMs };
    },
    setSpeed(next) {
      speed = next;
    },
  };
}
