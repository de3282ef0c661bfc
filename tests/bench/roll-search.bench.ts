import { afterAll, beforeAll, bench, describe } from "vitest";
import { EVERY_ROLL, type RollFilter } from "../../store/shapes/roll.ts";
import { splitWords } from "../../store/rolls-match.ts";
import type { OpenedStores } from "../../store/index.ts";
import { START } from "../support/make.ts";
import { percentile } from "./whole-bot-figures.ts";
import { createDraw, DEVELOPERS, FAULTS, FILMS, openManyRolls, PEOPLE } from "../support/many-rolls.ts";

/*
 * How long a search of the log takes; the goal is under 8 ms for 95 of 100 of each kind with 1,000,000 rolls in one class. The log is
 * made once (some minutes) and kept in the folder for temporary files. The floor is reading one page's rolls by number.
 * ROLLS sets another size.
 */

const COUNT = Number(process.env["ROLLS"] ?? 1_000_000);
const PAGE = 8;
const draw = createDraw(77);
const pick = <T>(list: readonly T[]): T => list[draw(list.length)] as T;

const somewhere = (days: number): Partial<RollFilter> => {
  const fromMs = START + draw(COUNT) * 60_000;
  return { fromMs, untilMs: fromMs + days * 86_400_000 };
};

/** What people ask for, each as often as its place in the list. */
const KINDS: Readonly<Record<string, () => Partial<RollFilter>>> = {
  everything: () => ({}),
  "one word": () => ({ words: [pick(["harbour", "fog", "grain", "lantern", "har", "lan", "learner"])] }),
  "two or three words": () => ({
    words: splitWords(pick(["harbour fog", "lantern dusk", "learner 12 quay"])),
  }),
  film: () => ({ film: pick(FILMS) }),
  "film and developer": () => ({ film: pick(FILMS), developer: pick(DEVELOPERS) }),
  person: () => ({ person: { id: `room:p${draw(300)}`, name: pick(PEOPLE) } }),
  batch: () => ({ batch: `B${1 + draw(Math.floor(COUNT / 40))}` }),
  tank: () => ({ tank: 1 + draw(40) }),
  rating: () => ({ rating: 1 + draw(5) }),
  fault: () => ({ fault: splitWords(pick(FAULTS)) }),
  "late calls": () => ({ late: true }),
  stopped: () => ({ outcome: "stopped" }),
  days: () => somewhere(1 + draw(60)),
  "days and film": () => ({ ...somewhere(1 + draw(60)), film: pick(FILMS) }),
  "days and any fault": () => ({ ...somewhere(7), fault: [] }),
  "film, rating and fault": () => ({ film: pick(FILMS), rating: 1 + draw(5), fault: [] }),
  "tank, film and rating": () => ({ tank: 1 + draw(40), film: pick(FILMS), rating: 1 + draw(5) }),
  "film, developer and rating": () => ({
    film: pick(FILMS),
    developer: pick(DEVELOPERS),
    rating: 1 + draw(5),
  }),
  "person, film and developer": () => ({
    person: { id: `room:p${draw(300)}`, name: pick(PEOPLE) },
    film: pick(FILMS),
    developer: pick(DEVELOPERS),
  }),
  "stopped, late and rating": () => ({ outcome: "stopped", late: true, rating: 1 + draw(5) }),
  "word and any fault": () => ({ words: [pick(["harbour", "fog", "lan"])], fault: [] }),
};

let stores: OpenedStores;
let classId: number;

beforeAll(() => {
  ({ stores, classId } = openManyRolls(COUNT));
}, 900_000);

afterAll(() => {
  report();
  stores.close();
});

function search(kind: string): void {
  const filter = { ...EVERY_ROLL, ...KINDS[kind]?.() };
  stores.rolls.search(classId, filter, PAGE, PAGE * draw(20));
}

function readPage(): void {
  for (let row = 0; row < PAGE; row += 1) stores.rolls.find(classId, 1 + draw(COUNT));
}

/** What one search took by the clock, and of the processor's time: on a busy machine only that is the search's own. */
interface Took {
  readonly ms: number;
  readonly cpuMs: number;
}

/** The whole mixture once more, for the shares that the goal speaks of; the floor among it. */
function report(): void {
  const works = {
    floor: readPage,
    ...Object.fromEntries(Object.keys(KINDS).map((kind) => [kind, () => search(kind)])),
  };
  const took = Object.entries(works).map(([kind, work]) => ({ kind, work, times: [] as Took[] }));
  for (let round = 0; round < 40; round += 1) for (const { work, times } of took) times.push(timed(work));
  const all = took.flatMap(({ kind, times }) => (kind === "floor" ? [] : times));
  console.table(
    Object.fromEntries(
      [...took, { kind: `all ${all.length} of ${COUNT} rolls`, times: all }].map(({ kind, times }) => [
        kind,
        spreadOf(times),
      ]),
    ),
  );
}

function timed(work: () => void): Took {
  const cpu = process.cpuUsage();
  const startedAt = performance.now();
  work();
  const ms = performance.now() - startedAt;
  const { user, system } = process.cpuUsage(cpu);
  return { ms, cpuMs: (user + system) / 1000 };
}

function spreadOf(times: readonly Took[]): Record<string, number> {
  const at = (of: keyof Took, share: number): number =>
    Number(
      percentile(
        times.map((each) => each[of]),
        share,
      ).toFixed(2),
    );
  return {
    "median ms": at("ms", 0.5),
    "p95 ms": at("ms", 0.95),
    "longest ms": at("ms", 1),
    "processor: median": at("cpuMs", 0.5),
    "processor: p95": at("cpuMs", 0.95),
  };
}

describe(`a search among ${COUNT} rolls`, () => {
  bench("floor: eight rolls by their numbers", readPage);
  for (const kind of Object.keys(KINDS)) bench(kind, () => search(kind), { time: 300 });
});
