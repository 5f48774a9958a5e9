// One size read by tape, rule or caliper: units and their mix-ups, the reader's error, the maker's spread. Chances within
// one, two and three deviations of a normal distribution are the usual table's: .6826895, .9544997, .9973002.
import { describe, expect, test } from "vitest";
import type { MeasurementUnit, Report } from "../../../knowledge/evidence/report.ts";
import type { MeasurementFeature } from "../../../knowledge/handbook/schema.ts";
import {
  chanceOfReadings,
  chanceOfReadingsFlat,
  onlyTerm,
  type Reading,
  readingOf,
} from "../../../knowledge/identification/measurement-likelihood.ts";
import {
  instrumentDeviation,
  measureAlike,
  unitChances,
  unitRatio,
} from "../../../knowledge/identification/measurement-units.ts";
import { report, sees } from "../../support/worked-examples.ts";

const width = { id: "width", kind: "measurement", unit: "mm", instrument: "tape" } as MeasurementFeature;
const range = { lowest: 300, highest: 450 };
const units: readonly MeasurementUnit[] = ["mm", "cm", "in", "g", "kg", "lb", "oz"];

function said(value: number, halfWidth: number, rest: object = {}, certainty = 1): Report {
  const told = { kind: "measurement", value, halfWidth, unit: "mm", unitConfirmed: true, ...rest } as const;
  return report("width", told, { certainty });
}
function read(from: Report): Reading {
  const reading = readingOf(from, width, range);
  if (!reading) throw new Error("a measurement is a reading");
  return reading;
}

describe("units", () => {
  test("an inch is 25.4 mm and a pound 16 ounces (NIST Special Publication 811)", () => {
    expect(unitRatio("in", "mm")).toBe(25.4);
    expect(unitRatio("in", "cm")).toBeCloseTo(2.54, 12);
    expect(unitRatio("lb", "oz")).toBeCloseTo(16, 9);
    expect(unitRatio("kg", "lb")).toBeCloseTo(2.20462262185, 9);
    for (const unit of units) expect(unitRatio(unit, unit)).toBe(1);
  });
  test("a length is no mass", () => {
    expect(units.map((unit) => measureAlike("cm", unit))).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
    expect(units.map((unit) => measureAlike("oz", unit))).toEqual([
      false,
      false,
      false,
      true,
      true,
      true,
      true,
    ]);
  });
  test("a unit that was said is meant 98 times of 100, and else one that it is confused with", () => {
    expect(unitChances("mm", "mm", false)).toEqual([
      { unit: "mm", chance: 0.98 },
      { unit: "cm", chance: expect.closeTo(0.01, 12) },
      { unit: "in", chance: expect.closeTo(0.01, 12) },
    ]);
    const meant = (unit: MeasurementUnit) => unitChances(unit, unit, false).map((one) => one.unit);
    expect(units.map(meant)).toEqual([
      ["mm", "cm", "in"],
      ["cm", "mm", "in"],
      ["in", "cm", "mm"],
      ["g", "oz"],
      ["kg", "lb"],
      ["lb", "kg"],
      ["oz", "g"],
    ]);
    expect(unitChances("lb", "kg", false)[1]?.chance).toBeCloseTo(0.02, 12);
  });
  test("a unit that was confirmed is the only one, and one not said is any of its kind", () => {
    expect(unitChances("in", "mm", true)).toEqual([{ unit: "in", chance: 1 }]);
    expect(unitChances(null, "in", false).map(({ unit, chance }) => [unit, chance])).toEqual([
      ["mm", 0.5],
      ["cm", 0.25],
      ["in", 0.25],
    ]);
    expect(unitChances(null, "kg", false).map(({ unit, chance }) => [unit, chance])).toEqual([
      ["g", 0.3],
      ["kg", 0.3],
      ["lb", 0.3],
      ["oz", 0.1],
    ]);
  });
  test("a tape is good to 1 mm, a rule to .5, a caliper to .1, a kitchen scale to 10 g, a guess to 5 %", () => {
    expect(instrumentDeviation("tape", 400, "mm")).toBe(1);
    expect(instrumentDeviation("tape", 40, "cm")).toBe(0.1);
    expect(instrumentDeviation("rule", 400, "mm")).toBe(0.5);
    expect(instrumentDeviation("caliper", 16, "in")).toBeCloseTo(0.1 / 25.4, 12);
    expect(instrumentDeviation("kitchen-scale", 3, "kg")).toBe(0.01);
    expect(instrumentDeviation("guess", 400, "mm")).toBeCloseTo(20, 12);
    expect(instrumentDeviation("guess", 16, "in")).toBeCloseTo(0.8, 12);
  });
});

describe("one reading", () => {
  test("within one deviation of the mean either way has .6827 of the sound readings, and the rest is read wrongly", () => {
    // Tape 1 mm, maker .75 mm: one deviation is 1.25 mm. 3 % are taken in the wrong place, log-uniform over 100 … 1350 mm.
    const outlier = (0.03 * Math.log(401.25 / 398.75)) / Math.log(13.5);
    const within = (deviations: number) => chanceOfReadings([read(said(400, 1.25 * deviations))], 400, 0.75);
    expect(within(1)).toBeCloseTo(0.97 * 0.6826895 + outlier, 6);
    const wide = (0.03 * Math.log(402.5 / 397.5)) / Math.log(13.5);
    expect(within(2)).toBeCloseTo(0.97 * 0.9544997 + wide, 6);
  });
  test("of somebody who is half sure counts half, and the other half is as good as wrong", () => {
    const reading = read(said(400, 1, {}, 0.5));
    expect(reading.terms.map(({ weight }) => weight)).toEqual([0.485]);
    expect(reading.outlierWeight).toBeCloseTo(0.515, 12);
  });
  test("stands where it was said in the unit it was said in, and also where the units it is confused with would put it", () => {
    const reading = read(said(16, 0.5, { unit: "in", unitConfirmed: false }));
    expect(reading.terms.map(({ unit }) => unit)).toEqual(["in", "cm", "mm"]);
    const [inches, centimetres] = reading.terms;
    expect(inches?.from).toBeCloseTo(15.5 * 25.4, 9);
    expect(inches?.to).toBeCloseTo(16.5 * 25.4, 9);
    expect(inches?.deviation).toBeCloseTo(1, 12);
    expect(inches?.weight).toBeCloseTo(0.97 * 0.98, 12);
    expect(centimetres?.from).toBeCloseTo(155, 9);
    expect(centimetres?.deviation).toBeCloseTo(10 / 25.4, 12);
    expect(reading.middle).toBeCloseTo(16 * 25.4, 9);
  });
  test("is taken with the handbook's instrument unless another was named", () => {
    expect(read(said(400, 1)).terms[0]?.deviation).toBe(1);
    expect(read(said(400, 1, { instrument: "caliper" })).terms[0]?.deviation).toBe(0.1);
  });
  test("is never more exact than one part in ten thousand of itself", () => {
    expect(read(said(400, 0)).terms[0]).toMatchObject({ from: 399.96, to: 400.04 });
    expect(read(said(400, 0.04)).terms[0]).toMatchObject({ from: 399.96, to: 400.04 });
    expect(read(said(400, 0.05)).terms[0]?.to).toBeCloseTo(400.05, 12);
  });
  test("in the wrong place lies evenly, by ratio, between a third of the least mean and thrice the greatest", () => {
    expect(read(said(400, 1)).outlier).toBeCloseTo(Math.log(401 / 399) / Math.log(1350 / 100), 12);
    expect(read(said(100, 10)).outlier).toBeCloseTo(Math.log(110 / 100) / Math.log(13.5), 12);
    expect(read(said(1350, 10)).outlier).toBeCloseTo(Math.log(1350 / 1340) / Math.log(13.5), 12);
    expect(read(said(2000, 10)).outlier).toBe(1e-9);
    expect(read(said(50, 10)).outlier).toBe(1e-9);
  });
  test("is no reading of a state, and none at all has chance one", () => {
    expect(readingOf(sees("width", "wide"), width, range)).toBeUndefined();
    expect(chanceOfReadings([], 400, 1)).toBe(1);
    expect(chanceOfReadingsFlat([], range)).toBe(1);
  });
});

describe("two readings of one part", () => {
  const one = read(said(400, 1));
  const other = read(said(401, 0.5));
  test("where the maker has no spread are independent looks at one known size", () => {
    const apart = chanceOfReadings([one], 400, 0) * chanceOfReadings([other], 400, 0);
    expect(chanceOfReadings([one, other], 400, 0)).toBeCloseTo(apart, 12);
  });
  test("share the part's own size: alike ones fit a spread-out make better than two parts would", () => {
    const high = read(said(406, 1));
    const apart = chanceOfReadings([high], 400, 3) ** 2;
    expect(chanceOfReadings([high, high], 400, 3)).toBeGreaterThan(1.5 * apart);
  });
  test("may be told in either order", () => {
    expect(chanceOfReadings([one, other], 400, 2)).toBeCloseTo(chanceOfReadings([other, one], 400, 2), 14);
  });
  test("weigh the same wherever they lie, also where the maker let the part vary far more than a caliper errs", () => {
    const calipered = (value: number): Reading => read(said(value, 0.05, { instrument: "caliper" }));
    /** The definition: the mean over the true size, by steps of a two-thousandth of the spread. */
    const byHand = (readings: readonly Reading[], mean: number, spread: number): number => {
      let sum = 0;
      let shares = 0;
      for (let z = -6; z <= 6; z += 0.0005) {
        const share = Math.exp((-z * z) / 2);
        shares += share;
        sum +=
          share * readings.reduce((all, next) => all * chanceOfReadings([next], mean + spread * z, 0), 1);
      }
      return sum / shares;
    };
    for (const spread of [0.2, 1, 3, 10]) {
      for (const value of [400, 400.13, 400.25, 400.5]) {
        const pair = [calipered(value), calipered(value + 0.1)];
        expect(chanceOfReadings(pair, 400, spread) / byHand(pair, 400, spread)).toBeCloseTo(1, 3);
      }
    }
    const three = [calipered(400.3), calipered(400.35), calipered(400.4)];
    expect(chanceOfReadings(three, 400, 6) / byHand(three, 400, 6)).toBeCloseTo(1, 3);
  });
  test("of which one says nothing leave what the other says, summed over all sizes of the make", () => {
    // Certain to be an outlier of chance .2 wherever the part's size lies.
    const blank: Reading = { terms: [], outlierWeight: 1, outlier: 0.2, middle: 400 };
    expect(chanceOfReadings([one, blank], 401, 2)).toBeCloseTo(0.2 * chanceOfReadings([one], 401, 2), 5);
    expect(chanceOfReadings([one, blank], 405, 2)).toBeCloseTo(0.2 * chanceOfReadings([one], 405, 2), 5);
  });
});

describe("a part of which no size is known", () => {
  test("lies evenly, by ratio, between the least mean over 1.5 and the greatest times 1.5", () => {
    const reading = read(said(400, 1));
    const even = Math.log(401 / 399) / Math.log(675 / 200);
    expect(chanceOfReadingsFlat([reading], range)).toBeCloseTo(0.97 * even + 0.03 * reading.outlier, 12);
  });
  test("has the first reading for its size, by which the second is judged", () => {
    const first = read(said(400, 1));
    const near = read(said(401, 1));
    const even = Math.log(401 / 399) / Math.log(675 / 200);
    const expected = (0.97 * even + 0.03 * first.outlier) * chanceOfReadings([near], 400, 0);
    expect(chanceOfReadingsFlat([first, near], range)).toBeCloseTo(expected, 12);
  });
});

describe("a reading as if one thing only could be true", () => {
  const reading = read(said(40, 1, { unit: "cm", unitConfirmed: false }));
  test("keeps one unit and no wrong place, or the wrong place and no unit", () => {
    const millimetres = onlyTerm(reading, "mm");
    expect(millimetres.terms.map(({ unit }) => unit)).toEqual(["mm"]);
    expect(millimetres.outlierWeight).toBe(0);
    const misplaced = onlyTerm(reading, null);
    expect(misplaced.terms).toEqual([]);
    expect(misplaced.outlierWeight).toBe(reading.outlierWeight);
  });
  test("adds up to the whole over all that can be true", () => {
    const parts = [...reading.terms.map(({ unit }) => unit), null].map((unit) =>
      chanceOfReadings([onlyTerm(reading, unit)], 402, 2),
    );
    const whole = chanceOfReadings([reading], 402, 2);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(whole, 14);
  });
});
