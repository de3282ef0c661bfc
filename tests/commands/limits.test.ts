import { describe, expect, test } from "vitest";
import { createRoom } from "../support/room.ts";

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const FIXER = "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l clearing:0:45";

/* Each quantity outside of sense is refused with the range that makes sense, and nothing is kept of it. */

describe("a quantity outside of sense", () => {
  test.each([
    [`${PLAN} room:60C`, "0 °C (32 °F) and 45 °C (113 °F)"],
    [`${PLAN} fixtemp:60C`, "5 °C (41 °F) and 45 °C (113 °F)"],
    [`${PLAN} fixtemp:2C`, "5 °C (41 °F) and 45 °C (113 °F)"],
    [`${PLAN} watertemp:46C`, "0 °C (32 °F) and 45 °C (113 °F)"],
    [`${PLAN} clearing:2 s`, "0:05 and 30:00"],
    [`${PLAN} clearing:2 h`, "0:05 and 30:00"],
    [`${PLAN} volume:20 ml`, "50 ml and 20 l"],
    [`${PLAN} volume:30 l`, "50 ml and 20 l"],
    [`${PLAN} agitation:30/70/60`, "shorter than its cycle"],
    [`${PLAN} agitation:30/60/60`, "shorter than its cycle"],
    ["/class setup agitation:30/70/60", "shorter than its cycle"],
    ["/class setup room:70C", "0 °C (32 °F) and 45 °C (113 °F)"],
    ["/batch mix kind:fixer product:Pier Fix volume:1 l capacity:2000 films/l", "0.25 and 100 films a litre"],
    ["/batch mix kind:fixer product:Pier Fix volume:1 l capacity:0.1 films/l", "0.25 and 100 films a litre"],
    ["/batch mix kind:fixer product:Pier Fix volume:1 l clearing:3 s", "0:05 and 30:00"],
    ["/batch test batch:B1 clearing:1 h", "0:05 and 30:00"],
    ["/batch correct batch:B1 reason:slipped ml:-1100", "holds 1 l"],
    ["/batch correct batch:B1 reason:slipped rolls:-1", "0 rolls went through"],
    ["/mix temper total:1 l target:80C cold:10C hot:90C", "0 °C (32 °F) and 60 °C (140 °F)"],
    ["/mix temper total:1 l target:20C cold:10C hot:98C", "95 °C (203 °F)"],
    ["/tank measure tank:1 first:24C second:22C room:60C apart:20 min", "45 °C (113 °F)"],
    [
      "/sheet add film:Kelp 50 developer:Brine dilution:1+9 temp:20C time:9:00 speed:50 hottest:90C",
      "45 °C (113 °F)",
    ],
  ])("%s is refused with %s", (line, range) => {
    const room = createRoom();
    room.asks("Aida", FIXER, "aide");
    const before = room.stores.classes.find("room:demo")?.habits;
    const refused = room.asks("Iris", line, "teacher");
    expect(refused.kind, refused.reply.text).toBe("refused");
    expect(refused.reply.text).toContain(range);
    expect(room.stores.classes.find("room:demo")?.habits).toEqual(before);
    expect(room.stores.batches.list(1)).toHaveLength(1);
    expect(room.stores.batches.lines(1)).toHaveLength(1);
  });

  test("the ends themselves are taken", () => {
    const room = createRoom();
    for (const more of [
      "room:45C",
      "room:0C",
      "watertemp:0C",
      "fixtemp:5C",
      "clearing:5 s",
      "clearing:30 min",
    ])
      expect(room.asks("Mina", `${PLAN} ${more}`).kind, more).toBe("done");
  });
});
