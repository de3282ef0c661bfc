import { join } from "node:path";
import { defineConfig } from "vite";

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
let first: Set<string> | undefined;

/** All that a first call needs is one file, but for what threads and small programs read by themselves. */
function nameOfPart(id: string, modules: Modules): string | null {
  if (!first) {
    first = reachOf(pathOf("bot/main"), modules);
    first.delete(pathOf("bot/main"));
    for (const entry of ALONE) for (const own of reachOf(pathOf(entry), modules)) first.delete(own);
  }
  return first.has(id) ? "first" : null;
}

export default defineConfig({
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
        entryFileNames: "[name].js",
        chunkFileNames: "bot/part-[name].js",
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ debugName: "first", name: nameOfPart }],
        },
        comments: { legal: true, annotation: false, jsdoc: false },
      },
    },
  },
});
