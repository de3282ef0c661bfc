import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    // Some tests start the built process: it is built once, before all of them.
    globalSetup: ["tests/support/build.ts"],
    testTimeout: 20_000,
  },
});
