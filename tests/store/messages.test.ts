import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { openStores } from "../../store/index.ts";
import { isOfClass } from "../../store/messages-of-class.ts";
import { MIGRATIONS } from "../../store/migrations.ts";
import { migrate } from "../../store/open.ts";
import { START } from "../support/make.ts";

/* The feed of a class lies among those of all others: whatever the numbers in between, it is read whole and in order. */

const MINA = "room:mina";
/** A block's first and last numbers, with gaps of several blocks between them. */
const IDS = [1, 2, 4095, 4096, 4097, 8191, 8192, 40_000, 40_961, 81_919, 81_920, 81_921];

/** Each number is a message of class 1, the next free one is of class 2; every third is for somebody else. */
function fill(db: Database.Database): void {
  for (const id of [1, 2])
    db.prepare(
      "insert into classes (id, key, name, zone, habits, created_at) values (?, ?, 'A', 'UTC', '{}', ?)",
    ).run(id, `room:${id}`, START);
  const add = db.prepare(
    "insert into messages (id, class_id, person_id, key, at, body) values (?, ?, ?, ?, ?, ?)",
  );
  for (const [at, id] of IDS.entries())
    add.run(id, 1, at % 3 === 0 ? "room:ola" : MINA, `d:${id}`, START + at, `{"text":"${id}"}`);
  for (const id of [3, 4098, 90_000]) add.run(id, 2, null, `d:${id}`, START, `{"text":"${id}"}`);
}

const FOR_MINA = IDS.filter((_, at) => at % 3 !== 0);
const idsOf = (messages: readonly { readonly id: number }[]): number[] => messages.map(({ id }) => id);

describe("messages of a class", () => {
  const path = join(mkdtempSync(join(tmpdir(), "sinkside-")), "older.db");
  const older = new Database(path);
  // As the version left it that kept the feed in the order of classes.
  const before = MIGRATIONS.findIndex((sql) =>
    sql.includes("create index messages_feed on messages (id >> 12"),
  );
  migrate(older, MIGRATIONS.slice(0, before));
  fill(older);
  older.close();
  const { messages, db, shards } = openStores(path);

  test("are read on from any number, oldest first", () => {
    for (const lastId of [0, ...IDS, 90_000, 1_000_000])
      expect(idsOf(messages.after(1, MINA, lastId, 100))).toEqual(FOR_MINA.filter((id) => id > lastId));
    expect(idsOf(messages.after(1, MINA, 2, 3))).toEqual(FOR_MINA.filter((id) => id > 2).slice(0, 3));
  });

  test("are read back from any number, the newest of them", () => {
    expect(idsOf(messages.newest(1, MINA, 100))).toEqual(FOR_MINA);
    expect(idsOf(messages.newest(1, MINA, 3))).toEqual(FOR_MINA.slice(-3));
    for (const upTo of [0, ...IDS, 1_000_000])
      expect(idsOf(messages.newest(1, MINA, 3, upTo))).toEqual(FOR_MINA.filter((id) => id < upTo).slice(-3));
  });

  test("are none of another class, and none where there are none", () => {
    expect(idsOf(messages.newest(2, MINA, 100))).toEqual([3, 4098, 90_000]);
    expect(messages.newest(3, MINA, 100)).toEqual([]);
    expect(messages.after(3, MINA, 0, 100)).toEqual([]);
  });

  test("are found without going through those of others, and need no sorting", () => {
    const sql = `select * from messages where ${isOfClass("1")} order by id >> 12, id`;
    const plan = db.prepare<[], { detail: string }>(`explain query plan ${sql}`).all();
    const details = plan.map(({ detail }) => detail);
    expect(details.filter((each) => each.includes("messages_feed"))).toHaveLength(1);
    expect(details.filter((each) => /TEMP B-TREE|SCAN messages/.test(each))).toEqual([]);
  });

  test("go with their class", () => {
    shards.dropOthers((key) => key === "room:2", 2);
    expect(db.prepare("select distinct class_id as id from messages").all()).toEqual([{ id: 2 }]);
    db.exec("delete from messages");
    expect(messages.newest(2, MINA, 100)).toEqual([]);
  });
});
