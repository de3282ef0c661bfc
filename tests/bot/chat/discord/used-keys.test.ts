import { afterEach, beforeEach, expect, test } from "vitest";
import type { Action } from "../../../../commands/define.ts";
import { aDelivery, listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import { listButtons } from "../../../support/gateway/interactions.ts";
import type { User } from "../../../support/gateway/world.ts";

/* A key that has done its work goes from its message; one that only shows something, or asks first, stays. */

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

const KEYS: readonly Action[] = [
  { label: "Tank is full", line: "run next run:7 step:2", weight: "main" },
  { label: "Show curve", line: "plan curve number:3" },
  { label: "R8: Water is in", line: "run next run:8 step:3", weight: "main" },
];

/** A message of the bot's in the class's channel. */
async function say(actions: readonly Action[] = KEYS) {
  await stage.port.send(aDelivery(stage, { key: `said ${stage.gateway.ledger.messages.length}`, actions }));
  const message = stage.gateway.ledger.messages.at(-1);
  if (!message) throw new Error("nothing was said");
  return message;
}
const labels = (message: { components: Parameters<typeof listButtons>[0] }) =>
  listButtons(message.components).map(({ label }) => label);

test("the key that was pressed goes, those of other people's runs stay, and the words are as they were", async () => {
  const message = await say();
  stage.onCommand = (call) => call.answer({ text: "8:59 left" }, "private");
  const answer = await stage.gateway.press(amina, "run next run:7 step:2");
  expect(answer).toMatchObject({ callback: 7, isPrivate: true, text: "8:59 left" });
  expect(labels(message)).toEqual(["Show curve", "R8: Water is in"]);
  expect(message).toMatchObject({ content: "R7: pour out the developer now.", edits: 1 });
  // Its own message is edited with the interaction's token, which counts against no limit of the bot's.
  expect(stage.gateway.asked("PATCH", /messages/)).toEqual([]);
});

test("an edit calls the same people by name as before", async () => {
  await stage.port.send(
    aDelivery(stage, { personId: null, mentions: [`discord:${amina.id}`], actions: KEYS }),
  );
  const message = stage.gateway.ledger.messages.at(-1);
  await stage.gateway.press(amina, "run next run:7 step:2");
  expect(message?.calledIds).toEqual([amina.id]);
});

test("keys for one and the same choice go together", async () => {
  const message = await say(
    [1, 2, 3, 4, 5].map((rating) => ({ label: `${rating}`, line: `roll rate roll:L12 rating:${rating}` })),
  );
  await stage.gateway.press(amina, "roll rate roll:L12 rating:4");
  expect(labels(message)).toEqual([]);
  expect(message.components).toEqual([]);
});

test("a key that only shows something stays, and so does one whose call was refused", async () => {
  const message = await say();
  await stage.gateway.press(amina, "plan curve number:3");
  stage.onCommand = (call) => call.answer({ text: "Not yet." }, "private", "ERR_EARLY");
  expect(await stage.gateway.press(amina, "run next run:7 step:2")).toMatchObject({ callback: 4 });
  expect(labels(message)).toEqual(KEYS.map(({ label }) => label));
  expect(message.edits).toBe(0);
});

test("a key that asks first stays; the one that says yes goes", async () => {
  const message = await say([{ label: "Stop", line: "run next run:7" }]);
  const sure = { label: "Yes", line: "run next run:7 step:9" };
  stage.onCommand = (call) => call.answer({ text: "Sure?", actions: [sure] }, "private");
  const asked = await stage.gateway.press(amina, "run next run:7");
  expect(labels(message)).toEqual(["Stop"]);
  stage.onCommand = (call) => call.answer({ text: "Done." }, "private");
  await stage.gateway.press(amina, sure.line);
  expect(asked.buttons).toEqual([]);
});

test("a press that comes twice does its work once and takes the key away once", async () => {
  const message = await say();
  await stage.gateway.press(amina, "run next run:7 step:2");
  stage.gateway.socket.repeatLast("INTERACTION_CREATE");
  await stage.gateway.slash(amina, "help");
  expect(stage.calls.map(({ name }) => name)).toEqual(["run next", "help"]);
  expect(message.edits).toBe(1);
});

test("where the platform no longer takes the edit, the answer comes all the same", async () => {
  const message = await say();
  stage.gateway.faults.add("POST", /\/callback$/, { kind: "status", status: 400, code: 50001 });
  const answer = await stage.gateway.press(amina, "run next run:7 step:2");
  expect(answer).toMatchObject({ callback: 4, text: "ok" });
  expect(labels(message)).toHaveLength(3);
});

test("after a deferred answer the key goes by an edit of its own; one too old to be edited is left", async () => {
  await stage.stop();
  stage = await setStage({ bot: { times: { deferAfterMs: 20 } } });
  amina = stage.gateway.addUser("Amina");
  await stage.start();
  stage.onCommand = async (call) => {
    await stage.gateway.until(() => stage.gateway.asked("POST", /callback$/).length === stage.calls.length);
    await call.answer({ text: "8:59 left" }, "private");
  };
  const message = await say();
  const answer = await stage.gateway.press(amina, "run next run:7 step:2");
  expect(answer).toMatchObject({ callback: 5, text: "8:59 left" });
  await stage.gateway.until(() => labels(message).length === 2);
  // Its error 30046 comes as a rate limit: the message is older than an hour.
  stage.gateway.faults.add("PATCH", /^\/channels\/.*messages/, {
    kind: "limit",
    seconds: 60,
    scope: "shared",
  });
  await stage.gateway.press(amina, "run next run:8 step:3");
  await stage.gateway.until(() => stage.gateway.asked("PATCH", /messages\/\d+$/).length === 2);
  expect(labels(message)).toEqual(["Show curve", "R8: Water is in"]);
});
