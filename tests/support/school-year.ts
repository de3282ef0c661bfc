import { setImmediate as turn } from "node:timers/promises";
import { createDispatch } from "../../bot/calls/dispatch.ts";
import { callLine, type RoomCaller } from "../../bot/chat/room/calls.ts";
import { createFeedWriter } from "../../bot/chat/room/feed-writer.ts";
import { createEarlyRoom } from "../../bot/chat/room/say.ts";
import { settleSome } from "../../bot/cues/tick.ts";
import { DEMO_SHEETS } from "../../bot/demo/demo.ts";
import { createDeliverer } from "../../bot/deliver/deliver.ts";
import { createRetention, type Ages } from "../../bot/rounds/retention.ts";
import type { Role } from "../../store/shapes/person.ts";
import { commands } from "../../commands/index.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createFakeClock } from "./clock.ts";
import { START } from "./make.ts";
import { createMemoryLog } from "./room.ts";

/*
 * A school at work: groups that meet once a week, each student with a tank and a phone, every line and answer kept as the room
 * keeps it, and the store cleared as the bot clears it. Everything in it is invented.
 */

export interface School {
  readonly stores: OpenedStores;
  /** One week: a period for each group. */
  week(): Promise<void>;
  /** Weeks in which nobody comes. */
  holidays(weeks: number): void;
  /** Films developed so far. */
  readonly films: number;
  /** What each portion of clearing took of a processor, ms. */
  readonly clearing: readonly number[];
  readonly faults: () => readonly unknown[];
}

export interface SchoolSize {
  readonly groups: number;
  readonly filmsAPeriod: number;
  readonly ages: Ages;
}

const HOUR_MS = 3_600_000;
const WEEK_MS = 7 * 24 * HOUR_MS;
/** Who is called taps so long after. */
const TAP_MS = 4000;

export function openSchool(path: string, { groups, filmsAPeriod, ages }: SchoolSize): School {
  const clock = createFakeClock();
  const log = createMemoryLog();
  const stores = openStores(path);
  const writer = createFeedWriter(
    stores,
    () => clock.now(),
    () => {},
  );
  const deliverer = createDeliverer({
    stores,
    clock,
    log,
    ports: new Map([["room", createEarlyRoom(stores, () => clock.now())]]),
    onOutcome: () => {},
  });
  const dispatch = createDispatch({ commands, stores, clock, log });
  const retention = createRetention({ stores, clock, log, ages, tidy: () => {} });
  const clearing: number[] = [];
  let lines = 0;
  let films = 0;
  let weeks = 0;

  const classIds = Array.from({ length: groups }, (_, group) => {
    const { id } = stores.classes.add(`room:group${group}`, `Group ${group} (invented)`, "UTC", false, START);
    for (const sheet of DEMO_SHEETS) stores.sheets.save(id, sheet, null, START);
    for (let number = 1; number <= filmsAPeriod; number += 1)
      stores.tanks.save(id, {
        number,
        reels: 1,
        volumeMl: 300,
        format: "any",
        condition: null,
        timeConstantSeconds: null,
      });
    return id;
  });

  function callerOf(group: number, name: string, role: Role): RoomCaller {
    return {
      person: { id: `room:${group}-${name.toLowerCase()}`, name },
      role,
      place: { classKey: `room:group${group}`, className: `Group ${group} (invented)`, channelRef: null },
      classId: classIds[group] ?? 0,
    };
  }

  /** What a page sends, and all that follows from it. */
  async function type(caller: RoomCaller, text: string): Promise<void> {
    lines += 1;
    const refusal = await callLine(
      {
        commands,
        handlers: {
          onCommand: dispatch.onCommand,
          onComplete: () => [],
          onFatal: () => {},
        },
        write: writer.write,
        isMember: () => true,
        bidFarewell: () => {},
        renewFeeds: () => {},
      },
      caller,
      { type: "line", id: `00000000-0000-4000-8000-${String(lines).padStart(12, "0")}`, text },
    );
    if (refusal) throw new Error(`${text}: ${refusal.code}`);
  }

  function settle(): void {
    const now = clock.now();
    deliverer.pump(now, () => settleSome({ stores, log }, now, now, new Set()));
  }

  function goTo(atMs: number): void {
    clock.advance((atMs - clock.now()) / 1000);
  }

  function clear(): void {
    for (let beat = "portion"; beat === "portion";) {
      const before = process.cpuUsage();
      beat = retention.beat();
      const { user, system } = process.cpuUsage(before);
      clearing.push((user + system) / 1000);
      if (beat === "not quiet") throw new Error("the school is not quiet after a period");
    }
  }

  /** Everybody begins one after the other; who is called acts; some stop, some plan twice. */
  async function period(group: number): Promise<void> {
    const classId = classIds[group] ?? 0;
    const teacher = callerOf(group, "Tess", "teacher");
    await mixBaths(teacher);
    await printSome(group);
    await type(teacher, "/class say text:Load your films in total darkness");
    const taps = new Map<
      number,
      { readonly atMs: number; readonly line: string; readonly who: RoomCaller }
    >();
    const runs = new Map<number, RoomCaller>();
    for (let film = 1; film <= filmsAPeriod; film += 1) {
      const who = callerOf(group, `Learner${film}`, "student");
      const plan = `/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:${20 + (film % 5)} tank:${film}`;
      await type(who, plan);
      if (film % 10 === 0) await type(who, plan);
      await type(who, "/run start");
      const run = stores.runs.latest(classId, who.person.id);
      if (run) runs.set(run.id, who);
      clock.advance(15);
      settle();
    }
    for (;;) {
      for (const run of stores.runs.open(classId)) {
        const who = runs.get(run.id);
        if (run.phase.kind !== "waiting" || taps.has(run.id) || !who) continue;
        const line = `/run next run:${run.number} step:${run.phase.step}`;
        const isStopped = run.number % 20 === 0 && run.phase.step > 1;
        taps.set(run.id, {
          who,
          atMs: clock.now() + TAP_MS,
          line: isStopped ? `/run stop run:${run.number} reason:the film came off its reel sure:yes` : line,
        });
      }
      const nextTap = Math.min(...[...taps.values()].map(({ atMs }) => atMs));
      const nextAt = Math.min(nextTap, stores.cues.nextDecideAt() ?? Infinity);
      if (nextAt === Infinity) break;
      goTo(Math.max(nextAt, clock.now()));
      for (const [id, { atMs, line, who }] of taps) {
        if (atMs > clock.now()) continue;
        taps.delete(id);
        const before = JSON.stringify(stores.runs.get(id)?.phase);
        await type(who, line);
        if (JSON.stringify(stores.runs.get(id)?.phase) === before) throw new Error(`${line} changed nothing`);
      }
      settle();
      await turn();
    }
    films += runs.size;
  }

  /** Last week's negatives are printed: a strip each, then two prints on the same box of paper. */
  async function printSome(group: number): Promise<void> {
    const who = callerOf(group, "Learner1", "student");
    await type(
      callerOf(group, "Tess", "teacher"),
      "/print paper paper:1 name:Pier Gloss size:18x24 speed:200",
    );
    await type(who, "/print strip base:8 step:1/3 paper:1 grade:2");
    await type(who, "/print read bar:3");
    await type(who, "/print log seconds:12.7 grade:2 paper:1 title:Pier at dusk burn:sky 1/2");
    await type(who, "/print again");
    await type(who, "/print log as:V1 seconds:16 note:darker");
  }

  /** A week's developer and fixer; what is left of the last goes where the school's rules say. */
  async function mixBaths(teacher: RoomCaller): Promise<void> {
    for (const { number } of stores.batches.standing(teacher.classId))
      await type(teacher, `/batch discard batch:B${number} to:collected for the recovery`);
    const litres = Math.ceil(filmsAPeriod / 4);
    await type(
      teacher,
      `/batch mix kind:fixer product:Clear Fix volume:${litres} l dilution:1+4 capacity:20 films/l use:again full:6 months`,
    );
  }

  return {
    stores,
    clearing,
    get films() {
      return films;
    },
    async week() {
      const begunAt = clock.now();
      for (let group = 0; group < groups; group += 1) {
        // Two groups a day.
        goTo(begunAt + Math.floor(group / 2) * 24 * HOUR_MS + (group % 2) * 3 * HOUR_MS);
        await period(group);
        clock.advance(60);
        clear();
      }
      weeks += 1;
      goTo(START + weeks * WEEK_MS);
      clear();
    },
    holidays(count) {
      weeks += count;
      goTo(START + weeks * WEEK_MS);
      clear();
    },
    faults: () => log.lines.filter(({ level }) => level === "error" || level === "warn"),
  };
}
