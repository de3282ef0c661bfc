import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { expect, test } from "vitest";

/*
 * Who may import what. The linter holds the same by file; here imports of types count, too, and the way round is looked for
 * over the whole house: a type that is only read still ties two files to each other.
 */

const root = join(import.meta.dirname, "..");

/** The nouns of `commands/`, each of which may lean on those before it. */
const NOUNS = [
  "sheet",
  "tank",
  "plan",
  "batch",
  "roll",
  "print",
  "contact",
  "mix",
  "tray",
  "run",
  "mine",
  "class",
  "help",
  "ask",
];
/** What every rule of a noun may stand on. */
const GROUND = [
  "store/",
  "commands/speech/",
  "commands/define.ts",
  "commands/owe.ts",
  "commands/result.ts",
  "commands/unreadable.ts",
  "commands/who.ts",
];
const SPEAKING = ["store/shapes/", "commands/speech/", "commands/define.ts", "commands/forms.ts"];
/** Chats are told of the store and of rules, but know neither each other nor who speaks through them. */
const OF_A_CHAT = ["bot/chat/*.ts", "bot/process/", "store/", "commands/"];

/** For each folder, the beginnings of what it may import; the longest folder that fits a file holds. Its own always may. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  "store/shapes/": [],
  "store/": ["store/shapes/"],
  "commands/result.ts": [],
  "commands/errors.ts": [],
  "commands/define.ts": ["store/", "commands/speech/", "commands/errors.ts", "commands/result.ts"],
  "commands/owe.ts": ["store/", "commands/speech/", "commands/define.ts"],
  "commands/reads.ts": ["commands/who.ts"],
  "commands/unreadable.ts": ["store/shapes/", "commands/speech/", "commands/define.ts"],
  "commands/who.ts": ["store/shapes/", "commands/speech/", "commands/define.ts"],
  "commands/forms.ts": [...SPEAKING, "commands/*/words/form.de.ts"],
  "commands/groups.ts": ["store/shapes/"],
  "commands/index.ts": ["commands/"],
  "commands/speech/": ["store/shapes/", "commands/result.ts"],
  ...Object.fromEntries(
    NOUNS.map((noun, at) => [
      `commands/${noun}/`,
      [...GROUND, ...NOUNS.slice(0, at).map((left) => `commands/${left}/`)],
    ]),
  ),
  "commands/caution/": GROUND,
  "bot/process/": ["commands/", "store/shapes/"],
  "bot/calls/": ["bot/chat/port.ts", "bot/process/", "commands/", "store/"],
  "bot/cues/": ["bot/process/", "bot/deliver/", "commands/", "store/"],
  "bot/deliver/": ["bot/chat/*.ts", "bot/process/", "commands/", "store/"],
  "bot/rounds/": ["bot/chat/*.ts", "bot/process/", "commands/", "store/"],
  "bot/disk/": ["bot/process/", "bot/rounds/", "commands/", "store/"],
  "bot/watch/": ["bot/chat/*.ts", "bot/process/", "bot/disk/", "commands/", "store/"],
  "bot/shard/": ["bot/process/", "bot/chat/discord/settings.ts", "store/"],
  "bot/demo/": ["bot/calls/", "bot/process/", "commands/", "store/"],
  "bot/chat/discord/": OF_A_CHAT,
  "bot/chat/room/": OF_A_CHAT,
  // The page takes pure files, the wire's types and the demo that its tour plays, and nothing that runs in the process.
  "bot/chat/room-page/": ["bot/chat/room/", "bot/demo/", "commands/", "store/shapes/"],
  "bot/chat/": ["commands/", "store/shapes/"],
  "bot/": ["bot/", "commands/", "store/"],
};

interface Import {
  readonly from: string;
  readonly to: string;
}

const files = ["bot", "commands", "store"].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => posix.join(folder, name)),
);
const imports: readonly Import[] = files.flatMap((from) =>
  [
    ...readFileSync(join(root, from), "utf8").matchAll(
      /(?:\bfrom|^import|\bimport\()\s*["'](\.[^"']+\.tsx?)["']/gm,
    ),
  ].map((found) => ({ from, to: posix.normalize(posix.join(posix.dirname(from), found[1] ?? "")) })),
);

const begins = (path: string, beginning: string): boolean =>
  beginning.includes("*")
    ? new RegExp(`^${beginning.replaceAll(".", "\\.").replaceAll("*", "[^/]+")}$`).test(path)
    : path.startsWith(beginning);

/** Of which folder's rules a file is; a command and its reply may lean on any noun, and nobody but their folder on them. */
const isSpoken = (path: string): boolean =>
  /^commands\/.*\/(command|reply)\.ts$/.test(path) || path === "commands/index.ts";

/** The page's tour answers with the bot's own sentences. */
const TOUR = "bot/chat/room-page/guide-bot.ts";

function isAllowed({ from, to }: Import): boolean {
  if (from === TOUR && to.startsWith("commands/")) return true;
  if (isSpoken(to) && to !== "commands/index.ts")
    return posix.dirname(from) === posix.dirname(to) || from === "commands/index.ts";
  if (from.startsWith("commands/") && to === "commands/index.ts") return false;
  const folder = Object.keys(MAY)
    .filter((each) => begins(from, each))
    .sort((a, b) => b.length - a.length)[0];
  if (folder === undefined) return false;
  if (begins(to, folder)) return true;
  if (isSpoken(from)) return to.startsWith("commands/") || to.startsWith("store/");
  return (MAY[folder] ?? []).some((beginning) => begins(to, beginning));
}

/** Files that reach themselves, in groups: each group goes round. */
function circlesOf(edges: readonly Import[]): string[][] {
  const next = new Map<string, string[]>();
  for (const { from, to } of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const reach = (start: string): Set<string> => {
    const seen = new Set<string>();
    const open = [...(next.get(start) ?? [])];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      if (seen.has(at)) continue;
      seen.add(at);
      open.push(...(next.get(at) ?? []));
    }
    return seen;
  };
  const reached = new Map([...next.keys()].map((file) => [file, reach(file)] as const));
  const round = [...reached].filter(([file, seen]) => seen.has(file)).map(([file]) => file);
  const groups = round.map((file) =>
    round
      .filter((other) => reached.get(file)?.has(other) && reached.get(other)?.has(file))
      .sort()
      .join(" "),
  );
  return [...new Set(groups)].map((group) => group.split(" "));
}

const say = ({ from, to }: Import): string => `${from} -> ${to}`;

test("the imports are read: there are many, and each leads to a file there is", () => {
  expect(imports.length).toBeGreaterThan(2000);
  const known = new Set(files);
  expect(imports.filter(({ to }) => !known.has(to)).map(say)).toEqual([]);
});

test("every file imports only what its folder may", () => {
  expect(imports.filter((each) => !isAllowed(each)).map(say)).toEqual([]);
});

test("a word's dictionary never leans on what picks the word", () => {
  const up = imports.filter(
    ({ from, to }) => /^commands\/.*[./](en|de)\.ts$/.test(from) && /(command|reply|-words)\.ts$/.test(to),
  );
  expect(up.map(say)).toEqual([]);
});

test("no file leads back to itself, by types or by values", () => {
  expect(circlesOf(imports)).toEqual([]);
});

test("each of these checks can fail", () => {
  const wrong: readonly Import[] = [
    { from: "store/shapes/run.ts", to: "store/runs.ts" },
    { from: "store/runs.ts", to: "commands/run/machine.ts" },
    { from: "commands/speech/line.ts", to: "commands/define.ts" },
    { from: "commands/sheet/time.ts", to: "commands/plan/develop.ts" },
    { from: "commands/plan/develop.ts", to: "commands/batch/mix/reply.ts" },
    { from: "commands/run/machine.ts", to: "bot/process/clock.ts" },
    { from: "bot/deliver/deliver.ts", to: "bot/chat/room/say.ts" },
    { from: "bot/chat/room/say.ts", to: "bot/deliver/deliver.ts" },
    { from: "bot/chat/discord/send.ts", to: "bot/chat/room/wire.ts" },
    { from: "bot/chat/room/room.ts", to: "bot/cues/beat.ts" },
    { from: "bot/chat/room-page/app.tsx", to: "store/index.ts" },
  ];
  expect(wrong.filter(isAllowed).map(say)).toEqual([]);
  const round = [
    { from: "a.ts", to: "b.ts" },
    { from: "b.ts", to: "c.ts" },
    { from: "c.ts", to: "b.ts" },
    { from: "d.ts", to: "a.ts" },
  ];
  expect(circlesOf(round)).toEqual([["b.ts", "c.ts"]]);
});
