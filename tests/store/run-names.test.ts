import { expect, test } from "vitest";
import Database from "better-sqlite3";
import { bodySchema } from "../../bot/chat/room/feed.ts";
import { MIGRATIONS } from "../../store/migrations.ts";
import { migrate } from "../../store/open.ts";
import { createOutboxStore } from "../../store/outbox.ts";
import { aPlan, START } from "../support/make.ts";

/** Versions before a message named its run. */
const BEFORE = MIGRATIONS.findIndex((sql) => sql.includes("names its run by number and tank"));

test("a call that an older version owed, or has said of a run under way, is told its run", () => {
  const db = new Database(":memory:");
  migrate(db, MIGRATIONS.slice(0, BEFORE));
  db.prepare(
    "insert into classes (id, key, name, zone, habits, created_at) values (1, 'room:1', 'Old', 'UTC', '{}', 0)",
  ).run();
  const plan = { plan: aPlan({ tank: 3 }) };
  const phases = [
    { kind: "running", step: 0, startedAtMs: START, endsAtMs: START + 1 },
    { kind: "finished", atMs: START },
  ];
  for (const [index, phase] of phases.entries())
    db.prepare(
      "insert into runs (id, class_id, number, person_id, body, phase, started_at) values (?, 1, ?, 'room:mina', ?, ?, 0)",
    ).run(index + 1, index + 7, JSON.stringify(plan), JSON.stringify(phase));
  const old = JSON.stringify({ text: "Agitate.", about: "R7, tank 3", actions: [], mentions: [] });
  const owe = (key: string, run: number | null, state: string) =>
    db
      .prepare(
        `insert into outbox (key, class_id, run_id, priority, due_at, decided_at, next_at, body, state)
         values (?, 1, ?, 1, 0, 0, 0, ?, ?)`,
      )
      .run(key, run, old, state);
  owe("waits", 1, "owed");
  owe("said", 1, "sent");
  owe("over", 2, "sent");
  owe("bell", null, "owed");
  for (const key of ["said", "over", "bell"])
    db.prepare("insert into messages (class_id, key, at, body) values (1, ?, 0, ?)").run(
      `d:${key}`,
      JSON.stringify({ kind: "cue", text: "Agitate." }),
    );
  migrate(db, MIGRATIONS);
  const outbox = createOutboxStore(db);
  expect(outbox.findByKey("waits")?.body.run).toEqual({ number: 7, tank: 3 });
  expect(outbox.findByKey("bell")?.body.run).toBeNull();
  const runsOf = (key: string) => {
    const row = db.prepare<[string], { body: string }>("select body from messages where key = ?").get(key);
    return bodySchema.parse(JSON.parse(row?.body ?? "")).runs;
  };
  expect(runsOf("d:said")).toEqual([{ number: 7, tank: 3 }]);
  expect(runsOf("d:over")).toEqual([]);
  expect(runsOf("d:bell")).toEqual([]);
});
