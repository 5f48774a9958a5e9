import { expect, test } from "vitest";
import { didYouMean, nearestName } from "../../../knowledge/handbook/nearest-name.ts";

test.each([
  ["ruff", "rough"],
  ["smoth", "smooth"],
  ["Smooth", "smooth"],
  ["inside finish", "inside-finish"],
  ["inside_finsih", "inside-finish"],
])("%s probably means %s", (written, meant) => {
  expect(nearestName(written, ["rough", "smooth", "inside-finish"])).toBe(meant);
});

test.each(["woolly", "x", "", "a".repeat(5000)])("%.10s is near to nothing", (written) => {
  expect(nearestName(written, ["rough", "smooth", "inside-finish"])).toBeUndefined();
});

test("of two names equally near the first is meant", () => {
  expect(nearestName("type-c", ["type-b", "type-a"])).toBe("type-b");
});

test("the known names are told when none is near, a dozen at most", () => {
  const names = Array.from({ length: 15 }, (_, index) => `variant-${index}`);
  expect(didYouMean("zzz", ["rough", "smooth"])).toBe("known: rough, smooth");
  expect(didYouMean("zzz", names)).toMatch(/^known: variant-0, .*variant-11 and 3 more$/);
  expect(didYouMean("zzz", [])).toContain("add it first");
});
