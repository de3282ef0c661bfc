import { beforeEach, describe, expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";
import { englishIn } from "../../support/english.ts";

let room: Room;
const fieldsOf = (line: string, role?: "aide" | "teacher") =>
  room.asks("Mina", line, role).reply.fields ?? {};

beforeEach(() => {
  room = createRoom();
  room.says(
    "Tess",
    "/print enlarger enlarger:E1 name:Left bench light:condenser lens:50 timer:0.1",
    "teacher",
  );
  room.says(
    "Ada",
    "/print paper paper:X1 name:Pier Gloss size:18x24 kind:resin-coated speed:200 lot:4711",
    "aide",
  );
});

describe("/print strip and /print read", () => {
  test("a strip is a table: what to set, and what each bar has", () => {
    const text = room.says("Mina", "/print strip base:8 step:1/3 bars:4");
    expect(text.split("\n").slice(0, 6)).toEqual([
      "**4 bars, 8 s to 16 s**, 1/3 stop apart.",
      "Expose the whole strip, then cover one bar more before each exposure.",
      "1. All open: **8 s** (bar 1 has 8 s)",
      "2. Cover bar 1: **2.1 s** (bar 2 has 10.1 s)",
      "3. Cover to bar 2: **2.6 s** (bar 3 has 12.7 s)",
      "4. Cover to bar 3: **3.3 s** (bar 4 has 16 s)",
    ]);
    expect(text).toContain("No calls for this: 2.1 s is too quick for a chat.");
  });

  test("a page that quotes a maker: five bars of a stop at f/8; all pale f/4, all dark f/16", () => {
    expect(room.says("Mina", "/print strip base:2 step:1 bars:5 aperture:8")).toContain(
      "All too pale? f/4. All too dark? f/16.",
    );
  });

  test("its bar that is right gives the time, in both ways of saying it, and each person has their own strip", () => {
    room.says("Mina", "/print strip base:8 step:1/2 bars:5 grade:2");
    room.says("Ben", "/print strip base:2 step:1 bars:5");
    expect(fieldsOf("/print read 3")).toMatchObject({ setTenths: 160, bar: 3, isBetween: false });
    expect(fieldsOf("/print read bar:2-3")).toMatchObject({ setTenths: 134, isBetween: true });
    expect(room.asks("Ben", "/print read 5").reply.fields).toMatchObject({ setTenths: 320 });
    expect(room.asks("Iris", "/print read 1").code).toBe("ERR_NO_STRIP");
    expect(room.asks("Mina", "/print read 6").code).toBe("ERR_BAR_BEYOND");
  });

  test("half a grade harder goes by the published rule, and by the class's own measurement once there is one", () => {
    room.says("Mina", "/print strip base:8 step:1/2 bars:5 grade:3 1/2 paper:1");
    expect(fieldsOf("/print read bar:3 harder:0.5")).toMatchObject({ setTenths: 320, gradeBasis: "rule" });
    room.says("Ada", "/print measure paper:1 grade:3 1/2 seconds:12 was:10", "aide");
    room.says("Ada", "/print measure paper:1 grade:4 seconds:18 was:10", "aide");
    expect(fieldsOf("/print read bar:3 harder:0.5")).toMatchObject({
      setTenths: 240,
      gradeBasis: "measured",
    });
    expect(fieldsOf("/print read bar:3 harder:3")).toMatchObject({ gradeTenths: 50 });
  });

  test("what a timer can't make is refused with what to do", () => {
    const { code, reply } = room.asks("Mina", "/print strip base:2 step:1/6 timer:1");
    expect(code).toBe("ERR_STRIP_FINE");
    expect(reply.text).toContain("Take a longer base time or a larger step.");
    expect(room.asks("Mina", "/print strip base:61:00").code).toBe("ERR_OPTIONS");
    expect(room.asks("Mina", "/print strip base:3000 step:1 bars:12").code).toBe("ERR_STRIP_LONG");
  });
});

describe("/print time", () => {
  test.each([
    // The sources of these rows are beside the arithmetic, in light.test.ts.
    ["seconds:45 lens:12 in to 24 in", 1800],
    ["seconds:45 lens:12 in to 36 in", 4050],
    ["seconds:11 lens:10 in to 15 in timer:0.1", 248],
    ["seconds:9 times:2 to 3 timer:0.1", 160],
    ["seconds:21 size:8x10 to 11x14 negative:24x36 timer:0.1", 374],
    ["seconds:8 size:8x12 in to 12x18 in", 180],
    ["seconds:40 meter:15 to 12", 320],
    ["seconds:60 meter:30 to 40", 800],
    ["seconds:12 density:1.5 to 1.9 timer:0.1", 301],
    ["seconds:10 aperture:8 to 11", 200],
    ["seconds:10 grade:2 to 4", 200],
  ])("%s", (options, tenths) => {
    expect(fieldsOf(`/print time ${options}`)["setTenths"]).toBe(tenths);
  });

  test("a printer's table: 25.4 s, dodge 1/3 stop holds back 5.2 s, burn 1/2 stop adds 10.5 s", () => {
    const { locals } = fieldsOf("/print time seconds:25.4 dodge:face 1/3 burn:sky 1/2");
    expect(locals).toMatchObject([
      { kind: "burn", place: "sky", tenths: 105 },
      { kind: "dodge", place: "face", tenths: 52 },
    ]);
  });

  test("a condenser's light does not keep to the law, and it is said", () => {
    expect(room.says("Mina", "/print time 10 times:2 to 4")).toContain(
      "A condenser's light does not keep to this law",
    );
    room.says("Tess", "/print enlarger enlarger:1 light:diffuse", "teacher");
    expect(room.says("Mina", "/print time 10 times:2 to 4")).toContain(
      "holds for diffuse light, as your enlarger has",
    );
  });

  test("sources that differ are both told", () => {
    expect(room.says("Mina", "/print time 21 size:8x10 to 11x14 negative:24x36")).toContain(
      "The plain rule of areas says",
    );
    expect(room.says("Mina", "/print time 10 grade:2 to 4")).toContain(
      "Another printer's own light wanted 1.22 times",
    );
    expect(room.says("Mina", "/print time 10 dry:10")).toContain("8 to 12 %");
  });

  test("what it was must be known, and one way to say how large the picture is must do", () => {
    expect(room.asks("Mina", "/print time 10 aperture:8").code).toBe("ERR_FROM_WHAT");
    expect(room.asks("Mina", "/print time 10 times:2 to 4 size:8x10 to 11x14").code).toBe(
      "ERR_ONE_ENLARGEMENT",
    );
    expect(room.asks("Mina", "/print time 10 height:12 to 15").code).toBe("ERR_HEAD_LOW");
    expect(room.asks("Mina", "/print time 10 paper:1 to 7").code).toBe("ERR_UNKNOWN_PAPER");
    expect(room.asks("Mina", "/print time 10 dodge:face 12 s").code).toBe("ERR_LOCAL_RANGE");
  });
});

describe("papers and enlargers", () => {
  test("a new box's speed is measured beside a known one, and a new lot forgets what was measured of the old", () => {
    room.says("Ada", "/print paper paper:2 name:Harbour Matt kind:fibre size:24x30", "aide");
    expect(room.says("Mina", "/print time 10 paper:1 to 2")).toContain("nothing allowed for");
    room.says("Ada", "/print measure paper:2 beside:1 seconds:12.5 was:10 dry:9", "aide");
    expect(fieldsOf("/print time 10 paper:1 to 2")["setTenths"]).toBe(125);
    expect(room.says("Ada", "/print paper paper:2 lot:new 12", "aide")).not.toContain("speed");
    expect(room.says("Mina", "/print time 10 paper:1 to 2")).toContain("nothing allowed for");
  });

  test("they are listed, found by their letters, and taken off", () => {
    expect(room.says("Mina", "/print gear")).toContain(
      "**E1** Left bench: condenser, 50 mm lens, timer in steps of 0.1 s",
    );
    room.says("Tess", "/print enlarger enlarger:E1 remove:yes", "teacher");
    expect(room.says("Mina", "/print gear")).toContain("named no enlarger yet");
    expect(room.asks("Tess", "/print enlarger enlarger:E1 remove:yes", "teacher").code).toBe(
      "ERR_UNKNOWN_ENLARGER",
    );
    expect(room.says("Mina", "/print strip")).toContain("taken to go in steps of 0.5 s");
  });

  test("one that can't be read takes only itself out, is named, and is set aside", () => {
    room.stores.db.prepare("update papers set body = json_set(body, '$.size.shortMm', 3)").run();
    expect(room.says("Mina", "/print gear")).toContain("X1 can't be read");
    expect(room.asks("Mina", "/print strip paper:1").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.says("Tess", "/class mend", "teacher")).toContain("**X1** (box of paper)");
    expect(room.says("Ada", "/print paper paper:1 remove:yes", "aide")).toContain("set aside");
    expect(room.says("Mina", "/print gear")).not.toContain("X1");
  });
});

test("another class has its own", () => {
  const other = room.stores.classes.add("room:other", "Another class (invented)", "UTC", false, 0);
  expect(room.stores.enlargers.list(other.id)).toEqual([]);
  expect(room.stores.papers.find(other.id, 1)).toBeUndefined();
});

test("in German, with decimal commas and the trade's words", () => {
  room.says("Mina", "/mine language de");
  const texts = [
    room.says("Mina", "/print strip base:5,6 step:1/2 bars:4 grade:3 1/2 paper:1 aperture:8"),
    room.says("Mina", "/print read bar:2-3 harder:0,5"),
    room.says(
      "Mina",
      "/print time 12,5 height:40 auf 55 grade:2 auf 4 dry:9 burn:Himmel 1/2 dodge:Gesicht 20 %",
    ),
    room.says("Mina", "/print time 12,5 size:18x24 auf 24x30"),
    room.says("Mina", "/print time 12,5 aperture:8"),
  ];
  expect(englishIn(...texts.map((text) => text.replaceAll("Pier Gloss", "")))).toEqual([]);
  expect(texts[0]).toContain("**4 Felder, 5,6 s bis 15,8 s**, Abstand 1/2 Blende.");
  expect(texts[2]).toContain("Himmel 1/2 Blende nachbelichten");
  expect(texts[2]).toContain("Kondensorlicht hält sich nicht an dieses Gesetz");
});
