import { expect, test } from "vitest";
import { commands } from "../../commands/index.ts";
import { createRoom } from "../support/room.ts";

/* Names that people may have learned. They go on working; the answer says the name of today. */

const RENAMED = [
  ["batch stock", "batch restock", "/batch stock product:Pier Fix kind:fixer size:1 l dilution:1+4 packs:1"],
  ["class bell", "class periods", "/class bell days:mon from:18:00 to:20:30"],
  ["class fit", "class turns", "/class fit loads:2"],
] as const;

test.each(RENAMED)("/%s is /%s now, and says so", (old, now, line) => {
  const room = createRoom();
  const answered = room.asks("Iris", line, "teacher");
  expect(answered.kind).toBe("done");
  expect(answered.reply.text).toContain(`\`/${old}\` is called \`/${now}\` now.`);
  expect(room.says("Iris", line.replace(old, now), "teacher")).not.toContain("is called");
});

test("it says so in German", () => {
  const room = createRoom();
  room.says("Iris", "/mine language language:de", "teacher");
  expect(room.says("Iris", "/class bell", "teacher")).toContain(
    "`/class bell` heißt jetzt `/class periods`.",
  );
});

test("no old name is a name of today", () => {
  const today = commands.map(({ name }) => name);
  const old = commands.flatMap(({ was = [] }) => was);
  expect(old.filter((name) => today.includes(name))).toEqual([]);
});
