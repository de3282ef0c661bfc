import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";

/* The built log in a process of its own, since it writes to the real stream. */

const LOG = pathToFileURL(join(import.meta.dirname, "..", "..", "..", "dist", "bot", "log.js")).href;

function run(code: string) {
  const program = `import { createLog } from "${LOG}"; const log = createLog("info"); ${code}`;
  const child = spawn(process.execPath, ["--input-type=module", "-e", program], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  return child;
}

test("a log nobody reads holds nothing up", async () => {
  // Some 3 MB, where a pipe holds 64 kB.
  const child = run(
    `for (let at = 0; at < 50_000; at += 1) log.info({ at }, "said"); console.log("went on");`,
  );
  const [chunk] = (await once(child.stdout, "data")) as [Buffer];
  expect(String(chunk)).toBe("went on\n");
  child.kill("SIGKILL");
});

test("where the reader has gone, the process ends all the same, whatever is still to be said", async () => {
  const child = run(
    `console.log("on"); setTimeout(() => { for (let at = 0; at < 2000; at += 1) log.info({ at }, "said"); process.exit(3); }, 200);`,
  );
  await once(child.stdout, "data");
  child.stderr.destroy();
  expect((await once(child, "exit"))[0]).toBe(3);
});

test("where the reader goes in the middle, the process works on", async () => {
  const child = run(
    `let at = 0; setInterval(() => { log.info({ at }, "said"); at += 1; if (at === 50) process.exit(3); }, 5);`,
  );
  await once(child.stderr, "data");
  child.stderr.destroy();
  expect((await once(child, "exit"))[0]).toBe(3);
});

test("a reader that stands still holds up the end for a moment only", async () => {
  const child = run(`for (let at = 0; at < 50_000; at += 1) log.info({ at }, "said"); process.exit(3);`);
  child.stderr.pause();
  expect((await once(child, "exit"))[0]).toBe(3);
});

test("what waits is written as the process ends", async () => {
  const child = run(`for (let at = 0; at < 2000; at += 1) log.info({ at }, "said"); process.exit(3);`);
  const lines = (await text(child.stderr)).trim().split("\n");
  expect(lines.map((line) => (JSON.parse(line) as { at: number }).at)).toEqual(
    Array.from({ length: 2000 }, (_, at) => at),
  );
});
