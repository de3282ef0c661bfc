export const PUSH_TABLES = `
  -- Phones that asked to be called while their page is closed: gone with the device's session, and with the person.
  create table push_subscriptions (
    id integer primary key autoincrement,
    class_id integer not null,
    person_id text not null,
    token_hash text not null references room_sessions (token_hash) on delete cascade,
    endpoint text not null unique,
    p256dh text not null,
    auth text not null,
    created_at integer not null,
    foreign key (class_id, person_id) references members (class_id, person_id) on delete cascade
  ) strict;
  create index push_subscriptions_person on push_subscriptions (class_id, person_id);
  create index push_subscriptions_token on push_subscriptions (token_hash);
  -- Calls that are still to be pushed: owed in the transaction that says them in the room, and gone once a push service has them.
  create table push_owed (
    id integer primary key autoincrement,
    subscription_id integer not null references push_subscriptions (id) on delete cascade,
    key text not null,
    topic text not null,
    body text not null check (json_valid(body)),
    due_at integer not null,
    useful_until integer not null,
    next_at integer not null,
    tries integer not null default 0,
    unique (subscription_id, key)
  ) strict;
  create index push_owed_next on push_owed (next_at);
  `;
