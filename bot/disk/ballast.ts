import { closeSync, existsSync, fsyncSync, openSync, rmSync, statfsSync, writeSync } from "node:fs";
import { dirname } from "node:path";

/*
 * Space kept in reserve. On a disk that is quite full not even a healthy store can be opened; letting this go makes
 * room for that.
 */

const BALLAST_BYTES = 2 * 1024 * 1024;
/** It is laid only where this much stays free beside it. */
const ROOM_BYTES = 8 * BALLAST_BYTES;

const ballastPath = (storePath: string): string => `${storePath}.ballast`;

/** Lays it where there is room and none is there. */
export function keepBallast(storePath: string): void {
  const path = ballastPath(storePath);
  if (existsSync(path)) return;
  const { bavail, bsize } = statfsSync(dirname(storePath));
  if (bavail * bsize < ROOM_BYTES) return;
  const file = openSync(path, "w");
  try {
    writeSync(file, Buffer.alloc(BALLAST_BYTES, "Sinkside keeps this space free. "));
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** True where there was some to let go. */
export function dropBallast(storePath: string): boolean {
  const isThere = existsSync(ballastPath(storePath));
  rmSync(ballastPath(storePath), { force: true });
  return isThere;
}
