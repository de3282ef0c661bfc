import fc from "fast-check";
import { expect, test } from "vitest";
import { commands } from "../../commands/index.ts";
import { callArbitrary, type DrawnCall } from "../support/drawn-calls.ts";
import { createDrawnClass } from "../support/drawn-class.ts";

/*
 * Whatever a call accepts can be read back: no call that was drawn breaks, and after it every command still answers.
 * DRAWN_CALLS draws more: 1000000 is the long mode.
 */

const WANTED = Number(process.env["DRAWN_CALLS"] ?? 20_000);
const AT_MOST_IN_ONE = 160;

const drawn = createDrawnClass(commands);

function play(calls: readonly DrawnCall[], tally?: Map<string, number>): string[] {
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
  const tally = new Map<string, number>();
  const before = process.cpuUsage();
  const drawnCalls = () => [...tally].reduce((sum, [key, each]) => (key.includes(" ") ? sum : sum + each), 0);
  for (let round = 0; drawnCalls() < WANTED; round += 1) {
    fc.assert(
      fc.property(
        fc.array(callArbitrary, { minLength: 1, maxLength: AT_MOST_IN_ONE, size: "max" }),
        (calls) => {
          expect(play(calls, tally)).toEqual([]);
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
