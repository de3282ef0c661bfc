import { describe, expect, it } from "vitest";
import { NOTHING } from "../../../../commands/batch/silver.ts";
import { reportOf, type ReportInput } from "../../../../commands/class/report/report.ts";
import { drawReport } from "../../../../commands/class/report/picture.ts";
import { reportPage } from "../../../../commands/class/report/page.ts";
import { aTermOfRolls } from "../../../support/a-term.ts";
import { START } from "../../../support/make.ts";
import { createRoom } from "../../../support/room.ts";
import { aNewRoll, aRoll } from "../../../support/rolls.ts";

const WEEK = 7 * 86_400_000;
const input = (over: Partial<ReportInput> = {}): ReportInput => ({
  className: "Harbour workshop",
  zone: "UTC",
  fromMs: START,
  untilMs: START + 4 * WEEK,
  rolls: [],
  prints: [],
  mixed: [],
  silver: NOTHING,
  ...over,
});

describe("prints in the report", () => {
  it("are counted with their papers, ratings and faults, also where no roll ended", () => {
    const room = createRoom();
    room.says("Ada", "/print paper paper:1 name:Pier Gloss size:18x24 kind:fibre", "aide");
    room.says("Mina", "/print log seconds:10 paper:1");
    room.says("Mina", "/print log seconds:12 paper:1");
    room.says("Ben", "/print log seconds:8");
    room.says("Mina", "/print rate print:V1 rating:4");
    room.says("Mina", "/print fault print:V2 look:pale cause:unknown");
    const { reply, kind } = room.asks("Tess", "/class report", "teacher");
    expect(kind).toBe("done");
    expect(reply.text).toContain(
      "- 3 prints by 2 people. 33 % show a fault. Rated 4.0 of 5 on average (1 rated).",
    );
    expect(reply.text).toContain("- Papers: Pier Gloss 2");
    expect(reply.fields?.["prints"]).toMatchObject({ count: 3, people: 2, faulty: 1 });
    expect(reply.attachments?.[0]?.content).toContain("<h2>Prints</h2>");
    room.says("Tess", "/mine language de", "teacher");
    expect(room.says("Tess", "/class report", "teacher")).toContain("- 3 Abzüge von 2 Personen.");
  });

  it("are not spoken of where there are none", () => {
    const room = createRoom();
    expect(room.asks("Tess", "/class report", "teacher").code).toBe("ERR_NO_ROLLS");
  });
});

describe("the report's figures", () => {
  it("count rolls a week, empty weeks as well", () => {
    const rolls = [0, 0, 2, 3].map((week, at) => aRoll({ number: at + 1, endedAt: START + week * WEEK }));
    // START is a Thursday: the stretch touches five weeks.
    expect(reportOf(input({ rolls })).weeks.map((each) => each.rolls)).toEqual([2, 0, 1, 1, 0]);
    expect(new Date(reportOf(input({ rolls })).weeks[0]?.startsAtMs ?? 0).getUTCDay()).toBe(1);
  });

  it("count a tank's calls and dose once, its films each", () => {
    const rolls = [1, 2].map((index) =>
      aRoll({ number: index, lateCues: 1 }, { film: { index, count: 2 }, dosePerMille: 900 }),
    );
    expect(reportOf(input({ rolls }))).toMatchObject({
      rolls: 2,
      runsCalled: 1,
      runsOnTime: 0,
      doses: [{ roll: 1, perMille: 900 }],
    });
  });

  it("agree with sums made in another way", () => {
    const rolls = aTermOfRolls(200, 4);
    const figures = reportOf(input({ rolls }));
    const total = figures.weeks.reduce((sum, week) => sum + week.rolls, 0);
    expect(total).toBe(200);
    expect(figures.faults.reduce((sum, { count }) => sum + count, 0)).toBe(
      rolls.filter(({ fault }) => fault).length,
    );
    expect(figures.developers).toEqual([{ name: "House MQ 1+1", ml: 200 * 300, concentrateMl: 200 * 150 }]);
    const doses = rolls.map(({ body }) => body.dosePerMille ?? 0).sort((a, b) => a - b);
    expect(figures.dose?.median).toBe(doses[100]);
    const inside = doses.filter(
      (each) => each >= (figures.dose?.low ?? 0) && each <= (figures.dose?.high ?? 0),
    ).length;
    expect(inside / 200).toBeGreaterThanOrEqual(0.9);
  });

  it("stand a term without anything but a stopped roll", () => {
    const rolls = [aRoll({ outcome: "stopped" }, { developedSeconds: null, dosePerMille: null })];
    const figures = reportOf(input({ rolls }));
    expect(figures).toMatchObject({ finished: 0, runsCalled: 0, dose: null, rating: null });
    expect(drawReport(figures, "UTC").svg).toContain("No dose is on record yet.");
  });
});

describe("the report's page", () => {
  it("needs nothing else and lets no name become markup", () => {
    const rolls = [aRoll({ film: "<script>alert(1)</script>", fault: "a & b" })];
    const figures = reportOf(input({ rolls, className: '"><b>x' }));
    const page = reportPage(figures, drawReport(figures, "UTC").svg, "UTC");
    expect(page).not.toContain("<script>");
    expect(page).not.toContain('"><b>x');
    expect(page).not.toMatch(/(src|href)=/);
    expect(page).toContain("a &amp; b");
  });
});

describe("/class report", () => {
  it("gives one page as a picture and as a file", () => {
    const room = createRoom();
    expect(room.asks("Iris", "/class report", "teacher").code).toBe("ERR_NO_ROLLS");
    room.stores.rolls.add(aNewRoll({ runId: null as never, endedAt: room.clock.now() }));
    const { reply } = room.asks("Iris", "/class report", "teacher");
    expect(reply.text).toContain("1 roll by 1 person");
    expect(reply.pictures?.[0]?.name).toBe("class-report");
    expect(reply.attachments?.[0]).toMatchObject({ name: "class-report.html", mediaType: "text/html" });
    expect(room.asks("Iris", "/class report 2025-01", "teacher").code).toBe("ERR_NO_ROLLS");
    expect(room.asks("Iris", "/class report someday", "teacher").code).toBe("ERR_NO_DAY");
    expect(room.asks("Mina", "/class report").code).toBe("ERR_ROLE");
  });

  it("counts the silver collected in its time alone", () => {
    const room = createRoom();
    room.says("Iris", "/batch mix kind:fixer product:Brine volume:1 l", "aide");
    room.stores.rolls.add(aNewRoll({ runId: null as never, endedAt: room.clock.now() }));
    room.says("Iris", "/batch discard batch:B1 to:silver", "aide");
    const fields = room.asks("Iris", "/class report today", "teacher").reply.fields;
    expect(fields).toMatchObject({ silver: { ml: 1000 }, batchesMixed: [{ name: "fixer", count: 1 }] });
    room.away(2 * 86_400);
    room.stores.rolls.add(aNewRoll({ runId: null as never, endedAt: room.clock.now() }));
    expect(room.asks("Iris", "/class report today", "teacher").reply.fields).toMatchObject({
      silver: { ml: 0 },
    });
  });
});
