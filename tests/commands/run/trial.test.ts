import { describe, expect, test } from "vitest";
import { cuesOf } from "../../../commands/run/cues.ts";
import { advance, type RunEvent } from "../../../commands/run/machine.ts";
import { viewOf } from "../../../commands/run/view.ts";
import { lastingMs, type Run, secondsIn, TRIAL_SPEED } from "../../../store/shapes/run.ts";
import { aRun, START } from "../../support/make.ts";
import { createRoom } from "../../support/room.ts";

/* A trial: the run of a film in all but its clock, which goes sixty times as fast, and in what is left of it. */

const apply = (run: Run, ...events: RunEvent[]): Run =>
  events.reduce((before, event) => {
    const result = advance(before, event);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  }, run);

describe("the clock of a trial", () => {
  const pour: RunEvent = { kind: "next", step: 0, sure: false, atMs: START + 10_000 };

  test("a step lasts a sixtieth, and its cues come in the same order at a sixtieth of their distance", () => {
    const real = apply(aRun(), pour);
    const trial = apply(aRun({ speed: TRIAL_SPEED }), pour);
    const since = (run: Run): number[] => cuesOf(run).map(({ dueAtMs }) => dueAtMs - pour.atMs);
    expect(cuesOf(trial).map(({ kind }) => kind)).toEqual(cuesOf(real).map(({ kind }) => kind));
    expect(since(trial)).toEqual(since(real).map((ms) => Math.round(ms / 60)));
    expect(since(real).at(-1)).toBe((real.plan.steps[0]?.seconds ?? 0) * 1000);
  });

  test("both ways of counting agree: so many seconds last so long, and in so long so many pass", () => {
    for (const speed of [undefined, 2, TRIAL_SPEED, 600] as const) {
      const run = speed === undefined ? {} : { speed };
      for (const seconds of [0, 1, 30, 540, 10_800])
        expect(secondsIn(run, lastingMs(run, seconds))).toBeCloseTo(
          seconds,
          -Math.log10((speed ?? 1) / 1000),
        );
    }
  });

  test("what was poured earlier, and what is left, is told in the seconds of the film", () => {
    const trial = apply(aRun({ speed: TRIAL_SPEED }), pour);
    const moved = apply(trial, { kind: "poured", agoSeconds: 120, atMs: pour.atMs + 1000 });
    // 120 s of the film are 2 s of the room: it began a second before it was said to.
    expect(moved.phase).toMatchObject({ startedAtMs: pour.atMs - 1000 });
    const early = advance(trial, { kind: "next", step: 1, sure: false, atMs: pour.atMs + 1000 });
    expect(!early.ok && early.fault).toMatchObject({
      code: "ERR_TOO_EARLY",
      leftSeconds: (trial.plan.steps[0]?.seconds ?? 0) - 60,
    });
    expect(viewOf(trial, "Mina").speed).toBe(TRIAL_SPEED);
    expect(viewOf(apply(aRun(), pour), "Mina").speed).toBeUndefined();
  });
});

describe("/run trial", () => {
  test("goes through every bath by its own calls in two minutes, marked in each, and leaves nothing behind", async () => {
    const room = createRoom();
    room.asks("Jo", "/batch mix kind:developer product:House MQ volume:2 l use:once", "aide");
    room.asks(
      "Jo",
      "/batch mix kind:fixer product:Harbour Fix volume:1 l dilution:1+4 capacity:12 films/l",
      "aide",
    );
    const ledgers = (): string =>
      ["B1", "B2"].map((batch) => room.says("Jo", `/batch ledger batch:${batch}`, "aide")).join("\n");
    const before = ledgers();
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    expect(room.says("Mina", "/run trial")).toMatch(/^\*\*Trial R1\*\*: 9 min in the developer/);
    // It has the plan's baths, and neither its tank nor its bottles.
    expect(room.stores.runs.open(1)[0]?.plan).toMatchObject({ tank: null, sheet: { film: "Lantern 400" } });
    let seconds = 0;
    for (; room.stores.runs.open(1).length > 0 && seconds < 180; seconds += 1) {
      const [run] = room.stores.runs.open(1);
      if (run?.phase.kind === "waiting")
        room.says("Mina", `/run next run:${run.number} step:${run.phase.step}`);
      await room.pass(1);
    }
    expect(room.stores.runs.open(1)).toEqual([]);
    expect(seconds).toBeLessThan(120);
    const news = room.news("Mina");
    expect(news.filter((text) => text.includes("Agitate")).length).toBeGreaterThan(5);
    expect(news.every((text) => text.includes("_Trial R1_"))).toBe(true);
    expect(ledgers()).toBe(before);
    expect(room.asks("Mina", "/roll find").reply.fields).toMatchObject({ total: 0 });
    expect(room.stores.runs.hasTrial(1)).toBe(true);
  });

  test("takes no plan away, no tank and no place at the sinks, and isn't on the board", () => {
    const room = createRoom();
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    room.says("Mina", "/run trial");
    expect(room.says("Mina", "/run trial")).toContain("**Trial R1** goes on already.");
    expect(room.asks("Tess", "/class board", "teacher").reply.fields).toMatchObject({ tanks: [] });
    expect(room.asks("Mina", "/run start").kind).toBe("done");
    expect(room.stores.runs.open(1).map(({ speed, plan }) => [speed, plan.tank])).toEqual([
      [TRIAL_SPEED, null],
      [undefined, 1],
    ]);
  });

  test("is ended without a question, since nothing is lost, and answers in German", () => {
    const room = createRoom();
    room.says("Mina", "/mine language language:de");
    expect(room.says("Mina", "/run trial")).toContain("Seine Uhr läuft 60-mal so schnell");
    expect(room.says("Mina", "/run stop")).toBe(
      "**Probelauf R1** ist vorbei. Nichts davon steht im Filmbuch.",
    );
    expect(room.stores.runs.hasTrial(1)).toBe(false);
  });

  test("needs a time to try, and says how to give one", () => {
    const room = createRoom();
    for (const { id } of room.stores.sheets.list(1)) room.stores.sheets.remove(1, id);
    const refused = room.asks("Mina", "/run trial");
    expect(refused.code).toBe("ERR_NO_SHEETS");
    expect(refused.reply.text).toContain("Add one first");
  });
});
