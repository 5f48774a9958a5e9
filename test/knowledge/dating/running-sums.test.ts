// What was asked before changes no digit of what is asked now: with a memory or without, whatever came and went in between.
import fc from "fast-check";
import { expect, test } from "vitest";
import type { LikelihoodMemory } from "../../../knowledge/dating/border-likelihood.ts";
import { briefChangeover } from "../../../knowledge/dating/brief-changeover.ts";
import type { ChangeoverSighting } from "../../../knowledge/dating/report-groups.ts";

const setting = { window: { from: 0, to: 60 } };

const drawn = fc.record({
  isNew: fc.boolean(),
  month: fc.integer({ min: 0, max: 48 }),
  months: fc.constantFrom(1, 1, 1, 12),
  swap: fc.constantFrom(0.01, 0.2),
  // Up to far more than are summed exactly.
  count: fc.constantFrom(1, 2, 3000, 1_000_000),
});

test("sums that are carried on give the same digits as sums that are made anew", () => {
  fc.assert(
    fc.property(
      fc.array(drawn, { minLength: 4, maxLength: 30 }),
      fc.array(fc.tuple(fc.nat(29), fc.nat(30)), { minLength: 2, maxLength: 6 }),
      (all, looks) => {
        const sightings = all.map(
          ({ isNew, month, months, swap, count }, at): ChangeoverSighting => ({
            id: `${at}`,
            isNew,
            built: { from: month, to: month + months },
            swap,
            misread: 0.02,
            isSought: false,
            count,
          }),
        );
        const memory: LikelihoodMemory = new Map();
        for (const [from, size] of looks) {
          const seen = sightings.slice(from % 4, from + size);
          expect(briefChangeover(setting, seen, memory)).toEqual(briefChangeover(setting, seen));
        }
      },
    ),
    { seed: 1736, numRuns: 40 },
  );
});
