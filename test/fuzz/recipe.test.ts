import fc from "fast-check";
import { expect, test } from "vitest";
import { chanceFrom } from "../support/random-tables.ts";
import { type Change, chanceOf, type Recipe, readRecipe, written } from "./recipe.ts";

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(30),
  kind: fc.constantFrom("=", "+", "-"),
  draws: fc.integer({ min: 1, max: 9 }),
  start: fc.nat(2 ** 31 - 1),
});
const recipe: fc.Arbitrary<Recipe> = fc.record({
  start: fc.nat(),
  changes: fc.array(change, { maxLength: 5 }),
});

function draws(of: Recipe, count: number): readonly number[] {
  const chance = chanceOf(of);
  return Array.from({ length: count }, chance);
}

function plain(start: number, count: number): readonly number[] {
  return Array.from({ length: count }, chanceFrom(start));
}

test("a finding is tried again by what stands before it: a recipe that is read as it was written draws the same", () => {
  fc.assert(
    fc.property(recipe, (made) => {
      const read = readRecipe(written(made));
      expect(read).toEqual(made);
      expect(draws(read ?? { start: -1, changes: [] }, 60)).toEqual(draws(made, 60));
    }),
    { seed: 20_261_125 },
  );
});

test("draws are replaced, come in between or are left out, and all others stay", () => {
  const [one, other] = [plain(7, 12), plain(9, 3)];
  const drawn = (kind: Change["kind"]) =>
    draws({ start: 7, changes: [{ at: 4, kind, draws: 3, start: 9 }] }, 9);
  expect(drawn("=")).toEqual([...one.slice(0, 4), ...other, ...one.slice(7, 9)]);
  expect(drawn("+")).toEqual([...one.slice(0, 4), ...other, ...one.slice(4, 6)]);
  expect(drawn("-")).toEqual([...one.slice(0, 4), ...one.slice(7, 12)]);
});

test("what is no recipe is none", () => {
  for (const text of ["", "x", "1,", "1,2", "1,2*3:4", "1,2=3", "-1", "1 ,2=3:4"])
    expect(readRecipe(text)).toBeUndefined();
});
