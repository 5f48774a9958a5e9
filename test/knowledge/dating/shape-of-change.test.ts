import { expect, test } from "vitest";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { evenlyReported } from "../../../knowledge/dating/change-priors.ts";
import { reportChance, reportTerms } from "../../../knowledge/dating/report-chance.ts";
import { type ChangeoverSighting, groupReports } from "../../../knowledge/dating/report-groups.ts";
import { shapeOfChange } from "../../../knowledge/dating/shape-of-change.ts";
import { thereAndBack } from "../../../knowledge/dating/there-and-back.ts";
import { granted } from "../../support/granted.ts";
import { chanceFrom } from "../../support/random-tables.ts";

const setting = { window: { from: 0, to: 60 }, replacements: { old: 0.4, new: 0.6 } };

/** Cars over five years whose works fitted the new variant with the given share; a tenth swapped, dates to the month or year. */
function seen(
  count: number,
  newShare: (month: number) => number,
  start: number,
): readonly ChangeoverSighting[] {
  const chance = chanceFrom(start);
  return Array.from({ length: count }, (_, index) => {
    const month = Math.floor(60 * chance());
    const fittedNew = chance() < newShare(month);
    const isNew = chance() < 0.1 ? chance() < 0.6 : fittedNew;
    const year = 12 * Math.floor(month / 12);
    const built = index % 3 === 0 ? { from: year, to: year + 12 } : { from: month, to: month + 1 };
    return { id: `car-${index}`, isNew, built, swap: 0.1, misread: 0.01, isSought: false };
  });
}

test.each([
  ["change", (month: number) => Number(month >= 27), 40],
  ["slow", (month: number) => Math.min(1, Math.max(0, (month - 12) / 36)), 200],
  ["both-throughout", () => 0.4, 80],
  ["came-back", (month: number) => Number(month >= 15 && month < 38), 60],
  ["carried-over", () => 0, 150],
] as const)("%s is recognised", (shape, newShare, count) => {
  expect(granted(shapeOfChange(setting, seen(count, newShare, 17))).shapes[0]?.shape).toBe(shape);
});

test("a sharp change is never mistaken, however few the cars", () => {
  for (let start = 0; start < 25; start += 1) {
    const found = granted(
      shapeOfChange(
        setting,
        seen(10 + start, (month) => Number(month >= 30), 100 + start),
      ),
    );
    expect(found.shapes[0]?.shape).toBe("change");
  }
});

test("below nine tenths the runner-up is named, above it is not", () => {
  const few = granted(
    shapeOfChange(
      setting,
      seen(8, () => 0.5, 4),
    ),
  );
  expect((few.shapes[0]?.chance ?? 1) < 0.9).toBe(few.runnerUp !== undefined);
  expect(few.runnerUp).toBeDefined();
  expect(
    granted(
      shapeOfChange(
        setting,
        seen(80, (month) => Number(month >= 27), 9),
      ),
    ).runnerUp,
  ).toBeUndefined();
});

test("the mixed as-built share follows the shape that is likely", () => {
  const { asBuilt } = granted(
    shapeOfChange(
      setting,
      seen(200, (month) => Number(month >= 15 && month < 38), 3),
    ),
  );
  expect(asBuilt.new[5]).toBeLessThan(0.1);
  expect(asBuilt.new[26]).toBeGreaterThan(0.9);
  expect(asBuilt.new[52]).toBeLessThan(0.1);
});

test("a going and a coming back add up as if every pair of months were tried by hand", () => {
  const grid = cellGrid({ from: 0, to: 24 }, undefined, 1) as CellGrid;
  const cars = seen(40, (month) => Number(month >= 8 && month < 15), 6)
    .filter(({ built }) => built.to <= 24)
    .map((one) => ({ ...one, misread: 0.02 }));
  const { groups } = groupReports(grid, cars);
  const replacements = { old: 1, new: 2 };
  const found = thereAndBack({ grid, widths: [0], circumstances: evenlyReported, replacements }, groups);
  let sum = 0;
  let pairs = 0;
  for (let first = 1; first < 24; first += 1) {
    for (let second = first + 3; second < 24; second += 1) {
      pairs += 1;
      for (const circumstance of evenlyReported) {
        for (const isNewBetween of [true, false]) {
          const logarithm = groups.reduce((all, group) => {
            const cells = Array.from({ length: group.hi - group.lo }, (_, index) => group.lo + index);
            const between = cells.filter((cell) => cell >= first && cell < second).length / cells.length;
            const share = group.isNew === isNewBetween ? between : 1 - between;
            const chance = reportChance(reportTerms(group, circumstance, replacements), share, 1 - share);
            return all + (group.units / 2 ** 12) * Math.log(chance);
          }, 0);
          sum += (circumstance.prior / 2) * Math.exp(logarithm);
        }
      }
    }
  }
  expect(found.logEvidence).toBeCloseTo(Math.log(sum / pairs), 5);
});
