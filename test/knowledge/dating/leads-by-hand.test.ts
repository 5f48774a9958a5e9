// Leads learned from documented cars, against the table of medians and sigmas written out.
import { describe, expect, test } from "vitest";
import { type DocumentedPair, learnLead } from "../../../knowledge/dating/lead-learning.ts";
import { leadPlausibility } from "../../../knowledge/dating/lead-plausibility.ts";
import { leadAtMost } from "../../../knowledge/identification/lead-time.ts";
import { timeGrid } from "../../../knowledge/identification/time-grid.ts";

describe("a lead learned from documented cars", () => {
  const usual = { median: 2, sigma: 0.7 };
  const pair = (mark: number, built: number, months = 1): DocumentedPair => ({
    mark: { from: mark, to: mark + 1 },
    built: { from: built, to: built + months },
  });
  const pairs = [pair(100, 103), pair(200, 203), pair(110, 118, 12), pair(130, 131, 0.03)];

  /** Prior and likelihood over 51 medians and 15 sigmas, each within 2.5 deviations of the usual one. */
  function byTable(all: readonly DocumentedPair[]) {
    const rows = Array.from({ length: 51 }, (_, at) => 2.5 * (at / 25 - 1)).flatMap((m) =>
      Array.from({ length: 15 }, (_, at) => 2.5 * (at / 7 - 1)).map((s) => {
        const lead = { median: 2 * Math.exp(0.6 * m), sigma: 0.7 * Math.exp(0.3 * s) };
        const weight = all.reduce(
          (product, { mark, built }) => {
            const { times, weights } = timeGrid(built);
            const within = times.map(
              (time) => leadAtMost(lead, time - mark.from) - leadAtMost(lead, time - mark.to),
            );
            return product * within.reduce((sum, one, at) => sum + one * (weights[at] as number), 0);
          },
          Math.exp(-(m * m + s * s) / 2),
        );
        return { ...lead, weight };
      }),
    );
    const total = rows.reduce((sum, { weight }) => sum + weight, 0);
    const mean = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((sum, row) => sum + (row.weight / total) * of(row), 0);
    const held = (from: number, to: number) =>
      mean(({ median }) => Number(median > from - 1e-9 && median < to + 1e-9));
    return {
      median: Math.exp(mean(({ median }) => Math.log(median))),
      sigma: mean(({ sigma }) => sigma),
      held,
    };
  }

  test.each([
    ["none", []],
    ["one", pairs.slice(0, 1)],
    ["four, two of them alike", pairs],
  ] as const)("%s: the means of the posterior, and an interval that holds nine tenths", (_name, all) => {
    const learned = learnLead(all, usual);
    const table = byTable(all);
    expect(learned.lead.median).toBeCloseTo(table.median, 6);
    expect(learned.lead.sigma).toBeCloseTo(table.sigma, 6);
    const held = table.held(learned.medianInterval.from, learned.medianInterval.to);
    expect(held).toBeGreaterThanOrEqual(0.9);
    expect(held).toBeLessThan(0.95);
    expect(learned.pairs).toBe(all.length);
  });
  test("does not hang on the order of the cars, nor on the year they are of", () => {
    expect(learnLead(pairs.toReversed(), usual)).toEqual(learnLead(pairs, usual));
    const later = pairs.map(({ mark, built }) => ({
      mark: { from: mark.from + 60, to: mark.to + 60 },
      built: { from: built.from + 60, to: built.to + 60 },
    }));
    expect(learnLead(later, usual)).toEqual(learnLead(pairs, usual));
  });
});

test("a lead is unusual below one chance in fifty at its most favourable, at either end", () => {
  const lead = { median: 2, sigma: 0.7 };
  const built = { from: 100, to: 101 };
  const verdicts = [99.9, 100.9, 100.99].map((from) => leadPlausibility(lead, { from, to: 101 }, built));
  for (const { verdict, atMostLongest } of verdicts)
    expect(verdict).toBe(atMostLongest < 0.02 ? "hardly-time" : "fits");
  for (const back of [5, 8, 9, 10, 11, 15, 40]) {
    const mark = { from: 100 - back - 1, to: 100 - back };
    const { verdict, atLeastShortest, shortest } = leadPlausibility(lead, mark, built);
    expect(shortest).toBe(back);
    expect(atLeastShortest).toBeCloseTo(1 - leadAtMost(lead, back), 12);
    expect(verdict).toBe(atLeastShortest < 0.02 ? "long-on-the-shelf" : "fits");
  }
});
