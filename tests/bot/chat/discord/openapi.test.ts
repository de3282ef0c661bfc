import { describe, expect, test } from "vitest";
import { openapi } from "../../../support/openapi.ts";
import { listCallbackFaults, listCommandFaults, listMessageFaults } from "../../../support/openapi-rules.ts";

/* The judges themselves: that each rule can fail. */

const command = (over: object = {}) => ({ name: "plan", description: "Works out a plan", ...over });
const option = (over: object = {}) => ({ type: 3, name: "film", description: "Film", ...over });
const button = (over: object = {}) => ({ type: 2, style: 1, label: "Go", custom_id: "go", ...over });
const row = (...components: object[]) => ({ type: 1, components });

test.each<[string, object[], string]>([
  ["a space in a name", [command({ name: "plan curve" })], "name"],
  ["a capital", [command({ name: "Plan" })], "capital letters"],
  ["no description", [command({ description: "" })], "no description"],
  [
    "choices and completion",
    [command({ options: [option({ autocomplete: true, choices: [{ name: "a", value: "a" }] })] })],
    "choices and autocomplete",
  ],
  [
    "a long choice",
    [command({ options: [option({ choices: [{ name: "a", value: "a".repeat(101) }] })] })],
    "choice value over 100",
  ],
  [
    "required after optional",
    [command({ options: [option(), option({ name: "temp", required: true })] })],
    "required after optional",
  ],
  ["an option twice", [command({ options: [option(), option()] })], "option name twice"],
  ["a command twice", [command(), command()], "command name twice"],
  [
    "a sub-command beside an option",
    [command({ options: [option(), option({ name: "curve", type: 1 })] })],
    "sub-command beside option",
  ],
  [
    "101 commands",
    Array.from({ length: 101 }, (_, index) => command({ name: `c${index}` })),
    "more than 100 commands",
  ],
  [
    "8000 characters",
    [
      command({
        options: Array.from({ length: 25 }, (_, i) =>
          option({
            name: `sub${i}`,
            type: 1,
            description: "x".repeat(100),
            options: Array.from({ length: 3 }, (__, j) =>
              option({ name: `o${j}`, description: "x".repeat(95) }),
            ),
          }),
        ),
      }),
    ],
    "more than 8000 characters",
  ],
])("commands: %s", (_, bodies, fault) => {
  expect(listCommandFaults(bodies).join("; ")).toContain(fault);
});

test.each<[string, object, string]>([
  ["2001 characters", { content: "x".repeat(2001) }, "more than 2000 characters"],
  ["nothing at all", { content: " " }, "empty message"],
  [
    "users parsed and listed",
    { content: "x", allowed_mentions: { parse: ["users"], users: ["1"] } },
    "users parsed and listed",
  ],
  [
    "embeds of 6001 characters",
    { embeds: [{ description: "x".repeat(4000) }, { description: "x".repeat(2001) }] },
    "embeds over 6000",
  ],
  ["an empty field", { embeds: [{ fields: [{ name: "a", value: " " }] }] }, "empty field value"],
  [
    "6 rows",
    { content: "x", components: Array.from({ length: 6 }, (_, i) => row(button({ custom_id: `${i}` }))) },
    "more than 5 rows",
  ],
  ["a custom_id twice", { content: "x", components: [row(button(), button())] }, "custom_id twice"],
  [
    "a button without custom_id",
    { content: "x", components: [row({ type: 2, style: 1, label: "Go" })] },
    "button without custom_id",
  ],
  ["new components without flag", { components: [{ type: 10, content: "x" }] }, "without their flag"],
  [
    "new components beside content",
    { flags: 32768, content: "x", components: [{ type: 10, content: "x" }] },
    "beside content",
  ],
  [
    "41 nested components",
    {
      flags: 32768,
      components: [{ type: 17, components: Array.from({ length: 40 }, () => ({ type: 10, content: "x" })) }],
    },
    "more than 40 components",
  ],
])("messages: %s", (_, body, fault) => {
  expect(listMessageFaults(body).join("; ")).toContain(fault);
});

test("a message with a file alone is a message; an edit may leave out what stays", () => {
  expect(listMessageFaults({}, { files: 1 })).toEqual([]);
  expect(listMessageFaults({}, { isEdit: true })).toEqual([]);
});

test("an answer without data, and a deferral with a flag it may not have", () => {
  expect(listCallbackFaults({ type: 4 })).toEqual(["answer without data"]);
  expect(listCallbackFaults({ type: 5, data: { flags: 4 } })).toHaveLength(1);
  expect(listCallbackFaults({ type: 5, data: { flags: 64 } })).toEqual([]);
});

describe("the platform's OpenAPI document", () => {
  const MESSAGES = "/channels/{channel_id}/messages";
  const COMMANDS = "/applications/{application_id}/guilds/{guild_id}/commands";

  test.each<[string, string, string, unknown]>([
    ["a nonce of 26 characters", "POST", MESSAGES, { content: "x", nonce: "n".repeat(26) }],
    [
      "101 people to call",
      "POST",
      MESSAGES,
      { content: "x", allowed_mentions: { users: Array.from({ length: 101 }, (_, i) => `${i + 1}`) } },
    ],
    ["an id that is none", "POST", "/users/@me/channels", { recipient_id: "amina" }],
    ["a label of 81 characters", "POST", MESSAGES, { components: [row(button({ label: "x".repeat(81) }))] }],
    [
      "a line of 101 characters",
      "POST",
      MESSAGES,
      { components: [row(button({ custom_id: "x".repeat(101) }))] },
    ],
    [
      "6 buttons in a row",
      "POST",
      MESSAGES,
      { components: [row(...Array.from({ length: 6 }, (_, i) => button({ custom_id: `${i}` })))] },
    ],
    [
      "26 options",
      "PUT",
      COMMANDS,
      [command({ options: Array.from({ length: 26 }, (_, i) => option({ name: `o${i}` })) })],
    ],
    [
      "an unknown kind of answer",
      "POST",
      "/interactions/{interaction_id}/{interaction_token}/callback",
      { type: 99 },
    ],
    ["a place the platform does not have", "POST", "/channels/{channel_id}/shout", {}],
  ])("refuses %s", (_, method, path, body) => {
    expect(openapi.request(method, path, body)).not.toEqual([]);
  });

  test("takes permissions as text: the document alone would not", () => {
    expect(openapi.request("PUT", COMMANDS, [command({ default_member_permissions: "32" })])).toEqual([]);
    expect(openapi.request("PUT", COMMANDS, [command({ default_member_permissions: "all" })])).not.toEqual(
      [],
    );
  });

  test("judges answers as well", () => {
    expect(openapi.answer("POST", MESSAGES, 200, { id: "1" })).not.toEqual([]);
    expect(openapi.answer("POST", MESSAGES, 403, { message: "no", code: 50013 })).toEqual([]);
    expect(openapi.answer("POST", MESSAGES, 403, {})).not.toEqual([]);
  });
});
