import { describe, expect, test } from "vitest";
import { createRoom } from "../../../support/room.ts";

describe("/class digest", () => {
  test("says when the class is told what", () => {
    const room = createRoom();
    const said = room.says("Iris", "/class digest", "teacher");
    expect(said).toContain("**1 h** before each period");
    expect(said).toContain("**Monday 08:00**: the week's rolls");
    expect(said).toContain("The class has no periods yet");
  });

  test("sets each part, and the others stay", () => {
    const room = createRoom();
    room.says("Iris", "/class periods days:mon from:18:00 to:20:30", "teacher");
    const { reply } = room.asks(
      "Iris",
      "/class digest before:90 min day:fri at:6 pm quietfrom:21:00",
      "teacher",
    );
    expect(reply.fields).toMatchObject({
      digestLeadMinutes: 90,
      weekDigestWeekday: 5,
      weekDigestMinute: 1080,
      silenceFromMinute: 1260,
      silenceToMinute: 420,
    });
    expect(reply.text).toContain("**1 h 30 min** before each period");
    expect(room.stores.classes.get(1)?.habits.periods).toHaveLength(1);
  });

  test.each([
    ["day:someday", "ERR_NO_DAYS"],
    ["at:noonish", "ERR_NO_CLOCK"],
    ["before:20 h", "ERR_LEAD_RANGE"],
  ])("%s is refused, and nothing changes", (options, code) => {
    const room = createRoom();
    expect(room.asks("Iris", `/class digest ${options}`, "teacher").code).toBe(code);
    expect(room.stores.classes.get(1)?.habits).toMatchObject({
      digestLeadMinutes: 60,
      weekDigestMinute: 480,
    });
  });
});
