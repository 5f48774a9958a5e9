// The shapes of a change, each against its sum written out history by history, sighting by sighting: eighteen months of whole
// cells, uneven production, one date in three known to a season only.
import { describe, expect, test } from "vitest";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { type Circumstance, evenlyReported, widthPrior } from "../../../knowledge/dating/change-priors.ts";
import { reportChance, reportTerms } from "../../../knowledge/dating/report-chance.ts";
import {
  type ChangeoverSighting,
  groupReports,
  type ReportGroup,
} from "../../../knowledge/dating/report-groups.ts";
import { type ShapeOfChange, shapeOfChange } from "../../../knowledge/dating/shape-of-change.ts";
import { type ThereAndBack, thereAndBack } from "../../../knowledge/dating/there-and-back.ts";
import { granted } from "../../support/granted.ts";

const production = new Map([
  [0, 20],
  [1, 45],
]);
const window = { from: 0, to: 18 };
const grid = cellGrid(window, production, 1) as CellGrid;
const borders = grid.cells + 1;
const replacements = { old: 1, new: 2 };

/** Old to the sixth month, new to the twelfth, old again but for one car. */
const labels = [0, 0, 0, 1, 0, 0, 1, 1, 1, 0, 1, 1, 0, 0, 1, 0, 0, 0];
const cars = labels.map((label, month): ChangeoverSighting => {
  const built =
    month % 3 === 1
      ? { from: Math.max(0, month - 3), to: Math.min(18, month + 4) }
      : { from: month, to: month + 1 };
  return { id: `car-${month}`, isNew: label === 1, built, swap: 0.1, misread: 0.02, isSought: false };
});
const { groups } = groupReports(grid, cars);

function risen(cell: number, border: number, width: number): number {
  return width === 0 ? Number(cell >= border) : Math.min(1, Math.max(0, (cell + 0.5 - border) / width + 0.5));
}

interface Sums {
  weight: number;
  readonly shares: number[];
}

/** Σ over circumstances of prior · Π P(report), for one history of the new variant's share, cell by cell. */
function addHistory(sums: Sums, prior: number, share: readonly number[], seen: readonly ReportGroup[]): void {
  for (const circumstance of evenlyReported) {
    const weight =
      prior *
      circumstance.prior *
      Math.exp(seen.reduce((sum, group) => sum + logarithmOf(group, circumstance, share), 0));
    sums.weight += weight;
    share.forEach((value, cell) => {
      sums.shares[cell] = (sums.shares[cell] ?? 0) + weight * value;
    });
  }
}

function logarithmOf(group: ReportGroup, circumstance: Circumstance, share: readonly number[]): number {
  let [made, fitted] = [0, 0];
  for (let cell = group.lo; cell < group.hi; cell += 1) {
    made += grid.cars[cell] as number;
    fitted += (grid.cars[cell] as number) * (share[cell] as number);
  }
  const own = group.isNew ? fitted / made : 1 - fitted / made;
  const terms = reportTerms(group, circumstance, replacements);
  return (group.units / 2 ** 12) * Math.log(reportChance(terms, own, 1 - own));
}

const cells = Array.from({ length: grid.cells }, (_, cell) => cell);

function goneAndBack(widths: readonly number[], seen: readonly ReportGroup[]): ThereAndBack {
  const sums: Sums = { weight: 0, shares: [] };
  let pairs = 0;
  for (let first = 1; first < borders - 1; first += 1) {
    for (let second = first + 3; second < borders - 1; second += 1) {
      pairs += 1;
      for (const width of widths) {
        const between = cells.map((cell) => risen(cell, first, width) - risen(cell, second, width));
        const prior = 1 / widths.length / 2;
        addHistory(sums, prior, between, seen);
        addHistory(
          sums,
          prior,
          between.map((share) => 1 - share),
          seen,
        );
      }
    }
  }
  return {
    logEvidence: Math.log(sums.weight / pairs),
    shares: Float64Array.from(sums.shares, (share) => share / sums.weight),
  };
}

describe("a variant that went and came back", () => {
  test.each([
    ["sharp", [0]],
    ["over two months", [2]],
    ["either", [0, 2]],
  ] as const)("%s: the sum over all pairs of months, both ways", (_name, widths) => {
    const found = thereAndBack({ grid, widths, circumstances: evenlyReported, replacements }, groups);
    const exact = goneAndBack(widths, groups);
    expect(found.logEvidence).toBeCloseTo(exact.logEvidence, 4);
    expect(found.shares).toHaveLength(grid.cells);
    exact.shares.forEach((share, cell) => {
      expect(found.shares[cell]).toBeCloseTo(share, 5);
    });
  });
  test("has no room in four months, and five leave one way each", () => {
    const ground = (months: number) => ({
      grid: cellGrid({ from: 0, to: months }, undefined, 1) as CellGrid,
      widths: [0],
      circumstances: evenlyReported,
      replacements,
    });
    for (const months of [1, 2, 3, 4])
      expect(thereAndBack(ground(months), [])).toEqual({
        logEvidence: -Infinity,
        shares: new Float64Array(months).fill(0.5),
      });
    const single = thereAndBack(ground(5), []);
    expect(single.logEvidence).toBeCloseTo(0, 9);
    [0.5, 0.5, 0.5, 0.5, 0.5].forEach((share, cell) => {
      expect(single.shares[cell]).toBeCloseTo(share, 9);
    });
  });
});

/** One change, its border anywhere inside the window. */
function changed(widths: readonly number[]): Sums {
  const sums: Sums = { weight: 0, shares: [] };
  widths.forEach((width, w) => {
    const prior = (widthPrior(widths)[w] as number) / (borders - 2);
    for (let border = 1; border < borders - 1; border += 1) {
      addHistory(
        sums,
        prior,
        cells.map((cell) => risen(cell, border, width)),
        groups,
      );
    }
  });
  return sums;
}

function steady(shares: readonly number[]): Sums {
  const sums: Sums = { weight: 0, shares: [] };
  for (const share of shares)
    addHistory(
      sums,
      1 / shares.length,
      cells.map(() => share),
      groups,
    );
  return sums;
}

describe("the shape of a change", () => {
  const found = granted(shapeOfChange({ window, production, replacements }, cars));
  const back = thereAndBack({ grid, widths: [0, 4], circumstances: evenlyReported, replacements }, groups);
  const all: Readonly<Record<ShapeOfChange, Sums>> = {
    change: changed([0, 1, 2, 3, 4, 6, 9, 12]),
    slow: changed([18, 24, 36, 48]),
    "both-throughout": steady(Array.from({ length: 19 }, (_, index) => 0.05 * (index + 1))),
    "came-back": {
      weight: Math.exp(back.logEvidence),
      shares: [...back.shares].map((share) => share * Math.exp(back.logEvidence)),
    },
    "carried-over": steady([0, 1]),
  };
  const weighed = Object.entries(all).map(([shape, sums]) => ({
    shape,
    sums,
    prior: shape === "change" ? 0.8 : 0.05,
  }));
  const total = weighed.reduce((sum, { prior, sums }) => sum + prior * sums.weight, 0);

  test("is weighed by .8 for a change and .05 for each other history, times what was seen", () => {
    expect(found.shapes).toHaveLength(5);
    for (const { shape, prior, sums } of weighed) {
      const chance = found.shapes.find((one) => one.shape === shape)?.chance;
      expect(chance).toBeCloseTo((prior * sums.weight) / total, 5);
    }
    const chances = found.shapes.map(({ chance }) => chance);
    expect(chances).toEqual(chances.toSorted((one, other) => other - one));
    expect(found.runnerUp).toBe(found.shapes[1]?.shape);
  });
  test("leaves of every month the share of all histories together", () => {
    expect([found.asBuilt.from, found.asBuilt.cell]).toEqual([0, 1]);
    cells.forEach((cell) => {
      const share = weighed.reduce((sum, { prior, sums }) => sum + prior * (sums.shares[cell] as number), 0);
      expect(found.asBuilt.new[cell]).toBeCloseTo(share / total, 5);
    });
  });
  test("without a sighting is as likely as it was beforehand, a change first", () => {
    const { shapes, asBuilt, runnerUp } = granted(shapeOfChange({ window }, []));
    for (const { shape, chance } of shapes) expect(chance).toBeCloseTo(shape === "change" ? 0.8 : 0.05, 5);
    expect(shapes[0]?.shape).toBe("change");
    expect(runnerUp).toBe(shapes[1]?.shape);
    expect((asBuilt.new[8] ?? 0) + (asBuilt.new[9] ?? 0)).toBeCloseTo(1, 9);
  });
  test("is refused where the window is none", () => {
    expect(shapeOfChange({ window: { from: 2, to: 2 } }, [])).toEqual({
      ok: false,
      problem: {
        code: "no-window",
        message: "the window of build dates is empty or longer than a century",
      },
    });
  });
});
