/** The board, words to many, erasures, photos, and the log's index of words with the values it holds: one entry of the history. */
export const SEARCH_TABLES = `
  -- The board of a class: one message that is edited. \`shown\` is its text as last said.
  create table boards (
    class_id integer primary key references classes (id) on delete cascade,
    channel_ref text not null,
    ref text,
    shown text not null default '',
    shown_at integer not null default 0
  ) strict, without rowid;

  -- What the teacher said to many; whom it reached stands in the outbox.
  create table says (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    audience text not null,
    body text not null,
    said_at integer not null,
    unique (class_id, number)
  ) strict;

  -- What is to be erased and when. Names nobody. Until \`swept_at\` the bytes may still lie in free pages.
  create table erasures (
    id integer primary key autoincrement,
    kind text not null check (kind in ('person', 'class')),
    class_id integer,
    asked_at integer not null,
    due_at integer not null,
    done_at integer,
    swept_at integer
  ) strict;
  create index erasures_open on erasures (due_at) where swept_at is null;

  create table roll_photos (
    roll_id integer primary key references rolls (id) on delete cascade,
    media_type text not null check (media_type in ('image/jpeg', 'image/png')),
    bytes blob not null,
    added_at integer not null
  ) strict;

  -- What a roll is found by besides its words, as words of their own, so that one index answers a whole search.
  alter table rolls add column marks text generated always as (
    'k' || class_id || ' t' || coalesce(tank, 0) || ' r' || coalesce(rating, 0) || ' o' || outcome
    || ' m' || strftime('%Y%m', ended_at / 1000, 'unixepoch')
    || ' f' || hex(lower(film)) || ' d' || hex(lower(developer)) || ' n' || hex(lower(person_name))
    || case when person_id is null then '' else ' p' || hex(person_id) end
    || case when fault = '' then '' else ' fault' end
    || case when late_cues > 0 or coalesce(body ->> 'missedCues', 0) > 0 then ' late' else '' end
  ) virtual;

  drop trigger rolls_text_insert;
  drop trigger rolls_text_delete;
  drop trigger rolls_text_update;
  drop table rolls_text;
  create virtual table rolls_text using fts5 (
    person_name, film, developer, dilution, batches, fault, note, marks,
    content = 'rolls', content_rowid = 'id', tokenize = "unicode61 remove_diacritics 2",
    prefix = '2 3 4 5 6 7 8 9 10 11 12', detail = column
  );
  -- What is taken out of the index leaves no trace in it.
  insert into rolls_text (rolls_text, rank) values ('secure-delete', 1);
  insert into rolls_text (rolls_text) values ('rebuild');
  create trigger rolls_text_insert after insert on rolls begin
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;
  create trigger rolls_text_delete after delete on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
  end;
  create trigger rolls_text_update after update on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;

  -- Every value the log holds, with how often: what is offered while typing.
  create table roll_values (
    class_id integer not null references classes (id) on delete cascade,
    kind text not null check (kind in ('film', 'developer', 'person', 'fault')),
    value text not null,
    uses integer not null,
    primary key (class_id, kind, value)
  ) strict, without rowid;
  insert into roll_values select class_id, 'film', film, count(*) from rolls group by class_id, film;
  insert into roll_values select class_id, 'developer', developer, count(*) from rolls group by class_id, developer;
  insert into roll_values select class_id, 'person', person_name, count(*) from rolls group by class_id, person_name;
  insert into roll_values select class_id, 'fault', fault, count(*) from rolls where fault <> '' group by class_id, fault;
  create trigger roll_values_insert after insert on rolls begin
    insert into roll_values values (new.class_id, 'film', new.film, 1), (new.class_id, 'developer', new.developer, 1),
      (new.class_id, 'person', new.person_name, 1), (new.class_id, 'fault', new.fault, 1)
      on conflict do update set uses = uses + 1;
    delete from roll_values where class_id = new.class_id and kind = 'fault' and value = '';
  end;
  create trigger roll_values_delete after delete on rolls begin
    update roll_values set uses = uses - 1 where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault));
    delete from roll_values where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault)) and uses <= 0;
  end;
  create trigger roll_values_update after update of film, developer, person_name, fault on rolls begin
    update roll_values set uses = uses - 1 where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault));
    insert into roll_values values (new.class_id, 'film', new.film, 1), (new.class_id, 'developer', new.developer, 1),
      (new.class_id, 'person', new.person_name, 1), (new.class_id, 'fault', new.fault, 1)
      on conflict do update set uses = uses + 1;
    delete from roll_values where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault)) and uses <= 0;
    delete from roll_values where class_id = new.class_id and kind = 'fault' and value = '';
  end;
  `;
