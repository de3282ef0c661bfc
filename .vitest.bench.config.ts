import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/bench/**/*.test.ts"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    globalSetup: ["tests/support/build.ts"],
    fileParallelism: false,
    testTimeout: 600_000,
  },
});
