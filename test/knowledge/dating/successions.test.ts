// Which variant gave way to which, read off the fitted periods of a handbook (common practice, no source).
import { describe, expect, test } from "vitest";
import { monthStart } from "../../../knowledge/calendar/interval.ts";
import { successionsOf, successionWindow } from "../../../knowledge/dating/successions.ts";
import { smallHandbook, stateFeature, variant, type WrittenVariant } from "../../support/small-handbook.ts";

type Fitted = NonNullable<WrittenVariant["fitted"]>[number];

const made = (id: string, from: string, to: string, rest: Partial<Fitted> = {}): WrittenVariant =>
  variant(id, { origin: "production", fitted: [{ from, to, ...rest }] });

function successions(
  variants: readonly WrittenVariant[],
  cars: NonNullable<Parameters<typeof smallHandbook>[0]["cars"]> = {},
) {
  const handbook = smallHandbook({ features: [stateFeature("edge", ["square", "round"])], variants, cars });
  const [part] = handbook.parts;
  if (!part) throw new Error("the small handbook has a part kind");
  return successionsOf(handbook, part);
}
const pairs = (...variants: readonly WrittenVariant[]): readonly string[] =>
  successions(variants).map(({ old, new: fresh }) => `${old} > ${fresh}`);

describe("a variant follows another", () => {
  test("that ended about when it began, not one of long before", () => {
    const first = made("first", "1977-01", "1978-06");
    const second = made("second", "1978-07", "1980-03");
    const third = made("third", "1980-04", "1981-12");
    expect(pairs(first, second, third)).toEqual(["first > second", "second > third"]);
    expect(pairs(third, second, first)).toEqual(["second > third", "first > second"]);
  });
  test("across a gap or an overlap of up to a year, and not of more", () => {
    const old = made("old", "1977-01", "1978-06");
    expect(pairs(old, made("new", "1979-07", "1981-12"))).toEqual(["old > new"]);
    expect(pairs(old, made("new", "1979-08", "1981-12"))).toEqual([]);
    expect(pairs(old, made("new", "1977-07", "1981-12"))).toEqual(["old > new"]);
    expect(pairs(old, made("new", "1977-06", "1981-12"))).toEqual([]);
  });
  test("that began before it: two that began together follow neither way", () => {
    expect(pairs(made("one", "1977-01", "1977-09"), made("other", "1977-01", "1977-09"))).toEqual([]);
  });
  test("by the last end of its periods and the first beginning of its own", () => {
    const old = variant("old", {
      origin: "production",
      fitted: [
        { from: "1979-01", to: "1979-12" },
        { from: "1977-01", to: "1977-03" },
      ],
    });
    const fresh = variant("new", {
      origin: "production",
      fitted: [
        { from: "1981-06", to: "1981-12" },
        { from: "1980-01", to: "1980-12" },
      ],
    });
    expect(pairs(old, fresh)).toEqual(["old > new"]);
    expect(pairs(made("old", "1977-01", "1977-03"), fresh)).toEqual([]);
  });
  test("only where both were made at the works and fitted to a car", () => {
    const first = made("first", "1977-01", "1979-06");
    const copy = variant("copy", { origin: "reproduction", fitted: [{ from: "1979-07", to: "1981-12" }] });
    const never = variant("never", { origin: "production" });
    expect(pairs(first, copy, never)).toEqual([]);
  });
});

describe("two variants of other cars", () => {
  const old = (rest: Partial<Fitted>) => made("old", "1977-01", "1979-06", rest);
  const fresh = (rest: Partial<Fitted>) => made("new", "1979-07", "1981-12", rest);
  const cases: readonly (readonly [keyof Fitted, string, string])[] = [
    ["models", "shrike", "drake"],
    ["trims", "standard", "s"],
    ["markets", "home", "america"],
  ];
  test("do not follow each other, be it for the model, the trim or the market", () => {
    for (const [field, one, other] of cases) {
      expect(pairs(old({ [field]: [one] }), fresh({ [field]: [other] }))).toEqual([]);
      expect(pairs(old({ [field]: [one] }), fresh({ [field]: [other, one] }))).toEqual(["old > new"]);
      expect(pairs(old({ [field]: [one] }), fresh({}))).toEqual(["old > new"]);
      expect(pairs(old({}), fresh({ [field]: [one] }))).toEqual(["old > new"]);
    }
  });
});

describe("what is known of a succession beforehand", () => {
  const variants = [made("old", "1977-01", "1979-06"), made("new", "1979-07", "1981-12")];
  test("is the handbook's own date", () => {
    const [found] = successions(variants);
    expect(found?.setting.stated?.ends.map(({ at }) => at)).toEqual([
      monthStart(1979, 7),
      monthStart(1979, 7),
    ]);
  });
  test("is all of production, from the first model to the last, and how many were made where it is said", () => {
    const models = [
      { id: "drake", name: "Wexcombe Drake", also: [], from: "1979-03", to: "1983-05" },
      { id: "shrike", name: "Wexcombe Shrike", also: [], from: "1977-02", to: "1981-12" },
    ];
    const [found] = successions(variants, { models, production: { "1978": 120, "1979": 140 } });
    expect(found?.setting.window).toEqual({ from: monthStart(1977, 2), to: monthStart(1983, 6) });
    expect([...(found?.setting.production ?? [])]).toEqual([
      [1978, 120],
      [1979, 140],
    ]);
    expect(successions(variants)[0]?.setting).not.toHaveProperty("production");
  });
  test("is what was sold as a replacement, where the handbook names any sale", () => {
    expect(successions(variants)[0]?.setting).not.toHaveProperty("replacements");
    const [first, second] = variants as [WrittenVariant, WrittenVariant];
    const sold = [{ ...first, sold: [{ from: "1982-01", to: "1982-12" }] }, second];
    expect(successions(sold)[0]?.setting.replacements).toEqual({ old: 24, new: 12 });
  });
  test("is nothing where no model is dated", () => {
    const undated = { models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from: "", to: "" }] };
    expect(successions(variants, undated)).toEqual([]);
    const handbook = smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants,
      cars: { models: [] },
    });
    expect(successionWindow(handbook)).toBeUndefined();
  });
});
