import { existsSync, renameSync, rmSync, statSync } from "node:fs";
import type { Stores } from "../../store/index.ts";
import type { Log } from "../process/log.ts";
import { dropBallast, keepBallast } from "./ballast.ts";
import { examineBeside, type Examined } from "./damage.ts";
import { writeMarker } from "./marker.ts";

/* The store's file while it is in use: is it there, is it whole, is there room. */

const LOOK_MS = 60_000;

const onFull = /^SQLITE_(FULL|IOERR)/;
const onDamage = /^SQLITE_(CORRUPT|NOTADB)/;
/** A disk that fails, or a file that was cut short: which of them is seen by looking at all of it. */
const onEither = /^SQLITE_IOERR/;
/** Looking at all of it takes the disk and a processor for a while: at most this share of the time. */
const MOST_EXAMINING = 1 / 20;

export interface Guard {
  /** Looks at once; else it does so every minute, and then at every page as well. */
  look(now: number): void;
  /** A fault of the disk has come up: makes room, or ends the process where the store is damaged. */
  notice(error: unknown): void;
  stop(now: number): void;
}

export interface GuardDeps {
  readonly path: string;
  readonly stores: Stores;
  readonly log: Log;
  readonly now: () => number;
  /** Whether every page of it was looked at; else it is now. */
  readonly isExamined: boolean;
  /** The process must end, with this sentence. */
  readonly onFatal: (sentence: string) => void;
  /** A minute, unless a test says otherwise. */
  readonly lookMs?: number;
}

/** Watches the store while it is in use. */
export function watchStore(deps: GuardDeps): Guard {
  const { path, stores, log, now, isExamined, onFatal, lookMs = LOOK_MS } = deps;
  const { ino, dev } = statSync(path);
  let isOver = false;
  let stopExamining: (() => void) | undefined;
  let examinedAt = performance.now();
  let examineFrom = 0;
  const timer = setInterval(() => {
    look(now());
    if (performance.now() >= examineFrom) examine();
  }, lookMs).unref();
  if (!isExamined) examine();

  /** Nothing else tells of pages that were overwritten before somebody needs them, and then it is too late for a class. */
  function examine(): void {
    if (isOver || stopExamining) return;
    examinedAt = performance.now();
    stopExamining = examineBeside(path, onExamined);
  }

  function onExamined(examined: Examined): void {
    stopExamining = undefined;
    const tookMs = performance.now() - examinedAt;
    examineFrom = examinedAt + tookMs / MOST_EXAMINING;
    if (isOver) return;
    if (examined.kind === "damaged") endDamaged(examined.found);
    if (examined.kind === "unknown") log.warn({ detail: examined.detail }, "the store could not be examined");
  }

  function endDamaged(found: string): void {
    const what = found.replaceAll(/\s+/g, " ");
    end(`The store at ${path} is damaged (${what}). Bring back a backup: npm run restore.`);
  }

  function isReplaced(): boolean {
    const here = existsSync(path) ? statSync(path) : undefined;
    return here?.ino !== ino || here.dev !== dev;
  }

  function look(at: number): void {
    if (isOver) return;
    try {
      if (isReplaced()) return rescue();
      if (statSync(path).size === 0) return end(`The store at ${path} was emptied while it was in use.`);
      writeMarker(path, stores, at);
      keepBallast(path);
    } catch (error) {
      log.error({ err: error }, "the store could not be looked after");
      notice(error);
    }
  }

  /** What is open is still whole, though its name is gone: it gets one again. */
  function rescue(): void {
    const isFree = !existsSync(path);
    const target = isFree ? path : `${path}.rescued`;
    const part = `${target}.part`;
    try {
      rmSync(part, { force: true });
      stores.upkeep.copyTo(part);
      for (const side of ["-wal", "-shm"]) rmSync(target + side, { force: true });
      renameSync(part, target);
      end(
        isFree
          ? `The store at ${path} was deleted while it was in use. All of it was written back; start again.`
          : `The store at ${path} was replaced while it was in use. What was in use is kept at ${target}: npm run restore -- ${target}`,
      );
    } catch (error) {
      log.error({ err: error }, "the store's file is gone, and could not be written back");
      end(
        `The store at ${path} was deleted while it was in use, and could not be written back: ${String(error)}`,
      );
    }
  }

  function end(sentence: string): void {
    isOver = true;
    clearInterval(timer);
    stopExamining?.();
    log.error({}, sentence);
    onFatal(sentence);
  }

  function notice(error: unknown): void {
    const code = (error as { code?: string } | undefined)?.code ?? "";
    if (isOver) return;
    if (onDamage.test(code)) return endDamaged(code);
    if (onEither.test(code)) examine();
    if (onFull.test(code) && dropBallast(path))
      log.error({ code }, "the disk is full; the reserve beside the store was let go. Free some space now");
  }

  look(now());
  return {
    look,
    notice,
    stop(at) {
      clearInterval(timer);
      stopExamining?.();
      if (isOver) return;
      isOver = true;
      try {
        writeMarker(path, stores, at);
      } catch (error) {
        log.warn({ err: error }, "the file that knows the store could not be written");
      }
    },
  };
}

/** The same log, with each warning and error shown to `onLine` as well. */
export function tapLog(log: Log, onLine: (level: "warn" | "error", fault: unknown) => void): Log {
  return {
    debug: (fields, message) => log.debug(fields, message),
    info: (fields, message) => log.info(fields, message),
    warn(fields, message) {
      log.warn(fields, message);
      onLine("warn", fields["err"]);
    },
    error(fields, message) {
      log.error(fields, message);
      onLine("error", fields["err"]);
    },
  };
}
