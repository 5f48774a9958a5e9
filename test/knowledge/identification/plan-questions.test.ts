// The questions that may be asked now: their tables agree with what the same answers would weigh afterwards.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monthInterval, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { CarDescription } from "../../../knowledge/evidence/car-description.ts";
import { type Goal, goals, lambdaOfGoal, notInHandbook } from "../../../knowledge/evidence/goal.ts";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import type { CompiledPart } from "../../../knowledge/identification/compiled-part.ts";
import { factsOf } from "../../../knowledge/identification/facts.ts";
import { modelTables } from "../../../knowledge/identification/model-tables.ts";
import { planQuestions } from "../../../knowledge/identification/plan-questions.ts";
import { posteriorFromTables } from "../../../knowledge/identification/posterior.ts";
import type { PlannedQuestions } from "../../../knowledge/identification/question-plan.ts";
import { nextQuestion } from "../../../knowledge/questions/next-question.ts";
import { randomHandbook, randomReports } from "../../support/random-handbooks.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import {
  dateFeature,
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
} from "../../support/small-handbook.ts";
import {
  compiledExample,
  compiledFrom,
  measures,
  reads,
  report,
  sees,
} from "../../support/worked-examples.ts";

const compiled = compiledExample();
const built = { built: yearInterval(1978), grade: "history-unknown" } as const;

function plan(reports: readonly Report[] = [], car: CarDescription = built, goal: Goal = "which-variant") {
  return planQuestions(compiled, { car, goal, reports });
}

function questionIds({ table }: PlannedQuestions): readonly string[] {
  return table.questions.map(({ id }) => id);
}

/** Largest difference over the table's hypotheses between Bayes' rule on the table and the identification afterwards. */
function worstDifference(
  of: CompiledPart,
  car: CarDescription,
  reports: readonly Report[],
  feature: string,
): number {
  const { table, plans } = planQuestions(of, { car, goal: "which-variant", reports });
  const question = table.questions.find(({ id }) => id === feature);
  const asked = plans.get(feature);
  if (!question || !asked || asked.kind === "car") return Number.NaN;
  const prior = table.hypotheses.map((hypothesis) => hypothesis.prior);
  const differences = asked.answers.flatMap(({ id, value }) => {
    const fromTable = posteriorFromTables(prior, [[question, id]]);
    const afterwards = beliefOf(of, car, [...reports, report(feature, value)]);
    return table.hypotheses.map((hypothesis, row) => {
      const h = of.space.ids.indexOf(hypothesis.id);
      return Math.abs((fromTable[row] ?? Number.NaN) - (afterwards.probabilities[h] ?? Number.NaN));
    });
  });
  return Math.max(...differences);
}

describe("a question's table", () => {
  test("gives the posterior that the same answer gives afterwards, on random handbooks with and without a cause", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (number) => {
        const chance = chanceFrom(number);
        const book = randomHandbook(chance, number % 2 === 0);
        const of = compiledFrom(book.handbook);
        const reports = randomReports(chance, book, 1).slice(0, 2);
        for (const id of questionIds(planQuestions(of, { car: built, goal: "which-variant", reports }))) {
          expect(worstDifference(of, built, reports, id)).toBeLessThan(1e-9);
        }
      }),
      { seed: 11, numRuns: 40 },
    );
  });
  test("does so for a feature of a group when it is the first of it to be asked", () => {
    expect(worstDifference(compiled, built, [], "inside")).toBeLessThan(1e-9);
  });
  test("does so nearly for measurements and date marks", () => {
    expect(worstDifference(compiled, built, [], "width")).toBeLessThan(2e-3);
    expect(worstDifference(compiled, built, [sees("mark", "absent")], "cast")).toBeLessThan(2e-2);
  });
  test("has rows that sum to one, for every goal and car", () => {
    for (const goal of goals) {
      for (const car of [{}, built, { isLoosePart: true }]) {
        const { table } = plan([sees("edge", "round"), measures("width", 419)], car, goal);
        for (const { likelihood, answers } of table.questions) {
          expect(likelihood.length).toBe(table.hypotheses.length * answers.length);
          for (let start = 0; start < likelihood.length; start += answers.length) {
            const row = likelihood.subarray(start, start + answers.length);
            expect(row.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
          }
        }
        expect(table.hypotheses.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 9);
        expect(table.lambda).toBe(lambdaOfGoal[goal]);
      }
    }
  });
  test("of a grouped feature is tempered once another of the group was told", () => {
    const column = (reports: readonly Report[]): readonly number[] => {
      const { table } = plan(reports);
      const edge = table.questions.find(({ id }) => id === "edge");
      return [...(edge?.likelihood.subarray(0, 2) ?? [])];
    };
    const [square = 0] = column([]);
    const [tempered = 0] = column([sees("inside", "rough")]);
    const power = 0.625;
    expect(tempered).toBeCloseTo(square ** power / (square ** power + (1 - square) ** power), 10);
  });
});

describe("the questions offered", () => {
  test("are every feature not yet told, with its effort and its share of people who cannot tell", () => {
    const planned = plan();
    expect(questionIds(planned)).toEqual(["fixing", "mark", "inside", "edge", "width", "cast"]);
    expect(planned.table.questions[0]).toMatchObject({ cost: 1, cannotTell: 0.1, answers: ["two", "three"] });
  });
  test("leave out what was told, what nobody can tell, and what was put before", () => {
    const planned = planQuestions(compiled, {
      car: built,
      goal: "which-variant",
      reports: [sees("fixing", "two"), report("mark", { kind: "cannot-tell" })],
      excluded: new Set(["edge"]),
    });
    expect(questionIds(planned)).toEqual(["inside", "width", "cast"]);
  });
  test("keep what was only heard from the seller", () => {
    expect(questionIds(plan([sees("fixing", "two", { certainty: 0 })]))).toContain("fixing");
  });
  test("are all of the car when the goal is what it should have", () => {
    expect(questionIds(plan([], {}, "what-should-it-have"))).toEqual(["car.built"]);
    expect(questionIds(plan([], built, "what-should-it-have"))).toEqual([]);
  });
  test("leave out a feature on which the handbook is silent", () => {
    const silent = compiledFrom(
      smallHandbook({
        features: [stateFeature("paint", ["red", "grey"]), stateFeature("fixing", ["two", "three"])],
        variants: [
          variant("a", { origin: "production", tells: { fixing: { two: "always" } } }),
          variant("b", { origin: "production", tells: { fixing: { three: "always" } } }),
        ],
      }),
    );
    expect(questionIds(planQuestions(silent, { car: built, goal: "which-variant", reports: [] }))).toEqual([
      "fixing",
    ]);
  });
  test("turn each answer into a report that counts as evidence", () => {
    for (const asked of plan([], {}).plans.values()) {
      if (asked.kind === "car") continue;
      for (const { value } of asked.answers) {
        expect(factsOf(compiled, [report(asked.feature, value)])).toHaveLength(1);
      }
    }
  });
  test("can be searched by the question policy", () => {
    const { question } = nextQuestion(plan([], {}).table);
    expect(questionIds(plan([], {}))).toContain(question);
  });
});

describe("a question with a condition", () => {
  const conditional = compiledFrom(
    smallHandbook({
      features: [
        stateFeature("bulb", ["round", "square"], { none: "no bulb" }),
        stateFeature("glass", ["clear", "amber"], { when: { bulb: ["round"] } }),
      ],
      variants: [
        variant("a", {
          origin: "production",
          tells: { bulb: { round: "always" }, glass: { clear: "always" } },
        }),
        variant("b", {
          origin: "production",
          tells: { bulb: { square: "always" }, glass: { amber: "always" } },
        }),
        variant("c", { origin: "reproduction", tells: { bulb: { "not-there": "always" } } }),
      ],
    }),
  );
  const ids = (reports: readonly Report[]) =>
    questionIds(planQuestions(conditional, { car: { isLoosePart: true }, goal: "which-variant", reports }));
  test("is offered while the condition may hold", () => {
    expect(ids([])).toEqual(["bulb", "glass"]);
    expect(ids([sees("bulb", "round")])).toEqual(["glass"]);
  });
  test("is not offered once it cannot hold any more", () => {
    expect(ids([sees("bulb", "not-there"), sees("bulb", "not-there", { by: "friend" })])).toEqual([]);
  });
  test("offers that there is none, in the handbook's words", () => {
    const { plans } = planQuestions(conditional, { car: built, goal: "which-variant", reports: [] });
    expect(plans.get("bulb")?.answers.at(-1)).toMatchObject({ id: "not-there", label: "no bulb" });
    expect(plans.get("glass")?.answers.map(({ id }) => id)).toEqual(["clear", "amber"]);
  });
});

describe("a measurement as a question", () => {
  test("is cut between the variants' means at round numbers, and labelled in words", () => {
    const asked = plan().plans.get("width");
    expect(asked?.answers.map(({ label }) => label)).toEqual([
      "under 415 mm",
      "415 to 419 mm",
      "419 mm or more",
    ]);
  });
  test("of many variants offers at most eight answers", () => {
    const many = compiledFrom(
      smallHandbook({
        features: [measurementFeature("height")],
        variants: Array.from({ length: 30 }, (_, index) =>
          variant(`v${index}`, {
            origin: "production",
            tells: { height: { mean: 100 + 7 * index, spread: 1 } },
          }),
        ),
      }),
    );
    const { plans } = planQuestions(many, { car: built, goal: "which-variant", reports: [] });
    expect(plans.get("height")?.answers).toHaveLength(8);
  });
  test("of variants of one size is no question", () => {
    const alike = compiledFrom(
      smallHandbook({
        features: [measurementFeature("height")],
        variants: ["a", "b"].map((id) =>
          variant(id, { origin: "production", tells: { height: { mean: 100, spread: 1 } } }),
        ),
      }),
    );
    expect(questionIds(planQuestions(alike, { car: built, goal: "which-variant", reports: [] }))).toEqual([]);
  });
});

describe("a date mark as a question", () => {
  test("is cut by year over a production of five years, with what came before and after", () => {
    const labels = plan()
      .plans.get("cast")
      ?.answers.map(({ label }) => label);
    expect(labels).toEqual([
      "before 1977",
      "1977",
      "1978",
      "1979",
      "1980",
      "1981",
      "1982 to 1995",
      "from 1996",
    ]);
  });
  test("expects a mark just before the build date on the part the car was built with", () => {
    const { table } = plan();
    const cast = table.questions.find(({ id }) => id === "cast");
    const works = table.hypotheses.findIndex(({ id }) => id === "a:works");
    const width = cast?.answers.length ?? 0;
    const row = [...(cast?.likelihood.subarray(works * width, (works + 1) * width) ?? [])];
    expect(row.indexOf(Math.max(...row))).toBe(2);
  });
  test("may be not there", () => {
    const lacking = compiledFrom(
      smallHandbook({
        features: [dateFeature("label", { none: "no label" })],
        variants: [
          variant("a", { origin: "production" }),
          variant("copy", { origin: "reproduction", tells: { label: { "not-there": "always" } } }),
        ],
      }),
    );
    const { table, plans } = planQuestions(lacking, { car: built, goal: "which-variant", reports: [] });
    expect(plans.get("label")?.answers.at(-1)).toMatchObject({ id: "not-there", label: "no label" });
    const width = table.questions[0]?.answers.length ?? 0;
    const copy = table.hypotheses.findIndex(({ id }) => id === "copy:reproduction");
    expect(table.questions[0]?.likelihood[copy * width + width - 1]).toBeCloseTo(0.97, 10);
    expect(worstDifference(lacking, built, [], "label")).toBeLessThan(2e-2);
  });
});

describe("a question about the car", () => {
  const trims = compiledFrom(
    smallHandbook({
      features: [stateFeature("fixing", ["two", "three"])],
      variants: [
        variant("plain", {
          origin: "production",
          fitted: [{ from: "1977-01", to: "1981-12", trims: ["base"] }],
          tells: { fixing: { two: "often" } },
        }),
        variant("bright", {
          origin: "production",
          fitted: [{ from: "1977-01", to: "1981-12", trims: ["s"] }],
          tells: { fixing: { three: "often" } },
        }),
      ],
      cars: {
        trims: ["base", "s"].map((id) => ({
          id,
          name: `Shrike ${id}`,
          also: [],
          from: "1977-01",
          to: "1981-12",
          models: [],
        })),
      },
    }),
  );
  test("asks the build date by year of production, and each answer is merged into the car", () => {
    const asked = plan([], {}).plans.get("car.built");
    expect(asked?.answers.map(({ id }) => id)).toEqual(["1977", "1978", "1979", "1980", "1981"]);
    expect(asked?.answers[1]).toMatchObject({ car: { built: yearInterval(1978) } });
  });
  test("asks only for the years that are still open", () => {
    const between = { built: { from: yearInterval(1978).from, to: yearInterval(1979).to } };
    expect(
      plan([], between)
        .plans.get("car.built")
        ?.answers.map(({ id }) => id),
    ).toEqual(["1978", "1979"]);
    expect(plan([], { built: monthInterval(1978, 3) }).plans.has("car.built")).toBe(false);
  });
  test("turns the prior round by Bayes' rule: its table gives the prior of the year that is answered", () => {
    const { table } = plan([], {});
    const question = table.questions.find(({ id }) => id === "car.built");
    if (!question) throw new Error("the build date is open");
    const prior = table.hypotheses.map((hypothesis) => hypothesis.prior);
    const fromTable = posteriorFromTables(prior, [[question, "1981"]]);
    const works = table.hypotheses.findIndex(({ id }) => id === "b:works");
    const afterwards = beliefOf(compiled, { built: yearInterval(1981) }, []);
    const h = compiled.space.ids.indexOf("b:works");
    expect(fromTable[works]).toBeCloseTo(afterwards.probabilities[h] ?? Number.NaN, 2);
  });
  test("is not asked of a loose part", () => {
    expect(questionIds(plan([], { isLoosePart: true }))).not.toContain("car.built");
  });
  test("asks the trim where variants depend on it, and the trim settles it", () => {
    const asked = planQuestions(trims, { car: built, goal: "what-should-it-have", reports: [] });
    expect(questionIds(asked)).toEqual(["car.trim"]);
    expect(asked.plans.get("car.trim")?.answers.map(({ label }) => label)).toEqual([
      "Shrike base",
      "Shrike s",
    ]);
    expect(nextQuestion(asked.table).question).toBe("car.trim");
    const known = planQuestions(trims, {
      car: { ...built, trim: "s" },
      goal: "what-should-it-have",
      reports: [],
    });
    expect(questionIds(known)).toEqual([]);
  });
  test("offers no trim that was made at another time, a quarter of a year aside, and asks for none where one is left", () => {
    const { handbook } = trims;
    const dated = (from: string) =>
      compiledFrom({
        ...handbook,
        cars: {
          ...handbook.cars,
          trims: handbook.cars.trims.map((trim) => (trim.id === "s" ? { ...trim, from } : trim)),
        },
      });
    const asked = (from: string) =>
      planQuestions(dated(from), { car: built, goal: "what-should-it-have", reports: [] }).plans.get(
        "car.trim",
      );
    const months = built.built.to - 12 * 1900;
    const monthAfter = (more: number) => {
      const month = months + more;
      return `${1900 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}`;
    };
    expect(asked(monthAfter(2))?.answers.map(({ id }) => id)).toEqual(["base", "s"]);
    expect(asked(monthAfter(3))).toBeUndefined();
  });
  test("weighs the marks that were read: a mark of 1980 leaves no doubt that the car is no earlier", () => {
    const { table } = plan([reads("cast", 12 * 1980 + 5, 12 * 1980 + 6)], {});
    const question = table.questions.find(({ id }) => id === "car.built");
    const works = table.hypotheses.findIndex(({ id }) => id === "b:works");
    const row = question?.likelihood.subarray(works * 5, works * 5 + 5) ?? new Float64Array(5);
    expect((row[3] ?? 0) + (row[4] ?? 0)).toBeGreaterThan(0.95);
  });
});

describe("a large part kind", () => {
  const features = Array.from({ length: 60 }, (_, index) =>
    stateFeature(`f${index}`, ["p", "q", "r"], { effort: 1 + (index % 8) }),
  );
  const chance = chanceFrom(5);
  const variants = Array.from({ length: 1500 }, (_, index) =>
    variant(`v${index}`, {
      origin: index % 5 === 4 ? "reproduction" : "production",
      fitted: index % 5 === 4 ? [] : [{ from: "1977-01", to: "1981-12" }],
      tells: Object.fromEntries(
        features.map(({ id }) => [
          id,
          { [["p", "q", "r"][Math.floor(chance() * 3)] ?? "p"]: "nearly always" },
        ]),
      ),
    }),
  );
  const large = compiledFrom(smallHandbook({ features, variants }));
  test("merges the ways of a variant and all kins, and writes out the promising questions alone", () => {
    const { table } = planQuestions(large, { car: built, goal: "which-variant", reports: [] });
    expect(table.hypotheses).toHaveLength(1501);
    expect(table.hypotheses.filter(({ class: named }) => named === notInHandbook)).toHaveLength(1);
    const ids = table.hypotheses.map(({ id }) => id);
    expect(ids.toSorted()).toEqual([...variants.map(({ id }) => id), notInHandbook].toSorted());
    const right = planQuestions(large, { car: built, goal: "right-for-car", reports: [] }).table;
    expect(right.hypotheses.filter(({ id }) => id.startsWith("v0:")).map(({ id }) => id)).toEqual([
      "v0:as-built",
      "v0:other-year-or-model",
    ]);
    expect(table.questions.length).toBeLessThan(30);
    const whole = planQuestions(large, { car: built, goal: "which-variant", reports: [], isWhole: true });
    expect(whole.table.questions).toHaveLength(60);
    expect(modelTables(large, built, "which-variant").questions).toHaveLength(60);
  });
  test("always has its date marks among the questions, for what they tell hangs on how the part came to the car", () => {
    const marked = compiledFrom(smallHandbook({ features: [...features, dateFeature("cast")], variants }));
    const { table } = planQuestions(marked, { car: built, goal: "which-variant", reports: [] });
    expect(table.questions.length).toBeLessThan(30);
    expect(table.questions.map(({ id }) => id)).toContain("cast");
  });
  test("keeps the question that tells most for its price, for few classes and for many", () => {
    for (const goal of ["which-variant", "right-for-car"] as const) {
      const whole = planQuestions(large, { car: built, goal, reports: [], isWhole: true }).table;
      const few = planQuestions(large, { car: built, goal, reports: [] }).table;
      expect(few.questions.map(({ id }) => id)).toContain(
        nextQuestion(whole).question ?? few.questions[0]?.id,
      );
    }
  });
  test("has rows that sum to one", () => {
    const { table } = planQuestions(large, { car: built, goal: "right-for-car", reports: [sees("f3", "p")] });
    for (const { likelihood, answers } of table.questions) {
      const total = likelihood.reduce((sum, value) => sum + value, 0);
      expect(total / (likelihood.length / answers.length)).toBeCloseTo(1, 9);
    }
  });
});

describe("the tables as plain JSON", () => {
  test("hold every hypothesis, one row of likelihood each, and survive being written and read", () => {
    const tables = modelTables(compiled, {}, "genuine");
    expect(tables.hypotheses.map(({ id }) => id)).toEqual(compiled.space.ids);
    for (const question of tables.questions) {
      expect(question.likelihood).toHaveLength(tables.hypotheses.length);
      for (const row of question.likelihood) expect(row).toHaveLength(question.answers.length);
    }
    expect(JSON.parse(JSON.stringify(tables))).toEqual(tables);
    expect(tables.lambda).toBe(180);
  });
});
