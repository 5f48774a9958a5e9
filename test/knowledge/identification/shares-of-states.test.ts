// What is expected of each version's states, sizes and marks, the ones it may lack among them: tables worked out by hand.
import { describe, expect, test } from "vitest";
import { monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import { presenceAnswers } from "../../../knowledge/identification/answer-rows.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { brokenLinks } from "../../../knowledge/identification/broken-links.ts";
import { dateAnswersOf, dateRows } from "../../../knowledge/identification/date-answers.ts";
import { factsOf } from "../../../knowledge/identification/facts.ts";
import type { ObservedState } from "../../../knowledge/identification/identification.ts";
import { flatShares, isConditional, type StateTable } from "../../../knowledge/identification/state-table.ts";
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

const always = { origin: "production" as const, fitted: [{ from: "1977-01", to: "1981-12" }] };
const seen = (one: string, state: string, weight: number, rest: Partial<ObservedState> = {}): ObservedState =>
  ({ part: "foot", feature: "edge", variant: one, state, weight, ...rest }) as ObservedState;

function rowsOf(table: StateTable | undefined): readonly (readonly number[])[] {
  if (!table) return [];
  const width = table.channel.states.length;
  return [...table.rowOf].map((row) =>
    [...table.rows.subarray(row * width, (row + 1) * width)].map((share) => Number(share.toFixed(10))),
  );
}
const close = (...shares: readonly number[]) => shares.map((share) => Number(share.toFixed(10)));
/** θ = .99 · α ÷ Σα + .01 ÷ K. */
const shares = (...alphas: readonly number[]) => {
  const total = alphas.reduce((sum, alpha) => sum + alpha, 0);
  return close(...alphas.map((alpha) => (0.99 * alpha) / total + 0.01 / alphas.length));
};

describe("the shares of a feature's states", () => {
  const book = (observed: readonly ObservedState[] = [], rest: object = {}) =>
    compiledFrom(
      smallHandbook({
        features: [stateFeature("edge", ["square", "round"], rest)],
        variants: [
          variant("silent", always),
          variant("counted", { ...always, tells: { edge: { square: "8 of 10" } } }),
          variant("alike", { ...always, tells: { edge: { square: "8 of 10" } } }),
          variant("other", { ...always, tells: { edge: { round: "8 of 10" } } }),
        ],
      }),
      observed,
    ).states.get("edge");
  test("are even of a silent handbook, and what was counted, half a part of each beside it", () => {
    const table = book();
    const counted = shares(8.5, 2.5);
    expect(rowsOf(table)).toEqual([close(0.5, 0.5), counted, counted, counted.toReversed()]);
    expect([...(table?.rowOf ?? [])]).toEqual([0, 1, 1, 2]);
    expect([table?.rowCount, [...(table?.flat ?? [])]]).toEqual([3, [0.5, 0.5]]);
  });
  test("count what people showed to each version beside it, and nothing of another part or feature", () => {
    const table = book([
      seen("counted", "round", 2),
      seen("counted", "round", 1),
      seen("alike", "square", 1),
      seen("silent", "round", 3),
      seen("other", "square", 5, { part: "sill" }),
      seen("other", "square", 5, { feature: "lip" }),
      seen("unknown", "square", 5),
    ]);
    expect(rowsOf(table)).toEqual([shares(1, 4), shares(8.5, 5.5), shares(9.5, 2.5), shares(2.5, 8.5)]);
    expect([...(table?.rowOf ?? [])]).toEqual([0, 1, 2, 3]);
  });
  test("give one in ten to its not being there where some version may lack it, and nothing of it to one whose states are told", () => {
    const table = book([], { none: "no edge" });
    const counted = [...shares(8.5, 2.5), 0];
    expect(table?.channel.states).toEqual(["square", "round", "not-there"]);
    expect(rowsOf(table)).toEqual([[0.45, 0.45, 0.1], counted, counted, [counted[1], counted[0], 0]]);
    expect([...flatShares(["square", "round", "not-there"])]).toEqual([0.45, 0.45, 0.1]);
    expect([...flatShares(["a", "b", "c", "d"])]).toEqual([0.25, 0.25, 0.25, 0.25]);
  });
  test("of a version of which nothing is told start from that when parts are shown: two parts' worth of it", () => {
    const table = book([seen("silent", "square", 2), seen("counted", "not-there", 1)], { none: "no edge" });
    expect(rowsOf(table)[0]).toEqual(shares(2.9, 0.9, 0.2));
    const [square = 0, round = 0, none = 0] = rowsOf(table)[1] ?? [];
    expect(square + round + none).toBeCloseTo(1, 9);
    expect(none).toBeGreaterThan(0.05);
    expect(square).toBeGreaterThan(round);
  });
  test("are wholly 'not there' where the handbook says it never is, until somebody shows one that has it", () => {
    const lacking = (observed: readonly ObservedState[]) =>
      compiledFrom(
        smallHandbook({
          features: [stateFeature("edge", ["square", "round"])],
          variants: [
            variant("bare", { ...always, tells: { edge: { "not-there": "always" } } }),
            variant("full", { ...always, tells: { edge: { square: "always" } } }),
            variant("maybe", { ...always, tells: { edge: { "not-there": "4 of 10", square: "6 of 10" } } }),
          ],
        }),
        observed,
      ).states.get("edge");
    const [bare, full, maybe] = rowsOf(lacking([]));
    expect(bare).toEqual([0, 0, 1]);
    expect(full?.[2]).toBe(0);
    expect(maybe).toEqual(shares(6 + 1 / 3, 1 / 3, 4 + 1 / 3));
    const [shown] = rowsOf(lacking([seen("bare", "square", 1)]));
    expect(shown?.[0]).toBeGreaterThan(shown?.[1] ?? 1);
    expect(shown?.[2]).toBeLessThan(1);
    expect(shown?.[2]).toBeGreaterThan(0.7);
  });
});

describe("a size or a mark that a version may lack", () => {
  const book = compiledFrom(
    smallHandbook({
      features: [
        measurementFeature("pin", { none: "no pin" }),
        dateFeature("label"),
        measurementFeature("width"),
      ],
      variants: [
        variant("bare", {
          ...always,
          tells: { pin: { "not-there": "always" }, label: { "not-there": "always" } },
        }),
        variant("thick", {
          ...always,
          tells: { pin: { mean: 12, spread: 0.2 }, width: { mean: 400, spread: 2 } },
        }),
        variant("thin", {
          ...always,
          tells: { pin: { mean: 8, spread: 0.2 }, width: { mean: 420, spread: 2 } },
        }),
        variant("silent", always),
      ],
    }),
  );
  const [part] = [book.part];
  test("may be lacking where the handbook has a word for that or a version that does, and a figure says that it is there", () => {
    const feature = (id: string) => part.features.find((one) => one.id === id) ?? { id };
    expect(["pin", "label", "width"].map((id) => isConditional(part, feature(id)))).toEqual([
      true,
      true,
      false,
    ]);
    expect([...book.presence.keys()]).toEqual(["pin", "label"]);
    expect(book.presence.get("pin")?.channel.states).toEqual(["there", "not-there"]);
    expect(rowsOf(book.presence.get("pin"))).toEqual([
      [0, 1],
      [1, 0],
      [1, 0],
      [0.9, 0.1],
    ]);
    expect(rowsOf(book.presence.get("label"))).toEqual([
      [0, 1],
      [0.9, 0.1],
      [0.9, 0.1],
      [0.9, 0.1],
    ]);
  });
  /** Seen where it is .97 of the time, and .03 where it is not. */
  const [there, lacking, unknown] = [0.97, 0.03, 0.9 * 0.97 + 0.1 * 0.03];
  test("is reported as there in 97 of 100 looks, and in 3 of 100 where it is not", () => {
    const presence = book.presence.get("pin");
    if (!presence) throw new Error("the pin may be lacking");
    const answers = presenceAnswers(presence);
    expect([...answers.byVariant].map((chance) => Number(chance.toFixed(10)))).toEqual(
      close(lacking, there, there, unknown),
    );
    expect(answers.flat).toBeCloseTo(unknown, 12);
  });
  test("has 'there is none' for its last answer, and the sizes share what is left", () => {
    const rows = book.answers.get("pin");
    if (!rows) throw new Error("the pin has sizes to choose between");
    const width = rows.answers.length;
    expect(rows.answers.at(-1)).toEqual({
      id: "not-there",
      label: "no pin",
      value: { kind: "state", state: "not-there" },
    });
    expect(width).toBe(3);
    expect([rows.rowCount, [...rows.rowOf]]).toEqual([4, [0, 1, 2, 3]]);
    [lacking, there, there, unknown].forEach((isThere, index) => {
      const row = [...rows.rows.subarray(index * width, (index + 1) * width)];
      expect(row[2]).toBeCloseTo(1 - isThere, 12);
      expect((row[0] ?? 0) + (row[1] ?? 0)).toBeCloseTo(isThere, 9);
      const kin = [...rows.kinRows.subarray(index * width, (index + 1) * width)];
      kin.forEach((chance, answer) => {
        expect(chance).toBeCloseTo(0.6 * (row[answer] ?? 0) + 0.4 * (rows.flat[answer] ?? 0), 12);
      });
    });
    expect(rows.flat[2]).toBeCloseTo(1 - unknown, 12);
    // The thick pin is hardly ever found in the thinner stretch.
    expect(rows.rows[width]).toBeLessThan(0.05);
    expect(rows.rows[2 * width]).toBeGreaterThan(0.9);
    expect(book.answers.get("width")?.answers.map(({ id }) => id)).not.toContain("not-there");
  });
  test("has a row of answers for each way the part came about, a kin's between its version's and the unknown's", () => {
    const belief = beliefOf(book, {}, []);
    const answers = dateAnswersOf(book, "label");
    const rows = dateRows(belief, "label", answers);
    expect(answers.at(-1)).toEqual({
      id: "not-there",
      label: "it has no label",
      value: { kind: "state", state: "not-there" },
    });
    const none = (id: string) => rows[(book.space.ids.indexOf(id) + 1) * answers.length - 1] ?? Number.NaN;
    expect(none("bare:works")).toBeCloseTo(1 - lacking, 12);
    expect(none("thick:works")).toBeCloseTo(1 - unknown, 12);
    expect(none("kin-of:bare")).toBeCloseTo(1 - (0.6 * lacking + 0.4 * unknown), 12);
    expect(none("kin-of-nothing")).toBeCloseTo(1 - unknown, 12);
    expect(book.space.variants[0]).toBe(0);
  });
  test("is expected in each stretch of years as that reading would weigh, the rows of all hypotheses alike", () => {
    const plain = compiledExample();
    for (const [reports, car] of [
      [[], {}],
      [[sees("fixing", "two")], { built: yearInterval(1980) }],
    ] as const) {
      const belief = beliefOf(plain, car, reports);
      const answers = dateAnswersOf(plain, "cast");
      const rows = dateRows(belief, "cast", answers);
      const chances = answers.map(
        ({ value }) =>
          beliefOf(plain, car, [report("cast", value)]).evidence[0]?.logLikelihood.map(Math.exp) ?? [],
      );
      plain.space.ids.forEach((_, h) => {
        const total = chances.reduce((sum, chance) => sum + (chance[h] ?? Number.NaN), 0);
        chances.forEach((chance, column) => {
          expect(rows[h * answers.length + column]).toBeCloseTo((chance[h] ?? Number.NaN) / total, 12);
        });
      });
    }
  });
  test("is asked after from the same rows until another mark is read, whatever else was told", () => {
    const car = {};
    const answers = dateAnswersOf(book, "label");
    const rows = dateRows(beliefOf(book, car, []), "label", answers);
    const measured = beliefOf(book, car, [measures("width", 401), sees("pin", "not-there")]);
    expect(dateRows(measured, "label", answers)).toBe(rows);
    const marked = beliefOf(book, car, [reads("label", monthStart(1979, 1), monthStart(1979, 2))]);
    expect(dateRows(marked, "label", answers)).not.toBe(rows);
    expect(dateRows(beliefOf(book, car, []), "label", answers)).toBe(rows);
  });
  test("breaks no order of dates where somebody else saw none of it", () => {
    const march = monthStart(1980, 3);
    const built = { from: march, to: march + 1 };
    const facts = factsOf(book, [
      reads("label", march + 6, march + 7),
      sees("label", "not-there", { by: "friend" }),
    ]);
    expect(facts[0]?.reports).toHaveLength(2);
    expect(brokenLinks(book, { built }, facts)).toEqual([
      { earlier: "label", later: "built", problem: "after" },
    ]);
    expect(brokenLinks(book, { built, isLoosePart: true }, facts)).toEqual([]);
    const none = factsOf(book, [
      sees("label", "not-there"),
      report("pin", { kind: "state", state: "not-there" }),
    ]);
    expect(brokenLinks(book, { built }, none)).toEqual([]);
  });
});
