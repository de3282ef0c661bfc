import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";

/*
 * The built program on each Node it says it runs on: fetched from npm, with the driver compiled for it. STARTS times (50) it is
 * started, asked, backed up, tidied and stopped, and every fifth time killed first. One that dies, or ends with anything but 0,
 * ends this with 1. VERSIONS names others than 20, 22 and 24.
 */

const VERSIONS = (process.env.VERSIONS ?? "20 22 24").split(" ");
const STARTS = Number(process.env.STARTS ?? 50);
/** Long enough for a quiet moment, in which the thread that tidies does its work. */
const QUIET_MS = 1200;

const root = join(import.meta.dirname, "..");
const folder = mkdtempSync(join(tmpdir(), "sinkside-versions-"));
const say = (line) => process.stdout.write(`${line}\n`);

/** What is tried, as it was built when this began. */
const template = join(folder, "template");
for (const name of ["package.json", "package-lock.json", "dist"])
  cpSync(join(root, name), join(template, name), { recursive: true });

/** Node of that version, and the program beside what it needs, compiled for it. */
function prepare(version) {
  const home = join(folder, version);
  const app = join(home, "app");
  mkdirSync(app, { recursive: true });
  const quietly = { stdio: ["ignore", "ignore", "inherit"] };
  const node = `node-${process.platform}-${process.arch}`;
  const fetched = [
    "install",
    "--prefix",
    home,
    "--no-save",
    "--ignore-scripts",
    "--no-audit",
    `${node}@${version}`,
  ];
  execFileSync("npm", fetched, quietly);
  const kit = join(home, "node_modules", node);
  cpSync(template, app, { recursive: true });
  execFileSync("npm", ["ci", "--omit=dev", "--ignore-scripts", "--no-audit"], { ...quietly, cwd: app });
  const env = {
    ...process.env,
    PATH: `${join(kit, "bin")}:${process.env.PATH}`,
    npm_config_nodedir: kit,
    npm_config_build_from_source: "true",
  };
  execFileSync("npm", ["rebuild", "better-sqlite3"], { ...quietly, cwd: app, env });
  return { node: join(kit, "bin", "node"), app };
}

/** Runs one of the programs to its end; its exit code, or the signal it died of, and what it said. */
async function run({ node, app }, program, given, data) {
  const child = begin({ node, app }, program, given, data);
  return { ended: await child.ended, said: child.said() };
}

function begin({ node, app }, program, given, data) {
  const env = { ...process.env, SINKSIDE_DATA: data, ROOM_PORT: "0", BACKUP_CRON: "off" };
  const child = spawn(node, [join(app, "dist", "bot", program), ...given], {
    cwd: app,
    env,
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  const ended = once(child, "exit").then(([code, signal]) => signal ?? code);
  const isReady = new Promise((resolve) => {
    const hear = (chunk) => {
      said += chunk;
      if (said.includes("ready: open")) resolve(true);
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    void ended.then(() => resolve(false));
  });
  return { child, ended, isReady, said: () => said };
}

/** One life of a store; what went wrong in it. */
async function live(program, round) {
  const data = join(folder, `data-${round}`);
  const faults = [];
  const expect = (what, { ended, said }, wanted = 0) => {
    if (ended !== wanted) faults.push(`${what} ended with ${ended}: ${said.slice(-1500)}`);
  };
  const start = async () => {
    const bot = begin(program, "main.js", [], data);
    if (!(await bot.isReady)) expect("start", { ended: await bot.ended, said: bot.said() });
    return bot;
  };
  const end = async (bot, signal, wanted) => {
    bot.child.kill(signal);
    expect(signal, { ended: await bot.ended, said: bot.said() }, wanted);
  };
  if (round % 5 === 4) await end(await start(), "SIGKILL", "SIGKILL");
  const bot = await start();
  expect("ask", await run(program, "ask.js", ["--as", "Mina", "/help"], data));
  if (round % 5 === 0) expect("backup", await run(program, "backup.js", [], data));
  await wait(QUIET_MS);
  await end(bot, "SIGTERM", 0);
  rmSync(data, { recursive: true, force: true });
  return faults;
}

let isWhole = true;
for (const version of VERSIONS) {
  const program = prepare(version);
  const name = execFileSync(program.node, ["--version"]).toString().trim();
  const faults = [];
  for (let round = 0; round < STARTS; round += 1) faults.push(...(await live(program, round)));
  isWhole &&= faults.length === 0;
  say(`${name}: ${STARTS} starts, asked, tidied and stopped; ${faults.length} went wrong.`);
  for (const fault of faults.slice(0, 3)) say(fault);
}
rmSync(folder, { recursive: true, force: true });
process.exitCode = isWhole ? 0 : 1;
