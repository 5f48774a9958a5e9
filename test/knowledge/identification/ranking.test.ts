import { expect, test } from "vitest";
import { notInHandbook } from "../../../knowledge/evidence/goal.ts";
import { rankingOf } from "../../../knowledge/identification/ranking.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";

const handbook = smallHandbook({
  features: [stateFeature("colour", ["black", "grey"])],
  variants: ["early", "late"].map((id) => variant(id, { origin: "production" })),
});
const [part] = handbook.parts;
const ranked = (...probabilities: readonly number[]) =>
  part === undefined ? [] : rankingOf(part, Float64Array.from(probabilities));

test("the greatest stands first, equal ones in the handbook's order, and what cannot be is left out", () => {
  const order = (...probabilities: readonly number[]) =>
    ranked(...probabilities).map(({ variant: id }) => id);
  expect(order(0.2, 0.7, 0.1)).toEqual(["late", "early", notInHandbook]);
  expect(order(0.4, 0.4, 0.2)).toEqual(["early", "late", notInHandbook]);
  expect(order(0, 1, 0)).toEqual(["late"]);
});

test("a sum of shares that passes one by a rounding is one", () => {
  expect(ranked(1 + 2 ** -52, 0, 0).map(({ probability }) => probability)).toEqual([1]);
});
