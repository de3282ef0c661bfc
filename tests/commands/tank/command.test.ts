import { describe, expect, it } from "vitest";
import { createRoom } from "../../support/room.ts";
import { aPlan } from "../../support/make.ts";

describe("/tank", () => {
  it("adds many tanks in one line and lists them", () => {
    const room = createRoom();
    expect(room.says("Iris", "/tank add numbers:6-8 reels:2 volume:600 ml", "teacher")).toBe(
      "**3 tanks**: 6-8 (2 reels, 600 ml, any format each).",
    );
    expect(room.says("Mina", "/tank list")).toContain("**8 of 8** tanks are free and in order.");
    expect(room.says("Mina", "/tank list")).toContain("- **Tank 7**: 2 reels, 600 ml, any format; free");
  });

  it("sets a known tank anew and keeps its fault", () => {
    const room = createRoom();
    room.says("Mina", "/tank report tank:2 fault:leaks at the lid");
    expect(room.says("Iris", "/tank add numbers:2 reels:2 volume:600", "teacher")).toContain(
      "Of these 2 were there already",
    );
    expect(room.stores.tanks.find(1, 2)).toMatchObject({ reels: 2, condition: "leaks at the lid" });
  });

  it("keeps a reported fault until an aide clears it", () => {
    const room = createRoom();
    expect(room.says("Mina", "/tank report tank:2 fault:leaks")).toContain("Put the tank aside.");
    expect(room.says("Mina", "/tank list")).toContain("**4 of 5** tanks are free and in order.");
    expect(room.asks("Mina", "/tank clear tank:2").code).toBe("ERR_ROLE");
    expect(room.says("Ben", "/tank clear tank:2", "aide")).toBe("Tank 2 is in order again. It was: leaks.");
  });

  it("says who has a tank, until the film hangs", async () => {
    const room = createRoom();
    room.says("Mina", "/help");
    room.stores.plans.add(1, "room:mina", aPlan({ tank: 3 }), room.clock.now());
    room.says("Mina", "/run start");
    expect(room.says("Ben", "/tank list")).toContain("in use by R1, Mina: Developer");
    expect(room.asks("Iris", "/tank remove tank:3", "teacher").code).toBe("ERR_TANK_BUSY");
    expect(room.says("Iris", "/tank remove tank:4", "teacher")).toContain("Tank 4 is gone");
  });

  it("names the tanks there are when a number is wrong", () => {
    const room = createRoom();
    expect(room.says("Mina", "/tank report tank:9 fault:leaks")).toBe(
      "There is no tank 9. The class has 1-5.",
    );
  });

  it("makes text of people harmless", () => {
    const room = createRoom();
    expect(room.says("Mina", "/tank report tank:1 fault:**@everyone** leaks")).not.toContain("**@everyone");
  });
});
