// Changes of trims and markets, against the same change worked out of their own sightings alone: which scopes there are, and
// that their shares are to the last digit those of changeover, changeoverByMarket and changeoverByTrimAndMarket.
import { describe, expect, test } from "vitest";
import { monthStart } from "../../../knowledge/calendar/interval.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { changeoverByMarket } from "../../../knowledge/dating/changeover-by-market.ts";
import { changeoverByTrimAndMarket } from "../../../knowledge/dating/changeover-by-trim-and-market.ts";
import { changesByScope } from "../../../knowledge/dating/changes-by-scope.ts";
import { countedSuccession, countSighting } from "../../../knowledge/dating/counted-succession.ts";
import { areApart } from "../../../knowledge/dating/scopes-apart.ts";
import { type Sighting, sightingsOfChange } from "../../../knowledge/dating/sighting.ts";
import { statedChange } from "../../../knowledge/dating/stated-change.ts";
import { granted } from "../../support/granted.ts";
import { smallHandbook, stateFeature, variant, type WrittenVariant } from "../../support/small-handbook.ts";

type Fitted = NonNullable<WrittenVariant["fitted"]>[number];
type Scope = Pick<Sighting, "trim" | "market">;

const named = (ids: readonly string[]) => ids.map((id) => ({ id, name: id, also: [] }));
const setting = { window: { from: monthStart(1977, 1), to: monthStart(1981, 1) }, cell: 1 };
const [oldOfAll, newOfAll]: readonly Fitted[] = [
  { from: "1977-01", to: "1978-12" },
  { from: "1979-01", to: "1980-12" },
];

/** The change from "old" to "new" with these periods and these sightings counted. */
function counted(old: readonly Fitted[], fresh: readonly Fitted[], sightings: readonly Sighting[]) {
  const handbook = smallHandbook({
    features: [stateFeature("edge", ["square", "round"])],
    variants: [
      variant("old", { origin: "production", fitted: [...old] }),
      variant("new", { origin: "production", fitted: [...fresh] }),
    ],
    cars: {
      trims: named(["s", "standard"]).map((trim) => ({ ...trim, from: "", to: "", models: [] })),
      markets: named(["home", "america"]),
    },
  });
  const [part] = handbook.parts;
  if (part === undefined) throw new Error("the small handbook has a part kind");
  const stated = statedChange(part.variants[0]?.fitted ?? [], part.variants[1]?.fitted ?? []);
  const own = stated === undefined ? setting : { ...setting, stated };
  const all = countedSuccession(handbook, part, { old: "old", new: "new", setting: own });
  if (all === undefined) throw new Error("the window is one");
  for (const sighting of sightings) countSighting(all, sighting, 1);
  return all;
}

/** Cars of a scope about January 1979 + `later` months, which is when it changed, one every month. */
function cars(of: Scope, later: number, count = 20): readonly Sighting[] {
  const changed = monthStart(1979, 1) + later;
  return Array.from({ length: count }, (_, at): Sighting => {
    const from = changed - Math.floor(count / 2) + at;
    return {
      id: `${of.trim ?? ""} ${of.market ?? ""} ${at}`,
      variant: from < changed ? "old" : "new",
      built: { from, to: from + 1 },
      grade: "documented-from-new",
      misread: 0.01,
      isSought: true,
      isRuledAsBuilt: false,
      ...of,
    };
  });
}

const reports = (sightings: readonly Sighting[]) =>
  sightingsOfChange(sightings, ["old"], ["new"]).map((report, at) => ({
    ...report,
    trim: sightings[at]?.trim ?? "",
    market: sightings[at]?.market ?? "",
  }));
const ofPlain = (sightings: readonly Sighting[], least = 5) =>
  changesByScope(counted([oldOfAll as Fitted], [newOfAll as Fitted], sightings), least);
const plainStated = counted([oldOfAll as Fitted], [newOfAll as Fitted], []).succession.setting;

describe("where the handbook says the same of all", () => {
  const home = cars({ market: "home" }, 0);
  const america = cars({ market: "america" }, 10);

  test("markets apart have each the shares of a change by market, those named without a car too", () => {
    const elsewhere = cars({ market: "elsewhere" }, 0, 2);
    const all = [...home, ...america, ...elsewhere];
    const found = granted(changeoverByMarket(plainStated, reports(all), ["home", "america"]));
    expect(ofPlain(all)).toEqual(
      found.map(({ market, asBuilt }) => ({ scope: { market }, shares: asBuilt })),
    );
    expect(ofPlain(all).map(({ scope }) => scope.market)).toEqual(["america", "elsewhere", "home"]);
  });
  test("trims apart are told by trim", () => {
    const all = [...cars({ trim: "s" }, 0), ...cars({ trim: "standard" }, 10)];
    const byTrim = reports(all).map((report) => ({ ...report, market: report.trim }));
    expect(ofPlain(all)).toEqual(
      granted(changeoverByMarket(plainStated, byTrim, [])).map(({ market, asBuilt }) => ({
        scope: { trim: market },
        shares: asBuilt,
      })),
    );
  });
  test("two of just enough cars count, of one fewer they do not", () => {
    const all = [...home, ...cars({ market: "america" }, 16, 6)];
    expect(ofPlain(all, 6)).not.toEqual([]);
    expect(ofPlain(all, 7)).toEqual([]);
  });
  test("one far from the others of which too little was seen does not set them apart", () => {
    const all = [...home, ...cars({ market: "america" }, 1), ...cars({ market: "elsewhere" }, 18, 6)];
    expect(ofPlain(all, 7)).toEqual([]);
    expect(ofPlain(all, 6)).not.toEqual([]);
  });
  test("a market whose cars were all taken away again is as if it had never been counted", () => {
    const all = counted([oldOfAll as Fitted], [newOfAll as Fitted], [...home, ...america]);
    const before = changesByScope(all, 5);
    const gone = cars({ market: "elsewhere" }, 0, 3);
    for (const sighting of gone) countSighting(all, sighting, 1);
    expect(changesByScope(all, 5)).not.toEqual(before);
    for (const sighting of gone) countSighting(all, sighting, -1);
    expect(changesByScope(all, 5)).toEqual(before);
  });
});

describe("where trims differ within a market and markets within a trim", () => {
  const all = [
    ...cars({ market: "home", trim: "s" }, 0),
    ...cars({ market: "home", trim: "standard" }, 0),
    ...cars({ market: "america", trim: "standard" }, 0),
    ...cars({ market: "america", trim: "s" }, 14),
  ];
  const both = (sightings: readonly Sighting[], least = 5) =>
    ofPlain(sightings, least).filter(({ scope }) => scope.trim !== undefined && scope.market !== undefined);

  test("the trims of that market have the shares of a change by trim and market", () => {
    const found = granted(changeoverByTrimAndMarket(plainStated, reports(all), 5));
    expect(both(all)).toEqual(
      found
        .filter(({ market }) => market === "america")
        .map(({ trim, market, asBuilt }) => ({ scope: { trim, market }, shares: asBuilt })),
    );
    expect(both(all).map(({ scope }) => scope.trim)).toEqual(["s", "standard"]);
  });
  test("a pair of which too little was seen lends to the others and has nothing of its own", () => {
    const thin = [...all, ...cars({ market: "america", trim: "gt" }, 0, 4)];
    const found = granted(changeoverByTrimAndMarket(plainStated, reports(thin), 5));
    expect(both(thin)).toEqual(
      found
        .filter(({ market }) => market === "america")
        .map(({ trim, market, asBuilt }) => ({ scope: { trim, market }, shares: asBuilt })),
    );
  });
  test("a pair taken away again is as if it had never been counted", () => {
    const held = counted([oldOfAll as Fitted], [newOfAll as Fitted], all);
    const gone = cars({ market: "america", trim: "gt" }, 0, 4);
    for (const sighting of gone) countSighting(held, sighting, 1);
    expect(changesByScope(held, 5)).not.toEqual(ofPlain(all));
    for (const sighting of gone) countSighting(held, sighting, -1);
    expect(changesByScope(held, 5).filter(({ scope }) => scope.trim !== "gt")).toEqual(ofPlain(all));
  });
});

describe("where the handbook states each trim apart", () => {
  const old: readonly Fitted[] = [
    { from: "1977-01", to: "1978-06", trims: ["s"] },
    { from: "1977-01", to: "1979-03", trims: ["standard"] },
  ];
  const fresh: readonly Fitted[] = [
    { from: "1978-07", to: "1980-12", trims: ["s"] },
    { from: "1979-04", to: "1980-12", trims: ["standard"] },
  ];
  const statedOf = (index: number) => {
    const variants = counted(old, fresh, []).part.variants;
    const period = (of: number) => variants[of]?.fitted.slice(index, index + 1) ?? [];
    return statedChange(period(0), period(1));
  };

  test("each has the shares of its own cars with what is stated of it, or the handbook's of too few", () => {
    const [s, standard] = [cars({ trim: "s" }, -6, 12), cars({ trim: "standard" }, 3, 4)];
    const found = changesByScope(counted(old, fresh, [...s, ...standard]), 5);
    const alone = granted(changeover({ ...setting, stated: statedOf(0) ?? { ends: [] } }, reports(s)));
    expect(found).toEqual([
      { scope: { trim: "s" }, shares: alone.asBuilt },
      {
        scope: { trim: "standard" },
        shares: { from: setting.window.from, cell: 1, new: new Float64Array(0) },
      },
    ]);
    expect(changesByScope(counted(old, fresh, [...s, ...standard]), 4)[1]?.shares.new).toHaveLength(48);
  });
  test("its markets, where they are apart, go by what is stated of the trim", () => {
    const all = [
      ...cars({ trim: "s", market: "home" }, -6),
      ...cars({ trim: "s", market: "america" }, 10),
      ...cars({ trim: "standard", market: "home" }, 3),
      ...cars({ trim: "standard", market: "america" }, 3),
    ];
    const ofOne = { ...setting, stated: statedOf(0) ?? { ends: [] } };
    const found = granted(
      changeoverByTrimAndMarket(ofOne, reports(all.filter(({ trim }) => trim === "s")), 5, "trim"),
    );
    expect(
      changesByScope(counted(old, fresh, all), 5).filter(({ scope }) => scope.trim && scope.market),
    ).toEqual(found.map(({ trim, market, asBuilt }) => ({ scope: { trim, market }, shares: asBuilt })));
    expect(found).toHaveLength(2);
  });
  test("a trim of which only one of the two variants is stated has nothing of its own", () => {
    const found = changesByScope(counted(old, fresh.slice(0, 1), cars({ trim: "s" }, -6)), 5);
    expect(found).toEqual([]);
  });
  test("trims and markets both stated apart are not looked at together", () => {
    const of = (period: Fitted, market: string): Fitted => ({ ...period, markets: [market] });
    const [oldS, oldStandard] = old as [Fitted, Fitted];
    const [newS, newStandard] = fresh as [Fitted, Fitted];
    const all = [
      ...cars({ trim: "s", market: "home" }, -6),
      ...cars({ trim: "s", market: "america" }, 10),
      ...cars({ trim: "standard", market: "home" }, 10),
      ...cars({ trim: "standard", market: "america" }, -6),
    ];
    const found = changesByScope(
      counted(
        [of(oldS, "home"), of(oldStandard, "america")],
        [of(newS, "home"), of(newStandard, "america")],
        all,
      ),
      5,
    );
    expect(found.map(({ scope }) => scope)).toEqual([
      { market: "home" },
      { market: "america" },
      { trim: "s" },
      { trim: "standard" },
    ]);
  });
});

test("groups are apart when one begins after another has ended, not when they meet in a point, nor one alone", () => {
  const at = (from: number, to: number) => ({ interval: { from, to } });
  expect(areApart([at(0, 3), at(4, 6)])).toBe(true);
  expect(areApart([at(4, 6), at(0, 9), at(1, 3)])).toBe(true);
  expect(areApart([at(0, 3), at(3, 6)])).toBe(false);
  expect(areApart([at(0, 5), at(3, 6)])).toBe(false);
  expect([areApart([]), areApart([at(5, 2)])]).toEqual([false, false]);
});
