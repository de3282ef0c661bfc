import { warnOf } from "../../commands/batch/enter.ts";
import { periodWords, weekWords } from "../../commands/class/digest/digest-words.ts";
import { gaugesPicture } from "../../commands/batch/picture.ts";
import { traceOf } from "../../commands/batch/trace.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";
import { owe } from "../../commands/owe.ts";
import type { Picture } from "../../commands/define.ts";
import type { Stores } from "../../store/index.ts";
import type { Clock } from "../process/clock.ts";
import { periodFacts, weekFacts } from "../../commands/class/digest/facts.ts";
import { dueDigests, type DueDigest } from "../../commands/class/digest/times.ts";
import { tellUnreadable } from "../../commands/class/mend/notice.ts";
import { reportFaults } from "../../commands/class/digest/faults.ts";
import type { Log } from "../process/log.ts";
import { onWallClock, type WallTimer } from "./wall-timer.ts";

/*
 * What the class is told by the wall clock: before each period, once a week, and whatever a bottle comes to by age alone.
 * A timer wakes it every minute; what is due is asked of the class's own wall clock and of the store, so that a missed,
 * late or doubled wake-up changes nothing.
 */

export interface Digest {
  start(): void;
  stop(): void;
  /** Looks after everything due by `now`. */
  beat(now: number): void;
}

export interface DigestDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** Called when something was put into the outbox. */
  readonly onOwed?: () => void;
}

const FAULTS_EVERY_MS = 10 * 60_000;
const MARK_AGAIN_MS = 60 * 60_000;

export function createDigest({ stores, clock, log, onOwed }: DigestDeps): Digest {
  let timer: WallTimer | undefined;
  let isLooking = false;
  let faultsAt = -Infinity;
  let isStopped = true;

  /** One class that can't be read must not silence the others. */
  function tryFor(classId: number, what: string, work: () => void): void {
    try {
      stores.atomically(work);
    } catch (error) {
      log.error({ class: classId, err: error }, what);
    }
  }

  function beat(now: number): void {
    for (const look of looksAt(now)) look();
    onOwed?.();
  }

  /** What there is to do at `now`, class by class. */
  function looksAt(now: number): (() => void)[] {
    const isFaultTime = now - faultsAt >= FAULTS_EVERY_MS || now < faultsAt;
    if (isFaultTime) faultsAt = now;
    return stores.classes.list().map((found) => () => {
      tryFor(found.id, "a digest could not be made", () => sayDigests(stores, found, now));
      for (const id of stores.batches.standingIds(found.id))
        tryFor(found.id, "a batch could not be looked at", () => {
          const batch = stores.batches.get(id);
          if (batch) warnOf(stores, batch, now);
        });
      if (!isFaultTime) return;
      tryFor(found.id, "the faults could not be looked at", () => reportFaults(stores, found.id, now));
      tryFor(found.id, "rows could not be looked at", () => tellUnreadable(stores, found.id, now));
    });
  }

  /** One class in each turn of the loop: where there are hundreds, no call may wait for them. */
  async function beatGently(): Promise<void> {
    if (isLooking) return;
    isLooking = true;
    try {
      for (const look of looksAt(clock.now())) {
        if (isStopped) return;
        look();
        await new Promise<void>((resolve) => setImmediate(resolve));
      }
      onOwed?.();
    } catch (error) {
      log.error({ err: error }, "the digests could not be looked at");
    } finally {
      isLooking = false;
    }
  }

  return {
    beat,
    start() {
      isStopped = false;
      timer = onWallClock("* * * * *", undefined, () => void beatGently());
      void beatGently();
    },
    stop() {
      isStopped = true;
      timer?.stop();
    },
  };
}

/** Of several missed while the bot was away only the newest of each kind is said, once, and says how late it is. */
function sayDigests(stores: Stores, found: SchoolClass, now: number): void {
  const checkedAt = stores.digests.checkedAt(found.id);
  const from = checkedAt ?? now;
  if (now < from) return;
  const due = dueDigests(found.habits, found.zone, from, now);
  // Where nothing is due the former mark does as well, and spares a flush of the disk each minute for each class.
  if (due.length > 0 || checkedAt === undefined || now - from > MARK_AGAIN_MS)
    stores.digests.setChecked(found.id, now);
  for (const kind of ["period", "week"] as const) {
    const ofKind = due.filter((each) => each.kind === kind);
    const newest = ofKind.at(-1);
    if (newest) say(stores, found, newest, ofKind.length - 1, now);
  }
}

function say(stores: Stores, found: SchoolClass, due: DueDigest, missed: number, now: number): void {
  const late = { lateMs: now - due.dueAtMs, dueAtMs: due.dueAtMs, missed };
  owe(
    stores,
    {
      of: { kind: "digest", class: found.id, name: due.name },
      classId: found.id,
      personId: null,
      say() {
        const isPeriod = due.kind === "period";
        const text = isPeriod
          ? periodText(stores, found, due, late, now)
          : weekText(stores, found, late, now);
        return text === undefined ? undefined : { text, pictures: gauges(stores, found.id, now) };
      },
    },
    now,
  );
}

type Late = Parameters<typeof weekWords>[1];

function periodText(
  stores: Stores,
  found: SchoolClass,
  due: DueDigest,
  late: Late,
  now: number,
): string | undefined {
  const facts = periodFacts(stores, found, now, due.startsAtMs);
  // A class that keeps no batches has nothing to be told of them.
  if (stores.batches.list(found.id).length === 0 && facts.lampsDue.length === 0) return undefined;
  return periodWords(facts, due.period?.name ?? "", due.startsAtMs, late);
}

function weekText(stores: Stores, found: SchoolClass, late: Late, now: number): string | undefined {
  const facts = weekFacts(stores, found, now);
  return facts.isEmpty && facts.finished + facts.stopped === 0 ? undefined : weekWords(facts, late);
}

function gauges(stores: Stores, classId: number, now: number): Picture[] {
  const traces = stores.batches
    .standing(classId)
    .map((batch) => traceOf(batch, stores.batches.lines(batch.id), now));
  return traces.length > 0 ? [gaugesPicture(traces, now)] : [];
}
