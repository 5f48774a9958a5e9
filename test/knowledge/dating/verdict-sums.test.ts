// What is read off a posterior, against the same written out border by border: verdicts on cars, shares at the works, cars to look
// for, the chain's too. Uneven production throughout, so that no month stands for another.
import { describe, expect, test } from "vitest";
import { asBuiltShares } from "../../../knowledge/dating/as-built-shares.ts";
import { carsWanted } from "../../../knowledge/dating/cars-wanted.ts";
import { chainCarsWanted } from "../../../knowledge/dating/chain-cars-wanted.ts";
import { type ChainSighting, reportLine } from "../../../knowledge/dating/chain-reports.ts";
import { chainVerdicts } from "../../../knowledge/dating/chain-verdicts.ts";
import type { Circumstance } from "../../../knowledge/dating/change-priors.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { expectedInformation } from "../../../knowledge/dating/expected-information.ts";
import { reportTerms, reportVerdict, swapChance } from "../../../knowledge/dating/report-chance.ts";
import { type ChangeoverSighting, groupReports } from "../../../knowledge/dating/report-groups.ts";
import { sightingVerdicts } from "../../../knowledge/dating/sighting-verdicts.ts";
import { granted } from "../../support/granted.ts";

const production = new Map([
  [0, 20],
  [1, 45],
]);
const window = { from: 0, to: 18 };
const replacements = { old: 1, new: 2 };

function risen(cell: number, border: number, width: number): number {
  return width === 0 ? Number(cell >= border) : Math.min(1, Math.max(0, (cell + 0.5 - border) / width + 0.5));
}

function entropy(p: number): number {
  return p <= 0 || p >= 1 ? 0 : -p * Math.log2(p) - (1 - p) * Math.log2(1 - p);
}

const labels = [0, 0, 0, 1, 0, 0, 1, 0, 1, 0, 1, 1, 0, 1, 1, 1, 1, 1];
const cars = labels.map((label, month): ChangeoverSighting => {
  const built =
    month % 4 === 1
      ? { from: Math.max(0, month - 3), to: Math.min(18, month + 4) }
      : { from: month, to: month + 1 };
  const swap = month % 2 === 0 ? 0.1 : 0.3;
  return { id: `car-${month}`, isNew: label === 1, built, swap, misread: 0.02, isSought: month % 5 === 0 };
});

describe("one change", () => {
  const change = granted(
    changeover({ window, production, replacements, cell: 0.5, overlaps: [0, 1, 4] }, cars),
  );
  const { posterior } = change;
  const { grid, widths, weights, circumstances, total } = posterior;
  const borders = grid.cells + 1;

  /** Share of the new variant in the cells lo … hi − 1 for a border and overlap; at the ends of the window nothing changed. */
  function shareOver(lo: number, hi: number, border: number, width: number): number {
    if (border === 0 || border === grid.cells) return Number(border === 0);
    let [made, fitted] = [0, 0];
    for (let cell = lo; cell < hi; cell += 1) {
      made += grid.cars[cell] as number;
      fitted += (grid.cars[cell] as number) * risen(cell, border, width);
    }
    return fitted / made;
  }

  function eachWeight(visit: (weight: number, c: number, width: number, border: number) => void): void {
    weights.forEach((weight, place) => {
      const row = Math.floor(place / borders);
      visit(weight, Math.floor(row / widths.length), widths[row % widths.length] as number, place % borders);
    });
  }

  test("each car's verdict is the sum over circumstances, overlaps and borders, tolerance 1e-9", () => {
    const { groups, groupOf } = groupReports(grid, cars);
    const verdicts = sightingVerdicts(posterior, groups, replacements);
    expect(verdicts).toHaveLength(groups.length);
    groups.forEach((group, index) => {
      let [notAsBuilt, swapped] = [0, 0];
      eachWeight((weight, c, width, border) => {
        const share = shareOver(group.lo, group.hi, border, width);
        const terms = reportTerms(group, circumstances[c] as Circumstance, replacements);
        const verdict = reportVerdict(terms, group.isNew ? share : 1 - share);
        notAsBuilt += (weight / total) * verdict.notAsBuilt;
        swapped += (weight / total) * verdict.swapped;
      });
      expect(Math.abs((verdicts[index]?.notAsBuilt ?? Number.NaN) - notAsBuilt)).toBeLessThan(1e-9);
      expect(Math.abs((verdicts[index]?.swapped ?? Number.NaN) - swapped)).toBeLessThan(1e-9);
    });
    for (const { id, notAsBuilt, swapped } of change.sightings)
      expect({ notAsBuilt, swapped }).toEqual(verdicts[groupOf.get(id) ?? -1]);
    expect(change.sightings.map(({ id }) => id)).toEqual(cars.map(({ id }) => id).toSorted());
  });
  test("the works' shares, overlaps and swaps are those of the posterior", () => {
    const shares = new Float64Array(grid.cells);
    const chanceOf = new Map<number, number>();
    let doubled = 0;
    eachWeight((weight, c, width, border) => {
      chanceOf.set(width / 2, (chanceOf.get(width / 2) ?? 0) + weight / total);
      if ((circumstances[c]?.swapOdds ?? 0) >= 2) doubled += weight / total;
      for (let cell = 0; cell < grid.cells; cell += 1)
        shares[cell] = (shares[cell] as number) + (weight / total) * shareOver(cell, cell + 1, border, width);
    });
    shares.forEach((share, cell) => {
      expect(asBuiltShares(posterior)[cell]).toBeCloseTo(share, 9);
      expect(change.asBuilt.new[cell]).toBeCloseTo(share, 9);
    });
    expect(change.overlaps.map(({ months }) => months)).toEqual([0, 1, 4]);
    for (const { months, chance } of change.overlaps)
      expect(chance).toBeCloseTo(chanceOf.get(months) ?? 0, 9);
    expect(change.withinWeeks).toBeCloseTo((chanceOf.get(0) ?? 0) + (chanceOf.get(1) ?? 0), 9);
    expect(change.overMonths).toBeCloseTo(chanceOf.get(4) ?? 0, 9);
    expect(change.moreSwapsThanGraded).toBeCloseTo(doubled, 9);
  });
  test("every month is worth what its definition gives, the most telling first", () => {
    const wanted = carsWanted(posterior, replacements);
    expect(wanted.map(({ built }) => built.from).toSorted((one, other) => one - other)).toEqual(
      Array.from({ length: 18 }, (_, month) => month),
    );
    for (const { built, informationBits, reportedNew } of wanted) {
      expect(built.to).toBe(built.from + 1);
      const [mass, asNew] = [new Float64Array(borders), new Float64Array(borders)];
      eachWeight((weight, c, width, border) => {
        const share = shareOver(2 * built.from, 2 * built.to, border, width);
        const sought = { isNew: true, swap: 0.05, misread: 0.005, isSought: true };
        const { sameBase, slope } = reportTerms(sought, circumstances[c] as Circumstance, replacements);
        mass[border] = (mass[border] as number) + weight / total;
        asNew[border] = (asNew[border] as number) + (weight / total) * (sameBase + slope * share);
      });
      const reported = asNew.reduce((sum, one) => sum + one, 0);
      const left = mass.reduce(
        (sum, one, border) => sum + (one > 0 ? one * entropy((asNew[border] as number) / one) : 0),
        0,
      );
      expect(reportedNew).toBeCloseTo(reported, 9);
      expect(informationBits).toBeCloseTo(entropy(reported) - left, 8);
    }
    const bits = wanted.map(({ informationBits }) => informationBits);
    expect(bits).toEqual(bits.toSorted((one, other) => other - one));
  });
});

describe("a chain of three", () => {
  const links = labels.map((label, month): ChainSighting => {
    const variant = month < 7 ? label : month < 12 ? 1 : 1 + label;
    const built = { from: month, to: month + (month % 5 === 2 ? 6 : 0.5) };
    return { id: `car-${month}`, variant, built, swap: 0.15, misread: 0.03 };
  });
  const chain = granted(changeoverChain({ window, production, replacements: [2, 5, 3], cell: 0.5 }, links));
  const { ground, byOdds, means, ramps } = chain.posterior;
  const { grid, widths } = ground;
  const borders = grid.cells + 1;
  const shares = [0.2, 0.5, 0.3];

  /** The mean share of a variant in the cells lo … hi − 1, by the mean shares of what came after each change. */
  function meanShare(variant: number, lo: number, hi: number): number {
    let [made, fitted] = [0, 0];
    for (let cell = lo; cell < hi; cell += 1) {
      const come = variant === 0 ? 1 : (means[variant - 1]?.[cell] as number);
      const gone = variant === 2 ? 0 : (means[variant]?.[cell] as number);
      made += grid.cars[cell] as number;
      fitted += (grid.cars[cell] as number) * (come - gone);
    }
    return fitted / made;
  }

  test.each([0, 1, 2])(
    "a car of kind %i known to the season is judged by the mean share of its stretch",
    (variant) => {
      const kind = { swap: 0.2, misread: 0.04 };
      const [verdict] = chainVerdicts(chain, [{ id: "one", variant, built: { from: 4.5, to: 15 }, ...kind }]);
      const share = meanShare(variant, 9, 30);
      const q = shares[variant] as number;
      let [notAsBuilt, swapped] = [0, 0];
      for (const { swapOdds, chance } of byOdds) {
        const { floor, slope } = reportLine(kind, swapOdds, q, 3);
        const readSwapped = 0.02 + (1 - 0.04 - 0.02) * q;
        notAsBuilt += (chance * floor * (1 - share)) / (floor + slope * share);
        swapped += (chance * swapChance(0.2, swapOdds) * readSwapped) / (floor + slope * share);
      }
      expect(verdict?.notAsBuilt).toBeCloseTo(notAsBuilt, 9);
      expect(verdict?.swapped).toBeCloseTo(swapped, 9);
    },
  );
  test.each([0, 1])("every month is worth of change %i what its definition gives", (change) => {
    const later = [0.8, 0.3][change] as number;
    const swapped = byOdds.reduce(
      (sum, { swapOdds, chance }) => sum + chance * swapChance(0.05, swapOdds),
      0,
    );
    const [base, slope] = [0.005 + 0.99 * swapped * later, 0.99 * (1 - swapped)];
    const wanted = chainCarsWanted(chain, change);
    expect(wanted).toHaveLength(18);
    for (const { built, informationBits, reportedNew } of wanted) {
      const byMiddle = new Map<number, { mass: number; asNew: number }>();
      widths.forEach((width, w) => {
        for (let start = 0; start + width < borders; start += 1) {
          const chance = ramps[change]?.[w * borders + start] as number;
          const place = byMiddle.get(2 * start + width) ?? { mass: 0, asNew: 0 };
          const rise = [0, 1].reduce(
            (sum, half) => sum + risen(2 * built.from + half, start + width / 2, width) / 2,
            0,
          );
          place.mass += chance;
          place.asNew += chance * (base + slope * rise);
          byMiddle.set(2 * start + width, place);
        }
      });
      const places = [...byMiddle.values()];
      const reported = places.reduce((sum, { asNew }) => sum + asNew, 0);
      const left = places.reduce(
        (sum, { mass, asNew }) => sum + (mass > 0 ? mass * entropy(asNew / mass) : 0),
        0,
      );
      expect(reportedNew).toBeCloseTo(reported, 9);
      expect(informationBits).toBeCloseTo(entropy(reported) - left, 8);
      expect(built.to).toBe(built.from + 1);
    }
  });
});

describe("what one report tells of a date, in bits", () => {
  test("is one where it decides between two as likely, none where it is the same of both", () => {
    expect(expectedInformation(Float64Array.of(1, 1), Float64Array.of(1, 0), 2)).toEqual({
      informationBits: 1,
      reportedNew: 0.5,
    });
    expect(expectedInformation(Float64Array.of(2, 6), Float64Array.of(1, 3), 8)).toEqual({
      informationBits: 0,
      reportedNew: 0.5,
    });
  });
  test("is what remains of the doubt: h(.5) − ½·h(¼) − ½·h(¾)", () => {
    const found = expectedInformation(Float64Array.of(4, 0, 4), Float64Array.of(1, 0, 3), 8);
    expect(found.informationBits).toBeCloseTo(1 - entropy(0.25), 12);
    expect(found.reportedNew).toBe(0.5);
  });
  test("counts as none below a thousandth of a millionth", () => {
    const told = (away: number) =>
      expectedInformation(Float64Array.of(1, 1), Float64Array.of(0.5 + away, 0.5 - away), 2).informationBits;
    expect(told(1e-5)).toBe(0);
    expect(told(1e-4)).toBeGreaterThan(1e-9);
  });
});
