import type { Db } from "./open.ts";

export interface CallStore {
  /** True the first time only: a call a chat delivers twice does its work once. */
  claim(callId: string, now: number): boolean;
  forgetBefore(at: number): void;
}

export function createCallStore(db: Db): CallStore {
  const insert = db.prepare<[string, number]>(
    "insert into calls (call_id, at) values (?, ?) on conflict do nothing",
  );
  const drop = db.prepare<[number]>("delete from calls where at < ?");
  return {
    claim: (callId, now) => insert.run(callId, now).changes === 1,
    forgetBefore: (at) => void drop.run(at),
  };
}
