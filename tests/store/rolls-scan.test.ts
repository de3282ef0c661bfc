import * as fc from "fast-check";
import { expect, it } from "vitest";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { EVERY_ROLL, OUTCOMES, type Roll, type RollFilter } from "../../store/shapes/roll.ts";
import { START } from "../support/make.ts";
import { aNewRoll } from "../support/rolls.ts";

/* What a search finds by its marks, beside a plain look at every roll. */

const HOUR = 3_600_000;
const DAYS = 300;
// Each begins another, in letters or as the index keeps it.
const FILMS = ["Lantern 400", "lantern 400", "Lantern 4000", "Ночь", "s"];
const DEVELOPERS = ["Pier", "Pier Fine", "ЯM"];
const PEOPLE = ["Mina", "Ben"];

const drawn = fc.record({
  classId: fc.constantFrom(1, 1, 1, 2),
  film: fc.constantFrom(...FILMS),
  developer: fc.constantFrom(...DEVELOPERS),
  personName: fc.constantFrom(...PEOPLE),
  personId: fc.constantFrom("room:mina", "room:ben"),
  tank: fc.constantFrom(null, 1, 12),
  outcome: fc.constantFrom(...OUTCOMES),
  lateCues: fc.nat(1),
  missedCues: fc.nat(1),
  hour: fc.nat(DAYS * 24),
  rating: fc.constantFrom(null, 1, 5),
  fault: fc.constantFrom("", "thin", "round clear spots"),
  fate: fc.constantFrom("stays", "stays", "stays", "goes", "changes"),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

const instant = fc.integer({ min: -30, max: DAYS * 24 + 30 }).map((hour) => START + hour * HOUR);
const filters: fc.Arbitrary<Partial<RollFilter>> = fc.record(
  {
    person: fc.record({
      id: fc.constantFrom(null, "room:mina", "room:nobody"),
      name: fc.constantFrom("mina", "BEN"),
    }),
    film: fc.constantFrom(...FILMS, "LANTERN 400", "Lantern"),
    developer: fc.constantFrom(...DEVELOPERS, "pier"),
    tank: fc.constantFrom(1, 12),
    rating: fc.constantFrom(1, 5),
    outcome: fc.constantFrom(...OUTCOMES),
    fault: fc.constantFrom([], ["thin"], ["spots"]),
    late: fc.constantFrom(true, false),
    fromMs: instant,
    untilMs: instant,
  },
  { requiredKeys: [] },
);

it("finds by any facts together what a look at every roll finds, after changes and erasures too", () => {
  fc.assert(
    fc.property(
      fc.array(drawn, { maxLength: 40 }),
      fc.array(filters, { minLength: 1, maxLength: 8 }),
      (list, asked) => {
        const stores = openStores(":memory:");
        for (const name of ["one", "two"]) stores.classes.add(`room:${name}`, name, "UTC", false, 0);
        const kept = list.flatMap((each) => put(stores, each));
        for (const over of asked) {
          const filter = { ...EVERY_ROLL, ...over };
          const fitting = kept.filter((roll) => fits(roll, filter)).map(({ number }) => number);
          const found = stores.rolls.search(1, filter, 100, 0);
          expect(found.rolls.map(({ number }) => number).toSorted((a, b) => a - b)).toEqual(fitting);
          expect(found.total).toBe(fitting.length);
          expect(stores.rolls.count(1, filter, 100)).toBe(fitting.length);
        }
        stores.close();
      },
    ),
    { numRuns: 80 },
  );
});

/** What is left of it in the log, as the log itself gives it back. */
function put(stores: OpenedStores, each: Drawn): Roll[] {
  const { hour, rating, fault, fate, missedCues, ...over } = each;
  const roll = stores.rolls.add(
    aNewRoll({ ...over, runId: null as never, endedAt: START + hour * HOUR }, { missedCues }),
  );
  if (fate === "changes") {
    stores.rolls.rate(roll.id, 3);
    stores.rolls.blame(roll.id, "milky", null);
  }
  if (rating !== null) stores.rolls.rate(roll.id, rating);
  if (fault !== "" || fate === "changes") stores.rolls.blame(roll.id, fault, null);
  if (fate === "goes") stores.db.prepare("delete from rolls where id = ?").run(roll.id);
  return [stores.rolls.find(roll.classId, roll.number) ?? []].flat();
}

const lower = (text: string): string => text.replaceAll(/[A-Z]/g, (letter) => letter.toLowerCase());
const isNamed = (name: string, asked: string | null): boolean =>
  asked === null || lower(name) === lower(asked);

/** The filter's meaning, a condition after the other. */
function fits(roll: Roll, filter: RollFilter): boolean {
  const { person, fault } = filter;
  return (
    roll.classId === 1 &&
    (person === null ||
      roll.personId === person.id ||
      (person.name !== null && isNamed(roll.personName, person.name))) &&
    isNamed(roll.film, filter.film) &&
    isNamed(roll.developer, filter.developer) &&
    (filter.tank === null || roll.tank === filter.tank) &&
    (filter.rating === null || roll.rating === filter.rating) &&
    (filter.outcome === null || roll.outcome === filter.outcome) &&
    (fault === null || (roll.fault !== "" && fault.every((word) => roll.fault.split(" ").includes(word)))) &&
    (filter.late !== true || roll.lateCues > 0 || roll.body.missedCues > 0) &&
    (filter.fromMs === null || roll.endedAt >= filter.fromMs) &&
    (filter.untilMs === null || roll.endedAt < filter.untilMs)
  );
}
