// Changes at their borders: what a succession, a chain of kinds, a likely month or a changeover is where dates are missing, windows
// are short and one sighting stands alone.
import { describe, expect, test } from "vitest";
import { sharesOf } from "../../../knowledge/dating/as-built-shares.ts";
import { mostTellingFirst } from "../../../knowledge/dating/cars-wanted.ts";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { chainsOf } from "../../../knowledge/dating/chains-of.ts";
import { borderPrior, circumstances, widthPrior } from "../../../knowledge/dating/change-priors.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import {
  borderWeights,
  changeoverPosterior,
  circumstanceChances,
  posteriorMargin,
  widthChances,
} from "../../../knowledge/dating/changeover-posterior.ts";
import { likeliestMonth } from "../../../knowledge/dating/likely-month.ts";
import { doubledShare, doubledWhole, overlapProfile } from "../../../knowledge/dating/overlap-profile.ts";
import { productionScale } from "../../../knowledge/dating/production-scale.ts";
import type { ChangeoverSighting } from "../../../knowledge/dating/report-groups.ts";
import { UNITS_PER_NAT } from "../../../knowledge/dating/whole-logarithm.ts";
import { granted } from "../../support/granted.ts";
import { chanceFrom } from "../../support/random-tables.ts";

const window = { from: 0, to: 6 };
const grid = cellGrid(window, undefined, 1) as CellGrid;

function car(from: number, isNew: boolean, rest: Partial<ChangeoverSighting> = {}): ChangeoverSighting {
  const id = `${isNew ? "new" : "old"}-${from}`;
  return { id, isNew, built: { from, to: from + 1 }, swap: 0.1, misread: 0.01, isSought: false, ...rest };
}

describe("the posterior of one change", () => {
  const widths = [0, 2, 4];
  const chance = chanceFrom(77);
  const few = circumstances.slice(3, 8);
  const ground = {
    grid,
    widths,
    circumstances: few,
    widthPrior: widthPrior(widths),
    borderPrior: borderPrior(grid, { ends: [{ at: 4, deviation: 1 }] }),
  };
  // From nothing to forty nats below: the least of them weigh nothing.
  const nats = Float64Array.from({ length: 5 * 3 * 7 }, () => -40 * chance() ** 3);
  const likelihoods = nats.map((one) => Math.round(one * UNITS_PER_NAT));
  const weightAt = (place: number): number => {
    const row = Math.floor(place / 7);
    const prior = (few[Math.floor(row / 3)]?.prior ?? 0) * (ground.widthPrior[row % 3] as number);
    return prior * (ground.borderPrior[place % 7] as number) * Math.exp(nats[place] as number);
  };
  const all = Array.from(nats, (_, place) => weightAt(place));
  const total = all.reduce((sum, weight) => sum + weight, 0);
  const posterior = changeoverPosterior(ground, likelihoods);
  const sumOf = (isMeant: (place: number) => boolean) =>
    all.reduce((sum, weight, place) => (isMeant(place) ? sum + weight / total : sum), 0);

  test("is prior times likelihood, the best of all weighing 2³⁹ and those e⁻²⁸ below it nothing", () => {
    const best = Math.max(...all);
    expect(Math.max(...posterior.weights)).toBe(2 ** 39);
    posterior.weights.forEach((weight, place) => {
      const share = (all[place] as number) / best;
      expect(Math.abs(weight / 2 ** 39 - share)).toBeLessThan(1e-9);
      expect(Number.isInteger(weight)).toBe(true);
      if (share < Math.exp(-28.001)) expect(weight).toBe(0);
    });
    expect(posterior.weights.reduce((sum, weight) => sum + weight, 0)).toBe(posterior.total);
  });
  test("has the margins of borders, overlaps and circumstances", () => {
    borderWeights(posterior).forEach((weight, border) => {
      expect(weight / posterior.total).toBeCloseTo(
        sumOf((place) => place % 7 === border),
        9,
      );
    });
    widthChances(posterior).forEach((share, w) => {
      expect(share).toBeCloseTo(
        sumOf((place) => Math.floor(place / 7) % 3 === w),
        9,
      );
    });
    circumstanceChances(posterior).forEach((share, c) => {
      expect(share).toBeCloseTo(
        sumOf((place) => Math.floor(place / 21) === c),
        9,
      );
    });
  });
  test("has, to the last digit, the margin that is worked out without its table", () => {
    const before = Float64Array.from(likelihoods);
    const { joint, total: whole, widths: own } = posteriorMargin(ground, likelihoods);
    expect([joint, whole, own]).toEqual([posterior.joint, posterior.total, widths]);
    expect(likelihoods).toEqual(before);
  });
});

test("the works' share in a cell is the sum over borders and overlaps, wide ones too", () => {
  const chance = chanceFrom(5);
  const widths = [0, 1, 3, 4, 9];
  for (const cells of [1, 2, 5, 12]) {
    const joint = Float64Array.from({ length: widths.length * (cells + 1) }, () => chance());
    const shares = sharesOf(joint, widths, cells);
    for (let cell = 0; cell < cells; cell += 1) {
      let sum = 0;
      widths.forEach((width, w) => {
        for (let border = 0; border < cells; border += 1) {
          const share = border === 0 ? 1 : doubledShare(cell - border, width) / doubledWhole(width);
          sum += (joint[w * (cells + 1) + border] as number) * share;
        }
      });
      expect(shares[cell]).toBeCloseTo(sum, 12);
    }
  }
});

test("a profile has a part share for every border that divides its stretch, and no others", () => {
  const cars = new Float64Array(9).fill(1);
  const sizes = [0, 1, 2, 3, 8].map((width) => {
    const { first, parts } = overlapProfile(cars, 4, 6, width);
    return [first, parts.length];
  });
  expect(sizes).toEqual([
    [1, 1],
    [1, 1],
    [0, 3],
    [0, 3],
    [-3, 9],
  ]);
});

describe("the likeliest month", () => {
  const flat = (weights: readonly number[]) =>
    likeliestMonth(Float64Array.from(weights), (place) => place / 2, 10);
  test("gathers the borders in it, a border between two months going half to each", () => {
    // Places 1 and 3 lie in the middle of months 0 and 1, place 2 between them.
    expect(flat([0, 3, 2, 5, 0])).toEqual({ month: { from: 1, to: 2 }, chance: 0.6 });
    expect(flat([0, 5, 2, 3, 0])).toEqual({ month: { from: 0, to: 1 }, chance: 0.6 });
  });
  test("is the earlier of two as likely", () => {
    expect(flat([0, 4, 2, 4, 0])).toEqual({ month: { from: 0, to: 1 }, chance: 0.5 });
  });
  test("has nothing of the first and the last place, and is none where they have all", () => {
    expect(flat([9, 1, 0, 0, 0])).toEqual({ month: { from: 0, to: 1 }, chance: 0.1 });
    expect(flat([0, 0, 0, 1, 9])).toEqual({ month: { from: 1, to: 2 }, chance: 0.1 });
    expect([flat([5, 0, 0, 0, 5]), flat([10]), flat([])]).toEqual([undefined, undefined, undefined]);
  });
  test("stands out with one chance in twenty exactly", () => {
    expect(flat([0, 0.5, 0, 0, 9.5])?.chance).toBe(0.05);
    expect(flat([0, 0.49, 0, 0, 9.5])).toBeUndefined();
  });
});

describe("a changeover", () => {
  test("names which of the two were reported", () => {
    const of = (...all: readonly ChangeoverSighting[]) => granted(changeover({ window }, all)).reported;
    expect([of(), of(car(1, false)), of(car(4, true)), of(car(1, false), car(4, true))]).toEqual([
      "none",
      "old-only",
      "new-only",
      "both",
    ]);
    expect(of(car(90, true))).toBe("none");
  });
  test("lists its cars by name, without those outside the window", () => {
    const { sightings, outside } = granted(
      changeover({ window }, [car(4, true), car(1, false), car(-8, false), car(70, true)]),
    );
    expect(sightings.map(({ id }) => id)).toEqual(["new-4", "old-1"]);
    expect(outside).toEqual(["new-70", "old--8"]);
  });
  test("says that the handbook's date lies outside what the cars say by themselves, by the middle of its ends", () => {
    const long = { window: { from: 0, to: 60 } };
    const seen = Array.from({ length: 60 }, (_, from) => car(from, from >= 30, { swap: 0.01 }));
    const { interval } = granted(changeover(long, seen));
    const outsideWith = (...dates: readonly number[]) =>
      granted(changeover({ ...long, stated: { ends: dates.map((at) => ({ at, deviation: 2 })) } }, seen))
        .statedOutside;
    expect([outsideWith(30), outsideWith(interval.from - 0.5), outsideWith(interval.to + 0.5)]).toEqual([
      false,
      true,
      true,
    ]);
    expect([outsideWith(interval.from), outsideWith(interval.to)]).toEqual([false, false]);
    expect([outsideWith(20, 40), outsideWith(30, 50), outsideWith(10, 30)]).toEqual([false, true, true]);
    expect(granted(changeover(long, seen)).statedOutside).toBe(false);
    expect(outsideWith()).toBe(false);
  });
  test("is refused in words where the window is none", () => {
    expect(changeover({ window: { from: 4, to: 4 } }, [])).toEqual({
      ok: false,
      problem: {
        code: "no-window",
        message: "the window of build dates is empty or longer than a century",
      },
    });
  });
});

describe("kinds in a row", () => {
  const link = (old: string, fresh: string) => ({ old, new: fresh });
  test("that come round in a ring are no chain, and what leads into a ring ends in it", () => {
    expect(chainsOf([link("a", "b"), link("b", "c"), link("c", "a")], () => 1)).toEqual([]);
    expect(chainsOf([], () => 1)).toEqual([]);
  });
  test("are two chains where nothing joins them, each in the order of its first succession", () => {
    const rows = [link("x", "y"), link("a", "b"), link("y", "z"), link("b", "c")];
    expect(chainsOf(rows, () => 1)).toEqual([
      ["x", "y", "z"],
      ["a", "b", "c"],
    ]);
  });
  test("of which one alone was seen, be it the last, are none", () => {
    const row = [link("a", "b"), link("b", "c"), link("c", "d")];
    const seen = (...kinds: readonly string[]) => chainsOf(row, (kind) => Number(kinds.includes(kind)));
    expect([seen("d"), seen("a"), seen("c", "d")]).toEqual([[], [], []]);
    expect([seen("b", "d"), seen("a", "c")]).toEqual([[["b", "c", "d"]], [["a", "b", "c"]]]);
  });
});

test("the scale of cars built runs through years without cars, and its ends are those of the window", () => {
  const scale = productionScale(
    { from: 0, to: 36 },
    new Map([
      [0, 30],
      [1, 0],
      [2, 30],
    ]),
  );
  expect([scale?.builtBy(0), scale?.builtBy(36), scale?.builtBy(40)]).toEqual([0, 1, 1]);
  expect(scale?.builtBy(18)).toBeCloseTo(0.5, 3);
  expect(scale?.instantAt(0.5)).toBeCloseTo(18, 6);
  expect([scale?.instantAt(0), scale?.instantAt(1), scale?.instantAt(2)]).toEqual([0, 36, 36]);
  expect(scale?.instantAt(0.25)).toBeCloseTo(6, 2);
});

test("of two months as telling the earlier comes first", () => {
  const at = (from: number, informationBits: number) => ({
    built: { from, to: from + 1 },
    informationBits,
    reportedNew: 0.5,
  });
  expect(mostTellingFirst([at(5, 0.1), at(2, 0.3), at(1, 0.1)]).map(({ built }) => built.from)).toEqual([
    2, 1, 5,
  ]);
});
