// Suspects and wanted cars of a chain, against the sum over every pair of changeovers and against what is plain.
import { describe, expect, test } from "vitest";
import { chainCarsWanted } from "../../../knowledge/dating/chain-cars-wanted.ts";
import { type ChainSighting, reportLine } from "../../../knowledge/dating/chain-reports.ts";
import { chainVerdicts } from "../../../knowledge/dating/chain-verdicts.ts";
import { overlapMonths, swapOddsPrior, widthPrior } from "../../../knowledge/dating/change-priors.ts";
import { changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { granted } from "../../support/granted.ts";

const months = 14;
const replacements = [0.2, 0.5, 0.3];
const setting = { window: { from: 0, to: months }, replacements, cell: 1 };
const labels = [0, 0, 1, 0, 0, 1, 1, 2, 1, 0, 2, 2, 2, 2];
const seen = labels.map(
  (variant, at): ChainSighting => ({
    id: `car-${at}`,
    variant,
    built: { from: at, to: at + 1 },
    swap: at % 3 === 0 ? 0.2 : 0.05,
    misread: 0.02,
  }),
);

function risen(cell: number, start: number, width: number): number {
  return width === 0 ? Number(cell >= start) : Math.min(1, Math.max(0, (cell + 0.5 - start) / width));
}

interface History {
  readonly weight: number;
  readonly swapOdds: number;
  readonly first: readonly [start: number, width: number];
  readonly second: readonly [start: number, width: number];
}

function shareOf(variant: number, cell: number, { first, second }: History): number {
  const [come, gone] = [risen(cell, ...first), risen(cell, ...second)];
  return [1 - come, come - gone, gone][variant] as number;
}

/** Every pair of ramps with every factor on the odds of a swap, weighed by what was seen. */
function histories(): readonly History[] {
  const ramps = overlapMonths.flatMap((width, w) =>
    Array.from({ length: Math.max(0, months + 1 - width) }, (_, start) => ({
      ramp: [start, width] as const,
      prior: widthPrior(overlapMonths)[w] as number,
    })),
  );
  return swapOddsPrior.flatMap(({ swapOdds, prior }) =>
    ramps.flatMap((one) =>
      ramps
        .filter(({ ramp: [start] }) => start >= one.ramp[0] + one.ramp[1])
        .map((other) => {
          const history = { swapOdds, first: one.ramp, second: other.ramp, weight: 0 };
          const weight = seen.reduce(
            (product, { variant, built, swap, misread }) => {
              const line = reportLine({ swap, misread }, swapOdds, replacements[variant] as number, 3);
              return product * (line.floor + line.slope * shareOf(variant, built.from, history));
            },
            prior * one.prior * other.prior,
          );
          return { ...history, weight };
        }),
    ),
  );
}

describe("three kinds in a row, one car a month", () => {
  const chain = granted(changeoverChain(setting, seen));
  const verdicts = chainVerdicts(chain, seen);

  test("each verdict is the sum over all histories, tolerance 1e-9", () => {
    const all = histories();
    const total = all.reduce((sum, { weight }) => sum + weight, 0);
    seen.forEach(({ variant, built, swap, misread }, at) => {
      const q = replacements[variant] as number;
      const error = misread / 2;
      const readSwapped = error + (1 - misread - error) * q;
      let [notAsBuilt, swapped] = [0, 0];
      for (const history of all) {
        const sigma = (history.swapOdds * swap) / (1 - swap + history.swapOdds * swap);
        const share = shareOf(variant, built.from, history);
        const readUntouched = error + (1 - misread - error) * share;
        const read = (1 - sigma) * readUntouched + sigma * readSwapped;
        const asBuilt = (share * ((1 - sigma) * (1 - misread) + sigma * readSwapped)) / read;
        notAsBuilt += (history.weight / total) * (1 - asBuilt);
        swapped += ((history.weight / total) * sigma * readSwapped) / read;
      }
      expect(Math.abs((verdicts[at]?.notAsBuilt ?? Number.NaN) - notAsBuilt)).toBeLessThan(1e-9);
      expect(Math.abs((verdicts[at]?.swapped ?? Number.NaN) - swapped)).toBeLessThan(1e-9);
    });
  });

  test("the first kind on a car of the last kind's months is the suspect", () => {
    const worst = verdicts.toSorted((one, other) => other.notAsBuilt - one.notAsBuilt)[0];
    expect(worst?.id).toBe("car-9");
    expect(worst?.notAsBuilt).toBeGreaterThan(0.9);
  });

  test("a car known to the year only is judged by the mean share of its year, one outside the window not at all", () => {
    const base = { id: "year", variant: 0, swap: 0.2, misread: 0.02 };
    const [early, late] = chainVerdicts(chain, [
      { ...base, built: { from: 0, to: 4 } },
      { ...base, built: { from: 10, to: 14 } },
      { ...base, built: { from: 40, to: 41 } },
    ]);
    expect(early?.notAsBuilt).toBeLessThan(0.1);
    expect(late?.notAsBuilt).toBeGreaterThan(0.9);
    expect(chainVerdicts(chain, [{ ...base, built: { from: 40, to: 41 } }])).toEqual([]);
  });
});

describe("cars wanted between the kinds of a chain", () => {
  const years = { window: { from: 0, to: 72 }, replacements: [1, 1, 1] };
  const cars = Array.from({ length: 24 }, (_, at): ChainSighting => {
    const from = 3 * at;
    return {
      id: `car-${at}`,
      variant: Math.floor(at / 8),
      built: { from, to: from + 1 },
      swap: 0.05,
      misread: 0.01,
    };
  });
  const chain = granted(changeoverChain(years, cars));

  test.each([
    [0, 24],
    [1, 48],
  ])("of change %i they lie about month %i, where the sightings leave it open", (change, truth) => {
    const [best, second] = chainCarsWanted(chain, change);
    expect(Math.abs((best?.built.from ?? Number.NaN) - truth)).toBeLessThanOrEqual(4);
    expect(best?.reportedNew).toBeGreaterThan(0.25);
    expect(best?.reportedNew).toBeLessThan(0.75);
    expect(best?.informationBits).toBeGreaterThanOrEqual(second?.informationBits ?? Number.NaN);
  });

  test("far from every change nothing is to be learnt, of a change that is none nothing is wanted", () => {
    const months = chainCarsWanted(chain, 0);
    expect(months).toHaveLength(72);
    expect(months.at(-1)?.informationBits).toBeLessThan(0.001);
    expect(chainCarsWanted(chain, 2)).toEqual([]);
  });

  test("no car is wanted from a year in which none was built", () => {
    const production = new Map([0, 1, 2, 3, 4, 5].map((year) => [year, year === 2 ? 0 : 50]));
    const idle = granted(changeoverChain({ ...years, production }, cars));
    const asked = chainCarsWanted(idle, 0).map(({ built }) => Math.floor(built.from / 12));
    expect(asked).toHaveLength(60);
    expect(asked).not.toContain(2);
  });

  test("a wanted car that comes in narrows the change more than one from a month far away", () => {
    const [best] = chainCarsWanted(chain, 0);
    const widthWith = (built: { from: number; to: number }, variant: number) => {
      const more = { id: "more", variant, built, swap: 0.05, misread: 0.01 };
      const { interval } = granted(changeoverChain(years, [...cars, more])).changeovers[0] ?? {
        interval: { from: 0, to: 72 },
      };
      return interval.to - interval.from;
    };
    const wanted = best?.built ?? { from: 0, to: 1 };
    const mean = (widthWith(wanted, 0) + widthWith(wanted, 1)) / 2;
    expect(mean).toBeLessThan(widthWith({ from: 2, to: 3 }, 0));
  });
});
