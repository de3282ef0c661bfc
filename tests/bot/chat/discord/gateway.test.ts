import { afterEach, beforeEach, expect, test } from "vitest";
import { aDelivery, listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage();
  amina = stage.gateway.addUser("Amina");
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

test("no privileged intent is asked for: servers only", async () => {
  await stage.start();
  // Servers, and messages in them and to the bot alone. Source: Discord's documentation, "List of Intents".
  expect(stage.gateway.socket.state.intents).toBe((1 << 0) | (1 << 9) | (1 << 12));
});

test("each server gets its commands, also one the bot is invited to later", async () => {
  await stage.start();
  const bodies = stage.gateway.commands.get(stage.gateway.guild.id);
  expect(bodies?.map(({ name }) => name)).toEqual([
    "plan",
    "run",
    "roll",
    "help",
    "staff-batch",
    "Rate this roll",
  ]);
  const { guild } = stage.gateway.invite("Harbour workshop, Thursday evening");
  await stage.gateway.until(() => stage.gateway.commands.has(guild.id));
  expect(stage.gateway.commands.get(guild.id)).toEqual(bodies);
});

test("a registration that fails is tried again", async () => {
  stage.gateway.faults.add("PUT", /\/guilds\/\d+\/commands$/, { kind: "status", status: 503 }, 2);
  await stage.start();
  expect(stage.gateway.asked("PUT", /\/guilds\/\d+\/commands$/).map(({ status }) => status)).toEqual([
    503, 503, 200,
  ]);
});

test("a server that does not allow commands is told in the log, and the bot goes on", async () => {
  stage.gateway.faults.add("PUT", /\/guilds\/\d+\/commands$/, { kind: "status", status: 403, code: 50001 });
  void stage.start().catch(() => undefined);
  await stage.gateway.until(() =>
    stage.log.lines.some(({ message }) => message.includes("applications.commands")),
  );
  expect(stage.fatal).toEqual([]);
});

test("a command is answered though the servers' data are still awaited", async () => {
  stage.gateway.socket.state.withholdsGuilds = true;
  stage.gateway.commands.set(stage.gateway.guild.id, [{ name: "help", description: "What to do next" }]);
  const starting = stage.start();
  await stage.gateway.until(() => stage.gateway.socket.isConnected());
  expect(await stage.gateway.slash(amina, "help")).toMatchObject({ text: "ok" });
  await starting;
});

test("a dropped line is taken up again, and what came meanwhile is answered", async () => {
  await stage.start();
  stage.gateway.socket.drop();
  await stage.gateway.until(() => !stage.gateway.socket.isConnected());
  const answer = await stage.gateway.slash(amina, "help");
  expect(answer.text).toBe("ok");
  expect(stage.gateway.socket.state).toMatchObject({ identifies: 1, resumes: 1 });
});

test("events that come once more after a resume do nothing twice", async () => {
  await stage.start();
  await stage.gateway.slash(amina, "help");
  stage.gateway.socket.state.repeatsOnResume = 10;
  stage.gateway.socket.drop();
  await stage.gateway.until(() =>
    stage.log.lines.some(({ message }) => message === "an interaction came again"),
  );
  await stage.gateway.slash(amina, "help");
  expect(stage.calls).toHaveLength(2);
  expect(stage.gateway.asked("POST", /\/callback$/)).toHaveLength(2);
});

test("asked to connect again, it does so within the same session", async () => {
  await stage.start();
  stage.gateway.socket.askReconnect();
  await stage.gateway.until(() => stage.gateway.socket.state.resumes === 1);
  expect(await stage.gateway.slash(amina, "help")).toMatchObject({ text: "ok" });
  expect(stage.gateway.socket.state.identifies).toBe(1);
});

test("a session that has become invalid but can be resumed is resumed", async () => {
  await stage.start();
  stage.gateway.socket.invalidate(true);
  await stage.gateway.until(() => stage.gateway.socket.state.resumes === 1);
  expect(await stage.gateway.slash(amina, "help")).toMatchObject({ text: "ok" });
});

test("cues are said while the line is down: they need no line", async () => {
  await stage.start();
  stage.gateway.socket.state.isAway = true;
  stage.gateway.socket.drop();
  await stage.gateway.until(() => !stage.gateway.socket.isConnected());
  expect(await stage.port.send(aDelivery(stage))).toMatchObject({ kind: "sent" });
});

test("a platform out of reach at the start is tried again", async () => {
  stage.gateway.faults.add("GET", /^\/gateway\/bot$/, { kind: "cut" }, 2);
  await stage.start();
  expect(await stage.gateway.slash(amina, "help")).toMatchObject({ text: "ok" });
  expect(stage.fatal).toEqual([]);
});

test("a first connection that is refused is made again", async () => {
  const { socket } = stage.gateway;
  socket.state.isAway = true;
  const starting = stage.start();
  await stage.gateway.until(() => socket.state.openings === 1);
  socket.state.isAway = false;
  await starting;
  expect(socket.state).toMatchObject({ openings: 2, identifies: 1 });
});

test("a rejected token is told once, with what to do", async () => {
  stage.gateway.revoke();
  await stage.start();
  expect(stage.fatal).toEqual([
    "Discord rejected the bot's token. Put a valid one into DISCORD_TOKEN and start again.",
  ]);
});

test.each([
  [4004, "token"],
  [4010, "shard"],
  [4011, "more servers"],
  [4012, "version"],
  [4013, "kinds of event"],
  [4014, "developer portal"],
])("the platform's closing %i ends the bot with a sentence, once", async (code, words) => {
  stage.gateway.socket.state.closeOnIdentify = code;
  void stage.start().catch(() => undefined);
  await stage.gateway
    .until(() => stage.fatal.length > 0 || undefined, "a fatal sentence")
    .catch(() => undefined);
  expect(stage.fatal).toEqual([expect.stringContaining(words)]);
  expect(stage.gateway.socket.state.identifies).toBe(1);
});

test("a token that is rejected later, in mid-work, is told once", async () => {
  await stage.start();
  stage.gateway.revoke();
  const outcomes = await Promise.all(
    ["a", "b", "c"].map((key) => stage.port.send(aDelivery(stage, { key }))),
  );
  expect(outcomes.map(({ kind }) => kind)).toEqual(["later", "later", "later"]);
  expect(stage.fatal).toHaveLength(1);
});

test("stopping ends everything: the line, what is queued, what hangs", async () => {
  await stage.start();
  stage.gateway.faults.add("POST", /messages$/, { kind: "hang" }, 10);
  const sending = ["a", "b", "c"].map((key) => stage.port.send(aDelivery(stage, { key })));
  await stage.gateway.until(() => stage.gateway.asked("POST", /messages$/).length === 1);
  await stage.port.stop();
  const outcomes = await Promise.all(sending);
  expect(outcomes.map(({ kind }) => kind)).toEqual(["unknown", "unknown", "unknown"]);
  await stage.gateway.until(() => !stage.gateway.socket.isConnected());
  expect(stage.gateway.asked("POST", /messages$/)).toHaveLength(1);
  expect(await stage.port.send(aDelivery(stage, { key: "d" }))).toMatchObject({ kind: "later" });
});

test("stopping in the middle of a connection attempt is quiet, whatever becomes of the attempt", async () => {
  await stage.start();
  const { socket } = stage.gateway;
  socket.state.holdsOpenings = true;
  socket.drop();
  await stage.gateway.until(() => socket.state.openings === 2);
  await stage.port.stop();
  socket.cutHeld();
  // An error nobody listens to would end the process here; the runner reports it.
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(socket.state.openings).toBe(2);
});

test("stopping between two connection attempts ends them: none follows", async () => {
  await stage.start();
  const { socket } = stage.gateway;
  socket.drop();
  await stage.gateway.until(() =>
    stage.log.lines.some(({ message }) => message.includes("connecting again")),
  );
  await stage.port.stop();
  // The client's own pause between two attempts is half a second.
  await new Promise((resolve) => setTimeout(resolve, 650));
  expect(socket.state.openings).toBe(1);
});
