import { StoreError } from "../../store/open.ts";
import { lockFile, type Owner, type UpkeepStore } from "../../store/upkeep.ts";

export interface Lock {
  release(): void;
}

/**
 * Makes this process the one that owns the store's cues.
 * Others may still read and write the store; they call no cues.
 * @throws StoreError ERR_STORE_HELD where another process has it, naming that process; ERR_LOCK_FILE where the file is no lock.
 */
export function takeLock(storePath: string, upkeep: UpkeepStore, owner: Owner): Lock {
  const lock = lockFile(`${storePath}.lock`);
  if (!lock) {
    const holder = upkeep.owner();
    const who = holder ? `process ${holder.pid}, whose room is at ${holder.address}` : "another process";
    throw new StoreError(
      "ERR_STORE_HELD",
      `The store at ${storePath} is held by ${who}. Use that one, stop it first, or set SINKSIDE_DATA to another folder.`,
    );
  }
  try {
    upkeep.own(owner);
    return lock;
  } catch (error) {
    lock.release();
    throw error;
  }
}
