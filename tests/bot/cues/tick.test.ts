import { keepRun } from "../../../commands/run/keep.ts";
import { expect, test } from "vitest";
import { settleSome } from "../../../bot/cues/tick.ts";
import { settleDue } from "../../support/settle.ts";
import { advance } from "../../../commands/run/machine.ts";
import { openStores } from "../../../store/index.ts";
import { aRun, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

function aClassOf(count: number) {
  const stores = openStores(":memory:");
  const log = createMemoryLog();
  const classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
  const runs = Array.from({ length: count }, () => {
    const { id: _id, number: _number, ...run } = aRun({ classId });
    const kept = stores.runs.add(run);
    const begun = advance(kept, { kind: "next", step: 0, sure: false, atMs: START });
    if (!begun.ok) throw new Error(begun.fault.code);
    stores.atomically(() => keepRun(stores, begun.value, START));
    return begun.value;
  });
  const owed = (): { key: string; run_id: number }[] =>
    stores.db.prepare("select key, run_id from outbox order by id").all() as {
      key: string;
      run_id: number;
    }[];
  return { stores, log, runs, owed };
}

test("nothing is said one millisecond early", () => {
  const { stores, log, owed } = aClassOf(1);
  settleDue({ stores, log }, START);
  settleDue({ stores, log }, START + 59_999);
  expect(owed()).toHaveLength(1);
  settleDue({ stores, log }, START + 60_000);
  expect(owed()).toHaveLength(2);
});

test("two beats at once say everything once", () => {
  const { stores, log, owed } = aClassOf(30);
  settleDue({ stores, log }, START + 60_000);
  settleDue({ stores, log }, START + 60_000);
  const keys = owed().map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  expect(keys).toHaveLength(30);
});

test("a run that can't be read does not silence the others", () => {
  const { stores, log, runs, owed } = aClassOf(3);
  stores.db.prepare("update runs set body = '{}' where id = ?").run(runs[1]?.id);
  settleDue({ stores, log }, START);
  // Its owner is told instead that no calls come.
  const lost = `lost.${runs[1]?.id.toString(36)}`;
  expect(owed().map(({ run_id, key }) => run_id ?? key)).toEqual([runs[0]?.id, lost, runs[2]?.id]);
  expect(log.lines.filter(({ level }) => level === "error")).toHaveLength(1);
});

test("a run is settled and its message owed in one transaction, or neither", () => {
  const { stores, log, owed } = aClassOf(1);
  stores.db.exec("create trigger refuse before insert on outbox begin select raise(abort, 'no'); end");
  settleDue({ stores, log }, START + 540_000);
  expect(owed()).toEqual([]);
  expect(stores.runs.get(1)?.phase.kind).toBe("running");
  expect(stores.cues.pending(1).length).toBeGreaterThan(0);
});

test("a process that was away through the end of a step moves the run on once", () => {
  const { stores, log, owed } = aClassOf(1);
  settleDue({ stores, log }, START + 3_600_000);
  expect(stores.runs.get(1)?.phase).toEqual({ kind: "waiting", step: 1, sinceMs: START + 540_000 });
  expect(owed()).toHaveLength(1);
});

test("a call to pour out is not swallowed by an end that is still ahead", () => {
  const { stores, log, owed } = aClassOf(1);
  // A beat that comes late, on a chat with a lead: both are to be decided, only one is due.
  stores.db.prepare("update cues set decide_at = due_at - 20000").run();
  settleDue({ stores, log }, START + 531_000);
  expect(owed().map(({ key }) => key.replace(/^.*?\.\d+\.0/, ""))).toEqual(
    expect.arrayContaining(["p0", "n0"]),
  );
});

test("of a run that a portion cuts, what is late stands for what came before it: one call, however small the portion", () => {
  const awayUntil = START + 305_000;
  const saidBy = (most: number): unknown[] => {
    const { stores, log } = aClassOf(3);
    for (let turn = 0; turn < 100; turn += 1)
      stores.atomically(() => settleSome({ stores, log }, awayUntil, awayUntil, new Set(), most));
    const cues = stores.db.prepare("select run_id, number, state from cues where due_at <= ? order by id");
    const owed = stores.db.prepare("select key, missed from outbox order by key");
    return [cues.all(awayUntil), owed.all()];
  };
  const [cues, owed] = saidBy(1000);
  expect(owed).toEqual(["1.1.0a5", "2.1.0a5", "3.1.0a5"].map((key) => ({ key, missed: 5 })));
  expect(cues).toHaveLength(18);
  for (const most of [1, 2, 4, 7]) expect(saidBy(most)).toEqual([cues, owed]);
});

test("in a chat with a lead as well what is late is told by the next call, however small the portion", () => {
  const { stores, log, owed } = aClassOf(1);
  stores.db.prepare("update cues set decide_at = due_at - 70000").run();
  for (let turn = 0; turn < 10; turn += 1)
    stores.atomically(() => settleSome({ stores, log }, START + 61_000, START + 61_000, new Set(), 1));
  expect(owed().map(({ key }) => key)).toEqual(["1.1.0a1", "1.1.0a2"]);
});

test("a look that has taken its time ends after the run it is at; the next goes on with the others, and none is called twice", () => {
  const { stores, log, owed } = aClassOf(3);
  const now = START + 60_000;
  const look = (): void =>
    stores.atomically(
      () => void settleSome({ stores, log }, now, now, new Set(), 100, stores.outbox.owe, () => true),
    );
  const counts = Array.from({ length: 6 }, () => {
    look();
    return owed().length;
  });
  const inOne = aClassOf(3);
  settleDue(inOne, now);
  expect(owed()).toEqual(inOne.owed());
  expect(counts.slice(0, 2)).toEqual([1, 2]);
  expect(counts.at(-1)).toBe(3);
});
