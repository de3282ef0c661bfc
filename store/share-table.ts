export const SHARES_TABLE = `
  -- How much people and classes have written on a day; person_id '': the class. Of the newest day only.
  create table shares (
    day integer not null,
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    kind text not null check (kind in ('words', 'photos')),
    bytes integer not null,
    primary key (class_id, person_id, kind)
  ) strict, without rowid;
  `;
