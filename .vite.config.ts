import { join } from "node:path";
import { defineConfig, type Plugin } from "vite";

/*
 * The program as it runs: few files instead of some five hundred, since reading those is most of a start, and after a crash no
 * call can be made before it. Packages stay as they are installed, but for those that are nothing but modules: these go in,
 * reduced to what is used of them. Comments stay out, but for licences.
 */

/** What is run, and what tests and benchmarks reach into. Others of our files lie in parts they share. */
const ENTRIES = [
  "bot/main",
  "bot/ask",
  "bot/backup",
  "bot/restore",
  "bot/disk/examine",
  "bot/disk/tidy-thread",
  "bot/disk/tidier",
  "bot/process/log",
  "bot/cues/beat",
  "bot/deliver/deliver",
  "bot/process/clock",
  "bot/chat/room/say",
  "bot/calls/dispatch",
  "commands/index",
  "commands/run/keep",
  "commands/run/machine",
  "store/index",
];
/** What these read is not to hold what only the bot needs. */
const ALONE = ["bot/disk/examine", "bot/disk/tidy-thread"];
const TAKEN_IN = [
  "zod",
  "temporal-polyfill",
  "temporal-utils",
  "fastest-levenshtein",
  "ical.js",
  "jsonc-parser",
  // No module: imported as it lies it would be searched for the names it gives, which takes longer than loading it.
  "papaparse",
  // Fifteen files, each looked for in several places: that takes longer than to open the store.
  "better-sqlite3",
  "simple-statistics",
  /^d3-/,
  "internmap",
];

/** All that the process is built of lies in one folder, so that a part finds another beside it. */
const builtName = (entry: string): string =>
  entry.startsWith("bot/") ? `bot/${entry.split("/").at(-1)}` : entry;

/** Read without waiting for anything: `import()` is what comes later. */
function reachOf(entry: string, modules: Modules, seen = new Set<string>()): Set<string> {
  if (seen.has(entry)) return seen;
  seen.add(entry);
  for (const id of modules.getModuleInfo(entry)?.importedIds ?? []) reachOf(id, modules, seen);
  return seen;
}

interface Modules {
  getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null;
}

const pathOf = (entry: string): string => join(import.meta.dirname, `${entry}.ts`);
let reached: Set<string> | undefined;

/**
 * What a first call goes through, of all that the bot imports: one file. The others are a file beside it, which comes with the
 * rest of the program, or in the middle of a call that needs it all the same. What a shape is made of has to be first with it.
 */
const FIRST = [
  /^node_modules\/zod\/(?!v4\/core\/to-json-schema)/,
  /^bot\//,
  /^store\/(index|driver|open|migrations|upkeep|backup|shards|time|json|readable|each-apart)\.ts$/,
  /^store\/(classes|members|runs|cues|due|outbox|outbox-body|messages|messages-of-class|pushes)\.ts$/,
  /^store\/shapes\/(?!batch|enlarger|lamp|ledger|photo|print|roll|school|shelf|strip-plan|tank|unreadable)/,
  /^commands\/(result|owe)\.ts$/,
  /^commands\/speech\/(?!measure|unreadable|words\/unreadable)/,
  /^commands\/run\/(?!turns|turn-words|unreached|after-run)/,
  /^commands\/sheet\/(step-words\.ts|words\/)/,
];

/** What all read, the threads and the small programs too: the store as a file. */
const DRIVER =
  /^\0addon$|node_modules\/better-sqlite3\/|\/store\/(driver|open|migrations|upkeep|[a-z-]+-tables?)\.ts$/;

/** But for what threads and small programs read by themselves. */
function nameOfPart(id: string, modules: Modules): string | null {
  if (DRIVER.test(id)) return "driver";
  if (!reached) {
    reached = reachOf(pathOf("bot/main"), modules);
    reached.delete(pathOf("bot/main"));
    for (const entry of ALONE) for (const own of reachOf(pathOf(entry), modules)) reached.delete(own);
  }
  if (!reached.has(id)) return null;
  const name = id.slice(import.meta.dirname.length + 1);
  return FIRST.some((each) => each.test(name)) ? "first" : "beside";
}

/** What lies beside is read when it is first used. */
const readBeside = (): Plugin => ({
  name: "read-beside",
  generateBundle(_options, bundle) {
    const part = bundle["bot/part-first.js"];
    if (part?.type !== "chunk") throw new Error("what a first call needs is no file of its own");
    part.code = part.code
      .replaceAll("require_beside.", "require_beside().")
      .replace(
        /^const require_beside = (.*);$/m,
        "let beside;\nconst require_beside = () => (beside ??= $1);",
      );
  },
});

const ADDON = "\0addon";
const ADDON_FILE = "better-sqlite3/build/Release/better_sqlite3.node";

/** The driver's compiled part, from where it is built: the driver itself would look for it in a dozen places. */
const findAddon = (): Plugin => ({
  name: "find-addon",
  enforce: "pre",
  resolveId(id) {
    if (id === "bindings") return ADDON;
    return id === ADDON_FILE ? { id, external: true } : null;
  },
  load: (id) => (id === ADDON ? `module.exports = () => require("${ADDON_FILE}");` : null),
});

/** CommonJS: Node reads it in less time, and in the middle of a call as well. The folder says so of all that is in it. */
const commonJs = (): Plugin => ({
  name: "common-js",
  generateBundle() {
    this.emitFile({ type: "asset", fileName: "package.json", source: JSON.stringify({ type: "commonjs" }) });
  },
});

export default defineConfig({
  plugins: [findAddon(), commonJs(), readBeside()],
  root: import.meta.dirname,
  publicDir: false,
  logLevel: "warn",
  ssr: { noExternal: TAKEN_IN },
  build: {
    ssr: true,
    outDir: "dist",
    emptyOutDir: false,
    target: "node20",
    minify: false,
    rolldownOptions: {
      input: Object.fromEntries(ENTRIES.map((entry) => [builtName(entry), pathOf(entry)])),
      output: {
        format: "cjs",
        entryFileNames: "[name].js",
        chunkFileNames: "bot/part-[name].js",
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ debugName: "parts", name: nameOfPart }],
        },
        comments: { legal: true, annotation: false, jsdoc: false },
      },
    },
  },
});
