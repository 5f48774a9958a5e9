// One change by trims, by markets and by both: which groupings are worth having, and what each is made of.
import { describe, expect, test } from "vitest";
import { changeoverByMarket } from "../../../knowledge/dating/changeover-by-market.ts";
import { changeoverByTrimAndMarket } from "../../../knowledge/dating/changeover-by-trim-and-market.ts";
import { groupedChangeovers } from "../../../knowledge/dating/grouped-changeovers.ts";
import type { ChangeoverSighting } from "../../../knowledge/dating/report-groups.ts";
import { granted } from "../../support/granted.ts";

const setting = { window: { from: 0, to: 24 }, cell: 1 };

interface Car {
  readonly id: string;
  readonly trim?: string;
  readonly market?: string;
}

function cars(count: number, name: string, of: Omit<Car, "id">): readonly Car[] {
  return Array.from({ length: count }, (_, at) => ({ id: `${name} ${String(at).padStart(2, "0")}`, ...of }));
}

function reportOf({ id }: Car): ChangeoverSighting {
  const from = 8 + Number(id.slice(-2));
  return {
    id,
    isNew: from >= 11,
    built: { from, to: from + 1 },
    swap: 0.05,
    misread: 0.01,
    isSought: false,
  };
}

const grouped = (all: readonly Car[], least = 3, unknown: "together" | "left out" = "left out") =>
  granted(groupedChangeovers(setting, all.map(reportOf), all, { least, unknown }));
const named = (all: readonly Car[], by: "trim" | "market") =>
  all.map((car) => ({ ...reportOf(car), market: car[by] ?? "" }));

const home = cars(6, "home", { market: "home" });
const america = cars(5, "america", { market: "america" });
const unsaid = cars(4, "unsaid", {});

describe("a change by one of the two", () => {
  test("is there where two of them were seen, and dated as changeoverByMarket dates it", () => {
    expect(grouped([...home, ...america])).toEqual([
      {
        by: "market",
        groups: granted(changeoverByMarket(setting, named([...home, ...america], "market"))),
      },
    ]);
    const trims = [...cars(6, "s", { trim: "s" }), ...cars(5, "standard", { trim: "standard" })];
    expect(grouped(trims)).toEqual([
      { by: "trim", groups: granted(changeoverByMarket(setting, named(trims, "trim"))) },
    ]);
  });
  test("is not there where one alone was seen, or none, however many cars do not say", () => {
    expect(grouped(home)).toEqual([]);
    expect(grouped([...home, ...unsaid])).toEqual([]);
    expect(grouped([...home, ...unsaid], 3, "together")).toEqual([]);
    expect(grouped(unsaid)).toEqual([]);
    expect(grouped([])).toEqual([]);
  });
  test("has cars that do not say which in a group without a name, or leaves them out", () => {
    const all = [...home, ...america, ...unsaid];
    const namesOf = (unknown: "together" | "left out") =>
      grouped(all, 3, unknown)[0]?.groups.map(({ market, sightings }) => [market, sightings]);
    expect(namesOf("together")).toEqual([
      ["", 4],
      ["america", 5],
      ["home", 6],
    ]);
    expect(namesOf("left out")).toEqual([
      ["america", 5],
      ["home", 6],
    ]);
  });
  test("knows nothing of a report whose car is not among those seen", () => {
    const all = [...home, ...america];
    const strange = cars(3, "strange", {}).map(reportOf);
    const found = granted(
      groupedChangeovers(setting, [...all.map(reportOf), ...strange], all, {
        least: 3,
        unknown: "left out",
      }),
    );
    expect(found).toEqual(grouped(all));
  });
});

describe("a change by trim and market", () => {
  const both = (counts: readonly (readonly [string, string, number])[]) =>
    counts.flatMap(([trim, market, count]) => cars(count, `${trim} ${market}`, { trim, market }));
  const square = both([
    ["s", "home", 5],
    ["s", "america", 4],
    ["standard", "home", 6],
    ["standard", "america", 3],
  ]);
  const pairs = (all: readonly Car[], least = 3) =>
    grouped(all, least)
      .find(({ by }) => by === "trim-and-market")
      ?.groups.map(({ trim, market, sightings }) => [trim, market, sightings]);

  test("is there where two trims and two markets of enough cars are left, after the two by one", () => {
    expect(grouped(square).map(({ by }) => by)).toEqual(["market", "trim", "trim-and-market"]);
    expect(pairs(square)).toEqual([
      ["s", "america", 4],
      ["standard", "america", 3],
      ["s", "home", 5],
      ["standard", "home", 6],
    ]);
    const reports = square.map((car) => ({
      ...reportOf(car),
      trim: car.trim ?? "",
      market: car.market ?? "",
    }));
    expect(grouped(square).at(-1)?.groups).toEqual(granted(changeoverByTrimAndMarket(setting, reports, 3)));
  });
  test("is not there where enough cars are of one trim or of one market only", () => {
    expect(pairs(square, 4)).toHaveLength(3);
    expect(pairs(square, 5)).toBeUndefined();
    const oneTrim = both([
      ["s", "home", 5],
      ["s", "america", 5],
    ]);
    const oneMarket = both([
      ["s", "home", 5],
      ["standard", "home", 5],
    ]);
    expect([pairs(oneTrim), pairs(oneMarket)]).toEqual([undefined, undefined]);
    expect(grouped(oneTrim).map(({ by }) => by)).toEqual(["market"]);
    expect(grouped(oneMarket).map(({ by }) => by)).toEqual(["trim"]);
  });
  test("has no cars of which one of the two is not known", () => {
    const half = [...cars(7, "half", { trim: "s" }), ...cars(8, "other half", { market: "home" })];
    expect(pairs([...square, ...half])).toEqual(pairs(square));
  });
});

test("a window that is none is refused, whether there are groups or not", () => {
  const nowhere = { window: { from: 5, to: 5 } };
  const all = [...home, ...america];
  const asked = { least: 3, unknown: "left out" } as const;
  const refusal = { ok: false, problem: { code: "no-window" } };
  expect(groupedChangeovers(nowhere, all.map(reportOf), all, asked)).toMatchObject(refusal);
  const paired = cars(4, "one", { trim: "s", market: "home" });
  expect(groupedChangeovers(nowhere, paired.map(reportOf), paired, asked)).toMatchObject(refusal);
});
