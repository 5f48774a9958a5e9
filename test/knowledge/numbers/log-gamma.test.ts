import { expect, test } from "vitest";
import { logChoose, logGamma } from "../../../knowledge/numbers/log-gamma.ts";

test("the gamma function of a whole number is a factorial", () => {
  let factorial = 1;
  for (let n = 1; n <= 20; n += 1) {
    expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 11);
    factorial *= n;
  }
});
test("the gamma function of a half is the square root of pi", () => {
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 12);
  expect(logGamma(0.25)).toBeCloseTo(1.2880225246980774, 11); // Γ(¼) = 3.6256099082, Abramowitz & Stegun table 6.1
});
test("below zero there is no gamma function", () => {
  expect(logGamma(0)).toBeNaN();
  expect(logGamma(-1.5)).toBeNaN();
});
test("60 over 4 is 487635", () => {
  expect(Math.exp(logChoose(60, 4))).toBeCloseTo(487_635, 4); // arithmetic
});
