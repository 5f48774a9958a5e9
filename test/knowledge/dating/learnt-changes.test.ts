// What is learnt of a part kind's changes once enough cars were seen, and what the handbook said of them before.
import { describe, expect, test } from "vitest";
import { monthStart } from "../../../knowledge/calendar/interval.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import {
  changesSeen,
  countedChanges,
  countSightings,
  learntChanges,
} from "../../../knowledge/dating/counted-changes.ts";
import { replacementsSold } from "../../../knowledge/dating/replacements-sold.ts";
import { type Sighting, sightingsOfChange } from "../../../knowledge/dating/sighting.ts";
import { statedChange } from "../../../knowledge/dating/stated-change.ts";
import { FittedPeriod } from "../../../knowledge/handbook/variant-schema.ts";
import { granted } from "../../support/granted.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";

const features = [stateFeature("edge", ["square", "round"])];
const fitted = (from: string, to: string) => [{ from, to }];
const handbook = smallHandbook({
  features,
  variants: [
    variant("first", { origin: "production", fitted: fitted("1977-01", "1978-06") }),
    variant("second", { origin: "production", fitted: fitted("1978-07", "1979-12") }),
    variant("third", { origin: "production", fitted: fitted("1980-01", "1981-12") }),
  ],
});
const [part] = handbook.parts;
if (part === undefined) throw new Error("the small handbook has a part kind");

/** One car of each kind, month by month about its change. */
function cars(kinds: readonly [string, string], about: number, count: number): readonly Sighting[] {
  return Array.from({ length: count }, (_, at): Sighting => {
    const from = about - Math.floor(count / 2) + at;
    return {
      id: `${kinds.join(" ")} ${at}`,
      variant: kinds[Number(from >= about)] as string,
      built: { from, to: from + 1 },
      grade: "one-owner",
      misread: 0.02,
      isSought: false,
      isRuledAsBuilt: false,
    };
  });
}
const byId = (sightings: readonly Sighting[]) => new Map(sightings.map((one) => [one.id, one]));
const early = cars(["first", "second"], monthStart(1978, 7), 6);
const late = cars(["second", "third"], monthStart(1980, 1), 4);

describe("the changes of a part kind", () => {
  const counted = countedChanges(handbook, part);
  countSightings(counted, byId([...early, ...late]));
  // A car of the second kind is a sighting of both changes.
  const [ofFirst, ofSecond] = [6 + 2, 4 + 3];

  test("are learnt from so many cars on, and not from one fewer", () => {
    const names = (least: number) => learntChanges(counted, least).map(({ old, new: fresh }) => [old, fresh]);
    expect(names(ofSecond)).toEqual([
      ["first", "second"],
      ["second", "third"],
    ]);
    expect(names(ofFirst)).toEqual([["first", "second"]]);
    expect(names(ofFirst + 1)).toEqual([]);
    const seen = (least: number) => changesSeen(counted, least).map((one) => one.seen);
    expect([seen(0), seen(ofSecond), seen(ofFirst), seen(ofFirst + 1)]).toEqual([
      [ofFirst, ofSecond],
      [ofFirst, ofSecond],
      [ofFirst],
      [],
    ]);
  });
  test("have the shares and the date of a changeover with their own cars", () => {
    const [change] = changesSeen(counted, 1);
    const all = sightingsOfChange([...early, ...late], ["first"], ["second"]);
    const whole = granted(changeover(change?.succession.setting ?? { window: { from: 0, to: 0 } }, all));
    expect(whole).toMatchObject(change?.change ?? { none: true });
    expect(learntChanges(counted, 1)[0]).toEqual({
      part: "foot",
      old: "first",
      new: "second",
      shares: whole.asBuilt,
    });
  });
  test("are counted anew when a car is corrected, added or taken away, and not when nothing changed", () => {
    const fresh = (all: readonly Sighting[]) => {
      const anew = countedChanges(handbook, part);
      countSightings(anew, byId(all));
      return changesSeen(anew, 0);
    };
    const kept = countedChanges(handbook, part);
    const [one, ...rest] = early as [Sighting, ...Sighting[]];
    const corrected = { ...one, variant: "second" };
    for (const all of [early, [corrected, ...rest], [...early, ...late], rest, [], early]) {
      countSightings(kept, byId(all));
      expect(changesSeen(kept, 0)).toEqual(fresh(all));
      const before = changesSeen(kept, 0);
      countSightings(kept, byId(all));
      expect(changesSeen(kept, 0)[0]?.change).toBe(before[0]?.change);
      expect(kept.sightings.size).toBe(all.length);
    }
  });
});

describe("what was sold as a replacement", () => {
  const months = (from: string, to: string) => [{ from, to }];
  const soldAs = (rest: Partial<Parameters<typeof variant>[1]>, origin: "service" | "reproduction") =>
    smallHandbook({
      features,
      variants: [
        variant("one", { origin: "production", resembles: ["spare"] }),
        variant("two", { origin: "production" }),
        variant("three", { origin: "production", sold: months("1990-01", "1990-03") }),
        variant("spare", { origin, sold: months("1990-01", "1990-12"), ...rest }),
        variant("alike", { origin: "service", resembles: ["spare"] }),
      ],
    }).parts[0];
  const weights = (...of: Parameters<typeof soldAs>) => {
    const sold = soldAs(...of);
    return sold && replacementsSold(sold, ["one", "two", "three"]);
  };
  test("counts for what resembles it, said on either side, and for production only", () => {
    expect(weights({}, "service")).toEqual([24, 12, 15]);
    expect(weights({ resembles: ["two"] }, "reproduction")).toEqual([18, 18, 15]);
  });
  test("over several stretches counts their months together, one that runs backwards none", () => {
    const sold = [
      ...months("1990-01", "1990-02"),
      ...months("1991-05", "1991-05"),
      ...months("1993", "1992"),
    ];
    expect(weights({ sold }, "service")).toEqual([15, 12, 15]);
  });
  test("is asked of a spare by itself too", () => {
    const whole = soldAs({}, "service");
    expect(whole && replacementsSold(whole, ["spare"])).toEqual([24]);
    expect(whole && replacementsSold(whole, ["two"])).toBeUndefined();
  });
});

describe("what the handbook states of a change", () => {
  const period = (from: string, to: string, rest: object = {}) =>
    FittedPeriod.parse({ from, to, start: "exact", end: "exact", ...rest });
  test("is both dates where the later begins as the earlier ends, and their middle where it begins before", () => {
    expect(statedChange([period("1977", "1979-06")], [period("1979-07", "1981")])).toEqual({
      ends: [
        { at: monthStart(1979, 7), deviation: 1.5 },
        { at: monthStart(1979, 7), deviation: 1.5 },
      ],
    });
    expect(statedChange([period("1977", "1979-07")], [period("1979-07", "1981")])).toEqual({
      ends: [{ at: monthStart(1979, 7) + 0.5, deviation: 1.5 }],
      overlap: 1,
    });
  });
  test("is as sure as the less sure of two that overlap, and the first of two that end together", () => {
    const old = [period("1977", "1979-09", { end: "rough" }), period("1978", "1979-09")];
    expect(statedChange(old, [period("1979-07", "1981")])?.ends[0]?.deviation).toBe(8);
    expect(statedChange(old.toReversed(), [period("1979-07", "1981")])?.ends[0]?.deviation).toBe(1.5);
    const fresh = [period("1980-01", "1981"), period("1980-01", "1981", { start: "rough" })];
    expect(statedChange([period("1977", "1979-09")], fresh)?.ends[1]?.deviation).toBe(1.5);
    expect(statedChange([period("1977", "1979-09")], fresh.toReversed())?.ends[1]?.deviation).toBe(8);
  });
  test("is by the day surer than by the month, by the month surer than by the year", () => {
    const deviations = ["1979-06-30", "1979-06", "1979"].map(
      (to) => statedChange([period("1977", to)], [period("1985-01-01", "1986")])?.ends[0]?.deviation,
    );
    expect(deviations).toEqual([1, 1.5, 4]);
  });
  test("is nothing where no end of the one or no beginning of the other is dated", () => {
    expect(statedChange([period("1977", "1979")], [])).toBeUndefined();
    expect(statedChange([], [])).toBeUndefined();
  });
});
