import { beforeEach, describe, expect, test } from "vitest";
import { afterRun } from "../../commands/run/after-run.ts";
import { parseLine } from "../../commands/speech/line.ts";
import { lineFormsOf } from "../../commands/forms.ts";
import { commands } from "../../commands/index.ts";
import { aLine, aTrayPlan, aTrayRun } from "../support/trays.ts";
import { START } from "../support/make.ts";
import { createRoom, type Room } from "../support/room.ts";

/* From the last tray into the log of prints: what the trays know is filled in, what they can't know is asked for. */

let room: Room;

beforeEach(() => {
  room = createRoom();
  room.says("Tess", "/help", "teacher");
  for (const line of [
    "kind:paper-developer product:Dock Print dilution:1+9 volume:2 l",
    "kind:paper-stop product:Harbour Stop dilution:1+19 volume:2 l",
    "kind:paper-fixer product:Pier Fix dilution:1+4 volume:2 l",
  ])
    room.says("Ada", `/batch mix ${line}`, "aide");
  room.says("Ada", "/print paper paper:2 name:Harbour Gloss kind:resin-coated size:24x30 cm", "aide");
});

/** One print through all trays, a little longer in the developer than planned, and measured warmer there. */
async function through(person: string, plan: string) {
  room.says(person, plan);
  const run = Number(room.asks(person, "/run start").reply.fields?.["run"]);
  const put = (step: number) => room.asks(person, `/run next run:${run} step:${step}`);
  put(0);
  await room.pass(10);
  room.says(person, "/run correct temp:20.5C");
  await room.pass(55);
  for (const [step, seconds] of [30, 60, 300].entries()) {
    put(step + 1);
    await room.pass(seconds);
  }
  return put(4);
}

describe("a finished run's prints", () => {
  test("are offered to the log by one key, and nothing is in it before the exposure is said", async () => {
    const done = await through("Mina", "/tray plan paper:X2 temp:20C");
    expect(done.reply.text).toContain("is finished: 1 print fixed and washed");
    expect(done.reply.actions?.map(({ label }) => label)).toEqual(["Log the print"]);
    expect(room.says("Mina", "/print find")).toContain("The log of prints is empty");

    const line = `/${done.reply.actions?.[0]?.line ?? ""}`;
    const asked = room.asks("Mina", line);
    expect(asked.code).toBe("ERR_NO_EXPOSURE");
    expect(asked.reply.again?.option).toBe("seconds");
    expect(`/${asked.reply.again?.line ?? ""}`).toBe(line);
    expect(room.says("Mina", "/print find")).toContain("The log of prints is empty");

    expect(room.asks("Mina", `${line} seconds:12.5`).reply.fields).toMatchObject({
      print: 1,
      exposureTenths: 125,
      paper: 2,
      size: { shortMm: 240, longMm: 300 },
      developer: "Dock Print 1+9",
      developSeconds: 65,
      tenthsC: 205,
    });
  });

  test("of several, one at a time; in German too", async () => {
    room.says("Mina", "/mine language language:de");
    const done = await through("Mina", "/tray plan paper:resin-coated temp:20C prints:2");
    expect(done.reply.actions?.map(({ label }) => label)).toEqual(["Einen Abzug eintragen"]);
    expect(done.reply.actions?.[0]?.line).not.toContain("paper:");
  });

  test("stopped half-way are offered to nobody", () => {
    room.says("Mina", "/tray plan paper:X2 temp:20C");
    room.says("Mina", "/run start");
    room.says("Mina", "/run next step:0");
    expect(room.asks("Mina", "/run stop sure:yes").reply.actions).toEqual([]);
  });
});

test("the key's line has room in every chat, with the longest name of a developer too", () => {
  const phase = { kind: "finished", atMs: START } as const;
  const named = (developer: string, batch: string | null) => {
    const plan = aTrayPlan({ line: aLine({ developer }), box: 99, size: { shortMm: 1999, longMm: 2000 } });
    const steps = plan.steps.map((step) => (step.kind === "develop" ? { ...step, batch } : step));
    const marks = [{ step: 0, plannedSeconds: 60, startedAtMs: START, endedAtMs: START + 3_599_000 }];
    return afterRun(aTrayRun({ plan: { ...plan, steps }, phase, marks }), undefined)[0]?.line ?? "";
  };
  const read = (line: string) => {
    expect(line.length).toBeLessThanOrEqual(100);
    const parsed = parseLine(line, lineFormsOf(commands));
    return parsed.ok ? parsed.value.options : {};
  };
  expect(read(named("Dock Print", "B7"))["developer"]).toBe("Dock Print 1+9");
  expect(read(named("D".repeat(60), "B7"))["developer"]).toBe("B7");
  expect(read(named("D".repeat(60), null))).toMatchObject({ paper: "X99", develop: "59:59" });
});
