import { defineConfig } from "vitest/config";

/** Bugs planted on purpose, one after another, each in a copy: `npm run mutate`. */
export default defineConfig({
  test: { include: ["tests/mutation/mutate.ts"], testTimeout: 5 * 60_000, hookTimeout: 60_000 },
});
