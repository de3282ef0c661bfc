import { describe, expect, test } from "vitest";
import { z } from "zod";
import { mapCommands } from "../../../../bot/chat/discord/options.ts";
import { defineCommand, type Command } from "../../../../commands/define.ts";
import { commands } from "../../../../commands/index.ts";
import { TEST_COMMANDS } from "../../../support/gateway/bot.ts";
import { openapi } from "../../../support/openapi.ts";
import { listCommandFaults } from "../../../support/openapi-rules.ts";

type Body = ReturnType<typeof mapCommands>["bodies"][number];

const STRING = 3;
const INTEGER = 4;
const BOOLEAN = 5;
const NUMBER = 10;

function aCommand(options: z.ZodRawShape, over: Partial<Command> = {}): Command {
  return {
    ...defineCommand({
      name: "plan",
      summary: "Works out a plan",
      options: () => options,
      who: "student",
      visibility: "private",
      handle: () => ({ text: "" }),
    }),
    ...over,
  };
}

const optionsOf = (options: z.ZodRawShape, over: Partial<Command> = {}) =>
  mapCommands([aCommand(options, over)]).bodies[0]?.options;

describe("options come from the schema that checks them", () => {
  test.each<[string, z.ZodType, object]>([
    ["text with lengths", z.string().min(2).max(60), { type: STRING, min_length: 2, max_length: 60 }],
    ["a whole number with bounds", z.int().min(1).max(30), { type: INTEGER, min_value: 1, max_value: 30 }],
    ["a whole number without bounds", z.int(), { type: INTEGER }],
    ["a whole number above a bound", z.int().gt(0), { type: INTEGER, min_value: 1 }],
    ["a number", z.number().min(0.5), { type: NUMBER, min_value: 0.5 }],
    ["a number made of text", z.coerce.number().int().max(9), { type: INTEGER, max_value: 9 }],
    ["yes or no", z.boolean(), { type: BOOLEAN }],
    ["text that is read further", z.string().transform(Number), { type: STRING }],
    ["text or number", z.union([z.string(), z.number()]), { type: STRING }],
    ["text or nothing", z.string().max(5).nullable(), { type: STRING, max_length: 5 }],
    [
      "one of some words",
      z.enum(["water", "acid"]),
      {
        type: STRING,
        choices: [
          { name: "water", name_localizations: { de: "Wasser" }, value: "water" },
          { name: "acid stop bath", name_localizations: { de: "saures Stoppbad" }, value: "acid" },
        ],
      },
    ],
    [
      "one of some numbers",
      z.union([z.literal(1), z.literal(2)]),
      {
        type: NUMBER,
        choices: [
          { name: "1", value: 1 },
          { name: "2", value: 2 },
        ],
      },
    ],
  ])("%s", (_, schema, expected) => {
    expect(optionsOf({ it: schema.describe("What it is") })).toEqual([
      { name: "it", description: "What it is", required: true, ...expected },
    ]);
  });

  test("what has a default or is optional need not be given, and comes after what must be", () => {
    const options = optionsOf({
      rolls: z.int().default(1).describe("Rolls"),
      note: z.string().optional().describe("A note"),
      film: z.string().describe("Film"),
    });
    expect(options?.map(({ name, required }) => [name, required])).toEqual([
      ["film", true],
      ["rolls", false],
      ["note", false],
    ]);
  });

  test("an option with a completer is completed, also where its words are few", () => {
    const shape = { film: z.enum(["a", "b"]).describe("Film") };
    expect(optionsOf(shape, { complete: { film: () => [] } })?.[0]).toMatchObject({
      type: STRING,
      autocomplete: true,
    });
    expect(optionsOf(shape, { complete: { film: () => [] } })?.[0]).not.toHaveProperty("choices");
  });
});

describe("groups", () => {
  test("a command of one word beside sub-commands becomes a sub-command itself, and is found again", () => {
    const map = mapCommands(TEST_COMMANDS);
    const plan = map.bodies.find(({ name }) => name === "plan");
    expect(plan?.options?.map(({ name, type }) => [name, type])).toEqual([
      ["make", 1],
      ["curve", 1],
    ]);
    expect(map.find("plan", "make")?.name).toBe("plan");
    expect(map.find("plan", "curve")?.name).toBe("plan curve");
    expect(map.find("help", undefined)?.name).toBe("help");
    expect(map.find("plan", undefined)).toBeUndefined();
  });

  test("replies name commands as they are called here", () => {
    const { sayPaths } = mapCommands(TEST_COMMANDS);
    expect(sayPaths("Type `/plan film:… temp:20`, then `/plan curve` or `/help`. (/plan, `/planes`)")).toBe(
      "Type `/plan make film:… temp:20`, then `/plan curve` or `/help`. (/plan, `/planes`)",
    );
  });

  test("what the test commands come to", () => {
    // The words in other languages are those of the real commands, and have a test of their own.
    const english = JSON.stringify(mapCommands(TEST_COMMANDS).bodies, (key, value: unknown) =>
      key === "description_localizations" ? undefined : value,
    );
    expect(JSON.parse(english)).toMatchSnapshot();
  });

  test("two commands that come to one name are told", () => {
    const both = [aCommand({}), aCommand({}, { name: "plan make" })];
    expect(() => mapCommands(both)).toThrow("/plan make: two commands come to this name here");
  });
});

describe("limits of the platform, all told at once", () => {
  const many = (count: number): z.ZodRawShape =>
    Object.fromEntries(
      Array.from({ length: count }, (_, index) => [`o${index}`, z.string().optional().describe("x")]),
    );

  test.each<[string, Command[], string]>([
    ["capital letters", [aCommand({}, { name: "Plan" })], "small letters"],
    ["33 letters", [aCommand({}, { name: "p".repeat(33) })], "1 to 32"],
    ["no summary", [aCommand({}, { summary: "" })], "/plan: has no description"],
    ["a long summary", [aCommand({}, { summary: "x".repeat(101) })], "101 characters; 100 at most"],
    ["an option without words", [aCommand({ film: z.string() })], "/plan film:: has no description"],
    [
      "an option with a capital",
      [aCommand({ exposureIndex: z.string().describe("x") })],
      "/plan exposureIndex:",
    ],
    ["26 options", [aCommand(many(26))], "26 options; 25 at most"],
    [
      "26 choices",
      [aCommand({ it: z.enum(Array.from({ length: 26 }, (_, i) => `c${i}`)).describe("x") })],
      "26 choices",
    ],
    [
      "a long choice",
      [aCommand({ it: z.enum(["c".repeat(101), "d"]).describe("x") })],
      "not 1 to 100 characters",
    ],
    [
      "101 commands",
      Array.from({ length: 101 }, (_, i) => aCommand({}, { name: `plan${i}` })),
      "101 commands; 100 at most",
    ],
    [
      "8000 characters",
      Array.from({ length: 25 }, (_, index) =>
        aCommand(
          Object.fromEntries(
            Array.from({ length: 4 }, (__, i) => [`o${i}`, z.string().optional().describe("x".repeat(90))]),
          ),
          { name: `plan sub${index}` },
        ),
      ),
      "8000 at most",
    ],
  ])("%s", (_, list, sentence) => {
    expect(() => mapCommands(list)).toThrow(sentence);
  });

  test("each fault has its line", () => {
    const act = () => mapCommands([aCommand({ A: z.string(), b: z.string() })]);
    expect(act).toThrow(/plan A:.*small letters[\s\S]*plan A:.*no description[\s\S]*plan b:.*no description/);
  });
});

describe("the commands of this program", () => {
  const bodies = mapCommands(commands).bodies;

  test("fit the platform's written rules", () => {
    expect(listCommandFaults(bodies)).toEqual([]);
  });

  test("fit the platform's OpenAPI document", () => {
    const path = "/applications/{application_id}/guilds/{guild_id}/commands";
    expect(openapi.request("PUT", path, bodies)).toEqual([]);
  });

  test("can all be called: each has a path of its own", () => {
    const map = mapCommands(commands);
    const found = map.bodies.flatMap(({ name, options = [] }) =>
      listPaths([name], options).map((path) => map.find(...path)),
    );
    expect(found.map((each) => each?.name).sort()).toEqual(commands.map(({ name }) => name).sort());
  });
});

/** The words of each command under these options. */
function listPaths(path: string[], options: NonNullable<Body["options"]>): string[][] {
  const branches = options.filter(({ type }) => type === 1 || type === 2);
  if (branches.length === 0) return [path];
  return branches.flatMap((each) =>
    listPaths([...path, each.name], "options" in each ? (each.options ?? []) : []),
  );
}

describe("what not everybody may call", () => {
  const map = mapCommands(commands);
  const bodyOf = (name: string): Body | undefined => map.bodies.find((each) => each.name === name);

  test("is hidden by the platform from who does not manage the server, and everything else is shown", () => {
    for (const command of commands) {
      const path = map.pathOf(command.name);
      const body = bodyOf(path.split(" ")[0] ?? "");
      // ManageGuild is bit 5. Source: the platform's documentation, "Permissions".
      expect([command.name, body?.default_member_permissions]).toEqual([
        command.name,
        command.who === "student" ? undefined : "32",
      ]);
    }
  });

  test("is named in replies as it is called here, and nothing else with it", () => {
    expect(map.sayPaths("`/batch mix kind:fixer`, `/batch status`, `/class setup`, `/sheet`, `/plan`")).toBe(
      "`/staff-batch mix kind:fixer`, `/batch status`, `/staff-class setup`, `/sheet`, `/plan make`",
    );
  });
});

test("choices have a word in each language where they are not a number or a size", () => {
  const choices = mapCommands(commands).bodies.flatMap((body) => listChoices(body.options ?? []));
  expect(choices.length).toBeGreaterThan(100);
  // A size; or what is the same word in both.
  const isSame = ({ name, value }: Choice): boolean =>
    /^[\dx./]+( cm| in)?$/.test(String(value)) || ["en", "de"].includes(String(value)) || name === "Film";
  const without = choices.filter((each) => !isSame(each) && each.name_localizations?.["de"] === undefined);
  // Whatever is listed here needs a word in `commands/speech/words/choices.*.ts`.
  expect(without.map(({ value }) => value)).toEqual([]);
});

interface Choice {
  readonly name: string;
  readonly value: string | number;
  readonly name_localizations?: Readonly<Record<string, string | null>> | null;
}

function listChoices(options: NonNullable<Body["options"]>): Choice[] {
  return options.flatMap((each) => [
    ...("choices" in each ? ((each.choices ?? []) as Choice[]) : []),
    ...("options" in each ? listChoices(each.options ?? []) : []),
  ]);
}
