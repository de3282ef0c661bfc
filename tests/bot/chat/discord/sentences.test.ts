import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import { listButtons } from "../../../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../../../support/gateway/world.ts";

/* Sentences to the bot alone and in a channel with its name in them, through the real client. */

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage();
  amina = stage.gateway.addUser("Amina", { nick: "Amina B." });
  stage.onCommand = (call) =>
    call.answer(
      {
        text: `Heard: ${JSON.stringify(call.options)}`,
        actions: [{ label: "Next", line: "run next run:7" }],
      },
      "private",
    );
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

const alone = { isDirect: true } as const;
const named = (text: string): string => `<@${stage.gateway.world.bot.id}> ${text}`;
const personId = (): string => `discord:${amina.id}`;
const place = (name = "Harbour", id = stage.gateway.guild.id) => ({
  classKey: `discord:${id}`,
  className: name,
  channelRef: stage.gateway.channel.id,
});
function inClass(): void {
  stage.directory.places.set(personId(), { place: place(), role: "student" });
}

describe("in a channel", () => {
  test("a message that names the bot is a question of its author, answered under it with keys, and nobody is called", async () => {
    const [answer] = await stage.gateway.write(amina, named("how long left?"));
    expect(stage.calls[0]).toMatchObject({
      name: "ask",
      options: { text: "how long left?" },
      person: { id: personId(), name: "Amina B." },
      role: "student",
      place: { classKey: `discord:${stage.gateway.guild.id}`, channelRef: stage.gateway.channel.id },
    });
    expect(answer?.channelId).toBe(stage.gateway.channel.id);
    expect(answer?.calledIds).toEqual([]);
    expect(listButtons(answer?.components ?? []).map(({ custom_id }) => custom_id)).toEqual([
      "run next run:7",
    ]);
    const body = stage.gateway.asked("POST", /\/channels\/\d+\/messages$/)[0]?.body;
    expect(body).toMatchObject({ allowed_mentions: { parse: [], replied_user: false } });
  });

  test("others' talk, other bots and the bot's own words are left alone", async () => {
    const robot = stage.gateway.addUser("Robot");
    stage.gateway.beginWriting(amina, "how long left?");
    stage.gateway.beginWriting(amina, `<@${robot.id}> how long left?`);
    await stage.gateway.write(amina, named("done?"));
    expect(stage.calls.map(({ options }) => options)).toEqual([{ text: "done?" }]);
    // The answer came back to the bot as a message of its own.
    await stage.gateway.write(amina, named("and now?"));
    expect(stage.calls).toHaveLength(2);
  });

  test("a command is a question too: nothing is done by it where others read along", async () => {
    await stage.gateway.write(amina, named("/run next run:7"));
    expect(stage.calls[0]).toMatchObject({ name: "ask", options: { text: "/run next run:7" } });
  });

  test("the bare name is a call for help", async () => {
    await stage.gateway.write(amina, named(""));
    expect(stage.calls[0]).toMatchObject({ name: "help", options: {} });
  });

  test("who manages the server is its teacher there too, by the roles the server gives", async () => {
    const { guild } = stage.gateway;
    const managing = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
    const roleId = stage.gateway.addRole(guild.id, "Teachers", managing);
    const teacher = stage.gateway.addUser("Iris", { roleIds: [roleId] });
    await stage.gateway.write(teacher, named("who has tank 3"));
    expect(stage.calls[0]).toMatchObject({ role: "teacher", isVisit: true });
  });

  test("where the bot may not speak it answers to the person alone", async () => {
    const { guild } = stage.gateway;
    const locked = stage.gateway.addChannel(guild.id, "locked", PermissionFlagsBits.SendMessages);
    stage.directory.channels.set(personId(), stage.gateway.world.openDirect(amina.id).id);
    stage.gateway.beginWriting(amina, named("how long left?"), { channel: locked });
    await stage.gateway.until(() => stage.gateway.messagesTo(amina).length === 1 || undefined);
    expect(stage.gateway.messagesTo(amina)[0]?.content).toContain("how long left?");
  });

  test("a message that comes again is answered once", async () => {
    stage.onCommand = (call) =>
      call.answer(
        { text: `Heard ${stage.calls.filter(({ callId }) => callId === call.callId).length}` },
        "private",
      );
    await stage.gateway.write(amina, named("one"));
    stage.gateway.socket.repeatLast("MESSAGE_CREATE");
    await stage.gateway.write(amina, named("two"));
    expect(stage.gateway.messagesIn(stage.gateway.channel.id).map(({ content }) => content)).toEqual([
      "Heard 1",
      "Heard 1",
    ]);
  });
});

describe("alone with the bot", () => {
  test("a sentence is answered for the class they are in", async () => {
    inClass();
    const [answer] = await stage.gateway.write(amina, "wie lange noch?", alone);
    expect(stage.calls[0]).toMatchObject({
      name: "ask",
      options: { text: "wie lange noch?" },
      place: place(),
    });
    expect(stage.gateway.messagesTo(amina)).toEqual([answer]);
    expect(stage.directory.channels.get(personId())).toBe(answer?.channelId);
  });

  test("a typed command is that command", async () => {
    inClass();
    await stage.gateway.write(amina, '/run next run:7 step:"stop bath"', alone);
    expect(stage.calls[0]).toMatchObject({ name: "run next", options: { run: "7", step: "stop bath" } });
  });

  test("somebody unknown is told in both languages what to do first", async () => {
    const [answer] = await stage.gateway.write(amina, "how long left?", alone);
    expect(answer?.content).toMatch(
      /Use one command in your class's server[^]*Gib einen Befehl auf dem Server/,
    );
    expect(stage.calls).toEqual([]);
  });

  test("somebody in two classes is asked which, unless they were in one just now", async () => {
    const places = ["Tuesday", "Friday"].map((name, index) => ({
      place: place(name, index === 0 ? stage.gateway.guild.id : "424242424242424242"),
      role: "student" as const,
      language: "en" as const,
    }));
    const seen = (minutesAgo: number): void =>
      void stage.directory.classes.set(
        personId(),
        places.map((each, index) => ({ ...each, seenAt: Date.now() - (minutesAgo + index) * 60_000 })),
      );
    inClass();
    seen(3 * 60);
    const [question] = await stage.gateway.write(amina, "how long left?", alone);
    expect(question?.content).toBe("You are in several classes. Which one is it about?");
    const keys = listButtons(question?.components ?? []);
    expect(keys.map((key) => "label" in key && key.label)).toEqual(["Tuesday", "Friday"]);
    expect(stage.calls).toEqual([]);
    await stage.gateway.press(amina, keys[1]?.custom_id ?? "");
    expect(stage.calls[0]).toMatchObject({
      name: "ask",
      options: { text: "how long left?" },
      place: { className: "Friday" },
    });

    seen(30);
    const [answer] = await stage.gateway.write(amina, "what now", alone);
    expect(stage.calls[1]?.place.className).toBe("Tuesday");
    expect(answer?.content).toMatch(/^_Tuesday_\n/);
  });

  test("a sentence too long for a key is left behind, and the key says what is next in that class", async () => {
    stage.directory.classes.set(
      personId(),
      ["Tuesday", "Friday"].map((name) => ({
        place: place(name),
        role: "student",
        seenAt: 0,
        language: "de",
      })),
    );
    inClass();
    const [question] = await stage.gateway.write(amina, "wie lange noch ".repeat(10), alone);
    expect(question?.content).toBe("Du bist in mehreren Kursen. Um welchen geht es?");
    await stage.gateway.press(amina, listButtons(question?.components ?? [])[0]?.custom_id ?? "");
    expect(stage.calls[0]?.name).toBe("help");
  });
});

describe("whoever may be hurt gets first aid at once", () => {
  test.each([
    ["in a channel", "fixer in my eye!!", false],
    ["alone, of no class that is known", "hab fixierer im auge", true],
  ])("%s", async (_, text, isDirect) => {
    const [answer] = await stage.gateway.write(amina, isDirect ? text : named(text), { isDirect });
    expect(answer?.content).toMatch(/^\*\*Eye: rinse now/);
    expect(answer?.content).toContain("**Auge: sofort");
    expect(stage.calls).toEqual([]);
  });

  test("in their own language, before they are asked which class", async () => {
    const both = ["Tuesday", "Friday"].map((name) => ({
      place: place(name),
      role: "student" as const,
      seenAt: 0,
      language: "de" as const,
    }));
    stage.directory.classes.set(personId(), both);
    const [answer] = await stage.gateway.write(amina, "entwickler verschüttet", alone);
    expect(answer?.content).toMatch(/^\*\*Verschüttet/);
  });
});

test("an answer that is lost on the way is given again, and shown once", async () => {
  inClass();
  stage.gateway.faults.add("POST", /\/channels\/\d+\/messages$/, { kind: "cut", after: true });
  await stage.gateway.write(amina, "how long left?", alone);
  await stage.gateway.until(
    () => stage.gateway.asked("POST", /\/channels\/\d+\/messages$/).length === 2 || undefined,
  );
  expect(stage.gateway.messagesTo(amina)).toHaveLength(1);
});

test("thirty at once: no answer is lost, and none is refused as too fast", async () => {
  const class30 = Array.from({ length: 30 }, (_, index) => stage.gateway.addUser(`Student ${index}`));
  for (const user of class30)
    stage.directory.places.set(`discord:${user.id}`, { place: place(), role: "student" });
  const answers = await Promise.all(
    class30.map((user) => stage.gateway.write(user, "how long left?", alone)),
  );
  expect(answers.flat()).toHaveLength(30);
  expect(stage.gateway.requests.filter(({ status }) => status === 429)).toEqual([]);
});
