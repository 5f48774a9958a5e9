// Posteriors and naive Bayes figures from outside the project, through the posterior that identification itself uses.
import { describe, expect, test } from "vitest";
import { posteriorFromTables } from "../../knowledge/identification/posterior.ts";
import { expectedInformationGainBits } from "../../knowledge/information/expected-information-gain.ts";
import { readDataTable } from "../support/data-tables.ts";
import { cellsOf, classify, type NaiveBayes, naiveBayes, scores } from "../support/naive-bayes.ts";

/** P(h | the one answer) from a prior and P(answer | h). */
function afterOne(prior: readonly number[], likelihood: readonly number[]): readonly number[] {
  const rows = likelihood.flatMap((chance) => [chance, 1 - chance]);
  return [...posteriorFromTables(prior, [[{ answers: ["yes", "no"], likelihood: rows }, "yes"]])];
}

describe("Bayes' rule on textbook cases", () => {
  // Eddy (1982), "Probabilistic reasoning in clinical medicine": 0.077; exact 1/13.
  test("one in thirteen with a positive test is ill (Eddy 1982)", () => {
    expect(afterOne([0.01, 0.99], [0.792, 0.096])[0]).toBeCloseTo(1 / 13, 9);
  });
  // The widely told variants of the same problem: 80/1030, and J. A. Rice, Mathematical Statistics, 3rd ed.: 0.075.
  test.each([
    [0.8, 0.096, 0.0776398],
    [0.8, 0.1, 0.0747664],
  ])("a test of %f and %f leaves %f", (ill, well, expected) => {
    expect(Math.abs((afterOne([0.01, 0.99], [ill, well])[0] ?? 0) - expected)).toBeLessThan(5e-7);
  });
  // Worked solution of the bolt factory: 12/31, 9/31, 10/31.
  test("a bad bolt came from machine A in 12 of 31 cases", () => {
    const [a, b, c] = afterOne([0.2, 0.3, 0.5], [0.06, 0.03, 0.02]);
    expect(a).toBeCloseTo(12 / 31, 12);
    expect(b).toBeCloseTo(9 / 31, 12);
    expect(c).toBeCloseTo(10 / 31, 12);
  });
  // Course sheet "Bayes' Theorem" (docslib 6045063): .829, .154, .017.
  test("a red head makes it a house finch at .829", () => {
    const found = afterOne([0.97, 0.02, 0.01], [0.1, 0.9, 0.2]);
    [0.82906, 0.153846, 0.017094].forEach((expected, index) => {
      expect(Math.abs((found[index] ?? 0) - expected)).toBeLessThan(5e-7);
    });
  });
  // DeGroot & Schervish, Probability and Statistics: 2/23, 6/23, 15/23 (numbers from memory, arithmetic exact).
  test("the defective item came from the second machine in 6 of 23 cases", () => {
    const [a, b, c] = afterOne([0.2, 0.3, 0.5], [0.01, 0.02, 0.03]);
    expect(a).toBeCloseTo(2 / 23, 12);
    expect(b).toBeCloseTo(6 / 23, 12);
    expect(c).toBeCloseTo(15 / 23, 12);
  });
});

describe("play tennis (Mitchell 1997, Machine Learning, 6.9.1; data of Quinlan 1986)", () => {
  const data = readDataTable("play-tennis");
  const asked = { outlook: "sunny", temperature: "cool", humidity: "high", windy: "TRUE" };
  test.each([
    [0, 0.204583],
    // R e1071 naiveBayes(laplace = 1) and scikit-learn CategoricalNB(alpha = 1).
    [1, 0.279933],
  ])("smoothed by %d the day is fit for play at %f", (alpha, yes) => {
    const model = naiveBayes(data, { classColumn: "play", alpha });
    expect(Math.abs((classify(model, asked)[1] ?? 0) - yes)).toBeLessThan(1e-6);
  });
  test("without smoothing an overcast day is certain, with it .721583", () => {
    const overcast = { ...asked, outlook: "overcast" };
    expect(classify(naiveBayes(data, { classColumn: "play", alpha: 0 }), overcast)[1]).toBe(1);
    const smoothed = classify(naiveBayes(data, { classColumn: "play", alpha: 1 }), overcast)[1];
    expect(Math.abs((smoothed ?? 0) - 0.721583)).toBeLessThan(1e-6);
  });
});

describe("open data, every row judged by the others (R e1071 1.7-13 and a program written apart)", () => {
  test.each([
    {
      name: "zoo",
      classColumn: "type",
      alpha: 1,
      all: 101,
      correct: 95,
      brier: 0.07859207,
      logLoss: 0.12741661,
    },
    {
      name: "zoo",
      classColumn: "type",
      alpha: 0.5,
      all: 101,
      correct: 95,
      brier: 0.06716,
      logLoss: 0.108389,
    },
    {
      name: "zoo",
      classColumn: "type",
      alpha: 1e-10,
      all: 101,
      correct: 97,
      brier: 0.076068,
      logLoss: 0.814498,
    },
    {
      name: "soybean",
      classColumn: "Class",
      alpha: 1,
      all: 640,
      correct: 636,
      brier: 0.12589749,
      logLoss: 0.37193569,
    },
    {
      name: "contact-lenses",
      classColumn: "contact-lenses",
      alpha: 1,
      all: 23,
      correct: 17,
      brier: 0.33635307,
      logLoss: 0.57295876,
    },
    {
      name: "play-tennis",
      classColumn: "play",
      alpha: 1,
      all: 13,
      correct: 7,
      brier: 0.50443985,
      logLoss: 0.74588628,
    },
  ])("$name at α = $alpha: $correct right, Brier $brier, log loss $logLoss", ({ name, ...expected }) => {
    const { classColumn, alpha } = expected;
    const counting = { classColumn, alpha, skippedColumns: ["animal"] };
    const data = readDataTable(name);
    const found = scores(data, counting, true);
    expect(found.correct).toBe(expected.correct);
    expect(Math.abs(found.brier - expected.brier)).toBeLessThan(1e-6);
    expect(Math.abs(found.logLoss - expected.logLoss)).toBeLessThan(1e-6);
    if (alpha === 1) expect(scores(data, counting, false).correct).toBe(expected.all);
  });
  test("the animals mistaken are the newt, scorpion, sea snake, slug, tortoise and worm", () => {
    const counting = { classColumn: "type", alpha: 1, skippedColumns: ["animal"] };
    expect([...scores(readDataTable("zoo"), counting, true).wrong].sort()).toEqual([
      "newt → reptile",
      "scorpion → reptile",
      "seasnake → fish",
      "slug → insect",
      "tortoise → bird",
      "worm → insect",
    ]);
  });
  // scikit-learn 1.2.1 BernoulliNB(alpha = 1), zoo without the legs.
  test("the zoo without legs: 95 right, Brier .101232", () => {
    const counting = { classColumn: "type", alpha: 1, skippedColumns: ["animal", "legs"] };
    const found = scores(readDataTable("zoo"), counting, true);
    expect(found.correct).toBe(95);
    expect(Math.abs(found.brier - 0.101232)).toBeLessThan(1e-6);
  });
});

describe("the zoo, counted whole at α = 1 (scikit-learn 1.2.1 and R e1071 1.7-13)", () => {
  const data = readDataTable("zoo");
  const model = naiveBayes(data, { classColumn: "type", alpha: 1, skippedColumns: ["animal"] });
  const near = (
    given: Readonly<Record<string, string>>,
    expected: Readonly<Record<string, number>>,
  ): void => {
    const found = classify(model, given);
    for (const [name, probability] of Object.entries(expected)) {
      expect(Math.abs((found[model.classes.indexOf(name)] ?? Number.NaN) - probability)).toBeLessThan(1e-6);
    }
  };
  const animal = (name: string) => {
    const row = data.rows.findIndex(([first]) => first === name);
    return cellsOf(data, row, ["animal", "type"]);
  };
  test.each<[string, Readonly<Record<string, number>>]>([
    [
      "platypus",
      {
        amphibian: 0.02762588,
        bird: 0.00023192,
        fish: 0.00005165,
        insect: 0.00002945,
        mammal: 0.94359424,
        "mollusc.et.al": 0.00061589,
        reptile: 0.02785097,
      },
    ],
    ["seasnake", { reptile: 0.59202935, fish: 0.36051209, amphibian: 0.04078087 }],
    ["tortoise", { reptile: 0.73191544, bird: 0.19198446 }],
    ["scorpion", { "mollusc.et.al": 0.71541761, reptile: 0.25521638 }],
    ["dolphin", { mammal: 0.72620629, fish: 0.21041858 }],
  ])("the %s has its published posterior", (name, expected) => {
    near(animal(name), expected);
  });
  test("partial answers have their published posteriors", () => {
    near({ milk: "1" }, { mammal: 0.89316656 });
    near(
      { feathers: "0", eggs: "1", backbone: "0" },
      { "mollusc.et.al": 0.48052164, insect: 0.40021082, fish: 0.05180802 },
    );
    near(
      { feathers: "0", milk: "0", backbone: "1", fins: "0", aquatic: "1" },
      { amphibian: 0.41737622, reptile: 0.20021137, fish: 0.17075489 },
    );
  });
  const published = {
    milk: 0.694761,
    legs: 0.683269,
    toothed: 0.615456,
    eggs: 0.614265,
    hair: 0.572879,
    feathers: 0.493673,
    backbone: 0.431229,
    breathes: 0.424092,
    airborne: 0.324946,
    tail: 0.317146,
    fins: 0.292147,
    aquatic: 0.257372,
    catsize: 0.21147,
    venomous: 0.099437,
    predator: 0.058046,
    domestic: 0.008999,
  };
  test.each(Object.entries(published))("the %s is expected to tell %f bits", (column, gain) => {
    expect(Math.abs(gainOf(model, model.prior, column) - gain)).toBeLessThan(1e-6);
  });
  test("after no milk the legs tell .699183 bits, the feathers .581374, the teeth .541947", () => {
    const posterior = classify(model, { milk: "0" });
    expect(Math.abs(gainOf(model, [...posterior], "legs") - 0.699183)).toBeLessThan(1e-6);
    expect(Math.abs(gainOf(model, [...posterior], "feathers") - 0.581374)).toBeLessThan(1e-6);
    expect(Math.abs(gainOf(model, [...posterior], "toothed") - 0.541947)).toBeLessThan(1e-6);
  });
});

function gainOf(model: NaiveBayes, prior: readonly number[], column: string): number {
  const table = model.tables.get(column);
  const width = table?.answers.length ?? 0;
  const rows = prior.map((_, h) =>
    Array.from({ length: width }, (__, a) => table?.likelihood[h * width + a] ?? 0),
  );
  return expectedInformationGainBits(prior, rows);
}
