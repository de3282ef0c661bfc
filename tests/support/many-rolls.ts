import { existsSync, mkdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { MIGRATIONS } from "../../store/migrations.ts";
import { START } from "./make.ts";
import { aNewRoll } from "./rolls.ts";

/* A log far larger than any class's, all in one class: the worst case for a search. Everything in it is invented. */

export const FILMS = ["Lantern 400", "Lantern 100", "Quay 100", "Tide 3200", "Mole 50", "Buoy 200"];
export const DEVELOPERS = ["House MQ", "Pier Fine", "Slipway", "Brine"];
export const PEOPLE = Array.from({ length: 300 }, (_, at) => `Learner ${at + 1}`);
export const FAULTS = ["thin", "milky", "crescents", "round clear spots"];
const WORDS = [
  "harbour",
  "dusk",
  "market",
  "portrait",
  "fog",
  "boats",
  "window",
  "test",
  "grain",
  "sea",
  "wall",
];

/** A seeded draw of whole numbers below `most` (mulberry32). */
export function createDraw(seed: number): (most: number) => number {
  let state = seed;
  return (most) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * most);
  };
}

/** Opens the store of `count` rolls, made once and kept in the system's folder for temporary files. */
export function openManyRolls(count: number): { stores: OpenedStores; classId: number } {
  const folder = join(tmpdir(), "sinkside-bench");
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `rolls-${count}-v${MIGRATIONS.length}.db`);
  if (existsSync(path)) {
    const stores = openStores(path);
    const { made } = stores.db.prepare("select count(*) as made from rolls").get() as { made: number };
    const [school] = stores.classes.list();
    if (made === count && school) return { stores, classId: school.id };
    stores.close();
    for (const end of ["", "-wal", "-shm"]) rmSync(path + end, { force: true });
  }
  const stores = openStores(path);
  const school = stores.classes.add("room:many", "Many", "UTC", false, START);
  fill(stores, school.id, count);
  return { stores, classId: school.id };
}

function fill(stores: OpenedStores, classId: number, count: number): void {
  const draw = createDraw(5);
  const pick = <T>(list: readonly T[]): T => list[draw(list.length)] as T;
  stores.db.pragma("synchronous = OFF");
  // Written in bulk: the indexes that triggers would keep row by row are built at the end, and come out the same.
  const triggers = stores.db
    .prepare<[], { name: string; sql: string }>(
      "select name, sql from sqlite_master where type = 'trigger' and tbl_name = 'rolls'",
    )
    .all();
  for (const { name } of triggers) stores.db.exec(`drop trigger ${name}`);
  const insert = stores.db.prepare(
    `insert into rolls (class_id, number, person_id, person_name, film, developer, dilution, tank, batches, outcome,
       ended_at, late_cues, rating, fault, note, body)
     values (@classId, @number, @personId, @personName, @film, @developer, @dilution, @tank, @batches, @outcome, @endedAt,
       @lateCues, @rating, @fault, @note, @body)`,
  );
  const sample = aNewRoll();
  const body = JSON.stringify(sample.body);
  for (let from = 0; from < count; from += 20_000) {
    stores.atomically(() => {
      for (let number = from + 1; number <= Math.min(count, from + 20_000); number += 1) {
        const person = draw(PEOPLE.length);
        insert.run({
          ...sample,
          body,
          classId,
          number,
          personId: `room:p${person}`,
          personName: PEOPLE[person],
          film: pick(FILMS),
          developer: pick(DEVELOPERS),
          tank: 1 + draw(40),
          batches: `B${1 + Math.floor(number / 40)} B${1 + Math.floor(number / 25)}`,
          outcome: draw(20) === 0 ? "stopped" : "finished",
          endedAt: START + number * 60_000,
          lateCues: draw(8) === 0 ? 1 + draw(4) : 0,
          rating: draw(3) === 0 ? 1 + draw(5) : null,
          fault: draw(20) === 0 ? pick(FAULTS) : "",
          note: draw(4) === 0 ? `${pick(WORDS)} ${pick(WORDS)} ${pick(WORDS)}` : "",
        });
      }
    });
  }
  stores.db.exec(`
    insert into rolls_text (rolls_text) values ('rebuild');
    insert into roll_values select class_id, 'film', film, count(*) from rolls group by class_id, film;
    insert into roll_values select class_id, 'developer', developer, count(*) from rolls group by class_id, developer;
    insert into roll_values select class_id, 'person', person_name, count(*) from rolls group by class_id, person_name;
    insert into roll_values select class_id, 'fault', fault, count(*) from rolls where fault <> '' group by class_id, fault;
    ${triggers.map(({ sql }) => `${sql};`).join("\n")}
  `);
  stores.db.pragma("wal_checkpoint(TRUNCATE)");
  stores.db.pragma("synchronous = FULL");
}
