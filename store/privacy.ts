import { isOfClass } from "./messages-of-class.ts";
import { NAMELESS } from "./shapes/person.ts";
import type { Db } from "./open.ts";
import type { NameForms, Redaction } from "./redaction.ts";
import { tracesOf, withdrawShown } from "./shown.ts";
import { TEXT_COLUMNS, type TextColumn } from "./text-columns.ts";

/* Taking a person or a class out of the store, to the last byte. */

export interface PrivacyStore {
  /**
   * Takes a person out of a class: their plans, runs, messages, sessions and photos go; their rolls and prints stay in the log
   * without name and note; the ledger's lines stay without name; what others wrote loses the name, and what others were shown
   * of them goes. Inside `atomically` only.
   */
  erasePerson(classId: number, personId: string, redaction: Redaction): void;
  /** Takes a class out with everything in it; inside `atomically` only. */
  eraseClass(classId: number): void;
  /**
   * After an erasure, outside any transaction: writes the index of words and the whole file anew, so that no free page and
   * no log holds what was erased. Others must not be writing; it takes about a second for each 10,000 rolls.
   */
  sweep(): void;
}

export function createPrivacyStore(db: Db): PrivacyStore {
  return {
    erasePerson: (classId, personId, redaction) => erasePerson(db, classId, personId, redaction),
    eraseClass(classId) {
      db.prepare(
        `delete from calls where exists (select 1 from members where class_id = ?
           and substr(call_id, 1, length(person_id) + 1) = person_id || ':')`,
      ).run(classId);
      db.prepare("delete from classes where id = ?").run(classId);
      forgetStrangers(db);
    },
    sweep() {
      forgetStrangers(db);
      db.exec("insert into rolls_text (rolls_text) values ('rebuild')");
      db.exec("insert into prints_text (prints_text) values ('rebuild')");
      db.pragma("wal_checkpoint(TRUNCATE)");
      db.exec("vacuum");
      db.pragma("wal_checkpoint(TRUNCATE)");
    },
  };
}

function erasePerson(db: Db, classId: number, personId: string, redaction: Redaction): void {
  const { own, others } = namesIn(db, classId, personId);
  const names = redaction.formsOf(own, others);
  const ids = { classId, personId };
  const traces = tracesOf(db, ids, own);
  const run = (sql: string): void => void db.prepare(sql).run(ids);
  run("delete from plans where class_id = @classId and person_id = @personId");
  run(
    "delete from roll_photos where roll_id in (select id from rolls where class_id = @classId and person_id = @personId)",
  );
  run("delete from outbox where class_id = @classId and person_id = @personId");
  run(
    `delete from outbox where class_id = @classId and exists
       (select 1 from json_each(body, '$.mentions') where value = @personId)`,
  );
  run(
    `update outbox set body = json_remove(body, '$.say.by')
     where class_id = @classId and body ->> '$.say.by' = @personId`,
  );
  run(
    "delete from says_shown where person_id = @personId and say_id in (select id from says where class_id = @classId)",
  );
  run(
    `delete from messages where ${isOfClass("@classId")} and (person_id = @personId or author_id = @personId)`,
  );
  run("delete from runs where class_id = @classId and person_id = @personId");
  run("delete from set_aside where class_id = @classId and person_id = @personId");
  run("delete from room_sessions where class_id = @classId and person_id = @personId");
  run("delete from shares where class_id = @classId and person_id = @personId");
  run("update sheets set added_by = null where class_id = @classId and added_by = @personId");
  run("update sheet_imports set person_id = null where class_id = @classId and person_id = @personId");
  for (const table of ["shelf", "handovers"])
    run(
      `update ${table} set person_id = null, person_name = '${NAMELESS}'
       where class_id = @classId and person_id = @personId`,
    );
  const ledger = "batch_id in (select id from batches where class_id = @classId)";
  run(
    `update ledger set person_id = null, person_name = '${NAMELESS}' where ${ledger} and person_id = @personId`,
  );
  run(
    `update ledger set about_id = null, about_name = '${NAMELESS}' where ${ledger} and about_id = @personId`,
  );
  run(
    `update rolls set person_id = null, person_name = '${NAMELESS}', note = '',
       body = case when body ->> 'reason' is null then body else json_set(body, '$.reason', '') end
     where class_id = @classId and person_id = @personId`,
  );
  run(
    "delete from print_photos where print_id in (select id from prints where class_id = @classId and person_id = @personId)",
  );
  run("delete from strips where class_id = @classId and person_id = @personId");
  run(
    `update prints set person_id = null, person_name = '${NAMELESS}', note = ''
     where class_id = @classId and person_id = @personId`,
  );
  run("delete from members where class_id = @classId and person_id = @personId");
  run("delete from calls where substr(call_id, 1, length(@personId) + 1) = @personId || ':'");
  withdrawShown(db, classId, traces, names, redaction);
  for (const column of TEXT_COLUMNS) redactColumn(db, column, classId, names, redaction);
  forgetStrangers(db);
}

/** The name they have and those under which rolls of theirs stand, and the names of the others in the class. */
function namesIn(db: Db, classId: number, personId: string): { own: string[]; others: string[] } {
  const own = db
    .prepare<[object], { name: string }>(
      `select name from members where class_id = @classId and person_id = @personId
       union select person_name from rolls where class_id = @classId and person_id = @personId
       union select person_name from prints where class_id = @classId and person_id = @personId`,
    )
    .all({ classId, personId })
    .map(({ name }) => name)
    .filter((name) => name !== NAMELESS);
  const others = db
    .prepare<[object], { name: string }>(
      "select name from members where class_id = @classId and person_id <> @personId",
    )
    .all({ classId, personId })
    .map(({ name }) => name);
  return { own, others };
}

function redactColumn(
  db: Db,
  column: TextColumn,
  classId: number,
  names: NameForms,
  redaction: Redaction,
): void {
  const { table, key, isJson, ofClass } = column;
  const name = column.column;
  const rows = db
    .prepare<[object], { id: number; value: string }>(
      `select ${key} as id, ${name} as value from ${table} where ${ofClass} and ${name} is not null and ${name} <> ''`,
    )
    .all({ classId });
  const changed: { id: number; value: string }[] = [];
  const wanted = [...names.whole, ...names.parts].map((each) =>
    JSON.stringify(each).slice(1, -1).toLowerCase(),
  );
  for (const { id, value } of rows) {
    // Most rows name nobody: only those that may are read.
    const lower = (isJson ? value : JSON.stringify(value)).toLowerCase();
    if (!wanted.some((each) => lower.includes(each))) continue;
    const clean = isJson
      ? JSON.stringify(redaction.inJson(JSON.parse(value), names))
      : redaction.inText(value, names);
    const before = isJson ? JSON.stringify(JSON.parse(value)) : value;
    if (clean !== before) changed.push({ id, value: clean });
  }
  if (changed.length === 0) return;
  withoutGuard(db, table, () => {
    const update = db.prepare<[string, number]>(`update ${table} set ${name} = ? where ${key} = ?`);
    for (const { id, value } of changed) update.run(value, id);
  });
}

/** The ledger is append-only but for this: a name in a note is taken out, what the line counts stays. */
function withoutGuard(db: Db, table: string, work: () => void): void {
  if (table !== "ledger") return work();
  const guard = db
    .prepare<[], { sql: string }>("select sql from sqlite_master where name = 'ledger_stays'")
    .get();
  db.exec("drop trigger if exists ledger_stays");
  work();
  if (guard) db.exec(guard.sql);
}

/** What is left of people who are in no class any more, and of answers that were written down after an erasure. */
function forgetStrangers(db: Db): void {
  const known = (column: string): string =>
    `exists (select 1 from members where members.person_id = ${column})`;
  const knownHere = (column: string): string =>
    `exists (select 1 from members where members.person_id = messages.${column} and members.class_id = messages.class_id)`;
  db.exec(`
    delete from direct_channels where not ${known("direct_channels.person_id")};
    delete from messages where (person_id is not null and not ${knownHere("person_id")})
      or (author_id is not null and not ${knownHere("author_id")});
  `);
}
