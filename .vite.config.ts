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
const TAKEN_IN = [
  "zod",
  "temporal-polyfill",
  "temporal-utils",
  "fastest-levenshtein",
  "ical.js",
  "jsonc-parser",
  "simple-statistics",
  /^d3-/,
  "internmap",
];

/** All that the process is built of lies in one folder, so that a part finds another beside it. */
const builtName = (entry: string): string =>
  entry.startsWith("bot/") ? `bot/${entry.split("/").at(-1)}` : entry;

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
      input: Object.fromEntries(
        ENTRIES.map((entry) => [builtName(entry), join(import.meta.dirname, `${entry}.ts`)]),
      ),
      output: {
        entryFileNames: "[name].js",
        chunkFileNames: "bot/part-[name].js",
        comments: { legal: true, annotation: false, jsdoc: false },
      },
    },
  },
});
