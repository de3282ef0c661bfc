/** What every class needs from its first day on: people, plans, runs and their cues, what is owed, the log, the room. */
export const FIRST_TABLES = `
  create table classes (
    id integer primary key autoincrement,
    key text not null unique,
    name text not null,
    zone text not null,
    demo integer not null default 0 check (demo in (0, 1)),
    habits text not null check (json_valid(habits)),
    channel_ref text,
    created_at integer not null
  ) strict;

  create table members (
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    name text not null,
    role text not null check (role in ('student', 'aide', 'teacher')),
    joined_at integer not null,
    seen_at integer not null,
    primary key (class_id, person_id)
  ) strict, without rowid;
  create index members_person on members (person_id, seen_at);
  create unique index members_name on members (class_id, lower(name));

  -- How a person is reached alone; remembered so that it is asked for once.
  create table direct_channels (
    person_id text primary key,
    channel_ref text,
    refused_until integer not null default 0
  ) strict, without rowid;

  create table sheets (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    film text not null collate nocase,
    developer text not null collate nocase,
    dilution text not null,
    body text not null check (json_valid(body)),
    added_by text,
    added_at integer not null,
    unique (class_id, film, developer, dilution)
  ) strict;

  create table tanks (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;

  create table plans (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    person_id text not null,
    body text not null check (json_valid(body)),
    made_at integer not null,
    unique (class_id, number)
  ) strict;

  create table runs (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    person_id text not null,
    body text not null check (json_valid(body)),
    phase text not null check (json_valid(phase)),
    phase_kind text generated always as (phase ->> 'kind') stored,
    started_at integer not null,
    unique (class_id, number)
  ) strict;
  create index runs_open on runs (class_id, person_id) where phase_kind in ('waiting', 'running');

  -- The table is the timer: a row is both the promise and the alarm.
  create table cues (
    id integer primary key autoincrement,
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
    unique (run_id, key)
  ) strict;
  create index cues_due on cues (decide_at, id) where state = 'pending';

  create index cues_run on cues (run_id) where state = 'pending';

  -- What is decided and not yet said.
  create table outbox (
    id integer primary key autoincrement,
    key text not null unique,
    class_id integer not null references classes (id) on delete cascade,
    person_id text,
    run_id integer references runs (id) on delete cascade,
    priority integer not null,
    due_at integer not null,
    decided_at integer not null,
    useful_until integer,
    body text not null check (json_valid(body)),
    -- The key under which several were said as one message.
    bundle text,
    state text not null default 'owed' check (state in ('owed', 'sending', 'sent', 'failed', 'stale')),
    tries integer not null default 0,
    next_at integer not null,
    first_try_at integer,
    sent_at integer,
    ref text,
    detail text
  ) strict;
  create index outbox_owed on outbox (next_at, priority, id) where state in ('owed', 'sending');
  create index outbox_run on outbox (run_id);
  create index outbox_bundle on outbox (bundle) where bundle is not null;

  create table rolls (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    run_id integer references runs (id) on delete set null,
    person_id text,
    person_name text not null,
    film text not null,
    developer text not null,
    dilution text not null,
    tank integer,
    batches text not null,
    outcome text not null check (outcome in ('finished', 'stopped')),
    ended_at integer not null,
    late_cues integer not null default 0,
    rating integer check (rating between 1 and 5),
    fault text not null default '',
    note text not null default '',
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
  create index rolls_ended on rolls (class_id, ended_at desc, id desc);
  create index rolls_person on rolls (class_id, person_id);

  create virtual table rolls_text using fts5 (
    person_name, film, developer, dilution, batches, fault, note,
    content = 'rolls', content_rowid = 'id', tokenize = "unicode61 remove_diacritics 2", prefix = '2 3'
  );
  create trigger rolls_text_insert after insert on rolls begin
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note);
  end;
  create trigger rolls_text_delete after delete on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note);
  end;
  create trigger rolls_text_update after update on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note);
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note);
  end;

  -- The room's feed: what was said there, so that a phone that slept reads on from where it stopped.
  create table messages (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    person_id text,
    author_id text,
    key text unique,
    at integer not null,
    body text not null check (json_valid(body))
  ) strict;
  create index messages_feed on messages (class_id, id);

  create table room_sessions (
    token_hash text primary key,
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    device text not null,
    created_at integer not null,
    seen_at integer not null
  ) strict, without rowid;
  create table room_secrets (
    class_id integer not null references classes (id) on delete cascade,
    kind text not null check (kind in ('join', 'teacher', 'aide')),
    value text not null,
    changed_at integer not null,
    primary key (class_id, kind)
  ) strict, without rowid;

  -- A chat may deliver one call twice; its work is done once.
  create table calls (
    call_id text primary key,
    at integer not null
  ) strict, without rowid;
  create index calls_at on calls (at);

  create table settings (
    name text primary key,
    value text not null
  ) strict, without rowid;

  -- One process owns the cues; said to whoever starts a second one.
  create table owner (
    only_row integer primary key check (only_row = 1),
    pid integer not null,
    address text not null,
    started_at integer not null
  ) strict;
  `;
