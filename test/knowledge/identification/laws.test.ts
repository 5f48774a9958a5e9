// What must hold of every handbook, car and set of reports, whatever the figures.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDateText } from "../../../knowledge/calendar/date-text.ts";
import { goals, notInHandbook } from "../../../knowledge/evidence/goal.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import type { Handbook } from "../../../knowledge/handbook/schema.ts";
import type { ObservedState } from "../../../knowledge/identification/identification.ts";
import { identify, identifyOnce } from "../../../knowledge/identification/identify.ts";
import { type RandomHandbook, randomHandbook, randomReports } from "../../support/random-handbooks.ts";
import { type Chance, chanceFrom } from "../../support/random-tables.ts";
import {
  compiledExample,
  compiledFrom,
  measures,
  reads,
  report,
  sees,
} from "../../support/worked-examples.ts";

const seeded = { seed: 20_261, numRuns: 60 };
const start = fc.integer({ min: 1, max: 1_000_000 });
const cases = start.map((number) => {
  const chance = chanceFrom(number);
  const book = randomHandbook(chance, number % 4 === 0);
  return { book, chance, reports: randomReports(chance, book, 2) };
});
const car = { built: { from: 12 * 1978, to: 12 * 1979 } };

/** Whether a period of a kind that the works fitted lies within these dates, even for a day. */
function wasFittedIn({ parts }: Handbook, { from, to }: typeof car.built): boolean {
  const periods = parts.flatMap(({ variants }) =>
    variants.flatMap(({ origin, fitted }) => (origin === "production" ? fitted : [])),
  );
  return periods.some((period) => {
    const [first, last] = [parseDateText(period.from), parseDateText(period.to)];
    return first !== undefined && last !== undefined && first.from < to && last.to > from;
  });
}

function shuffled<T>(chance: Chance, items: readonly T[]): T[] {
  return items
    .map((item) => ({ item, key: chance() }))
    .sort((one, other) => one.key - other.key)
    .map(({ item }) => item);
}

function probabilities(handbook: Handbook, reports: readonly Report[]): ReadonlyMap<string, number> {
  const { ranking } = identify(compiledFrom(handbook), { car, reports, goal: "which-variant" });
  return new Map(ranking.map(({ variant, probability }) => [variant, probability]));
}

function expectSame(one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): void {
  expect([...one.keys()].sort()).toEqual([...other.keys()].sort());
  for (const [variant, probability] of one) expect(other.get(variant)).toBeCloseTo(probability, 12);
}

describe("every identification", () => {
  test("sums to one over the variants and over the classes of every goal, or names none where the works fitted none that year", () => {
    fc.assert(
      fc.property(cases, fc.constantFrom(...goals), ({ book, reports }, goal) => {
        const found = identify(compiledFrom(book.handbook), { car, reports, goal });
        if (found.classes.length === 0) {
          expect(goal).toBe("what-should-it-have");
          expect(wasFittedIn(book.handbook, car.built)).toBe(false);
          expect(found).toMatchObject({ ranking: [], verdict: null });
          return;
        }
        expect(found.ranking.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
        expect(found.classes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });
  test("holds nothing for impossible and nothing for certain", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        const all = [...probabilities(book.handbook, reports).values()];
        expect(all.length).toBe((book.handbook.parts[0]?.variants.length ?? 0) + 1);
        for (const probability of all) {
          expect(probability).toBeGreaterThan(0);
          expect(probability).toBeLessThan(1);
        }
      }),
      seeded,
    );
  });
  test("does not depend on the order in which facts were told", () => {
    fc.assert(
      fc.property(cases, ({ book, chance, reports }) => {
        expectSame(
          probabilities(book.handbook, reports),
          probabilities(book.handbook, shuffled(chance, reports)),
        );
      }),
      seeded,
    );
  });
  test("does not depend on what variants are called or where they stand in the handbook", () => {
    fc.assert(
      fc.property(cases, ({ book, chance, reports }) => {
        const renamed = relabelled(book, chance);
        const before = probabilities(book.handbook, reports);
        const after = probabilities(renamed, reports);
        for (const [variant, probability] of before) {
          const name = variant === notInHandbook ? variant : `x-${variant}`;
          expect(after.get(name)).toBeCloseTo(probability, 12);
        }
      }),
      seeded,
    );
  });
});

/** The same handbook with variants renamed and in another order. */
function relabelled({ handbook }: RandomHandbook, chance: Chance): Handbook {
  const parts = handbook.parts.map((part) => ({
    ...part,
    variants: shuffled(
      chance,
      part.variants.map((variant) => ({ ...variant, id: `x-${variant.id}` })),
    ),
    causes: part.causes.map((cause) => ({
      ...cause,
      variants: Object.fromEntries(Object.entries(cause.variants).map(([id, row]) => [`x-${id}`, row])),
    })),
  }));
  return { ...handbook, parts };
}

describe("a report", () => {
  test("of somebody who cannot tell changes nothing", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        const cannotTell = book.features.map((feature) =>
          report(feature, { kind: "cannot-tell" }, { by: "somebody else" }),
        );
        expectSame(
          probabilities(book.handbook, reports),
          probabilities(book.handbook, [...reports, ...cannotTell]),
        );
      }),
      seeded,
    );
  });
  test("from hearsay changes nothing", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        const hearsay = book.features.map((feature) =>
          sees(feature, book.stateOf(feature)[0] ?? "", { by: "the seller", certainty: 0 }),
        );
        expectSame(
          probabilities(book.handbook, reports),
          probabilities(book.handbook, [...reports, ...hearsay]),
        );
      }),
      seeded,
    );
  });
  test("said twice by the same person is said once", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        expectSame(
          probabilities(book.handbook, reports),
          probabilities(book.handbook, [...reports, ...reports]),
        );
      }),
      seeded,
    );
  });
  test("is replaced by the same person's later one", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        const earlier = reports.map((told) =>
          sees(told.feature, book.stateOf(told.feature)[0] ?? "", { by: told.by }),
        );
        expectSame(
          probabilities(book.handbook, reports),
          probabilities(book.handbook, [...earlier, ...reports]),
        );
      }),
      seeded,
    );
  });
  test("about a feature or a state that the handbook does not know changes nothing", () => {
    const { ranking } = identify(compiledExample(), { car, reports: [], goal: "which-variant" });
    const strange = [sees("no-such-feature", "two"), sees("fixing", "seventeen"), measures("mark", 12)];
    expect(identify(compiledExample(), { car, reports: strange, goal: "which-variant" }).ranking).toEqual(
      ranking,
    );
  });
  test("that is wrong vetoes nothing: one wrong firm look costs a variant at most a factor of four hundred (.01/K, K = 4)", () => {
    fc.assert(
      fc.property(cases, ({ book, reports }) => {
        const before = probabilities(book.handbook, []);
        for (const told of reports) {
          const after = probabilities(book.handbook, [{ ...told, certainty: 1 }]);
          for (const [variant, probability] of before) {
            expect(after.get(variant) ?? 0).toBeGreaterThan(probability / 400);
          }
        }
      }),
      seeded,
    );
  });
});

describe("a tempered group", () => {
  const facts = [sees("inside", "smooth"), sees("edge", "round")];
  test("never says more than independent evidence, nor less than nothing", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("rough", "smooth", "painted"),
        fc.constantFrom("square", "round"),
        (inside, edge) => {
          const told = [sees("inside", inside), sees("edge", edge)];
          const tempered = weight(compiledExample(), told);
          const alone = told.map((fact) => weight(compiledExample(), [fact]));
          const independent = (alone[0] ?? 0) + (alone[1] ?? 0);
          expect(Math.abs(tempered)).toBeLessThanOrEqual(Math.abs(independent) + 1e-12);
          expect(tempered * independent).toBeGreaterThanOrEqual(0);
        },
      ),
      seeded,
    );
  });
  // τ = 1/(1 + (2 − 1)·.6) = .625 (identification method, section 10, example 2).
  test("of two close features weighs .625 of their sum", () => {
    const sum = facts.reduce((total, fact) => total + weight(compiledExample(), [fact]), 0);
    expect(weight(compiledExample(), facts)).toBeCloseTo(0.625 * sum, 12);
  });
});

/** How far the facts move ln P(A, works)/P(C, reproduction). */
function weight(compiled: ReturnType<typeof compiledExample>, reports: readonly Report[]): number {
  const odds = (told: readonly Report[]): number => {
    const { ranking } = identify(compiled, { car: {}, reports: told, goal: "which-variant" });
    const of = (variant: string): number =>
      ranking.find((ranked) => ranked.variant === variant)?.probability ?? 0;
    return Math.log(of("a") / of("c"));
  };
  return odds(reports) - odds([]);
}

describe("accepted observations", () => {
  // Seven observations against "usually", six absent and one present, move it from .767 to .512 (method, section 2).
  test("overrule a historian's usually as so many parts looked at", () => {
    const observed: ObservedState[] = [
      { part: "foot", variant: "b", feature: "mark", state: "absent", weight: 6 },
      { part: "foot", variant: "b", feature: "mark", state: "present", weight: 1 },
    ];
    const share = (seen: readonly ObservedState[]): number => {
      const table = compiledFrom(compiledExample().handbook, seen).states.get("mark");
      return table?.rows[(table.rowOf[1] ?? 0) * 2] ?? Number.NaN;
    };
    expect(share([])).toBeCloseTo(0.767, 3);
    expect(share(observed)).toBeCloseTo(0.512, 3);
  });
  test("of another part, variant or feature change nothing", () => {
    const observed = [{ part: "sill", variant: "b", feature: "mark", state: "absent", weight: 50 }];
    const { handbook } = compiledExample();
    const input = {
      handbook,
      part: "foot",
      goal: "which-variant",
      car,
      reports: [sees("mark", "absent")],
    } as const;
    expect(identifyOnce({ ...input, observed })?.ranking).toEqual(identifyOnce(input)?.ranking);
  });
});

test("the same input gives the same bytes", () => {
  const reports = [sees("fixing", "two"), measures("width", 417), reads("cast", 23_750, 23_751)];
  const asked = { car, reports, goal: "right-for-car" } as const;
  expect(JSON.stringify(identify(compiledExample(), asked))).toBe(
    JSON.stringify(identify(compiledExample(), asked)),
  );
});
