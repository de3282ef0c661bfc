import { beforeEach, describe, expect, test } from "vitest";
import { readCsv, readJson, toRecord } from "../../../commands/print/export/file.ts";
import { EVERY_PRINT } from "../../../store/shapes/print.ts";
import { englishIn } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";
import { aNewRoll, takeLog } from "../../support/rolls.ts";

let room: Room;
const HARBOUR =
  "/print log seconds:12.5 grade:2 1/2 paper:X1 title:Harbour at dusk roll:L1 frame:12A burn:sky 1/2 dodge:face 20 % aperture:8 height:42 develop:1:30 temp:20C";
const fieldsOf = (line: string, person = "Mina") => room.asks(person, line).reply.fields ?? {};
const prints = () => room.stores.prints.search(1, EVERY_PRINT, 100, 0).prints;

beforeEach(() => {
  room = createRoom();
  room.says("Tess", "/print enlarger enlarger:E1 name:Left bench light:diffuse lens:50 timer:0.1", "teacher");
  room.says(
    "Ada",
    "/print paper paper:X1 name:Pier Gloss kind:resin-coated size:18x24 speed:200 lot:4711",
    "aide",
  );
  room.says("Mina", "/help");
  room.stores.rolls.add(aNewRoll({ personId: "room:mina", personName: "Mina", runId: null as never }));
});

describe("a print in the log", () => {
  test("has all that is needed to make it again, in the order it is done", () => {
    const text = room.says("Mina", HARBOUR);
    expect(text.split("\n").slice(2)).toEqual([
      "- **12.5 s**, grade 2 1/2, f/8, head at 42 cm, on 18x24 cm",
      "- burn sky 1/2 stop: **5.2 s** more",
      "- dodge face 0.32 stop: hold back **2.5 s**",
      "- X1 Pier Gloss, resin-coated, variable contrast, 18x24 cm, lot 4711",
      "- **E1** Left bench: diffuse light, 50 mm lens, timer in steps of 0.1 s",
      "- developed: 1 min 30 s, 20 °C (68 °F)",
      "Once it is dry, rate it: 1 (unusable) to 5 (as you wanted it).",
    ]);
    expect(text).toContain("Harbour at dusk (L1, frame 12A)");
  });

  test("US Army SS0509-8, p. 68: a record of 10 s overall, 3 s dodged, 8 s burned in, kept in stops", () => {
    room.says("Mina", "/print log seconds:10 dodge:face 3 s burn:sky 8 s");
    expect(prints()[0]?.body.locals).toEqual([
      { kind: "burn", place: "sky", milliStops: 848 },
      { kind: "dodge", place: "face", milliStops: 515 },
    ]);
    // Twice the time, the same stops: twice the seconds.
    expect(fieldsOf("/print log as:V1 seconds:20")["locals"]).toMatchObject([
      { milliStops: 848 },
      { milliStops: 515 },
    ]);
    expect(room.says("Mina", "/print show V2")).toContain("burn sky 0.85 stop: **16 s** more");
  });

  test("goes on from a strip that was read, by one button", () => {
    room.says("Mina", "/print strip base:8 step:1/2 grade:2 paper:1 aperture:8");
    room.asks("Mina", "/print read 3");
    const line = room.asks("Mina", "/print read 3").reply.actions?.[0]?.line ?? "";
    expect(fieldsOf(`/${line}`)).toMatchObject({
      exposureTenths: 160,
      gradeTenths: 20,
      apertureTenths: 80,
      paper: 1,
    });
  });

  test("is rated and noted by its maker or staff, and by nobody else", () => {
    room.says("Mina", HARBOUR);
    expect(room.says("Mina", "/print rate 4")).not.toContain("rated");
    expect(room.says("Mina", "/print rate print:V1 rating:4")).toBe("V1 is rated 4 of 5.");
    expect(room.asks("Ben", "/print note print:V1 note:mine").code).toBe("ERR_NOT_YOUR_PRINT");
    expect(room.asks("Ben", "/print rate print:V1 rating:1").code).toBe("ERR_NOT_YOUR_PRINT");
    expect(room.asks("Ben", "/print fault print:V1 look:pale cause:unknown").code).toBe("ERR_NOT_YOUR_PRINT");
    expect(room.asks("Ada", "/print note print:V1 note:a little more sky", "aide").kind).toBe("done");
    expect(room.says("Ben", "/print show V1")).toContain("Note: a little more sky");
  });

  test("without an exposure, or of a roll there is none of, is refused", () => {
    expect(room.asks("Mina", "/print log title:Pier").code).toBe("ERR_NO_EXPOSURE");
    expect(room.asks("Mina", "/print log seconds:10 roll:L99").code).toBe("ERR_UNKNOWN_ROLL");
    expect(room.asks("Mina", "/print log as:V99").code).toBe("ERR_UNKNOWN_PRINT");
    expect(room.asks("Ben", "/print show").code).toBe("ERR_NO_PRINT_YET");
    expect(prints()).toEqual([]);
  });
});

describe("print it again", () => {
  beforeEach(() => void room.says("Mina", HARBOUR));

  test("with nothing changed it is as it was", () => {
    expect(fieldsOf("/print again")).toMatchObject({ setTenths: 125, stops: 0, parts: [] });
    expect(room.says("Mina", "/print again")).toContain("As it was: nothing has changed.");
  });

  test("a new lot in the same box is adjusted to by itself, and the burns with it", () => {
    room.says("Ada", "/print paper paper:X1 speed:100 lot:4800", "aide");
    const fields = fieldsOf("/print again V1");
    expect(fields).toMatchObject({ setTenths: 250, parts: [{ kind: "paper", stops: 1, basis: "speed" }] });
    expect(fields["locals"]).toMatchObject([
      { place: "sky", tenths: 104 },
      { place: "face", tenths: 50 },
    ]);
    expect(room.says("Mina", "/print again V1")).toContain(
      "X1 Pier Gloss (lot 4711) to X1 Pier Gloss (lot 4800)",
    );
  });

  test("on a larger sheet it goes by the enlargement of the roll's negative, and the button logs what was made", () => {
    // 24x36 to 18x24 cm fills it at 7.5 times, to 24x30 cm at 10: (11 / 8.5) squared.
    const { reply } = room.asks("Mina", "/print again print:V1 size:24x30");
    expect(reply.fields?.["setTenths"]).toBe(Math.round(125 * (11 / 8.5) ** 2));
    expect(reply.text).not.toContain("head at");
    const made = fieldsOf(`/${reply.actions?.[0]?.line ?? ""}`);
    expect(made).toMatchObject({
      exposureTenths: 209,
      size: { shortMm: 240, longMm: 300 },
      roll: 1,
      frame: "12A",
      headMm: null,
    });
    expect(made["locals"]).toMatchObject([{ milliStops: 500 }, { milliStops: 322 }]);
  });

  test("at another height it goes by the lens of its enlarger", () => {
    const fields = fieldsOf("/print again print:V1 height:55");
    expect(fields["parts"]).toMatchObject([{ kind: "height", basis: "law" }]);
    expect(Number(fields["setTenths"])).toBeGreaterThan(125);
  });

  test("any of it may change at once, and each part says what it rests on", () => {
    const text = room.says("Mina", "/print again print:V1 aperture:11 grade:4 dry:10");
    for (const part of [
      "aperture f/8 to f/11: +1 stop",
      "grade 2 1/2 to 4: +1 stop",
      "dry-down 10 %: -0.15 stop",
    ])
      expect(text).toContain(part);
    expect(text).toContain("**45 s**, grade 4, f/11");
  });
});

describe("found, compared, exported", () => {
  beforeEach(() => {
    room.says("Mina", HARBOUR);
    room.says("Mina", "/print log as:V1 seconds:25 note:darker now");
    room.says("Ben", "/print log seconds:8 title:Gulls");
    room.says("Mina", "/print rate print:V1 rating:4");
  });
  const found = (line: string) => (fieldsOf(line)["prints"] as { print: number }[]).map(({ print }) => print);

  test.each([
    ["/print find", [3, 2, 1]],
    ["/print find harb", [2, 1]],
    ["/print find darker", [2]],
    ["/print find pier gloss", [2, 1]],
    ["/print find person:Ben", [3]],
    ["/print find roll:L1 frame:12a", [2, 1]],
    ["/print find rating:4", [1]],
    ["/print find fault:yes", []],
    ["/print find when:yesterday", []],
    ["/print find when:today", [3, 2, 1]],
    ['/print find words:"\' OR * ("', []],
  ])("%s", (line, numbers) => expect(found(line)).toEqual(numbers));

  test("two side by side: what differs, and the light between them in stops", () => {
    expect(fieldsOf("/print compare print:V1 with:V2")).toMatchObject({ prints: [2, 1], stops: -1 });
    const text = room.says("Mina", "/print compare print:V2 with:V1");
    expect(text).toContain("- exposure: 12.5 s / 25 s (+1 stop)");
    expect(text).toContain(
      "The same: picture, negative, grade, aperture, head, size, burned and dodged, paper",
    );
  });

  test("as a file, which is read back whole, and no cell of which a table program takes for a formula", () => {
    room.says("Mina", "/print log seconds:3 title:=cmd note:-1; @x");
    const take = (line: string): string =>
      takeLog(room.stores, room.asks("Tess", `/print export ${line}`, "teacher").reply);
    const records = prints().map(toRecord);
    expect(readJson(take("as:json"))).toEqual(records);
    expect(readCsv(take(""))).toEqual(records);
    expect(take("")).toContain("'=cmd");
    for (const [asked, left] of [
      ["before:V3", [2, 1]],
      ["before:2 person:Mina", [1]],
      ["person:Mina", [4, 2, 1]],
      ["words:gul", [3]],
      ["when:yesterday", []],
    ] as const)
      expect(readCsv(take(asked)).map(({ print }) => print)).toEqual(left);
    expect(room.asks("Tess", "/print export before:yesterday", "teacher").code).toBe("ERR_UNKNOWN_PRINT");
    expect(room.asks("Mina", "/print export").code).toBe("ERR_ROLE");
  });

  test("each person takes their own along, and nobody else's", () => {
    const mine = JSON.parse(room.asks("Ben", "/mine export").reply.attachments?.[0]?.content ?? "");
    expect(mine.prints).toMatchObject([{ print: 3, title: "Gulls", exposure_seconds: 8 }]);
    expect(room.says("Mina", "/mine show")).toContain("2 prints");
  });

  test("another class sees none of them, and numbers begin anew there", () => {
    const other = room.stores.classes.add("room:other", "Another class (invented)", "UTC", false, 0);
    expect(room.stores.prints.search(other.id, EVERY_PRINT, 10, 0)).toEqual({ prints: [], total: 0 });
    const [first] = prints();
    const { number } = room.stores.prints.add({ ...first!, classId: other.id, personId: "room:x" });
    expect(number).toBe(1);
    expect(prints()).toHaveLength(3);
  });

  test("one that can't be read takes only itself out, and is named", () => {
    room.stores.db
      .prepare("update prints set body = json_set(body, '$.exposureTenths', 0) where number = 1")
      .run();
    expect(found("/print find")).toEqual([3, 2]);
    expect(room.asks("Mina", "/print show V1").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.asks("Mina", "/print again V1").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.says("Tess", "/class mend", "teacher")).toContain("**V1** (print in the log)");
    expect(room.says("Tess", "/class mend what:V1", "teacher")).toContain("V1 is set aside");
    expect(room.says("Tess", "/class mend", "teacher")).toBe("Everything of the class can be read.");
  });
});

test("in German", () => {
  room.says("Mina", "/mine language de");
  const texts = [
    room.says(
      "Mina",
      HARBOUR.replaceAll("sky", "Himmel").replaceAll("face", "Gesicht").replace("Harbour at dusk", "Hafen"),
    ),
    room.says("Mina", "/print log as:V1 seconds:25"),
    room.says("Mina", "/print again print:V1 size:24x30 grade:4"),
    room.says("Mina", "/print compare V1"),
    room.says("Mina", "/print find hafen"),
    room.says("Mina", "/print fault look:flat"),
    room.says("Mina", "/print fault look:flat cause:pulled-early"),
    room.says("Mina", "/print show"),
  ].map((text) => text.replaceAll(/Pier Gloss|Left bench|_Quelle.*_/g, ""));
  expect(englishIn(...texts)).toEqual([]);
  expect(texts[0]).toContain("Himmel 1/2 Blende nachbelichten: **5,2 s** mehr");
});
