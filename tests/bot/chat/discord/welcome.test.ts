import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import { listButtons } from "../../../support/gateway/interactions.ts";

/* The first word on a server that somebody adds the bot to. */

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

const saidIn = (channelId: string) => stage.gateway.messagesIn(channelId);

test("a server that adds the bot is greeted once, with three keys that go on working", async () => {
  const { gateway } = stage;
  const { channel } = gateway.invite("Pier workshop");
  const [message] = await gateway.until(() => saidIn(channel.id).length > 0 && saidIn(channel.id));
  expect(message?.content).toMatch(/^\*\*Hello\. I call each film/);
  expect(message?.content).toContain("`/plan make`");
  expect(listButtons(message?.components ?? []).map(({ label, custom_id: line }) => [label, line])).toEqual([
    ["Set up the class", "class setup"],
    ["Help", "help"],
    ["Cautions", "caution"],
  ]);
  // Whoever presses a key that names nothing leaves it there for the next person.
  await gateway.press(gateway.addUser("Iris"), "help");
  expect(listButtons(message?.components ?? [])).toHaveLength(3);
});

test("the servers it is in already hear nothing, neither at the start nor after a break of the line", async () => {
  const { gateway } = stage;
  gateway.socket.drop();
  await gateway.until(() => gateway.socket.state.resumes === 1);
  await gateway.slash(gateway.addUser("Amina"), "help");
  expect(saidIn(gateway.channel.id).filter(({ isPrivate }) => !isPrivate)).toEqual([]);
});

test("a lost answer is asked for again without a second greeting", async () => {
  const { gateway } = stage;
  gateway.faults.add("POST", /^\/channels\/\d+\/messages$/, { kind: "cut", after: true });
  const { channel } = gateway.invite("Pier workshop");
  await gateway.until(() => gateway.asked("POST", /^\/channels\/\d+\/messages$/).length === 2);
  expect(saidIn(channel.id)).toHaveLength(1);
});

test("where it may write nowhere, it says so in the log and nowhere else", async () => {
  const { gateway } = stage;
  gateway.invite("Closed workshop", PermissionFlagsBits.SendMessages);
  await gateway.until(() =>
    stage.log.lines.some(({ message }) => message === "added to a server, with no channel to write in"),
  );
  expect(gateway.asked("POST", /messages$/)).toEqual([]);
});

test("the address at which it is added is known once it is connected", () => {
  expect(stage.port.inviteUrl()).toMatch(
    /^https:\/\/discord\.com\/oauth2\/authorize\?client_id=\d+&scope=bot\+applications\.commands&permissions=\d+$/,
  );
});
