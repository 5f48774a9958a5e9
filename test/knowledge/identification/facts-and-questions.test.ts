// What counts as a fact, which questions a part kind has, and what answers they offer.
import { describe, expect, test } from "vitest";
import { monthInterval, monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import type { MeasurementUnit, Report, ReportValue } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { carGround } from "../../../knowledge/identification/car-ground.ts";
import { carQuestions, carRows } from "../../../knowledge/identification/car-questions.ts";
import { heaviest, heaviestFirst, twoHeaviest } from "../../../knowledge/identification/classes.ts";
import { dateAnswersOf, dateRows } from "../../../knowledge/identification/date-answers.ts";
import { factsOf } from "../../../knowledge/identification/facts.ts";
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
const told = (...reports: readonly Report[]): readonly string[] =>
  factsOf(compiled, reports).map(({ feature }) => feature);

describe("a fact", () => {
  test("is the last word of each person on a feature, features in the handbook's order", () => {
    const facts = factsOf(compiled, [
      sees("edge", "round"),
      sees("fixing", "two"),
      sees("fixing", "three", { by: "friend" }),
      sees("fixing", "three"),
    ]);
    expect(
      facts.map(({ feature, reports }) => [feature, reports.map(({ by, value }) => [by, value])]),
    ).toEqual([
      [
        "fixing",
        [
          ["owner", { kind: "state", state: "three" }],
          ["friend", { kind: "state", state: "three" }],
        ],
      ],
      ["edge", [["owner", { kind: "state", state: "round" }]]],
    ]);
  });
  test("is taken back by a later word that is no evidence", () => {
    expect(told(sees("fixing", "two"), report("fixing", { kind: "cannot-tell" }))).toEqual([]);
  });
  test("is nothing that was heard only, nor said with a certainty that is none", () => {
    expect(
      [0, -0.1, 1.1, Number.NaN].flatMap((certainty) => told(sees("fixing", "two", { certainty }))),
    ).toEqual([]);
    expect(told(sees("fixing", "two", { certainty: 1 }), sees("edge", "round", { certainty: 0.01 }))).toEqual(
      ["fixing", "edge"],
    );
  });
  test("suits its feature: a state it has, a size above nothing, a date with some length", () => {
    const size = (rest: object): ReportValue => ({
      kind: "measurement",
      value: 400,
      halfWidth: 1,
      unit: "mm",
      ...rest,
    });
    const date = (from: number, to: number, weight: number): ReportValue => ({
      kind: "date",
      readings: [{ interval: { from, to }, weight }],
    });
    const unfit: readonly (readonly [string, ReportValue])[] = [
      ["fixing", { kind: "state", state: "four" }],
      ["fixing", { kind: "state", state: "not-there" }],
      ["width", { kind: "state", state: "not-there" }],
      ["width", { kind: "weighed-states", weights: { two: 1 } }],
      ["fixing", { kind: "weighed-states", weights: { four: 1, two: 0 } }],
      ["fixing", size({})],
      ["width", size({ value: 0 })],
      ["width", size({ value: -400 })],
      ["width", size({ halfWidth: -1 })],
      ["width", size({ unit: "kg" })],
      ["width", date(5, 6, 1)],
      ["cast", size({})],
      ["cast", date(6, 6, 1)],
      ["cast", date(6, 5, 1)],
      ["cast", date(5, 6, 0)],
      ["elsewhere", { kind: "state", state: "two" }],
    ];
    for (const [feature, value] of unfit)
      expect([feature, value, told(report(feature, value))]).toEqual([feature, value, []]);
    const fit: readonly (readonly [string, ReportValue])[] = [
      ["fixing", { kind: "weighed-states", weights: { two: 0.1 } }],
      ["width", size({ halfWidth: 0 })],
      ["width", size({ unit: null })],
      ["width", size({ unit: "in" satisfies MeasurementUnit })],
      ["cast", date(5, 6, 0.1)],
    ];
    for (const [feature, value] of fit)
      expect([feature, told(report(feature, value))]).toEqual([feature, [feature]]);
  });
  test("is no size of a feature of which no variant has a figure", () => {
    const blank = compiledFrom(
      smallHandbook({
        features: [measurementFeature("width"), dateFeature("label", { none: "no label" })],
        variants: ["a", "b"].map((id) =>
          variant(id, { origin: "production", fitted: [{ from: "1977-01", to: "1981-12" }] }),
        ),
      }),
    );
    expect(factsOf(blank, [measures("width", 400)])).toEqual([]);
    expect(factsOf(blank, [sees("label", "not-there")])).toHaveLength(1);
    expect(factsOf(blank, [sees("label", "there")])).toEqual([]);
  });
});

describe("the greatest of some weights", () => {
  test("is the first of equal ones, and of none there is none", () => {
    expect([heaviest([1, 3, 3, 2]), heaviest([0]), heaviest([])]).toEqual([1, 0, -1]);
    expect([twoHeaviest([1, 3, 3, 2]), twoHeaviest([3, 1, 2, 2]), twoHeaviest([1, 2])]).toEqual([
      [1, 2],
      [0, 2],
      [1, 0],
    ]);
    expect([twoHeaviest([5]), twoHeaviest([])]).toEqual([[0], []]);
    expect(heaviestFirst([1, 3, 3, 2, 1])).toEqual([1, 2, 3, 0, 4]);
  });
});

describe("the answers to a question about a date mark", () => {
  test("are the years of production, what came before, what came after, and later sales by themselves", () => {
    expect(dateAnswersOf(compiled, "cast").map(({ id, label }) => [id, label])).toEqual([
      ["1975-01..1976-12", "before 1977"],
      ["1977-01..1977-12", "1977"],
      ["1978-01..1978-12", "1978"],
      ["1979-01..1979-12", "1979"],
      ["1980-01..1980-12", "1980"],
      ["1981-01..1981-12", "1981"],
      ["1982-01..1995-12", "1982 to 1995"],
      ["1996-01..2020-12", "from 1996"],
    ]);
  });
  const made = (from: string, to: string, rest: object = {}) =>
    compiledFrom(
      smallHandbook({
        features: [dateFeature("cast", rest)],
        variants: ["a", "b"].map((id) => variant(id, { origin: "production", fitted: [{ from, to }] })),
        cars: { models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from, to }] },
      }),
    );
  const lengths = (of: ReturnType<typeof made>) =>
    dateAnswersOf(of, "cast").map(({ value }) =>
      value.kind === "date" ? value.readings.map(({ interval: { from, to } }) => to - from)[0] : undefined,
    );
  test("are half years where production lasted four years at most, and several years where it lasted long", () => {
    expect(lengths(made("1977-01", "1980-12")).slice(1, -1)).toEqual([6, 6, 6, 6, 6, 6, 6, 6]);
    expect(lengths(made("1977-01", "1981-01")).slice(1, -1)).toEqual([12, 12, 12, 12, 1, 11]);
    expect(lengths(made("1961-01", "1972-12")).slice(1, -1)).toEqual(Array.from({ length: 12 }, () => 12));
    expect(lengths(made("1961-01", "1973-01")).slice(1, -1)).toEqual([24, 24, 24, 24, 24, 24, 1, 11]);
  });
  test("have one more where the mark may not be there", () => {
    const answers = dateAnswersOf(made("1977-01", "1980-12", { none: "no mark" }), "cast");
    expect(answers.at(-1)).toMatchObject({ id: "not-there", value: { kind: "state", state: "not-there" } });
    expect(dateAnswersOf(made("1977-01", "1980-12"), "cast").at(-1)?.id).not.toBe("not-there");
  });
  test("have chances that sum to one for whatever the part may be, before and after another mark", () => {
    const two = compiledFrom(
      smallHandbook({
        features: [dateFeature("cast", { before: "label" }), dateFeature("label", { none: "no label" })],
        variants: [
          variant("a", { origin: "production", fitted: [{ from: "1977-01", to: "1981-12" }] }),
          variant("c", {
            origin: "reproduction",
            sold: [{ from: "1996", to: "2020-12" }],
            tells: { label: { "not-there": "usually" } },
          }),
        ],
      }),
    );
    for (const reports of [[], [reads("cast", monthStart(1980, 2), monthStart(1980, 3))]]) {
      const belief = beliefOf(two, { built: monthInterval(1980, 6) }, reports);
      const answers = dateAnswersOf(two, "label");
      const rows = dateRows(belief, "label", answers);
      for (let h = 0; h < two.space.size; h += 1) {
        const row = rows.slice(h * answers.length, (h + 1) * answers.length);
        expect(row.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10);
      }
      expect(dateRows(belief, "label", answers)).toEqual(rows);
      const at = (id: string, answer: string) =>
        rows[two.space.ids.indexOf(id) * answers.length + answers.findIndex((one) => one.id === answer)] ??
        Number.NaN;
      // "usually": .77 of ten and a half … as pinned in priors; a kin is six tenths its variant and four tenths unknown, of
      // which one in ten has no label.
      const [none, ofKin, ofNothing] = ["c:reproduction", "kin-of:c", "kin-of-nothing"].map((id) =>
        at(id, "not-there"),
      ) as [number, number, number];
      expect(ofKin).toBeCloseTo(0.6 * none + 0.4 * ofNothing, 10);
      expect(none).toBeGreaterThan(0.6);
      expect(at("a:works", "not-there")).toBeLessThan(0.2);
      expect(at("a:works", "1980-01..1980-12")).toBeGreaterThan(0.7);
      if (reports.length > 0) continue;
      expect(at("c:reproduction", "1996-01..2020-12")).toBeGreaterThan(0.81 * (1 - none));
    }
  });
});

describe("questions about the car", () => {
  const variants = [
    variant("plain", { origin: "production", fitted: [{ from: "1977-01", to: "1981-12", trims: ["base"] }] }),
    variant("bright", { origin: "production", fitted: [{ from: "1977-01", to: "1981-12", trims: ["s"] }] }),
  ];
  const trims = [
    { id: "base", name: "Base", also: [], models: [], from: "1977-01", to: "1981-12" },
    { id: "s", name: "S", also: [], models: ["shrike"], from: "1977-01", to: "1981-12" },
    { id: "gt", name: "GT", also: [], models: ["drake"], from: "1977-01", to: "1981-12" },
  ];
  const trimmed = compiledFrom(
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants,
      cars: { trims } as never,
    }),
  );
  const span = { from: monthStart(1977, 1), to: monthStart(1982, 1) };
  const asked = (of: typeof trimmed, car: object, built = span) =>
    carQuestions(of, car, built).map(({ id, answers }) => [id, answers.map((answer) => answer.id)]);

  test("are its year while more than one is possible, and the trim where a variant depends on it", () => {
    expect(asked(trimmed, {})).toEqual([
      ["car.built", ["1977", "1978", "1979", "1980", "1981"]],
      ["car.trim", ["base", "s", "gt"]],
    ]);
    expect(asked(trimmed, { trim: "s" }).map(([id]) => id)).toEqual(["car.built"]);
    expect(asked(compiled, {}).map(([id]) => id)).toEqual(["car.built"]);
    expect(asked(compiled, {}, yearInterval(1980))).toEqual([]);
  });
  test("name the trims of its model alone, once that is known", () => {
    expect(asked(trimmed, { model: "shrike" })[1]).toEqual(["car.trim", ["base", "s"]]);
  });
  test("are none for a part that lies loose", () => {
    expect(asked(trimmed, { isLoosePart: true })).toEqual([]);
  });
  test("offer years cut to what is known, and none where there would be more than forty", () => {
    const [question] = carQuestions(compiled, {}, { from: monthStart(1979, 7), to: monthStart(1980, 4) });
    expect(question?.answers.map((answer) => [answer.id, answer.label, answer.car.built])).toEqual([
      ["1979", "1979", { from: monthStart(1979, 7), to: monthStart(1980, 1) }],
      ["1980", "1980", { from: monthStart(1980, 1), to: monthStart(1980, 4) }],
    ]);
    const years = (count: number) =>
      carQuestions(compiled, {}, { from: monthStart(1940, 1), to: monthStart(1940 + count, 1) });
    expect([years(40).length, years(41).length]).toEqual([1, 0]);
  });
  test("have the chances that Bayes' rule gives: prior under each answer, times the answer's share of production", () => {
    const car = {};
    const belief = beliefOf(compiled, car, []);
    const [question] = carQuestions(compiled, car, span);
    if (!question) throw new Error("the year is open");
    const rows = carRows(belief, car, question);
    const width = question.answers.length;
    const priors = question.answers.map((answer) => carGround(compiled, { ...answer.car }).prior);
    compiled.space.ids.forEach((_, h) => {
      const total = priors.reduce((sum, prior) => sum + (prior[h] ?? 0), 0);
      priors.forEach((prior, column) => {
        expect(rows[h * width + column]).toBeCloseTo(total > 0 ? (prior[h] ?? 0) / total : 1 / width, 10);
      });
    });
    const early = compiled.space.ids.indexOf("a:works") * width;
    expect(rows[early] ?? 0).toBeGreaterThan(rows[early + 4] ?? 1);
    expect(carRows(belief, car, question)).toBe(rows);
  });
  test("weigh by production: three times as many cars of a year, three times its chance", () => {
    const counted = compiledFrom(
      smallHandbook({
        features: [stateFeature("edge", ["square", "round"])],
        variants: ["one", "other"].map((id) =>
          variant(id, { origin: "production", fitted: [{ from: "1977-01", to: "1981-12" }] }),
        ),
        cars: { production: { "1977": 100, "1978": 300, "1979": 100, "1980": 100, "1981": 100 } },
      }),
    );
    const belief = beliefOf(counted, {}, []);
    const [question] = carQuestions(counted, {}, span);
    if (!question) throw new Error("the year is open");
    const rows = carRows(belief, {}, question);
    const works = counted.space.ids.indexOf("one:works") * 5;
    expect((rows[works + 1] ?? 0) / (rows[works] ?? 1)).toBeCloseTo(3, 9);
    const other = counted.space.ids.indexOf("kin-of-nothing") * 5;
    expect((rows[other + 1] ?? 0) / (rows[other] ?? 1)).toBeCloseTo(3, 9);
  });
});
