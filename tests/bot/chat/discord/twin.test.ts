import { afterEach, beforeEach, expect, test } from "vitest";
import { createTwin, type Twin } from "../../../support/twin.ts";
import { SHEET } from "../../../support/gateway/sheet.ts";

/*
 * The real adapter with the real commands against an implementation of the platform that is not ours (discord-digital-twin,
 * MIT): its gateway, its REST interface, its store. It knows no direct channels, no files, no repeats by nonce, no
 * resuming and no limits: those are tried on our own loopback platform alone.
 */

let twin: Twin;
beforeEach(async () => void (twin = await createTwin()));
afterEach(async () => twin.stop());

const PLAN = { film: "Lantern 400", temp: "20C", tank: "1" };

async function setUp(): Promise<void> {
  const { iris } = twin;
  expect(await twin.slash(iris, "staff-sheet add", SHEET)).toContain("Lantern 400");
  expect(await twin.slash(iris, "staff-tank add", { numbers: "1", reels: 1, volume: "300 ml" })).toContain(
    "tank",
  );
}

test("it connects, places its commands, and is asked and answered", async () => {
  const placed = await twin.commands();
  expect(placed.length).toBeGreaterThan(15);
  expect(placed).toContainEqual({ name: "staff-class", permissions: "32" });
  expect(placed).toContainEqual({ name: "plan", permissions: null });
  expect(placed).toContainEqual({ name: "Rate this roll", permissions: null });
  expect(await twin.slash(twin.mina, "help", {})).toContain("The class has no developing times yet");
});

test("a roll up to its first calls: a plan, its key, the key that goes, and calls by name in the channel", async () => {
  await setUp();
  const planned = await twin.slash(twin.mina, "plan make", PLAN);
  expect(planned).toContain("**9:00** at 20 °C");
  const asked = await twin.newest();
  expect(await twin.press(twin.mina, "Start")).toContain("Pour in the developer");
  // It knows no direct channels: whoever starts is told where the calls come instead.
  await twin.told("Your direct messages are closed to me: your calls come in");
  // What the key stood in was edited: the key is gone, its words are not.
  expect((await twin.message(asked.id)).labels).not.toContain("Start");
  expect((await twin.message(asked.id)).content).toBe(asked.content);
  expect(await twin.press(twin.mina, "Tank is full")).toContain("left in the developer");
  await twin.bot.pass(61);
  const calls = (await twin.messages()).filter(
    ({ content, nonce }) => nonce !== null && content.includes("Agitate"),
  );
  expect(calls.length).toBeGreaterThanOrEqual(2);
  expect(calls.every(({ content }) => content.includes(`<@${twin.mina}>`))).toBe(true);
  expect(new Set(calls.map(({ nonce }) => nonce)).size).toBe(calls.length);
});

test("in a class that wants threads a run is called in its own, which is closed when it is over", async () => {
  const { iris, mina } = twin;
  await setUp();
  expect(await twin.slash(iris, "staff-class setup", { threads: "yes" })).toContain(
    "A thread for each run: yes",
  );
  await twin.slash(mina, "plan make", PLAN);
  await twin.press(mina, "Start");
  await twin.told("Your calls come in");
  const [thread, ...others] = await twin.threads();
  expect([thread?.name, others]).toEqual(["R1, tank 1 · Lantern 400", []]);
  const id = thread?.id ?? "";
  expect(await twin.membersOf(id)).toContain(mina);
  await twin.press(mina, "Tank is full");
  await twin.bot.pass(61);
  const inThread = (await twin.messages(id)).map(({ content }) => content);
  expect(inThread[0]).toContain("Your calls come here.");
  const calls = inThread.filter((content) => content.includes("Agitate") && content.includes(`<@${mina}>`));
  expect(calls.length).toBeGreaterThanOrEqual(2);
  expect((await twin.messages()).filter(({ nonce }) => nonce !== null)).toEqual([]);
  await twin.slash(mina, "run stop", { run: "R1", sure: "yes" });
  twin.bot.clock.advance(11 * 60);
  await expect.poll(async () => (await twin.threads())[0]?.archived).toBe(true);
});

test("a form is opened, filled in and sent; what is refused can be changed and sent again", async () => {
  const opened = await twin.openForm(twin.iris, "staff-batch mix", {});
  expect(opened.fields).toEqual(["kind", "product", "volume", "dilution", "clearing"]);
  const mixed = await twin.submit(twin.iris, opened, { kind: "fixer", product: "Pier Fix", volume: "1 l" });
  expect(mixed).toContain("**B1**");
  expect(
    await twin.slash(twin.iris, "staff-batch mix", { kind: "fixer", product: "Pier Fix", volume: "much" }),
  ).toContain("volume");
  const again = await twin.pressForm(twin.iris, "Change it and send again");
  expect(again.fields[0]).toBe("volume");
});

test("a token that it does not know ends the connection with a sentence", async () => {
  const other = await createTwin("not-the-bots-token");
  try {
    expect(other.bot.fatal).toEqual([
      "Discord rejected the bot's token. Put a valid one into DISCORD_TOKEN and start again.",
    ]);
  } finally {
    await other.stop();
  }
});
