// A chain of two kinds has no neighbour whose mean stands for it: its dates are exact, however imprecise the cars' are.
import { expect, test } from "vitest";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { type ChainSighting, groupChain, reportLine } from "../../../knowledge/dating/chain-reports.ts";
import { chainVerdicts } from "../../../knowledge/dating/chain-verdicts.ts";
import { overlapMonths, swapOddsPrior, widthPrior } from "../../../knowledge/dating/change-priors.ts";
import { changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { granted } from "../../support/granted.ts";

const production = new Map([
  [0, 30],
  [1, 70],
]);
const window = { from: 0, to: 24 };
const seen = Array.from({ length: 22 }, (_, at): ChainSighting => {
  const year = 12 * Math.floor(at / 12);
  const built = at % 3 === 0 ? { from: year, to: year + 12 } : { from: at, to: at + (at % 3) };
  const variant = at === 4 || at === 19 ? Number(at < 12) : Number(at >= 11);
  return { id: `car-${at}`, variant, built, swap: 0.15, misread: 0.02 };
});

function risen(cell: number, start: number, width: number): number {
  return width === 0 ? Number(cell >= start) : Math.min(1, Math.max(0, (cell + 0.5 - start) / width));
}

test("two kinds, a third of the cars known to the year only: the sum over all ramps, tolerance 1e-9", () => {
  const grid = cellGrid(window, production, 1) as CellGrid;
  const groups = groupChain(grid, seen, 2);
  const replacements = [0.25, 0.75];
  const middles = new Float64Array(2 * 24 + 1);
  for (const { swapOdds, prior } of swapOddsPrior) {
    overlapMonths.forEach((width, w) => {
      for (let start = 0; start + width <= 24; start += 1) {
        const weight = groups.reduce(
          (product, { variant, lo, hi, swap, misread, count }) => {
            let [made, come] = [0, 0];
            for (let cell = lo; cell < hi; cell += 1) {
              made += grid.cars[cell] as number;
              come += (grid.cars[cell] as number) * risen(cell, start, width);
            }
            const share = variant === 1 ? come / made : 1 - come / made;
            const line = reportLine({ swap, misread }, swapOdds, replacements[variant] as number, 2);
            return product * (line.floor + line.slope * share) ** count;
          },
          prior * (widthPrior(overlapMonths)[w] as number),
        );
        middles[2 * start + width] = (middles[2 * start + width] as number) + weight;
      }
    });
  }
  const total = middles.reduce((sum, weight) => sum + weight, 0);
  const chain = granted(changeoverChain({ window, production, replacements: [1, 3], cell: 1 }, seen));
  expect(chain.changeovers).toHaveLength(1);
  chain.changeovers[0]?.middles.forEach((chance, at) => {
    expect(Math.abs(chance - (middles[at] as number) / total)).toBeLessThan(1e-9);
  });
});

test("cars of cells 1 to 111 and of cell 11 are two, in the counts and in the verdicts", () => {
  const long = { window: { from: 0, to: 150 }, replacements: [1, 1], cell: 1 };
  const of = (id: string, from: number, to: number): ChainSighting => ({
    id,
    variant: 0,
    built: { from, to },
    swap: 0.2,
    misread: 0.02,
  });
  const two = [of("wide", 1, 112), of("narrow", 11, 12)];
  const grid = cellGrid(long.window, undefined, 1) as CellGrid;
  expect(groupChain(grid, two, 2).map(({ lo, hi, count }) => [lo, hi, count])).toEqual([
    [1, 112, 1],
    [11, 12, 1],
  ]);
  const [wide, narrow] = chainVerdicts(granted(changeoverChain(long, two)), two);
  expect(wide?.notAsBuilt).not.toBeCloseTo(narrow?.notAsBuilt ?? Number.NaN, 3);
});

test("verdicts are the same for cars alike, and differ with their swap, their reading and their kind", () => {
  const chain = granted(changeoverChain({ window, production, replacements: [1, 3], cell: 1 }, seen));
  const base = { id: "a", variant: 0, built: { from: 11, to: 12 }, swap: 0.2, misread: 0.02 };
  const verdicts = chainVerdicts(chain, [
    base,
    { ...base, id: "b" },
    { ...base, id: "c", swap: 0.3 },
    { ...base, id: "d", misread: 0.05 },
    { ...base, id: "e", variant: 1 },
    { ...base, id: "f", built: { from: 12, to: 13 } },
  ]);
  expect(verdicts.map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e", "f"]);
  expect(verdicts[1]).toEqual({ ...verdicts[0], id: "b" });
  expect(new Set(verdicts.map(({ notAsBuilt }) => notAsBuilt)).size).toBe(5);
});
