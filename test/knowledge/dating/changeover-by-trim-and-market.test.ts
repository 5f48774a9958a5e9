import { describe, expect, test } from "vitest";
import {
  changeoverByTrimAndMarket,
  type ScopedSighting,
} from "../../../knowledge/dating/changeover-by-trim-and-market.ts";
import { granted } from "../../support/granted.ts";

const setting = { window: { from: 0, to: 60 } };

/** One car a month for `months` months about the change. */
function cars(trim: string, market: string, changed: number, months: number): readonly ScopedSighting[] {
  return Array.from({ length: months }, (_, at) => {
    const from = changed - Math.floor(months / 2) + at;
    return {
      id: `${trim} ${market} ${at}`,
      trim,
      market,
      isNew: from >= changed,
      built: { from, to: from + 1 },
      swap: 0.01,
      misread: 0.005,
      isSought: true,
    };
  });
}

const width = ({ interval }: { interval: { from: number; to: number } }) => interval.to - interval.from;

describe("two trims in two markets", () => {
  const seen = [
    ...cars("s", "home", 30, 24),
    ...cars("standard", "home", 30, 6),
    ...cars("s", "america", 40, 24),
    ...cars("standard", "america", 40, 3),
  ];
  const groups = granted(changeoverByTrimAndMarket(setting, seen, 5));

  test("each with enough cars has its own date, the others none", () => {
    expect(groups.map(({ trim, market, sightings }) => [market, trim, sightings])).toEqual([
      ["america", "s", 24],
      ["home", "s", 24],
      ["home", "standard", 6],
    ]);
    expect(Math.abs((groups[0]?.median ?? 0) - 40)).toBeLessThan(1.5);
    expect(Math.abs((groups[1]?.median ?? 0) - 30)).toBeLessThan(1.5);
  });

  test("a thin one borrows from its market: it is narrower than by itself", () => {
    const alone = granted(changeoverByTrimAndMarket(setting, cars("standard", "home", 30, 6), 5))[0];
    const thin = groups[2];
    if (alone === undefined || thin === undefined) throw new Error("both are there");
    expect(width(thin)).toBeLessThan(width(alone));
    expect(thin.onCommonDate).toBeGreaterThan(0.5);
  });

  test("the wider scope may be the trim: then it borrows across markets", () => {
    const byTrim = granted(changeoverByTrimAndMarket(setting, seen, 5, "trim"));
    expect(byTrim.map(({ trim, market }) => `${trim} ${market}`)).toEqual([
      "s america",
      "s home",
      "standard home",
    ]);
  });
});

test("a window that is none is refused", () => {
  expect(changeoverByTrimAndMarket({ window: { from: 5, to: 5 } }, cars("s", "home", 5, 2), 1)).toMatchObject(
    { ok: false },
  );
});
