// Whether a size can be that of a feature: within a factor of what its versions measure, in the unit said or in one that is mistaken for it.
import { expect, test } from "vitest";
import { type Candidate, isPlausible } from "../../../knowledge/language/plausible-size.ts";
import type { Quantity } from "../../../knowledge/language/quantities.ts";

function measured(unit: string, means: readonly unknown[]): Candidate {
  const variants = [{ tells: {} }, ...means.map((claim) => ({ tells: { size: claim } }))];
  return { part: { variants }, feature: { id: "size", unit } } as unknown as Candidate;
}
const length = measured("mm", [{ mean: 100 }, { mean: 200 }]);
const mass = measured("g", [{ mean: 1000 }]);
const sized = (value: number, unit: string | null): Quantity =>
  ({ value, unit, halfWidth: 0.5, start: 0, end: 0, after: "" }) as Quantity;

test.each([
  [100, "mm", 1, true],
  [200, "mm", 1, true],
  [99, "mm", 1, false],
  [201, "mm", 1, false],
  [50, "mm", 2, true],
  [49, "mm", 2, false],
  [400, "mm", 2, true],
  [401, "mm", 2, false],
  [15, "cm", 1, true],
  [6, "in", 1, true],
  // A slip of the unit: 150 cm said for 150 mm, 15 mm for 15 cm, 6 mm for 6 in, 6 cm for 6 in, 15 in for 15 cm, 150 in for 150 mm.
  [150, "cm", 1, true],
  [15, "mm", 1, true],
  [6, "mm", 1, true],
  [6, "cm", 1, true],
  [15, "in", 1, true],
  [150, "in", 1, true],
  [2, "mm", 1, false],
  [1, "kg", 1, false],
  [150, null, 1, true],
  [15, null, 1, true],
  [6, null, 1, true],
  [2, null, 1, false],
] as const)(
  "a length of 100 to 200 mm may be said as %s %s within a factor of %s: %s",
  (value, unit, factor, is) => {
    expect(isPlausible(length, sized(value, unit), factor)).toBe(is);
  },
);

test.each([
  [1000, "g", true],
  [1, "kg", true],
  [1, "lb", true],
  [2.2046, "lb", true],
  [2.2046, "kg", true],
  [35.27, "oz", true],
  [35.27, "g", true],
  [1000, "oz", true],
  [1, "g", true],
  [1, "oz", false],
  [1000, "mm", false],
  [1000, null, true],
  [1, null, true],
  [2.2046, null, true],
] as const)("a mass of 1 kg may be said as %s %s: %s", (value, unit, is) => {
  expect(isPlausible(mass, sized(value, unit), 1.01)).toBe(is);
});

test("where no version tells the size any may be it, as long as the name of the feature vouches for it", () => {
  const untold = measured("mm", [{ states: {} }, { mean: "100" }]);
  expect([2, 2.1].map((factor) => isPlausible(untold, sized(5, "mm"), factor))).toEqual([false, true]);
});

test("only the units asked for are tried where they are given", () => {
  expect(isPlausible(length, sized(150, "cm"), 1, ["cm"])).toBe(false);
  expect(isPlausible(length, sized(15, "cm"), 1, ["cm"])).toBe(true);
});
