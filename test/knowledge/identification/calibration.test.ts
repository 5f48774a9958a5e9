// Owners drawn from the model itself: what is called 80 % must come true in 80 % of cases. This tests the arithmetic,
// not the world (identification method, section 9: ECE .005 by variant and .009 by class for the well-specified rows).
import { describe, expect, test } from "vitest";
import { yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { classesOf } from "../../../knowledge/identification/classes.ts";
import type { CompiledPart } from "../../../knowledge/identification/compiled-part.ts";
import { misreadProbability } from "../../../knowledge/identification/contradictions.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { randomHandbook } from "../../support/random-handbooks.ts";
import { type Chance, chanceFrom } from "../../support/random-tables.ts";
import { compiledFrom, sees } from "../../support/worked-examples.ts";

const car = { built: yearInterval(1979) };

function draw(chance: Chance, weights: ArrayLike<number>): number {
  let left = chance();
  for (let index = 0; index < weights.length - 1; index += 1) {
    left -= weights[index] ?? 0;
    if (left < 0) return index;
  }
  return weights.length - 1;
}

interface Look {
  readonly report: Report;
  readonly isMisread: boolean;
}

/** What an owner of a part of hypothesis h reports of every state feature: true states, kin or not, then misread. */
function ownerOf(compiled: CompiledPart, h: number, chance: Chance): readonly Look[] {
  const variant = compiled.space.variants[h] ?? -1;
  return [...compiled.states].map(([feature, table]): Look => {
    const { states, chances } = table.channel;
    const isKin = h >= compiled.space.inHandbook;
    const isAlike = variant >= 0 && (!isKin || chance() < 0.6);
    const start = (table.rowOf[variant] ?? 0) * states.length;
    const shares = isAlike ? table.rows.subarray(start, start + states.length) : table.flat;
    const is = draw(chance, shares);
    const said = draw(chance, chances.subarray(is * states.length, (is + 1) * states.length));
    return { report: sees(feature, states[said] ?? ""), isMisread: said !== is };
  });
}

interface Tally {
  readonly said: number;
  readonly right: number;
  readonly expectedCalibrationError: number;
}

function tally(cases: readonly { readonly said: number; readonly isRight: boolean }[]): Tally {
  const bins = new Float64Array(10);
  for (const { said, isRight } of cases) {
    const bin = Math.min(9, Math.floor(said * 10));
    bins[bin] = (bins[bin] ?? 0) + said - Number(isRight);
  }
  const mean = (of: (one: (typeof cases)[number]) => number): number =>
    cases.reduce((sum, one) => sum + of(one), 0) / cases.length;
  return {
    said: mean(({ said }) => said),
    right: mean(({ isRight }) => Number(isRight)),
    expectedCalibrationError: bins.reduce((sum, gap) => sum + Math.abs(gap), 0) / cases.length,
  };
}

describe.each(["which-variant", "right-for-car", "genuine"] as const)("%s", (goal) => {
  test("is right as often as it says, over 4000 owners of 40 random handbooks", () => {
    const cases = Array.from({ length: 40 }, (_, index) => {
      const chance = chanceFrom(900 + index);
      const compiled = compiledFrom(randomHandbook(chance, false).handbook);
      const ground = carGround(compiled, car);
      const classes = classesOf(compiled, ground, goal);
      return Array.from({ length: 100 }, () => {
        const h = draw(chance, ground.prior);
        const reports = ownerOf(compiled, h, chance).map(({ report }) => report);
        const [first] = identify(compiled, { car, goal, reports }).classes;
        const truth = classes.names[classes.of[h] ?? -1];
        return { said: first?.probability ?? 0, isRight: first?.class === truth };
      });
    }).flat();
    const { said, right, expectedCalibrationError } = tally(cases);
    // Four standard errors of a share near .75 over 4000 owners are .027.
    expect(Math.abs(said - right)).toBeLessThan(0.027);
    expect(expectedCalibrationError).toBeLessThan(0.04);
  });
});

test("a look is misread as often as it is said to be, over all looks and over the ones most in doubt", () => {
  const looks = Array.from({ length: 40 }, (_, index) => {
    const chance = chanceFrom(1700 + index);
    const compiled = compiledFrom(randomHandbook(chance, false).handbook);
    const { prior } = carGround(compiled, car);
    return Array.from({ length: 100 }, () => {
      const owner = ownerOf(compiled, draw(chance, prior), chance);
      const belief = beliefOf(
        compiled,
        car,
        owner.map(({ report }) => report),
      );
      return belief.facts.map((fact) => {
        const told = owner.find(({ report }) => report.feature === fact.feature);
        return { said: misreadProbability(belief, fact), isRight: told?.isMisread === true };
      });
    }).flat();
  }).flat();
  const all = tally(looks);
  // Four standard errors of a share near .1 over 15000 looks are .010.
  expect(Math.abs(all.said - all.right)).toBeLessThan(0.01);
  const doubtful = tally(looks.filter(({ said }) => said > 0.7));
  expect(doubtful.right).toBeGreaterThan(0.6);
});
