import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createGateway, type Gateway } from "../support/gateway/gateway.ts";
import type { StoredMessage } from "../support/gateway/ledger.ts";
import { aQuickPlan, pourIn } from "../support/developing.ts";
import { startProcess, type BotProcess } from "../support/process.ts";
import { callsOf } from "./kill-films.ts";
import {
  addTallies,
  demand,
  judgeHeard,
  missedIn,
  type HeardCall,
  type Manner,
  type OwedCall,
} from "./kill-heard.ts";
import { countWaiting } from "../support/waiting.ts";
import { chooseSeed, createRandom, type Random } from "../simulation/random.ts";

/*
 * The built process with its real chat client, killed over and over, against a platform of one's own that keeps a ledger
 * of every message and loses some of its answers. KILL_GATEWAY_SEED draws the same kills again; KILLS makes it long.
 */

const KILLS = Number(process.env["KILLS"] ?? 60);
const RUNS = 12;
/** After every so many kills nobody starts it again for so long: some of what falls due then is late for certain. */
const ABSENT_EACH = 20;
const ABSENT_MS = LATE_FROM_MS + 1500;
/** Half the lives end somewhere in the start; the others so long after the chat was connected. */
const SHORT_LIFE_MS = 900;
const CONNECTED_MS = 600;
const CYCLE_SECONDS = 6;
/** No second agitation: however slow the machine, nothing overtakes the first call. */
const ONCE_SECONDS = 600;
const DEVELOP_SECONDS = Math.max(36, Math.ceil((KILLS * 0.9) / CYCLE_SECONDS) * CYCLE_SECONDS);
/** A message may leave so much before its moment, and says its moment then. */
const MOST_LEAD_MS = 10_000;
const WARN_SECONDS = 1;
const POUR_OUT_SECONDS = 3;
/** It is put into words so soon after it was taken up, and is then in the platform's ledger; a busy machine takes its time. */
const WORDING_MS = 200;
const TRAVEL_MS = 5000;

interface Cue {
  readonly run_id: number;
  readonly key: string;
  readonly due_at: number;
  readonly state: string;
}

interface Row extends Cue {
  readonly first_try_at: number | null;
  readonly tries: number;
  readonly useful_until: number | null;
  readonly sent_at: number | null;
  readonly detail: string | null;
}

/** A person's film as it is called in their own channel on the platform. */
interface Film {
  readonly channelId: string;
  readonly owed: readonly OwedCall[];
  /** How the calls' messages are marked on the platform, in the order of `owed`. */
  readonly marks: readonly string[];
}

type Begin = (count: number, cycleSeconds?: number) => Film[];

async function setUp(): Promise<{ data: string; gateway: Gateway; begin: Begin }> {
  const data = mkdtempSync(join(tmpdir(), "sinkside-kill-gateway-"));
  const gateway = await createGateway();
  return {
    data,
    gateway,
    begin(count, cycleSeconds = CYCLE_SECONDS) {
      const stores = openStores(join(data, "sinkside.db"));
      const films = beginRuns(stores, gateway, count, cycleSeconds);
      stores.close();
      return films;
    },
  };
}

/** Students who have called the bot before, each with a film in the developer. */
function beginRuns(stores: OpenedStores, gateway: Gateway, count: number, cycleSeconds: number): Film[] {
  const now = Date.now();
  const found = stores.classes.ensure(`discord:${gateway.guild.id}`, gateway.guild.name, now);
  stores.classes.setChannelRef(found.id, gateway.channel.id);
  const plan = aQuickPlan(DEVELOP_SECONDS, cycleSeconds, { pourOutSeconds: POUR_OUT_SECONDS });
  return Array.from({ length: count }, (_, index) => {
    const user = gateway.addUser(`Person ${index}`);
    const personId = `discord:${user.id}`;
    stores.members.see(found.id, { id: personId, name: user.name }, "student", now);
    const channelId = gateway.world.openDirect(user.id).id;
    stores.members.saveDirectChannel(personId, channelId);
    const pouredAt = now + index * 310;
    const run = pourIn(
      stores,
      { classId: found.id, personId, plan, warnSeconds: WARN_SECONDS },
      now,
      pouredAt,
    );
    const owed = callsOf({
      pouredAt,
      seconds: DEVELOP_SECONDS,
      cycleSeconds,
      warnSeconds: WARN_SECONDS,
      pourOutSeconds: POUR_OUT_SECONDS,
    });
    return { channelId, owed, marks: marksOf(run.id, owed) };
  });
}

/** The developer is the run's first step. */
function marksOf(runId: number, owed: readonly OwedCall[]): string[] {
  const letters: Readonly<Record<string, string>> = {
    "agitate-first": "f",
    agitate: "a",
    "get-ready": "g",
    "pour-out": "p",
    "next-bath": "n",
  };
  let agitations = 0;
  return owed.map(({ kind }) => {
    const count = kind === "agitate" ? (agitations += 1) : 0;
    return `${runId.toString(36)}.1.0${letters[kind]}${count.toString(36)}`;
  });
}

/** It came to its own end: being cut off would have left the log of the store behind. */
const expectClosed = (data: string): void => expect(existsSync(join(data, "sinkside.db-wal"))).toBe(false);

const start = (data: string, gateway: Gateway): BotProcess =>
  startProcess(data, { DISCORD_TOKEN: gateway.token, DISCORD_API_URL: gateway.api, BACKUP_CRON: "off" });

async function live(gateway: Gateway, random: Random): Promise<void> {
  if (random.chance(0.5)) return wait(random.next() * SHORT_LIFE_MS);
  const before = gateway.socket.state.identifies;
  for (let tries = 0; tries < 60 && gateway.socket.state.identifies === before; tries += 1) await wait(25);
  return wait(random.next() * CONNECTED_MS);
}

/** One request in a dozen comes to grief, most of them after the message was made. */
function spoil(gateway: Gateway, random: Random): void {
  const messages = /^\/channels\/\d+\/messages$/;
  if (random.chance(0.3)) gateway.faults.add("POST", messages, { kind: "cut", after: true });
  if (random.chance(0.2)) gateway.faults.add("POST", messages, { kind: "status", status: 502, after: true });
  if (random.chance(0.1)) gateway.faults.add("POST", messages, { kind: "status", status: 503 });
  if (random.chance(0.1)) gateway.faults.add("POST", messages, { kind: "hang", after: true });
}

test(
  `${KILLS} kills over the chat client: nothing lost, nothing said twice, nothing early, every late one says so`,
  { timeout: 12 * 3600_000 },
  async () => {
    const seed = chooseSeed("KILL_GATEWAY_SEED");
    const random = createRandom(seed);
    const { data, gateway, begin } = await setUp();
    const films = begin(RUNS);
    for (let kill = 0; kill < KILLS; kill += 1) {
      spoil(gateway, random);
      const bot = start(data, gateway);
      await live(gateway, random);
      await bot.kill("SIGKILL");
      if (kill % ABSENT_EACH === ABSENT_EACH - 1) await wait(ABSENT_MS);
    }
    gateway.faults.clear();
    const last = start(data, gateway);
    await last.ready;
    await untilDone(data);
    expect(await last.kill("SIGTERM")).toBe(0);
    expectClosed(data);

    const stores = openStores(join(data, "sinkside.db"));
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    const cues = stores.db
      .prepare("select run_id, key, due_at, state from cues where kind != 'nudge'")
      .all() as Cue[];
    const outbox = stores.db.prepare("select * from outbox where run_id is not null").all() as Row[];
    stores.close();
    await gateway.stop();
    rmSync(data, { recursive: true });

    const messages = gateway.ledger.messages.filter(({ nonce }) => nonce !== undefined);
    const byNonce = new Map(messages.map((message) => [message.nonce, message]));
    expect(byNonce.size, "a call was made twice").toBe(messages.length);
    // The platform's ledger has the last word: what each person got in their channel, held against what the plan owes them.
    const tally = films
      .map((film) => judgeHeard(film.owed, heardBy(film, messages), ON_PLATFORM))
      .reduce(addTallies);
    expect(tally.heard + tally.missed).toBe(tally.calls + tally.toldInVain);
    // Only of what the bot itself could not know of: a call, and what that call told of those before it.
    const inVain = outbox.map(({ state, key }) => {
      const message = state === "stale" ? byNonce.get(key) : undefined;
      return message ? 1 + missedIn(message.content) : 0;
    });
    expect(tally.toldInVain).toBeLessThanOrEqual(inVain.reduce((sum, each) => sum + each, 0));

    expect(cues).toHaveLength(tally.calls);
    expect(cues.filter(({ state }) => state !== "said" && state !== "merged")).toEqual([]);
    const known = new Set(outbox.map(({ key }) => key));
    expect(messages.filter(({ nonce }) => !known.has(nonce ?? ""))).toEqual([]);
    let late = 0;
    for (const row of outbox) {
      const message = byNonce.get(row.key);
      const about = `${JSON.stringify(row)} ${message?.content ?? ""}`;
      if (row.state === "stale") checkGivenUp(row, outbox, message, about);
      else expect(row.state === "sent" && message, about).toBeTruthy();
      if (!message) continue;
      checkMoment(row, message, about);
      if (message.at - row.due_at >= LATE_FROM_MS) late += 1;
    }
    expect(gateway.violations).toEqual([]);
    expect(gateway.requests.filter(({ status }) => status === 429)).toEqual([]);
    // Otherwise it would not have tried what it is for.
    expect(late).toBeGreaterThan(0);
    console.log(
      `${KILLS} kills: ${JSON.stringify(tally)}; ${outbox.length} calls decided, ${messages.length} messages, ${late} late and told so`,
    );
  },
);

/** Whoever does not answer the last call is asked whether the next bath is in. */
const NUDGE = /w\d+$/;

/** What came in a person's channel, in the platform's order. */
function heardBy({ channelId, owed, marks }: Film, messages: readonly StoredMessage[]): HeardCall[] {
  return messages
    .filter((message) => message.channelId === channelId && !NUDGE.test(message.nonce ?? ""))
    .map(({ nonce, at, content }) => {
      const call = owed[marks.indexOf(nonce ?? "")];
      if (!call) throw new Error(`owed to nobody: ${nonce} ${content}`);
      return { dueAt: call.dueAt, at, text: content };
    });
}

/**
 * A message may leave before its moment, and says it then; an answer of the platform may be lost: a call of which nobody
 * knows is told as missed, since one that is told in vain is done once too often at worst, and one untold not at all.
 */
const ON_PLATFORM: Manner = {
  losesAnswers: true,
  checkMoment({ at, dueAt, text }, about) {
    const lateMs = at - dueAt;
    demand(lateMs > -MOST_LEAD_MS, `far too early: ${about}`);
    demand(lateMs >= -1000 || text.startsWith("At "), `early, and does not say so: ${about}`);
    const saysLate = /late\*\*: this was for/.test(text);
    demand(saysLate || lateMs < LATE_FROM_MS + TRAVEL_MS, `late, and does not say so: ${about}`);
    demand(!saysLate || lateMs >= LATE_FROM_MS, `on time, and says it is late: ${about}`);
  },
};

/**
 * What was said is held against the platform's own ledger: whichever try it was that made the message, its words were true
 * at an instant between that of the first try, before which there were none, and that at which the ledger has it.
 */
function checkMoment(row: Row, { at, content }: StoredMessage, about: string): void {
  const lateMs = at - row.due_at;
  const firstMs = (row.first_try_at ?? NaN) - row.due_at;
  expect(firstMs, about).toBeLessThanOrEqual(lateMs);
  // However often its answer was lost, the record says when it was said; the platform stamps answers in whole seconds.
  if (row.state === "sent") {
    expect(row.sent_at, about).toBeGreaterThanOrEqual(at);
    expect(row.sent_at, about).toBeLessThanOrEqual(at + 1000 + TRAVEL_MS);
  }
  expect(lateMs, about).toBeGreaterThan(-MOST_LEAD_MS);
  if (lateMs < -1000) expect(content, about).toMatch(/^At /);
  if (firstMs >= LATE_FROM_MS || lateMs >= LATE_FROM_MS + TRAVEL_MS)
    expect(content, about).toMatch(/late\*\*: this was for/);
  if (lateMs < LATE_FROM_MS || (row.tries === 1 && firstMs < LATE_FROM_MS - WORDING_MS))
    expect(content, about).not.toContain("late**");
  const told = /\*\*(?:(\d+) min)? ?(?:(\d+) s)? late\*\*/.exec(content);
  if (!told) return;
  // In whole seconds.
  const toldMs = (Number(told[1] ?? 0) * 60 + Number(told[2] ?? 0)) * 1000;
  expect(toldMs, about).toBeLessThanOrEqual(lateMs + 500);
  expect(toldMs, about).toBeGreaterThanOrEqual(firstMs - 500);
}

/** A call is given up only where the next one was due or on its way already, or the clock had taken the run on. */
function checkGivenUp(
  row: Row,
  outbox: readonly Row[],
  message: StoredMessage | undefined,
  about: string,
): void {
  const isOvertaken = outbox.some(
    (other) =>
      other.run_id === row.run_id &&
      other.due_at > row.due_at &&
      other.first_try_at !== null &&
      other.first_try_at <= (row.sent_at ?? 0),
  );
  if (!isOvertaken) expect(row.sent_at, about).toBeGreaterThanOrEqual(row.useful_until ?? row.due_at);
  // Of what was never tried nothing came; of what was tried, and of no other, the record says that it may have.
  if (message) expect(row.tries, about).toBeGreaterThan(0);
  expect(/may have been said/.test(row.detail ?? ""), about).toBe(row.tries > 0);
}

test("told to stop while a message is on its way, it waits for the answer, records it, and ends", async () => {
  const { data, gateway, begin } = await setUp();
  let answer = (): void => {};
  const release = new Promise<void>((resolve) => (answer = resolve));
  gateway.faults.add("POST", /messages$/, { kind: "hold", release });
  begin(1, ONCE_SECONDS);
  const bot = start(data, gateway);
  await untilAsked(gateway, 1);
  const ended = bot.kill("SIGTERM");
  setTimeout(answer, 1000);
  expect(await ended).toBe(0);
  const stores = openStores(join(data, "sinkside.db"));
  const row = stores.db.prepare("select state, tries from outbox where key like '%f0'").get();
  stores.close();
  await gateway.stop();
  expect(row).toEqual({ state: "sent", tries: 1 });
});

test("told to stop while the chat hangs, it does not wait until it is cut off; the next process says it under the same key", async () => {
  const { data, gateway, begin } = await setUp();
  gateway.faults.add("POST", /messages$/, { kind: "hang", after: true });
  begin(1, ONCE_SECONDS);
  const first = start(data, gateway);
  await untilAsked(gateway, 1);
  expect(await first.kill("SIGTERM")).toBe(0);
  expectClosed(data);
  const second = start(data, gateway);
  await second.ready;
  await untilAsked(gateway, 2);
  await wait(300);
  await second.kill("SIGTERM");
  await gateway.stop();
  const firsts = gateway.ledger.messages.filter(({ nonce }) => nonce?.endsWith("f0"));
  expect(firsts).toHaveLength(1);
});

/** On a busy machine a process takes its time to start. */
async function untilAsked(gateway: Gateway, times: number): Promise<void> {
  for (let tries = 0; tries < 2400; tries += 1) {
    if (gateway.asked("POST", /messages$/).length >= times) return;
    await wait(50);
  }
  throw new Error("the chat was not asked");
}

async function untilDone(data: string): Promise<void> {
  const stores = openStores(join(data, "sinkside.db"));
  try {
    for (let tries = 0; tries < (DEVELOP_SECONDS + 90) * 10; tries += 1) {
      const { cues, messagesOfRuns } = countWaiting(stores.db);
      if (cues + messagesOfRuns === 0) return;
      await wait(100);
    }
    throw new Error("the cues did not come to an end");
  } finally {
    stores.close();
  }
}
