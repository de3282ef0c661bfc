import { copyFileSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Plan } from "../../store/shapes/plan.ts";
import { makeNumber } from "../../commands/speech/wording.ts";
import { openStores } from "../../store/index.ts";
import { START } from "../support/make.ts";
import { startBot, type SimulatedBot } from "./bot.ts";
import { createChat, type SimulatedChat } from "./chat.ts";
import { installKillPoints, Killed } from "./kill-points.ts";
import type { Random } from "./random.ts";
import { ReferenceRun, SLACK_MS } from "./reference.ts";
import { createVirtualTime, type VirtualTime } from "./virtual-time.ts";

/* A class, its chat, its computer and the bot on it: what the simulation and the model-based tests both play with. */

/** One run of a student, beside its reference. */
export interface Course {
  readonly student: Student;
  readonly run: ReferenceRun;
  readonly id: number;
  readonly number: number;
  /** When the run was changed by somebody. */
  readonly changes: number[];
}

export interface Student {
  readonly id: string;
  readonly name: string;
  /** The last one is the present one. */
  readonly courses: Course[];
}

export interface CueRow {
  readonly run_id: number;
  readonly key: string;
  readonly kind: string;
  readonly step: number;
  readonly number: number;
  readonly due_at: number;
  readonly made_at: number;
  readonly state: string;
  readonly settled_at: number | null;
}

/** While the bot could not know or do. */
export interface Trouble {
  readonly fromMs: number;
  toMs: number;
}

export interface World {
  readonly time: VirtualTime;
  readonly chat: SimulatedChat;
  readonly students: readonly Student[];
  readonly troubles: Trouble[];
  readonly trace: string[];
  readonly leadMs: number;
  readonly bot: SimulatedBot | undefined;
  /** Starts the bot where it is down; it may die again on the way. */
  boot(dieAfter?: number): void;
  kill(): void;
  dieSoon(statements: number): void;
  trouble(ms: number): void;
  /** A call by a student; undefined where nobody was there to take it. */
  call(student: Student, name: string, options: Record<string, unknown>, callId?: string): Called | undefined;
  /** What the bot has on a run now, held against the reference; throws where they differ. */
  compare(course: Course): void;
  note(words: string): void;
  toTrue(wallMs: number): number;
  close(): void;
}

export interface Called {
  readonly kind: "done" | "refused" | "broken" | "repeat";
  readonly code: string | null;
}

const WARN_SECONDS = 15;
const folder = existsSync("/dev/shm") ? "/dev/shm" : tmpdir();
let template: string | undefined;

/** The store as a new bot makes it, made once. */
function templateOf(): string {
  if (template) return template;
  const home = mkdtempSync(join(folder, "sinkside-sim-"));
  process.once("exit", () => rmSync(home, { recursive: true, force: true }));
  template = join(home, "template.db");
  openStores(template).close();
  return template;
}

export function createWorld(random: Random, chatName: "room" | "discord", headCount: number): World {
  const home = mkdtempSync(join(folder, "sinkside-sim-"));
  const path = join(home, "sinkside.db");
  copyFileSync(templateOf(), path);
  const time = createVirtualTime(START, random);
  const points = installKillPoints();
  const chat = createChat(chatName, time, random);
  const classKey = `${chatName}:class`;
  const place = { classKey, className: "Harbour workshop (invented)", channelRef: "class" };
  const trace: string[] = [];
  const troubles: Trouble[] = [];
  let downSince: Trouble | undefined;
  let bot: SimulatedBot | undefined;
  let calls = 0;

  const note = (words: string): void => void trace.push(`${(time.trueMs() / 1000).toFixed(3)} ${words}`);
  const toTrue = (wallMs: number): number => wallMs - time.wallMs() + time.trueMs();

  const students = prepare();
  const present = (): Course[] => students.flatMap(({ courses }) => courses.at(-1) ?? []);

  function prepare(): Student[] {
    const stores = openStores(path);
    try {
      const found = stores.classes.ensure(classKey, place.className, START);
      stores.classes.setChannelRef(found.id, "class");
      return Array.from({ length: headCount }, (_, index) => {
        const id = `${chatName}:student${index}`;
        stores.members.see(found.id, { id, name: `Student ${index}` }, "student", START);
        return { id, name: `Student ${index}`, courses: [] };
      });
    } finally {
      stores.close();
    }
  }

  function onDeath(): void {
    note("the bot is dead");
    downSince ??= { fromMs: time.trueMs(), toMs: Infinity };
    if (!troubles.includes(downSince)) troubles.push(downSince);
  }

  const world: World = {
    time,
    chat,
    students,
    troubles,
    trace,
    leadMs: chatName === "discord" ? 2000 : 0,
    get bot() {
      return bot?.isDead === false ? bot : undefined;
    },
    boot(dieAfter) {
      if (world.bot) return;
      try {
        const onSpoken = (): void => present().forEach(observe);
        bot = startBot({ path, time, chat, points, onSpoken, onDeath }, dieAfter);
        note("the bot starts");
        if (downSince) downSince.toMs = time.trueMs();
        downSince = undefined;
        present().forEach(world.compare);
      } catch (error) {
        if (!(error instanceof Killed)) throw error;
      }
    },
    kill: () => world.bot?.kill(),
    dieSoon: (statements) => world.bot?.dieAfter(statements),
    trouble(ms) {
      troubles.push({ fromMs: time.trueMs() - ms, toMs: time.trueMs() });
    },
    call(student, name, options, callId) {
      const alive = world.bot;
      if (!alive || !isAwake()) return undefined;
      calls += 1;
      const answered = alive.dispatch.run(
        {
          callId: callId ?? `call-${calls}`,
          name,
          options,
          person: { id: student.id, name: student.name },
          role: "student",
          place,
        },
        alive.clock.now(),
      );
      if (!world.bot) return undefined;
      note(`${student.name}: ${name} ${JSON.stringify(options)} -> ${answered.code ?? answered.kind}`);
      if (answered.kind === "broken")
        throw new Error(`a call broke: ${JSON.stringify(alive.log.lines.at(-1))}`);
      return answered;
    },
    compare(course) {
      // As before every call: here it notices a clock that was set.
      if (!isAwake()) return;
      observe(course);
      if (bot && !bot.isDead) compareCues(course, bot);
    },
    note,
    toTrue,
    close() {
      bot?.kill();
      points.uninstall();
      time.uninstall();
      rmSync(home, { recursive: true, force: true });
    },
  };

  function isAwake(): boolean {
    try {
      return world.bot?.clock.now() !== undefined;
    } catch (error) {
      if (error instanceof Killed) return false;
      throw error;
    }
  }

  /** The bot may have moved a run on by the clock; the reference follows where that was due. */
  function observe({ student, run, id }: Course): void {
    if (!bot || bot.isDead) return;
    const row = bot.peek(({ db }) => db.prepare("select phase from runs where id = ?").get(id)) as
      { phase: string } | undefined;
    if (!row) throw new Error(`${student.name}'s run is lost`);
    const phase = JSON.parse(row.phase) as { kind: string; step?: number; sinceMs?: number } & Record<
      string,
      number
    >;
    if (run.stage.kind === "running" && (phase.kind !== "running" || phase.step !== run.stage.step)) {
      if (time.trueMs() < run.stage.endMs - world.leadMs - SLACK_MS)
        throw new Error(`${student.name}'s run moved on before its time: ${row.phase}`);
      run.elapse(time.trueMs());
    }
    const { stage } = run;
    const isSame =
      phase.kind === stage.kind &&
      (!("step" in stage) || phase.step === stage.step) &&
      (stage.kind !== "running" ||
        (isNear(phase["startedAtMs"], stage.startMs) && isNear(phase["endsAtMs"], stage.endMs))) &&
      (stage.kind !== "waiting" || isNear(phase["sinceMs"], stage.sinceMs));
    if (!isSame)
      throw new Error(`${student.name}: the store has ${row.phase}, due is ${JSON.stringify(stage)}`);
  }

  const isNear = (wallMs: number | undefined, trueMs: number): boolean =>
    Math.abs(toTrue(wallMs ?? Number.NaN) - trueMs) <= SLACK_MS;

  function compareCues({ student, run, id }: Course, alive: SimulatedBot): void {
    const rows = alive.peek(({ db }) =>
      db.prepare("select * from cues where run_id = ? order by id").all(id),
    ) as CueRow[];
    const taken = new Set(run.promises.map(({ key }) => key));
    for (const promise of run.open()) {
      if (promise.key !== undefined) continue;
      const row = rows.find(
        (each) =>
          !taken.has(each.key) &&
          each.kind === promise.kind &&
          each.step === promise.step &&
          each.number === promise.number &&
          (each.state !== "pending" || isNear(each.due_at, promise.dueMs)),
      );
      if (!row && (promise.isOptional || promise.isOnTheEdge)) {
        run.promises.splice(run.promises.indexOf(promise), 1);
        continue;
      }
      if (!row) throw new Error(`${student.name}: nothing promises ${JSON.stringify(promise)}`);
      taken.add(row.key);
      promise.key = row.key;
    }
    const byKey = new Map(run.open().map((promise) => [promise.key, promise]));
    for (const { state, key, due_at: dueAt } of rows) {
      if (state !== "pending") continue;
      const promise = byKey.get(key);
      if (!promise) throw new Error(`${student.name}: cue ${key} waits, and nobody is to be called`);
      if (!isNear(dueAt, promise.dueMs))
        throw new Error(`${student.name}: cue ${key} drifted to ${toTrue(dueAt)} from ${promise.dueMs}`);
    }
  }

  return world;
}

/** Begins a run of this plan, and a reference beside it. */
export function beginRun(world: World, student: Student, plan: Plan): void {
  if (!world.bot) return;
  const number = world.bot.peek(({ plans, classes, atomically }) => {
    const classId = classes.list()[0]?.id ?? 0;
    return atomically(() => plans.add(classId, student.id, plan, world.time.wallMs()).number);
  });
  const called = world.call(student, "run start", { plan: makeNumber("plan", number) });
  if (called?.kind !== "done" || !world.bot) return;
  const row = world.bot.peek(({ db }) =>
    db.prepare("select id, number from runs where person_id = ? order by id desc").get(student.id),
  ) as { id: number; number: number };
  const run = new ReferenceRun(plan, WARN_SECONDS, world.time.trueMs());
  student.courses.push({ student, run, ...row, changes: [] });
}
