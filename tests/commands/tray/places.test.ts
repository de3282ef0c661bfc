import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstStart, isPaperOpen, placesOf, staysOf, tooSmallFor } from "../../../commands/tray/places.ts";
import { parseSize } from "../../../commands/print/sizes.ts";
import { START } from "../../support/make.ts";
import { after, aLine, aTrayPlan, aTrayRun, next } from "../../support/trays.ts";

const SECOND = 1000;
const sheet = (name: string) => {
  const size = parseSize(name);
  if (!size.ok) throw new Error(size.fault.code);
  return size.value;
};
const inDeveloper = (atMs: number, id = 1) => after(aTrayRun({ id }), next(atMs));

describe("places in trays", () => {
  test("a sheet takes one place of 8x10 in, a larger one as many as it covers", () => {
    expect(placesOf(sheet("18x24 cm"), 1)).toBe(1);
    expect(placesOf(sheet("8x10 in"), 3)).toBe(3);
    expect(placesOf(sheet("24x30 cm"), 1)).toBe(2);
    expect(placesOf(sheet("16x20 in"), 1)).toBe(4);
  });

  test("an empty line takes prints at once", () => {
    expect(firstStart(aLine(), aTrayPlan(), [], [], START)).toBe(START);
  });

  test("a third print waits until one has left the developer, the time to move it included", () => {
    const going = [inDeveloper(START, 1), inDeveloper(START + 20 * SECOND, 2)];
    const now = START + 30 * SECOND;
    // 60 s in the developer and 5 s to move it.
    expect(firstStart(aLine(), aTrayPlan(), going, [], now)).toBe(START + 65 * SECOND);
  });

  test("a tray further on that will be full holds a print back before the developer", () => {
    const line = aLine({ developPlaces: 9, stopPlaces: 9, fixPlaces: 1 });
    const plan = aTrayPlan({ line, paper: "fibre", washAid: false });
    const going = [after(aTrayRun({ plan }), next(START))];
    // 120 + 5 s developer, 30 + 5 s stop, 300 + 5 s fixer: the next is let in so that it reaches the fixer just then.
    expect(firstStart(line, plan, going, [], START)).toBe(START + 305 * SECOND);
  });

  test("those who wait before come first", () => {
    const plan = aTrayPlan();
    const line = aLine({ developPlaces: 1 });
    const going = [inDeveloper(START)];
    expect(firstStart(line, plan, going, [], START)).toBe(START + 65 * SECOND);
    expect(firstStart(line, plan, going, [plan], START)).toBe(START + 130 * SECOND);
  });

  test("what never has room is told, and nobody waits for ever", () => {
    const plan = aTrayPlan({ prints: 3 });
    expect(tooSmallFor(aLine(), plan)).toBe("develop");
    expect(firstStart(aLine(), plan, [], [], START)).toBeNull();
  });

  test("whoever is let in at the time told never overfills a tray", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ prints: fc.integer({ min: 1, max: 2 }), gap: fc.integer({ min: 0, max: 90 }) }),
          {
            minLength: 1,
            maxLength: 8,
          },
        ),
        (wanted) => {
          const line = aLine({ fixPlaces: 2, washPlaces: 4 });
          let now = START;
          let going: ReturnType<typeof aTrayRun>[] = [];
          for (const [at, { prints, gap }] of wanted.entries()) {
            now += gap * SECOND;
            const plan = aTrayPlan({ line, prints });
            const begins =
              firstStart(line, plan, [], [], now) === null ? null : firstStartAt(line, plan, going, now);
            if (begins === null) return;
            going = [...going, after(aTrayRun({ id: at + 1, plan }), next(begins))];
          }
          const stays = going.flatMap((run) =>
            staysOf(run, run.phase.kind === "running" ? run.phase.startedAtMs : 0),
          );
          for (const { tray, fromMs } of stays) {
            const room = { develop: 2, stop: 2, fix0: 2, wash: 4 }[tray] ?? Infinity;
            const there = stays.filter(
              (each) => each.tray === tray && each.fromMs <= fromMs && fromMs < each.untilMs,
            );
            expect(there.reduce((sum, { places }) => sum + places, 0)).toBeLessThanOrEqual(room);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  /** As each would be told when it comes; those let in later are there from their own start on. */
  function firstStartAt(
    line: ReturnType<typeof aLine>,
    plan: ReturnType<typeof aTrayPlan>,
    going: ReturnType<typeof aTrayRun>[],
    now: number,
  ): number | null {
    let at = now;
    for (const run of going) if (run.phase.kind === "running") at = Math.max(at, run.phase.startedAtMs);
    return firstStart(line, plan, going, [], at);
  }
});

test("paper is open to light until it lies in the fixer's end", () => {
  const run = aTrayRun();
  expect(isPaperOpen(run)).toBe(true);
  const fixing = after(run, next(START), next(START + 60_000), next(START + 90_000));
  expect(isPaperOpen(fixing)).toBe(true);
  expect(isPaperOpen(after(fixing, next(START + 150_000)))).toBe(false);
});
