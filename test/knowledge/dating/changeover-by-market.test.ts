import { describe, expect, test } from "vitest";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { changeoverByMarket, type MarketSighting } from "../../../knowledge/dating/changeover-by-market.ts";
import { aroundCommonDate } from "../../../knowledge/dating/common-date.ts";
import { UNITS_PER_NAT } from "../../../knowledge/dating/whole-logarithm.ts";
import { granted } from "../../support/granted.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";

const setting = {
  window: simulatedWindow,
  production: simulatedProduction,
  replacements: { old: 0.4, new: 0.6 },
};

function market(name: string, sightings: number, changed: number, start: number): readonly MarketSighting[] {
  const works = { sightings, changed, overlap: 0, swapRate: 0.1, misread: 0.01, dates: "month" } as const;
  return simulateSightings(works, chanceFrom(start)).map((one) => ({
    ...one,
    id: `${name}-${one.id}`,
    market: name,
  }));
}

const width = ({ interval }: { interval: { from: number; to: number } }): number =>
  interval.to - interval.from;

describe("three markets that changed on one date", () => {
  const all = [
    ...market("home", 20, 30, 1),
    ...market("continent", 8, 30, 2),
    ...market("america", 3, 30, 3),
  ];
  const found = granted(changeoverByMarket(setting, all));
  test("are listed by name with their sightings", () => {
    expect(found.map((one) => [one.market, one.sightings])).toEqual([
      ["america", 3],
      ["continent", 8],
      ["home", 20],
    ]);
  });
  test("lend each other certainty: the smallest gains most", () => {
    const alone = granted(
      changeover(
        setting,
        all.filter((one) => one.market === "america"),
      ),
    );
    expect(width(found[0] as (typeof found)[number])).toBeLessThan(0.75 * width(alone));
    for (const one of found) {
      expect(one.interval.from).toBeLessThan(30);
      expect(one.interval.to).toBeGreaterThan(30);
    }
  });
  test("and are believed to have done so", () => {
    for (const { onCommonDate } of found) expect(onCommonDate).toBeGreaterThan(0.4);
  });
});

test("a market that changed a year and a half later keeps its own date", () => {
  const all = [...market("home", 60, 22, 4), ...market("america", 60, 40, 5)];
  const found = granted(changeoverByMarket(setting, all));
  expect(Math.abs((found[0]?.median ?? 0) - 40)).toBeLessThan(3);
  expect(Math.abs((found[1]?.median ?? 0) - 22)).toBeLessThan(3);
  expect(Math.min(...found.map(({ onCommonDate }) => onCommonDate))).toBeLessThan(0.6);
});

test("one market alone has the interval it has by itself, or nearly", () => {
  const home = market("home", 30, 30, 6);
  const alone = granted(changeover(setting, home));
  const found = granted(changeoverByMarket(setting, home));
  expect(Math.abs((found[0]?.median ?? 0) - alone.median)).toBeLessThan(0.1);
});

test("a named market without sightings rests on the others, with room", () => {
  const found = granted(changeoverByMarket(setting, market("home", 60, 30, 7), ["continent"]));
  const [continent, home] = found;
  expect(continent?.sightings).toBe(0);
  expect(Math.abs((continent?.median ?? 0) - (home?.median ?? 99))).toBeLessThan(1);
  expect(width(continent as (typeof found)[number])).toBeGreaterThan(
    2 * width(home as (typeof found)[number]),
  );
});

test("names decide the order, not arrival", () => {
  const all = [...market("home", 9, 30, 1), ...market("continent", 8, 30, 2)];
  expect(changeoverByMarket(setting, all.toReversed())).toEqual(changeoverByMarket(setting, all));
});

test("messages through the common date give what the sum over all dates of all groups gives", () => {
  const grid = cellGrid({ from: 0, to: 6 }, undefined, 1) as CellGrid;
  const chance = chanceFrom(31);
  const likelihoods = [0, 1, 2].map(() =>
    Float64Array.from({ length: 7 }, () => Math.round(-4 * chance() * UNITS_PER_NAT)),
  );
  const prior = Float64Array.from({ length: 7 }, () => chance());
  const sums = aroundCommonDate(grid, likelihoods, [0], prior, 1);
  const scatter = (common: number, own: number): number => {
    const shift = (away: number): number => Math.exp(-Math.abs(away) / 5);
    let whole = 0;
    for (let other = 0; other < 7; other += 1) whole += other === common ? 0 : shift(other - common);
    return own === common ? 0.5 : (0.5 * shift(own - common)) / whole;
  };
  const weightOf = (group: number, own: number): number =>
    Math.exp((likelihoods[group]?.[own] ?? Number.NaN) / UNITS_PER_NAT);
  const exact = new Float64Array(7);
  for (let place = 0; place < 7 ** 4; place += 1) {
    const [common = 0, ...own] = [0, 1, 2, 3].map((power) => Math.floor(place / 7 ** power) % 7);
    const weight = own.reduce(
      (product, border, group) => product * scatter(common, border) * weightOf(group, border),
      prior[common] as number,
    );
    exact[own[0] as number] = (exact[own[0] as number] as number) + weight;
  }
  const total = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
  const joint = sums[0]?.joint ?? new Float64Array();
  exact.forEach((weight, border) => {
    expect((joint[border] as number) / total(joint)).toBeCloseTo(weight / total(exact), 12);
  });
});
