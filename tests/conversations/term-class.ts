import { createDigest, type Digest } from "../../bot/rounds/digest.ts";
import { DEMO_KEY } from "../../bot/demo/demo.ts";
import { MARKS, type Mark } from "../../commands/batch/marks.ts";
import { createRoom, type Room } from "../support/room.ts";

/* An invented class at work: what its people do, through the real commands, on a clock told by hand. */

export interface Warned {
  readonly batch: number;
  readonly mark: Mark;
  readonly arm: number;
}

export interface TermClass {
  readonly room: Room;
  readonly digest: Digest;
  /** A person types a line that must be done. */
  must(
    person: string,
    line: string,
    role?: "student" | "aide" | "teacher",
  ): ReturnType<Room["asks"]>["reply"];
  /** The warnings the class heard since the last call of this. */
  warnings(): Promise<Warned[]>;
}

/** Thursdays 18:00-21:00 UTC, from 15 January 2026, 18:00. */
export function openClass(): TermClass {
  const room = createRoom();
  const found = room.stores.classes.find(DEMO_KEY);
  if (!found) throw new Error("no demo class");
  const periods = [{ weekday: 4, startMinute: 18 * 60, endMinute: 21 * 60, name: "Evening class" }];
  room.stores.classes.setHabits(found.id, { ...found.habits, periods });
  room.asks("Tess", "/help", "teacher");
  const digest = createDigest({ stores: room.stores, clock: room.clock, log: room.log });
  let read = 0;
  return {
    room,
    digest,
    must(person, line, role) {
      const answered = room.asks(person, line, role);
      if (answered.kind !== "done") throw new Error(`${line}: ${answered.reply.text}`);
      return answered.reply;
    },
    async warnings() {
      await room.tick();
      const fresh = room.heard.slice(read);
      read = room.heard.length;
      return fresh.flatMap(({ key, personId }) => {
        const match = /^b([0-9a-z]+)\.(\d)\.([0-9a-z]+)$/.exec(key);
        const mark = MARKS[Number(match?.[2])];
        if (!match || !mark || personId !== null) return [];
        return [{ batch: parseInt(match[1] ?? "", 36), mark, arm: parseInt(match[3] ?? "", 36) }];
      });
    },
  };
}

/** mulberry32 */
export function createRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
