import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";

function roomWith(...lines: string[]): Room {
  const room = createRoom();
  for (const line of lines) {
    const answered = room.asks("Tess", line, "teacher");
    if (answered.kind !== "done") throw new Error(`${line}: ${answered.reply.text}`);
  }
  return room;
}

const ONE_ROW =
  '/sheet add film:"Test 400" developer:"Test MQ" dilution:1+9 temp:20C time:9:00 speed:400 source:"invented"';

describe("/plan", () => {
  test("puts the time first, keeps the plan and offers to start it", () => {
    const room = roomWith(ONE_ROW);
    const answered = room.asks("Ann", "/plan film:test 400 temp:68F");
    expect(answered.reply.text).toMatch(/^\*\*9:00\*\* at 20 °C \(68 °F\)/);
    expect(answered.reply.text).toContain("30 ml concentrate + 270 ml water");
    expect(answered.reply.fields).toMatchObject({
      developSeconds: 540,
      tenthsC: 200,
      volumeMl: 300,
      concentrateMl: 30,
      waterMl: 270,
      strips: [5, 5, 5, 5, 5, 5, 4, 2],
      steps: expect.arrayContaining([
        expect.objectContaining({ kind: "develop", seconds: 540, initialSeconds: 30 }),
      ]),
    });
    expect(answered.reply.actions?.map(({ label }) => label)).toEqual(["Start", "Show the curve"]);
    expect(room.press("Ann", "Start")).toContain("R1");
  });

  test("takes the tank's volume and format, by T4 or 4", () => {
    const room = roomWith(ONE_ROW);
    const demo = room.stores.classes.list()[0];
    if (!demo) throw new Error("no class");
    room.stores.tanks.save(demo.id, {
      number: 44,
      reels: 2,
      volumeMl: 480,
      format: "135",
      condition: "leaks",
      timeConstantSeconds: null,
    });
    const answered = room.asks("Ann", "/plan film:test 400 temp:20 tank:T44 rolls:2");
    expect(answered.reply.fields).toMatchObject({ volumeMl: 480, concentrateMl: 48, tank: 44 });
    expect(answered.reply.text).toContain("Tank 44 is reported: leaks");
    expect(room.asks("Ann", "/plan film:test 400 temp:20 tank:44 rolls:3").code).toBe("ERR_TOO_MANY_ROLLS");
    expect(room.asks("Ann", "/plan film:test 400 temp:20 tank:T999").code).toBe("ERR_UNKNOWN_TANK");
  });

  test("asks which sheet when several fit, and offers near names for an unknown film", () => {
    const room = roomWith(ONE_ROW, ONE_ROW.replace("1+9", "1+4").replace("9:00", "6:00"));
    const several = room.asks("Ann", "/plan film:test 400 temp:20");
    expect(several.code).toBe("ERR_SEVERAL_SHEETS");
    expect(several.reply.text).toContain("1+4");
    expect(room.asks("Ann", "/plan film:test 400 temp:20 dilution:2+8").reply.fields).toMatchObject({
      developSeconds: 360,
    });
    const unknown = room.asks("Ann", "/plan film:tset 400 temp:20");
    expect(unknown.code).toBe("ERR_UNKNOWN_FILM");
    expect(unknown.reply.text).toContain("Did you mean Test 400?");
    expect(room.asks("Ann", "/plan film:test 400 developer:other temp:20").code).toBe("ERR_UNKNOWN_PAIR");
  });

  test("marks a time that rests on one row with its spread", () => {
    const room = roomWith(ONE_ROW);
    const { text } = room.asks("Ann", "/plan film:test 400 temp:23C").reply;
    expect(text).toMatch(/^\*\*7:1\d\*\* at 23 °C \(73.4 °F\), estimate: 6:\d0 to 8:\d0/);
    expect(text).toContain("one time only");
  });

  test("films share a tank when their times agree, and are told apart when not", () => {
    const room = roomWith(
      ONE_ROW,
      ONE_ROW.replace("Test 400", "Near 400").replace("9:00", "9:30"),
      ONE_ROW.replace("Test 400", "Far 400").replace("9:00", "12:00"),
    );
    const shared = room.asks("Ann", "/plan film:test 400 temp:20 also:near 400 rolls:2");
    expect(shared.reply.fields).toMatchObject({ developSeconds: 555 });
    const refused = room.asks("Ann", "/plan film:test 400 temp:20 also:far 400 rolls:2");
    expect(refused.code).toBe("ERR_CANNOT_SHARE");
    expect(refused.reply.text).toContain("Far 400: 12:00");
    expect(room.asks("Ann", "/plan film:test 400 temp:20 also:nobody").code).toBe("ERR_NOT_SAME_BATH");
  });
});

describe("what can't be planned", () => {
  const room = roomWith(ONE_ROW);
  test.each([
    ["/plan film:test 400 temp:99", "Which scale"],
    ["/plan film:test 400 temp:99C", "hotter than this data sheet allows"],
    ["/plan film:test 400 temp:-4C", "liquid water"],
    ["/plan film:test 400 temp:20 volume:-300 ml", "is not a volume"],
    ["/plan film:test 400 temp:20 rolls:0", "rolls"],
    ["/plan film:test 400 temp:20 rolls:two", "rolls"],
    ["/plan film:test 400 temp:20 clearing:45", "minutes or seconds"],
    ["/plan film:test 400", "temp is missing"],
    ["/plan temp:20", "film is missing"],
    ["/plan film:test 400 temp:20 ei:999999", "ei"],
    [`/plan film:${"x".repeat(5000)} temp:20`, "film is too long"],
    [`/plan film:test 400 temp:${"9".repeat(5000)}`, "too long for a quantity"],
  ])("%#: a sentence says what is wrong", (line, words) => {
    const answered = room.asks("Ann", line);
    expect(answered.kind).toBe("refused");
    expect(answered.reply.text).toContain(words);
    expect(answered.reply.text.length).toBeLessThan(300);
  });

  test("names with emoji, SQL and markdown do their work and harm nothing", () => {
    for (const film of [
      "🎞️ Höhe 400",
      "x'); drop table sheets;--",
      "**loud** @everyone",
      "<b>tag</b> & co",
    ]) {
      const added = room.asks("Tess", ONE_ROW.replace("Test 400", film), "teacher");
      expect(added.kind, added.reply.text).toBe("done");
      const planned = room.asks("Ann", `/plan film:"${film}" temp:20`);
      expect(planned.reply.fields).toMatchObject({ film, developSeconds: 540 });
      expect(planned.reply.text).not.toContain("**loud**");
      expect(planned.reply.text).not.toContain("@everyone");
    }
    expect(room.asks("Ann", "/sheet list").kind).toBe("done");
  });
});

describe("/plan curve", () => {
  test("shows this tank on the curve and the steps as a strip, with words for those who can't see them", () => {
    const room = roomWith(ONE_ROW.replace("Test 400", '<Höhe> & 🎞️ \\"400\\"'));
    const made = room.asks("Ann", '/plan film:"<Höhe> & 🎞️ \\"400\\"" temp:22C');
    expect(made.kind, made.reply.text).toBe("done");
    const { reply } = room.asks("Ann", "/plan curve plan:P1");
    expect(reply.pictures?.map(({ name }) => name)).toEqual(["plan-curve", "plan-steps"]);
    for (const picture of reply.pictures ?? []) {
      expect(picture.alt).toMatch(/\d:\d\d/);
      expect(picture.svg).toContain("Atkinson Hyperlegible");
      // The renderer reads XML strictly: a name that broke out would throw here.
      expect(new Resvg(picture.svg).render().asPng().length).toBeGreaterThan(5_000);
    }
    expect(reply.pictures?.[0]?.alt).toContain("This tank: 7:");
    expect(reply.text).toContain("What each number rests on");
  });

  test("takes the newest plan if none is named, and refuses one that is not there", () => {
    const room = roomWith(ONE_ROW);
    expect(room.asks("Ann", "/plan curve").code).toBe("ERR_UNKNOWN_PLAN");
    room.asks("Ann", "/plan film:test 400 temp:20");
    expect(room.asks("Ann", "/plan curve").kind).toBe("done");
    expect(room.asks("Ann", "/plan curve plan:P77").code).toBe("ERR_UNKNOWN_PLAN");
    expect(room.asks("Ann", "/plan curve plan:x").code).toBe("ERR_UNKNOWN_PLAN");
  });
});

test("the longest plan there is still fits a chat's 2000 characters, twice over at most", () => {
  const long = "L".repeat(60);
  const room = roomWith(
    `/sheet add film:"${long}" developer:"${long.toLowerCase()}" dilution:1+9 temp:20C time:4:00 speed:400 source:"${"s".repeat(200)}" minimum:100 ml reuse:1/10%/10`,
  );
  const { reply } = room.asks(
    "Ann",
    `/plan film:${long} temp:26C ei:1000 rolls:3 washaid:yes agitation:0/2/300 room:5C fixtemp:15C watertemp:12C filmsdone:3 clearing:5 min devbatch:${"b".repeat(40)} fixbatch:${"c".repeat(40)}`,
  );
  console.log(`${reply.text.length} characters`);
  expect(reply.text.length).toBeGreaterThan(1_500);
  expect(reply.text.length).toBeLessThan(4_000);
});
