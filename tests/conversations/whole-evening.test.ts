import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { drawToken, hashToken } from "../../bot/chat/room/secrets.ts";
import { inventDemo } from "../../bot/demo/demo.ts";
import { openStores } from "../../store/index.ts";
import type { Role } from "../../store/shapes/person.ts";
import { createGateway, type Gateway } from "../support/gateway/gateway.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { startProcess, type BotProcess } from "../support/process.ts";
import { type Call, type Seat, takeSeat } from "../support/seat.ts";
import { freePort } from "./kill-client.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/*
 * One evening on two chats, by the built process: three students, two rolls from tank to sleeve to contact sheet to a print,
 * which is made again a week later on another size. The process is killed twice, once with both films in their developer and
 * once with prints in the trays. What each person heard and was answered, by their own page and by the platform's ledger, has the
 * last word. All of it is invented.
 */

const LATER = join(import.meta.dirname, "..", "support", "later.mjs");
const WEEK_MS = 7 * 24 * 3600_000;
/** On a busy machine everything takes its time. */
const WAIT_MS = 300_000;
const MINUTE_MS = 60_000;

let aheadMs = 0;
const now = (): number => Date.now() + aheadMs;

function openClass(data: string): (name: string) => string {
  const stores = openStores(join(data, "sinkside.db"));
  const classId = inventDemo(stores, "UTC", now())?.id ?? 0;
  const seatOf = (name: string, role: Role): [string, string] => {
    const personId = `room:${name.toLowerCase()}`;
    const token = drawToken();
    stores.members.see(classId, { id: personId, name }, role, now());
    stores.rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "Phone" }, now());
    return [name, token];
  };
  const tokens = new Map([seatOf("Iris", "teacher"), seatOf("Mina", "student"), seatOf("Ola", "student")]);
  stores.close();
  return (name) => tokens.get(name) ?? "";
}

/** From `first` on, each step is said to be done; the last answer. */
async function goThrough(says: (step: number) => Promise<string>, first: number, isDone: RegExp) {
  for (let step = first; step < first + 12; step += 1) {
    const text = await says(step);
    if (isDone.test(text)) return text;
  }
  throw new Error("it never came to its end");
}

const bold = (calls: readonly { readonly text: string }[], word: string) =>
  calls.filter(({ text }) => text.startsWith("**") && text.includes(word));

function expectEachOnce(calls: readonly Call[]): void {
  const told = calls.map(({ dueAt, text }) => `${dueAt} ${text.split("\n")[0]}`);
  expect(new Set(told).size, "a call was made twice").toBe(told.length);
  for (const { at, dueAt, readAt, text } of calls) {
    expect(at, `early: ${text}`).toBeGreaterThanOrEqual(dueAt ?? 0);
    expect(readAt, `read early: ${text}`).toBeGreaterThanOrEqual(dueAt ?? 0);
  }
}

test(
  "an evening of three students on two chats, killed twice, and the print a week later",
  { timeout: 1_800_000 },
  async () => {
    const data = mkdtempSync(join(tmpdir(), "sinkside-evening-"));
    const port = await freePort();
    const tokenOf = openClass(data);
    const gateway: Gateway = await createGateway({ now, waitMs: WAIT_MS });
    const start = async (env: Readonly<Record<string, string>> = {}): Promise<BotProcess> => {
      const before = gateway.socket.state.identifies;
      const bot = startProcess(data, {
        ROOM_PORT: String(port),
        DISCORD_TOKEN: gateway.token,
        DISCORD_API_URL: gateway.api,
        BACKUP_CRON: "off",
        ...env,
      });
      await bot.ready;
      await gateway.until(() => gateway.socket.state.identifies > before, "the bot's word to the platform");
      return bot;
    };
    const seat = (name: string): Seat => takeSeat(port, tokenOf(name), now, WAIT_MS);
    const teacher = gateway.addUser("Tess", {
      permissions: STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild,
    });
    const ben = gateway.addUser("Ben");
    const slash = async (user: User, name: string, options = {}): Promise<string> =>
      (await gateway.slash(user, name, options)).text;
    const toBen = () =>
      gateway
        .messagesTo(ben)
        .filter(({ interactionId }) => interactionId === undefined)
        .map(({ content: text }) => ({ text }));

    let bot = await start();
    const [iris, mina, ola] = [seat("Iris"), seat("Mina"), seat("Ola")];

    // What the teachers set up.
    expect(
      await iris.says("/batch mix kind:paper-developer product:Dock Print dilution:1+9 volume:2 l"),
    ).toContain("B1");
    await iris.says("/print enlarger enlarger:1 light:diffuse lens:50 timer:0.5");
    await iris.says("/print paper paper:1 name:Pier Gloss size:18x24 cm");
    await slash(teacher, "sheet add", SHEET);
    await slash(teacher, "tank add", { numbers: "1", reels: 1, volume: "300 ml" });

    // Two films go into their developers.
    await mina.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    expect(await mina.says("/run start plan:P1")).toContain("R1");
    await mina.says("/run next run:R1 step:0");
    await slash(ben, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" });
    await slash(ben, "run start", { plan: "P1" });
    await slash(ben, "run next", { run: "R1", step: 0 });
    await mina.until((calls) => bold(calls, "Agitate").length === 1, "Mina's first call");
    await gateway.until(() => bold(toBen(), "Agitate").length === 1, "Ben's first call");

    await bot.kill("SIGKILL");
    bot = await start();
    const [first, second] = bold(
      await mina.until((calls) => bold(calls, "Agitate").length >= 2, "Mina's second call"),
      "Agitate",
    ) as Call[];
    await gateway.until(() => bold(toBen(), "Agitate").length >= 2, "Ben's second call");
    expect((second?.dueAt ?? 0) - (first?.dueAt ?? 0)).toBe(MINUTE_MS);

    // To the sleeve; nobody of this test has the patience of a darkroom.
    const done = /In the log as (L\d+)/;
    expect(await goThrough((step) => mina.says(`/run next run:R1 step:${step} sure:yes`), 1, done)).toContain(
      "L1",
    );
    expect(
      await goThrough((step) => slash(ben, "run next", { run: "R1", step, sure: "yes" }), 1, done),
    ).toContain("L1");

    // The contact sheets, and a strip.
    await iris.says("/contact exposure seconds:10 height:50 aperture:8 grade:2");
    expect(await mina.says("/contact sheet roll:L1 paper:1")).toContain("10 s");
    expect(await slash(ben, "contact sheet", { roll: "L1" })).toContain("L1");
    expect(await ola.says("/print strip base:8 step:1/3 paper:1 grade:2")).toContain("5 bars");
    expect(await ola.says("/print read bar:3")).toContain("**12.5 s**");

    // Two prints of Mina's fill the first tray; Ola waits for her place.
    await mina.says("/tray plan paper:X1 temp:20C prints:2");
    expect(await mina.says("/run start")).toContain("R2");
    await mina.says("/run next run:R2 step:0");
    await ola.says("/tray plan paper:X1 temp:20C prints:2");
    expect(await ola.says("/run start")).toContain("**Wait: the trays are full**");

    await bot.kill("SIGKILL");
    bot = await start();
    const lifted = (
      await mina.until((calls) => bold(calls, "Now: stop bath").length > 0, "the end of Mina's developer")
    ).filter(({ text }) => /^\*\*(Lift|Now: stop)/.test(text));
    const endsAt = lifted.at(-1)?.dueAt ?? 0;
    for (const { dueAt } of lifted) expect([25_000, 10_000, 0]).toContain(endsAt - (dueAt ?? 0));
    await mina.says("/run next run:R2 step:1");
    await ola.until((calls) => bold(calls, "Your turn").length > 0, "Ola's turn");
    expect(
      await goThrough((step) => mina.says(`/run next run:R2 step:${step} sure:yes`), 2, /is finished/),
    ).toContain("2 prints fixed and washed");
    await ola.says("/run next run:R3 step:0");
    expect(
      await goThrough((step) => ola.says(`/run next run:R3 step:${step} sure:yes`), 1, /is finished/),
    ).toContain("2 prints fixed and washed");

    // The prints of both rolls go into the log, once each.
    const recipe = "seconds:12.5 grade:2 title:Pier at dusk roll:L1 frame:7 paper:1 enlarger:1 burn:sky 1/2";
    expect(await mina.says(`/print log ${recipe}`)).toContain("V1");
    expect(
      await slash(ben, "print log", {
        seconds: "9",
        grade: "2",
        title: "Crane",
        roll: "L1",
        frame: "3",
        size: "18x24",
      }),
    ).toContain("V1");
    expect(await bot.kill("SIGTERM")).toBe(0);

    // A week later, on another size.
    aheadMs = WEEK_MS;
    bot = await start({ NODE_OPTIONS: `--import ${LATER}`, LATER_MS: String(WEEK_MS) });
    const again = await mina.says("/print again print:V1 size:18x24 cm to 30x40 cm");
    expect(again).toContain("Pier at dusk");
    const seconds = /\*\*([\d.]+) s\*\*/.exec(again)?.[1] ?? "";
    // By (m + 1)^2, from a frame of 24 by 36 mm: between the plain ratio of areas and none.
    expect(Number(seconds)).toBeGreaterThan(12.5 * 1.5);
    expect(Number(seconds)).toBeLessThan(12.5 * (40 / 24) ** 2);
    expect(await mina.says(`/print log as:V1 seconds:${seconds} size:30x40 cm`)).toContain("V2");
    expect(await slash(ben, "print again", { print: "V1", size: "18x24 to 24x30" })).toContain("Crane");
    expect(await bot.kill("SIGTERM")).toBe(0);

    for (const each of [iris, mina, ola]) each.leave();
    for (const { calls } of [iris, mina, ola]) expectEachOnce(calls);
    expect(bold(ola.calls, "Your turn")).toHaveLength(1);
    const nonces = gateway.ledger.messages.flatMap(({ nonce }) => nonce ?? []);
    expect(new Set(nonces).size, "a call was made twice").toBe(nonces.length);
    expect(gateway.violations).toEqual([]);
    await gateway.stop();
    expectKept(data);
    rmSync(data, { recursive: true });
  },
);

/** Each thing is there once, and nothing waits any more. */
function expectKept(data: string): void {
  const stores = openStores(join(data, "sinkside.db"));
  const { db } = stores;
  const valuesOf = (sql: string, ...given: number[]) =>
    db
      .prepare<number[], object>(sql)
      .all(...given)
      .flatMap((row) => Object.values(row));
  expect(db.pragma("integrity_check", { simple: true })).toBe("ok");
  expect(valuesOf("select count(*) from rolls group by class_id")).toEqual([1, 1]);
  expect(valuesOf("select count(*) from prints group by class_id order by class_id")).toEqual([2, 1]);
  expect(valuesOf("select json_extract(body, '$.size.longMm') from prints where number = 2")).toEqual([400]);
  expect(valuesOf("select phase_kind from runs")).toEqual(Array.from({ length: 4 }, () => "finished"));
  // At night word of a bottle that is out of date keeps until the morning.
  const waiting = "select count(*) from outbox where state in ('owed', 'sending') and next_at <= ?";
  expect(valuesOf(waiting, now())).toEqual([0]);
  // Four sheets of 18 by 24 cm went through the paper developer, in two goes.
  const [bottle] = stores.batches.standing(stores.classes.list()[0]?.id ?? 0);
  const uses = stores.batches.lines(bottle?.id ?? 0).filter(({ body }) => body.kind === "used");
  expect(uses).toHaveLength(2);
  stores.close();
}
