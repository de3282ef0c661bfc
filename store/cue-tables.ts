/** Cues in the order of time: a later table than the first, which lay in that of runs. */
export const CUE_TABLES = `
  -- Cues lie in the order in which they are decided, so that what is due together is read, marked and written to the disk
  -- together, however many runs it is of.
  drop index cues_due;
  drop index cues_run;
  alter table cues rename to cues_by_run;
  create table cues (
    id integer not null unique,
    run_id integer not null references runs (id) on delete cascade,
    key text not null,
    kind text not null,
    step integer not null,
    number integer not null,
    due_at integer not null,
    -- From here on it may be decided: its due time, less the lead its chat needs.
    decide_at integer not null,
    made_at integer not null,
    state text not null default 'pending' check (state in ('pending', 'said', 'merged', 'dropped')),
    settled_at integer,
    primary key (decide_at, id)
  ) strict, without rowid;
  insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at)
    select id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at from cues_by_run order by decide_at, id;
  drop table cues_by_run;
  create index cues_due on cues (decide_at, id) where state = 'pending';
  create unique index cues_run on cues (run_id, key);
`;
