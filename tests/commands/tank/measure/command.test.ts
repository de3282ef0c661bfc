import { describe, expect, test } from "vitest";
import { createRoom } from "../../../support/room.ts";

describe("measuring how a tank follows the room", () => {
  test("two readings give the time constant of Newton's law, and the tank keeps it", () => {
    const room = createRoom();
    // Newton's law of cooling (any physics handbook): from 8 to 4 degrees off in 20 min is 20 min / ln 2 = 28 min 51 s.
    const { reply } = room.asks(
      "Ida",
      "/tank measure tank:3 first:26 second:22 room:18 apart:20 min",
      "aide",
    );
    expect(reply.fields).toEqual({ tank: 3, timeConstantSeconds: 1731 });
    expect(room.stores.tanks.find(1, 3)?.timeConstantSeconds).toBe(1731);
  });

  test.each([
    ["first:19 second:18.5 room:18 apart:20 min", "ERR_TOO_NEAR_ROOM"],
    ["first:22 second:24 room:18 apart:20 min", "ERR_WRONG_WAY"],
    ["first:22 second:22 room:18 apart:20 min", "ERR_NO_CHANGE"],
  ])("%s is refused, and nothing is kept", (options, code) => {
    const room = createRoom();
    expect(room.asks("Ida", `/tank measure tank:3 ${options}`, "aide").code).toBe(code);
    expect(room.stores.tanks.find(1, 3)?.timeConstantSeconds).toBeNull();
  });
});
