import { expect, test } from "vitest";
import { whereReached } from "../../../knowledge/numbers/bisection.ts";
import { solveLinear } from "../../../knowledge/numbers/linear-system.ts";

test("three equations give three numbers, also when a pivot is zero", () => {
  const solved = solveLinear(
    [
      [0, 2, 1],
      [1, -2, -3],
      [-1, 1, 2],
    ],
    [-8, 0, 3],
  );
  expect(solved?.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([-4, -5, 2]); // put in: −10+2, −4+10−6, 4−5+4
});
test("equations that say the same twice have no answer", () => {
  expect(
    solveLinear(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 2],
    ),
  ).toBeUndefined();
});
test("a rising function is searched to the last digit, and an unreachable value ends at the border", () => {
  expect(whereReached((x) => x * x, 2, 0, 2)).toBeCloseTo(Math.SQRT2, 14);
  expect(whereReached((x) => x, 5, 0, 1)).toBeCloseTo(1, 12);
  expect(whereReached((x) => x, -5, 0, 1)).toBeCloseTo(0, 12);
});
