import fc from "fast-check";
import { expect, test } from "vitest";
import { volumeOption } from "../../commands/speech/quantity.ts";
import { commands } from "../../commands/index.ts";
import { drawCalls, type DrawnCall } from "../support/drawn-calls.ts";
import { createDrawnClass, type DrawnClass } from "../support/drawn-class.ts";

/*
 * Whatever a call accepts can be read back: no call that was drawn breaks, and after it every command still answers.
 * DRAWN_CALLS draws more: 1000000 is the long mode.
 */

const WANTED = Number(process.env["DRAWN_CALLS"] ?? 20_000);
const AT_MOST_IN_ONE = 160;

function play(drawn: DrawnClass, calls: readonly DrawnCall[], tally?: Map<string, number>): string[] {
  return drawn.apart(() => {
    for (const { afterSeconds, hasFile, ...call } of calls) {
      drawn.pass(afterSeconds);
      const { kind } = drawn.call(call, hasFile ? new Uint8Array([1, 2, 3]) : undefined);
      tally?.set(kind, (tally.get(kind) ?? 0) + 1);
      tally?.set(`${call.name} ${kind}`, (tally.get(`${call.name} ${kind}`) ?? 0) + 1);
      const faults = drawn.faults();
      if (faults.length > 0) return faults;
    }
    return drawn.readAll();
  });
}

test("what a call accepts can be read back by every command", { timeout: 3_600_000 }, () => {
  const drawn = createDrawnClass(commands);
  const tally = new Map<string, number>();
  const before = process.cpuUsage();
  const drawnCalls = () => [...tally].reduce((sum, [key, each]) => (key.includes(" ") ? sum : sum + each), 0);
  for (let round = 0; drawnCalls() < WANTED; round += 1) {
    fc.assert(
      fc.property(
        fc.array(drawCalls(), { minLength: 1, maxLength: AT_MOST_IN_ONE, size: "max" }),
        (calls) => {
          expect(play(drawn, calls, tally)).toEqual([]);
        },
      ),
      {
        numRuns: 100,
        seed: (fc.readConfigureGlobal().seed ?? 0) + round,
        endOnFailure: process.env["DRAWN_UNSHRUNK"] !== undefined,
      },
    );
  }
  console.info(
    `${drawnCalls()} calls drawn in ${Math.round(process.cpuUsage(before).user / 1e6)} s of the processor's time: ${tally.get("done")} accepted`,
  );
  if (process.env["DRAWN_TALLY"])
    console.info(
      [...tally]
        .sort()
        .map((each) => each.join(" "))
        .join("\n"),
    );
});

test("a row that can't be read is seen, whoever wrote it", () => {
  const drawn = createDrawnClass(commands);
  expect(drawn.readAll()).toEqual([]);
  drawn.stores.db.exec("update tanks set body = json_set(body, '$.volumeMl', 10) where number = 1");
  expect(drawn.readAll()).toEqual([expect.stringContaining('unreadable: {"id":1,"number":1')]);
});

test("an option that takes what its shape can't hold is found", () => {
  const loose = commands.map((command) =>
    command.name === "tank add"
      ? { ...command, options: command.options.extend({ volume: volumeOption }) }
      : command,
  );
  const find = (drawn: DrawnClass) =>
    fc.check(
      fc.property(fc.array(drawCalls(["tank add"]), { maxLength: 20 }), (calls) => {
        expect(play(drawn, calls)).toEqual([]);
      }),
      { numRuns: 25, endOnFailure: true },
    );
  expect(find(createDrawnClass(loose)).failed).toBe(true);
  expect(find(createDrawnClass(commands)).failed).toBe(false);
});
