import type { Db } from "./open.ts";

/* A store that holds the classes of some servers only. */

export interface ShardStore {
  /** Over how many processes the classes are spread; 1 where they are all here. */
  count(): number;
  /** Drops every class `isOwn` denies, with all that belongs to it, and keeps the number. One transaction. */
  dropOthers(isOwn: (classKey: string) => boolean, count: number): void;
  /** A copy of the whole store, as it is now, in a new file. */
  copyTo(path: string): void;
}

export function createShardStore(db: Db): ShardStore {
  const read = db.prepare<[], { value: string }>("select value from settings where name = 'shards'");
  const write = db.prepare<[string]>(
    "insert into settings (name, value) values ('shards', ?) on conflict do update set value = excluded.value",
  );
  const classes = db.prepare<[], { id: number; key: string }>("select id, key from classes");
  const drop = db.prepare<[number]>("delete from classes where id = ?");
  const copy = db.prepare<[string]>("vacuum into ?");
  const dropOthers = db.transaction((isOwn: (classKey: string) => boolean, count: number) => {
    // The feed's index goes by blocks: many classes are dropped by one of their own, for as long as it takes.
    db.exec("create index messages_of_class on messages (class_id)");
    for (const { id, key } of classes.all()) if (!isOwn(key)) drop.run(id);
    db.exec("drop index messages_of_class");
    write.run(String(count));
  });
  return {
    count: () => Number(read.get()?.value ?? 1),
    dropOthers: (isOwn, count) => dropOthers.immediate(isOwn, count),
    copyTo: (path) => void copy.run(path),
  };
}
