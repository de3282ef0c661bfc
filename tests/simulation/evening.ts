import { START } from "../support/make.ts";
import { FAIR, FOUL } from "./chat.ts";
import { livePerson } from "./people.ts";
import { createRandom, type Random } from "./random.ts";
import { judge, type Figures } from "./verdict.ts";
import { createWorld, type World } from "./world.ts";

/* One simulated evening from one seed: a class, what befalls it, and the judgement at its end. */

const EVENING_MS = 10 * 60_000;
/** Long enough for every retry. */
const DRAIN_MS = 5 * 60_000;

export interface Evening extends Figures {
  readonly kills: number;
}

interface Fate {
  readonly chatName: "room" | "discord";
  readonly students: number;
  readonly isFair: boolean;
  readonly kills: boolean;
  readonly clock: boolean;
  readonly stalls: boolean;
  readonly sleeps: boolean;
  readonly closes: boolean;
  readonly isKept: boolean;
}

function drawFate(random: Random): Fate {
  const isQuiet = random.chance(0.25);
  const maybe = (share: number): boolean => !isQuiet && random.chance(share);
  return {
    chatName: random.pick(["room", "discord"] as const),
    students: random.whole(1, 6),
    isFair: !maybe(0.5),
    kills: maybe(0.6),
    clock: maybe(0.4),
    stalls: maybe(0.3),
    sleeps: maybe(0.2),
    closes: maybe(0.2),
    isKept: random.chance(0.6),
  };
}

/** @throws Error naming the seed, with the last things that happened. */
export async function playEvening(seed: number): Promise<Evening> {
  const random = createRandom(seed);
  const fate = drawFate(random);
  const world = createWorld(random, fate.chatName, fate.students);
  try {
    return await play(world, fate, random);
  } catch (error) {
    const log = world.bot?.log.lines.filter(({ level }) => level === "error").slice(-3) ?? [];
    throw new Error(
      [
        `SIM_SEED=${seed} ${JSON.stringify(fate)}`,
        String(error),
        ...world.trace.slice(-25),
        JSON.stringify(log),
      ].join("\n"),
      { cause: error },
    );
  } finally {
    world.close();
  }
}

async function play(world: World, fate: Fate, random: Random): Promise<Evening> {
  const { time, chat } = world;
  const isOpen = (): boolean => time.trueMs() < EVENING_MS;
  let kills = 0;
  if (!fate.isFair) chat.weather = FOUL;
  for (const student of world.students) if (fate.closes && random.chance(0.3)) chat.closed.add(student.id);
  chat.isKept = fate.isKept && fate.chatName === "room";
  world.boot();
  const repeat = (meanMs: number, work: () => void): void => {
    time.after(random.wait(meanMs), () => {
      if (!isOpen()) return;
      work();
      repeat(meanMs, work);
    });
  };
  for (const student of world.students) livePerson(world, student, random, isOpen);
  if (fate.kills)
    repeat(40_000, () => {
      if (!world.bot) return;
      kills += 1;
      if (random.chance(0.5)) world.kill();
      else world.dieSoon(random.whole(1, 60));
    });
  if (fate.clock)
    repeat(60_000, () => {
      const byMs = drawStep(time.wallMs(), random);
      world.note(`the clock is set by ${byMs}`);
      time.stepWall(byMs);
    });
  if (fate.stalls)
    repeat(60_000, () => {
      const ms = random.pick([100, 1000, 5000, 20_000]);
      world.note(`the loop stalls for ${ms}`);
      time.stall(ms);
      world.trouble(ms);
    });
  if (fate.sleeps)
    repeat(200_000, () => {
      const ms = random.pick([5000, 60_000, 2_520_000]);
      world.note(`the computer sleeps for ${ms}`);
      time.sleep(ms);
      world.trouble(ms);
    });
  // A boot with a wrong clock can't be told from time that went by.
  watchOver(world, random, isOpen, !fate.clock);
  await time.pass(EVENING_MS);
  await drain(world);
  return { ...judge(world, fate.isFair), kills };
}

const YEAR_MS = 365 * 24 * 3_600_000;

/** A nudge from a time server, a wrong hour, a wrong year; and a computer without a clock of its own, that wakes in 1970. */
function drawStep(wallMs: number, random: Random): number {
  const byMs = random.pick([
    -3_600_000,
    3_600_000,
    -2000,
    2000,
    700,
    -700,
    30,
    -30,
    10 * YEAR_MS,
    -wallMs + 60_000,
  ]);
  const isPossible = wallMs + byMs >= 0 && wallMs + byMs < 130 * YEAR_MS;
  return isPossible ? byMs : START - wallMs;
}

/** Somebody, or something, starts it again. */
function watchOver(world: World, random: Random, isOpen: () => boolean, reboots: boolean): void {
  const look = (): void => {
    if (!isOpen()) return;
    const isDown = world.bot === undefined;
    if (isDown) {
      if (reboots && random.chance(0.1)) world.time.reboot();
      world.boot(random.chance(0.15) ? random.whole(1, 30) : undefined);
    }
    world.time.after(random.chance(0.7) ? 300 : random.wait(20_000), look);
  };
  look();
}

/** Everything that is owed gets its time; nobody does anything more. */
export async function drain(world: World): Promise<void> {
  const { time, chat } = world;
  world.note("the evening ends");
  world.trouble(0);
  const wasFoul = chat.weather !== FAIR;
  chat.weather = wasFoul ? { ...FAIR } : FAIR;
  world.dieSoon(Infinity);
  world.boot();
  await time.pass(DRAIN_MS);
}
