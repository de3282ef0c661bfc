import { execFile, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openStores } from "../../../store/index.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";

/* How the built process ends: by its terminal, by npm, by what it finds. */

const root = join(import.meta.dirname, "..", "..", "..");

let data: string;
let bot: BotProcess | undefined;

beforeEach(() => void (data = mkdtempSync(join(tmpdir(), "sinkside-stop-"))));
afterEach(async () => {
  if (bot?.child.exitCode === null && bot.child.signalCode === null) await bot.kill();
  rmSync(data, { recursive: true, force: true });
});

/** Whoever stopped cleanly has moved its log into the store and let go of it. */
function expectWhole(): void {
  const stores = openStores(join(data, "sinkside.db"));
  expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
  stores.close();
}

describe("it stops cleanly", () => {
  test.each(["SIGTERM", "SIGINT", "SIGHUP"] as const)("at %s", async (signal) => {
    bot = startProcess(data);
    await bot.ready;
    expect(await bot.kill(signal)).toBe(0);
    expect(bot.output()).toContain("Stopping.");
    expectWhole();
  });

  test("with nobody left who reads what it says", async () => {
    bot = startProcess(data, { LOG_LEVEL: "debug" });
    const url = await bot.ready;
    bot.child.stdout?.destroy();
    bot.child.stderr?.destroy();
    // Each call is logged: to nobody.
    for (let call = 0; call < 20; call += 1) expect((await fetch(url)).status).toBe(200);
    expect(await bot.kill("SIGTERM")).toBe(0);
    expectWhole();
  });

  test("with nobody left who reads, and something to say at the very end", async () => {
    bot = startProcess(data);
    await bot.ready;
    bot.child.stdout?.destroy();
    bot.child.stderr?.destroy();
    // Its folder goes: what it can't write there any more is said to nobody, at its end as well.
    rmSync(data, { recursive: true, force: true });
    expect(await bot.kill("SIGTERM")).toBe(0);
  });

  // At SIGINT alone npm itself goes on: it takes its terminal to have told both.
  test.each(["SIGTERM", "SIGHUP", "SIGKILL"] as const)("where npm alone is ended by %s", async (signal) => {
    const env = { ...process.env, SINKSIDE_DATA: data, ROOM_PORT: "0" };
    const npm = spawn("npm", ["start"], { cwd: root, env, stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    const ended = once(npm.stdout, "end");
    await new Promise<void>((resolve, reject) => {
      npm.stdout.on("data", (chunk: Buffer) => {
        said += chunk.toString();
        if (said.includes("ready: open")) resolve();
      });
      npm.once("exit", () => reject(new Error(said)));
    });
    npm.kill(signal);
    // Its end of the pipe is closed by the last of them: the bot.
    await ended;
    expectWhole();
  });
});

describe("it says what is wrong, and ends with its code", () => {
  test("a lock file of something else", async () => {
    openStores(join(data, "sinkside.db")).close();
    writeFileSync(
      join(data, "sinkside.db.lock"),
      "this is a shopping list, and long enough to be read as a page\n".repeat(20),
    );
    bot = startProcess(data);
    expect(await bot.ended()).toBe(73);
    expect(bot.output()).toMatch(/lock file .*sinkside\.db\.lock.*remove that file and start again/);
  });

  const wrong = [
    ["main.js", 78],
    ["ask.js", 2],
    ["restore.js", 1],
  ] as const;
  test.each(wrong)("a data path that is a file, in %s", async (program, code) => {
    const file = join(data, "data");
    writeFileSync(file, "");
    const { ended, said } = await run(program, { SINKSIDE_DATA: file });
    expect(said).toMatch(/SINKSIDE_DATA is .*, and a file is in the way/);
    expect(ended).toBe(code);
    const below = await run(program, { SINKSIDE_DATA: join(file, "below") });
    expect([below.ended, below.said]).toEqual([code, expect.stringContaining("a file is in the way")]);
  });
});

function run(
  program: string,
  env: Readonly<Record<string, string>>,
): Promise<{ ended: number; said: string }> {
  const given = program === "ask.js" ? ["/help"] : program === "restore.js" ? ["newest"] : [];
  return new Promise((resolve) => {
    const options = { env: { ...process.env, ROOM_PORT: "0", ...env } };
    execFile(process.execPath, [join(root, "dist", "bot", program), ...given], options, (error, out, err) =>
      resolve({ ended: Number(error?.code ?? 0), said: out + err }),
    );
  });
}
