import { expect, it } from "vitest";
import type { OpenedDb } from "../../store/driver.ts";
import { openStores } from "../../store/index.ts";

/* Which class and which runs a message on a chat speaks of: asked for a key whose class its place does not tell. */

it("is found by channel and message, without a look at every message there was", () => {
  const stores = openStores(":memory:");
  const { db } = stores;
  for (const name of ["one", "two"]) stores.classes.add(`discord:${name}`, name, "UTC", false, 0);
  const add = db.prepare(
    `insert into outbox (key, class_id, priority, due_at, decided_at, body, next_at, ref) values (?, ?, 1, 0, 0, '{}', 0, ?)`,
  );
  add.run("a", 1, "70/801");
  add.run("b", 1, "70/801");
  add.run("c", 2, "70/802");
  add.run("d", 2, "70/803");
  add.run("e", 1, "70/803");
  add.run("f", 1, "17");
  expect(stores.outbox.classesSaidIn("70/801")).toEqual([1]);
  expect(stores.outbox.classesSaidIn("70/802")).toEqual([2]);
  expect(stores.outbox.classesSaidIn("70/803").toSorted()).toEqual([1, 2]);
  expect(stores.outbox.classesSaidIn("70/9")).toEqual([]);
  expect(stores.outbox.runsSaidIn("70/801")).toEqual([]);
  const asked = [...(db as OpenedDb).statements()]
    .map((each) => each.make().source)
    .filter((sql) => sql.includes("where ref ="));
  expect(asked).toHaveLength(2);
  for (const sql of asked) {
    const plan = db.prepare(`explain query plan ${sql}`).all("70/801") as { detail: string }[];
    expect(plan[0]?.detail).toContain("SEARCH outbox USING INDEX outbox_said_in");
  }
  stores.close();
});
