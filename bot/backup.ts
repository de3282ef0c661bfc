#!/usr/bin/env node
import { countOf } from "../commands/speech/wording.ts";
import { StoreError } from "../store/open.ts";
import { backupFolderOf, describeHolding, formatBytes, makeBackup, storePathOf } from "./disk/backup.ts";
import { readConfig } from "./process/config.ts";

/* `npm run backup`: one backup now, running bot or not. The schedule calls it too, as a process of its own. */

const DONE = 0;
const FAILED = 73;
const WRONG_SETTING = 78;

function main(): number {
  const config = readConfig(process.env);
  if (!config.ok) return complain(`These settings are wrong:\n${config.fault.join("\n")}`, WRONG_SETTING);
  const { BACKUP_KEEP } = config.value;
  try {
    const made = makeBackup(storePathOf(config.value), backupFolderOf(config.value), BACKUP_KEEP, Date.now());
    const removed =
      made.removed.length > 0 ? ` ${countOf(made.removed.length, "older backup")} removed.` : "";
    process.stdout.write(
      `Backed up to ${made.path} (${formatBytes(made.bytes)}), opened again and found whole: ${describeHolding(made.holding)}.${removed}\n`,
    );
    return DONE;
  } catch (error) {
    return complain(error instanceof StoreError ? error.message : String(error), FAILED);
  }
}

function complain(sentence: string, code: number): number {
  process.stderr.write(`${sentence}\n`);
  return code;
}

process.exitCode = main();
