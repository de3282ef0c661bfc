import { describe, expect, it } from "vitest";
import { createEraser } from "../../../bot/rounds/eraser.ts";
import { createMemoryLog, createRoom } from "../../support/room.ts";

function isSwept(stores: ReturnType<typeof createRoom>["stores"]): boolean {
  return stores.erasures.unsweptSince() === undefined;
}

describe("sweeping the store", () => {
  it("waits until the answer to the erasure is out, and is done once", () => {
    const room = createRoom();
    const log = createMemoryLog();
    const eraser = createEraser({ stores: room.stores, clock: room.clock, log });
    eraser.beat();
    room.says("Mina", "/mine erase name:Mina");
    eraser.beat();
    expect(isSwept(room.stores)).toBe(false);
    room.away(31);
    eraser.beat();
    expect(isSwept(room.stores)).toBe(true);
    eraser.beat();
    expect(log.lines.filter(({ message }) => message.includes("swept"))).toHaveLength(1);
  });

  it("waits for a minute without calls, but not for ever", async () => {
    const room = createRoom();
    const eraser = createEraser({ stores: room.stores, clock: room.clock, log: createMemoryLog() });
    room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    room.says("Ben", "/run start");
    room.says("Ben", "/run next");
    room.says("Mina", "/mine erase name:Mina");
    // The next call is at 1:00.
    await room.pass(50);
    eraser.beat();
    expect(isSwept(room.stores)).toBe(false);
    await room.pass(15);
    eraser.beat();
    expect(isSwept(room.stores)).toBe(true);
  });

  it("goes on after a fault, and says it", () => {
    const room = createRoom();
    const log = createMemoryLog();
    const broken = {
      ...room.stores,
      privacy: {
        ...room.stores.privacy,
        sweep: () => {
          throw new Error("disk");
        },
      },
    };
    room.says("Mina", "/mine erase name:Mina");
    room.away(60);
    createEraser({ stores: broken, clock: room.clock, log }).beat();
    expect(log.lines.at(-1)).toMatchObject({ level: "error" });
    expect(isSwept(room.stores)).toBe(false);
    createEraser({ stores: room.stores, clock: room.clock, log }).beat();
    expect(isSwept(room.stores)).toBe(true);
  });
});
