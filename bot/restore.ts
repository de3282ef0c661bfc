#!/usr/bin/env node
import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { countOf } from "../commands/speech/wording.ts";
import { inspectStore } from "../store/backup.ts";
import { StoreError } from "../store/open.ts";
import { backupFolderOf, describeHolding, formatBytes, storePathOf } from "./disk/backup.ts";
import { readConfig, type Config } from "./process/config.ts";
import { makeDataFolder, refuseFile } from "./disk/folder.ts";
import { listBackups } from "./disk/guard.ts";
import { putBack, type PutOptions } from "./disk/restore-put.ts";

/* `npm run restore`: lists the backups; with one named (or `newest`) it puts that in the place of the store. */

const DONE = 0;
const REFUSED = 1;
const WRONG_SETTING = 78;

const USAGE = `Usage: npm run restore                          lists the backups
       npm run restore -- newest [--replace]    brings back the newest one that is whole
       npm run restore -- FILE [--replace]      brings back this one
  --replace            also where a healthy store is there; it is moved aside: two such are kept, for 30 days
  --erase-again        people who were erased since the backup was made are erased in it
  --bring-back-erased  they are brought back, with their consent`;

function main(): number {
  const config = readConfig(process.env);
  if (!config.ok) return complain(`These settings are wrong:\n${config.fault.join("\n")}`, WRONG_SETTING);
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        replace: { type: "boolean", default: false },
        "erase-again": { type: "boolean", default: false },
        "bring-back-erased": { type: "boolean", default: false },
        help: { type: "boolean", default: false },
      },
    });
    const [wanted, ...more] = positionals;
    if (values.help || more.length > 0) return complain(USAGE, values.help ? DONE : REFUSED);
    refuseFile(config.value.SINKSIDE_DATA);
    return wanted === undefined ? list(config.value) : restore(wanted, optionsOf(values), config.value);
  } catch (error) {
    if (error instanceof StoreError) return complain(error.message, REFUSED);
    const isUsage = String((error as { code?: string }).code).startsWith("ERR_PARSE_ARGS");
    return complain(isUsage ? `${(error as Error).message}\n${USAGE}` : String(error), REFUSED);
  }
}

function list(config: Config): number {
  const folder = backupFolderOf(config);
  const names = listBackups(folder);
  if (names.length === 0)
    return complain(`There are no backups in ${folder}. Make one: npm run backup.`, REFUSED);
  for (const name of names) {
    const path = join(folder, name);
    process.stdout.write(`${path} (${formatBytes(statSync(path).size)}): ${describe(path)}\n`);
  }
  process.stdout.write(`${USAGE}\n`);
  return DONE;
}

function describe(path: string): string {
  try {
    return describeHolding(inspectStore(path));
  } catch (error) {
    return `NOT WHOLE: ${(error as Error).message}`;
  }
}

function optionsOf(values: {
  replace: boolean;
  "erase-again": boolean;
  "bring-back-erased": boolean;
}): PutOptions {
  const erased = values["erase-again"] ? "again" : values["bring-back-erased"] ? "bring-back" : undefined;
  return { replaces: values.replace, erased };
}

function restore(wanted: string, options: PutOptions, config: Config): number {
  const path = wanted === "newest" ? newestWhole(backupFolderOf(config)) : wanted;
  if (path === undefined) return complain(`No backup in ${backupFolderOf(config)} is whole.`, REFUSED);
  if (!existsSync(path)) return complain(`There is no file ${path}.`, REFUSED);
  makeDataFolder(config.SINKSIDE_DATA);
  const storePath = storePathOf(config);
  const { holding, stopped, unsaid, aside, erasedAgain } = putBack(path, storePath, options, Date.now());
  const lines = [`Brought back ${path} to ${storePath}: ${describeHolding(holding)}.`];
  if (stopped > 0)
    lines.push(
      `${countOf(stopped, "run")} under way in it ${stopped === 1 ? "is" : "are"} ended in the log.`,
    );
  if (unsaid > 0) lines.push(`${countOf(unsaid, "message")} it still owed will not be said.`);
  if (erasedAgain > 0)
    lines.push(`${countOf(erasedAgain, "person", "people")} erased since then: erased in it, too.`);
  if (aside !== null) lines.push(`The store that was there is kept at ${aside}.`);
  lines.push("What was written after that backup is not in it. Start the bot: npm start");
  process.stdout.write(`${lines.join("\n")}\n`);
  return DONE;
}

function newestWhole(folder: string): string | undefined {
  return listBackups(folder)
    .map((name) => join(folder, name))
    .find((path) => !describe(path).startsWith("NOT WHOLE"));
}

function complain(sentence: string, code: number): number {
  process.stderr.write(`${sentence}\n`);
  return code;
}

process.exitCode = main();
