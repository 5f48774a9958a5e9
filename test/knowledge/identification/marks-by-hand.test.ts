// Date marks worked out by hand from the formulas of the identification method, section 5: a look is right 96 times of
// 100, two people may be misled alike half of the time, and G is the lead's distribution (pinned in dates.test.ts).
import { describe, expect, test } from "vitest";
import type { Interval } from "../../../knowledge/calendar/interval.ts";
import {
  type ChainMark,
  chanceOfEarlier,
  evenShare,
  foldedReading,
  leadInto,
  type MarkReading,
  markReading,
} from "../../../knowledge/identification/date-marks.ts";
import { leadAtMost, spreadOf } from "../../../knowledge/identification/lead-time.ts";
import { reads, report, sees } from "../../support/worked-examples.ts";

const era = { from: 0, to: 1000 };
const lead = { median: 2, sigma: 0.7 };
const month = (from: number): Interval => ({ from, to: from + 1 });
const weightOn = (reading: MarkReading | undefined, from: number): number =>
  (reading?.pieces ?? [])
    .filter(({ interval }) => interval.from === from)
    .reduce((sum, { weight }) => sum + weight, 0);

describe("the share of an era that a reading takes", () => {
  test("is its length in it, over the era's", () => {
    expect(evenShare({ from: 100, to: 350 }, era)).toBeCloseTo(0.25, 12);
    expect(evenShare({ from: -50, to: 100 }, era)).toBeCloseTo(0.1, 12);
    expect(evenShare({ from: 900, to: Infinity }, era)).toBeCloseTo(0.1, 12);
    expect(evenShare({ from: 250, to: 500 }, { from: 200, to: 700 })).toBeCloseTo(0.5, 12);
  });
  test("is never nothing", () => {
    expect(evenShare({ from: 2000, to: 2001 }, era)).toBe(1e-9);
    expect(evenShare({ from: 10, to: 10 + 1e-8 }, era)).toBe(1e-9);
  });
});

describe("a mark read by one person", () => {
  test("lies where it was read in 96 of 100 cases, and else anywhere in the era", () => {
    const reading = markReading([reads("cast", 100, 101)], era);
    expect(reading?.pieces).toEqual([{ interval: month(100), weight: 0.96 }]);
    expect(reading?.misread).toBeCloseTo(0.04 * 0.001, 12);
    expect(reading?.evenShare).toBeCloseTo(0.001, 12);
  });
  test("half sure counts half", () => {
    const reading = markReading([reads("cast", 100, 101, { certainty: 0.5 })], era);
    expect(weightOn(reading, 100)).toBeCloseTo(0.48, 12);
    expect(reading?.misread).toBeCloseTo(0.52 * 0.001, 12);
  });
  test("read two ways is shared out by the weights, whatever they sum to", () => {
    const either = report("cast", {
      kind: "date",
      readings: [
        { interval: month(100), weight: 3 },
        { interval: { from: 500, to: 600 }, weight: 1 },
      ],
    });
    const reading = markReading([either], era);
    expect(weightOn(reading, 100)).toBeCloseTo(0.72, 12);
    expect(weightOn(reading, 500)).toBeCloseTo(0.24, 12);
    expect(reading?.evenShare).toBeCloseTo(0.75 * 0.001 + 0.25 * 0.1, 12);
    expect(reading?.misread).toBeCloseTo(0.04 * 0.02575, 12);
  });
  test("is left out where it names no time or weighs nothing", () => {
    const weighing = (interval: Interval, weight: number) =>
      report("cast", {
        kind: "date",
        readings: [
          { interval, weight },
          { interval: month(7), weight: 1 },
        ],
      });
    for (const empty of [
      weighing({ from: 9, to: 9 }, 1),
      weighing({ from: 9, to: 8 }, 1),
      weighing(month(9), 0),
    ]) {
      expect(markReading([empty], era)?.pieces).toEqual([{ interval: month(7), weight: 0.96 }]);
    }
    expect(markReading([reads("cast", 9, 9)], era)).toBeUndefined();
    expect(markReading([sees("cast", "there")], era)).toBeUndefined();
    expect(markReading([], era)).toBeUndefined();
  });
  test("with an open end is closed at the era, or a month on where the era is over", () => {
    const closed = (from: number, to: number) =>
      markReading([reads("cast", from, to)], era)?.pieces[0]?.interval;
    expect(closed(900, Infinity)).toEqual({ from: 900, to: 1000 });
    expect(closed(-Infinity, 100)).toEqual({ from: 0, to: 100 });
    expect(closed(1500, Infinity)).toEqual({ from: 1500, to: 1501 });
    expect(closed(-Infinity, -50)).toEqual({ from: -51, to: -50 });
  });
});

describe("a mark read by two people", () => {
  const E = 0.001;
  test("who agree is surer by half of what two strangers' looks would make it", () => {
    const both = markReading([reads("cast", 100, 101), reads("cast", 100, 101, { by: "friend" })], era);
    // Apart: both right, or one of them right and the other anywhere. Together: one appearance, right 96 times of 100.
    expect(weightOn(both, 100)).toBeCloseTo(0.5 * (0.96 ** 2 + 2 * 0.96 * 0.04 * E) + 0.5 * 0.96, 12);
    expect(both?.misread).toBeCloseTo(0.5 * (0.04 * E) ** 2 + 0.5 * 0.04 * E, 12);
    expect(both?.evenShare).toBeCloseTo(E, 12);
  });
  test("who were half sure leaves most to a misreading, by each alone, by both alike, and by the appearance itself", () => {
    const unsure = { certainty: 0.5 };
    const both = markReading(
      [reads("cast", 100, 101, unsure), reads("cast", 100, 101, { ...unsure, by: "friend" })],
      era,
    );
    const alike = 0.25 + 2 * 0.25 * E;
    expect(weightOn(both, 100)).toBeCloseTo(0.5 * (0.48 ** 2 + 2 * 0.48 * 0.52 * E) + 0.48 * alike, 12);
    const even = alike * E + 0.25 * E ** 2;
    expect(both?.evenShare).toBeCloseTo(even, 15);
    expect((both?.misread ?? 0) / (0.5 * (0.52 * E) ** 2 + 0.48 * 0.25 * E ** 2 + 0.02 * even)).toBeCloseTo(
      1,
      9,
    );
  });
  test("who disagree is one of the two, for they did not see the same", () => {
    const both = markReading([reads("cast", 100, 101), reads("cast", 700, 701, { by: "friend" })], era);
    expect(weightOn(both, 100)).toBeCloseTo(0.5 * 0.96 * 0.04 * E, 15);
    expect(weightOn(both, 700)).toBeCloseTo(0.5 * 0.96 * 0.04 * E, 15);
    expect(both?.misread).toBeCloseTo(0.5 * (0.04 * E) ** 2, 15);
  });
  test("of whom one names the month and the other its year lies in the month", () => {
    const both = markReading([reads("cast", 100, 101), reads("cast", 96, 108, { by: "friend" })], era);
    expect(weightOn(both, 100)).toBeCloseTo(0.5 * (0.96 ** 2 + 0.96 * 0.04 * 0.012) + 0.5 * 0.96, 12);
    expect(weightOn(both, 96)).toBeCloseTo(0.5 * 0.96 * 0.04 * E, 12);
  });
  test("of whom one read no date is what the other read", () => {
    expect(markReading([sees("cast", "there", { by: "friend" }), reads("cast", 100, 101)], era)).toEqual(
      markReading([reads("cast", 100, 101)], era),
    );
  });
});

describe("the usual lead in a few lengths", () => {
  const spread = spreadOf(lead);
  test("has its median in the middle, and as much above as below by ratio", () => {
    expect(spread).toHaveLength(17);
    expect(spread[8]?.months).toBeCloseTo(2, 12);
    expect((spread[0]?.months ?? 0) * (spread[16]?.months ?? 0)).toBeCloseTo(4, 12);
    expect(spread[16]?.months).toBeCloseTo(2 * Math.exp((0.7 * 8) / 3), 12);
    expect(spread[11]?.months).toBeCloseTo(2 * Math.exp(0.7), 12);
  });
  test("falls off as a normal distribution, and sums to one", () => {
    expect(spread.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect((spread[8]?.share ?? 0) / (spread[11]?.share ?? 1)).toBeCloseTo(Math.exp(0.5), 12);
    expect(spread[5]?.share).toBeCloseTo(spread[11]?.share ?? 0, 14);
  });
});

describe("marks before others", () => {
  const sure = (at: number): MarkReading => ({
    pieces: [{ interval: month(at), weight: 0.9 }],
    misread: 0.002,
    evenShare: 0.001,
  });
  const mark = (at: number, before: readonly ChainMark[] = []): ChainMark => ({
    feature: `at ${at}`,
    reading: sure(at),
    lead,
    before,
  });
  const G = (months: number): number => leadAtMost(lead, months);
  // One quarter of a month is looked at as one instant, its middle.
  const soon = { from: 104, to: 104.25 };

  test("fall into a month when the lead before the next one does", () => {
    expect(leadInto(lead, month(100), 104)).toBeCloseTo(G(4) - G(3), 14);
    expect(chanceOfEarlier([mark(100)], soon)).toBeCloseTo(0.9 * (G(4.125) - G(3.125)) + 0.002, 12);
  });
  test("are averaged over the instants at which the next can have been made", () => {
    const half = { from: 104, to: 104.5 };
    const mean = (G(4.125) - G(3.125) + G(4.375) - G(3.375)) / 2;
    expect(chanceOfEarlier([mark(100)], half)).toBeCloseTo(0.9 * mean + 0.002, 12);
  });
  test("multiply where several stand before the same one", () => {
    const [one, other] = [chanceOfEarlier([mark(100)], soon), chanceOfEarlier([mark(102)], soon)];
    expect(chanceOfEarlier([mark(100), mark(102)], soon)).toBeCloseTo(one * other, 14);
    expect(one).not.toBeCloseTo(other, 3);
  });
  test("go back link by link; where the middle one was misread the first is anywhere in the era", () => {
    const first = mark(97);
    const into = G(4.125) - G(3.125);
    expect(chanceOfEarlier([mark(100, [first])], soon)).toBeCloseTo(
      0.9 * into * chanceOfEarlier([first], month(100)) + 0.002 * 0.001,
      14,
    );
    const far = mark(95);
    expect(chanceOfEarlier([mark(100, [mark(97, [far])])], soon)).toBeCloseTo(
      0.9 * into * chanceOfEarlier([mark(97, [far])], month(100)) + 0.002 * 0.001 * 0.001,
      14,
    );
  });
  test("beside which another stands were made before the car, a usual lead after it", () => {
    const beside = { ...mark(100), beside: { median: 3, sigma: 0.4 } };
    const expected = spreadOf({ median: 3, sigma: 0.4 }).reduce(
      (sum, { months, share }) => sum + share * (G(4.125 + months) - G(3.125 + months)),
      0,
    );
    expect(chanceOfEarlier([beside], soon)).toBeCloseTo(0.9 * expected + 0.002, 12);
  });
  test("fold into the last one: its readings by what stands before them, its misreading in the same measure", () => {
    const last: ChainMark = {
      ...mark(104, [mark(100)]),
      reading: {
        pieces: [
          { interval: month(104), weight: 0.6 },
          { interval: month(108), weight: 0.3 },
        ],
        misread: 0.05,
        evenShare: 0.01,
      },
    };
    const [near, far] = [104, 108].map((at) => chanceOfEarlier([mark(100)], month(at))) as [number, number];
    const folded = foldedReading(last);
    expect(folded.pieces.map(({ weight }) => weight)).toEqual([
      expect.closeTo(0.6 * near, 14),
      expect.closeTo(0.3 * far, 14),
    ]);
    expect(folded.misread).toBeCloseTo((0.05 * (0.6 * near + 0.3 * far)) / 0.9, 14);
    expect(folded.evenShare).toBe(0.01);
  });
  test("fold into one that nobody is sure of as misread all together", () => {
    const guessed = { ...mark(104, [mark(100)]), reading: { pieces: [], misread: 0.05, evenShare: 0.01 } };
    expect(foldedReading(guessed)).toEqual({
      pieces: [],
      misread: expect.closeTo(0.05 * 0.01 * 0.001, 16),
      evenShare: 0.01,
    });
  });
});
