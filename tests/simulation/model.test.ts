import fc from "fast-check";
import { test } from "vitest";
import { FAIR, FOUL } from "./chat.ts";
import { drain } from "./evening.ts";
import { correctPour, giveTemperature, press, pressRepeated, stopRun } from "./people.ts";
import { drawPlan } from "./plans.ts";
import { chooseSeed, createRandom, type Random } from "./random.ts";
import { judge } from "./verdict.ts";
import { beginRun, createWorld, type Course, type World } from "./world.ts";

/*
 * The bot against the reference, command by command, in orders that fast-check draws; one that fails is cut down to the
 * few commands that matter. MODEL_SEED plays one seed again; MODEL_RUNS makes it long.
 */

interface Real {
  readonly world: World;
  readonly random: Random;
}

type Act = (real: Real) => void | Promise<void>;
type Command = fc.AsyncCommand<object, Real>;

const EVERYBODY = 2;

/** A command that does one thing, then holds every run against its reference. */
function command(name: string, act: Act): Command {
  return {
    check: () => true,
    toString: () => name,
    async run(_, real) {
      await act(real);
      for (const { courses } of real.world.students) courses.slice(-1).forEach(real.world.compare);
    },
  };
}

const ofRun = (act: (world: World, course: Course) => unknown) => (student: number, name: string) =>
  command(`${name} of student ${student}`, ({ world }) => {
    const course = world.students[student]?.courses.at(-1);
    if (course) act(world, course);
  });

const student = fc.nat(EVERYBODY - 1);
const stepOf = ({ run }: Course): number => ("step" in run.stage ? run.stage.step : 0);

const commands: fc.Arbitrary<Command>[] = [
  student.map((index) =>
    command(`start by student ${index}`, ({ world, random }) => {
      const one = world.students[index];
      if (one && (one.courses.at(-1)?.run.isOver ?? true)) beginRun(world, one, drawPlan(random));
    }),
  ),
  student.map((index) =>
    ofRun((world, course) =>
      press(world, course, stepOf(course) + (course.run.stage.kind === "running" ? 1 : 0)),
    )(index, "press"),
  ),
  student.map((index) =>
    ofRun((world, course) => press(world, course, stepOf(course) + 1, true))(index, "sure press"),
  ),
  student.map((index) => ofRun(pressRepeated)(index, "doubled press")),
  fc
    .tuple(student, fc.nat(5))
    .map(([index, step]) =>
      ofRun((world, course) => press(world, course, step))(index, `press of step ${step}`),
    ),
  fc
    .tuple(student, fc.integer({ min: 1, max: 90 }))
    .map(([index, ago]) =>
      ofRun((world, course) => correctPour(world, course, ago))(index, `poured ${ago} s ago`),
    ),
  fc
    .tuple(student, fc.integer({ min: 180, max: 240 }))
    .map(([index, tenthsC]) =>
      ofRun((world, course) => giveTemperature(world, course, tenthsC))(index, `temperature ${tenthsC}`),
    ),
  student.map((index) => ofRun(stopRun)(index, "stop")),
  fc.integer({ min: 1, max: 60_000 }).map((ms) => command(`wait ${ms}`, ({ world }) => world.time.pass(ms))),
  fc.integer({ min: 1, max: 60_000 }).map((ms) => command(`wait ${ms}`, ({ world }) => world.time.pass(ms))),
  fc.constant(command("kill", ({ world }) => world.kill())),
  fc.nat(60).map((count) => command(`die after ${count}`, ({ world }) => world.dieSoon(count))),
  fc.nat(40).map((count) => command(`restart, die after ${count}`, ({ world }) => world.boot(count + 1))),
  fc.constant(command("restart", ({ world }) => world.boot())),
  fc.constant(command("restart", ({ world }) => world.boot())),
  fc
    .constantFrom(-3_600_000, -2000, -700, -30, 30, 700, 2000, 3_600_000, 315_360_000_000)
    .map((byMs) => command(`the clock is set by ${byMs}`, ({ world }) => world.time.stepWall(byMs))),
  fc.integer({ min: 100, max: 2_520_000 }).map((ms) =>
    command(`sleep ${ms}`, ({ world }) => {
      world.time.sleep(ms);
      world.trouble(ms);
    }),
  ),
  fc.integer({ min: 10, max: 30_000 }).map((ms) =>
    command(`stall ${ms}`, ({ world }) => {
      world.time.stall(ms);
      world.trouble(ms);
    }),
  ),
  fc.boolean().map((isFoul) =>
    command(isFoul ? "foul weather" : "fair weather", ({ world }) => {
      if (world.chat.weather !== FAIR) world.trouble(0);
      world.chat.weather = isFoul ? FOUL : { ...FAIR };
    }),
  ),
];

const SECONDS = 18;

test("any order of commands leaves the bot where the reference is", { timeout: 12 * 3600_000 }, async () => {
  const wanted = Number(process.env["MODEL_RUNS"] ?? 0);
  const seed = wanted > 0 ? chooseSeed("MODEL_SEED") : chooseSeed("MODEL_SEED", 20_260_116);
  let played = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.commands(commands, { maxCommands: 40 }),
      fc.constantFrom("room" as const, "discord" as const),
      fc.nat(),
      async (drawn, chatName, worldSeed) => {
        const random = createRandom(worldSeed);
        const world = createWorld(random, chatName, EVERYBODY);
        try {
          world.chat.isKept = chatName === "room" && random.chance(0.5);
          world.boot();
          await fc.asyncModelRun(() => ({ model: {}, real: { world, random } }), drawn);
          await drain(world);
          judge(world, world.chat.weather === FAIR);
          played += 1;
        } catch (error) {
          throw new Error(`${String(error)}\n${world.trace.slice(-20).join("\n")}`, { cause: error });
        } finally {
          world.close();
        }
      },
    ),
    wanted > 0
      ? { seed, numRuns: wanted }
      : { seed, numRuns: 10_000, interruptAfterTimeLimit: SECONDS * 1000 },
  );
  console.log(`${played} sequences of commands`);
});
