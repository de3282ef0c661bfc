import { describe, expect, test } from "vitest";
import { makeLine } from "../../../commands/speech/line.ts";
import { createRoom } from "../../support/room.ts";

const ADD = '/sheet add film:"Test 400" developer:"Test MQ" dilution:1:9 temp:20C time:9:00';

describe("/sheet add", () => {
  test("begins a sheet, grows it, and refuses what contradicts it, with both rows", () => {
    const room = createRoom();
    expect(room.asks("Tess", ADD, "teacher").code).toBe("ERR_NO_SPEED");
    const first = room.asks("Tess", `${ADD} speed:400`, "teacher");
    expect(first.reply.text).toContain("makers' 1:9 means 1+9");
    expect(room.asks("Tess", ADD.replace("20C", "24C").replace("9:00", "6:45"), "aide").kind).toBe("done");
    const contradicting = room.asks("Tess", ADD.replace("20C", "22C").replace("9:00", "9:30"), "aide");
    expect(contradicting.code).toBe("ERR_SHEET_FAULTS");
    expect(contradicting.reply.text).toContain("9:30 at 22 °C (71.6 °F), EI 400");
    expect(contradicting.reply.text).toContain("9:00 at 20 °C (68 °F), EI 400");
    expect(contradicting.reply.text).toContain("Nothing was changed");
  });

  test("another time for the same place needs replace:yes", () => {
    const room = createRoom();
    room.asks("Tess", `${ADD} speed:400`, "teacher");
    const again = room.asks("Tess", ADD.replace("9:00", "8:30"), "teacher");
    expect(again.reply.text).toContain("`replace:yes`");
    const replaced = room.asks("Tess", `${ADD.replace("9:00", "8:30")} replace:yes`, "teacher");
    expect(replaced.reply.fields).toMatchObject({ points: [{ seconds: 510 }] });
  });

  test("one film in two spellings stays one sheet, with the first spelling", () => {
    const room = createRoom();
    const before = room.asks("Ann", "/sheet list").reply.fields?.["sheets"] as unknown[];
    room.asks("Tess", `${ADD} speed:400`, "teacher");
    room.asks(
      "Tess",
      ADD.replace("Test 400", "TEST  400").replace("20C", "24C").replace("9:00", "6:45"),
      "teacher",
    );
    const after = room.asks("Ann", "/sheet list").reply.fields?.["sheets"] as { film: string }[];
    expect(after).toHaveLength(before.length + 1);
    expect(after.filter(({ film }) => film === "Test 400")).toHaveLength(1);
  });

  test("a student may not, and times and temperatures beyond all sense are refused", () => {
    const room = createRoom();
    expect(room.asks("Ann", `${ADD} speed:400`).code).toBe("ERR_ROLE");
    expect(room.asks("Tess", `${ADD.replace("9:00", "0:05")} speed:400`, "teacher").code).toBe("ERR_OPTIONS");
    expect(room.asks("Tess", `${ADD.replace("20C", "90C")} speed:400`, "teacher").code).toBe("ERR_OPTIONS");
    expect(room.asks("Tess", `${ADD} speed:400 reuse:often`, "teacher").reply.text).toContain("1/10%/10");
  });
});

describe("/sheet show and list", () => {
  test("shows rows, source, what the sheet says of itself, and its curve", () => {
    const room = createRoom();
    room.asks(
      "Tess",
      `${ADD} speed:400 source:"label" coldest:18C hottest:24C factor:2.3 tabular:yes reuse:1/10%/10 minimum:50 ml`,
      "teacher",
    );
    const { reply } = room.asks("Ann", "/sheet show film:test 400");
    for (const words of [
      "**9:00** at 20 °C (68 °F), EI 400 (label)",
      "Not below 18 °C",
      "Not above 24 °C",
      "2.3",
      "Tabular grain",
      "1/10%/10",
      "50 ml",
    ])
      expect(reply.text).toContain(words);
    expect(reply.pictures?.[0]?.alt).toContain("at 18 °C down to");
  });

  test("lists by part of a name, and says when nothing fits", () => {
    const room = createRoom();
    expect(room.asks("Ann", "/sheet list lantern").reply.text).toContain("Lantern 400");
    expect(room.asks("Ann", "/sheet list nothing-like-it").reply.text).toContain("No data sheet has");
  });
});

describe("/sheet export and import", () => {
  test("what one class exports another imports, as CSV and as JSON, and sees what was replaced", () => {
    for (const format of ["csv", "json"]) {
      const from = createRoom();
      from.asks("Tess", `${ADD} speed:400`, "teacher");
      const exported = from.asks("Ann", `/sheet export format:${format}`);
      const file = exported.reply.attachments?.[0]?.content ?? "";
      const into = createRoom();
      const imported = into.asks("Tess", makeLine("sheet import", { file }), "teacher");
      expect(imported.kind, imported.reply.text).toBe("done");
      expect(imported.reply.fields).toMatchObject({ added: 1 });
      expect(into.asks("Ann", `/sheet export format:${format}`).reply.attachments?.[0]?.content).toBe(file);
    }
  });

  test("a file's times come to those there are; what it would change is named first, and nothing is lost", () => {
    const room = createRoom();
    const rows = (...times: string[]): string =>
      ["film,film_speed,developer,dilution,temperature,exposure_index,time,source", ...times].join("\n");
    const bring = (file: string, more = "") =>
      room.asks("Tess", `${makeLine("sheet import", { file })}${more}`, "teacher");
    const times = (): string => room.says("Ann", "/sheet show film:Kelp 50");
    expect(bring(rows("Kelp 50,50,Brine,1+9,20C,50,9:00,invented")).reply.fields).toMatchObject({
      added: 1,
      times: 1,
    });
    expect(bring(rows("Kelp 50,50,Brine,1+9,24C,50,6:30,invented")).reply.fields).toMatchObject({
      added: 0,
      times: 1,
    });
    expect(times()).toMatch(/9:00[^]*6:30/);
    const refused = bring(rows("Kelp 50,50,Brine,1+9,20C,50,9:30,invented"));
    expect(refused.code).toBe("ERR_TWO_TIMES");
    expect(refused.reply.text).toContain(
      "Kelp 50 in Brine 1+9 at 20 °C (68 °F), EI 50: 9:00 would become 9:30",
    );
    expect(refused.reply.again?.option).toBe("replace");
    expect(times()).toContain("9:00");
    expect(
      bring(rows("Kelp 50,50,Brine,1+9,20C,50,9:30,invented"), " replace:yes").reply.fields,
    ).toMatchObject({ replaced: 1 });
    expect(times()).toMatch(/9:30[^]*6:30/);
    // Old and new that can't both be true: the hotter bath would take longer.
    expect(bring(rows("Kelp 50,50,Brine,1+9,22C,50,12:00,invented")).code).toBe("ERR_SHEET_FAULTS");
  });

  test("a file with faults changes nothing at all, and every fault is told", () => {
    const room = createRoom();
    const before = room.asks("Ann", "/sheet export").reply.attachments?.[0]?.content;
    const file = [
      "film,developer,dilution,film_speed,temperature,time,source",
      "Good 100,Test MQ,1+9,100,20C,9:00,a",
      "Bad 100,Test MQ,1+9,100,20C,nine,a",
      "Bad 100,Test MQ,one,100,20C,9:00,a",
    ].join("\n");
    const answered = room.asks("Tess", makeLine("sheet import", { file }), "teacher");
    expect(answered.code).toBe("ERR_FILE");
    expect(answered.reply.text).toContain("Nothing was imported. 2 faults");
    expect(answered.reply.text).toMatch(/Line 3: time[\s\S]*Line 4: dilution/);
    expect(room.asks("Ann", "/sheet export").reply.attachments?.[0]?.content).toBe(before);
  });

  test("a film without sheets can't be exported, and says so", () => {
    expect(createRoom().asks("Ann", "/sheet export film:nobody").code).toBe("ERR_NO_SHEETS");
  });
});
