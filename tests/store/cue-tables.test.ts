import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { CUE_TABLES } from "../../store/cue-tables.ts";
import { openStores } from "../../store/index.ts";
import { MIGRATIONS } from "../../store/migrations.ts";
import { migrate } from "../../store/open.ts";
import { START } from "../support/make.ts";

/* A store as an older version left it, in the middle of a run: what was said stays said, what waits is still called. */

test("cues of every state come through an upgrade as they were, in the order of time", () => {
  const path = join(mkdtempSync(join(tmpdir(), "sinkside-")), "older.db");
  const older = new Database(path);
  older.pragma("foreign_keys = ON");
  migrate(older, MIGRATIONS.slice(0, MIGRATIONS.indexOf(CUE_TABLES)));
  older
    .prepare(
      "insert into classes (id, key, name, zone, habits, created_at) values (1, 'room:a', 'A', 'UTC', '{}', ?)",
    )
    .run(START);
  const run = older.prepare(
    `insert into runs (id, class_id, number, person_id, body, phase, started_at) values (?, 1, ?, 'room:p', '{}', '{"kind":"running"}', ?)`,
  );
  for (const id of [7, 9]) run.run(id, id, START);
  const cue = older.prepare(
    `insert into cues (run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at)
     values (?, ?, 'agitate', 0, ?, ?, ?, ?, ?, ?)`,
  );
  const states = ["said", "merged", "dropped", "pending", "pending", "pending"];
  for (const [at, state] of states.entries())
    for (const id of [7, 9]) {
      const dueAt = START + at * 1000 + id;
      cue.run(id, `0.1a${at}`, at, dueAt, dueAt - 200, START, state, state === "pending" ? null : dueAt + 3);
    }
  const all = "select * from cues order by id";
  const before = older.prepare(all).all();
  expect(before).toHaveLength(12);
  older.close();

  const stores = openStores(path);
  expect(stores.db.prepare(all).all()).toEqual(before);
  expect(stores.cues.nextDecideAt()).toBe(START + 3000 + 7 - 200);
  expect(stores.cues.pending(9).map(({ number }) => number)).toEqual([3, 4, 5]);
  // A key that is known stays as it is; a new one gets a number that none has.
  const again = { key: "0.1a0", kind: "agitate", step: 0, number: 0, dueAtMs: START } as const;
  stores.cues.reschedule(7, [again, { ...again, key: "0.2a0" }], 0, START);
  expect(stores.cues.pending(7).map(({ id, key }) => [id, key])).toEqual([[13, "0.2a0"]]);
  stores.runs.remove(7);
  const left = "select distinct run_id as id from cues";
  expect(stores.db.prepare(left).all()).toEqual([{ id: 9 }]);
  stores.close();
});
