// Changeovers against what can be had from outside: a closed form, the coal-mining changepoint, and a published
// dose-response as the limit in which nothing changes sharply.
import { describe, expect, test } from "vitest";
import { borderLikelihoods } from "../../knowledge/dating/border-likelihood.ts";
import { cellGrid } from "../../knowledge/dating/cells.ts";
import { circumstances } from "../../knowledge/dating/change-priors.ts";
import { changeover } from "../../knowledge/dating/changeover.ts";
import { borderWeights, changeoverPosterior } from "../../knowledge/dating/changeover-posterior.ts";
import { shortestRun, spreadQuantile } from "../../knowledge/dating/credible-run.ts";
import { type ChangeoverSighting, groupReports } from "../../knowledge/dating/report-groups.ts";
import { shapeOfChange } from "../../knowledge/dating/shape-of-change.ts";
import { instantOfChange } from "../support/continuous-changepoint.ts";
import { readDataTable } from "../support/data-tables.ts";
import { granted } from "../support/granted.ts";
import { logisticFit } from "../support/logistic-fit.ts";
import { monotoneFit } from "../support/monotone-fit.ts";
import { rateChange } from "../support/poisson-changepoint.ts";

describe("a step behind labels that are each wrong with the same chance (closed form, by hand)", () => {
  const labels = [0, 0, 1, 0, 0, 1, 1, 0, 1, 1];
  const posterior = (wrong: number): readonly number[] => {
    const grid = cellGrid({ from: 0, to: 10 }, undefined, 1);
    if (!grid) throw new Error("no grid");
    const sightings = labels.map(
      (label, cell): ChangeoverSighting => ({
        id: `car-${cell}`,
        isNew: label === 1,
        built: { from: cell, to: cell + 1 },
        swap: 0,
        misread: wrong,
        isSought: true,
      }),
    );
    const ground = { grid, widths: [0], circumstances, replacements: { old: 1, new: 1 } };
    const even = { widthPrior: [1], borderPrior: new Float64Array(11).fill(1 / 11) };
    const found = changeoverPosterior(
      { ...ground, ...even },
      borderLikelihoods(ground, groupReports(grid, sightings).groups),
    );
    return [...borderWeights(found)].map((weight) => weight / found.total);
  };
  test("one label in ten wrong: all eleven borders, tolerance 1e-6", () => {
    const expected = [
      0.000917, 0.008249, 0.074244, 0.008249, 0.074244, 0.668194, 0.074244, 0.008249, 0.074244, 0.008249,
      0.000917,
    ];
    posterior(0.1).forEach((chance, border) => {
      expect(Math.abs(chance - (expected[border] as number))).toBeLessThan(1e-6);
    });
  });
  // R isoreg on the ten labels; it passes one half between the fifth and the sixth, where the peak lies.
  test("the monotone fit by least squares passes one half where the posterior has its peak", () => {
    const fit = monotoneFit(labels);
    const expected = [0, 0, 1 / 3, 1 / 3, 1 / 3, 2 / 3, 2 / 3, 2 / 3, 1, 1];
    fit.forEach((value, at) => {
      expect(value).toBeCloseTo(expected[at] as number, 12);
    });
    const chances = posterior(0.1);
    expect(chances.indexOf(Math.max(...chances))).toBe(fit.findIndex((value) => value > 0.5));
  });
  test.each([
    [0.05, 0.818399],
    [0.2, 0.438356],
  ])("wrong %f: peak %f, tolerance 1e-6", (wrong, peak) => {
    expect(Math.abs(Math.max(...posterior(wrong)) - peak)).toBeLessThan(1e-6);
  });
});

describe("coal-mining disasters 1851–1962 (Jarrett 1979; exact posterior, Carlin, Gelfand & Smith 1992 agree on the order)", () => {
  const counts = readDataTable("coal-counts").rows.map((row) => Number(row[1]));
  test.each([
    [1, 1, [0.245, 0.1848, 0.1432, 0.0931, 0.0988], 40.071, [3.0642, 0.9224], 28.942],
    [2, 1, [0.2383, 0.1843, 0.1463, 0.0999, 0.0945], 39.937, [3.0928, 0.9377], 29.452],
    // The rate of the prior goes to 0; no factor against no change then.
    [0.5, 1e-9, [0.2384, 0.1851, 0.1478, 0.1025, 0.0922], 39.88, [3.135, 0.9304], undefined],
  ])(
    "rates Gamma(%i, %i): tolerance 5e-5 on chances, 5e-4 on the rest",
    (shape, rate, chances, mean, rates, factor) => {
      const change = rateChange(counts, shape, rate);
      [41, 40, 39, 37, 42].forEach((k, index) => {
        expect(Math.abs((change.chances[k - 1] as number) - (chances[index] as number))).toBeLessThan(5.1e-5);
      });
      const meanIndex = change.chances.reduce((sum, chance, index) => sum + chance * (index + 1), 0);
      expect(Math.abs(meanIndex - mean)).toBeLessThan(6e-4);
      expect(Math.abs(change.rateMeans[0] - (rates[0] as number))).toBeLessThan(5.1e-5);
      expect(Math.abs(change.rateMeans[1] - (rates[1] as number))).toBeLessThan(5.1e-5);
      if (factor !== undefined) expect(Math.abs(change.logBayesFactor - factor)).toBeLessThan(6e-4);
    },
  );
  test.each([
    [1, 1, 2.445],
    [2, 1, 2.44],
    [0.5, 1e-9, 2.421],
  ])(
    "rates Gamma(%f, %f): mode 1891, deviation %f, 95 %% from the 36th to the 46th year, tolerance 6e-4",
    (shape, rate, deviation) => {
      const { chances } = rateChange(counts, shape, rate);
      const moment = (power: number): number =>
        chances.reduce((sum, chance, index) => sum + chance * (index + 1) ** power, 0);
      expect(1850 + chances.indexOf(Math.max(...chances)) + 1).toBe(1891);
      expect(Math.abs(Math.sqrt(moment(2) - moment(1) ** 2) - deviation)).toBeLessThan(6e-4);
      const yearAt = (share: number): number => {
        let sum = 0;
        return (
          chances.findIndex((chance) => {
            sum += chance;
            return sum >= share;
          }) + 1
        );
      };
      expect([yearAt(0.025), yearAt(0.975)]).toEqual([36, 46]);
    },
  );
  test("127 disasters in the first 41 years, 64 in the last 71: raw means 3.097561 and .901408", () => {
    const sum = (years: readonly number[]): number => years.reduce((all, count) => all + count, 0);
    expect(sum(counts.slice(0, 41)) / 41).toBeCloseTo(3.097561, 6);
    expect(sum(counts.slice(41)) / 71).toBeCloseTo(0.901408, 6);
  });
  test("the middle of the change is 1890 or 1891 and 95 % lie within 36 to 46", () => {
    const { chances } = rateChange(counts, 1, 1);
    const run = shortestRun(chances, 0.95);
    expect(run.first + 1).toBeGreaterThanOrEqual(35);
    expect(run.last + 1).toBeLessThanOrEqual(46);
    expect(spreadQuantile(chances, 0.5) + 1).toBeGreaterThan(39.5);
    expect(spreadQuantile(chances, 0.5) + 1).toBeLessThan(41.5);
  });
});

// Data: Jarrett 1979. Mode 10 March 1890: A. E. Raftery & V. E. Akman, "Bayesian analysis of a Poisson process with a
// change-point", Biometrika 73, 1986 (from memory). The other dates: the exact posterior, computed apart from this project.
describe("the same disasters by date, a change at any instant", () => {
  const events = readDataTable("coal-dates").rows.map((row) => Number(row[0]));
  const span = [events[0] ?? Number.NaN, events.at(-1) ?? Number.NaN] as const;
  const day = 1 / 365.25;
  /** A day of a year as in the data, where 15 March 1851, the 74th day, is 1851.2026. */
  const dated = (year: number, ofYear: number): number => year + ofYear * day;
  test.each([
    // 28 January 1887, 15 June 1890, 13 July 1896.
    [0.5, 1e-9, dated(1890, 166), [dated(1887, 28), dated(1896, 195)]],
    // 11 July 1890.
    [1, 1, dated(1890, 192), undefined],
  ])("rates Gamma(%f, %f): tolerance two days", (shape, rate, median, ends) => {
    const { instants, chances } = instantOfChange(events, span, shape, rate);
    const mode = instants[chances.indexOf(Math.max(...chances))] ?? Number.NaN;
    expect(Math.abs(mode - dated(1890, 69))).toBeLessThan(2 * day);
    const at = (share: number): number => span[0] + (spreadQuantile(chances, share) + 0.5) * day;
    expect(Math.abs(at(0.5) - median)).toBeLessThan(2 * day);
    ends?.forEach((end, side) => {
      expect(Math.abs(at(side === 0 ? 0.025 : 0.975) - end)).toBeLessThan(2 * day);
    });
  });
});

describe("tobacco budworms (Venables & Ripley, MASS 4th ed., 7.2): a change that is not sharp", () => {
  // Killed of 20 at each doubling of the dose; half-way (LD50, log₂ dose) 3.2636 ± .2298 for females by R glm.
  const killed = [0, 2, 6, 10, 12, 16];
  // A dose step is taken as six months; dose d stands in the month 6d + 18 of a window of five and a half years.
  const sightings = killed.flatMap((dead, dose) =>
    Array.from({ length: 20 }, (_, index): ChangeoverSighting => {
      const from = 6 * dose + 18;
      const base = {
        id: `${dose}-${index}`,
        built: { from, to: from + 1 },
        swap: 0,
        misread: 0.005,
        isSought: true,
      };
      return { ...base, isNew: index < dead };
    }),
  );
  const setting = { window: { from: 0, to: 66 } };
  test("the published half-way dose lies in the interval, and the median within one standard error of it", () => {
    const change = granted(changeover(setting, sightings));
    const half = 3.263587 * 6 + 18.5;
    expect(change.interval.from).toBeLessThan(half);
    expect(change.interval.to).toBeGreaterThan(half);
    expect(Math.abs(change.median - half)).toBeLessThan(0.229754 * 6);
  });
  // R glm, binomial with logit, sex and dose: as printed in the help page of MASS's dose.p; tolerance 1e-4.
  test("the published slope, intercepts and doses of 25, 50 and 75 in a hundred come out of the counts", () => {
    const males = [1, 4, 9, 13, 18, 20];
    const rows = [killed, males].flatMap((dead, sex) =>
      dead.map((count, dose) => ({ terms: [Number(sex === 0), Number(sex === 1), dose], count, of: 20 })),
    );
    const { coefficients, covariance } = logisticFit(rows);
    [-3.47316, -2.37241, 1.06421].forEach((expected, at) => {
      expect(Math.abs((coefficients[at] ?? Number.NaN) - expected)).toBeLessThan(1e-4);
    });
    const [intercept = 0, , slope = 1] = coefficients;
    const expected = [
      [0.25, 2.231265, 0.249909],
      [0.5, 3.263587, 0.229754],
      [0.75, 4.29591, 0.274687],
    ] as const;
    for (const [share, dose, error] of expected) {
      const found = (Math.log(share / (1 - share)) - intercept) / slope;
      expect(Math.abs(found - dose)).toBeLessThan(1e-4);
      // The delta method: variance of −(a − logit)/b by its gradient.
      const gradient = [-1 / slope, 0, -found / slope];
      const variance = gradient.reduce(
        (sum, g, i) => sum + gradient.reduce((row, h, j) => row + g * h * (covariance[i]?.[j] ?? 0), 0),
        0,
      );
      expect(Math.abs(Math.sqrt(variance) - error)).toBeLessThan(1e-4);
    }
  });
  test("the as-built share passes one quarter, one half and three quarters within 1.6 standard errors of those doses", () => {
    const { asBuilt } = granted(changeover(setting, sightings));
    const doses = [
      [0.25, 2.231265, 0.249909],
      [0.5, 3.263587, 0.229754],
      [0.75, 4.29591, 0.274687],
    ] as const;
    for (const [share, dose, error] of doses) {
      const cell = asBuilt.new.findIndex((found) => found >= share);
      const found = (asBuilt.from + (cell + 0.5) * asBuilt.cell - 18.5) / 6;
      expect(Math.abs(found - dose)).toBeLessThan(1.6 * error);
    }
  });
  test("nobody would call it sharp", () => {
    expect(granted(changeover(setting, sightings)).withinWeeks).toBeLessThan(1e-6);
    expect(granted(shapeOfChange(setting, sightings)).shapes[0]?.shape).toBe("slow");
  });
});
