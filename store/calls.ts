import type { Db } from "./open.ts";

export interface CallStore {
  /** True the first time only: a call a chat delivers twice does its work once. */
  claim(callId: string, now: number): boolean;
}

export function createCallStore(db: Db): CallStore {
  const insert = db.prepare<[string, number]>(
    "insert into calls (call_id, at) values (?, ?) on conflict do nothing",
  );
  return {
    claim: (callId, now) => insert.run(callId, now).changes === 1,
  };
}
