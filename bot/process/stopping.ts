import { readFileSync } from "node:fs";

/* What tells the process to stop, and what must not. */

export interface StopSources {
  /** Started by `npm start`: npm may be ended alone, and then its terminal believes the bot gone, too. */
  readonly isUnderNpm: boolean;
  onStop(): void;
}

const LOOK_MS = 500;

export function watchForStop({ isUnderNpm, onStop }: StopSources): void {
  for (const signal of ["SIGTERM", "SIGINT", "SIGHUP"] as const) process.on(signal, onStop);
  if (isUnderNpm) watchParent(onStop);
}

/** A terminal or a reader that has gone away is no reason to leave a class alone: what is said there is lost. */
export function outliveReaders(): void {
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => {});
}

/**
 * Whoever ends npm alone gets no signal through to the bot; that it, or the shell between them, has another parent now is all
 * there is to see.
 */
function watchParent(onGone: () => void): void {
  const shell = process.ppid;
  const npm = parentOf(shell);
  const look = setInterval(() => {
    if (process.ppid === shell && parentOf(shell) === npm) return;
    clearInterval(look);
    onGone();
  }, LOOK_MS);
  look.unref();
}

/** undefined where the system tells of no other process than one's own. */
function parentOf(pid: number): string | undefined {
  try {
    // The name in brackets may hold anything, so what follows the last one is read.
    return readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ")[1];
  } catch {
    return undefined;
  }
}
