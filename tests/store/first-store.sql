pragma user_version = 4;
CREATE TABLE classes (
    id integer primary key autoincrement,
    key text not null unique,
    name text not null,
    zone text not null,
    demo integer not null default 0 check (demo in (0, 1)),
    habits text not null check (json_valid(habits)),
    channel_ref text,
    created_at integer not null
  ) strict;
CREATE TABLE members (
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    name text not null,
    role text not null check (role in ('student', 'aide', 'teacher')),
    joined_at integer not null,
    seen_at integer not null,
    primary key (class_id, person_id)
  ) strict, without rowid;
CREATE TABLE direct_channels (
    person_id text primary key,
    channel_ref text,
    refused_until integer not null default 0
  ) strict, without rowid;
CREATE TABLE sheets (
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
CREATE TABLE tanks (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
CREATE TABLE plans (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    person_id text not null,
    body text not null check (json_valid(body)),
    made_at integer not null,
    unique (class_id, number)
  ) strict;
CREATE TABLE runs (
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
CREATE TABLE cues (
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
CREATE TABLE outbox (
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
CREATE TABLE rolls (
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
    body text not null check (json_valid(body)), marks text generated always as (
    'k' || class_id || ' t' || coalesce(tank, 0) || ' r' || coalesce(rating, 0) || ' o' || outcome
    || ' m' || strftime('%Y%m', ended_at / 1000, 'unixepoch')
    || ' f' || hex(lower(film)) || ' d' || hex(lower(developer)) || ' n' || hex(lower(person_name))
    || case when person_id is null then '' else ' p' || hex(person_id) end
    || case when fault = '' then '' else ' fault' end
    || case when late_cues > 0 or coalesce(body ->> 'missedCues', 0) > 0 then ' late' else '' end
  ) virtual,
    unique (class_id, number)
  ) strict;
CREATE TABLE messages (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    person_id text,
    author_id text,
    key text unique,
    at integer not null,
    body text not null check (json_valid(body))
  ) strict;
CREATE TABLE room_sessions (
    token_hash text primary key,
    class_id integer not null references classes (id) on delete cascade,
    person_id text not null,
    device text not null,
    created_at integer not null,
    seen_at integer not null
  ) strict, without rowid;
CREATE TABLE room_secrets (
    class_id integer not null references classes (id) on delete cascade,
    kind text not null check (kind in ('join', 'teacher', 'aide')),
    value text not null,
    changed_at integer not null,
    primary key (class_id, kind)
  ) strict, without rowid;
CREATE TABLE calls (
    call_id text primary key,
    at integer not null
  ) strict, without rowid;
CREATE TABLE settings (
    name text primary key,
    value text not null
  ) strict, without rowid;
CREATE TABLE owner (
    only_row integer primary key check (only_row = 1),
    pid integer not null,
    address text not null,
    started_at integer not null
  ) strict;
CREATE TABLE batches (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    kind text not null check (kind in ('developer', 'stop', 'fixer', 'wash-aid', 'wetting-agent')),
    product text not null collate nocase,
    mixed_at integer not null,
    body text not null check (json_valid(body)),
    unique (class_id, number)
  ) strict;
CREATE TABLE ledger (
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
CREATE TABLE batch_marks (
    batch_id integer not null references batches (id) on delete cascade,
    mark text not null,
    arm integer not null,
    at integer not null,
    primary key (batch_id, mark, arm)
  ) strict, without rowid;
CREATE TABLE shelf (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    product text not null collate nocase,
    at integer not null,
    person_id text,
    person_name text not null,
    change_ml integer not null,
    body text not null check (json_valid(body))
  ) strict;
CREATE TABLE handovers (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    at integer not null,
    person_id text,
    person_name text not null,
    ml integer not null,
    body text not null check (json_valid(body))
  ) strict;
CREATE TABLE digests (
    class_id integer primary key references classes (id) on delete cascade,
    checked_at integer not null
  ) strict, without rowid;
CREATE TABLE boards (
    class_id integer primary key references classes (id) on delete cascade,
    channel_ref text not null,
    ref text,
    shown text not null default '',
    shown_at integer not null default 0
  ) strict, without rowid;
CREATE TABLE says (
    id integer primary key autoincrement,
    class_id integer not null references classes (id) on delete cascade,
    number integer not null,
    audience text not null,
    body text not null,
    said_at integer not null,
    unique (class_id, number)
  ) strict;
CREATE TABLE erasures (
    id integer primary key autoincrement,
    kind text not null check (kind in ('person', 'class')),
    class_id integer,
    asked_at integer not null,
    due_at integer not null,
    done_at integer,
    swept_at integer
  ) strict;
CREATE TABLE roll_photos (
    roll_id integer primary key references rolls (id) on delete cascade,
    media_type text not null check (media_type in ('image/jpeg', 'image/png')),
    bytes blob not null,
    added_at integer not null
  ) strict;
CREATE VIRTUAL TABLE rolls_text using fts5 (
    person_name, film, developer, dilution, batches, fault, note, marks,
    content = 'rolls', content_rowid = 'id', tokenize = "unicode61 remove_diacritics 2",
    prefix = '2 3 4 5 6 7 8 9 10 11 12', detail = column
  );
CREATE TABLE roll_values (
    class_id integer not null references classes (id) on delete cascade,
    kind text not null check (kind in ('film', 'developer', 'person', 'fault')),
    value text not null,
    uses integer not null,
    primary key (class_id, kind, value)
  ) strict, without rowid;
insert into classes (id, key, name, zone, demo, habits, channel_ref, created_at) values (1, 'room:demo', 'Harbour workshop, evening class (invented demo)', 'UTC', 1, '{}', null, 1768500000000);
insert into members (class_id, person_id, name, role, joined_at, seen_at) values (1, 'room:mina', 'Mina', 'student', 1768500000000, 1768500005000);
insert into sheets (id, class_id, film, developer, dilution, body, added_by, added_at) values (1, 1, 'Lantern 400', 'House MQ', '1+1', '{"film":"Lantern 400","developer":"House MQ","dilution":{"concentrateParts":1,"waterParts":1},"boxSpeed":400,"points":[{"tenthsC":180,"exposureIndex":400,"seconds":660,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":400,"seconds":540,"source":"invented for the demo, not a real time"},{"tenthsC":240,"exposureIndex":400,"seconds":390,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":800,"seconds":690,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":1600,"seconds":930,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":false,"source":"invented for the demo, not a real time"}', null, 1768500000000);
insert into sheets (id, class_id, film, developer, dilution, body, added_by, added_at) values (2, 1, 'Lantern 400', 'House MQ', 'stock', '{"film":"Lantern 400","developer":"House MQ","dilution":{"concentrateParts":1,"waterParts":0},"boxSpeed":400,"points":[{"tenthsC":200,"exposureIndex":400,"seconds":420,"source":"invented for the demo, not a real time"},{"tenthsC":240,"exposureIndex":400,"seconds":300,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":false,"source":"invented for the demo, not a real time"}', null, 1768500000000);
insert into sheets (id, class_id, film, developer, dilution, body, added_by, added_at) values (3, 1, 'Quay 100', 'House MQ', '1+1', '{"film":"Quay 100","developer":"House MQ","dilution":{"concentrateParts":1,"waterParts":1},"boxSpeed":100,"points":[{"tenthsC":200,"exposureIndex":100,"seconds":600,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":true,"source":"invented for the demo, not a real time"}', null, 1768500000000);
insert into sheets (id, class_id, film, developer, dilution, body, added_by, added_at) values (4, 1, 'Quay 100', 'Pier Fine', '1+9', '{"film":"Quay 100","developer":"Pier Fine","dilution":{"concentrateParts":1,"waterParts":9},"boxSpeed":100,"points":[{"tenthsC":200,"exposureIndex":100,"seconds":480,"source":"invented for the demo, not a real time"},{"tenthsC":240,"exposureIndex":100,"seconds":345,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":200,"seconds":570,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":true,"source":"invented for the demo, not a real time"}', null, 1768500000000);
insert into tanks (id, class_id, number, body) values (1, 1, 1, '{"number":1,"reels":1,"volumeMl":300,"format":"any","condition":null,"timeConstantSeconds":null}');
insert into tanks (id, class_id, number, body) values (2, 1, 2, '{"number":2,"reels":1,"volumeMl":300,"format":"any","condition":null,"timeConstantSeconds":null}');
insert into tanks (id, class_id, number, body) values (3, 1, 3, '{"number":3,"reels":2,"volumeMl":500,"format":"any","condition":null,"timeConstantSeconds":null}');
insert into tanks (id, class_id, number, body) values (4, 1, 4, '{"number":4,"reels":2,"volumeMl":500,"format":"any","condition":null,"timeConstantSeconds":null}');
insert into tanks (id, class_id, number, body) values (5, 1, 5, '{"number":5,"reels":5,"volumeMl":1200,"format":"any","condition":null,"timeConstantSeconds":null}');
insert into plans (id, class_id, number, person_id, body, made_at) values (1, 1, 1, 'room:mina', '{"sheet":{"film":"Lantern 400","developer":"House MQ","dilution":{"concentrateParts":1,"waterParts":1},"boxSpeed":400,"points":[{"tenthsC":180,"exposureIndex":400,"seconds":660,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":400,"seconds":540,"source":"invented for the demo, not a real time"},{"tenthsC":240,"exposureIndex":400,"seconds":390,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":800,"seconds":690,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":1600,"seconds":930,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":false,"source":"invented for the demo, not a real time"},"exposureIndex":400,"tenthsC":200,"rolls":1,"format":"135","frames":36,"tank":1,"volumeMl":300,"steps":[{"kind":"develop","ordinal":0,"seconds":540,"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"pourOutSeconds":10,"ml":300,"concentrateMl":150,"batch":null,"basis":[{"kind":"point","source":"invented for the demo, not a real time"}]},{"kind":"rinse","ordinal":1,"seconds":30,"agitation":{"initialSeconds":0,"cycleSeconds":0,"burstSeconds":0,"manner":"continuous","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"two fills of water in place of a stop bath"},{"kind":"rule","rule":"running water halts development in about 30 s","source":"Anchell, The Darkroom Cookbook, 3rd ed."}]},{"kind":"rinse","ordinal":2,"seconds":30,"agitation":{"initialSeconds":0,"cycleSeconds":0,"burstSeconds":0,"manner":"continuous","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"two fills of water in place of a stop bath"},{"kind":"rule","rule":"running water halts development in about 30 s","source":"Anchell, The Darkroom Cookbook, 3rd ed."}]},{"kind":"fix","ordinal":0,"seconds":300,"agitation":{"initialSeconds":15,"cycleSeconds":30,"burstSeconds":5,"manner":"inversion","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"the house minimum of fixing"}]},{"kind":"wash","ordinal":0,"seconds":180,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"the house minimum of washing"}]},{"kind":"wetting-agent","ordinal":0,"seconds":60,"agitation":null,"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"wetting agent, the class''s time"}]},{"kind":"dry","ordinal":0,"seconds":1200,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"drying, the class''s time"}]},{"kind":"cut","ordinal":0,"seconds":null,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"strips that fit the class''s sleeves: common practice, no source"}]}],"cautions":[{"code":"WARN_WASH_SHORT","detail":{"seconds":180,"handbookSeconds":1200,"hypoLeftPercent":12.5}},{"code":"NOTE_CHEMICALS","detail":{}}],"strips":[5,5,5,5,5,5,4,2],"sheetSeconds":540,"spread":null,"drift":null,"alsoFilms":[]}', 1768500000000);
insert into runs (id, class_id, number, person_id, body, phase, started_at) values (1, 1, 1, 'room:mina', '{"plan":{"sheet":{"film":"Lantern 400","developer":"House MQ","dilution":{"concentrateParts":1,"waterParts":1},"boxSpeed":400,"points":[{"tenthsC":180,"exposureIndex":400,"seconds":660,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":400,"seconds":540,"source":"invented for the demo, not a real time"},{"tenthsC":240,"exposureIndex":400,"seconds":390,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":800,"seconds":690,"source":"invented for the demo, not a real time"},{"tenthsC":200,"exposureIndex":1600,"seconds":930,"source":"invented for the demo, not a real time"}],"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"factorPer10C":null,"minTenthsC":160,"maxTenthsC":270,"minConcentrateMl":null,"tabularGrain":false,"source":"invented for the demo, not a real time"},"exposureIndex":400,"tenthsC":200,"rolls":1,"format":"135","frames":36,"tank":1,"volumeMl":300,"steps":[{"kind":"develop","ordinal":0,"seconds":540,"agitation":{"initialSeconds":30,"cycleSeconds":60,"burstSeconds":5,"manner":"inversion","taps":2},"pourOutSeconds":10,"ml":300,"concentrateMl":150,"batch":null,"basis":[{"kind":"point","source":"invented for the demo, not a real time"}]},{"kind":"rinse","ordinal":1,"seconds":30,"agitation":{"initialSeconds":0,"cycleSeconds":0,"burstSeconds":0,"manner":"continuous","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"two fills of water in place of a stop bath"},{"kind":"rule","rule":"running water halts development in about 30 s","source":"Anchell, The Darkroom Cookbook, 3rd ed."}]},{"kind":"rinse","ordinal":2,"seconds":30,"agitation":{"initialSeconds":0,"cycleSeconds":0,"burstSeconds":0,"manner":"continuous","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"two fills of water in place of a stop bath"},{"kind":"rule","rule":"running water halts development in about 30 s","source":"Anchell, The Darkroom Cookbook, 3rd ed."}]},{"kind":"fix","ordinal":0,"seconds":300,"agitation":{"initialSeconds":15,"cycleSeconds":30,"burstSeconds":5,"manner":"inversion","taps":0},"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"the house minimum of fixing"}]},{"kind":"wash","ordinal":0,"seconds":180,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"the house minimum of washing"}]},{"kind":"wetting-agent","ordinal":0,"seconds":60,"agitation":null,"pourOutSeconds":0,"ml":300,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"wetting agent, the class''s time"}]},{"kind":"dry","ordinal":0,"seconds":1200,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"drying, the class''s time"}]},{"kind":"cut","ordinal":0,"seconds":null,"agitation":null,"pourOutSeconds":0,"ml":null,"concentrateMl":null,"batch":null,"basis":[{"kind":"house","rule":"strips that fit the class''s sleeves: common practice, no source"}]}],"cautions":[{"code":"WARN_WASH_SHORT","detail":{"seconds":180,"handbookSeconds":1200,"hypoLeftPercent":12.5}},{"code":"NOTE_CHEMICALS","detail":{}}],"strips":[5,5,5,5,5,5,4,2],"sheetSeconds":540,"spread":null,"drift":null,"alsoFilms":[]},"warnSeconds":15,"schedule":1,"marks":[{"step":0,"plannedSeconds":540,"startedAtMs":1768500005000,"endedAtMs":null,"tenthsC":null}],"deviations":[]}', '{"kind":"running","step":0,"startedAtMs":1768500005000,"endsAtMs":1768500545000}', 1768500000000);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (1, 1, '1.0f0', 'agitate-first', 0, 0, 1768500005000, 1768500005000, 1768500005000, 'said', 1768500006000);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (2, 1, '1.0a1', 'agitate', 0, 1, 1768500065000, 1768500065000, 1768500005000, 'said', 1768500065000);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (3, 1, '1.0a2', 'agitate', 0, 2, 1768500125000, 1768500125000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (4, 1, '1.0a3', 'agitate', 0, 3, 1768500185000, 1768500185000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (5, 1, '1.0a4', 'agitate', 0, 4, 1768500245000, 1768500245000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (6, 1, '1.0a5', 'agitate', 0, 5, 1768500305000, 1768500305000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (7, 1, '1.0a6', 'agitate', 0, 6, 1768500365000, 1768500365000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (8, 1, '1.0a7', 'agitate', 0, 7, 1768500425000, 1768500425000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (9, 1, '1.0a8', 'agitate', 0, 8, 1768500485000, 1768500485000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (10, 1, '1.0g0', 'get-ready', 0, 0, 1768500520000, 1768500520000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (11, 1, '1.0p0', 'pour-out', 0, 0, 1768500535000, 1768500535000, 1768500005000, 'pending', null);
insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at, state, settled_at) values (12, 1, '1.0n0', 'next-bath', 0, 0, 1768500545000, 1768500545000, 1768500005000, 'pending', null);
insert into outbox (id, key, class_id, person_id, run_id, priority, due_at, decided_at, useful_until, body, bundle, state, tries, next_at, first_try_at, sent_at, ref, detail) values (1, '1.1.0f0', 1, 'room:mina', 1, 1, 1768500005000, 1768500006000, 1768500065000, '{"text":"**30 s** agitate: turn the tank over and back, then rap it 2 times. 0:01 of 9:00.","about":"R1, tank 1","actions":[],"mentions":[]}', null, 'sent', 1, 1768500066000, 1768500006000, 1768500006000, '1.1.0f0', null);
insert into outbox (id, key, class_id, person_id, run_id, priority, due_at, decided_at, useful_until, body, bundle, state, tries, next_at, first_try_at, sent_at, ref, detail) values (2, '1.1.0a1', 1, 'room:mina', 1, 1, 1768500065000, 1768500065000, 1768500125000, '{"text":"**5 s** agitate: turn the tank over and back, then rap it 2 times. 1:00 of 9:00.","about":"R1, tank 1","actions":[],"mentions":[]}', null, 'sent', 1, 1768500125000, 1768500065000, 1768500065000, '1.1.0a1', null);
delete from sqlite_sequence;
insert into sqlite_sequence (name, seq) values ('classes', 1);
insert into sqlite_sequence (name, seq) values ('sheets', 4);
insert into sqlite_sequence (name, seq) values ('tanks', 5);
insert into sqlite_sequence (name, seq) values ('plans', 1);
insert into sqlite_sequence (name, seq) values ('runs', 1);
insert into sqlite_sequence (name, seq) values ('cues', 12);
insert into sqlite_sequence (name, seq) values ('outbox', 2);
CREATE INDEX members_person on members (person_id, seen_at);
CREATE UNIQUE INDEX members_name on members (class_id, lower(name));
CREATE INDEX runs_open on runs (class_id, person_id) where phase_kind in ('waiting', 'running');
CREATE INDEX cues_due on cues (decide_at, id) where state = 'pending';
CREATE INDEX cues_run on cues (run_id) where state = 'pending';
CREATE INDEX outbox_owed on outbox (next_at, priority, id) where state in ('owed', 'sending');
CREATE INDEX outbox_run on outbox (run_id);
CREATE INDEX outbox_bundle on outbox (bundle) where bundle is not null;
CREATE INDEX rolls_ended on rolls (class_id, ended_at desc, id desc);
CREATE INDEX rolls_person on rolls (class_id, person_id);
CREATE INDEX messages_feed on messages (class_id, id);
CREATE INDEX calls_at on calls (at);
CREATE TRIGGER batches_stay before delete on batches
  when exists (select 1 from classes where id = old.class_id) begin
    select raise(abort, 'a batch is never deleted');
  end;
CREATE INDEX ledger_batch on ledger (batch_id, id);
CREATE INDEX ledger_run on ledger (run_id);
CREATE TRIGGER ledger_stays before update of id, batch_id, kind, key, at, body on ledger begin
    select raise(abort, 'a line of the ledger is never changed');
  end;
CREATE TRIGGER ledger_lines_stay before delete on ledger
  when exists (select 1 from batches where id = old.batch_id) begin
    select raise(abort, 'a line of the ledger is never deleted');
  end;
CREATE INDEX shelf_class on shelf (class_id, product, id);
CREATE INDEX handovers_class on handovers (class_id, at);
CREATE INDEX erasures_open on erasures (due_at) where swept_at is null;
CREATE TRIGGER rolls_text_insert after insert on rolls begin
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;
CREATE TRIGGER rolls_text_delete after delete on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
  end;
CREATE TRIGGER rolls_text_update after update on rolls begin
    insert into rolls_text (rolls_text, rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values ('delete', old.id, old.person_name, old.film, old.developer, old.dilution, old.batches, old.fault, old.note,
      old.marks);
    insert into rolls_text (rowid, person_name, film, developer, dilution, batches, fault, note, marks)
    values (new.id, new.person_name, new.film, new.developer, new.dilution, new.batches, new.fault, new.note, new.marks);
  end;
CREATE TRIGGER roll_values_insert after insert on rolls begin
    insert into roll_values values (new.class_id, 'film', new.film, 1), (new.class_id, 'developer', new.developer, 1),
      (new.class_id, 'person', new.person_name, 1), (new.class_id, 'fault', new.fault, 1)
      on conflict do update set uses = uses + 1;
    delete from roll_values where class_id = new.class_id and kind = 'fault' and value = '';
  end;
CREATE TRIGGER roll_values_delete after delete on rolls begin
    update roll_values set uses = uses - 1 where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault));
    delete from roll_values where class_id = old.class_id
      and (kind, value) in (values ('film', old.film), ('developer', old.developer), ('person', old.person_name),
        ('fault', old.fault)) and uses <= 0;
  end;
CREATE TRIGGER roll_values_update after update of film, developer, person_name, fault on rolls begin
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
CREATE INDEX rolls_facts on rolls (id, ended_at, outcome, late_cues, rating, fault);
