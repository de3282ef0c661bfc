import type { Db } from "./open.ts";

/* The thread in which a run is called, in chats that have them. */

/** A thread that is wanted and not there yet, as far as is known. */
export interface WantedThread {
  readonly runId: number;
  readonly channelRef: string;
  /** When the chat was first asked for it: a process that ended since does not know what came of it. null: never. */
  readonly askedAt: number | null;
}

/** A thread that is there. */
export interface OpenThread {
  readonly runId: number;
  readonly ref: string;
}

export interface RunThreadStore {
  /** A run wants a thread in this channel; in the transaction that begins it. */
  want(runId: number, channelRef: string): void;
  /** Of runs that are not over, oldest first. */
  wanted(): WantedThread[];
  wantedOf(runId: number): WantedThread | undefined;
  /** Before the chat is asked. */
  saveAsked(runId: number, now: number): void;
  saveOpened(runId: number, ref: string): void;
  /** Where a run's calls go; null: to its person, as they do without a thread. */
  refOf(runId: number): string | null;
  /** It can't be had, or be written in, any more. */
  lose(runId: number): void;
  /** Threads whose run has been over since before this instant. */
  over(before: number): OpenThread[];
  saveClosed(runId: number): void;
}

export function createRunThreadStore(db: Db): RunThreadStore {
  const want = db.prepare<[number, string]>(
    "insert into run_threads (run_id, channel_ref) values (?, ?) on conflict do nothing",
  );
  const columns = `run_id as "runId", channel_ref as "channelRef", asked_at as "askedAt"`;
  const wanted = db.prepare<[], WantedThread>(
    `select ${columns} from run_threads join runs on runs.id = run_id
     where state = 'wanted' and phase_kind in ('waiting', 'running') order by run_id`,
  );
  const wantedOf = db.prepare<[number], WantedThread>(
    `select ${columns} from run_threads where run_id = ? and state = 'wanted'`,
  );
  const asked = db.prepare<[number, number]>("update run_threads set asked_at = ? where run_id = ?");
  const opened = db.prepare<[string, number]>(
    "update run_threads set state = 'open', ref = ? where run_id = ? and state = 'wanted'",
  );
  const openOf = db.prepare<[number], { ref: string }>(
    "select ref from run_threads where run_id = ? and state = 'open'",
  );
  const turn = db.prepare<["lost" | "closed", number]>("update run_threads set state = ? where run_id = ?");
  const over = db.prepare<[number], OpenThread>(
    `select run_id as "runId", ref from run_threads join runs on runs.id = run_id
     where state = 'open' and phase_kind in ('finished', 'stopped') and phase ->> '$.atMs' <= ? order by run_id`,
  );
  return {
    want: (runId, channelRef) => void want.run(runId, channelRef),
    wanted: () => wanted.all(),
    wantedOf: (runId) => wantedOf.get(runId),
    saveAsked: (runId, now) => void asked.run(now, runId),
    saveOpened: (runId, ref) => void opened.run(ref, runId),
    refOf: (runId) => openOf.get(runId)?.ref ?? null,
    lose: (runId) => void turn.run("lost", runId),
    over: (before) => over.all(before),
    saveClosed: (runId) => void turn.run("closed", runId),
  };
}
