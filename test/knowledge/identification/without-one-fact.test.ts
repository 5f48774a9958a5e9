// The belief without one of its facts, as the weighing, the hinges and the quiet facts need it: what the others alone give.
import { describe, expect, test } from "vitest";
import { yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { type Belief, beliefOf, factAlone } from "../../../knowledge/identification/belief.ts";
import { type Classes, classesOf } from "../../../knowledge/identification/classes.ts";
import { duelOf, duelOfVariants } from "../../../knowledge/identification/duel.ts";
import { hingesOf } from "../../../knowledge/identification/hinges.ts";
import {
  asIfUntold,
  beliefUntold,
  beliefWithout,
  withoutFact,
} from "../../../knowledge/identification/without-fact.ts";
import { normaliseLogarithms } from "../../../knowledge/numbers/log-sum-exp.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom, measures, sees } from "../../support/worked-examples.ts";

const signs = ["lip", "rib", "boss", "paint", "slot", "hole"];
const always = { origin: "production" as const, fitted: [{ from: "1977-01", to: "1981-12" }] };
const kind = (id: string, state: string, how: string) =>
  variant(id, { ...always, tells: Object.fromEntries(signs.map((sign) => [sign, { [state]: how }])) });
// Three signs of one mould, two of one cause, and one by itself.
const book = compiledFrom(
  smallHandbook({
    features: signs.map((sign) => stateFeature(sign, ["sharp", "soft"], { misread: 0.05 })),
    variants: [
      kind("early", "sharp", "usually"),
      kind("late", "soft", "usually"),
      kind("last", "soft", "always"),
    ],
    rest: {
      groups: [{ id: "mould", coupling: "close", features: ["lip", "rib", "boss"], reason: "one mould" }],
      causes: [
        {
          id: "tool",
          name: "which tool",
          states: ["worn", "fresh"],
          variants: { early: { fresh: "usually" }, late: { worn: "usually" }, last: { worn: "always" } },
          features: {
            slot: { worn: { soft: "usually" }, fresh: { sharp: "usually" } },
            hole: { worn: { soft: "usually" }, fresh: { sharp: "usually" } },
          },
        },
      ],
    },
  }),
);
const car = { built: yearInterval(1979) };
const told: readonly Report[] = [
  sees("lip", "sharp"),
  sees("rib", "soft"),
  sees("boss", "sharp"),
  sees("paint", "soft"),
  sees("slot", "sharp"),
  sees("hole", "soft"),
];
const belief = beliefOf(book, car, told);
const without = (feature: string): Belief =>
  beliefOf(
    book,
    car,
    told.filter((report) => report.feature !== feature),
  );

function expectAlike(one: Float64Array, other: Float64Array): void {
  expect(one.length).toBe(other.length);
  one.forEach((value, h) => {
    expect(value).toBeCloseTo(other[h] ?? Number.NaN, 10);
  });
}

describe("a fact as if it had never been told", () => {
  test("leaves what the others alone give, whether it shares a mould or a cause with two of them or stands by itself", () => {
    expect(belief.facts).toHaveLength(signs.length);
    for (const fact of belief.facts) {
      const fresh = without(fact.feature);
      expectAlike(normaliseLogarithms(asIfUntold(belief, fact).joint), fresh.probabilities);
      const untold = beliefUntold(belief, fact);
      expectAlike(untold.probabilities, fresh.probabilities);
      expectAlike(untold.joint, fresh.joint);
      expect([...untold.answered].sort()).toEqual([...fresh.answered].sort());
      expect(untold.facts.map(({ feature }) => feature)).toEqual(fresh.facts.map(({ feature }) => feature));
      expect(untold.evidence.map(({ facts }) => facts)).toEqual(fresh.evidence.map(({ facts }) => facts));
    }
  });
  test("is weighed in such a way again and again: what is left can itself be left out", () => {
    const [lip, rib] = belief.facts;
    if (!lip || !rib) throw new Error("both were told");
    const neither = beliefUntold(beliefUntold(belief, lip), rib);
    const fresh = beliefOf(
      book,
      car,
      told.filter(({ feature }) => feature !== "lip" && feature !== "rib"),
    );
    expectAlike(neither.probabilities, fresh.probabilities);
  });
});

describe("a fact taken out with the others left as they were weighed", () => {
  test("gives its own weight back, so that all weights add up", () => {
    const paint = belief.facts.find(({ feature }) => feature === "paint");
    if (!paint) throw new Error("the paint was told");
    const { joint, greatest, weights } = withoutFact(belief, paint);
    expectAlike(joint, without("paint").joint);
    expect(greatest).toBe(Math.max(...joint));
    expectAlike(
      weights,
      joint.map((log) => Math.exp(log - greatest)),
    );
    expect(withoutFact(belief, paint)).toBe(withoutFact(belief, paint));
    const left = beliefWithout(belief, paint);
    expectAlike(left.probabilities, without("paint").probabilities);
    expect(left.facts.map(({ feature }) => feature)).toEqual(["lip", "rib", "boss", "slot", "hole"]);
    expect(left.joint).toBe(joint);
    expect(left.without.size).toBe(0);
  });
  test("of a mould keeps the tempering of three: lip, rib and boss each by 1 ÷ (1 + 2 · .6)", () => {
    const [lip] = belief.facts;
    if (!lip) throw new Error("the lip was told");
    const own =
      belief.evidence.find(({ facts }) => facts.includes(lip))?.logLikelihood ?? new Float64Array(0);
    const alone =
      beliefOf(book, car, [sees("lip", "sharp")]).evidence[0]?.logLikelihood ?? new Float64Array(0);
    expectAlike(
      own,
      alone.map((log) => log / 2.2),
    );
    expectAlike(
      withoutFact(belief, lip).joint,
      belief.joint.map((log, h) => log - (own[h] ?? Number.NaN)),
    );
  });
  test("weighs by itself what it would weigh had nothing else been told, though it shares a cause with another", () => {
    for (const fact of belief.facts.filter(({ feature }) => ["paint", "slot", "hole"].includes(feature))) {
      const only = told.filter(({ feature }) => feature === fact.feature);
      expectAlike(
        factAlone(belief, fact),
        beliefOf(book, car, only).evidence[0]?.logLikelihood ?? belief.joint,
      );
    }
  });
  test("that was never told changes nothing", () => {
    const stranger = { feature: "paint", reports: [sees("paint", "sharp")] };
    expectAlike(withoutFact(belief, stranger).joint, belief.joint);
  });
});

describe("the duel of the first class and its rival", () => {
  const classes = classesOf(book, belief.ground, "which-variant");
  const membersOf = (of: Classes, name: string): readonly number[] =>
    [...of.of.keys()].filter((h) => of.names[of.of[h] ?? -1] === name);
  const sumOf = (weights: Float64Array, members: readonly number[]): number =>
    members.reduce((sum, h) => sum + (weights[h] ?? Number.NaN), 0);
  test("is that of the two heaviest classes, and each fact weighs what it moves their odds by, in decimal bans", () => {
    const duel = duelOf(belief, classes);
    if (!duel) throw new Error("there are two classes");
    const heaviest = classes.names
      .map((name) => ({ name, sum: sumOf(belief.probabilities, membersOf(classes, name)) }))
      .sort((one, other) => other.sum - one.sum);
    expect([duel.first, duel.rival]).toEqual([heaviest[0]?.name, heaviest[1]?.name]);
    const [first, rival] = [membersOf(classes, duel.first), membersOf(classes, duel.rival)];
    const bans = (weights: Float64Array): number => Math.log10(sumOf(weights, first) / sumOf(weights, rival));
    expect(duel.priorBans).toBeCloseTo(bans(belief.ground.prior), 10);
    expect(duel.weights.map(({ feature }) => feature)).toEqual(signs);
    belief.facts.forEach((fact, index) => {
      const moved = bans(belief.probabilities) - bans(withoutFact(belief, fact).weights);
      expect(duel.weights[index]?.bans).toBeCloseTo(moved, 9);
    });
    expect(duelOfVariants(book, { car, reports: told })).toEqual(duel);
  });
  test("is still told of a rival whose weight is too small to be written as a number", () => {
    const [fact] = belief.facts;
    if (!fact) throw new Error("the lip was told");
    const [first, rival] = [classes.of[0] ?? 0, classes.names.length - 1];
    const joint = Float64Array.from(classes.of, (of) => (of === first ? -10 : of === rival ? -1000 : -5000));
    const flat = belief.joint.map(() => 0);
    const far: Belief = {
      ...belief,
      facts: [fact],
      joint,
      probabilities: Float64Array.from(classes.of, (of) => (of === first ? 1 : of === rival ? 0.1 : 0)),
      without: new Map([[fact, { joint, greatest: -10, weights: joint.map((log) => Math.exp(log + 10)) }]]),
    };
    expect(duelOf(far, classes)?.weights).toEqual([{ feature: "lip", bans: 0 }]);
    const near: Belief = {
      ...far,
      without: new Map([[fact, { joint: flat, greatest: 0, weights: flat.map(() => 1) }]]),
    };
    expect(duelOf(near, classes)?.weights[0]?.bans).toBeGreaterThan(400);
  });
  test("is none with a class that this car cannot have, and none of one class alone", () => {
    const sold = compiledFrom(
      smallHandbook({
        features: [stateFeature("edge", ["square", "round"])],
        variants: [
          variant("plain", { ...always, sold: [{ from: "1978", to: "1979" }] }),
          variant("bright", always),
        ],
      }),
    );
    const plain = beliefOf(sold, { built: yearInterval(1981) }, [sees("edge", "round")]);
    const { ids } = sold.space;
    const shut = ids.indexOf("plain:service");
    expect(plain.ground.prior[shut]).toBe(0);
    const apart = (h: number): Classes => ({
      names: ["rest", "alone"],
      of: Int32Array.from(ids, (_, index) => (index === h ? 1 : 0)),
    });
    expect(duelOf(plain, apart(shut))).toBeNull();
    expect(duelOf(plain, apart(ids.indexOf("plain:works")))).not.toBeNull();
    expect(duelOf(plain, { names: ["rest"], of: new Int32Array(ids.length) })).toBeNull();
  });
});

describe("what the answer hangs on", () => {
  test("is each fact without which the others alone put another class first", () => {
    const example = compiledExample();
    const reports = [
      sees("mark", "absent"),
      sees("inside", "smooth"),
      sees("edge", "round"),
      measures("width", 414),
    ];
    let hinges = 0;
    for (const year of [1978, 1979, 1980, 1981]) {
      const described = { built: yearInterval(year) };
      const now = beliefOf(example, described, reports);
      const classes = classesOf(example, now.ground, "which-variant");
      const first = (of: Belief): number => {
        const sums = classes.names.map((_, index) =>
          of.probabilities.reduce((sum, chance, h) => (classes.of[h] === index ? sum + chance : sum), 0),
        );
        return sums.indexOf(Math.max(...sums));
      };
      const expected = reports
        .filter(
          (report) =>
            first(
              beliefOf(
                example,
                described,
                reports.filter((one) => one !== report),
              ),
            ) !== first(now),
        )
        .map(({ feature }) => feature);
      expect(hingesOf(now, classes)).toEqual(expected);
      hinges += expected.length;
    }
    expect(hinges).toBeGreaterThan(0);
  });
});
