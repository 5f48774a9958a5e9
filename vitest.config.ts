// Tests read as statements about the trade; coverage is asked of the rooms that compute.
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    // A database that the tests start when the first of them asks for it.
    globalSetup: ["test/support/postgres-on-demand.ts"],
    // Much of the tests waits for processes and sockets: two files at once keep two cores busy, where vitest would leave one idle.
    maxWorkers: 2,
    // A busy two-core machine runs processes and proofs here; a test that hangs still ends.
    testTimeout: 60_000,
    hookTimeout: 90_000,
    coverage: {
      provider: "v8",
      include: ["knowledge/**/*.ts", "bot/**/*.ts"],
      reporter: ["text-summary", "json-summary"],
      thresholds: { lines: 90, branches: 90 },
    },
  },
});
