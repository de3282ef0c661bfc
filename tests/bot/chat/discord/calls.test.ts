import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Suggestion } from "../../../../commands/define.ts";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import { STUDENT_PERMISSIONS, type User } from "../../../support/gateway/world.ts";

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage({
    bot: {
      roleOf: ({ managesServer, roleNames }) =>
        managesServer ? "teacher" : roleNames.includes("Aide") ? "aide" : "student",
    },
  });
  amina = stage.gateway.addUser("Amina", { nick: "Amina B." });
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

const directChannelOf = (user: User) => stage.directory.channels.get(`discord:${user.id}`);

test("a slash command becomes a call with its person, place and options as they were given", async () => {
  const { guild, channel } = stage.gateway;
  const answer = await stage.gateway.slash(amina, "plan make", {
    film: "Lantern 400",
    rolls: 2,
    drift: true,
  });
  expect(stage.calls).toHaveLength(1);
  expect(stage.calls[0]).toMatchObject({
    callId: answer.interactionId,
    name: "plan",
    options: { film: "Lantern 400", rolls: 2, drift: true },
    person: { id: `discord:${amina.id}`, name: "Amina B." },
    role: "student",
    place: { classKey: `discord:${guild.id}`, className: guild.name, channelRef: channel.id },
  });
});

test("a bare command and a sub-command of one word are told apart", async () => {
  await stage.gateway.slash(amina, "plan curve", { number: 3 });
  await stage.gateway.slash(amina, "help");
  expect(stage.calls.map(({ name, options }) => [name, options])).toEqual([
    ["plan curve", { number: 3 }],
    ["help", {}],
  ]);
});

test.each([
  ["manages the server", { permissions: STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild }, "teacher"],
  [
    "is an administrator",
    { permissions: STUDENT_PERMISSIONS | PermissionFlagsBits.Administrator },
    "teacher",
  ],
  ["has no role", {}, "student"],
  ["comes without permissions", { permissions: null }, "student"],
] as const)("who %s is a %3$s", async (_, more, role) => {
  await stage.gateway.slash(stage.gateway.addUser("Kofi", more), "help");
  expect(stage.calls[0]?.role).toBe(role);
});

test("roles of the server come by name", async () => {
  const roleIds = stage.gateway.guild.roles.map(({ id }) => id);
  await stage.gateway.slash(stage.gateway.addUser("Kofi", { roleIds }), "help");
  expect(stage.calls[0]?.role).toBe("aide");
});

test("a button is its line", async () => {
  stage.onCommand = (call) =>
    call.answer(
      { text: "Start?", actions: [{ label: "In", line: 'run next run:7 step:"stop bath"' }] },
      "private",
    );
  await stage.gateway.slash(amina, "help");
  const answer = await stage.gateway.press(amina, 'run next run:7 step:"stop bath"');
  expect(stage.calls[1]).toMatchObject({
    callId: answer.interactionId,
    name: "run next",
    options: { run: "7", step: "stop bath" },
  });
});

test("a button of a command that is gone gets a private sentence", async () => {
  stage.onCommand = (call) =>
    call.answer({ text: "Start?", actions: [{ label: "Go", line: "run begin" }] }, "class");
  await stage.gateway.slash(amina, "run start");
  const answer = await stage.gateway.press(amina, "run begin");
  expect(answer).toMatchObject({
    isPrivate: true,
    text: "That button is from an older version. Type the command instead.",
  });
  expect(stage.calls).toHaveLength(1);
});

test("suggestions come from the handler, at most 25, their labels at most 100 characters", async () => {
  const many = Array.from({ length: 40 }, (_, index): Suggestion => ({
    label: `${index} ${"x".repeat(120)}`,
    value: `film ${index}`,
  }));
  stage.suggestions = [{ label: "too long", value: "v".repeat(101) }, ...many];
  const { callback, choices } = await stage.gateway.complete(amina, "plan make", "film", "Lan", { rolls: 2 });
  expect(callback).toBe(8);
  expect(choices).toHaveLength(25);
  expect(choices[0]?.name).toHaveLength(100);
  expect(choices[0]?.value).toBe("film 0");
  expect(stage.completions[0]).toMatchObject({
    name: "plan",
    option: "film",
    typed: "Lan",
    others: { rolls: "2" },
  });
});

test("suggestions for a number are numbers", async () => {
  stage.suggestions = [
    { label: "P3 Lantern 400", value: "3" },
    { label: "no number", value: "P" },
  ];
  const { choices } = await stage.gateway.complete(amina, "plan curve", "number", "3");
  expect(choices).toEqual([{ name: "P3 Lantern 400", value: 3 }]);
});

test("the channel to a person alone is opened at their first command, once, and kept", async () => {
  await stage.gateway.slash(amina, "help");
  await stage.gateway.until(() => directChannelOf(amina));
  await stage.gateway.slash(amina, "help");
  expect(stage.gateway.asked("POST", /^\/users\/@me\/channels$/)).toHaveLength(1);
  expect(directChannelOf(amina)).toBe(stage.gateway.world.openDirect(amina.id).id);
});

test("once the platform says “too fast” no channel is opened for a while", async () => {
  stage.gateway.faults.add("POST", /^\/users\/@me\/channels$/, { kind: "status", status: 403, code: 40003 });
  await stage.gateway.slash(amina, "help");
  await stage.gateway.until(() =>
    stage.log.lines.some(({ message }) => message.includes("could not be opened")),
  );
  await stage.gateway.slash(stage.gateway.addUser("Kofi"), "help");
  await stage.gateway.slash(amina, "help");
  expect(stage.gateway.asked("POST", /^\/users\/@me\/channels$/)).toHaveLength(1);
  expect(stage.directory.refused.size).toBe(0);
});

test("in a direct message the class is where the person was last seen", async () => {
  await stage.gateway.slash(amina, "help");
  await stage.gateway.slash(amina, "run next", {}, { isDirect: true });
  expect(stage.calls[1]?.place).toEqual(stage.calls[0]?.place);
  expect(stage.calls[1]?.role).toBe("student");
});

test("in a direct message from somebody unknown one sentence says what to do", async () => {
  const answer = await stage.gateway.slash(amina, "help", {}, { isDirect: true });
  expect(answer.text).toContain("Use one command in your class's server");
  expect(stage.calls).toEqual([]);
});

test("direct commands are registered for direct messages alone, so nothing shows twice in a server", () => {
  const bodies = stage.gateway.asked("PUT", /^\/applications\/\d+\/commands$/)[0]?.body;
  // Five words, and the menu of a message.
  expect(bodies).toHaveLength(6);
  expect(bodies).toMatchObject(Array.from({ length: 6 }, () => ({ contexts: [1] })));
});

test("an interaction that comes again does nothing again", async () => {
  await stage.gateway.slash(amina, "help");
  stage.gateway.socket.repeatLast("INTERACTION_CREATE");
  await stage.gateway.until(() =>
    stage.log.lines.some(({ message }) => message === "an interaction came again"),
  );
  expect(stage.calls).toHaveLength(1);
  expect(stage.gateway.asked("POST", /\/callback$/)).toHaveLength(1);
});
