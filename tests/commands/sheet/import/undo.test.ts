import { describe, expect, test } from "vitest";
import { makeLine } from "../../../../commands/speech/line.ts";
import { createRoom, type Room } from "../../../support/room.ts";

/* An import taken back by one key. The film, the bath and the times are invented. */

const TABLE = "EI\t18 °C\t20 °C\n50\t11\t9\n100\t13\t10:30";
const SAID = "film:Kelp 50 developer:Brine dilution:1+9";

const bring = (room: Room, file: string, more = "") =>
  room.asks("Tess", `${makeLine("sheet import", { file })} ${SAID} ${more}`, "teacher");
const kept = (room: Room): string => room.asks("Ann", "/sheet export").reply.attachments?.[0]?.content ?? "";

describe("/sheet undo", () => {
  test("one key takes back a sheet that the import made", () => {
    const room = createRoom();
    const before = kept(room);
    const came = bring(room, TABLE, "speed:50");
    expect(came.reply.text).toContain(
      "Kelp 50 in Brine 1+9, EI 50: 11:00 at 18 °C (64.4 °F), 9:00 at 20 °C (68 °F)",
    );
    expect(kept(room)).not.toBe(before);
    expect(room.press("Tess", "Take it all back", "teacher")).toBe(
      "**Import 1 is taken back:** 1 data sheet is gone again.",
    );
    expect(kept(room)).toBe(before);
    // The key again, and the command without a number: nothing more to take back.
    expect(room.says("Tess", "/sheet undo import:1", "teacher")).toContain("was taken back already");
    expect(room.asks("Tess", "/sheet undo", "teacher").code).toBe("ERR_NO_IMPORT");
  });

  test("added and replaced times and what was said of the whole sheet become as they were", () => {
    const room = createRoom();
    bring(room, TABLE, "speed:50");
    const before = kept(room);
    const file = [
      "film,developer,dilution,film_speed,agitation,temperature,exposure_index,time,source",
      "Kelp 50,Brine,1+9,50,60/10/60,20C,50,8:30,other label",
      "Kelp 50,Brine,1+9,50,60/10/60,24C,50,6:30,other label",
    ].join("\n");
    const refused = bring(room, file);
    expect(refused.code).toBe("ERR_TWO_TIMES");
    expect(refused.reply.text).toContain("1 time and 1 other fact would become another");
    expect(refused.reply.text).toMatch(/agitation: 30\/5\/60[^\n]* would become 60\/10\/60/);
    expect(kept(room)).toBe(before);
    expect(bring(room, file, "replace:yes").kind).toBe("done");
    expect(room.says("Tess", "/sheet undo", "teacher")).toBe(
      "**Import 2 is taken back:** 2 times are as before.",
    );
    expect(kept(room)).toBe(before);
    // Then the one before it.
    expect(room.says("Tess", "/sheet undo", "teacher")).toContain("Import 1 is taken back");
  });

  test("what somebody has changed since stays, and is told", () => {
    const room = createRoom();
    bring(room, TABLE, "speed:50");
    room.asks("Tess", `/sheet add ${SAID} temp:20C ei:50 time:8:45 replace:yes`, "aide");
    room.asks("Tess", `/sheet add ${SAID} temp:24C ei:50 time:6:15`, "aide");
    const undone = room.says("Tess", "/sheet undo", "teacher");
    expect(undone).toContain("3 times are as before");
    expect(undone).toContain("keeps what was changed since: 8:45 at 20 °C (68 °F), EI 50");
    const { points } = room.asks("Ann", "/sheet show film:Kelp 50").reply.fields as {
      points: { seconds: number }[];
    };
    expect(points.map(({ seconds }) => seconds)).toEqual([525, 375]);
  });

  test("where the times before contradict what was added since, the sheet stays whole", () => {
    const room = createRoom();
    bring(room, "EI\t20 °C\n50\t9", "speed:50");
    bring(room, "EI\t20 °C\n50\t12", "replace:yes");
    // Hotter, and longer than the first time was.
    room.asks("Tess", `/sheet add ${SAID} temp:22C ei:50 time:10:00`, "aide");
    const before = kept(room);
    expect(room.says("Tess", "/sheet undo", "teacher")).toContain("would contradict each other");
    expect(kept(room)).toBe(before);
  });

  test("in German, and not by a student", () => {
    const room = createRoom();
    room.says("Tess", "/mine language language:de", "teacher");
    bring(room, TABLE, "speed:50");
    expect(room.press("Tess", "Alles zurücknehmen", "teacher")).toBe(
      "**Einlesen 1 ist zurückgenommen:** 1 Datenblatt ist wieder weg.",
    );
    expect(room.asks("Ann", "/sheet undo").code).toBe("ERR_ROLE");
  });
});
