// Loaded before the program by `node --import`: ends the process as kill -9 does at a place inside its work. The program
// itself knows nothing of it. KILL_POINT=place:n names the place and which passing of it is the last.
import fs from "node:fs";
import { createRequire, syncBuiltinESMExports } from "node:module";
import { isMainThread } from "node:worker_threads";

// The driver as the program has it: built in.
const main = process.env.KILL_MAIN ?? new URL("../../dist/bot/main.js", import.meta.url);
const { openDriver } = createRequire(main)("./part-driver.js");

const [place = "", nth = "1"] = (process.env.KILL_POINT ?? "").split(":");
let left = Number(nth);

function pass(name) {
  if (name !== place || (left -= 1) !== 0) return;
  process.kill(process.pid, "SIGKILL");
  // The signal ends every thread at once; should it take a moment, nothing more is done in it.
  for (;;);
}

/** The place a statement makes by its first word; undefined where it is plain work. */
function addressOf(sql) {
  if (/^begin/i.test(sql)) return "begin";
  if (/^commit/i.test(sql)) return "commit";
  return /wal_checkpoint/.test(sql) ? "checkpoint" : undefined;
}

const places = new Map();

function aroundStatement(db, sql, work) {
  if (db.name.endsWith(".lock")) return around("lock", work);
  if (!places.has(sql)) places.set(sql, addressOf(sql));
  const name = places.get(sql);
  pass("statement");
  if (name === undefined && db.inTransaction) pass("inside");
  if (name === undefined) return work();
  pass(`before-${name}`);
  const result = work();
  pass(`after-${name}`);
  return result;
}

/** Before and after are one place, counted in turn. */
function around(name, work) {
  pass(name);
  const result = work();
  pass(name);
  return result;
}

function hookStatements() {
  const probe = openDriver(":memory:");
  const database = Object.getPrototypeOf(probe);
  const statement = Object.getPrototypeOf(probe.prepare("select 1").make());
  for (const name of ["run", "get", "all"]) {
    const call = statement[name];
    statement[name] = function hooked(...given) {
      return aroundStatement(this.database, this.source, () => call.apply(this, given));
    };
  }
  const { exec } = database;
  database.exec = function hooked(sql) {
    return aroundStatement(this, sql, () => exec.call(this, sql));
  };
}

/** The small files beside the store: what is known of it, and the space in reserve. */
function hookFiles() {
  const watched = new Set();
  const isWatched = (target) => watched.has(target) || /\.(known|ballast)(\.part)?$/.test(String(target));
  for (const name of ["openSync", "writeSync", "fsyncSync", "closeSync", "renameSync"]) {
    const call = fs[name];
    fs[name] = function hooked(target, ...given) {
      const [flags] = given;
      if (!isWatched(target) || (name === "openSync" && flags !== "w")) return call(target, ...given);
      const result = around("file", () => call(target, ...given));
      if (name === "openSync") watched.add(result);
      if (name === "closeSync") watched.delete(target);
      return result;
    };
  }
  syncBuiltinESMExports();
}

if (isMainThread && place !== "") {
  hookStatements();
  hookFiles();
}
// The store is tidied in a thread of its own.
if (!isMainThread && place.endsWith("checkpoint")) hookStatements();
