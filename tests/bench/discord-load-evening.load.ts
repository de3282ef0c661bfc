import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { makeNonce } from "../../bot/chat/discord/send.ts";
import { createGateway } from "../support/gateway/gateway.ts";
import type { Answer } from "../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { startProcess } from "../support/process.ts";
import { loadNow, mostInOneSecond, readSaid, type SaidLine, spread, table } from "./whole-bot-figures.ts";

/*
 * A busy evening: the real process on the loopback platform with the published limits and usual ways. Thirty students press at
 * once, three times in a row, half of them with direct messages closed; then all are called for some minutes.
 * `TRIP_MS=3000` puts something slow in between.
 */

const STUDENTS = 30;
/** A tank is filled in 10 to 20 s (US Navy NAVEDTRA 14209). */
const FILLING_MS = 15_000;
/** A slow chat is found slow by its first calls. */
const FIRST_MINUTE_MS = 50_000;
const SECONDS = Number(process.env["SECONDS"] ?? 190);
const MEDIAN_MS = Number(process.env["TRIP_MS"] ?? 120);
const TRIP = { medianMs: MEDIAN_MS, p99Ms: MEDIAN_MS < 1000 ? MEDIAN_MS * 3.6 : MEDIAN_MS * 1.1, seed: 1 };

test("thirty students press at once, direct messages closed for half", async () => {
  // Thirty at once behind something slow are answered in turn: whoever is last waits for many trips.
  const slow = { answerWithinMs: 3000 + 2 * MEDIAN_MS, waitMs: 5000 + 20 * MEDIAN_MS };
  const gateway = await createGateway({ trip: TRIP, ...slow });
  const data = mkdtempSync(join(tmpdir(), "sinkside-evening-"));
  const bot = startProcess(data, {
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
    LOG_LEVEL: "debug",
    BACKUP_CRON: "off",
  });
  await bot.ready;
  while (!gateway.commands.has(gateway.guild.id)) await wait(50);
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  const iris = gateway.addUser("Iris", { permissions });
  const sheet = { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C", time: "9:00" };
  await gateway.slash(iris, "class setup", { channel: gateway.channel.id });
  await gateway.slash(iris, "sheet add", { ...sheet, speed: 400 });
  await gateway.slash(iris, "tank add", { numbers: `1-${STUDENTS}`, reels: 1, volume: "300 ml" });
  const people = Array.from({ length: STUDENTS }, (_, at) =>
    gateway.addUser(`Student ${at + 1}`, { isClosed: at % 2 === 1 }),
  );

  const answeredMs: number[] = [];
  const allAtOnce = (act: (user: User, at: number) => Promise<Answer>): Promise<Answer[]> =>
    Promise.all(
      people.map(async (user, at) => {
        const from = Date.now();
        const answer = await act(user, at);
        answeredMs.push(Date.now() - from);
        return answer;
      }),
    );
  const key = (answer: Answer | undefined, beginning: string): string =>
    answer?.buttons.find(({ custom_id: line }) => line.startsWith(beginning))?.custom_id ?? "no such key";

  const plans = await allAtOnce((user, at) =>
    gateway.slash(user, "plan make", { film: "Lantern 400", temp: "20C", tank: String(at + 1) }),
  );
  const starts = await allAtOnce((user, at) => gateway.press(user, key(plans[at], "run start")));
  await wait(FILLING_MS);
  const from = Date.now();
  await allAtOnce((user, at) => gateway.press(user, key(starts[at], "run next")));
  await wait((SECONDS / 2) * 1000);
  await allAtOnce((user) => gateway.slash(user, "run status"));
  await wait((SECONDS / 2) * 1000);

  const said = readSaid(bot).filter(({ time }) => time >= from);
  const settled = said.filter(({ time }) => time >= from + FIRST_MINUTE_MS);
  expect(await bot.kill("SIGTERM")).toBe(0);
  const counted = gateway.requests.filter(({ path }) => !/^\/(interactions|webhooks)\//.test(path));
  const direct = gateway.ledger.messages.filter(
    ({ channelId }) => gateway.world.channels.get(channelId)?.userId,
  );
  console.log(
    table([
      {
        students: STUDENTS,
        "way ms median": MEDIAN_MS,
        answers: answeredMs.length,
        "answered ms p50/p99/max": spread(answeredMs),
        requests: gateway.requests.length,
        counted: counted.length,
        "most counted in 1 s": mostInOneSecond(counted.map(({ at }) => at)),
        "429s": gateway.requests.filter(({ status }) => status === 429).length,
        calls: said.length,
        "messages alone / in channel": `${direct.length} / ${gateway.messagesIn(gateway.channel.id).filter(({ interactionId }) => interactionId === undefined).length}`,
        "late ms p50/p99/max": spread(said.map(({ deliveredMs }) => Math.max(0, deliveredMs))),
        "from the second minute on": spread(settled.map(({ deliveredMs }) => Math.max(0, deliveredMs))),
        "load average": loadNow(),
      },
    ]),
  );
  console.log(table(byMinute(said, gateway.ledger.messages, from)));
  await gateway.stop();
  expect(gateway.violations).toEqual([]);
  expect(gateway.requests.filter(({ status }) => status === 429)).toEqual([]);
  expect(mostInOneSecond(counted.map(({ at }) => at))).toBeLessThanOrEqual(50);
  // At once and each minute: alone to half of them, in one message to the others.
  expect(said.length).toBeGreaterThanOrEqual((STUDENTS / 2) * Math.floor(1 + SECONDS / 60));
});

interface Arrived {
  readonly at: number;
  readonly nonce: string | undefined;
}

/**
 * When each call was there, from its moment: the platform had its message then. What the bot knows comes a way later. Calls of
 * one message are told of together, the one whose key it bears first.
 */
function byMinute(said: readonly SaidLine[], messages: readonly Arrived[], from: number) {
  const rows = new Map<string, number[]>();
  let arrivedAt = Number.NaN;
  for (const { key, time, deliveredMs } of said) {
    arrivedAt = messages.findLast(({ nonce }) => nonce === makeNonce(key, 0))?.at ?? arrivedAt;
    const dueAt = time - deliveredMs;
    const minute = `${Math.floor((dueAt - from) / 60_000) + 1}`;
    const kind = key.split(".").at(-1)?.replace(/\d+$/, "") ?? "";
    const name = `${minute} ${kind}`;
    rows.set(name, [...(rows.get(name) ?? []), arrivedAt - dueAt]);
  }
  return [...rows].map(([name, late]) => ({
    "minute, call": name,
    calls: late.length,
    "first there ms": Math.round(Math.min(...late)),
    "from its moment ms p50/p99/max": spread(late),
  }));
}
