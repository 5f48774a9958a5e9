// The window cut into cells, and what is thought of a change before the first sighting (changeovers from sightings, sections
// 1 and 2): lengths, borders and shares worked out by hand.
import { describe, expect, test } from "vitest";
import { type CellGrid, cellGrid, cellsOf, instantOf } from "../../../knowledge/dating/cells.ts";
import {
  borderPrior,
  circumstances,
  evenlyReported,
  swapOddsPrior,
  widthPrior,
} from "../../../knowledge/dating/change-priors.ts";
import { productionScale } from "../../../knowledge/dating/production-scale.ts";
import { UNITS_PER_NAT, wholeCount, wholeLogarithm } from "../../../knowledge/dating/whole-logarithm.ts";

function gridOf(...asked: Parameters<typeof cellGrid>): CellGrid {
  const grid = cellGrid(...asked);
  if (!grid) throw new Error("a window of this length has a grid");
  return grid;
}
const sumOf = (values: Iterable<number>): number => [...values].reduce((sum, value) => sum + value, 0);

describe("a window of build dates", () => {
  test("is cut into quarter months up to six years, half months up to twelve, and whole ones beyond", () => {
    const cells = [72, 73, 144, 145].map((months) => gridOf({ from: 0, to: months }));
    expect(cells.map(({ cell }) => cell)).toEqual([0.25, 0.5, 0.5, 1]);
    expect(cells.map(({ cells: count }) => count)).toEqual([288, 146, 288, 145]);
    expect(gridOf({ from: 0, to: 24 }, undefined, 2)).toMatchObject({ cell: 2, cells: 12 });
  });
  test("is widened to whole months, but not for a hair's breadth", () => {
    expect(gridOf({ from: 10.5, to: 20.5 })).toMatchObject({ from: 10, cells: 44 });
    expect(gridOf({ from: 10 - 1e-9, to: 20 + 1e-9 })).toMatchObject({ from: 10, cells: 40 });
  });
  test("is refused when it is empty, endless or longer than a century", () => {
    expect(cellGrid({ from: 5, to: 5 })).toBeUndefined();
    expect(cellGrid({ from: 6, to: 5 })).toBeUndefined();
    expect(cellGrid({ from: 0, to: Infinity })).toBeUndefined();
    expect(cellGrid({ from: 0, to: 1201 })).toBeUndefined();
    expect(cellGrid({ from: 0, to: 1200 })?.cells).toBe(1200);
  });
  test("counts cars by their year, the best year in 65,536 steps and a year without a figure as the mean", () => {
    const { cars } = gridOf(
      { from: 0, to: 36 },
      new Map([
        [0, 100],
        [1, 300],
      ]),
      1,
    );
    expect([cars[0], cars[11], cars[12], cars[23], cars[24]]).toEqual([
      21_845, 21_845, 65_536, 65_536, 43_691,
    ]);
    expect([...new Set(gridOf({ from: 0, to: 24 }).cars)]).toEqual([65_536]);
  });
  test("never counts a month as without any cars", () => {
    const { cars } = gridOf(
      { from: 0, to: 24 },
      new Map([
        [0, 0],
        [1, 300],
      ]),
      1,
    );
    expect([cars[0], cars[12]]).toEqual([1, 65_536]);
    expect(
      new Set(
        gridOf(
          { from: 0, to: 24 },
          new Map([
            [0, 0],
            [1, 0],
          ]),
        ).cars,
      ),
    ).toEqual(new Set([1]));
  });
});

describe("a build date in cells", () => {
  const grid = gridOf({ from: 100, to: 124 }, undefined, 1);
  test("touches every month it reaches into, and no more", () => {
    expect(cellsOf(grid, { from: 103, to: 106 })).toEqual({ lo: 3, hi: 6 });
    expect(cellsOf(grid, { from: 103.5, to: 106.2 })).toEqual({ lo: 3, hi: 7 });
    expect(cellsOf(grid, { from: 103 - 1e-9, to: 106 + 1e-9 })).toEqual({ lo: 3, hi: 6 });
  });
  test("no longer than a cell belongs to the one that holds its middle", () => {
    expect(cellsOf(grid, { from: 103.6, to: 104.6 })).toEqual({ lo: 4, hi: 5 });
    expect(cellsOf(grid, { from: 103.3, to: 104.3 })).toEqual({ lo: 3, hi: 4 });
    expect(cellsOf(grid, { from: 103, to: 103 })).toEqual({ lo: 3, hi: 4 });
  });
  test("is cut at the window, and outside it has none", () => {
    expect(cellsOf(grid, { from: 90, to: 103 })).toEqual({ lo: 0, hi: 3 });
    expect(cellsOf(grid, { from: 121, to: 140 })).toEqual({ lo: 21, hi: 24 });
    expect(cellsOf(grid, { from: -Infinity, to: Infinity })).toEqual({ lo: 0, hi: 24 });
    expect(cellsOf(grid, { from: 90, to: 100 })).toBeUndefined();
    expect(cellsOf(grid, { from: 124, to: 130 })).toBeUndefined();
    expect(cellsOf(grid, { from: 99, to: 100 })).toBeUndefined();
    expect(cellsOf(grid, { from: 124, to: 125 })).toBeUndefined();
    expect(cellsOf(grid, { from: 123, to: 124 })).toEqual({ lo: 23, hi: 24 });
    expect(cellsOf(grid, { from: 100, to: 101 })).toEqual({ lo: 0, hi: 1 });
  });
  test("is a month again at its borders", () => {
    expect(instantOf(gridOf({ from: 100, to: 124 }), 6)).toBe(101.5);
    expect(instantOf(grid, 0.5)).toBe(100.5);
  });
});

describe("the scale of cars built", () => {
  test("runs evenly through a month, and every instant comes back from it", () => {
    const scale = productionScale(
      { from: 0, to: 24 },
      new Map([
        [0, 10],
        [1, 30],
      ]),
    );
    expect(scale?.builtBy(-5)).toBe(0);
    expect(scale?.builtBy(6)).toBeCloseTo(0.125, 4);
    expect(scale?.builtBy(6.5)).toBeCloseTo((6.5 * 10) / 12 / 40, 4);
    expect(scale?.builtBy(23.5)).toBeCloseTo(1 - (0.5 * 30) / 12 / 40, 4);
    expect(scale?.instantAt(-1)).toBe(0);
    expect(scale?.window).toEqual({ from: 0, to: 24 });
    for (const month of [0.25, 11.75, 12.25, 23.999]) {
      expect(scale?.instantAt(scale.builtBy(month))).toBeCloseTo(month, 9);
    }
  });
});

describe("the prior of what every sighting shares", () => {
  test("halves the odds of a swap as often as it doubles them, one deviation a doubling", () => {
    expect(swapOddsPrior.map(({ swapOdds }) => swapOdds)).toEqual([0.25, 0.5, 1, 2, 4]);
    const [quarter, half, one, two, four] = swapOddsPrior.map(({ prior }) => prior);
    expect(sumOf(swapOddsPrior.map(({ prior }) => prior))).toBeCloseTo(1, 14);
    expect([quarter, half]).toEqual([four, two]);
    expect((one ?? 0) / (two ?? 1)).toBeCloseTo(Math.exp(0.5), 12);
    expect((one ?? 0) / (four ?? 1)).toBeCloseTo(Math.exp(2), 12);
  });
  test("is forty-five circumstances, mirrored in old and new, most of them plain", () => {
    expect(circumstances).toHaveLength(45);
    expect(sumOf(circumstances.map(({ prior }) => prior))).toBeCloseTo(1, 14);
    for (const { prior, swapOdds, replacementLean, reporting } of circumstances) {
      const mirror = circumstances.find(
        (one) =>
          one.swapOdds === swapOdds &&
          one.replacementLean[0] === replacementLean[1] &&
          one.replacementLean[1] === replacementLean[0] &&
          one.reporting[0] === reporting[1] &&
          one.reporting[1] === reporting[0],
      );
      expect(mirror?.prior).toBe(prior);
    }
    const share = (isSo: (one: (typeof circumstances)[number]) => boolean) =>
      sumOf(circumstances.filter(isSo).map(({ prior }) => prior));
    expect(share(({ reporting }) => reporting[0] === reporting[1])).toBeCloseTo(0.7, 12);
    expect(share(({ replacementLean }) => replacementLean[0] === replacementLean[1])).toBeCloseTo(0.5, 12);
    expect(share(({ reporting }) => reporting[0] === 3 * reporting[1])).toBeCloseTo(0.15, 12);
    expect(share(({ replacementLean: [fresh, old] }) => fresh === 4 * old)).toBeCloseTo(0.25, 12);
  });
  test("is fifteen where both variants are reported as readily", () => {
    expect(evenlyReported).toHaveLength(15);
    expect(sumOf(evenlyReported.map(({ prior }) => prior))).toBeCloseTo(1, 14);
    expect(evenlyReported.every(({ reporting }) => reporting[0] === 1 && reporting[1] === 1)).toBe(true);
  });
});

describe("the prior of an overlap", () => {
  const upTo = (months: number): number => 1 - Math.exp(-months / 8);
  test("is a quarter for a sharp change, else exponential with mean eight months from half-way to half-way", () => {
    const prior = widthPrior([0, 2, 6]);
    // Bins 1 … 4 and 4 … 8 months.
    const [first, second] = [upTo(4) - upTo(1), upTo(8) - upTo(4)];
    expect(prior[0]).toBe(0.25);
    expect(prior[1]).toBeCloseTo((0.75 * first) / (first + second), 12);
    expect(prior[2]).toBeCloseTo((0.75 * second) / (first + second), 12);
  });
  test("has no sharp change where none is looked at", () => {
    const prior = widthPrior([2, 6]);
    expect(prior).toHaveLength(2);
    expect(sumOf(prior)).toBeCloseTo(1, 14);
    expect(widthPrior([0])).toEqual([0.25]);
  });
  test("leans threefold to the width nearest to the one stated, to the narrower of two as near", () => {
    const plain = widthPrior([0, 2, 6]);
    const leaned = (stated: number) =>
      widthPrior([0, 2, 6], stated).map((value, index) => value / (plain[index] ?? 1));
    expect(sumOf(widthPrior([0, 2, 6], 5))).toBeCloseTo(1, 14);
    const [sharp = 0, narrow = 0, wide = 0] = leaned(5);
    expect(wide / sharp).toBeCloseTo(3, 12);
    expect(narrow / sharp).toBeCloseTo(1, 12);
    const [, middle = 0, outer = 1] = leaned(4);
    expect(middle / outer).toBeCloseTo(3, 12);
    const [at0 = 0, at2 = 1] = leaned(0.5);
    expect(at0 / at2).toBeCloseTo(3, 12);
  });
});

describe("the prior of a date", () => {
  const grid = gridOf({ from: 100, to: 110 }, undefined, 1);
  test("is .02 at either end of the window and even between", () => {
    const prior = borderPrior(grid);
    expect([prior[0], prior[10]]).toEqual([0.02, 0.02]);
    expect([...prior.slice(1, 10)]).toEqual(Array.from({ length: 9 }, () => 0.96 / 9));
    expect([...borderPrior(grid, { ends: [] })]).toEqual([...prior]);
  });
  test("is one half at either end of a window of a single cell", () => {
    expect([...borderPrior(gridOf({ from: 100, to: 101 }, undefined, 1))]).toEqual([0.5, 0.5]);
  });
  test("trusts a handbook for four fifths: a normal curve about each stated end", () => {
    const prior = borderPrior(grid, { ends: [{ at: 104, deviation: 2 }] });
    const even = borderPrior(grid);
    expect(sumOf(prior)).toBeCloseTo(1, 12);
    const lean = (border: number): number => (prior[border] ?? 0) - 0.2 * (even[border] ?? 0);
    expect(lean(4) / lean(6)).toBeCloseTo(Math.exp(0.5), 10);
    expect(lean(2)).toBeCloseTo(lean(6), 12);
    expect(lean(0) / lean(4)).toBeCloseTo(Math.exp(-2), 10);
  });
  test("gives a sure end as much weight as a doubtful one, drawn closer", () => {
    const prior = borderPrior(grid, {
      ends: [
        { at: 103, deviation: 0.5 },
        { at: 108, deviation: 2 },
      ],
    });
    const even = borderPrior(grid);
    const lean = (border: number): number => (prior[border] ?? 0) - 0.2 * (even[border] ?? 0);
    expect(lean(3) / lean(8)).toBeCloseTo((2 + Math.exp(-3.125) / 2) / 0.5, 6);
  });
  test("is even where the stated end is so far off that nothing is left of it", () => {
    expect([...borderPrior(grid, { ends: [{ at: 9000, deviation: 1 }] })]).toEqual([...borderPrior(grid)]);
  });
});

test("chances are whole numbers of a small part of a nat, an impossible one e⁻⁷⁰⁰, a sighting so many parts", () => {
  const nat = -wholeLogarithm(Math.exp(-1));
  expect(nat).toBeGreaterThan(2 ** 20);
  expect(UNITS_PER_NAT).toBe(nat * wholeCount(1, 1));
  expect(wholeLogarithm(1)).toBe(0);
  expect(wholeLogarithm(0.5)).toBe(Math.round(-Math.LN2 * nat));
  expect([wholeLogarithm(0), wholeLogarithm(Number.MIN_VALUE)]).toEqual([-700 * nat, -700 * nat]);
  expect(wholeCount(3, 0.5)).toBe(1.5 * wholeCount(1, 1));
});
