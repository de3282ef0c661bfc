import { Locale, PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { aboutOf, summaryOf } from "../../../../commands/forms.ts";
import { commands } from "../../../../commands/index.ts";
import { mapCommands } from "../../../../bot/chat/discord/options.ts";
import { englishIn } from "../../../support/english.ts";
import { openClassroom } from "../../../support/gateway/classroom.ts";
import type { Answer } from "../../../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../../../support/gateway/world.ts";
import { openapi } from "../../../support/openapi.ts";
import { listCommandFaults } from "../../../support/openapi-rules.ts";

/* The real commands on the loopback platform, asked by people whose clients are set to several languages. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let teacher: User;

beforeEach(async () => {
  classroom = await openClassroom();
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  teacher = classroom.gateway.addUser("Iris", { permissions });
  const { gateway } = classroom;
  const sheet = { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C", time: "9:00" };
  await gateway.slash(teacher, "sheet add", { ...sheet, speed: 400 });
  await gateway.slash(teacher, "tank add", { numbers: "1-3", reels: 1, volume: "300 ml" });
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

const plan = (user: User): Promise<Answer> =>
  classroom.gateway.slash(user, "plan make", { film: "Lantern 400", temp: "20.5C", tank: "1" });

/** What the bot said to one person unasked. */
const callsTo = (user: User): string[] =>
  classroom.gateway
    .messagesTo(user)
    .filter(({ interactionId }) => interactionId === undefined)
    .map(({ content }) => content)
    // Said once, at the first start.
    .filter((content) => !/^(Your calls come|Deine Signale kommen) h/.test(content));

test("who has a German client is answered in German, and called in German by direct message", async () => {
  const { gateway } = classroom;
  const frieda = gateway.addUser("Frieda", { locale: "de" });
  const planned = await plan(frieda);
  expect(planned.text).toContain("bei 20,5 °C");
  expect(englishIn(planned.text)).toEqual([]);
  await gateway.slash(frieda, "run start");
  expect((await gateway.slash(frieda, "run next")).text).toContain("im Entwickler");
  await classroom.tick();
  const [first] = callsTo(frieda);
  expect(first).toMatch(/bewegen|kippen/);
  expect(englishIn(first ?? "")).toEqual([]);
  await classroom.pass(60);
  expect(callsTo(frieda).length).toBeGreaterThan(1);
  expect(englishIn(...callsTo(frieda))).toEqual([]);
});

test("a client in a language that is not spoken here gets English, beside one that is", async () => {
  const { gateway } = classroom;
  const answers = [];
  for (const [name, locale] of [
    ["Kofi", "pt-BR"],
    ["Ola", "en-GB"],
    ["Frieda", "de"],
  ] as const)
    answers.push((await plan(gateway.addUser(name, { locale }))).text);
  const [portuguese, english, german] = answers.map((text) => text.replace(/\bP\d+\b/g, "P"));
  expect(portuguese).toBe(english);
  expect(portuguese).toContain("at 20.5 °C");
  expect(german).not.toBe(english);
});

test("what a person chose wins over their client, until they let the client say again", async () => {
  const { gateway } = classroom;
  const frieda = gateway.addUser("Frieda", { locale: "de" });
  expect((await plan(frieda)).text).toContain("bei 20,5 °C");
  await gateway.slash(frieda, "mine language", { language: "en" });
  expect((await plan(frieda)).text).toContain("at 20.5 °C");
  await gateway.slash(frieda, "mine language", { language: "chat" });
  expect((await plan(frieda)).text).toContain("bei 20,5 °C");
  const kofi = gateway.addUser("Kofi", { locale: "pt-BR" });
  await gateway.slash(kofi, "mine language", { language: "de" });
  expect((await plan(kofi)).text).toContain("bei 20,5 °C");
});

test("every command and option of the real bot has its German description, within the platform's rules", () => {
  const { bodies } = mapCommands(commands);
  expect(listCommandFaults(bodies)).toEqual([]);
  const described = bodies.flatMap(everyDescribed);
  expect(described.length).toBeGreaterThan(100);
  const german = new Set(
    commands.flatMap((command) => [
      summaryOf(command, "de"),
      ...[...Object.keys(command.options.shape), command.file?.name ?? ""].map((name) =>
        aboutOf(command, name, "de"),
      ),
    ]),
  );
  for (const { description, description_localizations: others } of described) {
    // The platform's own name of the language, from the types of its documentation.
    expect(Object.keys(others ?? {}), description).toEqual([Locale.German]);
    expect(german, description).toContain(others?.[Locale.German]);
  }
});

describe("the platform's OpenAPI document", () => {
  const put = (body: unknown) =>
    openapi.request("PUT", "/applications/{application_id}/guilds/{guild_id}/commands", body);

  test("takes the German descriptions as they are registered", () => {
    expect(put(mapCommands(commands).bodies)).toEqual([]);
  });

  test.each([
    ["of 101 characters", "x".repeat(101)],
    ["that is empty", ""],
  ])("would refuse a description in German %s", (_, text) => {
    const body = { name: "plan", description: "Works out a plan", description_localizations: { de: text } };
    expect(put([body])).not.toEqual([]);
  });
});

interface Described {
  readonly type?: number;
  readonly description?: string;
  readonly description_localizations?: Readonly<Record<string, string>> | null;
  readonly options?: readonly Described[];
}

/** All that can be called or filled in; a group is neither, and told by the names in it. */
function everyDescribed(body: unknown): Described[] {
  const { options = [], ...own } = body as Described;
  const isGroup = options.some(({ type }) => type === 1 || type === 2);
  return [...(isGroup ? [] : [own]), ...options.flatMap(everyDescribed)];
}
