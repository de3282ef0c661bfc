import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Outcome } from "../../../../bot/chat/port.ts";
import type { Reply } from "../../../../commands/define.ts";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";

let stage: Stage;

beforeEach(async () => {
  stage = await setStage();
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

async function show(ref: string | null, reply: Reply): Promise<Outcome> {
  const { guild, channel } = stage.gateway;
  const outcome = await stage.port.editBoard(`discord:${guild.id}`, channel.id, ref, reply);
  return outcome;
}

async function showFirst(reply: Reply = { text: "T1 developer 4:00" }): Promise<string> {
  const outcome = await show(null, reply);
  if (outcome.kind !== "sent") throw new Error(outcome.kind);
  return outcome.ref;
}

const messages = () => stage.gateway.messagesIn(stage.gateway.channel.id);

test("the board is one message that is edited, and calls nobody, whatever it says", async () => {
  const ref = await showFirst({ text: "T1 developer", actions: [{ label: "All tanks", line: "help" }] });
  expect(await show(ref, { text: "T1 fixer @everyone" })).toEqual({ kind: "sent", ref });
  expect(messages()).toMatchObject([
    { content: "T1 fixer @everyone", components: [], edits: 1, isEveryoneCalled: false },
  ]);
});

test("a board somebody deleted is refused, so that it is said anew", async () => {
  const ref = await showFirst();
  const [message] = messages();
  if (message) message.isDeleted = true;
  expect(await show(ref, { text: "T1" })).toEqual({
    kind: "refused",
    detail: "The board's message is gone.",
  });
});

test("a board is edited however old it is; where the platform takes no more edits for long, it is taken away", async () => {
  let now = Date.now();
  const old = await setStage({ bot: { clock: { now: () => now } } });
  await old.start();
  const edit = (ref: string | null, text: string) =>
    old.port.editBoard("", old.gateway.channel.id, ref, { text });
  const first = await edit(null, "T1");
  const ref = first.kind === "sent" ? first.ref : "";
  now += 5 * 60 * 60_000;
  expect(await edit(ref, "T2")).toEqual({ kind: "sent", ref });
  old.gateway.faults.add("PATCH", /messages/, { kind: "limit", seconds: 10, scope: "shared" });
  expect(await edit(ref, "T3")).toMatchObject({ kind: "later" });
  old.gateway.faults.add("PATCH", /messages/, { kind: "limit", seconds: 120, scope: "shared" });
  expect(await edit(ref, "T4")).toEqual({
    kind: "refused",
    detail: "The board's message is too old to be edited.",
  });
  expect(old.gateway.messagesIn(old.gateway.channel.id).filter(({ isDeleted }) => !isDeleted)).toEqual([]);
  await old.stop();
});

test("a class that moved to another channel gets its board there", async () => {
  expect(await show("1575053466697465873/1575053466697465874", { text: "T1" })).toMatchObject({
    kind: "refused",
  });
  expect(stage.gateway.asked("PATCH", /messages/)).toEqual([]);
});

test("an edit whose answer is lost is tried once more: it does no harm twice", async () => {
  const ref = await showFirst();
  stage.gateway.faults.add("PATCH", /messages/, { kind: "status", status: 502, after: true });
  expect(await show(ref, { text: "T2" })).toEqual({ kind: "sent", ref });
});

test("a first board whose answer is lost is unknown, and is not tried again by itself", async () => {
  stage.gateway.faults.add("POST", /messages$/, { kind: "status", status: 502, after: true });
  expect(await show(null, { text: "T2" })).toMatchObject({ kind: "unknown" });
  expect(messages()).toHaveLength(1);
});

test("a missing permission is named", async () => {
  stage.gateway.channel.denied = PermissionFlagsBits.SendMessages;
  expect(await show(null, { text: "T1" })).toMatchObject({
    kind: "refused",
    detail: expect.stringContaining("“Send Messages”"),
  });
});
