import { defineConfig } from "vitest/config";

/** Loads that take minutes and print tables; each by its own npm script, none as part of the tests. */
export default defineConfig({
  test: {
    include: ["tests/bench/**/*.load.ts"],
    globalSetup: ["tests/support/build.ts"],
    testTimeout: 30 * 60_000,
    fileParallelism: false,
    disableConsoleIntercept: true,
  },
});
