import { describe, expect, test } from "vitest";
import { type DocumentedPair, learnLead } from "../../../knowledge/dating/lead-learning.ts";
import { leadPlausibility } from "../../../knowledge/dating/lead-plausibility.ts";
import { chanceFrom } from "../../support/random-tables.ts";

const usual = { median: 2, sigma: 0.7 };

/** Parts with a lead about `median`: the middle of twelve draws stands for a normal one. */
function documented(count: number, median: number, sigma: number, start: number): readonly DocumentedPair[] {
  const chance = chanceFrom(start);
  return Array.from({ length: count }, () => {
    let normal = -6;
    for (let draw = 0; draw < 12; draw += 1) normal += chance();
    const built = 100 + 40 * chance();
    const mark = built - median * Math.exp(sigma * normal);
    return {
      mark: { from: Math.floor(mark), to: Math.floor(mark) + 1 },
      built: { from: built, to: built + 0.03 },
    };
  });
}

describe("a lead learned from documented cars", () => {
  test("without any is the usual one", () => {
    const learned = learnLead([], usual);
    expect(learned.lead.median).toBeCloseTo(2, 6);
    expect(learned.lead.sigma).toBeCloseTo(0.73, 1);
    expect(learned.pairs).toBe(0);
  });
  test("goes a little way with three cars and most of the way with sixty", () => {
    const few = learnLead(documented(3, 5, 0.4, 2), usual);
    const many = learnLead(documented(60, 5, 0.4, 2), usual);
    expect(few.lead.median).toBeGreaterThan(2.2);
    expect(many.lead.median).toBeGreaterThan(4.2);
    expect(many.lead.median).toBeLessThan(5.8);
    expect(many.lead.sigma).toBeLessThan(0.6);
    const width = ({ medianInterval }: typeof few): number => medianInterval.to - medianInterval.from;
    expect(width(many)).toBeLessThan(width(few));
  });
  test("is not dragged by one part dated after its car", () => {
    const later = { mark: { from: 150, to: 151 }, built: { from: 120, to: 121 } };
    const plain = learnLead(documented(30, 3, 0.5, 4), usual);
    const mixed = learnLead([...documented(30, 3, 0.5, 4), later], usual);
    expect(Math.abs(mixed.lead.median - plain.lead.median)).toBeLessThan(0.05);
  });
});

describe("whether a date mark goes with a build date", () => {
  const built = { from: 100, to: 101 };
  test("two months before fits", () => {
    const found = leadPlausibility(usual, { from: 98, to: 99 }, built);
    expect(found).toMatchObject({ verdict: "fits", shortest: 1, longest: 3 });
    expect(found.atMostLongest).toBeGreaterThan(0.5);
  });
  test("a part dated after the car was built is called that", () => {
    expect(leadPlausibility(usual, { from: 103, to: 104 }, built).verdict).toBe("dated-after-built");
    expect(leadPlausibility(usual, { from: 101, to: 102 }, built).verdict).toBe("dated-after-built");
  });
  test("a mark of the very day leaves hardly time, one of years before lay on the shelf", () => {
    const day = { from: 100.96, to: 101 };
    expect(leadPlausibility({ median: 4, sigma: 0.4 }, day, built).verdict).toBe("hardly-time");
    expect(leadPlausibility(usual, { from: 40, to: 41 }, built).verdict).toBe("long-on-the-shelf");
    expect(leadPlausibility(usual, { from: 70, to: 71 }, built).verdict).toBe("long-on-the-shelf");
  });
});
