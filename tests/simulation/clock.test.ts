import { expect, test } from "vitest";
import { aPlan, aStep, EACH_MINUTE } from "../support/make.ts";
import { createRandom } from "./random.ts";
import { press } from "./people.ts";
import { judge } from "./verdict.ts";
import { beginRun, createWorld, type World } from "./world.ts";

/*
 * Film develops by elapsed time. Whatever is done to the wall clock, each call of a bath of nine minutes comes at its
 * moment: the reference knows nothing of wall clocks, and a call may leave a twentieth of a second off at most.
 */

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const YEAR_MS = 365 * 24 * HOUR_MS;
/** The bot lets smaller steps be (50 ms); a timer of the system may be 4 ms late in this simulation. */
const TRUE_TO_MS = 60;

type Befalls = (world: World) => void;

/** `work` every `everyMs`, as long as the bath takes. */
const every =
  (everyMs: number, work: Befalls): Befalls =>
  (world) => {
    const again = (): void =>
      world.time.after(everyMs, () => {
        work(world);
        again();
      });
    again();
  };
const once =
  (byMs: number): Befalls =>
  ({ time }) =>
    time.after(2.5 * MINUTE_MS + 400, () => time.stepWall(byMs));

const befalls: [string, Befalls][] = [
  ["set forward by an hour", once(HOUR_MS)],
  ["set back by an hour", once(-HOUR_MS)],
  ["set forward by ten years", once(10 * YEAR_MS)],
  [
    "set back to 1970",
    (world) => world.time.after(200_000, () => world.time.stepWall(-world.time.wallMs() + 1)),
  ],
  [
    "set forward and back again",
    ({ time }) => {
      time.after(100_000, () => time.stepWall(HOUR_MS));
      time.after(200_000, () => time.stepWall(-HOUR_MS));
    },
  ],
  ["slewed by 500 ppm", every(1000, ({ time }) => time.stepWall(0.5))],
  ["slewed back by 500 ppm", every(1000, ({ time }) => time.stepWall(-0.5))],
];

async function develop(befall: Befalls, kills: boolean): Promise<World> {
  const random = createRandom(4);
  const world = createWorld(random, "room", 1);
  const [student] = world.students;
  if (!student) throw new Error("nobody is there");
  world.boot();
  const bath = aStep({ kind: "develop", seconds: 540, agitation: EACH_MINUTE, pourOutSeconds: 10 });
  beginRun(world, student, aPlan({ steps: [bath, aStep({ kind: "rinse" })] }));
  const [course] = student.courses;
  if (!course) throw new Error("nothing was begun");
  press(world, course, 0);
  befall(world);
  if (kills)
    every(97_000, () => {
      world.kill();
      world.boot();
    })(world);
  await world.time.pass(10 * MINUTE_MS);
  return world;
}

test.each(befalls)("the clock is %s: every call comes at its moment", async (_, befall) => {
  const world = await develop(befall, false);
  try {
    const promises = world.students[0]?.courses[0]?.run.promises ?? [];
    const due = promises.filter(({ kind }) => kind !== "nudge").map(({ dueMs }) => dueMs);
    const asked = world.chat.shown.filter(({ key }) => !key.includes("w")).map(({ askedMs }) => askedMs);
    expect(asked).toHaveLength(due.length);
    expect(due).toHaveLength(12);
    for (const [index, askedMs] of asked.entries()) {
      const offMs = askedMs - (due.toSorted((a, b) => a - b)[index] ?? 0);
      expect(Math.abs(offMs)).toBeLessThanOrEqual(TRUE_TO_MS);
    }
    judge(world, true);
  } finally {
    world.close();
  }
});

test.each(befalls)("the clock is %s, and the process is killed over and over", async (_, befall) => {
  const world = await develop(befall, true);
  try {
    judge(world, true);
    expect(world.chat.shown.length).toBeGreaterThan(11);
  } finally {
    world.close();
  }
});

test("a computer that sleeps for 42 minutes calls at once when it wakes, and says how late", async () => {
  const world = await develop(({ time, trouble }) => {
    time.after(100_000, () => {
      time.sleep(42 * MINUTE_MS);
      trouble(42 * MINUTE_MS);
    });
  }, false);
  try {
    await world.time.pass(5000);
    judge(world, true);
    const last = world.chat.shown.find(({ text }) => text.includes("Now: rinse"));
    expect(last?.text).toMatch(/^\*\*Now: rinse\.\*\* [^\n]+\n\*\*34 min \d+ s late\*\*: this was for/);
    expect(last?.askedMs).toBeLessThan(100_000 + 42 * MINUTE_MS + 1100);
  } finally {
    world.close();
  }
});
