// The tests as a mutation run starts them: those of the computing rooms alone, and no database.
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: { include: ["test/knowledge/**/*.test.ts"], testTimeout: 60_000 },
});
