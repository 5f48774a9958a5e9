// The order in which classes and variants are named, and what a second look is asked for by.
import fc from "fast-check";
import { expect, test } from "vitest";
import { heaviestFirst } from "../../../knowledge/identification/classes.ts";
import { doubtsAbout, identify } from "../../../knowledge/identification/identify.ts";
import { randomHandbook, randomReports } from "../../support/random-handbooks.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { compiledFrom } from "../../support/worked-examples.ts";

test("the heaviest stands first, and of equal weights the earlier", () => {
  const weight = fc.oneof(
    fc.constantFrom(0, -0, 0.25, 1, Number.POSITIVE_INFINITY),
    fc.double({ min: 0, max: 1, noNaN: true }),
  );
  fc.assert(
    fc.property(fc.array(weight, { maxLength: 40 }), (weights) => {
      const bySearch: number[] = [];
      while (bySearch.length < weights.length) {
        const left = [...weights.keys()].filter((index) => !bySearch.includes(index));
        const most = Math.max(...left.map((index) => weights[index] ?? 0));
        bySearch.push(left.find((index) => (weights[index] ?? 0) >= most) ?? -1);
      }
      expect(heaviestFirst(weights)).toEqual(bySearch);
    }),
    { seed: 20, numRuns: 200 },
  );
});

test("doubts asked for alone are those of the whole identification, whatever the goal", () => {
  const goals = ["which-variant", "right-for-car", "what-should-it-have"] as const;
  let doubted = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.constantFrom(...goals), (number, goal) => {
      const chance = chanceFrom(number);
      const book = randomHandbook(chance, true);
      const compiled = compiledFrom(book.handbook);
      const asked = { car: {}, reports: randomReports(chance, book, 1), goal };
      const { contradictions, doubtful } = identify(compiled, asked);
      doubted += contradictions.length + doubtful.length;
      expect(doubtsAbout(compiled, asked)).toEqual({ contradictions, doubtful });
    }),
    { seed: 21, numRuns: 60 },
  );
  expect(doubted).toBeGreaterThan(0);
});
