import { keepRun } from "../../commands/run/keep.ts";
import { beforeEach, describe, expect, test } from "vitest";
import { cuesOf } from "../../commands/run/cues.ts";
import { advance } from "../../commands/run/machine.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { aPlan, aRun, START } from "../support/make.ts";

let stores: OpenedStores;
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", START);
});

const add = (over = {}) => {
  const { id: _id, number: _number, ...run } = aRun({ classId, ...over });
  return stores.runs.add(run);
};

const dueRuns = (now: number, limit: number): number[] => [...stores.cues.due(now, limit).keys()];

describe("runs", () => {
  test("come back as they were kept", () => {
    const run = add();
    expect(stores.runs.find(classId, run.number)).toEqual(run);
    const next = advance(run, { kind: "next", step: 0, sure: false, atMs: START + 5000 });
    if (!next.ok) throw new Error(next.fault.code);
    stores.runs.save(next.value);
    expect(stores.runs.get(run.id)).toEqual(next.value);
  });

  test("share what they say alike, examined once, and are what the row says once anybody has written it", () => {
    const { id } = add();
    const first = stores.runs.get(id);
    expect(stores.runs.open(classId)[0]?.plan).toBe(first?.plan);
    expect(stores.runs.get(add().id)?.plan).toBe(first?.plan);
    expect(() => first?.marks.push({} as never)).toThrow(TypeError);
    stores.db.prepare("update runs set person_id = 'room:leo' where id = ?").run(id);
    expect(stores.runs.get(id)).toEqual({ ...first, personId: "room:leo" });
    stores.db.prepare("update runs set body = json_set(body, '$.warnSeconds', 7) where id = ?").run(id);
    expect(stores.runs.get(id)?.warnSeconds).toBe(7);
  });

  test("are what the store holds after a change of theirs was rolled back", () => {
    const run = add();
    const next = advance(run, { kind: "next", step: 0, sure: false, atMs: START + 5000 });
    if (!next.ok) throw new Error(next.fault.code);
    const change = (): void =>
      stores.atomically(() => {
        stores.runs.save(next.value);
        expect(stores.runs.get(run.id)).toEqual(next.value);
        throw new Error("the disk is full");
      });
    expect(change).toThrow("the disk is full");
    expect(stores.runs.get(run.id)).toEqual(run);
  });

  test("are numbered per class, and no number comes again", () => {
    const other = stores.classes.add("room:2", "Other class", "UTC", false, START).id;
    expect([add().number, add().number, add({ classId: other }).number]).toEqual([1, 2, 1]);
  });

  test("one that can't be read is refused with what is wrong", () => {
    const run = add();
    stores.db
      .prepare("update runs set body = json_set(body, '$.warnSeconds', 'soon') where id = ?")
      .run(run.id);
    expect(() => stores.runs.get(run.id)).toThrow(/warnSeconds/);
  });
});

describe("cues", () => {
  test("are found by their due time, the most overdue run first", () => {
    const late = add();
    const early = add();
    stores.cues.reschedule(
      late.id,
      [{ key: "a", kind: "agitate", step: 0, number: 1, dueAtMs: START + 2000 }],
      0,
      START,
    );
    stores.cues.reschedule(
      early.id,
      [{ key: "a", kind: "agitate", step: 0, number: 1, dueAtMs: START + 1000 }],
      0,
      START,
    );
    expect(dueRuns(START + 999, 10)).toEqual([]);
    expect(dueRuns(START + 5000, 10)).toEqual([early.id, late.id]);
    expect(dueRuns(START + 5000, 1)).toEqual([early.id]);
    expect(stores.cues.nextDecideAt()).toBe(START + 1000);
  });

  test("the most overdue are found first, as many as asked for, and of one run all that is due", () => {
    const [first, second] = [add(), add()];
    const cue = (number: number) =>
      ({ key: String(number), kind: "agitate", step: 0, number, dueAtMs: START + number }) as const;
    stores.cues.reschedule(first.id, [cue(1), cue(3), cue(5), cue(9)], 0, START);
    stores.cues.reschedule(second.id, [cue(2), cue(4)], 0, START);
    const numbers = (limit: number): number[][] =>
      [...stores.cues.due(START + 5, limit).values()].map(({ cues }) => cues.map(({ number }) => number));
    expect(numbers(1)).toEqual([[1]]);
    expect(numbers(3)).toEqual([[1, 3], [2]]);
    expect(numbers(100)).toEqual([
      [1, 3, 5],
      [2, 4],
    ]);
    const dueOf = (id: number): number[] => stores.cues.dueOf(id, START + 5).map(({ number }) => number);
    expect([first, second].map(({ id }) => dueOf(id))).toEqual(numbers(100));
    stores.cues.settle(
      stores.cues.pending(first.id).map(({ id }) => id),
      "said",
      START + 5,
    );
    expect(numbers(1)).toEqual([[2]]);
    expect(dueOf(first.id)).toEqual([]);
  });

  test("a key that was said is not owed again by a new schedule", () => {
    const run = add();
    const cue = { key: "a", kind: "agitate", step: 0, number: 1, dueAtMs: START } as const;
    stores.cues.reschedule(run.id, [cue], 0, START);
    const due = stores.cues.due(START, 10).get(run.id)?.cues ?? [];
    expect(due).toHaveLength(1);
    stores.cues.settle([due[0]?.id ?? 0], "said", START);
    stores.cues.reschedule(run.id, [cue], 0, START);
    expect(stores.cues.pending(run.id)).toEqual([]);
  });

  test("the search for what is due looks at due rows only, however many runs wait", () => {
    const run = add();
    const cues = Array.from({ length: 5000 }, (_, number) => ({
      key: String(number),
      kind: "agitate" as const,
      step: 0,
      number,
      dueAtMs: START + number * 1000,
    }));
    stores.cues.reschedule(run.id, cues, 0, START);
    const plan = stores.db
      .prepare(
        "explain query plan select run_id from cues indexed by cues_due where state = 'pending' and decide_at <= 5 order by decide_at, id limit 9",
      )
      .all() as { detail: string }[];
    expect(plan.map(({ detail }) => detail)).toEqual(["SEARCH cues USING INDEX cues_due (decide_at<?)"]);
    expect(dueRuns(START + 3000, 100)).toEqual([run.id]);
  });
});

describe("a clock that was set", () => {
  test("moves what is under way and leaves alone what is over", () => {
    const going = advance(add(), { kind: "next", step: 0, sure: false, atMs: START });
    const over = advance(add(), { kind: "stop", reason: "", atMs: START + 9000 });
    if (!going.ok || !over.ok) throw new Error("advance");
    stores.atomically(() => {
      keepRun(stores, going.value, START);
      keepRun(stores, over.value, START + 9000);
    });
    stores.time.shift(3_600_000, { bootId: "b", wallMs: 1, monoMs: 2, uptimeMs: null });
    const moved = stores.runs.get(going.value.id);
    expect(moved?.phase).toMatchObject({
      startedAtMs: START + 3_600_000,
      endsAtMs: START + 3_600_000 + 540_000,
    });
    expect(stores.cues.pending(going.value.id).map(({ dueAtMs }) => dueAtMs)).toEqual(
      cuesOf(moved ?? going.value).map(({ dueAtMs }) => dueAtMs),
    );
    expect(stores.runs.get(over.value.id)?.phase).toMatchObject({ atMs: START + 9000 });
    expect(stores.time.anchor()).toEqual({ bootId: "b", wallMs: 1, monoMs: 2, uptimeMs: null });
  });

  test.each([
    ["back", -600_000, [-660_000, 60_000]],
    ["forward", 600_000, [-60_000, 660_000]],
  ])(
    "%s: the plan a run was begun from stays before it, one that was made since stays after it",
    (_, byMs, made) => {
      const person = aRun().personId;
      const before = stores.plans.add(classId, person, aPlan(), START - 60_000);
      const run = add({ startedAtMs: START });
      const since = stores.plans.add(classId, person, aPlan(), START + 60_000);
      stores.time.shift(byMs, { bootId: "b", wallMs: 1, monoMs: 2, uptimeMs: null });
      const madeAt = [before, since].map(({ number }) => stores.plans.find(classId, number)?.madeAt ?? 0);
      expect(madeAt.map((at) => at - START)).toEqual(made);
      const startedAt = stores.runs.get(run.id)?.startedAtMs ?? 0;
      expect(madeAt.map((at) => at <= startedAt)).toEqual([true, false]);
    },
  );
});
