// What stands beside the probabilities: the duel, contradictions, doubtful readings, hinges, misfits, what tells apart.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monthInterval, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { Goal } from "../../../knowledge/evidence/goal.ts";
import { notInHandbook, rightForCarClasses } from "../../../knowledge/evidence/goal.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { identify, identifyOnce } from "../../../knowledge/identification/identify.ts";
import { randomHandbook, randomReports } from "../../support/random-handbooks.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { measurementFeature, smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import {
  compiledExample,
  compiledFrom,
  measures,
  report,
  sees,
  workedHandbook,
} from "../../support/worked-examples.ts";

const compiled = compiledExample();
const car1978 = { built: yearInterval(1978), grade: "history-unknown" } as const;

function asked(reports: readonly Report[], goal: Goal = "which-variant", car: object = car1978) {
  return identify(compiled, { car, reports, goal });
}

describe("the duel of the first class and its rival", () => {
  test("adds up: prior and weights make the posterior odds where variants stand alone and no marks are read", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (number) => {
        const chance = chanceFrom(number);
        const book = randomHandbook(chance, false);
        const reports = randomReports(chance, book, 1);
        const { duel, classes } = identify(compiledFrom(book.handbook), {
          car: {},
          reports,
          goal: "which-variant",
        });
        if (!duel || duel.first === notInHandbook || duel.rival === notInHandbook) return;
        const of = (name: string) => classes.find((entry) => entry.class === name)?.probability ?? 0;
        const total = duel.weights.reduce((sum, { bans }) => sum + bans, duel.priorBans);
        expect(total).toBeCloseTo(Math.log10(of(duel.first) / of(duel.rival)), 10);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
  test("adds up for facts of one group too, because both are tempered alike", () => {
    const { duel, classes } = asked([
      sees("inside", "smooth"),
      sees("edge", "round"),
      sees("mark", "absent"),
    ]);
    const [first, rival] = classes;
    const total = duel?.weights.reduce((sum, { bans }) => sum + bans, duel.priorBans);
    expect(total).toBeCloseTo(Math.log10((first?.probability ?? 0) / (rival?.probability ?? 1)), 10);
  });
  test("names each fact once, in the handbook's order", () => {
    const { duel } = asked([sees("edge", "round"), sees("fixing", "two"), sees("mark", "absent")]);
    expect(duel?.weights.map(({ feature }) => feature)).toEqual(["fixing", "mark", "edge"]);
  });
  test("has a sign: three screws speak against the early foot", () => {
    const { duel } = asked([sees("fixing", "three"), sees("inside", "rough")]);
    expect(duel?.first).toBe("a");
    expect(duel?.weights.find(({ feature }) => feature === "fixing")?.bans).toBeLessThan(0);
  });
});

describe("a contradiction", () => {
  const car1981 = { built: yearInterval(1981), grade: "history-unknown" } as const;
  const against = [
    sees("fixing", "three"),
    sees("mark", "present"),
    sees("inside", "rough"),
    sees("edge", "square"),
    measures("width", 412),
  ];
  const fixingIn = (reports: readonly Report[]) =>
    asked(reports, "which-variant", car1981).contradictions.find(({ feature }) => feature === "fixing");
  test("is named with the fact without which it would sooner be believed", () => {
    const found = fixingIn(against);
    expect(found?.conflictBans).toBeGreaterThan(0.7);
    expect(found?.against).toBe("width");
    const misread = (without: string): number =>
      fixingIn(against.filter(({ feature }) => feature !== without))?.misreadProbability ?? 0;
    expect((found?.misreadProbability ?? 0) - misread("width")).toBeGreaterThan(0.2);
    for (const other of ["mark", "inside", "edge"]) expect(misread(other)).toBeGreaterThan(misread("width"));
  });
  test("is not named when all facts go together", () => {
    const together = [
      sees("fixing", "two"),
      sees("mark", "present"),
      sees("inside", "rough"),
      measures("width", 412),
    ];
    expect(asked(together).contradictions).toEqual([]);
  });
  test("is named for two states that no kind shows together, though neither alone moves the answer", () => {
    const grooved = (id: string, housing: string, groove: string) =>
      variant(id, {
        origin: "service",
        sold: [{ from: "1977", to: "1990" }],
        tells: { housing: { [housing]: "always" }, groove: { [groove]: "nearly always" } },
      });
    const book = smallHandbook({
      features: [stateFeature("housing", ["cast", "moulded"]), stateFeature("groove", ["square", "round"])],
      variants: [grooved("early", "cast", "square"), grooved("late", "moulded", "round")],
    });
    const both = [sees("housing", "moulded"), sees("groove", "square")];
    const named = identify(compiledFrom(book), { car: {}, goal: "which-variant", reports: both });
    expect(named.contradictions.map(({ feature, against: other }) => [feature, other]).sort()).toEqual([
      ["groove", "housing"],
      ["housing", "groove"],
    ]);
    const guessed = [sees("housing", "moulded", { certainty: 0.5 }), sees("groove", "square")];
    const left = identify(compiledFrom(book), { car: {}, goal: "which-variant", reports: guessed });
    expect(left.contradictions.filter((one) => one.isNeverTogether)).toEqual([]);
  });
  test("needs two facts: a lone one has nothing to conflict with", () => {
    for (const fact of against)
      expect(asked([fact]).contradictions.filter((c) => c.conflictBans > 1e-9)).toEqual([]);
  });
  test("gives way when a second person saw the other thing", () => {
    const settled = [...against, sees("fixing", "two", { by: "friend" })];
    const isNamed = (reports: readonly Report[]): boolean =>
      asked(reports, "which-variant", car1981).contradictions.some(({ feature }) => feature === "fixing");
    expect(isNamed(against)).toBe(true);
    expect(isNamed(settled)).toBe(false);
  });
});

describe("a measurement", () => {
  test("without a unit that fits centimetres is doubtful until it is confirmed", () => {
    const unsaid = report("width", { kind: "measurement", value: 41.2, halfWidth: 0.1, unit: null });
    expect(asked([unsaid]).doubtful).toMatchObject([{ feature: "width", reason: "unit", meantUnit: "cm" }]);
    const confirmed = report("width", {
      kind: "measurement",
      value: 41.2,
      halfWidth: 0.1,
      unit: "cm",
      unitConfirmed: true,
    });
    expect(asked([confirmed]).doubtful).toEqual([]);
    expect(asked([confirmed]).ranking[0]?.variant).toBe(asked([unsaid]).ranking[0]?.variant);
  });
  test("in inches is read in inches", () => {
    const inches = report("width", { kind: "measurement", value: 16.25, halfWidth: 1 / 16, unit: "in" });
    expect(asked([inches]).doubtful).toEqual([]);
    expect(asked([inches]).ranking[0]).toMatchObject({ variant: "a" });
  });
  test("far from every variant is doubted as taken in the wrong place", () => {
    expect(asked([measures("width", 700)]).doubtful).toMatchObject([{ feature: "width", reason: "outlier" }]);
  });
  test("by two people is one size: their agreement does not square its weight", () => {
    const odds = (reports: readonly Report[]): number => {
      const { ranking } = asked(reports, "which-variant", {});
      const of = (id: string): number => ranking.find((ranked) => ranked.variant === id)?.probability ?? 0;
      return Math.log(of("a") / of("b"));
    };
    const prior = odds([]);
    const one = odds([measures("width", 415)]) - prior;
    const both = odds([measures("width", 415), measures("width", 415, { by: "friend" })]) - prior;
    expect(both).toBeGreaterThan(one);
    expect(both).toBeLessThan(2 * one);
  });
  test("much lighter than a part of the same shape is another material (common practice, no source)", () => {
    const handbook = smallHandbook({
      features: [
        measurementFeature("mass", { unit: "kg", instrument: "kitchen-scale" }),
        stateFeature("shape", ["lip", "flat"]),
      ],
      variants: [
        variant("glass-fibre", {
          origin: "production",
          fitted: [{ from: "1977-01", to: "1981-12" }],
          tells: { mass: { mean: 3.1, spread: 0.2 }, shape: { lip: "always" } },
        }),
        variant("plastic", {
          origin: "reproduction",
          sold: [{ from: "1990", to: "2020" }],
          tells: { mass: { mean: 1.6, spread: 0.15 }, shape: { lip: "always" } },
        }),
      ],
    });
    const weighed = report("mass", { kind: "measurement", value: 1.55, halfWidth: 0.05, unit: "kg" });
    const { ranking, classes } = identify(compiledFrom(handbook), {
      car: {},
      reports: [sees("shape", "lip"), weighed],
      goal: "genuine",
    });
    expect(ranking[0]?.variant).toBe("plastic");
    expect(classes[0]?.class).toBe("reproduction");
  });
});

describe("weighed states", () => {
  test("count each state by its weight, as soft evidence", () => {
    const soft = report("inside", {
      kind: "weighed-states",
      weights: { rough: 0.9, smooth: 0.1, painted: 0.1 },
    });
    const { ranking } = asked([soft]);
    const before = asked([]).ranking;
    const of = (list: typeof ranking, id: string): number =>
      list.find((ranked) => ranked.variant === id)?.probability ?? 0;
    expect(of(ranking, "a")).toBeGreaterThan(of(before, "a"));
    expect(of(ranking, "b")).toBeLessThan(of(before, "b"));
  });
  test("that are even over all states change nothing", () => {
    const even = report("inside", {
      kind: "weighed-states",
      weights: { rough: 0.4, smooth: 0.4, painted: 0.4 },
    });
    asked([even]).ranking.forEach(({ variant: id, probability }) => {
      const before = asked([]).ranking.find((ranked) => ranked.variant === id)?.probability;
      expect(probability).toBeCloseTo(before ?? 0, 12);
    });
  });
});

describe("what hangs on one fact", () => {
  test("is named when the first class would change without it", () => {
    const { hingesOn, ranking } = asked([measures("width", 421), sees("mark", "present")], "which-variant", {
      built: monthInterval(1979, 3),
    });
    expect(ranking[0]?.variant).toBe("b");
    expect(hingesOn).toEqual(["width"]);
  });
  test("is not named when the others carry the answer", () => {
    const carried = [measures("width", 412), sees("inside", "rough"), sees("fixing", "two")];
    expect(asked(carried).hingesOn).toEqual([]);
  });
});

describe("a part that is in no handbook", () => {
  const strange = [
    sees("fixing", "three"),
    sees("mark", "present"),
    sees("inside", "painted"),
    sees("edge", "square"),
    measures("width", 395),
  ];
  test("is the verdict from one half, and the facts that fit worst are named", () => {
    const found = asked(strange);
    expect(found.verdict?.class).toBe(notInHandbook);
    expect(found.misfits.length).toBeGreaterThan(0);
    expect(found.misfits).toContain("width");
  });
  test("has no misfits while it is below .2", () => {
    expect(asked([sees("mark", "present")]).misfits).toEqual([]);
  });
});

describe("the verdict", () => {
  test("is withheld while the first class is below one half", () => {
    const { verdict, classes } = asked([], "which-variant", { built: monthInterval(1979, 6) });
    const first = classes[0]?.probability ?? 0;
    expect(verdict === null).toBe(first < 0.5);
    expect(asked([sees("inside", "rough")]).verdict?.class).toBe("a");
  });
  test("of right for car falls into the classes named, the sum of the first two given", () => {
    const found = asked([sees("inside", "rough")], "right-for-car");
    for (const { class: named } of found.classes) expect(rightForCarClasses).toContain(named);
    const of = (name: string): number =>
      found.classes.find((entry) => entry.class === name)?.probability ?? 0;
    expect(found.kindItWasBuiltWith).toBeCloseTo(of("as-built") + of("right-kind-replaced"), 12);
    expect(of("other-year-or-model")).toBeGreaterThan(0);
  });
  test("of what the car should have does not depend on what it has", () => {
    const bare = asked([], "what-should-it-have");
    expect(asked([sees("inside", "smooth"), sees("edge", "round")], "what-should-it-have")).toEqual(bare);
    expect(bare.ranking.map(({ variant: id }) => id)).toEqual(["a", "b"]);
    expect(bare.ranking[0]?.probability).toBeGreaterThan(0.98);
  });
  test("rests on the car alone when no fact moved it", () => {
    expect(asked([]).movedBits).toBe(0);
    expect(asked([sees("mark", "present")]).movedBits).toBeLessThan(0.25);
    expect(asked([sees("inside", "rough"), measures("width", 412)]).movedBits).toBeGreaterThan(0.25);
  });
  test("of a loose part supposes it replaced, and knows no date", () => {
    const loose = identify(compiled, {
      car: { ...car1978, isLoosePart: true },
      reports: [],
      goal: "right-for-car",
    });
    const of = (name: string): number =>
      loose.classes.find((entry) => entry.class === name)?.probability ?? 0;
    expect(of("as-built")).toBeCloseTo(0.97 * 0.02, 10);
  });
});

describe("what tells the variants left apart", () => {
  test("names features not yet reported, best first", () => {
    const { toldApartBy } = asked([sees("mark", "present")], "which-variant", {
      built: monthInterval(1979, 6),
    });
    expect(
      toldApartBy
        .map(({ variant: id }) => id)
        .slice(0, 2)
        .sort(),
    ).toEqual(["a", "b"]);
    for (const { features } of toldApartBy) {
      expect(features).not.toContain("mark");
      expect(features.length).toBeGreaterThan(0);
    }
    // 9 mm between means of spread 2 tell more than screws that are two or three in all but a few.
    expect(toldApartBy[0]?.features.slice(0, 2)).toEqual(["width", "fixing"]);
  });
  test("is silent when one variant is left", () => {
    const sure = asked([sees("inside", "rough"), measures("width", 412), sees("fixing", "two")]);
    expect(sure.toldApartBy).toEqual([]);
  });
});

test("an early sign that only some genuine parts carry proves much when present and little when absent (common practice, no source)", () => {
  const handbook = smallHandbook({
    features: [stateFeature("stamp", ["stamped", "plain"])],
    variants: [
      variant("works", {
        origin: "production",
        fitted: [{ from: "1977-01", to: "1981-12" }],
        tells: { stamp: { stamped: "usually" } },
      }),
      variant("copy", { origin: "reproduction", tells: { stamp: { stamped: "never" } } }),
    ],
  });
  const genuine = (reports: readonly Report[]): number => {
    const { classes } = identify(compiledFrom(handbook), { car: {}, reports, goal: "genuine" });
    return classes.find((entry) => entry.class === "genuine")?.probability ?? 0;
  };
  const logOdds = (p: number): number => Math.log10(p / (1 - p));
  const before = logOdds(genuine([]));
  const present = logOdds(genuine([sees("stamp", "stamped")])) - before;
  const absent = logOdds(genuine([sees("stamp", "plain")])) - before;
  expect(present).toBeGreaterThan(0.5);
  expect(absent).toBeLessThan(0);
  expect(genuine([sees("stamp", "plain")])).toBeGreaterThan(0.5);
});

test("a part kind that the handbook does not have has no identification", () => {
  const input = { handbook: workedHandbook(), part: "sill", goal: "genuine", car: {}, reports: [] } as const;
  expect(identifyOnce(input)).toBeUndefined();
});
