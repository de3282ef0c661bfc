/** Enlargers, papers, each person's last test strip, and the log of prints with its index of words. */
export const PRINT_TABLES = `
  create table enlargers (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
  create table papers (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
  create table strips (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    made_at integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, person_id)
  ) strict;
  create table prints (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    person_id text,
    person_name text not null,
    roll integer,
    frame text not null,
    title text not null,
    made_at integer not null,
    rating integer check (rating between 1 and 5),
    fault text not null default '',
    note text not null default '',
    body text not null check (json_valid(body)),
    paper text generated always as (coalesce(body ->> '$.paper.name', '')) virtual,
    unique (class_id, number)
  ) strict;
  create index prints_person on prints (class_id, person_id, id);
  create index prints_roll on prints (class_id, roll, id);
  create index prints_made on prints (class_id, made_at);
  create table print_photos (
    print_id integer primary key references prints (id) on delete cascade,
    media_type text not null check (media_type in ('image/jpeg', 'image/png')),
    bytes blob not null,
    added_at integer not null
  ) strict;

  create virtual table prints_text using fts5 (
    person_name, title, paper, fault, note,
    content = 'prints', content_rowid = 'id', tokenize = "unicode61 remove_diacritics 2", prefix = '2 3 4 5 6'
  );
  insert into prints_text (prints_text, rank) values ('secure-delete', 1);
  create trigger prints_text_insert after insert on prints begin
    insert into prints_text (rowid, person_name, title, paper, fault, note)
    values (new.id, new.person_name, new.title, new.paper, new.fault, new.note);
  end;
  create trigger prints_text_delete after delete on prints begin
    insert into prints_text (prints_text, rowid, person_name, title, paper, fault, note)
    values ('delete', old.id, old.person_name, old.title, old.paper, old.fault, old.note);
  end;
  create trigger prints_text_update after update on prints begin
    insert into prints_text (prints_text, rowid, person_name, title, paper, fault, note)
    values ('delete', old.id, old.person_name, old.title, old.paper, old.fault, old.note);
    insert into prints_text (rowid, person_name, title, paper, fault, note)
    values (new.id, new.person_name, new.title, new.paper, new.fault, new.note);
  end;
  `;
