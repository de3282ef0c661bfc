import { describe, expect, test } from "vitest";
import { makeLine } from "../../../../commands/speech/line.ts";
import { createRoom } from "../../../support/room.ts";

const strip = (slope: number): string =>
  Array.from({ length: 21 }, (_, at) => (0.25 + Math.max(0, at - 2) * 0.15 * slope).toFixed(2)).join(" ");
const READINGS = `6:00 ${strip(0.5)}; 9:00 ${strip(0.62)}; 13:00 ${strip(0.75)}`;

describe("/sheet tablet", () => {
  test("says the time for the wanted gradient first, each construction by name, and draws the family", () => {
    const { reply } = createRoom().asks("Aida", `/sheet tablet aim:0.6 readings:"${READINGS}"`, "aide");
    expect(reply.text).toMatch(/^\*\*8:\d\d\*\* for a gradient of 0.6/);
    expect(reply.text).toMatch(
      /9:00: gradient 0.62 over 1.30 log H, 0.62 over 1.50, contrast index 0.6\d, gamma 0.6/,
    );
    expect(reply.text).toContain("not the same number");
    expect(reply.pictures?.[0]?.svg).toContain("<path");
    expect(reply.pictures?.[0]?.alt).toContain("6:00, 9:00, 13:00");
  });

  test("warns of a kink, says what one strip can't, and what the tried times don't reach", () => {
    const room = createRoom();
    const kinked = "8:00 .02 .11 .21 .34 .48 .62 .76 .97 1.18 1.33 1.44";
    const one = room.says("Aida", `/sheet tablet step:0.301 fog:0 readings:"${kinked}"`, "aide");
    expect(one).toMatch(/^\*\*One time only\*\*[\s\S]*step 7 breaks the line/);
    const slip = "9:00 .10 .12 .18 .28 .40 .53 .86 .79 .92 1.05 1.17 1.28 1.38";
    expect(room.says("Aida", `/sheet tablet readings:"${slip}"`, "aide")).toContain(
      "steps 6, 7 and 8 break the line of their neighbours. Read them again",
    );
    expect(room.says("Aida", `/sheet tablet aim:1.1 readings:"${READINGS}"`, "aide")).toMatch(
      /^\*\*No time yet/,
    );
  });

  test("reads the same from a file: rows or columns, with tabs, commas or decimal commas", () => {
    const room = createRoom();
    const strips = [strip(0.5), strip(0.62), strip(0.75)].map((each) => each.split(" "));
    const times = ["6:00", "9:00", "13:00"];
    const byRow = strips.map((each, at) => [times[at], ...each]);
    const byColumn = Array.from({ length: 22 }, (_, row) => byRow.map((each) => each[row]));
    const typed = room.asks("Aida", `/sheet tablet aim:0.6 readings:"${READINGS}"`, "aide").reply.fields;
    const files = [
      byRow.map((row) => row.join(",")).join("\n"),
      byRow.map((row) => row.join("\t")).join("\r\n"),
      byColumn
        .map((row) => row.join(";"))
        .join("\n")
        .replaceAll(".", ","),
      byColumn.map((row, at) => [at === 0 ? "step" : at, ...row].join(",")).join("\n"),
    ];
    for (const file of files)
      expect(
        room.asks("Aida", makeLine("sheet tablet", { aim: 0.6, file }), "aide").reply.fields,
        file.slice(0, 60),
      ).toEqual(typed);
    expect(room.asks("Aida", "/sheet tablet", "aide").code).toBe("ERR_NO_READINGS");
  });

  test("keeps the time in the class's sheet only when asked, with who measured it and when", () => {
    const room = createRoom();
    const named = 'film:"Lantern 400" developer:"House MQ" dilution:1+1 temp:22C ei:200';
    room.asks("Aida", `/sheet tablet aim:0.6 ${named} readings:"${READINGS}"`, "aide");
    const points = () =>
      room.stores.sheets.list(1).find(({ sheet }) => sheet.dilution.waterParts === 1)?.sheet.points ?? [];
    const before = points().length;
    expect(room.asks("Aida", `/sheet tablet save:yes readings:"${READINGS}"`, "aide").code).toBe(
      "ERR_TABLET_SAVE",
    );
    const saved = room.asks(
      "Aida",
      '/sheet tablet save:yes aim:0.6 film:"Kelp 50" developer:Brine dilution:1+9 temp:20C ei:50 ' +
        `readings:"${READINGS}"`,
      "aide",
    );
    expect(saved.reply.text).toMatch(/8:\d\d at 20 °C \(68 °F\) is in the data sheet of Kelp 50/);
    expect(points()).toHaveLength(before);
    const kept = room.stores.sheets.list(1).find(({ sheet }) => sheet.film === "Kelp 50")?.sheet.points[0];
    expect(kept?.source).toMatch(/^measured by this class, \d{4}-\d\d-\d\d, by Aida$/);
    expect(room.says("Mina", '/plan film:"Kelp 50" temp:20')).toContain("measured by this class");
  });

  test("speaks German, and says what can't be read", () => {
    const room = createRoom();
    room.asks("Aida", "/mine language language:de", "aide");
    expect(room.says("Aida", `/sheet tablet aim:0.6 readings:"${READINGS}"`, "aide")).toMatch(
      /^\*\*8:\d\d\*\* für einen Gradienten von 0,6/,
    );
    expect(room.says("Aida", '/sheet tablet readings:"8:00 0,1 dunkel 0,3 0,4 0,5 0,6"', "aide")).toContain(
      "ist keine Dichte",
    );
  });
});
