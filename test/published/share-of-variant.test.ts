// Shares against published tables: R. G. Newcombe, Statistics in Medicine 17, 1998, table I method 3 (Wilson);
// W. J. Rogan & B. Gladen, Am. J. Epidemiology 107, 1978. Tolerances 5e-5 and 1e-9.
import { expect, test } from "vitest";
import { shareOfVariant, trueShare } from "../../knowledge/dating/share-of-variant.ts";
import { betaQuantile } from "../../knowledge/numbers/beta-distribution.ts";
import { granted } from "../support/granted.ts";

// Jeffreys by SciPy 1.10.1.
test.each([
  [81, 263, [0.2553, 0.3662], [0.2545, 0.3656]],
  [15, 148, [0.0624, 0.1605], undefined],
  [0, 20, [0, 0.1611], [0, 0.1166]],
  [1, 29, [0.0061, 0.1718], [0.0037, 0.1501]],
  [29, 29, [0.883, 1], undefined],
])("%i of %i", (seen, looked, wilson, jeffreys) => {
  const share = granted(shareOfVariant(seen, looked));
  expect(Math.abs(share.wilson.low - (wilson[0] as number))).toBeLessThanOrEqual(5e-5);
  expect(Math.abs(share.wilson.high - (wilson[1] as number))).toBeLessThanOrEqual(5e-5);
  if (!jeffreys) return;
  expect(Math.abs(share.jeffreys.low - (jeffreys[0] as number))).toBeLessThanOrEqual(5e-5);
  expect(Math.abs(share.jeffreys.high - (jeffreys[1] as number))).toBeLessThanOrEqual(5e-5);
});
// Clopper & Pearson's limits by SciPy 1.10.1, from the quantiles that Jeffreys' interval is made of.
test.each([
  [81, 263, [0.2527, 0.3676]],
  [0, 20, [0, 0.1684]],
  [1, 29, [0.0009, 0.1776]],
])("%i of %i: the exact limits", (seen, looked, limits) => {
  const low = seen === 0 ? 0 : betaQuantile(0.025, seen, looked - seen + 1);
  const high = betaQuantile(0.975, seen + 1, looked - seen);
  expect(Math.abs(low - (limits[0] as number))).toBeLessThanOrEqual(5e-5);
  expect(Math.abs(high - (limits[1] as number))).toBeLessThanOrEqual(5e-5);
});
test("at one of 29 Wilson's lower limit is not the Poisson limit that some programs put there", () => {
  expect(granted(shareOfVariant(1, 29)).wilson.low).toBeGreaterThan(0.006);
});
test("fifteen of 148 is given without a correction for continuity, whose limits are .0625 and .1620", () => {
  const { wilson } = granted(shareOfVariant(15, 148));
  expect(wilson.low).toBeLessThan(0.0625);
  expect(wilson.high).toBeLessThan(0.162);
});
// R. G. Newcombe, "Interval estimation for the difference between independent proportions", Statistics in Medicine 17,
// 1998, table II method 10, which is made of Wilson's limits: √ of the sum of squares of their distances (from memory).
test.each([
  [56, 70, 48, 80, [0.0524, 0.3339]],
  [9, 10, 3, 10, [0.1705, 0.809]],
  [6, 7, 2, 7, [0.0582, 0.8062]],
  [5, 56, 0, 29, [-0.0381, 0.1926]],
  [0, 10, 0, 20, [-0.1611, 0.2775]],
])(
  "Wilson's limits of %i of %i and %i of %i give the published limits of their difference",
  (a, m, b, n, limits) => {
    const [one, other] = [granted(shareOfVariant(a, m)).wilson, granted(shareOfVariant(b, n)).wilson];
    const [p, q] = [a / m, b / n];
    const low = p - q - Math.hypot(p - one.low, other.high - q);
    const high = p - q + Math.hypot(one.high - p, q - other.low);
    expect(Math.abs(low - (limits[0] as number))).toBeLessThanOrEqual(5.1e-5);
    expect(Math.abs(high - (limits[1] as number))).toBeLessThanOrEqual(5.1e-5);
  },
);
test("the true share behind labels with known errors", () => {
  expect(granted(trueShare(0.25, 0.9, 0.85)).raw).toBeCloseTo(0.1333333333, 9);
  expect(granted(trueShare(0.05, 0.8, 0.95)).raw).toBeCloseTo(0, 9);
});
test("labels that show less than their errors alone would are cut to zero, and said to be", () => {
  const share = granted(trueShare(0.04, 0.9, 0.9));
  expect(share.raw).toBeCloseTo(-0.075, 9);
  expect(share).toMatchObject({ share: 0, isClipped: true });
  expect(granted(trueShare(0.25, 0.9, 0.85)).isClipped).toBe(false);
});
test("labels no better than chance, and counts that are none, are refused", () => {
  expect(trueShare(0.4, 0.5, 0.5)).toMatchObject({ ok: false });
  expect(trueShare(1.2, 0.9, 0.9)).toMatchObject({ ok: false });
  expect(shareOfVariant(3, 2)).toMatchObject({ ok: false });
  expect(shareOfVariant(0, 0)).toMatchObject({ ok: false });
});
