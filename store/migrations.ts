import { BATCH_TABLES } from "./batch-tables.ts";
import { CUE_TABLES } from "./cue-tables.ts";
import { FACTS_TABLES } from "./facts-tables.ts";
import { FIRST_TABLES } from "./first-tables.ts";
import { PRINT_TABLES } from "./print-tables.ts";
import { PUSH_TABLES } from "./push-tables.ts";
import { SEARCH_TABLES } from "./search-tables.ts";
import { SET_ASIDE_TABLE } from "./set-aside-table.ts";
import { SHARES_TABLE } from "./share-table.ts";
import { SINK_TABLES } from "./sink-tables.ts";

/**
 * The store's history: position in this list + 1 is the version in `PRAGMA user_version`. Append only; a test pins
 * each landed entry. Instants are ms since the epoch, durations name their unit.
 */
export const MIGRATIONS: readonly string[] = [
  FIRST_TABLES,
  BATCH_TABLES,
  SEARCH_TABLES,
  `
  -- What a search counts and totals, beside the index of words: small rows, so that a thousand of them are read at once.
  create index rolls_facts on rolls (id, ended_at, outcome, late_cues, rating, fault);
  `,
  `
  -- A person's newest plan and run are asked for with every call of theirs.
  create index plans_person on plans (class_id, person_id, id);
  create index runs_person on runs (class_id, person_id, id);
  `,
  `
  -- The language a person reads: as their chat tells it with each call, and as they chose it themselves.
  alter table members add column language text;
  alter table members add column chosen_language text;
  `,
  `
  -- The highest number of what was erased: a number that was said aloud is never given again.
  create table erased_numbers (
    class_id integer not null references classes (id) on delete cascade,
    kind text not null check (kind in ('plan', 'run')),
    number integer not null,
    primary key (class_id, kind)
  ) strict, without rowid;
  create trigger plans_erased after delete on plans
    when exists (select 1 from classes where id = old.class_id)
  begin
    insert into erased_numbers values (old.class_id, 'plan', old.number)
      on conflict do update set number = max(number, excluded.number);
  end;
  create trigger runs_erased after delete on runs
    when exists (select 1 from classes where id = old.class_id)
  begin
    insert into erased_numbers values (old.class_id, 'run', old.number)
      on conflict do update set number = max(number, excluded.number);
  end;
  `,
  `
  -- What stands in the address under which a calendar looks the class's times up; null: there is none.
  alter table classes add column calendar_token text;
  create unique index classes_calendar on classes (calendar_token);
  `,
  `
  -- What a person takes their place with on another device, once and for a few minutes. The code is kept as its hash.
  create table return_codes (
    class_id integer not null,
    person_id text not null,
    code_hash text not null unique,
    until_at integer not null,
    primary key (class_id, person_id),
    foreign key (class_id, person_id) references members (class_id, person_id) on delete cascade
  ) strict, without rowid;
  `,
  `
  -- A call that goes unsaid is told of by the next one of its run that is said. missed: of how many this one tells.
  -- untold: so many ended with this one unsaid, itself among them, and nobody has been told yet.
  alter table outbox add column missed integer not null default 0;
  alter table outbox add column untold integer not null default 0;
  create index outbox_untold on outbox (run_id) where untold > 0;
  -- Words on lateness are made as a call is said; what waits was worded before that.
  update outbox set missed = body ->> '$.late.missed', body = json_remove(json_set(body, '$.text', body ->> '$.late.line'), '$.late')
    where state in ('owed', 'sending') and body -> '$.late' is not null;
  `,
  `
  -- What is owed, and what a room's page still shows of it, names its run by number and tank. What was owed before that named
  -- it in a sentence only.
  update outbox set body = json_set(body, '$.run', (
    select json_object('number', runs.number, 'tank', runs.body ->> '$.plan.tank') from runs where runs.id = outbox.run_id))
  where run_id is not null and state in ('owed', 'sending');
  update messages set body = json_set(body, '$.runs', json_array((
    select json_object('number', runs.number, 'tank', runs.body ->> '$.plan.tank')
    from outbox join runs on runs.id = outbox.run_id where 'd:' || outbox.key = messages.key)))
  where key in (
    select 'd:' || outbox.key from outbox join runs on runs.id = outbox.run_id
    where runs.phase_kind in ('waiting', 'running'));
  `,
  `
  -- 3 min of washing that nobody set was the house's default: from now on the handbooks' least holds.
  update classes set habits = json_remove(habits, '$.washMinSeconds')
    where habits ->> 'washMinSeconds' = 180
    and not exists (select 1 from json_each(habits, '$.answered') where value = 'wash');
  `,
  `
  -- A run that is cleared leaves its rolls: they are found by it, and only what is searched for is indexed anew.
  create index rolls_run on rolls (run_id) where run_id is not null;
  drop trigger rolls_text_update;
  create trigger rolls_text_update after update of class_id, person_id, person_name, film, developer, dilution, tank, batches,
    outcome, ended_at, late_cues, rating, fault, note, body on rolls
  begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;
  `,
  SINK_TABLES,
  `
  -- Who was erased, as a hash of their number only: a backup made before then must not bring them back unasked.
  create table erased_people (hash text primary key) strict, without rowid;
  `,
  PUSH_TABLES,
  SET_ASIDE_TABLE,
  `
  -- To whom a word to many was shown: told by their own page, once it stood before their eyes.
  create table says_shown (
    say_id integer not null references says (id) on delete cascade,
    person_id text not null,
    shown_at integer not null,
    primary key (say_id, person_id)
  ) strict, without rowid;
  `,
  `
  -- Signed out together with a class's old code: with the new one, and on the same device, its person comes back.
  alter table room_sessions add column is_asleep integer not null default 0;
  `,
  `
  -- Whether a roll has a photo, under a name that says so.
  update messages set body = json_remove(json_set(body, '$.photo.isKept', body -> '$.photo.has'), '$.photo.has') where body -> '$.photo.has' is not null;
  `,
  `
  -- What each import changed of the data sheets, so that it can be taken back as a whole.
  create table sheet_imports (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    person_id text,
    at integer not null,
    body text not null check (json_valid(body)),
    taken_back_at integer,
    unique (class_id, number)
  ) strict;
  `,
  `
  -- What a bath is for: paper never goes through film's, nor film through paper's.
  alter table batches add column medium text not null default 'film' check (medium in ('film', 'paper'));
  `,
  SHARES_TABLE,
  PRINT_TABLES,
  `
  -- Rolls with a mark on a frame: few among all of a class's.
  create index rolls_marked on rolls (class_id, id) where json_array_length(body, '$.frameMarks') > 0;
  `,
  `
  -- A reply's photo says what it is of: of a roll until now.
  update messages set body = json_set(json_remove(body, '$.photo.roll'), '$.photo.kind', 'roll', '$.photo.number', body -> '$.photo.roll')
  where body -> '$.photo.roll' is not null;
  `,
  `
  -- What somebody has planned and begun of late is asked with each change that their page is told of.
  create index plans_of_person on plans (class_id, person_id, made_at);
  create index runs_of_person on runs (class_id, person_id, started_at);
  `,
  `
  -- The thread in which a run is called, where its class wants one. asked_at: when the chat was first asked for it.
  create table run_threads (
    run_id integer primary key references runs (id) on delete cascade,
    channel_ref text not null,
    ref text,
    asked_at integer,
    state text not null default 'wanted' check (state in ('wanted', 'open', 'lost', 'closed'))
  ) strict;
  create index run_threads_alive on run_threads (state, run_id) where state in ('wanted', 'open');
  `,
  `
  -- Who waits for a place is asked whenever a run moves on.
  create index runs_to_begin on runs (class_id, id) where phase_kind = 'waiting' and phase ->> 'step' = 0;
  `,
  FACTS_TABLES,
  `
  -- What an old key in a direct message belongs to is looked for by its message; the room's, which are most, are never.
  create index outbox_said_in on outbox (ref) where instr(ref, '/') > 0;
  `,
  CUE_TABLES,
  `
  -- What is said together, in however many classes, is written to the same few pages: by blocks of messages, each by class.
  drop index messages_feed;
  create index messages_feed on messages (id >> 12, class_id);
  `,
];
