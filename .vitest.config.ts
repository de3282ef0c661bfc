import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    // Figures are measured by `npm run bench`, never while other tests run beside them.
    exclude: ["tests/bench/**"],
    // Some tests start the built process: it is built once, before all of them.
    globalSetup: ["tests/support/build.ts"],
    reporters: ["default", "./tests/support/skipped.ts"],
    setupFiles: ["tests/support/properties.ts"],
    // One file after the other: several keep real time, and must not be starved by their neighbours.
    fileParallelism: false,
    // How long a busy machine takes is nothing a test goes by: these only end what hangs.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 60_000 } },
  },
});
