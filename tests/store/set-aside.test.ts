import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { MIGRATIONS } from "../../store/migrations.ts";
import { migrate } from "../../store/open.ts";
import { SET_ASIDE_TABLE } from "../../store/set-aside-table.ts";
import { createRoom } from "../support/room.ts";
import { START } from "../support/make.ts";

/* A store as an older version left it, which took `volume:10`, `cooling:1 s` and `room:60C` and could read none of them. */

const path = join(mkdtempSync(join(tmpdir(), "sinkside-")), "bricked.db");
const tank = (number: number, over: object): string =>
  JSON.stringify({
    number,
    reels: 1,
    volumeMl: 300,
    format: "any",
    condition: null,
    timeConstantSeconds: null,
    ...over,
  });

test("what an older version took and could not read is mended, and what stood there is kept and told", () => {
  const db = new Database(path);
  migrate(db, MIGRATIONS.slice(0, MIGRATIONS.indexOf(SET_ASIDE_TABLE)));
  const habits = JSON.stringify({ roomTenthsC: 600, sinks: 4 });
  db.prepare(
    "insert into classes (id, key, name, zone, habits, created_at) values (1, 'room:demo', 'Old', 'UTC', ?, ?)",
  ).run(habits, START);
  const bricked = [
    tank(1, { volumeMl: 10 }),
    tank(2, { timeConstantSeconds: 1 }),
    tank(3, {}),
    tank(4, { volumeMl: 60_000, timeConstantSeconds: 1 }),
  ];
  for (const [at, body] of bricked.entries())
    db.prepare("insert into tanks (class_id, number, body) values (1, ?, ?)").run(at + 1, body);
  db.close();

  const room = createRoom(path);
  const school = room.stores.classes.find("room:demo");
  expect([school?.habits.roomTenthsC, school?.habits.sinks]).toEqual([200, 4]);
  expect(
    room.stores.tanks.list(1).map(({ number, timeConstantSeconds }) => [number, timeConstantSeconds]),
  ).toEqual([
    [2, null],
    [3, null],
  ]);
  const kept = room.stores.db.prepare("select kind, number, body from set_aside order by id").all();
  expect(kept).toEqual([
    { kind: "tank", number: 1, body: bricked[0] },
    { kind: "tank", number: 2, body: bricked[1] },
    { kind: "tank", number: 4, body: bricked[3] },
    { kind: "habit", number: null, body: '{"roomTenthsC":600}' },
  ]);
  expect(room.says("Tess", "/class mend", "teacher").split("\n")).toEqual([
    "Everything of the class can be read.",
    "Set aside when this version came, since nothing could read it; what stood there is kept:",
    "- **T1**: 10 ml. Set it anew.",
    "- **T2**: 300 ml, 0:01. Set it anew.",
    "- **T4**: 60 l, 0:01. Set it anew.",
    "- **room temperature**: 60 °C (140 °F). Set it anew.",
  ]);
  expect(room.says("Tess", "/class mend", "teacher")).toBe("Everything of the class can be read.");
  expect(room.says("Tess", "/tank add numbers:1 volume:10", "teacher")).toContain("write 10 oz");
  expect(room.asks("Tess", "/tank add numbers:1 volume:10 oz", "teacher").kind).toBe("done");
  room.stores.close();
});
