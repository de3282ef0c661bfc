import { z } from "zod";
import type { Roll } from "./shapes/roll.ts";
import { json } from "./json.ts";
import { isOfClass, OLDEST_FIRST } from "./messages-of-class.ts";
import type { Db } from "./open.ts";
import { readable } from "./readable.ts";
import { printRowSchema } from "./prints.ts";
import { type Print, type Strip, stripSchema } from "./shapes/print.ts";
import { rollRowSchema } from "./rolls.ts";

/* Everything the store holds of one person in one class, for that person to see and take along. */

const planRow = z.object({ number: z.int(), made_at: z.int(), body: json(z.looseObject({})) });
const runRow = z.object({
  number: z.int(),
  started_at: z.int(),
  body: json(z.unknown()),
  phase: json(z.unknown()),
});
const stripRow = z.object({ body: json(stripSchema) }).transform(({ body }) => body);
const messageRow = z.object({ at: z.int(), body: json(z.looseObject({ text: z.string().default("") })) });
const lineRow = z.object({ at: z.int(), batch: z.int(), kind: z.string(), body: json(z.unknown()) });

export interface Held {
  readonly plans: z.output<typeof planRow>[];
  readonly runs: z.output<typeof runRow>[];
  readonly rolls: Roll[];
  readonly photos: number;
  readonly prints: Print[];
  /** Their last test strip. */
  readonly strips: Strip[];
  /** What they wrote or were told alone, in the room. */
  readonly messages: z.output<typeof messageRow>[];
  readonly ledger: z.output<typeof lineRow>[];
  /** What was pressed for them at a device that is everybody's. */
  readonly presses: { at: number; device: string; line: string }[];
  /** Devices that are called while their page is closed. */
  readonly pushed: { endpoint: string; created_at: number }[];
  /** Devices signed in to the room. */
  readonly devices: { device: string; created_at: number; seen_at: number }[];
}

export interface MineStore {
  gather(classId: number, personId: string): Held;
}

export function createMineStore(db: Db): MineStore {
  const owned = "where class_id = ? and person_id = ?";
  const plans = db.prepare<[number, string]>(
    `select number, made_at, body from plans ${owned} order by number`,
  );
  const runs = db.prepare<[number, string]>(
    `select number, started_at, body, phase from runs ${owned} order by number`,
  );
  const rolls = db.prepare<[number, string]>(`select * from rolls ${owned} order by number`);
  const photos = db.prepare<[object], { count: number }>(
    `select (select count(*) from roll_photos where roll_id in (select id from rolls where class_id = @classId and person_id = @personId))
       + (select count(*) from print_photos where print_id in (select id from prints where class_id = @classId and person_id = @personId))
       as count`,
  );
  const prints = db.prepare<[number, string]>(`select * from prints ${owned} order by number`);
  const strips = db.prepare<[number, string]>(`select body from strips ${owned}`);
  const messages = db.prepare<[number, string, string]>(
    `select at, body from messages where ${isOfClass("?")} and (person_id = ? or author_id = ?) order by ${OLDEST_FIRST}`,
  );
  const lines = db.prepare<[string, string, number]>(
    `select ledger.at, batches.number as batch, ledger.kind, ledger.body from ledger
     join batches on batches.id = ledger.batch_id
     where (ledger.person_id = ? or ledger.about_id = ?) and batches.class_id = ? order by ledger.id`,
  );
  const devices = db.prepare<[number, string], Held["devices"][number]>(
    `select device, created_at, seen_at from room_sessions ${owned} order by created_at`,
  );
  const pushed = db.prepare<[number, string], Held["pushed"][number]>(
    `select endpoint, created_at from push_subscriptions ${owned} order by id`,
  );
  const presses = db.prepare<[number, string], Held["presses"][number]>(
    `select at, device, line from sink_presses ${owned} order by id`,
  );
  return {
    gather: (classId, personId) => ({
      plans: z.array(planRow).parse(plans.all(classId, personId)),
      runs: z.array(runRow).parse(runs.all(classId, personId)),
      rolls: readable(rollRowSchema, rolls.all(classId, personId)),
      photos: photos.get({ classId, personId })?.count ?? 0,
      prints: readable(printRowSchema, prints.all(classId, personId)),
      strips: readable(stripRow, strips.all(classId, personId)),
      messages: z.array(messageRow).parse(messages.all(classId, personId, personId)),
      ledger: z.array(lineRow).parse(lines.all(personId, personId, classId)),
      pushed: pushed.all(classId, personId),
      presses: presses.all(classId, personId),
      devices: devices.all(classId, personId),
    }),
  };
}
