import { z } from "zod";
import { habitsSchema, type Habits, type SchoolClass } from "./shapes/school.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";

const rowSchema = z
  .object({
    id: z.int(),
    key: z.string(),
    name: z.string(),
    zone: z.string(),
    demo: z.int(),
    habits: json(z.unknown()),
  })
  .transform(({ demo, habits, ...row }): SchoolClass => ({
    ...row,
    habits: readHabits(habits),
    demo: demo === 1,
  }));

/** A habit that can't be read stands at its default: the others go on. */
function readHabits(kept: unknown): Habits {
  const whole = habitsSchema.safeParse(kept);
  if (whole.success) return whole.data;
  const each = Object.entries(habitsSchema.shape).flatMap(([name, shape]) => {
    const value = (kept as Readonly<Record<string, unknown>> | null)?.[name];
    return value !== undefined && shape.safeParse(value).success ? [[name, value]] : [];
  });
  return habitsSchema.parse(Object.fromEntries(each));
}

/** The class's key, which begins with its chat, and the channel in it that speaks to all of it. */
export interface Place {
  readonly key: string;
  readonly channelRef: string | null;
}

export interface ClassStore {
  /** Finds the class of a place, or makes it with the house's habits. */
  ensure(key: string, name: string, now: number, zone?: string): SchoolClass;
  add(key: string, name: string, zone: string, demo: boolean, now: number): SchoolClass;
  find(key: string): SchoolClass | undefined;
  get(id: number): SchoolClass | undefined;
  /** Where a class is spoken to, without its habits: for what is asked with every call. */
  addressOf(id: number): Place | undefined;
  idOf(key: string): number | undefined;
  list(): SchoolClass[];
  rename(id: number, name: string, zone: string): void;
  setHabits(id: number, habits: Habits): void;
  /** The channel that speaks to the whole class, and to whoever can't be reached alone. */
  channelRef(id: number): string | null;
  setChannelRef(id: number, channelRef: string): void;
}

export function createClassStore(db: Db): ClassStore {
  const byKey = db.prepare<[string]>("select * from classes where key = ?");
  const byId = db.prepare<[number]>("select * from classes where id = ?");
  const all = db.prepare("select * from classes order by id");
  const insert = db.prepare<[string, string, string, number, string, number]>(
    "insert into classes (key, name, zone, demo, habits, created_at) values (?, ?, ?, ?, ?, ?) on conflict (key) do nothing",
  );
  const update = db.prepare<[string, string, number]>("update classes set name = ?, zone = ? where id = ?");
  const updateHabits = db.prepare<[string, number]>("update classes set habits = ? where id = ?");
  const place = db.prepare<[number], { key: string; channel_ref: string | null }>(
    "select key, channel_ref from classes where id = ?",
  );
  const idByKey = db.prepare<[string], { id: number }>("select id from classes where key = ?");
  const updateChannel = db.prepare<[string, number]>("update classes set channel_ref = ? where id = ?");

  const find = (key: string): SchoolClass | undefined => rowSchema.optional().parse(byKey.get(key));
  const add = (key: string, name: string, zone: string, demo: boolean, now: number): SchoolClass => {
    insert.run(key, name.slice(0, 100), zone, demo ? 1 : 0, "{}", now);
    return rowSchema.parse(byKey.get(key));
  };
  return {
    find,
    add,
    ensure: (key, name, now, zone = "UTC") => find(key) ?? add(key, name, zone, false, now),
    get: (id) => rowSchema.optional().parse(byId.get(id)),
    list: () => z.array(rowSchema).parse(all.all()),
    rename: (id, name, zone) => void update.run(name, zone, id),
    setHabits: (id, habits) => void updateHabits.run(JSON.stringify(habitsSchema.parse(habits)), id),
    addressOf(id) {
      const row = place.get(id);
      return row && { key: row.key, channelRef: row.channel_ref };
    },
    idOf: (key) => idByKey.get(key)?.id,
    channelRef: (id) => place.get(id)?.channel_ref ?? null,
    setChannelRef: (id, channelRef) => void updateChannel.run(channelRef, id),
  };
}
