/*
 * Planted bugs: each is one of the ways in which timers have failed elsewhere, put into this program on purpose. A test
 * that does not fail on one of them is no test of it. `npm run mutate` plants them one by one in a copy.
 */

export interface Mutant {
  readonly name: string;
  readonly file: string;
  /** Found exactly once in the file. */
  readonly find: string;
  readonly replace: string;
  /** The file that must fail, and a part of the name of a test in it that must. */
  readonly caughtBy: { readonly file: string; readonly test: string };
}

const SIMULATION = { file: "tests/simulation/simulation.test.ts", test: "no cue is lost" };
const MODEL = { file: "tests/simulation/model.test.ts", test: "any order of commands" };
const FOUND = "tests/simulation/found.test.ts";
const CLOCK = "tests/simulation/clock.test.ts";
const SEND = "tests/bot/chat/discord/send.test.ts";
const GUARD = "tests/bot/disk/faults-guard.test.ts";
const BACKUP = "tests/bot/disk/backup.test.ts";
const POWER = { file: "tests/power-loss/power-loss.test.ts", test: "no acknowledged commit is lost" };

export const MUTANTS: readonly Mutant[] = [
  {
    name: "each agitation is reckoned from the one before as it came, so that they drift",
    file: "commands/run/cues.ts",
    find: "atMs += cycleMs",
    replace: "atMs += cycleMs + 90",
    caughtBy: MODEL,
  },
  {
    name: "a timer that fires early is believed: no second look at the clock",
    file: "store/due.ts",
    find: "decide_at <= @most and (decide_at <= @now",
    replace: "decide_at <= @most + 1500 and (decide_at <= @now + 1500",
    caughtBy: SIMULATION,
  },
  {
    name: "what belongs together is not one transaction",
    file: "store/index.ts",
    find: "=> transaction.immediate(work) as T,",
    replace: "=> work(),",
    caughtBy: SIMULATION,
  },
  {
    name: "a message counts as said before the chat has taken it",
    file: "store/outbox.ts",
    find: "`update outbox set state = 'sending', tries",
    replace: "`update outbox set state = 'sent', tries",
    caughtBy: SIMULATION,
  },
  {
    name: "a message is recorded as decided and not owed",
    file: "bot/cues/tick.ts",
    find: "return settled.said.flatMap(",
    replace: "return settled.said.slice(1).flatMap(",
    caughtBy: MODEL,
  },
  {
    name: "each try has a key of its own",
    file: "bot/chat/discord/send.ts",
    find: "if (plainNonce.length <= 25) return plainNonce;",
    replace: "if (plainNonce.length <= 25) return `${Math.random()}`.slice(0, 25);",
    caughtBy: { file: SEND, test: "" },
  },
  {
    name: "a key is longer than chats take",
    file: "bot/chat/discord/send.ts",
    find: "if (plainNonce.length <= 25) return plainNonce;",
    replace: "if (plainNonce.length <= 60) return plainNonce;",
    caughtBy: { file: SEND, test: "" },
  },
  {
    name: "the chat is not asked to recognise a repeat",
    file: "bot/chat/discord/send.ts",
    find: "enforce_nonce: true",
    replace: "enforce_nonce: false",
    caughtBy: { file: SEND, test: "" },
  },
  {
    name: "the store does not wait for the disk",
    file: "store/open.ts",
    find: 'db.pragma("synchronous = FULL");',
    replace: 'db.pragma("synchronous = NORMAL");',
    caughtBy: POWER,
  },
  {
    name: "all calls missed while the bot was away come in a burst",
    file: "commands/run/settle.ts",
    find: "const spoken = end ? [end] : onTime.length > 0 ? onTime : [newest];",
    replace: "const spoken = ordered;",
    caughtBy: { file: "tests/commands/run/cues.test.ts", test: "" },
  },
  {
    name: "a sound file that finds no gap goes on beyond ten minutes",
    file: "bot/chat/room-page/track.ts",
    find: "return cut ?? fromMs + LONGEST_MS;",
    replace: "return cut ?? end;",
    caughtBy: { file: "tests/bot/chat/room-page/track.test.ts", test: "no gap at all" },
  },
  {
    name: "a sound file is cut in a tone where no wide gap is",
    file: "bot/chat/room-page/track.ts",
    find: "const CLEAR_MS = [2000, 700, 100] as const;",
    replace: "const CLEAR_MS = [2000] as const;",
    caughtBy: { file: "tests/bot/chat/room-page/track.test.ts", test: "in a shorter gap" },
  },
  {
    name: "a late call does not say so",
    file: "bot/deliver/compose.ts",
    find: "return `${body.text}\\n${lateWords({ lateMs, dueAtMs: dueAt, missed, kind, leftMs })}`;",
    replace: "return body.text;",
    caughtBy: SIMULATION,
  },
  {
    name: "calls that were missed are not spoken of by one on time",
    file: "bot/deliver/compose.ts",
    find: "missed > 0 ? [missedWords(missed)] : []",
    replace: "missed < 0 ? [missedWords(missed)] : []",
    caughtBy: { file: FOUND, test: "calls that were missed" },
  },
  {
    name: "a run that a portion cuts says each of its late calls",
    file: "bot/cues/tick.ts",
    find: "return isMore ? stores",
    replace: "return isMore && schedule.length === 0 ? stores",
    caughtBy: { file: "tests/bot/cues/tick.test.ts", test: "of a run that a portion cuts" },
  },
  {
    name: "a stopped run goes on calling",
    file: "store/cues.ts",
    find: "\"update cues set state = 'dropped', settled_at = ? where run_id = ? and state = 'pending'\"",
    replace: "\"update cues set state = 'dropped', settled_at = ? where run_id = -? and state = 'pending'\"",
    caughtBy: MODEL,
  },
  {
    name: "what was owed for a step that is over is said all the same",
    file: "store/outbox.ts",
    find: "where run_id = @runId and state = 'owed'",
    replace: "where run_id = -@runId and state = 'owed'",
    caughtBy: SIMULATION,
  },
  {
    name: "a call of a bath that is over is tried again",
    file: "store/outbox.ts",
    find: "where run_id = @runId and state = 'sending'\"",
    replace: "where run_id = -@runId and state = 'sending'\"",
    caughtBy: { file: FOUND, test: "a pour-out whose answer was lost" },
  },
  {
    name: "what was being said when the process died waits for its time-out",
    file: "store/outbox.ts",
    find: "\"update outbox set next_at = ? where state = 'sending'\"",
    replace: "\"update outbox set next_at = next_at where state = 'sending' and ? < 0\"",
    caughtBy: { file: FOUND, test: "at once after a restart" },
  },
  {
    name: "a clock that is set does not move the cues",
    file: "store/time.ts",
    find: "    cues.run({ by: byMs });\n",
    replace: "",
    caughtBy: { file: CLOCK, test: "every call comes at its moment" },
  },
  {
    name: "a clock that is set moves the cues again after a restart",
    file: "store/time.ts",
    find: "    outbox.run({ by: byMs });\n    saveAnchor(anchor);",
    replace: "    outbox.run({ by: byMs });\n    void anchor;",
    caughtBy: { file: CLOCK, test: "killed over and over" },
  },
  {
    name: "time asleep counts as a clock that was set",
    file: "bot/process/clock.ts",
    find: "return apartMs - (Math.abs(sleptMs) < STEP_MS ? 0 : sleptMs);",
    replace: "return apartMs;",
    caughtBy: { file: CLOCK, test: "sleeps for 42 minutes" },
  },
  {
    name: "nothing looks beside the one timer",
    file: "bot/cues/beat.ts",
    find: "second = setInterval(wake, BEAT_MS);",
    replace: "second = undefined;",
    caughtBy: { file: FOUND, test: "what another process writes" },
  },
  {
    name: "a press that the chat delivers twice works twice",
    file: "bot/calls/dispatch.ts",
    find: "!stores.calls.claim(call.callId, now)",
    replace: "!stores.calls.claim(`${call.callId}${now}${process.hrtime.bigint()}`, now)",
    caughtBy: MODEL,
  },
  {
    name: "a button of an earlier step still works",
    file: "commands/run/machine.ts",
    find: "if (event.step !== null && event.step !== phase.step)\n",
    replace: "if (event.step !== null && event.step > phase.step)\n",
    caughtBy: { file: FOUND, test: "a button of a bath that is over" },
  },
  {
    name: "an emptied store is replaced by a new one",
    file: "bot/disk/guard.ts",
    find: "if (!(marker?.held ?? backups > 0)) return;",
    replace: 'if (!(marker?.held ?? backups > 0) || path !== "") return;',
    caughtBy: { file: GUARD, test: "is not silently replaced" },
  },
  {
    name: "a backup is a copy of the file without its log",
    file: "bot/disk/backup.ts",
    find: "copyBesideCalls(storePath, part, createRest());",
    replace:
      'createRest(); (process as unknown as { getBuiltinModule(name: string): { copyFileSync(a: string, b: string): void } }).getBuiltinModule("node:fs").copyFileSync(storePath, part);',
    caughtBy: { file: BACKUP, test: "is one whole file" },
  },
  {
    name: "a backup is not opened before it is relied on",
    file: "bot/disk/restore-put.ts",
    find: "const holding = inspectStore(backup);",
    replace:
      "const holding = { classes: [], runs: 0, openRuns: 0, rolls: 0, batches: 0, newestAt: 0 } as ReturnType<typeof inspectStore>;",
    caughtBy: { file: BACKUP, test: "damaged, a newer or no backup" },
  },
];
