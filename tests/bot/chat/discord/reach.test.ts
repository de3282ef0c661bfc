import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";

/* Whether whoever starts a run is told where its calls will come, and by whom alone that is seen. */

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage();
  amina = stage.gateway.addUser("Amina");
  stage.onCommand = (call) => call.answer({ text: "R1 has begun." }, "private");
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

const alone = (): string[] =>
  stage.gateway
    .messagesTo(amina)
    .filter(({ interactionId }) => interactionId === undefined)
    .map(({ content }) => content);

function inClass(channelRef: string | null = stage.gateway.channel.id): void {
  const { guild } = stage.gateway;
  const place = { classKey: `discord:${guild.id}`, className: guild.name, channelRef };
  stage.directory.places.set(`discord:${amina.id}`, { place, role: "student" });
}

test("by direct message: a word is said there, once", async () => {
  inClass();
  expect((await stage.gateway.slash(amina, "run start")).messages).toHaveLength(1);
  await stage.gateway.until(() => alone().length === 1 || undefined);
  expect(alone()[0]).toMatch(/^Your calls come here\./);
  expect((await stage.gateway.slash(amina, "run start")).messages).toHaveLength(1);
  expect(alone()).toHaveLength(1);
});

test.each([
  ["en", /direct messages are closed to me: your calls come in <#\d+>/],
  ["de", /Direktnachrichten sind für mich gesperrt: Deine Signale kommen in <#\d+>/],
])(
  "where direct messages are closed, in the class's channel, and only they see it (%s)",
  async (locale, words) => {
    amina = stage.gateway.addUser("Amina", { locale });
    amina.isClosed = true;
    inClass();
    const answer = await stage.gateway.slash(amina, "run start");
    await stage.gateway.until(() => answer.messages.length === 2 || undefined);
    expect(answer.messages[1]).toMatchObject({ content: expect.stringMatching(words), isPrivate: true });
  },
);

test.each([
  ["there is no channel", null, /the class has no channel yet/],
  [
    "the bot may not speak in it",
    PermissionFlagsBits.SendMessages,
    /I lack Send Messages \(a server manager/,
  ],
] as const)(
  "where neither works since %s, they are told to keep the time themselves",
  async (_, denied, words) => {
    amina.isClosed = true;
    const { guild } = stage.gateway;
    const channel = denied === null ? null : stage.gateway.addChannel(guild.id, "locked", denied);
    if (channel) await stage.gateway.until(() => stage.gateway.socket.isConnected() || undefined);
    // The class's channel is another than that of the call.
    stage.onCommand = (call) => {
      inClass(channel?.id ?? null);
      return call.answer({ text: "R1 has begun." }, "private");
    };
    const answer = await stage.gateway.slash(amina, "run start");
    await stage.gateway.until(() => answer.messages.length === 2 || undefined);
    expect(answer.messages[1]?.content).toMatch(/^\*\*No call can reach you: keep the time yourself\.\*\*/);
    expect(answer.messages[1]?.content).toMatch(words);
  },
);

test("a start that was refused says nothing of where calls come", async () => {
  amina.isClosed = true;
  inClass();
  stage.onCommand = (call) => call.answer({ text: "No plan yet." }, "private", "ERR_NO_PLAN");
  expect((await stage.gateway.slash(amina, "run start")).messages).toHaveLength(1);
});

test("who got no answer since it came too late learns at their next word what was done, once", async () => {
  inClass();
  stage.gateway.faults.add("POST", /\/callback$/, { kind: "status", status: 404, code: 10062 });
  stage.onCommand = (call) => call.answer({ text: "**R1**: moved by 10 s." }, "private");
  stage.gateway.begin(amina, "help", {});
  await stage.gateway.until(() => stage.log.lines.some(({ message }) => message.includes("too late")));
  stage.onCommand = (call) => call.answer({ text: "Here is help." }, "private");
  const next = await stage.gateway.slash(amina, "help");
  expect(next.text).toMatch(
    /^_Your last call was done, but my answer came too late.*_\n\*\*R1\*\*: moved by 10 s\.\n\nHere is help\.$/s,
  );
  expect((await stage.gateway.slash(amina, "help")).text).toBe("Here is help.");
});
