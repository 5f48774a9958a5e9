// Everything told of kinds in a row: the pair of each change taken by itself, and what of it is shown.
import { describe, expect, test } from "vitest";
import { chainCarsWanted } from "../../../knowledge/dating/chain-cars-wanted.ts";
import { chainReport } from "../../../knowledge/dating/chain-report.ts";
import type { ChainSighting } from "../../../knowledge/dating/chain-reports.ts";
import { chainVerdicts } from "../../../knowledge/dating/chain-verdicts.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { type ChainSetting, changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { likeliestMonth } from "../../../knowledge/dating/likely-month.ts";
import { pairInChain, pairOfChain, widerInterval } from "../../../knowledge/dating/pair-in-chain.ts";
import { shapeOfChange } from "../../../knowledge/dating/shape-of-change.ts";
import { granted } from "../../support/granted.ts";

const stated = [undefined, { ends: [{ at: 32, deviation: 3 }] }];
const setting: ChainSetting = { window: { from: 0, to: 48 }, replacements: [2, 5, 3], cell: 0.5, stated };
/** One car a month: the first kind to month 16, the second to 32, then the third; car 40 carries the first, car 2 the second. */
const seen = Array.from({ length: 48 }, (_, from): ChainSighting => {
  const variant = from === 40 ? 0 : from === 2 ? 1 : Math.floor(from / 16);
  return { id: `car-${from}`, variant, built: { from, to: from + 1 }, swap: 0.06, misread: 0.01 };
});
const chain = granted(changeoverChain(setting, seen));
const medians = chain.changeovers.map(({ median }) => median);

describe("the pair of a change in a chain", () => {
  const pairs = [0, 1].map((change) => granted(pairOfChain(setting, seen, chain, change)));

  test("has the window up to the middles of its neighbours, and all of it at the ends of the chain", () => {
    expect(pairs.map((pair) => pair.setting.window)).toEqual([
      { from: 0, to: medians[1] },
      { from: medians[0], to: 48 },
    ]);
  });
  test("has its own two kinds within that window, the later as the new one, none of them sought", () => {
    expect(pairs[0]?.sightings.map(({ id }) => id)).toEqual(
      seen
        .filter(({ variant, built }) => variant < 2 && built.from + 0.5 < (medians[1] ?? 0))
        .map(({ id }) => id),
    );
    expect(pairs[1]?.sightings.map(({ id }) => id)).toEqual(
      seen
        .filter(({ variant, built }) => variant > 0 && built.from + 0.5 >= (medians[0] ?? 0))
        .map(({ id }) => id),
    );
    for (const [change, pair] of pairs.entries())
      for (const { id, isNew, isSought, built, swap, misread } of pair.sightings) {
        const own = seen.find((one) => one.id === id);
        expect(isNew).toBe(own?.variant === change + 1);
        expect({ isSought, built, swap, misread }).toEqual({
          isSought: false,
          built: own?.built,
          swap: 0.06,
          misread: 0.01,
        });
      }
  });
  test("takes a car in the middle of which the window begins, and none in the middle of which it ends", () => {
    const at = (id: string, month: number, variant: number): ChainSighting => ({
      id,
      variant,
      built: { from: month, to: month },
      swap: 0.06,
      misread: 0.01,
    });
    const [first = 0, second = 0] = medians;
    const edge = [at("first", first, 1), at("second", second, 1)];
    const idsOf = (change: number) =>
      granted(pairOfChain(setting, edge, chain, change)).sightings.map(({ id }) => id);
    expect([idsOf(0), idsOf(1)]).toEqual([["first"], ["first", "second"]]);
  });
  test("has the replacements of its two kinds, and what the handbook states of this change only", () => {
    expect(pairs.map((pair) => pair.setting.replacements)).toEqual([
      { old: 2, new: 5 },
      { old: 5, new: 3 },
    ]);
    expect(pairs[0]?.setting).not.toHaveProperty("stated");
    expect(pairs[1]?.setting.stated).toEqual(stated[1]);
    expect(pairs[0]?.setting).not.toHaveProperty("production");
  });
  test("counts on the same production", () => {
    const production = new Map([[0, 40]]);
    expect(granted(pairOfChain({ ...setting, production }, seen, chain, 0)).setting.production).toBe(
      production,
    );
  });
  test("is dated as a change by itself, and there is none beyond the last", () => {
    const [first] = pairs;
    if (first === undefined) throw new Error("there are two");
    expect(pairInChain(setting, seen, chain, 0)).toEqual(changeover(first.setting, first.sightings));
    const none = {
      ok: false,
      problem: { code: "out-of-range", message: "the chain has no such changeover" },
    };
    expect([pairOfChain(setting, seen, chain, 2), pairInChain(setting, seen, chain, -1)]).toEqual([
      none,
      none,
    ]);
  });
});

test("of two intervals the wider is shown, the first where they are as wide", () => {
  const [narrow, wide] = [
    { from: 4, to: 6 },
    { from: 1, to: 4 },
  ];
  expect([widerInterval(narrow, wide), widerInterval(wide, narrow)]).toEqual([wide, wide]);
  expect(widerInterval(narrow, { from: 7, to: 9 })).toBe(narrow);
});

describe("the report of a chain", () => {
  const report = granted(chainReport(setting, seen));

  test("has the chain, and a verdict on every car in the order given", () => {
    expect(report.chain).toEqual(chain);
    expect(report.judged).toEqual(chainVerdicts(chain, seen));
    expect(report.judged.map(({ id }) => id)).toEqual(seen.map(({ id }) => id));
  });
  test.each([0, 1])("has of change %i the date, the pair, its shapes and the cars wanted", (at) => {
    const [change, own] = [report.changes[at], chain.changeovers[at]];
    if (change === undefined || own === undefined) throw new Error("there are two changes");
    const pair = granted(pairOfChain(setting, seen, chain, at));
    const alone = granted(changeover(pair.setting, pair.sightings));
    expect(change.median).toBe(own.median);
    expect(change.interval).toEqual(widerInterval(own.interval, alone.interval));
    expect(change.pair).toEqual(pair);
    expect(change.shapes).toEqual(granted(shapeOfChange(pair.setting, pair.sightings)));
    expect(change.wanted).toEqual(chainCarsWanted(chain, at));
    expect(change.month).toEqual(likeliestMonth(own.middles, (place) => place / 4, 1));
    const sumOf = (isMeant: (months: number) => boolean) =>
      own.overlaps.filter(({ months }) => isMeant(months)).reduce((sum, { chance }) => sum + chance, 0);
    expect(change.withinWeeks).toBeCloseTo(
      sumOf((months) => months < 2.5),
      12,
    );
    expect(change.overMonths).toBeCloseTo(
      sumOf((months) => months > 3.5),
      12,
    );
    expect(change.withinWeeks + change.overMonths).toBeLessThan(1);
  });
  test("names the last of the one kind and the first of the next, with and without the suspects", () => {
    const ids = report.changes.map(({ ends }) => [
      ends.lastOld?.id,
      ends.firstNew?.id,
      ends.lastOldUnsuspected?.id,
      ends.firstNewUnsuspected?.id,
    ]);
    expect(ids).toEqual([
      ["car-40", "car-2", "car-15", "car-16"],
      ["car-31", "car-32", "car-31", "car-32"],
    ]);
    const doubt = report.judged.find(({ id }) => id === "car-40")?.notAsBuilt ?? Number.NaN;
    expect(report.changes[0]?.ends.lastOld?.asBuilt).toBe(1 - doubt);
  });
  test("says nothing of the shape where no car of the two kinds was seen", () => {
    const { changes, judged } = granted(
      chainReport(
        setting,
        seen.filter(({ variant }) => variant === 0),
      ),
    );
    expect(judged).toHaveLength(16);
    expect(changes[0]?.shapes).toBeDefined();
    expect(changes[1]).toMatchObject({ shapes: undefined, ends: {} });
  });
  test("is refused where there is no chain", () => {
    const wrong = { ...setting, replacements: [1] };
    expect(chainReport(wrong, seen)).toEqual(changeoverChain(wrong, seen));
    expect(chainReport(wrong, seen).ok).toBe(false);
  });
});
