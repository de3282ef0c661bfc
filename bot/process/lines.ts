import { write, writeSync } from "node:fs";

/* Lines to a stream of the process, written beside the work. pino's own destination never ends where its reader has gone. */

export interface Lines {
  write(line: string): void;
}

/** At the end of the process a reader that is slow is waited for so long, in all. */
const PATIENCE_MS = 1000;
const PAUSE_MS = 50;

/** Where nobody reads for so long that `mostBytes` wait, the newest lines are dropped; where the reader is gone, all are. */
export function createLines(fd: number, mostBytes: number): Lines {
  let waiting: Buffer[] = [];
  let waitingBytes = 0;
  /** What is being written at this moment; at the end of the process it may have been written already. */
  let underWay: Buffer = Buffer.alloc(0);
  let isGone = false;

  function take(): void {
    if (underWay.length > 0 || waiting.length === 0) return;
    underWay = Buffer.concat(waiting);
    waiting = [];
    waitingBytes = 0;
    pump();
  }

  function pump(): void {
    write(fd, underWay, (error, written) => {
      if (error && !isSlow(error)) return giveUp();
      underWay = underWay.subarray(error ? 0 : written);
      if (error) setTimeout(pump, PAUSE_MS);
      else if (underWay.length > 0) pump();
      else take();
    });
  }

  function giveUp(): void {
    isGone = true;
    underWay = Buffer.alloc(0);
    waiting = [];
  }

  /** There is no later any more: what waits is written now, and what can't be is lost. */
  function end(): void {
    if (isGone) return;
    let rest = Buffer.concat([underWay, ...waiting]);
    let patienceMs = PATIENCE_MS;
    while (rest.length > 0 && patienceMs > 0) {
      try {
        rest = rest.subarray(writeSync(fd, rest));
      } catch (error) {
        if (!isSlow(error as NodeJS.ErrnoException)) return;
        patienceMs -= PAUSE_MS;
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE_MS);
      }
    }
  }
  process.on("exit", end);

  return {
    write(line) {
      const bytes = Buffer.from(line);
      if (isGone || waitingBytes + bytes.length > mostBytes) return;
      waiting.push(bytes);
      waitingBytes += bytes.length;
      // Not at once: lines that are said together are written together, and the last ones, before an end, only once.
      if (waiting.length === 1) setImmediate(take);
    },
  };
}

const isSlow = ({ code }: NodeJS.ErrnoException): boolean => code === "EAGAIN" || code === "EBUSY";
