// The sums behind a chain, each against the same sum written out ramp by ramp: shares after a ramp, what imprecise dates say of
// it, and the passes in which they settle. Two years of half months, with uneven production, so that no length stands for another.
import { describe, expect, test } from "vitest";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { meanShares, withImprecise } from "../../../knowledge/dating/chain-imprecise.ts";
import { type ChainPass, chainPass } from "../../../knowledge/dating/chain-passes.ts";
import { type ChainSighting, groupChain, reportLine } from "../../../knowledge/dating/chain-reports.ts";
import { type ChainTerms, chainTerms } from "../../../knowledge/dating/chain-terms.ts";
import {
  borderPrior,
  overlapMonths,
  swapOddsPrior,
  widthPrior,
} from "../../../knowledge/dating/change-priors.ts";
import { changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { granted } from "../../support/granted.ts";
import { chanceFrom } from "../../support/random-tables.ts";

const production = new Map([
  [0, 20],
  [1, 50],
]);
const window = { from: 0, to: 24 };
const grid = cellGrid(window, production, 0.5) as CellGrid;
const borders = grid.cells + 1;
const widths = overlapMonths.map((months) => 2 * months);
const replacements = [0.2, 0.5, 0.3];
const ground = { grid, widths, replacements };

function risen(cell: number, start: number, width: number): number {
  return width === 0 ? Number(cell >= start) : Math.min(1, Math.max(0, (cell + 0.5 - start) / width));
}

/** Mean over the cars of the cells lo … hi − 1. */
function over(lo: number, hi: number, shareAt: (cell: number) => number): number {
  let [made, sum] = [0, 0];
  for (let cell = lo; cell < hi; cell += 1) {
    made += grid.cars[cell] as number;
    sum += (grid.cars[cell] as number) * shareAt(cell);
  }
  return sum / made;
}

/** Every place of a table over widths × borders at which a ramp ends within the window. */
function eachRamp(visit: (place: number, start: number, width: number) => void): void {
  widths.forEach((width, w) => {
    for (let start = 0; start + width < borders; start += 1) visit(w * borders + start, start, width);
  });
}

/** Three variants, two thirds of the dates to the month, the others to the season or the year. */
function cars(count: number, start: number): readonly ChainSighting[] {
  const chance = chanceFrom(start);
  return Array.from({ length: count }, (_, at): ChainSighting => {
    const month = Math.floor(24 * chance());
    const variant = chance() < 0.15 ? Math.floor(3 * chance()) : Math.floor(month / 8);
    const year = 12 * Math.floor(month / 12);
    const built =
      at % 6 === 1
        ? { from: year, to: year + 12 }
        : at % 6 === 3
          ? { from: month - 2, to: month + 2.5 }
          : { from: month, to: month + 0.5 };
    return { id: `car-${at}`, variant, built, swap: at % 2 === 0 ? 0.2 : 0.05, misread: 0.02 };
  });
}

const groups = groupChain(grid, cars(30, 8), 3);
const drawnMeans = [1, 2].map((k) =>
  Float64Array.from({ length: grid.cells }, (_, cell) => ((cell + 0.5) / grid.cells) ** k),
);

test("the mean share of what came after a change is the sum over its ramps", () => {
  const chance = chanceFrom(40);
  const drawn = [0, 1].map(() => {
    const chances = new Float64Array(widths.length * borders);
    eachRamp((place) => {
      chances[place] = chance();
    });
    return chances;
  });
  const shares = meanShares(ground, drawn);
  drawn.forEach((chances, change) => {
    for (let cell = 0; cell < grid.cells; cell += 1) {
      let sum = 0;
      eachRamp((place, start, width) => {
        sum += (chances[place] as number) * risen(cell, start, width);
      });
      expect(shares[change]?.[cell]).toBeCloseTo(sum, 9);
    }
  });
});

describe("what sightings say of a ramp", () => {
  const exact = chainTerms(ground, groups, 2);
  const sharp = groups.filter(({ lo, hi }) => hi - lo === 1);
  const vague = groups.filter(({ lo, hi }) => hi - lo > 1);
  const lineOf = ({ variant, swap, misread }: (typeof groups)[number]) =>
    reportLine({ swap, misread }, 2, replacements[variant] as number, 3);

  /** Of the variant that goes (0) or comes (1) with a change; that of others does not hang on it. */
  const ownShare = (side: number, share: number): number => (side === 1 ? share : side === 0 ? 1 - share : 0);

  test("known to a cell: gains of the cells it rises in, of the variant that comes and the one that goes", () => {
    expect(exact.base).toBeCloseTo(
      sharp.reduce((sum, group) => sum + group.count * Math.log(lineOf(group).floor), 0),
      9,
    );
    [0, 1].forEach((change) => {
      eachRamp((place, start, width) => {
        const gain = sharp.reduce((sum, group) => {
          if (group.lo < start || group.lo >= start + width) return sum;
          const { floor, slope } = lineOf(group);
          const own = ownShare(group.variant - change, risen(group.lo, start, width));
          return sum + group.count * Math.log1p((slope * own) / floor);
        }, 0);
        expect(exact.ramps[change]?.[place]).toBeCloseTo(gain, 9);
      });
    });
  });
  test("known to a cell: gains of the cells in which a variant stood alone", () => {
    [0, 1, 2].forEach((variant) => {
      for (let border = 0; border < borders; border += 1) {
        const gain = sharp
          .filter((group) => group.variant === variant && group.lo < border)
          .reduce((sum, group) => {
            const { floor, slope } = lineOf(group);
            return sum + group.count * Math.log1p(slope / floor);
          }, 0);
        expect(exact.pure[variant]?.[border]).toBeCloseTo(gain, 9);
      }
    });
  });
  test("known to a season or year: its logarithm beside that at the means of both neighbours", () => {
    const added = withImprecise(ground, exact, groups, 2, drawnMeans);
    const meanOf = (change: number, lo: number, hi: number) =>
      change < 0 ? 1 : change > 1 ? 0 : over(lo, hi, (cell) => drawnMeans[change]?.[cell] ?? Number.NaN);
    const logAt = (group: (typeof groups)[number], share: number): number => {
      const { floor, slope } = lineOf(group);
      return Math.log(floor + slope * Math.max(0, share));
    };
    const atMeans = (group: (typeof groups)[number]): number =>
      logAt(group, meanOf(group.variant - 1, group.lo, group.hi) - meanOf(group.variant, group.lo, group.hi));
    expect(vague.length).toBeGreaterThan(5);
    expect(added.base).toBeCloseTo(
      exact.base + vague.reduce((sum, group) => sum + group.count * atMeans(group), 0),
      9,
    );
    expect(added.pure).toEqual(exact.pure);
    [0, 1].forEach((change) => {
      eachRamp((place, start, width) => {
        const gain = vague.reduce((sum, group) => {
          const { variant, lo, hi, count } = group;
          const share = over(lo, hi, (cell) => risen(cell, start, width));
          if (variant === change + 1)
            return sum + count * (logAt(group, share - meanOf(variant, lo, hi)) - atMeans(group));
          if (variant === change)
            return sum + count * (logAt(group, meanOf(change - 1, lo, hi) - share) - atMeans(group));
          return sum;
        }, exact.ramps[change]?.[place] ?? Number.NaN);
        expect(added.ramps[change]?.[place]).toBeCloseTo(gain, 8);
      });
    });
  });
});

/** At least k of n dates thrown evenly over the window lie in the first part of it. */
function atLeast(k: number, n: number, part: number): number {
  const choose = (of: number, r: number): number => (r === 0 ? 1 : (choose(of, r - 1) * (of - r + 1)) / r);
  let sum = 0;
  for (let j = k; j <= n; j += 1) sum += choose(n, j) * part ** j * (1 - part) ** (n - j);
  return sum;
}

describe("a chain of three with imprecise dates", () => {
  const stated = [undefined, { ends: [{ at: 15, deviation: 3 }] }];
  const setting = { window, production, replacements: [2, 5, 3], cell: 0.5, stated };
  const seen = cars(30, 8);
  const chain = granted(changeoverChain(setting, seen));
  const halves = { ...grid, cell: 0.25, cells: 2 * grid.cells };
  const priors = {
    logWidth: widthPrior(overlapMonths).map(Math.log),
    logMiddle: [undefined, borderPrior(halves, { ends: [{ at: 15, deviation: 3 }] }).map(Math.log)],
  };
  const even = [1, 2].map((k) =>
    Float64Array.from({ length: grid.cells }, (_, cell) => atLeast(k, 2, (cell + 0.5) / grid.cells)),
  );
  const settled = swapOddsPrior.map(({ swapOdds }): ChainPass => {
    const exact: ChainTerms = chainTerms(ground, groups, swapOdds);
    const passAt = (means: readonly Float64Array[]) =>
      chainPass(ground, withImprecise(ground, exact, groups, swapOdds, means), priors);
    return passAt(meanShares(ground, passAt(meanShares(ground, passAt(even).chances)).chances));
  });

  test("starts from changes thrown evenly over the window and settles in two sweeps, tolerance 1e-9", () => {
    chain.posterior.byOdds.forEach(({ ramps, swapOdds }, index) => {
      expect(swapOdds).toBe(swapOddsPrior[index]?.swapOdds);
      ramps.forEach((ramp, change) => {
        ramp.forEach((chance, place) => {
          expect(Math.abs(chance - (settled[index]?.chances[change]?.[place] ?? Number.NaN))).toBeLessThan(
            1e-9,
          );
        });
      });
    });
  });
  test("weighs the factors on the odds of a swap by their evidence", () => {
    const weights = settled.map(
      ({ logEvidence }, index) => (swapOddsPrior[index]?.prior ?? 0) * Math.exp(logEvidence + 60),
    );
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    chain.posterior.byOdds.forEach(({ chance }, index) => {
      expect(chance).toBeCloseTo((weights[index] ?? Number.NaN) / total, 9);
    });
    chain.posterior.ramps.forEach((ramp, change) => {
      ramp.forEach((mixed, place) => {
        const sum = chain.posterior.byOdds.reduce(
          (all, { chance, ramps }) => all + chance * (ramps[change]?.[place] ?? Number.NaN),
          0,
        );
        expect(Math.abs(mixed - sum)).toBeLessThan(1e-12);
      });
    });
  });
  test("has the middles, overlaps and shares of its ramps", () => {
    chain.changeovers.forEach(({ middles, overlaps, intervalChance, interval, median }, change) => {
      const ramp = chain.posterior.ramps[change] as Float64Array;
      const byMiddle = new Float64Array(2 * grid.cells + 1);
      const byWidth = new Map<number, number>();
      eachRamp((place, start, width) => {
        const chance = ramp[place] as number;
        byMiddle[2 * start + width] = (byMiddle[2 * start + width] as number) + chance;
        byWidth.set(width / 2, (byWidth.get(width / 2) ?? 0) + chance);
      });
      expect(middles).toHaveLength(2 * grid.cells + 1);
      byMiddle.forEach((chance, at) => {
        expect(middles[at]).toBeCloseTo(chance, 12);
      });
      expect(overlaps.map(({ months }) => months)).toEqual([...overlapMonths]);
      for (const { months, chance } of overlaps) expect(chance).toBeCloseTo(byWidth.get(months) ?? 0, 12);
      const held = byMiddle.reduce((sum, chance, at) => {
        const month = at / 4;
        return month > interval.from && month < interval.to ? sum + chance : sum;
      }, 0);
      expect(intervalChance).toBeGreaterThanOrEqual(0.9);
      expect(intervalChance).toBeLessThan(0.95);
      expect(held).toBeCloseTo(intervalChance, 9);
      const before = byMiddle.reduce((sum, chance, at) => (at / 4 < median ? sum + chance : sum), 0);
      expect(Math.abs(before - 0.5)).toBeLessThan(0.1);
    });
    const [come = new Float64Array(), gone = new Float64Array()] = meanShares(ground, chain.posterior.ramps);
    chain.asBuilt[1]?.forEach((share, cell) => {
      expect(chain.asBuilt[0]?.[cell]).toBeCloseTo(1 - (come[cell] as number), 12);
      expect(share).toBeCloseTo((come[cell] as number) - (gone[cell] as number), 9);
      expect(chain.asBuilt[2]?.[cell]).toBeCloseTo(gone[cell] as number, 12);
    });
    expect([chain.from, chain.cell]).toEqual([0, 0.5]);
  });
});

test("a chain is refused in words for a single variant and for a window that is none", () => {
  expect(changeoverChain({ window, replacements: [1] }, [])).toEqual({
    ok: false,
    problem: { code: "out-of-range", message: "a changeover needs at least two variants" },
  });
  expect(changeoverChain({ window: { from: 3, to: 3 }, replacements: [1, 1] }, [])).toEqual({
    ok: false,
    problem: {
      code: "no-window",
      message: "the window of build dates is empty or longer than a century",
    },
  });
});
