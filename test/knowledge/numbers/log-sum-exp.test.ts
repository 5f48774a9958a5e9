import { expect, test } from "vitest";
import { logSumExp, normaliseLogarithms } from "../../../knowledge/numbers/log-sum-exp.ts";

test("the logarithm of a sum survives numbers that underflow by themselves", () => {
  expect(logSumExp([-1000, -1000])).toBeCloseTo(-1000 + Math.LN2, 12);
});
test("nothing adds up to nothing", () => {
  expect(logSumExp([])).toBe(-Infinity);
  expect(logSumExp([-Infinity, -Infinity])).toBe(-Infinity);
});
test("probabilities keep their ratios and sum to one", () => {
  const probabilities = normaliseLogarithms([-2000, -2000 + Math.log(3)]);
  expect(probabilities[0]).toBeCloseTo(0.25, 12);
  expect(probabilities[1]).toBeCloseTo(0.75, 12);
});
test("what is impossible stays at zero", () => {
  expect([...normaliseLogarithms([-Infinity, 0])]).toEqual([0, 1]);
});
test("when nothing is possible all are equally likely", () => {
  expect([...normaliseLogarithms([-Infinity, -Infinity])]).toEqual([0.5, 0.5]);
});
test("however far from nothing the logarithms lie, the probabilities add up to one", () => {
  for (const depth of [1e3, 1e5, 1e7]) {
    const probabilities = normaliseLogarithms(Array.from({ length: 300 }, (_, at) => -depth - at / 100));
    const sum = probabilities.reduce((total, each) => total + each, 0);
    expect(Math.abs(sum - 1)).toBeLessThan(1e-14);
  }
});
