// What was counted before changes no digit of what is counted now: whatever came, was corrected and went in between.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monthInterval } from "../../../knowledge/calendar/interval.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import {
  changesSeen,
  countedChanges,
  countSightings,
  learntChanges,
  posteriorSeen,
} from "../../../knowledge/dating/counted-changes.ts";
import { type Sighting, sightingsOfChange } from "../../../knowledge/dating/sighting.ts";
import { partById } from "../../../knowledge/handbook/look-up.ts";
import { demoHandbook } from "../../support/demo-handbook.ts";
import { granted } from "../../support/granted.ts";

const handbook = demoHandbook();

function partOf(id: string) {
  const part = partById(handbook, id);
  if (part === undefined) throw new Error("the handbook has this part");
  return part;
}

/** One with the handbook's own dates for each trim, and one of which the sightings must tell. */
const parts = [partOf("rear-spoiler"), partOf("front-wing")];

const drawnSighting = (variants: readonly string[]) =>
  fc.record({
    variant: fc.constantFrom(...variants),
    month: fc.integer({ min: 0, max: 60 }),
    months: fc.constantFrom(1, 1, 1, 12),
    grade: fc.constantFrom("documented-from-new", "history-unknown"),
    misread: fc.constantFrom(0.02, 0.05),
    isSought: fc.boolean(),
    isRuledAsBuilt: fc.boolean(),
    trim: fc.constantFrom(undefined, "s", "standard"),
    market: fc.constantFrom(undefined, "home", "america", "elsewhere"),
    // Up to far more than are summed exactly.
    count: fc.constantFrom(1, 2, 7, 3000, 50_000_000),
  });

type Drawn = ReturnType<typeof drawnSighting> extends fc.Arbitrary<infer One> ? One : never;

function sightingOf(id: string, { month, months, trim, market, ...said }: Drawn): Sighting {
  const { from } = monthInterval(1978, 1);
  return {
    ...said,
    id,
    built: { from: from + month, to: from + month + months },
    ...(trim === undefined ? {} : { trim }),
    ...(market === undefined ? {} : { market }),
  };
}

/** Of a few ids: what each says from now on, or nothing any more; with 0 it is looked at then. */
const drawnSteps = (variants: readonly string[]) =>
  fc.array(fc.tuple(fc.nat(11), fc.option(drawnSighting(variants), { freq: 4 }), fc.nat(4)), {
    minLength: 6,
    maxLength: 30,
  });

describe.each(parts)("the changes of $id, counted sighting by sighting", (part) => {
  const variants = part.variants.map(({ id }) => id);

  test("are to the last digit what a fresh count gives, in any order", () => {
    fc.assert(
      fc.property(drawnSteps(variants), (steps) => {
        const counted = countedChanges(handbook, part);
        const now = new Map<string, Sighting>();
        for (const [number, drawn, unasked] of [...steps, [0, null, 0] as const]) {
          const id = `${number}`;
          if (drawn === null) now.delete(id);
          else now.set(id, sightingOf(id, drawn));
          if (unasked !== 0) continue;
          const fresh = countedChanges(handbook, part);
          countSightings(counted, now);
          countSightings(fresh, new Map([...now].reverse()));
          expect(learntChanges(counted, 2)).toEqual(learntChanges(fresh, 2));
          expect(changesSeen(counted, 0)).toEqual(changesSeen(fresh, 0));
        }
      }),
      { seed: 1736, numRuns: 10 },
    );
  }, 60_000);

  test("have the date and the shares that changeover gives, to the last digit", () => {
    fc.assert(
      fc.property(fc.array(drawnSighting(variants), { maxLength: 30 }), (drawn) => {
        const sightings = drawn.map((one, at) => sightingOf(`${at}`, one));
        const counted = countedChanges(handbook, part);
        countSightings(counted, new Map(sightings.map((one) => [one.id, one])));
        const seen = changesSeen(counted, 0);
        expect(seen).toHaveLength(counted.successions.length);
        counted.successions.forEach((of, at) => {
          const { old, new: fresh, setting } = of.succession;
          const whole = granted(changeover(setting, sightingsOfChange(sightings, [old], [fresh])));
          expect(whole).toMatchObject(seen[at]?.change ?? { none: true });
          expect(posteriorSeen(of)).toEqual(whole.posterior);
        });
      }),
      { seed: 1737, numRuns: 6 },
    );
  }, 60_000);
});
