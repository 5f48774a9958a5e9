import { describe, expect, test } from "vitest";
import { carsWanted } from "../../../knowledge/dating/cars-wanted.ts";
import type { Circumstance } from "../../../knowledge/dating/change-priors.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { doubledShare, doubledWhole } from "../../../knowledge/dating/overlap-profile.ts";
import { reportChance, reportTerms } from "../../../knowledge/dating/report-chance.ts";
import { granted } from "../../support/granted.ts";
import { inCell } from "../../support/plain-sightings.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";

const replacements = { old: 0.4, new: 0.6 };
const setting = { window: simulatedWindow, production: simulatedProduction, replacements };
const works = { sightings: 20, changed: 30, overlap: 0, swapRate: 0.1, misread: 0.01, dates: "day" } as const;
const seen = simulateSightings(works, chanceFrom(12));

describe("which cars to look for", () => {
  const change = granted(changeover(setting, seen));
  const wanted = carsWanted(change.posterior, replacements);
  test("the first month lies within the interval, and its share is near one half", () => {
    const [first] = wanted;
    expect(first?.built.from).toBeGreaterThanOrEqual(change.interval.from - 1);
    expect(first?.built.to).toBeLessThanOrEqual(change.interval.to + 1);
    expect(Math.abs((first?.reportedNew ?? 0) - 0.5)).toBeLessThan(0.15);
  });
  test("every month of the window is listed once, and none tells more than one bit or less than none", () => {
    expect(wanted).toHaveLength(60);
    for (const { informationBits } of wanted) {
      expect(informationBits).toBeGreaterThanOrEqual(0);
      expect(informationBits).toBeLessThan(1);
    }
  });
  test("five wanted cars narrow the interval to less than two thirds", () => {
    let known = [...seen];
    for (let index = 0; index < 5; index += 1) {
      const { posterior } = granted(changeover(setting, known));
      const built = carsWanted(posterior, replacements)[0]?.built ?? { from: 0, to: 1 };
      const isNew = built.from >= 30;
      known = [
        ...known,
        {
          id: `wanted-${index}`,
          isNew,
          built,
          swap: 0.05,
          misread: 0.005,
          isSought: true,
          truth: { fittedNew: isNew, isSwapped: false, built: built.from },
        },
      ];
    }
    const narrowed = granted(changeover(setting, known)).interval;
    const before = change.interval.to - change.interval.from;
    expect(narrowed.to - narrowed.from).toBeLessThan(0.67 * before);
  });
});

test("by hand: a step equally likely on two borders, one car between them", () => {
  // Old seen in cell 7, new in cell 12: the step lies on 8 … 12. The month of cells 8 … 11 tells all that a car can.
  const change = granted(
    changeover({ window: { from: 0, to: 5 }, overlaps: [0] }, [inCell(7, false), inCell(12, true)]),
  );
  const [first] = carsWanted(change.posterior, { old: 1, new: 1 });
  expect(first?.built).toEqual({ from: 2, to: 3 });
  // P(new) without swaps or misreading is the mean of 1, ¾, ½, ¼, 0.
  expect(first?.reportedNew).toBeCloseTo(0.5, 9);
});

test("the information of every month is what its definition gives, border by border", () => {
  const few = granted(changeover(setting, seen.slice(0, 4)));
  const { posterior } = few;
  const { grid, widths, weights, total } = posterior;
  const borders = grid.cells + 1;
  const entropy = (p: number): number =>
    p <= 0 || p >= 1 ? 0 : -p * Math.log2(p) - (1 - p) * Math.log2(1 - p);
  const wanted = carsWanted(posterior, replacements);
  for (const month of [0, 7, 30, 59]) {
    const mass = new Float64Array(borders);
    const asNew = new Float64Array(borders);
    weights.forEach((weight, place) => {
      const border = place % borders;
      const row = Math.floor(place / borders);
      const terms = reportTerms(
        { isNew: true, swap: 0.05, misread: 0.005, isSought: true },
        posterior.circumstances[Math.floor(row / widths.length)] as Circumstance,
        replacements,
      );
      let share = border === 0 ? 1 : 0;
      for (let cell = 4 * month; cell < 4 * month + 4 && border > 0 && border < borders - 1; cell += 1) {
        const width = widths[row % widths.length] as number;
        share += doubledShare(cell - border, width) / doubledWhole(width) / 4;
      }
      mass[border] = (mass[border] as number) + weight;
      asNew[border] = (asNew[border] as number) + weight * reportChance(terms, share, 1 - share);
    });
    const reported = asNew.reduce((sum, value) => sum + value, 0) / total;
    const left = mass.reduce(
      (sum, value, border) => sum + (value > 0 ? value * entropy((asNew[border] as number) / value) : 0),
      0,
    );
    const found = wanted.find(({ built }) => built.from === month);
    expect(found?.reportedNew).toBeCloseTo(reported, 10);
    expect(found?.informationBits).toBeCloseTo(entropy(reported) - left / total, 9);
  }
});

test("no car is wanted from a year in which none was built", () => {
  const idle = new Map([...simulatedProduction, [2, 0]]);
  const change = granted(changeover({ ...setting, production: idle }, seen));
  const years = new Set(
    carsWanted(change.posterior, replacements).map(({ built }) => Math.floor(built.from / 12)),
  );
  expect([...years].sort()).toEqual([0, 1, 3, 4]);
});
