export const SINK_TABLES = `
  -- Devices at a sink, for everybody who stands there; who works at each; what was pressed there, for whom.
  create table sinks (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    token_hash text not null unique,
    device text not null,
    is_locked integer not null default 0 check (is_locked in (0, 1)),
    opened_at integer not null,
    seen_at integer not null
  ) strict;
  create index sinks_class on sinks (class_id);
  create table sink_people (
    sink_id integer not null references sinks (id) on delete cascade,
    class_id integer not null,
    person_id text not null,
    chosen_at integer not null,
    primary key (sink_id, person_id),
    foreign key (class_id, person_id) references members (class_id, person_id) on delete cascade
  ) strict, without rowid;
  create index sink_people_person on sink_people (class_id, person_id);
  -- A device that is closed leaves its word behind: the press was one person's.
  create table sink_presses (
    id integer primary key autoincrement,
    call_id text not null unique,
    sink_id integer not null,
    device text not null,
    class_id integer not null,
    person_id text not null,
    line text not null,
    at integer not null,
    foreign key (class_id, person_id) references members (class_id, person_id) on delete cascade
  ) strict;
  create index sink_presses_person on sink_presses (class_id, person_id);
  `;
