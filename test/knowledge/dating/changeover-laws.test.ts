// Laws that hold for any list of sightings.
import fc from "fast-check";
import { expect, test } from "vitest";
import { borderLikelihoods } from "../../../knowledge/dating/border-likelihood.ts";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { type Circumstance, circumstances, overlapMonths } from "../../../knowledge/dating/change-priors.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { borderWeights, circumstanceChances } from "../../../knowledge/dating/changeover-posterior.ts";
import { type ChangeoverSighting, groupReports } from "../../../knowledge/dating/report-groups.ts";
import { UNITS_PER_NAT } from "../../../knowledge/dating/whole-logarithm.ts";
import { granted } from "../../support/granted.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";

const MONTHS = 36;
const production = new Map([
  [0, 30],
  [1, 80],
  [2, 55],
]);
const mirroredProduction = new Map([
  [0, 55],
  [1, 80],
  [2, 30],
]);
const window = { from: 0, to: MONTHS };

const built = fc
  .tuple(fc.integer({ min: 0, max: MONTHS - 1 }), fc.constantFrom("month", "season", "year"))
  .map(([month, precision]) => {
    if (precision === "month") return { from: month, to: month + 1 };
    if (precision === "year")
      return { from: 12 * Math.floor(month / 12), to: 12 * Math.floor(month / 12) + 12 };
    return { from: Math.max(0, month - 2), to: Math.min(MONTHS, month + 3) };
  });
const sighting = fc.record({
  isNew: fc.boolean(),
  built,
  swap: fc.constantFrom(0, 0.01, 0.06, 0.2, 0.9),
  misread: fc.constantFrom(0.005, 0.02, 0.05),
  isSought: fc.boolean(),
});
const history = fc
  .array(sighting, { minLength: 1, maxLength: 14 })
  .map((all) =>
    all.map((one, index): ChangeoverSighting => ({ id: `car-${String(index).padStart(2, "0")}`, ...one })),
  );

/** The log likelihood as the model is written, sighting by sighting and without tables. */
function plainLogarithm(
  grid: CellGrid,
  all: readonly ChangeoverSighting[],
  border: number,
  width: number,
  { swapOdds, replacementLean: [leanNew, leanOld], reporting }: Circumstance,
): number {
  const q = (leanNew * 2) / (leanNew * 2 + leanOld);
  return all.reduce((sum, one) => {
    const swapped = (swapOdds * one.swap) / (1 - one.swap + swapOdds * one.swap);
    const p =
      one.misread +
      (1 - 2 * one.misread) * (swapped * q + (1 - swapped) * plainShare(grid, one, border, width));
    const ready = one.isSought ? 1 : reporting[0] / reporting[1];
    const reported = (ready * p) / (1 + (ready - 1) * p);
    const sharing = all.filter(
      (other) => other.built.from === one.built.from && other.built.to === one.built.to,
    );
    return sum + Math.log(one.isNew ? reported : 1 - reported) / (1 + (sharing.length - 1) * 0.01);
  }, 0);
}

function plainShare(
  grid: CellGrid,
  { built: { from, to } }: ChangeoverSighting,
  border: number,
  width: number,
): number {
  if (border === 0 || border === grid.cells) return Number(border === 0);
  let fitted = 0;
  let made = 0;
  for (let cell = Math.round(from * 4); cell < Math.round(to * 4); cell += 1) {
    const share = width === 0 ? Number(cell >= border) : (cell + 0.5 - border) / width + 0.5;
    fitted += (grid.cars[cell] as number) * Math.min(1, Math.max(0, share));
    made += grid.cars[cell] as number;
  }
  return fitted / made;
}

test("the order in which sightings arrive changes no digit", () => {
  const setting = { window, production, replacements: { old: 1, new: 2 } };
  fc.assert(
    fc.property(
      history.chain((all) =>
        fc.tuple(fc.constant(all), fc.shuffledSubarray([...all], { minLength: all.length })),
      ),
      ([all, shuffled]) => {
        expect(granted(changeover(setting, shuffled))).toEqual(granted(changeover(setting, all)));
      },
    ),
    { seed: 11, numRuns: 12 },
  );
});

test("old for new and time backwards is the mirror image, to the last digit", () => {
  fc.assert(
    fc.property(history, (all) => {
      const straight = granted(changeover({ window, production, replacements: { old: 1, new: 3 } }, all));
      const mirrored = granted(
        changeover(
          { window, production: mirroredProduction, replacements: { old: 3, new: 1 } },
          all.map((one) => ({
            ...one,
            isNew: !one.isNew,
            built: { from: MONTHS - one.built.to, to: MONTHS - one.built.from },
          })),
        ),
      );
      expect([...borderWeights(mirrored.posterior)].reverse()).toEqual([
        ...borderWeights(straight.posterior),
      ]);
      expect(mirrored.overlaps).toEqual(straight.overlaps);
      expect(mirrored.median).toBeCloseTo(MONTHS - straight.median, 9);
      mirrored.sightings.forEach(({ notAsBuilt }, index) => {
        expect(notAsBuilt).toBeCloseTo(straight.sightings[index]?.notAsBuilt ?? Number.NaN, 9);
      });
    }),
    { seed: 12, numRuns: 12 },
  );
});

test("ten copies of one sighting known to a cell weigh ten times its logarithm", () => {
  const grid = cellGrid(window, production) as CellGrid;
  const ground = {
    grid,
    widths: overlapMonths.map((months) => 4 * months),
    circumstances,
    replacements: { old: 1, new: 2 },
  };
  fc.assert(
    fc.property(sighting, fc.integer({ min: 0, max: 4 * MONTHS - 1 }), (one, cell) => {
      const known = { ...one, built: { from: cell / 4, to: (cell + 1) / 4 } };
      const copies = Array.from({ length: 10 }, (_, index) => ({ ...known, id: `copy-${index}` }));
      const once = borderLikelihoods(ground, groupReports(grid, copies.slice(0, 1)).groups);
      const tenfold = borderLikelihoods(ground, groupReports(grid, copies).groups);
      expect(tenfold).toEqual(once.map((whole) => 10 * whole));
    }),
    { seed: 13, numRuns: 30 },
  );
});

test("the sums over borders are what a plain product over the sightings gives", () => {
  const grid = cellGrid(window, production) as CellGrid;
  const widths = [0, 8, 36];
  const replacements = { old: 1, new: 2 };
  fc.assert(
    fc.property(history, (all) => {
      const reports = groupReports(grid, all);
      const sums = borderLikelihoods({ grid, widths, circumstances, replacements }, reports.groups);
      for (const border of [0, 1, 31, 72, 143, 144]) {
        for (const [w, width] of widths.entries()) {
          for (const c of [0, 17, 44]) {
            const place = (c * widths.length + w) * (grid.cells + 1) + border;
            const plain = plainLogarithm(grid, all, border, width, circumstances[c] as Circumstance);
            expect((sums[place] as number) / UNITS_PER_NAT).toBeCloseTo(plain, 2);
          }
        }
      }
    }),
    { seed: 14, numRuns: 15 },
  );
});

test("chances stay chances and the as-built share never falls", () => {
  fc.assert(
    fc.property(history, (all) => {
      const change = granted(changeover({ window, production }, all));
      const chances = circumstanceChances(change.posterior);
      expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
      expect(change.overlaps.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
      change.asBuilt.new.forEach((share, cell) => {
        expect(share).toBeLessThanOrEqual(1 + 1e-12);
        expect(share).toBeGreaterThanOrEqual((change.asBuilt.new[cell - 1] ?? 0) - 1e-12);
      });
      for (const { notAsBuilt, swapped } of change.sightings) {
        expect(notAsBuilt).toBeGreaterThanOrEqual(0);
        expect(notAsBuilt).toBeLessThanOrEqual(1);
        expect(swapped).toBeLessThanOrEqual(1);
      }
      expect(change.intervalChance).toBeGreaterThanOrEqual(0.9 - 1e-12);
    }),
    { seed: 15, numRuns: 20 },
  );
});

test("one wrong sighting moves the estimate by less than half the width of the interval", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.constantFrom(20, 60, 120),
      fc.constantFrom(0, 2, 6),
      fc.double({ min: 10, max: 50, noNaN: true }),
      fc.boolean(),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (start, count, overlap, changed, isNew, away) => {
        const works = {
          sightings: count,
          changed,
          overlap,
          swapRate: 0.1,
          misread: 0.02,
          dates: "month",
        } as const;
        const all = simulateSightings(works, chanceFrom(start));
        const at = isNew ? changed * away : changed + (59.9 - changed) * away;
        const wrong = {
          id: "wrong",
          isNew,
          built: { from: at, to: at + 0.03 },
          swap: 0.1,
          misread: 0.02,
          isSought: false,
        };
        const setting = { window: simulatedWindow, production: simulatedProduction };
        const before = granted(changeover(setting, all));
        const after = granted(changeover(setting, [...all, wrong]));
        const half = (before.interval.to - before.interval.from) / 2;
        expect(Math.abs(after.median - before.median)).toBeLessThan(half);
      },
    ),
    { seed: 16, numRuns: 40 },
  );
});
