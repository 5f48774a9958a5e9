// Which facts are said not to go with the rest, and with which one: the method's definitions, worked out over all hypotheses.
import { describe, expect, test } from "vitest";
import { yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { type Belief, beliefOf } from "../../../knowledge/identification/belief.ts";
import { contradictionsOf, misreadProbability } from "../../../knowledge/identification/contradictions.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom, measures, report, sees } from "../../support/worked-examples.ts";

const compiled = compiledExample();
const settled = 1;

/** P(reports) up to a common factor, over the hypotheses of the handbook alone. */
function chanceOf(car: CarDescription, reports: readonly Report[]): number {
  const { joint } = beliefOf(compiled, car, reports);
  return joint.subarray(0, compiled.space.inHandbook).reduce((sum, log) => sum + Math.exp(log), 0);
}

/** The chance that the feature's true state is another than the one reported: hypothesis by hypothesis, state by state. */
function misread({ compiled: of, probabilities }: Belief, feature: string, said: string): number {
  const table = of.states.get(feature);
  if (!table) return 0;
  const { states, chances } = table.channel;
  const [width, column] = [states.length, states.indexOf(said)];
  return probabilities.reduce((sum, probability, h) => {
    const one = of.space.variants[h] ?? -1;
    const likeness = one < 0 ? 0 : h < of.space.inHandbook ? 1 : 0.6;
    const start = (table.rowOf[one] ?? 0) * width;
    const ways = states.map(
      (_, s) =>
        (likeness * (table.rows[start + s] ?? 0) + (1 - likeness) * (table.flat[s] ?? 0)) *
        (chances[s * width + column] ?? 0),
    );
    const whole = ways.reduce((all, way) => all + way, 0);
    return sum + (probability * (whole - (ways[column] ?? 0))) / whole;
  }, 0);
}

interface Told {
  readonly feature: string;
  readonly said: string;
  readonly report: Report;
}

function* everyCase(): Generator<{ readonly car: CarDescription; readonly told: readonly Told[] }> {
  const state = (feature: string, said: string): Told => ({ feature, said, report: sees(feature, said) });
  const cars: readonly CarDescription[] = [{}, { built: yearInterval(1978) }, { built: yearInterval(1981) }];
  for (const car of cars)
    for (const fixing of ["two", "three"])
      for (const mark of ["present", "absent"])
        for (const inside of ["rough", "smooth", "painted"])
          for (const width of [412, 417, 421, 440])
            yield {
              car,
              told: [
                state("fixing", fixing),
                state("mark", mark),
                state("inside", inside),
                { feature: "width", said: "", report: measures("width", width) },
              ],
            };
}

/** What section 7 of the method flags of facts of which none shares a group. */
function byDefinition(car: CarDescription, told: readonly Told[]) {
  const reports = told.map(({ report }) => report);
  const belief = beliefOf(compiled, car, reports);
  const found = told.map(({ feature, said, report }) => {
    const others = told.filter((other) => other.feature !== feature);
    const otherReports = others.map((other) => other.report);
    const misreadNow = misread(belief, feature, said);
    const left = others.map((other) => {
      const without = reports.filter((one) => one !== other.report);
      return { other: other.feature, misread: misread(beliefOf(compiled, car, without), feature, said) };
    });
    const least = left.reduce((best, one) => (one.misread < best.misread ? one : best));
    const alone = chanceOf(car, [report]) / chanceOf(car, []);
    const given = chanceOf(car, reports) / chanceOf(car, otherReports);
    return {
      feature,
      against: misreadNow - least.misread >= 0.2 ? least.other : null,
      misread: misreadNow,
      bans: Math.log10(alone / given),
    };
  });
  return found
    .filter((one) => one.misread > 0.7 || one.bans > 0.7)
    .sort((one, other) => other.misread - one.misread);
}

describe("facts that do not go with the rest", () => {
  test("are those probably misread or ten times .5 likelier alone than beside the others, the most doubtful first, against the fact that makes them so", () => {
    let alarms = 0;
    let blamed = 0;
    for (const { car, told } of everyCase()) {
      const belief = beliefOf(
        compiled,
        car,
        told.map(({ report }) => report),
      );
      const found = contradictionsOf(belief, settled);
      const expected = byDefinition(car, told);
      expect(found.map(({ feature, against }) => [feature, against])).toEqual(
        expected.map(({ feature, against }) => [feature, against]),
      );
      found.forEach((one, index) => {
        expect(one.isNeverTogether).toBe(false);
        expect(one.misreadProbability).toBeCloseTo(expected[index]?.misread ?? Number.NaN, 10);
        expect(one.conflictBans).toBeCloseTo(expected[index]?.bans ?? Number.NaN, 9);
      });
      alarms += found.length;
      blamed += found.filter(({ against }) => against !== null).length;
    }
    expect(alarms).toBeGreaterThan(30);
    expect(blamed).toBeGreaterThan(10);
    expect(blamed).toBeLessThan(alarms);
  });
  test("are no states misread that were only weighed against each other: nobody named one", () => {
    const weighed = report("inside", { kind: "weighed-states", weights: { rough: 0.9, smooth: 0.2 } });
    const belief = beliefOf(compiled, {}, [weighed, sees("inside", "painted", { by: "friend" })]);
    const alone = beliefOf(compiled, {}, [weighed]);
    const chances = [alone, belief].map((one) => one.facts[0] && misreadProbability(one, one.facts[0]));
    expect(chances[0]).toBe(0);
    expect(chances[1]).toBeGreaterThan(0.5);
  });
  test("are no sizes misread: whether a size was taken wrongly is asked elsewhere", () => {
    const belief = beliefOf(compiled, {}, [measures("width", 440), sees("fixing", "two")]);
    const [fixing, width] = belief.facts;
    expect(width && misreadProbability(belief, width)).toBe(0);
    expect(fixing && misreadProbability(belief, fixing)).toBeCloseTo(misread(belief, "fixing", "two"), 12);
  });
});

describe("a pair that no kind shows together", () => {
  const kind = (id: string, housing: string, groove: string) =>
    variant(id, {
      origin: "service",
      sold: [{ from: "1977", to: "1990" }],
      tells: { housing: { [housing]: "always" }, groove: { [groove]: "nearly always" } },
    });
  const book = compiledFrom(
    smallHandbook({
      features: [stateFeature("housing", ["cast", "moulded"]), stateFeature("groove", ["square", "round"])],
      variants: [kind("early", "cast", "square"), kind("late", "moulded", "round")],
    }),
  );
  const belief = beliefOf(book, {}, [sees("housing", "moulded"), sees("groove", "square")]);
  test("is named both ways while no kind stands at two thirds, and is settled by the other facts from there on", () => {
    const pair = [
      ["groove", "housing"],
      ["housing", "groove"],
    ];
    for (const open of [0, 0.5, 0.6599]) {
      const found = contradictionsOf(belief, open);
      expect(found.map(({ feature, against }) => [feature, against]).sort()).toEqual(pair);
      expect(found.every(({ isNeverTogether }) => isNeverTogether)).toBe(true);
      const [first, second] = found.map(({ misreadProbability: chance }) => chance);
      expect(first ?? 0).toBeGreaterThanOrEqual(second ?? 1);
    }
    for (const sure of [0.66, 0.9])
      expect(contradictionsOf(belief, sure).filter((one) => one.isNeverTogether)).toEqual([]);
  });
});
