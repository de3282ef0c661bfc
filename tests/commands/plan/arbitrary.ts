import { FILM_FORMATS } from "../../../store/shapes/film.ts";
import * as fc from "fast-check";
import { bareRequest, type PlanRequest } from "../../../commands/plan/request.ts";
import { temperatureRange } from "../../../commands/sheet/time.ts";
import { checkSheet } from "../../../commands/sheet/check.ts";
import type { Sheet } from "../../../store/shapes/sheet.ts";
import type { Tank } from "../../../store/shapes/tank.ts";
import { aSheet } from "../../support/make.ts";

/* Anything a class could hold or ask. */

const pointArbitrary = fc.record({
  tenthsC: fc.integer({ min: 50, max: 450 }),
  exposureIndex: fc.constantFrom(25, 50, 100, 200, 320, 400, 800, 1600, 3200, 6400),
  seconds: fc.integer({ min: 15, max: 10_800 }),
  source: fc.constant("drawn by lot"),
});

/** Sheets whose rows don't contradict each other: rows that would are left out. */
export const sheetArbitrary: fc.Arbitrary<Sheet> = fc
  .record({
    points: fc.array(pointArbitrary, { minLength: 1, maxLength: 12 }),
    boxSpeed: fc.constantFrom(50, 100, 400, 3200),
    factorPer10C: fc.option(fc.double({ min: 1, max: 6, noNaN: true })),
    tabularGrain: fc.boolean(),
    reuse: fc.option(
      fc.record({
        everyFilms: fc.integer({ min: 1, max: 20 }),
        addPercent: fc.integer({ min: 0, max: 100 }),
        addSeconds: fc.integer({ min: 0, max: 600 }),
        maxFilms: fc.integer({ min: 1, max: 200 }),
      }),
    ),
    minConcentrateMl: fc.option(fc.integer({ min: 0, max: 500 })),
    dilution: fc.record({
      concentrateParts: fc.integer({ min: 1, max: 100 }),
      waterParts: fc.integer({ min: 0, max: 1000 }),
    }),
  })
  .map((draft) => {
    const kept: Sheet["points"] = [];
    for (const point of draft.points) {
      if (checkSheet(aSheet({ ...draft, points: [...kept, point] })).length === 0) kept.push(point);
    }
    return aSheet({ ...draft, points: kept });
  });

export const schemeArbitrary = fc.oneof(
  fc.constant({
    initialSeconds: 0,
    burstSeconds: 0,
    cycleSeconds: 0,
    manner: "continuous" as const,
    taps: 0,
  }),
  fc
    .record({
      initialSeconds: fc.integer({ min: 0, max: 3600 }),
      burstSeconds: fc.integer({ min: 1, max: 600 }),
      restSeconds: fc.integer({ min: 1, max: 600 }),
      manner: fc.constantFrom("inversion" as const, "rotation" as const),
      taps: fc.integer({ min: 0, max: 10 }),
    })
    .map(({ restSeconds, ...scheme }) => ({ ...scheme, cycleSeconds: scheme.burstSeconds + restSeconds })),
);

/** Mostly what a class asks, sometimes anything at all: `share` of a hundred is sensible. */
function mostly<T>(sensible: fc.Arbitrary<T>, anything: fc.Arbitrary<T>, share = 96): fc.Arbitrary<T> {
  return fc.oneof({ arbitrary: sensible, weight: share }, { arbitrary: anything, weight: 100 - share });
}

const tankArbitrary: fc.Arbitrary<Tank> = fc.record({
  number: fc.integer({ min: 1, max: 999 }),
  reels: mostly(fc.constant(20), fc.integer({ min: 1, max: 20 }), 70),
  volumeMl: fc.integer({ min: 50, max: 20_000 }),
  format: mostly<Tank["format"]>(fc.constant("any"), fc.constantFrom("135", "120", "4x5"), 70),
  condition: fc.option(fc.string({ maxLength: 20 })),
  timeConstantSeconds: fc.option(fc.integer({ min: 60, max: 36_000 })),
});

const bath = fc.integer({ min: 0, max: 1000 });

export const requestArbitrary: fc.Arbitrary<PlanRequest> = fc
  .record({
    sheet: sheetArbitrary,
    /** Where on the sheet: its own rows are spread over this. */
    place: fc.double({ min: 0, max: 1, noNaN: true }),
    anywhere: mostly<number | null>(fc.constant(null), bath),
    exposureIndex: mostly<number | null>(fc.constant(null), fc.integer({ min: 1, max: 102_400 }), 70),
    tank: mostly<PlanRequest["tank"]>(fc.constant(null), tankArbitrary, 70),
    rolls: fc.integer({ min: 1, max: 20 }),
    format: fc.constantFrom(...FILM_FORMATS),
    frames: fc.option(fc.integer({ min: 1, max: 100 })),
    volumeMl: mostly<number | null>(fc.constant(null), fc.integer({ min: 1, max: 200_000 }), 80),
    agitation: fc.option(schemeArbitrary),
    stop: fc.option(fc.constantFrom("water" as const, "acid" as const)),
    washMethod: fc.option(fc.constantFrom("running" as const, "fill-dump" as const)),
    washAid: fc.option(fc.boolean()),
    clearingSeconds: fc.option(fc.integer({ min: 1, max: 86_400 })),
    roomTenthsC: fc.option(bath),
    fixTenthsC: fc.option(bath),
    waterTenthsC: fc.option(bath),
    filmsDone: mostly(fc.constant(0), fc.integer({ min: 0, max: 200 }), 90),
    sharesWithItself: fc.boolean(),
  })
  .map(({ place, anywhere, sharesWithItself, ...draft }) => {
    const { min, max } = temperatureRange(draft.sheet);
    const tenthsC = anywhere ?? Math.round(min + (max - min) * place);
    const others = sharesWithItself ? [draft.sheet] : [];
    return { ...bareRequest(draft.sheet, tenthsC), ...draft, others };
  });
