// Sightings as counts: what cannot be told apart is counted together, and cars of one imprecise date count a little less
// than so many, because they share its error (1/(1 + (n − 1)·.01)).
import { describe, expect, test } from "vitest";
import { cellGrid } from "../../../knowledge/dating/cells.ts";
import { type ChainSighting, groupChain, reportLine } from "../../../knowledge/dating/chain-reports.ts";
import { type Circumstance, circumstances } from "../../../knowledge/dating/change-priors.ts";
import { endsOfUse } from "../../../knowledge/dating/ends-of-use.ts";
import {
  reportChance,
  reportTerms,
  reportVerdict,
  swapChance,
} from "../../../knowledge/dating/report-chance.ts";
import { type ChangeoverSighting, groupReports } from "../../../knowledge/dating/report-groups.ts";

const grid = cellGrid({ from: 0, to: 24 }, undefined, 1);
if (!grid) throw new Error("two years are a window");
const whole = grid;

function seen(
  id: string,
  from: number,
  to: number,
  rest: Partial<ChangeoverSighting> = {},
): ChangeoverSighting {
  return { id, isNew: false, built: { from, to }, swap: 0.2, misread: 0.02, isSought: false, ...rest };
}

describe("sightings of a change", () => {
  test("that say the same of the same month are one group, whatever order they came in", () => {
    const all = [seen("b", 3, 4), seen("c", 5, 6), seen("a", 3.2, 3.9)];
    const { groups, groupOf } = groupReports(whole, all);
    expect(groups.map(({ lo, count, units }) => [lo, count, units])).toEqual([
      [3, 2, 2 * 4096],
      [5, 1, 4096],
    ]);
    expect([...groupOf].toSorted()).toEqual([
      ["a", 0],
      ["b", 0],
      ["c", 1],
    ]);
    expect(groupReports(whole, all.toReversed()).groups).toEqual(groups);
  });
  test("that differ in anything that counts are not", () => {
    const ways: readonly Partial<ChangeoverSighting>[] = [
      {},
      { isNew: true },
      { swap: 0.05 },
      { misread: 0.1 },
      { isSought: true },
      { built: { from: 3, to: 5 } },
      { built: { from: 2, to: 3 } },
    ];
    const { groups } = groupReports(
      whole,
      ways.map((way, index) => seen(`s${index}`, 3, 4, way)),
    );
    expect(groups).toHaveLength(ways.length);
    expect(
      groups.map(({ isNew, lo, hi, swap, misread, isSought }) => [isNew, lo, hi, swap, misread, isSought]),
    ).toEqual([
      [false, 2, 3, 0.2, 0.02, false],
      [false, 3, 4, 0.05, 0.02, false],
      [false, 3, 4, 0.2, 0.02, false],
      [false, 3, 4, 0.2, 0.02, true],
      [false, 3, 4, 0.2, 0.1, false],
      [false, 3, 5, 0.2, 0.02, false],
      [true, 3, 4, 0.2, 0.02, false],
    ]);
  });
  test("stand for as many cars as they say, and one when they say nothing", () => {
    const { groups } = groupReports(whole, [seen("a", 3, 4, { count: 40 }), seen("b", 3, 4)]);
    expect(groups.map(({ count }) => count)).toEqual([41]);
  });
  test("of one year share the error of their date, those of one month have none to share", () => {
    const year = Array.from({ length: 101 }, (_, at) => seen(`y${at}`, 0, 12, { isNew: at % 2 === 1 }));
    const { groups } = groupReports(whole, [...year, seen("m", 3, 4, { count: 101 })]);
    expect(groups.map(({ lo, hi, isNew, count, units }) => [lo, hi, isNew, count, units])).toEqual([
      [0, 12, false, 51, 51 * 2048],
      [3, 4, false, 101, 101 * 4096],
      [0, 12, true, 50, 50 * 2048],
    ]);
  });
  test("outside the window are named in the order of their names and count for nothing", () => {
    const { groups, outside, groupOf } = groupReports(whole, [
      seen("z", 40, 41),
      seen("B", -9, -2),
      seen("a", 24, 25),
    ]);
    expect(groups).toEqual([]);
    expect(outside).toEqual(["B", "a", "z"]);
    expect(groupOf.size).toBe(0);
  });
});

describe("sightings of a chain", () => {
  const link = (
    variant: number,
    from: number,
    to: number,
    rest: Partial<ChainSighting> = {},
  ): ChainSighting => ({
    id: `${variant}-${from}`,
    variant,
    built: { from, to },
    swap: 0.2,
    misread: 0.02,
    ...rest,
  });
  test("are counted alike, in the order of their variants and dates", () => {
    const seen = [
      link(1, 3, 4),
      link(0, 7, 8),
      link(1, 3, 4),
      link(0, 2, 3, { swap: 0.05 }),
      link(0, 2, 3, { swap: 0.05, misread: 0.01 }),
      link(0, 2, 4),
      link(0, 2, 3),
    ];
    const groups = groupChain(whole, seen, 2);
    expect(groupChain(whole, seen.toReversed(), 2)).toEqual(groups);
    expect(
      groups.map(({ variant, lo, hi, swap, misread, count }) => [variant, lo, hi, swap, misread, count]),
    ).toEqual([
      [0, 2, 3, 0.05, 0.01, 1],
      [0, 2, 3, 0.05, 0.02, 1],
      [0, 2, 3, 0.2, 0.02, 1],
      [0, 2, 4, 0.2, 0.02, 1],
      [0, 7, 8, 0.2, 0.02, 1],
      [1, 3, 4, 0.2, 0.02, 2],
    ]);
  });
  test("outside the window, or of a variant that is none of the chain's, are left out", () => {
    expect(
      groupChain(whole, [link(2, 3, 4), link(-1, 3, 4), link(0, 30, 31), link(Number.NaN, 3, 4)], 2),
    ).toEqual([]);
    expect(groupChain(whole, [link(0, 3, 4), link(1, 3, 4)], 2)).toHaveLength(2);
  });
  test("are never taken as read without any mistake", () => {
    expect(groupChain(whole, [link(0, 3, 4, { misread: 0 })], 2)[0]?.misread).toBe(0.005);
    expect(groupChain(whole, [link(0, 3, 4, { misread: 0.1 })], 2)[0]?.misread).toBe(0.1);
  });
  test("of one year share the error of their date", () => {
    const year = Array.from({ length: 101 }, () => link(0, 0, 12));
    expect(groupChain(whole, year, 2)[0]?.count).toBeCloseTo(50.5, 3);
  });
  test("report a variant by its own share, by a swap, or by a mistake among the others", () => {
    // m .06 of three variants: e .03; σ of .2 with odds doubled 1/3; a third of the replacements.
    const line = reportLine({ swap: 0.2, misread: 0.06 }, 2, 1 / 3, 3);
    expect(line.floor).toBeCloseTo(0.03 + 0.91 * (1 / 3) * (1 / 3), 12);
    expect(line.slope).toBeCloseTo(0.91 * (2 / 3), 12);
    expect(reportLine({ swap: 0, misread: 0.02 }, 1, 0.5, 1)).toEqual({ floor: 0.02, slope: 0.96 });
  });
});

describe("a report of one variant", () => {
  const plain = circumstances.find(
    ({ swapOdds, replacementLean, reporting }) =>
      swapOdds === 1 && replacementLean[0] === replacementLean[1] && reporting[0] === reporting[1],
  ) as Circumstance;
  const ground = { isNew: true, swap: 0.2, misread: 0.02, isSought: false };

  test("has odds of a swap as the grade promises, times how far grades are off", () => {
    expect(swapChance(0.2, 1)).toBeCloseTo(0.2, 12);
    expect(swapChance(0.2, 4)).toBeCloseTo(0.5, 12);
    expect(swapChance(0, 4)).toBe(0);
  });
  test("comes of the works' share, of the replacements' and of misreading: p = m + (1 − 2m)(σq + (1 − σ)F)", () => {
    const terms = reportTerms(ground, plain, { old: 1, new: 3 });
    expect(reportChance(terms, 0.6, 0.4)).toBeCloseTo(0.02 + 0.96 * (0.2 * 0.75 + 0.8 * 0.6), 12);
    const old = reportTerms({ ...ground, isNew: false }, plain, { old: 1, new: 3 });
    expect(reportChance(old, 0.4, 0.6)).toBeCloseTo(0.02 + 0.96 * (0.2 * 0.25 + 0.8 * 0.4), 12);
    expect(reportChance(terms, 0.6, 0.4) + reportChance(old, 0.4, 0.6)).toBeCloseTo(1, 12);
  });
  test("is heard more often where its kind is reported more readily, unless the car was sought", () => {
    const ready = { ...plain, reporting: [3, 1] as const };
    const even = reportTerms(ground, plain, { old: 1, new: 1 });
    const p = reportChance(even, 0.6, 0.4);
    expect(reportChance(reportTerms(ground, ready, { old: 1, new: 1 }), 0.6, 0.4)).toBeCloseTo(
      (3 * p) / (3 * p + 1 - p),
      12,
    );
    const sought = reportTerms({ ...ground, isSought: true }, ready, { old: 1, new: 1 });
    expect(reportChance(sought, 0.6, 0.4)).toBeCloseTo(p, 12);
    const old = reportTerms({ ...ground, isNew: false }, ready, { old: 1, new: 1 });
    const q = 1 - p;
    expect(reportChance(old, 0.4, 0.6)).toBeCloseTo(q / (q + 3 * p), 12);
  });
  test("leans to the replacements that are said to lean", () => {
    const leaning = { ...plain, replacementLean: [4, 1] as const };
    expect(reportTerms(ground, leaning, { old: 1, new: 1 }).replacement).toBeCloseTo(0.8, 12);
    expect(reportTerms({ ...ground, isNew: false }, leaning, { old: 2, new: 1 }).replacement).toBeCloseTo(
      1 / 3,
      12,
    );
  });
  test("leaves open that the works fitted another: by Bayes' rule over swapped, misread and as seen", () => {
    const terms = reportTerms(ground, plain, { old: 1, new: 1 });
    const [share, misread, swapped, q] = [0.3, 0.02, 0.2, 0.5];
    const readSwapped = misread + (1 - 2 * misread) * q;
    const all = swapped * readSwapped + (1 - swapped) * (misread + (1 - 2 * misread) * share);
    const right = share * (swapped * readSwapped + (1 - swapped) * (1 - misread));
    const verdict = reportVerdict(terms, share);
    expect(verdict.notAsBuilt).toBeCloseTo(1 - right / all, 12);
    expect(verdict.swapped).toBeCloseTo((swapped * readSwapped) / all, 12);
  });
  test("that cannot be, with no mistake and no swap, leaves what was thought before", () => {
    const sure = reportTerms({ ...ground, swap: 0, misread: 0 }, plain, { old: 1, new: 1 });
    expect(reportVerdict(sure, 0)).toEqual({ notAsBuilt: 1, swapped: 0 });
  });
});

describe("the ends of use", () => {
  const at = (id: string, from: number, isNew: boolean) => seen(id, from, from + 1, { isNew });
  const doubts = new Map([
    ["o1", 0.1],
    ["o2", 0.7],
    ["o3", 0.5],
    ["n1", 0.6],
    ["n2", 0.2],
    ["n3", 0],
  ]);
  const ends = endsOfUse(
    [
      at("o1", 2, false),
      at("o3", 5, false),
      at("o2", 9, false),
      at("n2", 8, true),
      at("n1", 3, true),
      at("n3", 11, true),
    ],
    doubts,
  );
  test("are the last old and the first new, with the chance of each to be as built", () => {
    expect(ends.lastOld).toEqual({ id: "o2", at: 9.5, asBuilt: expect.closeTo(0.3, 12) });
    expect(ends.firstNew).toEqual({ id: "n1", at: 3.5, asBuilt: 0.4 });
  });
  test("and the same without what is more likely than not not as built", () => {
    expect(ends.lastOldUnsuspected).toEqual({ id: "o3", at: 5.5, asBuilt: 0.5 });
    expect(ends.firstNewUnsuspected).toEqual({ id: "n2", at: 8.5, asBuilt: 0.8 });
  });
  test("are of the first in the order of names where two stand at the same place", () => {
    const even = new Map([
      ["b", 0],
      ["a", 0],
      ["d", 0],
      ["c", 0],
    ]);
    const tied = endsOfUse([at("b", 2, false), at("a", 2, false), at("d", 7, true), at("c", 7, true)], even);
    expect([tied.lastOld?.id, tied.firstNew?.id]).toEqual(["a", "c"]);
  });
  test("are left out where nothing was seen, or only outside the window", () => {
    expect(endsOfUse([at("x", 90, true)], doubts)).toEqual({});
    expect(Object.keys(endsOfUse([at("n1", 3, true)], doubts))).toEqual(["firstNew"]);
  });
});
