import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    // As many as there are processors: by itself it leaves one of them idle, half of what a small machine has.
    maxWorkers: "100%",
    // No test changes what another imports, and to load everything anew for each file takes a sixth of the time.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
