import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";

/*
 * What some tests need beyond npm: three browsers, a clock that can be set for one process, a look at what is written to the
 * disk. Where it may (apt, as root), it installs what is missing; elsewhere it says in one line how. Never an error: a test
 * that lacks something is skipped, and the last line of `npm test` counts those.
 */

const needs = JSON.parse(readFileSync(new URL("../tests/needs.json", import.meta.url), "utf8"));
const say = (line) => process.stdout.write(`${line}\n`);
const listMissing = () => needs.filter(({ files }) => !files.some(existsSync)).map((need) => need.package);

const run = (command, given) =>
  execFileSync(command, given, {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });

const wanted = listMissing();
if (wanted.length > 0 && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
  say(`Installing what tests need: ${wanted.join(", ")}`);
  try {
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...wanted]);
  } catch {
    // Said below, by what is still missing.
  }
}
const missing = listMissing();
if (missing.length > 0)
  say(`Tests that need ${missing.join(", ")} will be skipped: sudo apt-get install -y ${missing.join(" ")}`);
