import { USUAL } from "../../commands/tray/usual.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";
import type { Stores } from "../../store/index.ts";
import { DEMO_NAME } from "./name.ts";

/*
 * The invented class a fresh install shows. Nothing in it is real: no such workshop, film or developer exists, and the
 * times are made up to look like times.
 */

export const DEMO_KEY = "room:demo";
const SOURCE = "invented for the demo, not a real time";

const AGITATION = {
  initialSeconds: 30,
  cycleSeconds: 60,
  burstSeconds: 5,
  manner: "inversion",
  taps: 2,
} as const;

function sheet(
  film: string,
  boxSpeed: number,
  developer: string,
  waterParts: number,
  points: readonly (readonly [tenthsC: number, exposureIndex: number, seconds: number])[],
): Sheet {
  return {
    film,
    developer,
    dilution: { concentrateParts: 1, waterParts },
    boxSpeed,
    points: points.map(([tenthsC, exposureIndex, seconds]) => ({
      tenthsC,
      exposureIndex,
      seconds,
      source: SOURCE,
    })),
    agitation: AGITATION,
    factorPer10C: null,
    minTenthsC: 160,
    maxTenthsC: 270,
    minConcentrateMl: null,
    tabularGrain: film.startsWith("Quay"),
    source: SOURCE,
  };
}

export const DEMO_SHEETS: readonly Sheet[] = [
  sheet("Lantern 400", 400, "House MQ", 1, [
    [180, 400, 660],
    [200, 400, 540],
    [240, 400, 390],
    [200, 800, 690],
    [200, 1600, 930],
  ]),
  sheet("Lantern 400", 400, "House MQ", 0, [
    [200, 400, 420],
    [240, 400, 300],
  ]),
  sheet("Quay 100", 100, "House MQ", 1, [[200, 100, 600]]),
  sheet("Quay 100", 100, "Pier Fine", 9, [
    [200, 100, 480],
    [240, 100, 345],
    [200, 200, 570],
  ]),
];

const DEMO_TANKS = [
  { number: 1, reels: 1, volumeMl: 300 },
  { number: 2, reels: 1, volumeMl: 300 },
  { number: 3, reels: 2, volumeMl: 500 },
  { number: 4, reels: 2, volumeMl: 500 },
  { number: 5, reels: 5, volumeMl: 1200 },
] as const;

/** As lines of trays usually are, with its times stated by the demo. */
const DEMO_TRAYS: TrayLine = { ...USUAL, number: 1, developer: "Dock Print", isUsual: false };

/** Makes the demo class where the store holds no class at all; otherwise changes nothing. */
export function inventDemo(stores: Stores, zone: string, now: number): SchoolClass | undefined {
  return stores.atomically(() => {
    if (stores.classes.list().length > 0) return stores.classes.find(DEMO_KEY);
    const demo = stores.classes.add(DEMO_KEY, DEMO_NAME, zone, true, now);
    for (const each of DEMO_SHEETS) stores.sheets.save(demo.id, each, null, now);
    for (const tank of DEMO_TANKS) {
      stores.tanks.save(demo.id, { ...tank, format: "any", condition: null, timeConstantSeconds: null });
    }
    stores.classes.setHabits(demo.id, { ...demo.habits, trayLines: [DEMO_TRAYS] });
    return stores.classes.get(demo.id);
  });
}
