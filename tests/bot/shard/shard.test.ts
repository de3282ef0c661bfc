import { keepRun } from "../../../commands/run/keep.ts";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { dataOf, ownerOf, shardOf } from "../../../bot/shard/shard.ts";
import { checkShard, splitStores } from "../../../bot/shard/split.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { aRun, START } from "../../support/make.ts";

describe("which process owns a class", () => {
  // (guild_id >> 22) % num_shards. Source: Discord's documentation, "Sharding". 197038439483310086 / 4194304 is
  // 46977624770 and a rest: an even number, with the sum of digits 59, and ending in 0.
  test.each([
    [1, 0],
    [2, 0],
    [3, 2],
    [5, 0],
    [9, 5],
  ])("of %i processes: %i", (count, owner) => {
    expect(shardOf("197038439483310086", count)).toBe(owner);
    expect(ownerOf("discord:197038439483310086", count)).toBe(owner);
  });

  test("the room stays with the first", () => expect(ownerOf("room:demo", 7)).toBe(0));
});

/** A server of process `id` of `count`, ids made as the platform makes them. */
const guildOf = (id: number, count: number, number = 0): string =>
  String(BigInt(100_000 * count + number * count + id) << 22n);

function fill(data: string, keys: readonly string[]): OpenedStores {
  const stores = openStores(join(data, "sinkside.db"));
  for (const key of keys) {
    const { id } = stores.classes.add(key, `Class ${key}`, "UTC", false, START);
    const { id: _id, number: _number, ...draft } = aRun({ classId: id, personId: "discord:1" });
    const run = stores.runs.add(draft);
    stores.atomically(() => keepRun(stores, run, START));
  }
  return stores;
}

function keysOf(data: string, id: number): string[] {
  const stores = openStores(join(dataOf(data, id), "sinkside.db"));
  const keys = stores.classes.list().map(({ key }) => key);
  expect(stores.db.pragma("foreign_key_check")).toEqual([]);
  expect(stores.db.prepare("select count(*) as runs from runs").get()).toEqual({ runs: keys.length });
  stores.close();
  return keys;
}

const folder = (): string => mkdtempSync(join(tmpdir(), "sinkside-shards-"));
const four = [0, 1, 2, 3].map((id) => `discord:${guildOf(id, 4)}`);

describe("spreading the classes", () => {
  test("each class is in one store afterwards, with all that is its own, and the room in the first", () => {
    const data = folder();
    const first = fill(data, ["room:demo", ...four]);
    splitStores(data, first.shards, 2);
    first.close();
    expect(keysOf(data, 0)).toEqual(["room:demo", four[0], four[2]]);
    expect(keysOf(data, 1)).toEqual([four[1], four[3]]);
  });

  test("from two to four, as well, and a second time changes nothing", () => {
    const data = folder();
    const first = fill(data, ["room:demo", ...four]);
    for (const count of [2, 4, 4]) splitStores(data, first.shards, count);
    first.close();
    expect([0, 1, 2, 3].map((id) => keysOf(data, id))).toEqual([
      ["room:demo", four[0]],
      [four[1]],
      [four[2]],
      [four[3]],
    ]);
  });

  test("a crash before the first store lets go is made good by the next start: nothing is lost, nothing is in two", () => {
    const data = folder();
    const first = fill(data, four);
    first.db.exec("create trigger crash before delete on classes begin select raise(abort, 'crash'); end");
    // The copy has the trigger as well: it fails there first, then, once the copies are made, here.
    expect(() => splitStores(data, first.shards, 2)).toThrow("crash");
    expect(first.classes.list()).toHaveLength(4);
    first.db.exec("drop trigger crash");
    splitStores(data, first.shards, 2);
    first.close();
    expect([keysOf(data, 0), keysOf(data, 1)]).toEqual([
      [four[0], four[2]],
      [four[1], four[3]],
    ]);
  });

  test("a store that is there already is put aside, never written over", () => {
    const data = folder();
    const first = fill(data, four);
    splitStores(data, first.shards, 2);
    // The first store comes back from a backup of before; the other one has gone on meanwhile.
    first.shards.dropOthers(() => true, 1);
    splitStores(data, first.shards, 2);
    first.close();
    expect(readdirSync(dataOf(data, 1)).some((name) => name.startsWith("sinkside.db.before-"))).toBe(true);
  });

  test.each([
    [2, 1],
    [2, 3],
  ])("from %i to %i is refused, with what to set instead", (before, count) => {
    const data = folder();
    const first = fill(data, four);
    splitStores(data, first.shards, before);
    expect(() => splitStores(data, first.shards, count)).toThrow(
      /spread over 2 processes.*Set it to 2, or to a multiple/,
    );
    expect(() => checkShard(first.shards, { id: 1, count })).toThrow(/DISCORD_SHARDS/);
    first.close();
  });
});
