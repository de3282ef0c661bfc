import { execFileSync } from "node:child_process";
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/* A small disk of one's own, to fill and to lock. Only root may make one. */

export interface SmallDisk {
  readonly path: string;
  /** Writes until nothing more fits. */
  fill(): void;
  /** Gives back what was filled. */
  free(): void;
  lock(): void;
  remove(): void;
}

export function canMakeDisk(): boolean {
  try {
    const disk = makeDisk(1);
    disk.remove();
    return true;
  } catch {
    return false;
  }
}

export function makeDisk(megabytes: number): SmallDisk {
  const path = mkdtempSync(join(tmpdir(), "sinkside-disk-"));
  execFileSync("mount", ["-t", "tmpfs", "-o", `size=${megabytes}m`, "tmpfs", path], { stdio: "ignore" });
  let fillers = 0;
  return {
    path,
    fill() {
      fillers += 1;
      const file = openSync(join(path, `filler${fillers}`), "w");
      try {
        for (const size of [65_536, 4096, 512]) writeUntilFull(file, Buffer.alloc(size, "x"));
      } finally {
        closeSync(file);
      }
    },
    free() {
      for (; fillers > 0; fillers -= 1) rmSync(join(path, `filler${fillers}`));
    },
    lock: () => void execFileSync("mount", ["-o", "remount,ro", path]),
    remove() {
      execFileSync("umount", ["-l", path]);
      rmSync(path, { recursive: true, force: true });
    },
  };
}

function writeUntilFull(file: number, chunk: Buffer): void {
  try {
    for (;;) writeSync(file, chunk);
  } catch (error) {
    if ((error as { code?: string }).code !== "ENOSPC") throw error;
  }
}
