// Date marks: one mark, chains, broken links, several readings and readers, and what the trade expects of them.
import { describe, expect, test } from "vitest";
import { monthInterval, monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import type { CompiledPart } from "../../../knowledge/identification/compiled-part.ts";
import { chainOf, dateLinks } from "../../../knowledge/identification/date-chain.ts";
import { chanceOfEarlier, foldedReading, markReading } from "../../../knowledge/identification/date-marks.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { leadAtMost, leadOverBoth } from "../../../knowledge/identification/lead-time.ts";
import { dateFeature, smallHandbook, variant, type WrittenFeature } from "../../support/small-handbook.ts";
import { compiledFrom, reads, report, sees } from "../../support/worked-examples.ts";

const lead = { median: 2, sigma: 0.7 };

/** One production variant, one reproduction, and marks cast → assembled → the build date. */
function chained(): CompiledPart {
  return compiledFrom(
    smallHandbook({
      features: [
        dateFeature("cast", { before: "assembled", lead: { median: 1, sigma: 0.5 } }),
        dateFeature("assembled"),
        dateFeature("label", { none: "no label" }),
      ],
      variants: [
        variant("first", {
          origin: "production",
          fitted: [{ from: "1977-01", to: "1981-12" }],
          sold: [{ from: "1979", to: "1988" }],
        }),
        variant("copy", {
          origin: "reproduction",
          sold: [{ from: "1996", to: "2020-12" }],
          tells: { label: { "not-there": "always" } },
        }),
      ],
    }),
  );
}

const march1980 = monthStart(1980, 3);
const builtMarch = { built: monthInterval(1980, 3), grade: "history-unknown" } as const;

function month(feature: string, year: number, number: number): Report {
  return reads(feature, monthStart(year, number), monthStart(year, number) + 1);
}

/** A part kind with these date marks. */
function partKindOf(features: readonly WrittenFeature[]): CompiledPart["part"] {
  return compiledFrom(
    smallHandbook({
      features,
      variants: ["one", "other"].map((id) => variant(id, { origin: "production" })),
    }),
  ).part;
}

/** P(the part the car was built with). */
function asBuilt(compiled: CompiledPart, reports: readonly Report[], car = builtMarch): number {
  const { classes } = identify(compiled, { car, reports, goal: "right-for-car" });
  return classes.find((entry) => entry.class === "as-built")?.probability ?? Number.NaN;
}

describe("the lead from mark to build", () => {
  test("is at most x months with G(x) = .94·Φ(ln(x/2)/.7) + .05·x/36 + .01·(x + 6)/6", () => {
    expect(leadAtMost(lead, -6)).toBe(0);
    expect(leadAtMost(lead, 0)).toBeCloseTo(0.01, 12);
    expect(leadAtMost(lead, 2)).toBeCloseTo(0.94 * 0.5 + 0.05 * (2 / 36) + 0.01, 12);
    expect(leadAtMost(lead, 400)).toBeCloseTo(1, 9);
  });
  test("over two links has the mean and variance of the sum (Fenton 1960)", () => {
    const both = leadOverBoth({ median: 1, sigma: 0.5 }, lead);
    const mean = (of: typeof lead) => of.median * Math.exp(of.sigma ** 2 / 2);
    const variance = (of: typeof lead) => mean(of) ** 2 * Math.expm1(of.sigma ** 2);
    expect(mean(both)).toBeCloseTo(mean(lead) + mean({ median: 1, sigma: 0.5 }), 12);
    expect(variance(both)).toBeCloseTo(variance(lead) + variance({ median: 1, sigma: 0.5 }), 12);
  });
});

describe("one mark (common practice, no source)", () => {
  const compiled = chained();
  test("after the car was built says that the part is not the one it was built with", () => {
    expect(asBuilt(compiled, [month("assembled", 1981, 6)])).toBeLessThan(0.25);
    expect(asBuilt(compiled, [month("assembled", 1981, 6)])).toBeLessThan(asBuilt(compiled, []) / 2);
  });
  test.each([1, 2, 3, 4, 5, 6])("%i months before the build date is normal", (months) => {
    const mark = reads("assembled", march1980 - months, march1980 - months + 1);
    expect(asBuilt(compiled, [mark])).toBeGreaterThan(asBuilt(compiled, []));
  });
  test("misread by one who is not sure says less", () => {
    const late = month("assembled", 1981, 6);
    expect(asBuilt(compiled, [{ ...late, certainty: 0.5 }])).toBeGreaterThan(asBuilt(compiled, [late]));
  });
  test("of twenty years later makes the reproduction likely and the car's own part unlikely", () => {
    const { ranking } = identify(compiled, {
      car: builtMarch,
      reports: [month("assembled", 2001, 5)],
      goal: "which-variant",
    });
    expect(ranking[0]).toMatchObject({ variant: "copy" });
  });
  test("read two ways counts each way by its weight", () => {
    const either = report("assembled", {
      kind: "date",
      readings: [
        { interval: monthInterval(1980, 1), weight: 3 },
        { interval: monthInterval(1990, 1), weight: 1 },
      ],
    });
    const between = asBuilt(compiled, [either]);
    expect(between).toBeLessThan(asBuilt(compiled, [month("assembled", 1980, 1)]));
    expect(between).toBeGreaterThan(asBuilt(compiled, [month("assembled", 1990, 1)]));
  });
  test("read alike by two people is one date, only surer", () => {
    const one = month("assembled", 1981, 6);
    const both = [one, { ...one, by: "friend" }];
    expect(asBuilt(compiled, both)).toBeLessThan(asBuilt(compiled, [one]));
    // The same trap may hold both: half of the time two looks are worth one.
    const odds = (p: number) => p / (1 - p);
    const prior = odds(asBuilt(compiled, []));
    const factor = odds(asBuilt(compiled, [one])) / prior;
    expect(odds(asBuilt(compiled, both)) / prior).toBeGreaterThan(0.3 * factor);
  });
  test("read by two people who disagree fits both readings", () => {
    const early = month("assembled", 1980, 1);
    const late = month("assembled", 1990, 1);
    const between = asBuilt(compiled, [early, { ...late, by: "friend" }]);
    expect(between).toBeLessThan(asBuilt(compiled, [early]));
    expect(between).toBeGreaterThan(asBuilt(compiled, [late]));
  });
  test("of a standard not approved before 1990 rules out nothing but speaks against the works", () => {
    const approval = reads("assembled", monthStart(1990, 1), Infinity);
    expect(asBuilt(compiled, [approval])).toBeGreaterThan(0);
    expect(asBuilt(compiled, [approval])).toBeLessThan(0.3 * asBuilt(compiled, []));
  });
  test("outside every era leaves all finite", () => {
    const { probabilities } = beliefOf(compiled, builtMarch, [month("assembled", 1890, 1)]);
    expect(probabilities.every((probability) => probability > 0)).toBe(true);
  });
});

describe("a chain of marks", () => {
  const compiled = chained();
  test("of one mark is that mark: nothing comes before it", () => {
    const reading = markReading([month("assembled", 1980, 1)], compiled.markEra);
    const last = chainOf(dateLinks(compiled.part), new Map(reading ? [["assembled", reading]] : []));
    expect(last?.before).toEqual([]);
    expect(last && foldedReading(last)).toEqual({ ...reading });
    expect(chanceOfEarlier([], monthInterval(1980, 1))).toBe(1);
  });
  test("follows the handbook's links and skips marks that were not read", () => {
    const read = (feature: string) => markReading([month(feature, 1980, 1)], compiled.markEra);
    const [cast, assembled] = [read("cast"), read("assembled")];
    if (!cast || !assembled) throw new Error("a month is a reading");
    const both = chainOf(
      dateLinks(compiled.part),
      new Map([
        ["cast", cast],
        ["assembled", assembled],
      ]),
    );
    expect(both?.feature).toBe("assembled");
    expect(both?.before.map((mark) => mark.feature)).toEqual(["cast"]);
    const alone = chainOf(dateLinks(compiled.part), new Map([["cast", cast]]));
    expect(alone?.lead.median).toBeGreaterThan(2);
  });
  test("that agrees says more for the works than its last mark alone", () => {
    const last = month("assembled", 1980, 1);
    const rival = (reports: readonly Report[]): number => {
      const { probabilities, compiled: of } = beliefOf(compiled, builtMarch, reports);
      return (
        (probabilities[of.space.ids.indexOf("first:works")] ?? 0) /
        (probabilities[of.space.ids.indexOf("kin-of:first")] ?? 1)
      );
    };
    expect(asBuilt(compiled, [month("cast", 1979, 12), last])).toBeGreaterThan(
      0.9 * asBuilt(compiled, [last]),
    );
    expect(rival([month("cast", 1979, 12), last])).toBeGreaterThan(0);
  });
  test("is one item of evidence: an agreeing earlier mark does not square the weight of the later", () => {
    const odds = (reports: readonly Report[]): number => {
      const p = asBuilt(compiled, reports);
      return p / (1 - p);
    };
    const prior = odds([]);
    const one = odds([month("assembled", 1980, 1)]) / prior;
    const two = odds([month("cast", 1979, 12), month("assembled", 1980, 1)]) / prior;
    expect(two).toBeLessThan(one ** 2);
  });
  test("agrees with adding up all true dates by hand, where one mark was read", () => {
    // P(mark in February 1980 | works) over the four quarters of March 1980, from G alone.
    const compiledPart = chained();
    const reports = [month("assembled", 1980, 2)];
    const { joint, ground, compiled: of } = beliefOf(compiledPart, builtMarch, reports);
    const h = of.space.ids.indexOf("first:works");
    const mark = monthStart(1980, 2);
    const quarters = [0.125, 0.375, 0.625, 0.875].map((part) => march1980 + part);
    const chance =
      quarters.reduce(
        (sum, time) => sum + leadAtMost(lead, time - mark) - leadAtMost(lead, time - mark - 1),
        0,
      ) / 4;
    const era = monthStart(2021, 1) - (monthStart(1977, 1) - 24);
    expect(Math.exp((joint[h] ?? 0) - (ground.logPrior[h] ?? 0))).toBeCloseTo(0.96 * chance + 0.04 / era, 12);
  });
});

describe("two marks of which neither is known to come first", () => {
  const compiled = chained();
  test("are one item of evidence", () => {
    const odds = (reports: readonly Report[]): number => {
      const p = asBuilt(compiled, reports);
      return p / (1 - p);
    };
    const prior = odds([]);
    const one = odds([month("assembled", 1980, 1)]) / prior;
    const other = odds([month("label", 1980, 1)]) / prior;
    const both = odds([month("assembled", 1980, 1), month("label", 1980, 1)]) / prior;
    expect(both).toBeLessThan(one * other);
    expect(both).toBeGreaterThan(one / 2);
  });
  test("stand side by side: the handbook's last for the part, the other before the car by the lead of both", () => {
    const links = dateLinks(
      partKindOf([dateFeature("cast", { lead: { median: 1, sigma: 0.5 } }), dateFeature("label")]),
    );
    const era = { from: 0, to: 24_000 };
    const reading = (from: number) => markReading([reads("cast", from, from + 1)], era);
    const [cast, label] = [reading(12 * 1979), reading(12 * 1980)];
    if (!cast || !label) throw new Error("both were read");
    const readings = new Map([
      ["cast", cast],
      ["label", label],
    ]);
    expect(chainOf(links, readings)).toEqual({
      feature: "label",
      reading: label,
      lead,
      before: [{ feature: "cast", reading: cast, lead: { median: 1, sigma: 0.5 }, before: [], beside: lead }],
    });
    expect(chainOf(links, new Map([["cast", cast]]))?.before).toEqual([]);
    const ordered = dateLinks(
      partKindOf([
        dateFeature("cast", { before: "label", lead: { median: 1, sigma: 0.5 } }),
        dateFeature("label"),
      ]),
    );
    expect(chainOf(ordered, readings)).toEqual({
      feature: "label",
      reading: label,
      lead,
      before: [{ feature: "cast", reading: cast, lead: { median: 1, sigma: 0.5 }, before: [] }],
    });
    expect(chainOf(links, new Map())).toBeUndefined();
  });
  test("may stand in either order", () => {
    const orders = [
      [month("assembled", 1980, 1), month("label", 1980, 2)],
      [month("assembled", 1980, 2), month("label", 1980, 1)],
    ].map((reports) => asBuilt(compiled, reports));
    for (const probability of orders) expect(probability).toBeGreaterThan(asBuilt(compiled, []));
  });
});

describe("a broken link", () => {
  const compiled = chained();
  const broken = (reports: readonly Report[], car: object = builtMarch) =>
    identify(compiled, { car, reports, goal: "right-for-car" }).brokenLinks;
  test("is named when a mark lies after the build date", () => {
    expect(broken([month("assembled", 1980, 8)])).toEqual([
      { earlier: "assembled", later: "built", problem: "after" },
    ]);
  });
  test("is named when a mark lies years before the build date", () => {
    expect(broken([month("assembled", 1977, 1)])).toEqual([
      { earlier: "assembled", later: "built", problem: "too-long-before" },
    ]);
  });
  test("is named between two marks, and only there", () => {
    expect(broken([month("cast", 1980, 2), month("assembled", 1979, 6)])).toEqual([
      { earlier: "cast", later: "assembled", problem: "after" },
    ]);
  });
  test("is not named when the dates are as they should be, or the car's date is unknown", () => {
    expect(broken([month("cast", 1979, 12), month("assembled", 1980, 1)])).toEqual([]);
    expect(broken([month("assembled", 1999, 1)], {})).toEqual([]);
    expect(broken([month("assembled", 1999, 1)], { ...builtMarch, isLoosePart: true })).toEqual([]);
  });
  test("is not named when one of the readings of a mark fits", () => {
    const either = report("assembled", {
      kind: "date",
      readings: [
        { interval: yearInterval(1980), weight: 1 },
        { interval: yearInterval(1990), weight: 1 },
      ],
    });
    expect(broken([either])).toEqual([]);
  });
});

describe("a mark that a variant does not carry", () => {
  const compiled = chained();
  test("speaks for that variant when it is not there, and against it when it is read", () => {
    const copy = (reports: readonly Report[]): number => {
      const { ranking } = identify(compiled, { car: {}, reports, goal: "which-variant" });
      return ranking.find(({ variant: id }) => id === "copy")?.probability ?? 0;
    };
    const before = copy([]);
    expect(copy([sees("label", "not-there")])).toBeGreaterThan(before);
    expect(copy([month("label", 2001, 1)])).toBeLessThan(copy([month("assembled", 2001, 1)]));
  });
});
