/** What was put out of the way since it could not be read, and what an older version made so. */
export const SET_ASIDE_TABLE = `
  -- What could not be read and was put out of the way, as it stood. is_told: its teacher has been told why.
  create table set_aside (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    kind text not null,
    row_id integer not null,
    number integer,
    name text,
    person_id text,
    body text not null check (json_valid(body)),
    at integer not null,
    is_told integer not null default 0 check (is_told in (0, 1))
  ) strict;
  create index set_aside_rows on set_aside (class_id, kind, row_id);

  -- Some values were once taken that nothing could read again: a tank of 10 ml, one that cools in a second, a room of 60 °C.
  insert into set_aside (class_id, kind, row_id, number, body, at)
    select class_id, 'tank', id, number, body, unixepoch() * 1000 from tanks
    where body ->> '$.volumeMl' not between 50 and 20000
      or coalesce(body ->> '$.timeConstantSeconds', 60) not between 60 and 36000;
  delete from tanks where body ->> '$.volumeMl' not between 50 and 20000;
  update tanks set body = json_set(body, '$.timeConstantSeconds', null)
    where body ->> '$.timeConstantSeconds' not between 60 and 36000;
  insert into set_aside (class_id, kind, row_id, name, body, at)
    select id, 'habit', id, 'roomTenthsC', json_object('roomTenthsC', habits ->> '$.roomTenthsC'), unixepoch() * 1000
    from classes where habits ->> '$.roomTenthsC' not between 0 and 450;
  update classes set habits = json_remove(habits, '$.roomTenthsC')
    where habits ->> '$.roomTenthsC' not between 0 and 450;
  `;
