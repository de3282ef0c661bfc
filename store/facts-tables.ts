/** The log's index of words made anew: one mark for all that was seen of a roll, one for its day. */
export const FACTS_TABLES = `
  -- What is asked for together is one word: a search goes through the rolls that have all of it, not through a long list for each.
  -- \`s\`, late, fault, stopped (0 or 1 each), rating (0: none), by itself and behind the film's \`f\`; \`x\`, developer, by itself and
  -- behind the film's; \`m\`, year, month, day, which is looked up by its beginning too.
  drop trigger rolls_text_insert;
  drop trigger rolls_text_delete;
  drop trigger rolls_text_update;
  drop table rolls_text;
  alter table rolls drop column marks;
  alter table rolls add column seen text generated always as (
    's' || (late_cues > 0 or coalesce(body ->> 'missedCues', 0) > 0) || (fault <> '') || (outcome = 'stopped') || coalesce(rating, 0)
  ) virtual;
  alter table rolls add column marks text generated always as (
    'k' || class_id || ' t' || coalesce(tank, 0) || ' m' || strftime('%Y%m%d', ended_at / 1000, 'unixepoch')
    || ' f' || hex(lower(film)) || ' x' || hex(lower(developer)) || ' f' || hex(lower(film)) || 'x' || hex(lower(developer))
    || ' ' || seen || ' f' || hex(lower(film)) || seen || ' n' || hex(lower(person_name))
    || case when person_id is null then '' else ' p' || hex(person_id) end
  ) virtual;
  create virtual table rolls_text using fts5 (
    person_name, film, developer, dilution, batches, fault, note, marks,
    content = 'rolls', content_rowid = 'id', tokenize = "unicode61 remove_diacritics 2",
    prefix = '2 3 4 5 6 7 8 9 10 11 12', detail = column
  );
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
  create trigger rolls_text_update after update of class_id, person_id, person_name, film, developer, dilution, tank, batches,
    outcome, ended_at, late_cues, rating, fault, note, body on rolls
  begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;
  `;
