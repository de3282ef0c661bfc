/** The batches, their ledger, the shelf, handed-over waste and digests: one entry of the history in migrations.ts. */
export const BATCH_TABLES = `
  -- One mixed quantity of chemistry. What is left of it is never stored: it follows from its ledger.
  create table batches (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    kind text not null check (kind in ('developer', 'stop', 'fixer', 'wash-aid', 'wetting-agent')),
    product text not null collate nocase,
    mixed_at integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
  -- A label is said aloud and never used again, so a batch outlives everything but its class.
  create trigger batches_stay before delete on batches
  when exists (select 1 from classes where id = old.class_id) begin
    select raise(abort, 'a batch is never deleted');
  end;

  create table ledger (
    id integer primary key autoincrement,
    batch_id integer not null references batches (id) on delete cascade,
    kind text not null check (kind in ('mixed', 'used', 'tested', 'topped', 'discarded', 'corrected', 'allowed')),
    -- For a run's use: run and step, so that a repeat changes nothing.
    key text unique,
    run_id integer references runs (id) on delete set null,
    at integer not null,
    person_id text,
    person_name text not null,
    -- The person a line speaks of: whom a worn-out bath was allowed.
    about_id text,
    about_name text,
    body text not null check (json_valid(body))
  ) strict;
  create index ledger_batch on ledger (batch_id, id);
  create index ledger_run on ledger (run_id);
  -- Append-only; a person and a run may be taken out of a line, what it counts may not.
  create trigger ledger_stays before update of id, batch_id, kind, key, at, body on ledger begin
    select raise(abort, 'a line of the ledger is never changed');
  end;
  create trigger ledger_lines_stay before delete on ledger
  when exists (select 1 from batches where id = old.batch_id) begin
    select raise(abort, 'a line of the ledger is never deleted');
  end;

  -- Which warnings a batch has given; \`arm\` counts what re-arms them (top-ups, tests).
  create table batch_marks (
    batch_id integer not null references batches (id) on delete cascade,
    mark text not null,
    arm integer not null,
    at integer not null,
    primary key (batch_id, mark, arm)
  ) strict, without rowid;

  -- Concentrates and powders on the shelf: what came and went, in packs' own ml.
  create table shelf (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    product text not null collate nocase,
    at integer not null,
    person_id text,
    person_name text not null,
    change_ml integer not null,
    body text not null check (json_valid(body))
  ) strict;
  create index shelf_class on shelf (class_id, product, id);

  -- Used fixer given to whoever recovers the silver.
  create table handovers (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    at integer not null,
    person_id text,
    person_name text not null,
    ml integer not null,
    body text not null check (json_valid(body))
  ) strict;
  create index handovers_class on handovers (class_id, at);

  -- Up to which instant the class's digests have been looked after.
  create table digests (
    class_id integer primary key references classes (id) on delete cascade,
    checked_at integer not null
  ) strict, without rowid;
  `;
