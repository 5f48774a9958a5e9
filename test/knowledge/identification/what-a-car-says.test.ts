// What one car alone says, kept while it is the same car; the classes of a goal on it; and questions about the car itself.
import { describe, expect, test } from "vitest";
import { monthInterval, monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import { goals, notInHandbook } from "../../../knowledge/evidence/goal.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { carQuestions, carRows } from "../../../knowledge/identification/car-questions.ts";
import {
  classesOf,
  heaviestFirst,
  overClasses,
  twoHeaviest,
} from "../../../knowledge/identification/classes.ts";
import { isFittedAtAll } from "../../../knowledge/identification/fitted-at-all.ts";
import { modelTables } from "../../../knowledge/identification/model-tables.ts";
import { mountingFits } from "../../../knowledge/identification/mounting-fit.ts";
import { planQuestions } from "../../../knowledge/identification/plan-questions.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom, reads, sees } from "../../support/worked-examples.ts";

const always = { origin: "production" as const, fitted: [{ from: "1977-01", to: "1981-12" }] };

describe("what a car alone says", () => {
  test("is worked out once for cars that are told alike, and anew for whatever tells two apart", () => {
    const compiled = compiledExample();
    const car: CarDescription = {
      model: "shrike",
      trim: "s",
      market: "home",
      grade: "one-owner",
      built: yearInterval(1978),
    };
    const ground = carGround(compiled, car);
    expect(carGround(compiled, { ...car })).toBe(ground);
    const others: readonly CarDescription[] = [
      { ...car, model: "drake" },
      { ...car, trim: "base" },
      { ...car, market: "america" },
      { ...car, grade: "history-unknown" },
      { ...car, built: { from: monthStart(1978, 2), to: monthStart(1979, 1) } },
      { ...car, built: { from: monthStart(1978, 1), to: monthStart(1979, 2) } },
      { ...car, isLoosePart: true },
    ];
    const all = [ground, ...others.map((other) => carGround(compiled, other))];
    expect(new Set(all).size).toBe(8);
    expect(carGround(compiled, car)).toBe(ground);
  });
  test("of a loose part is that of a replaced one on no car in particular, whatever else was told", () => {
    const compiled = compiledExample();
    const loose = carGround(compiled, { isLoosePart: true });
    expect(carGround(compiled, { isLoosePart: true, trim: "s", built: yearInterval(1978) })).toBe(loose);
    expect(loose.built).toEqual({ from: monthStart(1977, 1), to: monthStart(1982, 1) });
    const works = compiled.space.ways.reduce(
      (sum, way, h) => (way === "works" ? sum + (loose.prior[h] ?? 0) : sum),
      0,
    );
    expect(works).toBeCloseTo(0.97 * 0.02, 12);
    loose.logPrior.forEach((log, h) => {
      expect(log).toBe(Math.log(loose.prior[h] ?? Number.NaN));
    });
  });
  test("is kept of sixty-four cars, the one met first given up for the next", () => {
    const compiled = compiledExample();
    const month = (index: number): CarDescription => ({
      built: monthInterval(1977 + Math.floor(index / 12), 1 + (index % 12)),
    });
    const [first, second] = [carGround(compiled, month(0)), carGround(compiled, month(1))];
    for (let index = 2; index < 64; index += 1) carGround(compiled, month(index));
    expect(compiled.grounds.size).toBe(64);
    expect(carGround(compiled, month(0))).toBe(first);
    carGround(compiled, month(64));
    expect(compiled.grounds.size).toBe(64);
    expect(carGround(compiled, month(1))).toBe(second);
    expect(carGround(compiled, month(0))).not.toBe(first);
  });
});

describe("how well a part goes on a car", () => {
  const made = (id: string, mounting?: string) =>
    variant(id, { ...always, ...(mounting ? { mounting } : {}) });
  const { part } = compiledFrom(
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants: [made("two", "two"), made("three", "three"), made("four", "four"), made("any")],
      rest: {
        fits: [
          { part: "three", car: "two", fit: "with-work", how: "Two holes more." },
          { part: "two", car: "three", fit: "direct", how: "As it is." },
        ],
      },
    }),
  );
  test("is averaged over what the car may be drilled for: wholly, a fifth with work, one in fifty by no means known (our judgement, no source)", () => {
    const fits = (...asBuilt: readonly number[]) =>
      [...mountingFits(part, Float64Array.from(asBuilt))].map((fit) => Number(fit.toFixed(10)));
    expect(fits(1, 0, 0, 0)).toEqual([1, 0.2, 0.02, 1]);
    expect(fits(0, 1, 0, 0)).toEqual([1, 1, 0.02, 1]);
    expect(fits(0, 0, 1, 0)).toEqual([0.02, 0.02, 1, 1]);
    expect(fits(0, 0, 0, 1)).toEqual([1, 1, 1, 1]);
    expect(fits(0.3, 0.1, 0.1, 0)).toEqual([0.804, 0.324, 0.216, 1]);
    expect(fits(0, 0, 0, 0)).toEqual([1, 1, 1, 1]);
  });
});

describe("the classes of a goal", () => {
  const compiled = compiledExample();
  const ground = carGround(compiled, { built: yearInterval(1978) });
  const namesOf = Object.fromEntries(goals.map((goal) => [goal, classesOf(compiled, ground, goal).names]));
  test("are named once each, in the order of what may be true of the part", () => {
    expect(namesOf["which-variant"]).toEqual(["a", "b", "c", notInHandbook]);
    expect(namesOf["what-should-it-have"]).toEqual(namesOf["which-variant"]);
    expect(namesOf.genuine).toEqual(["genuine", "reproduction", notInHandbook]);
    expect(namesOf["right-for-car"]).toEqual([
      "as-built",
      "other-year-or-model",
      "right-kind-replaced",
      "reproduction",
      notInHandbook,
    ]);
  });
  test("are worked out once a car", () => {
    for (const goal of goals)
      expect(classesOf(compiled, ground, goal)).toBe(classesOf(compiled, ground, goal));
  });
  test("share out all there is: each weight falls to one class", () => {
    const classes = classesOf(compiled, ground, "genuine");
    const sums = overClasses(
      classes,
      Float64Array.from(classes.of, () => 1),
    );
    const counted = classes.names.map((_, index) => classes.of.filter((of) => of === index).length);
    expect([...sums]).toEqual(counted);
  });
  test("stand by weight, equal ones in the order they had", () => {
    const chance = chanceFrom(11);
    for (let size = 0; size < 40; size += 1) {
      const weights = Array.from({ length: size }, () => Math.floor(5 * chance()));
      const expected = [...weights.keys()].sort(
        (one, other) => (weights[other] ?? 0) - (weights[one] ?? 0) || one - other,
      );
      expect(heaviestFirst(weights)).toEqual(expected);
      expect(twoHeaviest(weights)).toEqual(expected.slice(0, 2));
    }
  });
});

describe("whether the works fitted any kind to such a car", () => {
  const span = (from: number, to: number) => ({ from, to, startDeviation: 2, endDeviation: 2 }) as never;
  const at = (times: readonly number[], spans: readonly never[]) =>
    isFittedAtAll(
      { times: Float64Array.from(times), weights: Float64Array.from(times, () => 1 / times.length) } as never,
      spans,
    );
  test("is so up to 1.64 deviations before its first period and after its last, where one in twenty has one", () => {
    // Φ(−1.6449) = .05 (normal distribution, any table).
    expect([at([100 - 3.28], [span(100, 200)]), at([100 - 3.3], [span(100, 200)])]).toEqual([true, false]);
    expect([at([200 + 3.28], [span(100, 200)]), at([200 + 3.3], [span(100, 200)])]).toEqual([true, false]);
    expect(at([150], [])).toBe(false);
  });
  test("goes by the best of the periods, and by the mean over the instants it can have been built", () => {
    // Φ(−1.75) = .0401: two such periods are no better than one.
    expect(at([100 - 3.5], [span(100, 200), span(100, 300)])).toBe(false);
    expect(at([100 - 3.5], [span(400, 500), span(99, 200)])).toBe(true);
    expect(at([0, 100 - 2.4], [span(100, 200)])).toBe(true);
    expect(at([0, 100 - 2.7], [span(100, 200)])).toBe(false);
    expect(at([0, 0, 150], [span(100, 200)])).toBe(true);
  });
});

describe("a question about the car", () => {
  const trims = ["base", "s"].map((id) => ({
    id,
    name: id,
    also: [],
    models: [],
    from: "1977-01",
    to: "1981-12",
  }));
  const compiled = compiledFrom(
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants: [
        variant("early", {
          ...always,
          sold: [{ from: "1977", to: "1978-06" }],
          fitted: [{ from: "1977-01", to: "1978-12" }],
        }),
        variant("late", { ...always, fitted: [{ from: "1979-01", to: "1981-12" }] }),
        variant("trimmed", { ...always, fitted: [{ from: "1977-01", to: "1981-12", trims: ["s"] }] }),
      ],
      cars: { trims, production: { "1979": 100, "1980": 300, "1981": 600 } },
    }),
  );
  const late = { from: monthStart(1979, 1), to: monthStart(1982, 1) };
  test("leaves what no answer allows at the answers' own shares: 1, 3 and 6 of ten cars", () => {
    const car = { built: late };
    const belief = beliefOf(compiled, car, []);
    const question = carQuestions(compiled, car, late).find(({ field }) => field === "built");
    if (!question) throw new Error("the year is open");
    const rows = carRows(belief, car, question);
    const start = compiled.space.ids.indexOf("early:service") * 3;
    expect(belief.ground.prior[start / 3]).toBe(0);
    [0.1, 0.3, 0.6].forEach((share, column) => {
      expect(rows[start + column]).toBeCloseTo(share, 10);
    });
    compiled.space.ids.forEach((_, h) => {
      expect(rows.subarray(3 * h, 3 * h + 3).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
    });
  });
  test("is weighed from the same rows until a mark is read, whatever else was told", () => {
    const marked = compiledExample();
    const whole = { from: monthStart(1977, 1), to: monthStart(1982, 1) };
    const [question] = carQuestions(marked, {}, whole);
    if (!question) throw new Error("the year is open");
    const rows = carRows(beliefOf(marked, {}, []), {}, question);
    expect(carRows(beliefOf(marked, {}, [sees("fixing", "two")]), {}, question)).toBe(rows);
    const read = beliefOf(marked, {}, [reads("cast", monthStart(1980, 1), monthStart(1980, 2))]);
    expect(carRows(read, {}, question)).not.toBe(rows);
    expect(carRows(beliefOf(marked, {}, []), {}, question)).toBe(rows);
  });
  test("names no trim that ended a quarter of a year before the car was built", () => {
    const { handbook } = compiled;
    const ended = (to: string) =>
      compiledFrom({
        ...handbook,
        cars: {
          ...handbook.cars,
          trims: ["base", "s", "early"].map((id) => ({
            id,
            name: id,
            also: [],
            models: [],
            from: "1977-01",
            to: id === "early" ? to : "1981-12",
          })),
        },
      });
    const named = (to: string) =>
      carQuestions(ended(to), {}, late)
        .find(({ field }) => field === "trim")
        ?.answers.map(({ id }) => id);
    expect(named("1978-10")).toEqual(["base", "s", "early"]);
    expect(named("1978-09")).toEqual(["base", "s"]);
  });
  test("about a trim takes all trims for as likely, and is none once the trim is known", () => {
    const asked = (car: CarDescription) => carQuestions(compiled, car, late).map(({ id }) => id);
    expect(asked({})).toEqual(["car.built", "car.trim"]);
    expect(asked({ trim: "s" })).toEqual(["car.built"]);
    const question = carQuestions(compiled, {}, late).find(({ field }) => field === "trim");
    if (!question) throw new Error("the trim is open");
    expect(question.answers).toEqual([
      { id: "base", label: "base", car: { trim: "base" } },
      { id: "s", label: "s", car: { trim: "s" } },
    ]);
    const rows = carRows(beliefOf(compiled, {}, []), {}, question);
    const start = compiled.space.ids.indexOf("trimmed:works") * 2;
    const [base, s] = ["base", "s"].map(
      (trim) => carGround(compiled, { trim }).prior[start / 2] ?? Number.NaN,
    ) as [number, number];
    expect(rows[start]).toBeCloseTo(base / (base + s), 12);
    expect(rows[start + 1]).toBeCloseTo(s / (base + s), 12);
  });
});

describe("the tables as plain JSON", () => {
  test("say of each question what it costs, how often it cannot be told, and the chance of each answer, row by row", () => {
    const compiled = compiledExample();
    const { table } = planQuestions(compiled, { car: {}, goal: "genuine", reports: [] });
    const plain = modelTables(compiled, {}, "genuine");
    expect(plain.hypotheses).toEqual(
      table.hypotheses.map(({ id, prior, class: named }) => ({ id, prior, class: named })),
    );
    expect(
      plain.questions.map(({ id, cost, cannotTell, answers }) => ({ id, cost, cannotTell, answers })),
    ).toEqual(
      table.questions.map(({ id, cost, cannotTell, answers }) => ({ id, cost, cannotTell, answers })),
    );
    plain.questions.forEach(({ likelihood }, index) => {
      expect(likelihood.flat()).toEqual([...(table.questions[index]?.likelihood ?? [])]);
    });
  });
});
