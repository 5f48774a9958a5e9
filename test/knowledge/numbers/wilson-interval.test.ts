import fc from "fast-check";
import { expect, test } from "vitest";
import { wilsonInterval } from "../../../knowledge/numbers/wilson-interval.ts";

test("nothing looked at says nothing", () => {
  expect(wilsonInterval(0, 0, 0.95)).toEqual({ low: 0, high: 1 });
});
test("the interval holds the share, stays within 0 to 1 and is mirrored by the others", () => {
  const counts = fc
    .integer({ min: 1, max: 400 })
    .chain((looked) => fc.tuple(fc.integer({ min: 0, max: looked }), fc.constant(looked)));
  fc.assert(
    fc.property(counts, ([seen, looked]) => {
      const one = wilsonInterval(seen, looked, 0.9);
      const other = wilsonInterval(looked - seen, looked, 0.9);
      expect(one.low).toBeGreaterThanOrEqual(0);
      expect(one.low).toBeLessThanOrEqual(seen / looked);
      expect(one.high).toBeGreaterThanOrEqual(seen / looked);
      expect(one.low).toBeCloseTo(1 - other.high, 12);
    }),
    { seed: 44 },
  );
});
