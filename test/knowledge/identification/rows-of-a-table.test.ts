// What the rows of a question table are expected to answer: own rows, kins, what is in no handbook, and the tempering of a group.
import { describe, expect, test } from "vitest";
import type { AnswerRows } from "../../../knowledge/identification/answer-rows.ts";
import {
  likelihoodOfHypotheses,
  likelihoodOfRows,
  mixedRow,
  temperedRows,
  type VariantRows,
} from "../../../knowledge/identification/question-rows.ts";
import { MIXED, NOTHING, type TableRows } from "../../../knowledge/identification/table-rows.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledFrom } from "../../support/worked-examples.ts";

const rounded = (values: Float64Array): readonly number[] =>
  [...values].map((one) => Number(one.toFixed(10)));
const source: VariantRows = {
  width: 2,
  rows: Float64Array.of(0.9, 0.1, 0.2, 0.8),
  kinRows: Float64Array.of(0.7, 0.3, 0.4, 0.6),
  rowOf: Int32Array.of(0, 1, 1),
  flat: Float64Array.of(0.5, 0.5),
};
const table = {
  variants: Int32Array.of(0, 1, 2, 0, 2, MIXED, NOTHING),
  areKin: Uint8Array.of(0, 0, 0, 1, 1, 0, 1),
  kinShares: Float64Array.of(0.5, 0.2, 0.1),
  nothingShare: 0.2,
  starts: Int32Array.of(0, 1, 3, 4, 5, 6, 7, 8),
  members: Int32Array.of(0, 1, 2, 3, 4, 5, 6, 7),
  shares: Float64Array.of(1, 0.25, 0.75, 1, 1, 1, 1, 1),
} as unknown as TableRows;

describe("what a row of the table is expected to answer", () => {
  test("is its version's row, its kin's row, what nothing tells, or the average of all that is in no handbook", () => {
    expect(rounded(mixedRow(table, source))).toEqual([
      Number((0.5 * 0.7 + 0.3 * 0.4 + 0.2 * 0.5).toFixed(10)),
      Number((0.5 * 0.3 + 0.3 * 0.6 + 0.2 * 0.5).toFixed(10)),
    ]);
    expect(rounded(likelihoodOfRows(table, source))).toEqual([
      0.9, 0.1, 0.2, 0.8, 0.2, 0.8, 0.7, 0.3, 0.4, 0.6, 0.57, 0.43, 0.5, 0.5,
    ]);
  });
  test("is the average over the hypotheses it stands for, by their shares of it", () => {
    const byHypothesis = Float64Array.from({ length: 16 }, (_, place) =>
      place % 2 === 0 ? place / 20 : 1 - (place - 1) / 20,
    );
    const rows = likelihoodOfHypotheses(table, byHypothesis, 2);
    expect(rounded(rows)).toEqual(
      [0, 0.175, 0.3, 0.4, 0.5, 0.6, 0.7].flatMap((first) => [first, Number((1 - first).toFixed(10))]),
    );
  });
  test("tempered to a half is the root of each chance, made to sum to one again; tempered to one it is itself", () => {
    const expected: AnswerRows = {
      ...source,
      rowCount: 2,
      answers: ["yes", "no"].map((id) => ({ id, label: id, value: { kind: "state", state: id } })),
    };
    const root = (...row: readonly number[]) => {
      const total = row.reduce((sum, chance) => sum + Math.sqrt(chance), 0);
      return row.map((chance) => Number((Math.sqrt(chance) / total).toFixed(10)));
    };
    const half = temperedRows(expected, 0.5);
    expect(half.width).toBe(2);
    expect(rounded(half.rows)).toEqual([...root(0.9, 0.1), ...root(0.2, 0.8)]);
    expect(rounded(half.kinRows)).toEqual([...root(0.7, 0.3), ...root(0.4, 0.6)]);
    expect(rounded(half.flat)).toEqual([0.5, 0.5]);
    expect(half.rowOf).toBe(source.rowOf);
    expect(temperedRows(expected, 1)).toEqual(source);
    expect(temperedRows(expected, 1).rows).toBe(source.rows);
  });
});

describe("a feature that two groups or two causes name", () => {
  const made = (id: string, rest: object = {}) =>
    variant(id, { origin: "production", fitted: [{ from: "1977-01", to: "1981-12" }], ...rest });
  const cause = (id: string, features: readonly string[]) => ({
    id,
    name: id,
    states: ["old", "new"],
    variants: { a: { old: "usually" }, b: { new: "usually" } },
    features: Object.fromEntries(
      features.map((one) => [one, { old: { p: "usually" }, new: { q: "usually" } }]),
    ),
  });
  const book = compiledFrom(
    smallHandbook({
      features: ["lip", "rib", "boss", "slot"].map((id) => stateFeature(id, ["p", "q"])),
      variants: [made("a"), made("b")],
      rest: {
        groups: [
          { id: "loose", coupling: "loose", features: ["lip", "rib"], reason: "one hand" },
          { id: "whole", coupling: "one-cause", features: ["rib", "boss"], reason: "one tool" },
          { id: "near", coupling: "close", features: ["slot", "boss"], reason: "one mould" },
        ],
        causes: [cause("first", ["lip", "rib"]), cause("second", ["rib", "boss"])],
      },
    }),
  );
  test("goes with the first of them; a loose group couples by .3, a close one by .6, one cause wholly (our judgement, no source)", () => {
    const of = (id: string) => book.groups.get(id);
    expect([of("lip"), of("rib"), of("boss"), of("slot")]).toEqual([
      { coupling: 0.3, features: ["lip", "rib"] },
      { coupling: 0.3, features: ["lip", "rib"] },
      { coupling: 1, features: ["rib", "boss"] },
      { coupling: 0.6, features: ["slot", "boss"] },
    ]);
    expect(book.causes.get("rib")).toBe(book.causes.get("lip"));
    expect(book.causes.get("boss")).not.toBe(book.causes.get("lip"));
    expect(book.causes.has("slot")).toBe(false);
  });
});
