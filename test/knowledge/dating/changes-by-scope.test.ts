// One change that trims or markets took up at different times, as it reaches what such a car was built with.
import { describe, expect, test } from "vitest";
import { monthInterval } from "../../../knowledge/calendar/interval.ts";
import { changesByScope } from "../../../knowledge/dating/changes-by-scope.ts";
import { countedSuccession, countSighting } from "../../../knowledge/dating/counted-succession.ts";
import type { Sighting } from "../../../knowledge/dating/sighting.ts";
import { successionsOf } from "../../../knowledge/dating/successions.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import { partById } from "../../../knowledge/handbook/look-up.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { compilePart } from "../../../knowledge/identification/compiled-part.ts";
import type { LearntChange } from "../../../knowledge/identification/learnt-change.ts";
import { demoHandbook } from "../../support/demo-handbook.ts";

const handbook = demoHandbook();

/** The change with these sightings of it counted. */
function changeOf(partId: string, old: string, fresh: string, sightings: readonly Sighting[]) {
  const part = partById(handbook, partId);
  const succession =
    part && successionsOf(handbook, part).find((one) => one.old === old && one.new === fresh);
  if (part === undefined || succession === undefined) throw new Error("the handbook has this change");
  const counted = countedSuccession(handbook, part, succession);
  if (counted === undefined) throw new Error("the handbook's cars are dated");
  for (const sighting of sightings) countSighting(counted, sighting, 1);
  return counted;
}

/** Cars of a trim or market, one a month for two years about January 1981 + `later` months, which is when it changed. */
function seen(
  [old, fresh]: readonly [string, string],
  later: number,
  of: Pick<Sighting, "trim" | "market">,
): readonly Sighting[] {
  const changed = monthInterval(1981, 1).from + later;
  return Array.from({ length: 24 }, (_, month): Sighting => {
    const from = changed - 12 + month;
    return {
      id: `${of.trim ?? ""}${of.market ?? ""}${month}`,
      variant: from < changed ? old : fresh,
      built: { from, to: from + 1 },
      grade: "documented-from-new",
      misread: 0.01,
      isSought: true,
      isRuledAsBuilt: false,
      ...of,
    };
  });
}

const wings = ["first-wing", "second-wing"] as const;
const wing = (sightings: readonly Sighting[]) => changeOf("front-wing", ...wings, sightings);
const least = 5;

describe("a change of which the handbook says the same for every market", () => {
  test("stays one when the markets changed together", () => {
    const sightings = [...seen(wings, 0, { market: "home" }), ...seen(wings, 0, { market: "america" })];
    expect(changesByScope(wing(sightings), least)).toEqual([]);
  });

  test("stays one when only one market was seen, or too few cars of the other", () => {
    const home = seen(wings, 0, { market: "home" });
    const few = seen(wings, 9, { market: "america" }).slice(0, 4);
    expect(changesByScope(wing(home), least)).toEqual([]);
    expect(changesByScope(wing([...home, ...few]), least)).toEqual([]);
  });

  const apart = [...seen(wings, 0, { market: "home" }), ...seen(wings, 9, { market: "america" })];
  const scoped = changesByScope(wing(apart), least);

  test("is one for each market when one of them changed nine months later", () => {
    expect(scoped.map(({ scope }) => scope)).toEqual([
      { market: "america" },
      { market: "continent" },
      { market: "home" },
    ]);
  });

  test("reaches what cars of each market were built with, and those of no known market by what is learnt of all", () => {
    const of = { part: "front-wing", old: wings[0], new: wings[1] };
    const all = { from: monthInterval(1981, 1).from, cell: 1, new: Float64Array.from([0.5]) };
    const learnt: readonly LearntChange[] = [
      { ...of, shares: all },
      ...scoped.map((one) => ({ ...of, ...one })),
    ];
    const compiled = compilePart(handbook, "front-wing", [], learnt);
    if (compiled === undefined) throw new Error("the handbook has this part");
    const shareOfNew = (car: CarDescription): number => {
      const { average } = carGround(compiled, { built: monthInterval(1981, 5), ...car }).mix;
      const at = (id: string) => average[wing([]).part.variants.findIndex((one) => one.id === id)] ?? 0;
      return at(wings[1]) / (at(wings[0]) + at(wings[1]));
    };
    expect(shareOfNew({ market: "home" })).toBeGreaterThan(0.8);
    expect(shareOfNew({ market: "america" })).toBeLessThan(0.2);
    expect(shareOfNew({})).toBeCloseTo(0.5, 2);
  });
});

describe("a change for which the handbook gives each trim its own periods", () => {
  const spoilers = ["second", "moulded"] as const;

  test("is learnt trim by trim, and left to the handbook where too little was seen of a trim", () => {
    const sightings = seen(spoilers, 18, { trim: "s" });
    const scoped = changesByScope(changeOf("rear-spoiler", ...spoilers, sightings), least);
    expect(scoped.map(({ scope }) => scope)).toEqual([{ trim: "standard" }, { trim: "s" }]);
    const [standard, s] = scoped.map(({ shares }) => shares.new);
    expect(standard).toHaveLength(0);
    expect(s?.length).toBeGreaterThan(0);
    expect(s?.[0]).toBeLessThan(0.1);
    expect(s?.at(-1)).toBeGreaterThan(0.9);
  });

  test("what is left to the handbook is what the handbook has, whatever other cars taught", () => {
    const of = { part: "rear-spoiler", old: spoilers[0], new: spoilers[1] };
    const shares = { from: 0, cell: 1, new: Float64Array.from([0.5]) };
    const none = { from: 0, cell: 1, new: new Float64Array(0) };
    const learnt = [
      { ...of, shares },
      { ...of, scope: { trim: "standard" }, shares: none },
    ];
    const [plain, taught] = [compilePart(handbook, of.part), compilePart(handbook, of.part, [], learnt)];
    if (plain === undefined || taught === undefined) throw new Error("the handbook has this part");
    const mixOf = (compiled: typeof plain, car: CarDescription) => [
      ...carGround(compiled, { built: monthInterval(1982, 3), ...car }).mix.average,
    ];
    expect(mixOf(taught, { trim: "standard" })).toEqual(mixOf(plain, { trim: "standard" }));
    expect(mixOf(taught, { trim: "s" })).not.toEqual(mixOf(plain, { trim: "s" }));
    expect(mixOf(taught, {})).not.toEqual(mixOf(plain, {}));
  });
});

describe("a change that one trim of one market took up later", () => {
  const home = [
    ...seen(wings, 0, { market: "home", trim: "s" }),
    ...seen(wings, 0, { market: "home", trim: "standard" }),
  ];
  const american = [
    ...seen(wings, 0, { market: "america", trim: "standard" }),
    ...seen(wings, 14, { market: "america", trim: "s" }),
  ];
  const both = (sightings: readonly Sighting[]) =>
    changesByScope(wing(sightings), least).filter(
      ({ scope }) => scope.trim !== undefined && scope.market !== undefined,
    );

  test("is one for each trim of that market, and no other market is divided", () => {
    const scoped = both([...home, ...american]);
    expect(scoped.map(({ scope }) => scope)).toEqual([
      { trim: "s", market: "america" },
      { trim: "standard", market: "america" },
    ]);
  });

  test("reaches such cars alone: the narrowest scope that holds a car decides", () => {
    const of = { part: "front-wing", old: wings[0], new: wings[1] };
    const learnt = changesByScope(wing([...home, ...american]), least).map((one) => ({
      ...of,
      ...one,
    }));
    const compiled = compilePart(handbook, "front-wing", [], learnt);
    if (compiled === undefined) throw new Error("the handbook has this part");
    const shareOfNew = (car: CarDescription): number => {
      const { average } = carGround(compiled, { built: monthInterval(1981, 8), ...car }).mix;
      const at = (id: string) => average[wing([]).part.variants.findIndex((one) => one.id === id)] ?? 0;
      return at(wings[1]) / (at(wings[0]) + at(wings[1]));
    };
    expect(shareOfNew({ market: "america", trim: "s" })).toBeLessThan(0.2);
    expect(shareOfNew({ market: "america", trim: "standard" })).toBeGreaterThan(0.8);
    expect(shareOfNew({ market: "home", trim: "s" })).toBeGreaterThan(0.8);
  });

  test("stays with its market or trim where too few such cars were seen, or where the trim alone makes the difference", () => {
    const few = american.filter(({ trim }, at) => trim !== "s" || at % 8 === 0);
    expect(both([...home, ...few])).toEqual([]);
    const trimAlone = ["home", "america"].flatMap((market) => [
      ...seen(wings, 0, { market, trim: "standard" }),
      ...seen(wings, 14, { market, trim: "s" }),
    ]);
    expect(both(trimAlone)).toEqual([]);
  });

  test("within a trim that the handbook states apart the markets may differ too", () => {
    const sightings = [
      ...seen(["second", "moulded"], 18, { trim: "s", market: "home" }),
      ...seen(["second", "moulded"], 34, { trim: "s", market: "america" }),
    ];
    const scoped = changesByScope(changeOf("rear-spoiler", "second", "moulded", sightings), least).map(
      ({ scope }) => scope,
    );
    expect(scoped).toContainEqual({ trim: "s", market: "home" });
    expect(scoped).toContainEqual({ trim: "s", market: "america" });
  });
});
