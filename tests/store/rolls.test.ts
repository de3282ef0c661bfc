import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EVERY_ROLL, type NewRoll, type RollBody, type RollFilter } from "../../store/shapes/roll.ts";
import { splitWords } from "../../store/rolls-match.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { START } from "../support/make.ts";
import { aNewRoll } from "../support/rolls.ts";

const DAY = 86_400_000;

function aLog(): {
  stores: OpenedStores;
  add(over?: Partial<NewRoll>, body?: Partial<RollBody>): number;
  find(filter: Partial<RollFilter>): number[];
} {
  const stores = openStores(":memory:");
  const one = stores.classes.add("room:one", "One", "UTC", false, 0);
  return {
    stores,
    add: (over, body) =>
      stores.rolls.add(aNewRoll({ classId: one.id, runId: null as never, ...over }, body)).number,
    find: (filter) =>
      stores.rolls.search(one.id, { ...EVERY_ROLL, ...filter }, 50, 0).rolls.map(({ number }) => number),
  };
}

describe("the log", () => {
  it("counts its rolls from 1 in each class, and gives back what it got", () => {
    const { stores, add } = aLog();
    const two = stores.classes.add("room:two", "Two", "UTC", false, 0);
    expect([add(), add()]).toEqual([1, 2]);
    const roll = aNewRoll({ classId: two.id, runId: null as never });
    expect(stores.rolls.add(roll)).toMatchObject({ ...roll, number: 1, rating: null, fault: "", note: "" });
  });

  it("tells what those of a time come to: as it gives each back, without its steps, and without one that can't be read", () => {
    const { stores, add } = aLog();
    for (const day of [0, 1, 2, 3])
      add({ endedAt: START + day * DAY, lateCues: day }, { dosePerMille: 990 + day });
    stores.rolls.rate(2, 4);
    stores.db.prepare("update rolls set body = '{}' where number = 3").run();
    const sums = stores.rolls.sums(1, START, START + 3 * DAY, 10);
    expect(sums.map(({ number }) => number)).toEqual([2, 1]);
    for (const { body, ...sum } of sums) {
      const roll = stores.rolls.find(1, sum.number);
      expect(roll).toMatchObject(sum);
      expect(roll?.body).toMatchObject(body);
      expect(body).not.toHaveProperty("steps");
    }
    expect(stores.rolls.sums(1, START, START + 4 * DAY, 1).map(({ number }) => number)).toEqual([4]);
  });

  it("finds the same in a class that holds most of the log, in one that holds least, and in one among many", () => {
    const { stores, add, find } = aLog();
    const filters: Partial<RollFilter>[] = [{}, { film: "Quay 100" }, { words: ["quay"] }, { late: true }];
    filters.push({ words: ["min"], rating: 4 }, { fault: ["thin"] }, { fromMs: START, fault: [] });
    const own = (): number[][] => filters.map(find);
    for (const film of ["Quay 100", "Tide 3200", "Quay 100"])
      add({ film, lateCues: 1, endedAt: START + DAY });
    stores.rolls.rate(1, 4);
    stores.rolls.blame(1, "thin", null);
    const alone = own();
    expect(alone).toEqual([[3, 2, 1], [3, 1], [3, 1], [3, 2, 1], [1], [1], [1]]);
    for (let at = 0; at < 40; at += 1) {
      const other = stores.classes.add(`room:other${at}`, `Other ${at}`, "UTC", false, 0);
      const { id } = stores.rolls.add(
        aNewRoll({
          classId: other.id,
          runId: null as never,
          film: "Quay 100",
          lateCues: 1,
          endedAt: START + DAY,
        }),
      );
      stores.rolls.rate(id, 4);
      stores.rolls.blame(id, "thin", null);
      expect(own()).toEqual(alone);
    }
    for (let at = 0; at < 40; at += 1) add({ film: "Mole 50" });
    expect(find({ film: "Quay 100" })).toEqual([3, 1]);
    expect(stores.rolls.count(1, { ...EVERY_ROLL, film: "Quay 100" }, 10)).toBe(2);
    expect(stores.rolls.count(1, EVERY_ROLL, 10)).toBe(10);
  });

  it("finds by every filter alone and by all together", () => {
    const { stores, add, find } = aLog();
    add({ film: "Lantern 400", developer: "House MQ", tank: 3, batches: "B3 B7" });
    add({ film: "Quay 100", developer: "Pier Fine", tank: 30, batches: "B30", outcome: "stopped" });
    add({
      film: "Lantern 400",
      personId: "room:ben",
      personName: "Ben",
      lateCues: 2,
      endedAt: START + 40 * DAY,
    });
    stores.rolls.rate(2, 4);
    stores.rolls.blame(3, "thin", "short-development");
    expect(find({})).toEqual([3, 2, 1]);
    expect(find({ film: "lantern 400" })).toEqual([3, 1]);
    expect(find({ developer: "PIER FINE" })).toEqual([2]);
    expect(find({ batch: "B3" })).toEqual([1]);
    expect(find({ tank: 3 })).toEqual([1]);
    expect(find({ rating: 4 })).toEqual([2]);
    expect(find({ outcome: "stopped" })).toEqual([2]);
    expect(find({ person: { id: "room:ben", name: null } })).toEqual([3]);
    expect(find({ person: { id: null, name: "mina" } })).toEqual([2, 1]);
    expect(find({ fault: [] })).toEqual([3]);
    expect(find({ fault: ["thin"] })).toEqual([3]);
    expect(find({ fault: ["milky"] })).toEqual([]);
    expect(find({ late: true })).toEqual([3]);
    expect(find({ fromMs: START + DAY })).toEqual([3]);
    expect(find({ untilMs: START + DAY })).toEqual([2, 1]);
    expect(find({ fromMs: START + DAY, film: "Quay 100" })).toEqual([]);
    expect(find({ film: "Lantern 400", late: true, fault: ["thin"], fromMs: START, words: ["ben"] })).toEqual(
      [3],
    );
  });

  it("finds words by their beginnings, accents and case aside, in notes as well", () => {
    const { stores, add, find } = aLog();
    add({ film: "Lantern 400", personName: "Zoë Ångström" });
    add({ film: "Quay 100" });
    stores.rolls.note(2, "Fog at the PIER, milky near the end");
    expect(find({ words: ["zoe"] })).toEqual([1]);
    expect(find({ words: ["angst"] })).toEqual([1]);
    expect(find({ words: splitWords("pier milk") })).toEqual([2]);
    expect(find({ words: ["ier"] })).toEqual([]);
    stores.rolls.note(2, "nothing");
    expect(find({ words: ["milky"] })).toEqual([]);
  });

  it("does not take the words it keeps of its own for a person's", () => {
    const { add, find } = aLog();
    add({ lateCues: 3 });
    expect(find({ words: ["late"] })).toEqual([]);
    expect(find({ words: ["k1"] })).toEqual([]);
    expect(find({ words: ["ofin"] })).toEqual([]);
  });

  it("stands anything a person types", () => {
    const { add, find } = aLog();
    add({ film: 'O"Brien* 400 OR (x)' });
    for (const text of ['"', "*", "a OR b", "NEAR(", "') --", "日本", "😀 é", "a".repeat(200), "^x", "-x"]) {
      expect(() =>
        find({ words: splitWords(text), film: text, batch: text, fault: splitWords(text) }),
      ).not.toThrow();
    }
    expect(find({ film: 'O"Brien* 400 OR (x)' })).toEqual([1]);
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 40 }), (text) => {
        find({ words: splitWords(text), film: text, batch: text, fault: splitWords(text) });
      }),
      { numRuns: 60 },
    );
  });

  it("never shows one class what another has", () => {
    const { stores, add } = aLog();
    add({ film: "Lantern 400" });
    const two = stores.classes.add("room:two", "Two", "UTC", false, 0);
    const every = (filter: Partial<RollFilter>) =>
      stores.rolls.search(two.id, { ...EVERY_ROLL, ...filter }, 50, 0);
    expect(every({})).toMatchObject({ rolls: [], total: 0, isCapped: false, totals: { counted: 0 } });
    expect(every({ film: "Lantern 400" }).total).toBe(0);
    expect(every({ words: ["lantern"] }).total).toBe(0);
    expect(every({ fromMs: 0 }).total).toBe(0);
    expect(stores.rolls.values(two.id, "film", 10)).toEqual([]);
    expect(stores.rolls.count(two.id, EVERY_ROLL, 10)).toBe(0);
  });

  it("pages, and totals what it found", () => {
    const { stores, add } = aLog();
    for (let count = 0; count < 21; count += 1) add(count % 3 === 0 ? { outcome: "stopped" } : {});
    stores.rolls.rate(1, 2);
    stores.rolls.rate(2, 5);
    const page = stores.rolls.search(1, EVERY_ROLL, 8, 16);
    expect(page.total).toBe(21);
    expect(page.rolls.map(({ number }) => number)).toEqual([5, 4, 3, 2, 1]);
    expect(page.totals).toEqual({
      counted: 21,
      stopped: 7,
      late: 0,
      faulty: 0,
      rated: 2,
      ratingSum: 7,
    });
  });

  it("keeps count of its values as rolls come, change and go", () => {
    const { stores, add } = aLog();
    add({ film: "Lantern 400" });
    add({ film: "Lantern 400" });
    add({ film: "Quay 100" });
    stores.rolls.blame(1, "thin", null);
    expect(stores.rolls.values(1, "film", 10)).toEqual([
      { value: "Lantern 400", uses: 2 },
      { value: "Quay 100", uses: 1 },
    ]);
    expect(stores.rolls.values(1, "fault", 10)).toEqual([{ value: "thin", uses: 1 }]);
    stores.rolls.blame(1, "", null);
    expect(stores.rolls.values(1, "fault", 10)).toEqual([]);
    stores.db.exec("delete from rolls where number = 3");
    expect(stores.rolls.values(1, "film", 10).map(({ value }) => value)).toEqual(["Lantern 400"]);
  });
});
