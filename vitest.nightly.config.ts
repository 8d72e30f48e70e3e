import { defineConfig } from "vitest/config";

// The same tests over ten times as many random inputs, and the long sets (test/**/*.nightly.ts).
export default defineConfig({
  test: {
    include: ["test/**/*.test.ts", "test/**/*.nightly.ts"],
    env: { NIGHTLY: "1" },
    testTimeout: 3_600_000,
    hookTimeout: 600_000,
  },
});
