import fc from "fast-check";
import { expect, test } from "vitest";
import { eachWeight } from "../../../../knowledge/language/hearing/weights-of-ear.ts";

function weightsOf(text: string): readonly (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  eachWeight(text, (word, weight) => found.push([word, weight]));
  return found;
}

test("words stand as far on as is written, weights are hundredths of a nat", () => {
  expect(weightsOf("0 50 2 -25 1 1200")).toEqual([
    [0, 0.5],
    [2, -0.25],
    [3, 12],
  ]);
});

test("an ear without weights hears nothing", () => {
  expect(weightsOf("")).toEqual([]);
});

test("whatever pairs are written are read again", () => {
  const pairs = fc.array(fc.tuple(fc.nat({ max: 9_999 }), fc.integer({ min: -9_999, max: 9_999 })));
  fc.assert(
    fc.property(pairs, (written) => {
      let place = 0;
      const meant = written.map(([step, hundredths]) => {
        place += step;
        return [place, hundredths / 100];
      });
      const text = written.map(([step, hundredths]) => `${step} ${hundredths}`).join(" ");
      expect(weightsOf(text)).toEqual(meant);
    }),
    { seed: 37 },
  );
});
