import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    // Figures are measured by `npm run bench`, never while other tests run beside them.
    exclude: ["tests/bench/**"],
    // Some tests start the built process: it is built once, before all of them.
    globalSetup: ["tests/support/build.ts"],
    testTimeout: 20_000,
  },
});
