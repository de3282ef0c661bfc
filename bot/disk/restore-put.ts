import { keepRun } from "../../commands/run/keep.ts";
import { existsSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { speaking } from "../../commands/speech/language.ts";
import { DEFAULT_LANGUAGE } from "../../store/shapes/language.ts";
import { countOf } from "../../commands/speech/wording.ts";
import { redaction } from "../../commands/mine/redact.ts";
import { advance } from "../../commands/run/machine.ts";
import { copyStore, erasedIn, inspectStore, type Holding } from "../../store/backup.ts";
import { openStores, type Stores } from "../../store/index.ts";
import { StoreError } from "../../store/open.ts";
import { lockFile } from "../../store/upkeep.ts";
import { flush } from "./backup.ts";
import { rotateAsides } from "./asides.ts";
import { readMarker, writeMarker } from "./marker.ts";

export interface Restored {
  readonly holding: Holding;
  /** Runs that were under way in the backup, ended in the log. */
  readonly stopped: number;
  /** Messages the backup still owed, which are not said any more. */
  readonly unsaid: number;
  /** Where the store that was there is now; null where there was none. */
  readonly aside: string | null;
  /** People erased since the backup was made, who were erased in it as well. */
  readonly erasedAgain: number;
}

export interface PutOptions {
  /** Also where a healthy store is there. */
  readonly replaces: boolean;
  /** What to do about people who were erased since the backup was made; undefined: they are not to be brought back unasked. */
  readonly erased?: "again" | "bring-back" | undefined;
}

/** A backup younger than this may be of the class that is going on: its runs go on. */
const STILL_GOING_MS = 10 * 60_000;

/**
 * Puts a backup in the place of the store. The file that was there is moved aside, never removed.
 * @throws StoreError where the backup is damaged, a bot is using the store, a healthy store is there and
 * `replaces` is false, or it would bring back somebody who was erased and nobody has said what to do.
 */
export function putBack(backup: string, storePath: string, options: PutOptions, now: number): Restored {
  const holding = inspectStore(backup);
  refuseInUse(storePath);
  const present = presentStore(storePath);
  if (present && !options.replaces)
    throw new StoreError(
      "ERR_STORE_THERE",
      `There is a healthy store at ${storePath} with ${present.runs} runs and ${present.rolls} rolls. To put the backup in its place, add --replace: it is moved aside, not removed.`,
    );
  const part = `${storePath}.part`;
  for (const side of SIDES) rmSync(part + side, { force: true });
  try {
    // Through the engine: what is still in a log beside the file comes along.
    copyStore(backup, part);
    refuseOther(holding, inspectStore(part));
    const settled = settleOld(part, storePath, holding, options, now);
    flush(part);
    const aside = moveAside(storePath, now);
    renameSync(part, storePath);
    flush(dirname(storePath));
    rotateAsides(storePath, now);
    return { holding, aside, ...settled };
  } finally {
    for (const side of SIDES) rmSync(part + side, { force: true });
  }
}

const SIDES = ["", "-wal", "-shm"] as const;

/** What was promised of the backup must be in what comes into its place, before the old store goes. */
function refuseOther(promised: Holding, found: Holding): void {
  if (isDeepStrictEqual(promised, found)) return;
  throw new StoreError(
    "ERR_DAMAGED",
    `The backup holds ${promised.runs} runs and ${promised.rolls} rolls, its copy ${found.runs} and ${found.rolls}. The store that is there was left as it is. Try again, or take an older backup.`,
  );
}

/** The same lock the bot holds: it is let go at once, since this process only looks. */
function refuseInUse(storePath: string): void {
  const lock = lockFile(`${storePath}.lock`);
  if (!lock)
    throw new StoreError(
      "ERR_STORE_HELD",
      `A bot is using the store at ${storePath}. Stop it first; nothing was changed.`,
    );
  lock.release();
}

/** undefined where what is there can't be used anyway, or holds nothing. */
function presentStore(storePath: string): Holding | undefined {
  try {
    const present = inspectStore(storePath);
    return present.runs + present.rolls + present.batches > 0 ? present : undefined;
  } catch {
    return undefined;
  }
}

function moveAside(storePath: string, now: number): string | null {
  const stamp = new Date(now).toISOString().replaceAll(/[:.]/g, "-");
  const aside = `${storePath}.before-${stamp}`;
  // Its log goes along: without it the newest entries would be lost, and with another store it would be poison.
  const there = SIDES.filter((side) => existsSync(storePath + side));
  for (const side of there) renameSync(storePath + side, aside + side);
  return there.includes("") ? aside : null;
}

/**
 * What a backup has under way is long over: films are out of their tanks, messages were said. Its runs are ended in the
 * log, and nothing it owed is said again. Who was erased since is erased in it.
 */
function settleOld(
  part: string,
  storePath: string,
  { newestAt }: Holding,
  { erased }: PutOptions,
  now: number,
): { stopped: number; unsaid: number; erasedAgain: number } {
  const isOld = (newestAt ?? 0) < now - STILL_GOING_MS;
  const known = erasedBefore(storePath);
  const stores = openStores(part);
  try {
    const back = stores.erasures.membersAmong(known);
    if (back.length > 0 && erased === undefined)
      throw new StoreError(
        "ERR_ERASED_BACK",
        `This backup is older than the erasure of ${countOf(back.length, "person", "people")} in it. Nothing was changed. To erase them in what is brought back, add --erase-again; to bring them back, with their consent, add --bring-back-erased.`,
      );
    const counts = stores.atomically(() => ({
      unsaid: isOld ? dropOwed(stores, now) : 0,
      stopped: isOld ? stopRuns(stores, now) : 0,
      erasedAgain: erased === "again" ? eraseAgain(stores, back) : 0,
    }));
    stores.erasures.remember(known);
    if (counts.erasedAgain > 0) stores.privacy.sweep();
    writeMarker(storePath, stores, now);
    stores.upkeep.intoOneFile();
    return counts;
  } finally {
    stores.close();
  }
}

/** As the store that is there knows it, and the file beside it, should that store be lost. */
function erasedBefore(storePath: string): string[] {
  const known = readMarker(storePath)?.erased ?? [];
  try {
    return [...new Set([...known, ...erasedIn(storePath)])];
  } catch {
    return known;
  }
}

function eraseAgain(stores: Stores, people: readonly { classId: number; personId: string }[]): number {
  for (const { classId, personId } of people) {
    const language = stores.classes.get(classId)?.habits.language ?? DEFAULT_LANGUAGE;
    speaking(language, () => stores.privacy.erasePerson(classId, personId, redaction));
  }
  return people.length;
}

function stopRuns(stores: Stores, now: number): number {
  const open = stores.classes.list().flatMap(({ id }) => stores.runs.open(id));
  for (const run of open) {
    const ended = advance(run, { kind: "stop", reason: "the store was restored from a backup", atMs: now });
    if (ended.ok) keepRun(stores, ended.value, now);
  }
  return open.length;
}

const dropOwed = (stores: Stores, now: number): number =>
  stores.outbox.dropAll("the store was restored from a backup", now);
