import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { inventDemo } from "../../../bot/demo/demo.ts";
import { readCsv, readJson } from "../../../commands/roll/export/file.ts";
import { openStores } from "../../../store/index.ts";
import { START } from "../../support/make.ts";
import { aNewRoll } from "../../support/rolls.ts";

/* The log as a file, asked for from a terminal. */

const ASK = join(import.meta.dirname, "..", "..", "..", "dist", "bot", "ask.js");
/** More than a pipe holds. */
const ROLLS = 300;

let data: string;
beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), "sinkside-ask-"));
  const stores = openStores(join(data, "sinkside.db"));
  const { id: classId } = stores.classes.add("room:one", "One", "UTC", false, START);
  for (let at = 0; at < ROLLS; at += 1) stores.rolls.add(aNewRoll({ classId, runId: null as never }));
  stores.close();
});
afterEach(() => rmSync(data, { recursive: true, force: true }));

const ask = (...given: string[]) =>
  spawn(process.execPath, [ASK, "--role", "teacher", ...given], {
    env: { ...process.env, SINKSIDE_DATA: data },
    stdio: ["ignore", "pipe", "pipe"],
  });

async function answer(...given: string[]): Promise<string> {
  const child = ask(...given);
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding("utf8").on("data", (text: string) => (said += text));
  expect(await once(child, "close")).toEqual([0, null]);
  return said;
}

const all = Array.from({ length: ROLLS }, (_, at) => ROLLS - at);

test("the class of one's own is asked, not the demo beside it", async () => {
  const stores = openStores(join(data, "sinkside.db"));
  inventDemo(stores, "UTC", START);
  stores.close();
  expect(await answer("/roll find")).toContain(`${ROLLS} rolls`);
});

test("stands behind the answer, and in its JSON", async () => {
  const [text, csv = ""] = (await answer("/roll export")).split("\n--- log.csv\n");
  expect(text).toContain(`**${ROLLS} rolls** as CSV`);
  expect(readCsv(csv).map(({ roll }) => roll)).toEqual(all);

  const json = JSON.parse(await answer("--json", "/roll export as:json"));
  expect(json).toMatchObject({
    outcome: "done",
    fields: { rolls: ROLLS },
    attachments: [{ name: "log.json" }],
  });
  expect(readJson(json.attachments[0].content).map(({ roll }) => roll)).toEqual(all);
  expect(JSON.parse(await answer("--json", "/roll find"))).toMatchObject({ attachments: [] });
});

test("may be read in part only", async () => {
  const child = ask("/roll export");
  let faults = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => (faults += text));
  child.stdout.once("data", () => child.stdout.destroy());
  expect(await once(child, "close")).toEqual([0, null]);
  expect(faults).toBe("");
});
