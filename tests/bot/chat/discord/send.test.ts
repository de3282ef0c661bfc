import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Delivery } from "../../../../bot/chat/port.ts";
import { aDelivery, listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage();
  amina = stage.gateway.addUser("Amina");
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

const MESSAGES = /^\/channels\/\d+\/messages$/;
const inClass = () => stage.gateway.messagesIn(stage.gateway.channel.id);
const send = (over: Partial<Delivery> = {}) => stage.port.send(aDelivery(stage, over));

/** As if the class's messages had been made so long before. */
function age(ms: number): void {
  for (const message of inClass()) Object.assign(message, { at: message.at - ms });
}

/** Amina has called a command: there is a channel to her alone. */
async function meetAmina(): Promise<string> {
  await stage.gateway.slash(amina, "help");
  await stage.gateway.until(() => stage.directory.channels.get(`discord:${amina.id}`));
  return `discord:${amina.id}`;
}

describe("where it is said", () => {
  test("to one person: alone, with their buttons and the delivery's own nonce", async () => {
    const personId = await meetAmina();
    const outcome = await send({
      personId,
      actions: [{ label: "Poured out", line: "run next run:7", weight: "main" }],
    });
    const [message] = stage.gateway
      .messagesTo(amina)
      .filter(({ interactionId }) => interactionId === undefined);
    expect(outcome).toEqual({ kind: "sent", ref: `${message?.channelId}/${message?.id}` });
    expect(message).toMatchObject({
      content: "R7: pour out the developer now.",
      nonce: "run7-step1-cue3",
      calledIds: [],
    });
    expect(stage.gateway.asked("POST", MESSAGES)[0]?.body).toMatchObject({ enforce_nonce: true });
    expect(inClass()).toHaveLength(1);
  });

  test("a button under it works, and the class is known", async () => {
    const personId = await meetAmina();
    await send({ personId, actions: [{ label: "Poured out", line: "run next run:7" }] });
    await stage.gateway.press(amina, "run next run:7");
    expect(stage.calls[1]).toMatchObject({
      name: "run next",
      place: { classKey: `discord:${stage.gateway.guild.id}` },
    });
  });

  test("a delivery that comes while the channel is being opened waits for it", async () => {
    let open = (): void => {};
    const release = new Promise<void>((resolve) => (open = resolve));
    stage.gateway.faults.add("POST", /^\/users\/@me\/channels$/, { kind: "hold", release });
    await stage.gateway.slash(amina, "help");
    const sending = send({ personId: `discord:${amina.id}` });
    open();
    expect(await sending).toMatchObject({ kind: "sent" });
    expect(stage.gateway.messagesTo(amina)).toHaveLength(1);
  });

  test("where direct messages are closed: in the class channel, calling that person, and no more tries alone", async () => {
    const personId = await meetAmina();
    amina.isClosed = true;
    expect(await send({ personId })).toMatchObject({ kind: "sent" });
    expect(await send({ personId, key: "second" })).toMatchObject({ kind: "sent" });
    expect(inClass().slice(1)).toMatchObject([
      { content: `<@${amina.id}>\nR7: pour out the developer now.`, calledIds: [amina.id] },
      { calledIds: [amina.id] },
    ]);
    expect(stage.gateway.requests.filter(({ status }) => status === 403)).toHaveLength(1);
  });

  test("a person never met: in the class channel", async () => {
    expect(await send({ personId: `discord:${amina.id}` })).toMatchObject({ kind: "sent" });
    expect(inClass()[0]?.calledIds).toEqual([amina.id]);
    expect(stage.gateway.asked("POST", /^\/users\/@me\/channels$/)).toEqual([]);
  });

  test("no channel at all: refused with what to do", async () => {
    const outcome = await send({ channelRef: null });
    expect(outcome).toMatchObject({
      kind: "refused",
      detail: expect.stringContaining("call a command in the class's server"),
    });
  });

  test("to the class: only who is meant is called, whatever the text says", async () => {
    const kofi = stage.gateway.addUser("Kofi");
    const text = `@everyone <@${kofi.id}> fix is getting tired`;
    await send({ text, mentions: [`discord:${amina.id}`, "room:somebody"] });
    expect(inClass()[0]).toMatchObject({
      calledIds: [amina.id],
      isEveryoneCalled: false,
      content: `<@${amina.id}>\n${text}`,
    });
  });

  test("sixty people fit one message; the rest are called in the next", async () => {
    const people = Array.from({ length: 70 }, (_, index) => stage.gateway.addUser(`Student ${index}`));
    await send({ mentions: people.map(({ id }) => `discord:${id}`), text: "Ten minutes to the bell." });
    expect(inClass().map(({ calledIds }) => calledIds.length)).toEqual([60, 10]);
  });
});

describe("once", () => {
  test("the same delivery again is the same message", async () => {
    const first = await send();
    expect(await send()).toEqual(first);
    expect(inClass()).toHaveLength(1);
  });

  test("a lost answer leaves it unknown; the next try finds the first message by its nonce", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    expect(await send()).toMatchObject({ kind: "unknown" });
    expect(await send()).toEqual({ kind: "sent", ref: `${stage.gateway.channel.id}/${inClass()[0]?.id}` });
    expect(inClass()).toHaveLength(1);
  });

  test("of a message that was made by a try long before, the outcome tells how long", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await send();
    age(60_000);
    const outcome = await send();
    expect(outcome).toMatchObject({ kind: "sent", agoMs: expect.any(Number) });
    // Answers are stamped in whole seconds (RFC 9110, 6.6.1), rounded down.
    const agoMs = outcome.kind === "sent" ? (outcome.agoMs ?? 0) : 0;
    expect(agoMs).toBeGreaterThan(58_900);
    expect(agoMs).toBeLessThan(70_000);
  });

  test("a long delivery that broke off goes on where it broke", async () => {
    const text = Array.from(
      { length: 90 },
      (_, index) => `${index}: put strips into sleeve number ${index}, five frames each`,
    ).join("\n");
    stage.gateway.faults.add("POST", MESSAGES, { kind: "hold", release: Promise.resolve() });
    stage.gateway.faults.add("POST", MESSAGES, { kind: "status", status: 500, after: true });
    expect(await send({ text })).toMatchObject({ kind: "unknown" });
    expect(await send({ text })).toMatchObject({ kind: "sent" });
    expect(
      inClass()
        .map(({ content }) => content)
        .join("\n"),
    ).toBe(text);
    const nonces = inClass().map(({ nonce }) => nonce);
    expect(nonces).toEqual(["run7-step1-cue3", "run7-step1-cue3~1", "run7-step1-cue3~2"]);
  });

  test("a key of 25 characters leaves no room for a number: further parts get a digest, the same each time", async () => {
    const key = "k".repeat(25);
    await send({ key, text: `${"a".repeat(1900)}\n${"b".repeat(1900)}` });
    const nonces = inClass().map(({ nonce }) => nonce);
    expect(nonces[0]).toBe(key);
    expect(nonces[1]).toHaveLength(25);
    expect(nonces[1]).not.toBe(key);
  });

  test("a message somebody has deleted since was said", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await send();
    const [message] = inClass();
    if (message) message.isDeleted = true;
    expect(await send()).toMatchObject({ kind: "sent" });
    expect(inClass()).toEqual([]);
  });
});

describe("what became of it", () => {
  test("the channel's own rate limit means later, without a request too many", async () => {
    for (let index = 0; index < 5; index += 1) await send({ key: `k${index}` });
    const outcome = await send({ key: "k5" });
    expect(outcome).toMatchObject({ kind: "later" });
    expect(outcome.kind === "later" && outcome.afterMs).toBeGreaterThan(1000);
    expect(stage.gateway.requests.filter(({ status }) => status === 429)).toEqual([]);
  });

  test("sixty at one instant, without the pace deliveries have: each is said or later, none is lost", async () => {
    const people = Array.from({ length: 60 }, (_, index) => stage.gateway.addUser(`Student ${index}`));
    for (const { id } of people)
      stage.directory.saveDirectChannel(`discord:${id}`, stage.gateway.world.openDirect(id).id);
    const outcomes = await Promise.all(
      people.map(({ id }, index) => send({ key: `k${index}`, personId: `discord:${id}` })),
    );
    const kinds = outcomes.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind !== "sent" && kind !== "later")).toEqual([]);
    expect(kinds).toContain("sent");
    const said = stage.gateway.ledger.messages.filter(({ content }) => content.startsWith("R7"));
    expect(said).toHaveLength(kinds.filter((kind) => kind === "sent").length);
  });

  test.each([
    ["an unforeseen rate limit", { kind: "limit", seconds: 1.5, scope: "user" }, 1550],
    ["a rate limit of all routes", { kind: "limit", seconds: 2, scope: "global" }, 2050],
    ["a shared rate limit", { kind: "limit", seconds: 3, scope: "shared" }, 3050],
    ["a proxy's own limit", { kind: "limit", seconds: 4, scope: "user", page: true }, 4050],
  ] as const)("%s means later", async (_, fault, afterMs) => {
    stage.gateway.faults.add("POST", MESSAGES, fault);
    const outcome = await send();
    expect(outcome.kind).toBe("later");
    expect(outcome.kind === "later" && outcome.afterMs).toBeGreaterThan(afterMs - 100);
    expect(outcome.kind === "later" && outcome.afterMs).toBeLessThan(afterMs + 200);
    expect(inClass()).toEqual([]);
  });

  test.each([
    ["the platform breaks", { kind: "status", status: 500 }],
    ["the platform breaks after it was said", { kind: "status", status: 503, after: true }],
    ["the connection is cut", { kind: "cut" }],
  ] as const)("%s: unknown, after one try", async (_, fault) => {
    stage.gateway.faults.add("POST", MESSAGES, fault);
    expect(await send()).toMatchObject({ kind: "unknown" });
    expect(stage.gateway.asked("POST", MESSAGES)).toHaveLength(1);
  });

  test.each([false, true])(
    "no answer at all (and said after all: %s): unknown, after one try",
    async (after) => {
      const hasty = await setStage({ bot: { times: { requestTimeoutMs: 200 } } });
      await hasty.start();
      hasty.gateway.faults.add("POST", MESSAGES, { kind: "hang", after });
      expect(await hasty.port.send(aDelivery(hasty))).toMatchObject({ kind: "unknown" });
      expect(hasty.gateway.asked("POST", MESSAGES)).toHaveLength(1);
      await hasty.stop();
    },
  );

  test("a missing permission is named", async () => {
    stage.gateway.channel.denied = PermissionFlagsBits.SendMessages;
    const outcome = await send();
    expect(outcome).toEqual({
      kind: "refused",
      detail: `I may not write in <#${stage.gateway.channel.id}>: a server manager has to give me “Send Messages” there.`,
    });
  });

  test("which permission is missing is read from the server's own settings", async () => {
    const fenced = await setStage();
    fenced.gateway.channel.denied = PermissionFlagsBits.AttachFiles;
    await fenced.start();
    const attachments = [{ name: "log.csv", mediaType: "text/csv", content: "L1" } as const];
    const outcome = await fenced.port.send(aDelivery(fenced, { attachments }));
    expect(outcome).toMatchObject({ kind: "refused", detail: expect.stringContaining("“Attach Files”") });
    await fenced.stop();
  });

  test("a channel that is gone is told", async () => {
    expect(await send({ channelRef: "1575053466697465873" })).toMatchObject({
      kind: "refused",
      detail: expect.stringContaining("gone"),
    });
  });

  test("a body the platform does not take is refused, not tried again", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "status", status: 400, code: 50035 });
    expect(await send()).toMatchObject({ kind: "refused" });
  });
});

describe("looking back", () => {
  test("by nonce, where the platform gives it back", async () => {
    const kept = await setStage({ gateway: { keepsNonce: true } });
    await kept.start();
    kept.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await kept.port.send(aDelivery(kept));
    const ref = `${kept.gateway.channel.id}/${kept.gateway.messagesIn(kept.gateway.channel.id)[0]?.id}`;
    expect(await kept.port.find(aDelivery(kept, { text: "other words" }))).toEqual({ kind: "found", ref });
    await kept.stop();
  });

  test("with how long ago it was said", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await send();
    age(10_000);
    const found = await stage.port.find(aDelivery(stage));
    expect(found).toMatchObject({ kind: "found", agoMs: expect.any(Number) });
    expect(found.kind === "found" && found.agoMs).toBeGreaterThan(8900);
  });

  test("by its words and buttons, where it does not", async () => {
    const actions = [{ label: "Poured out", line: "run next run:7 step:1" }];
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await send({ actions });
    expect(await stage.port.find(aDelivery(stage, { actions }))).toMatchObject({ kind: "found" });
    const other = [{ label: "Poured out", line: "run next run:7 step:2" }];
    expect(await stage.port.find(aDelivery(stage, { actions: other }))).toEqual({ kind: "absent" });
  });

  test("an older message with the same words is another cue's", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "cut", after: true });
    await send();
    expect(await stage.port.find(aDelivery(stage, { dueAt: Date.now() + 60_000 }))).toEqual({
      kind: "absent",
    });
  });

  test("a message known to be another delivery's does not count", async () => {
    await send({ key: "cue-2" });
    expect(await stage.port.find(aDelivery(stage, { key: "cue-1" }))).toEqual({ kind: "absent" });
  });

  test("in the channel to one person as well", async () => {
    const personId = await meetAmina();
    stage.gateway.faults.add("POST", MESSAGES, { kind: "status", status: 500, after: true });
    await send({ personId });
    expect(await stage.port.find(aDelivery(stage, { personId }))).toMatchObject({ kind: "found" });
  });
});

describe("an answer that is none of the platform's", () => {
  test.each([
    ["a page of something in between", "<html>Please sign in to the school's network</html>"],
    ["an empty object", {}],
    ["an id that is none", { id: null }],
    ["nothing", undefined],
  ])("%s is not taken for said, and the next try says it once", async (_, body) => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "instead", body });
    expect(await send()).toMatchObject({ kind: "unknown" });
    expect(inClass()).toEqual([]);
    expect(await send()).toMatchObject({ kind: "sent" });
    expect(inClass()).toHaveLength(1);
  });

  test("where it was said all the same, the next try finds the first message", async () => {
    stage.gateway.faults.add("POST", MESSAGES, { kind: "instead", body: {}, after: true });
    expect(await send()).toMatchObject({ kind: "unknown" });
    expect(await send()).toMatchObject({ kind: "sent" });
    expect(inClass()).toHaveLength(1);
  });

  test("no list of messages is no word on whether it was said", async () => {
    const delivery = aDelivery(stage, {});
    stage.gateway.faults.add("GET", MESSAGES, { kind: "instead", body: {} }, 2);
    expect(await stage.port.find(delivery)).toMatchObject({ kind: "unknown" });
  });
});
