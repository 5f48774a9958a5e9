import { expect, test } from "vitest";
import { loadHandbookFolder } from "../../../adapters/handbook-folder/index.ts";
import { problemText } from "../../../knowledge/handbook/problem.ts";

test("the handbook of the Wexcombe Shrike is sound and nothing in it needs a second look", async () => {
  const loaded = await loadHandbookFolder("knowledge/handbooks/wexcombe-shrike");
  expect((loaded.ok ? loaded.warnings : loaded.problems).map(problemText)).toEqual([]);
});
