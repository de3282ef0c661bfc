import { describe, expect, test } from "vitest";
import { openStores, type OpenedStores } from "../../store/index.ts";
import type { NewLedgerLine } from "../../store/batches.ts";
import { aBatch, corrected, mixed, used } from "../support/batch.ts";
import { START } from "../support/make.ts";

function setUp(): { stores: OpenedStores; classId: number } {
  const stores = openStores(":memory:");
  return {
    stores,
    classId: stores.classes.add("room:1", "Harbour workshop (invented)", "UTC", false, START).id,
  };
}

const line = (batchId: number, over: Partial<NewLedgerLine> = {}): NewLedgerLine => ({
  batchId,
  key: null,
  runId: null,
  atMs: START,
  person: { id: "room:aida", name: "Aida" },
  about: null,
  body: used(1),
  ...over,
});

const fixer = (classId: number, over = {}) => aBatch({ classId, ...over });

describe("labels", () => {
  test("count up within a class and are never used again", () => {
    const { stores, classId } = setUp();
    const other = stores.classes.add("room:2", "Other (invented)", "UTC", false, START).id;
    const numbers = [1, 2].map(() => stores.batches.add(fixer(classId)).number);
    expect(numbers).toEqual([1, 2]);
    expect(stores.batches.add(fixer(other)).number).toBe(1);
    const gone = { kind: "discarded", ml: 1000, to: "silver", isAll: true, note: "" } as const;
    stores.batches.append(line(stores.batches.find(classId, 2)?.id ?? 0, { body: gone }));
    expect(stores.batches.add(fixer(classId)).number).toBe(3);
    expect(stores.batches.standing(classId).map(({ number }) => number)).toEqual([1, 3]);
  });

  test("come back as they went in", () => {
    const { stores, classId } = setUp();
    const batch = stores.batches.add(fixer(classId, { product: "Pier Fix", tabularSqInPerLitre: null }));
    expect(stores.batches.find(classId, batch.number)).toEqual(batch);
    expect(batch).toMatchObject({ product: "Pier Fix", tabularSqInPerLitre: null, mixedAtMs: START });
    expect(stores.batches.latestOf(classId, "pier fix")?.id).toBe(batch.id);
  });
});

describe("the ledger", () => {
  test("keeps a line of one key once", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    expect(stores.batches.append(line(id, { key: "7.3" }))?.id).toBe(1);
    expect(stores.batches.append(line(id, { key: "7.3" }))).toBeUndefined();
    expect(stores.batches.lines(id)).toHaveLength(1);
    expect(stores.batches.hasLine("7.3")).toBe(true);
  });

  test("can't be changed or shortened, not even by the program's own hand", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    stores.batches.append(line(id));
    const before = stores.batches.lines(id);
    for (const sql of [
      "update ledger set body = '{}'",
      "update ledger set at = 0",
      "update ledger set kind = 'tested'",
      "update ledger set batch_id = 99",
    ])
      expect(() => stores.db.exec(sql)).toThrow("never changed");
    expect(() => stores.db.exec("delete from ledger")).toThrow("never deleted");
    expect(() => stores.db.exec("delete from batches")).toThrow("never deleted");
    expect(stores.batches.lines(id)).toEqual(before);
  });

  test("lets a person be taken out of it, and what it counts stays", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    stores.batches.append(
      line(id, { about: { id: "room:mina", name: "Mina" }, body: { kind: "allowed", reason: "x" } }),
    );
    stores.db.exec(
      "update ledger set person_id = null, person_name = '', about_id = null, about_name = null",
    );
    expect(stores.batches.lines(id)).toMatchObject([
      { personId: null, aboutName: null, body: { kind: "allowed" } },
    ]);
  });

  test("goes only with its whole class", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    stores.batches.append(line(id, { body: mixed() }));
    stores.batches.mark(id, "tired", 0, START);
    stores.db.prepare("delete from classes where id = ?").run(classId);
    expect(stores.batches.get(id)).toBeUndefined();
    expect(stores.db.prepare("select count(*) as count from ledger").get()).toEqual({ count: 0 });
  });

  test("survives the run it speaks of", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    stores.db.exec(
      `insert into runs (class_id, number, person_id, body, phase, started_at) values (${classId}, 1, 'p', '{}', '{"kind":"stopped"}', 0)`,
    );
    stores.batches.append(line(id, { runId: 1, key: "1.0" }));
    stores.runs.remove(1);
    expect(stores.batches.lines(id)).toMatchObject([{ runId: null, body: { kind: "used", areaSqIn: 80 } }]);
  });

  test("a broken line is refused and named", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    stores.db.exec(
      `insert into ledger (batch_id, kind, at, person_name, body) values (${id}, 'used', 0, 'x', '{"kind":"used","ml":-1}')`,
    );
    expect(() => stores.batches.lines(id)).toThrow("body");
  });

  test("a discard taken back puts the bottle on the shelf again", () => {
    const { stores, classId } = setUp();
    const { id } = stores.batches.add(fixer(classId));
    const gone = { kind: "discarded", ml: 1000, to: "silver", isAll: true, note: "" } as const;
    const slip = stores.batches.append(line(id, { body: gone }));
    expect(stores.batches.standing(classId)).toEqual([]);
    stores.batches.append(line(id, { body: corrected({ reverses: slip?.id ?? 0 }) }));
    expect(stores.batches.standing(classId).map((batch) => batch.id)).toEqual([id]);
  });
});

test("a mark is remembered for its arming", () => {
  const { stores, classId } = setUp();
  const { id } = stores.batches.add(fixer(classId));
  stores.batches.mark(id, "tired", 0, START);
  stores.batches.mark(id, "tired", 0, START);
  expect(stores.batches.isMarked(id, "tired", 0)).toBe(true);
  expect(stores.batches.isMarked(id, "tired", 1)).toBe(false);
});
