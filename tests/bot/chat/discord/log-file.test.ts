import { expect, test } from "vitest";
import { withLogFile } from "../../../../bot/chat/discord/log-file.ts";
import { createLane } from "../../../../bot/chat/lane.ts";
import type { Reply } from "../../../../commands/define.ts";
import { readCsv, readJson } from "../../../../commands/roll/export/file.ts";
import { readJson as readPrints } from "../../../../commands/print/export/file.ts";
import { openLog } from "../../../../commands/print/export/pieces.ts";
import { createRoom } from "../../../support/room.ts";
import { aPrint } from "../../../support/print.ts";
import { aNewRoll } from "../../../support/rolls.ts";

/* A log that is larger than a file may be on the platform comes in parts, from one key to the next. */

const ROLLS = 400;

function aClass() {
  const room = createRoom();
  room.says("Iris", "/help", "teacher");
  for (let at = 0; at < ROLLS; at += 1) room.stores.rolls.add(aNewRoll({ runId: null as never }));
  const directory = {
    readLog(log: NonNullable<Reply["log"]>) {
      const { portions, ...ends } = openLog(room.stores, log);
      return { ...ends, portions: createLane().through(portions) };
    },
  };
  const take = (line: string, mostBytes?: number): Promise<Reply> =>
    withLogFile(room.asks("Iris", `/${line}`, "teacher").reply, directory, "en", mostBytes);
  return { take, room };
}

const contentOf = (reply: Reply): string => reply.attachments?.[0]?.content ?? "";

test.each([
  ["csv", readCsv],
  ["json", readJson],
])("all of it comes, each roll once, no file over the bound: %s", async (format, read) => {
  const { take } = aClass();
  const mostBytes = 120_000;
  const parts: Reply[] = [await take(`roll export as:${format} film:"Lantern 400"`, mostBytes)];
  for (let line = parts[0]?.actions?.[0]?.line; line !== undefined; line = parts.at(-1)?.actions?.[0]?.line)
    parts.push(await take(line, mostBytes));
  expect(parts.length).toBeGreaterThan(2);
  for (const part of parts) expect(Buffer.byteLength(contentOf(part))).toBeLessThanOrEqual(mostBytes);
  const numbers = parts.flatMap((part) => read(contentOf(part)).map(({ roll }) => roll));
  expect(numbers).toEqual(Array.from({ length: ROLLS }, (_, at) => ROLLS - at));
  const last = read(contentOf(parts[0] as Reply)).at(-1)?.roll;
  expect(parts[0]?.text).toContain(`The file goes back to L${last}: Discord takes no larger one.`);
  expect(parts[1]?.text).toContain(`**The rolls before L${last}** as ${format.toUpperCase()}`);
  expect(parts.at(-1)?.text).not.toContain("Discord");
});

test("a log of prints goes on the same way", async () => {
  const { take, room } = aClass();
  for (let at = 0; at < 100; at += 1) room.stores.prints.add(aPrint({ title: `${at}` }));
  const first = await take("print export as:json", 20_000);
  const last = readPrints(contentOf(first)).at(-1)?.print ?? 0;
  expect(first.text).toContain(`The file goes back to V${last}: Discord takes no larger one.`);
  expect(first.actions).toMatchObject([{ line: `print export as:json before:V${last}` }]);
  const rest = await take(`print export as:json before:V${last}`);
  expect(rest.text).toContain(`**The prints before V${last}** as JSON`);
  expect(readPrints(contentOf(rest)).map((each) => each.print)).toEqual(
    Array.from({ length: last - 1 }, (_, at) => last - 1 - at),
  );
});

test("what fits comes as one file, without a key", async () => {
  const reply = await aClass().take("roll export");
  expect(readCsv(contentOf(reply))).toHaveLength(ROLLS);
  expect(reply.attachments).toMatchObject([{ name: "log.csv", mediaType: "text/csv" }]);
  expect(reply.actions).toBeUndefined();
});

test("a search that is longer than a key carries is typed on", async () => {
  const words = "lantern ".repeat(12).trim();
  const reply = await aClass().take(`roll export words:"${words}" film:"Lantern 400"`, 120_000);
  expect(reply.actions).toBeUndefined();
  expect(reply.text).toMatch(/come with `\/roll export .* before:L\d+`\.$/);
});
