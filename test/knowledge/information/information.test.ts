// Entropy, mutual information and expected gain against published values; see the sources at each number.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entropyBits } from "../../../knowledge/information/entropy.ts";
import { expectedInformationGainBits } from "../../../knowledge/information/expected-information-gain.ts";
import { mutualInformationBits } from "../../../knowledge/information/mutual-information.ts";
import type { DataTable } from "../../support/data-tables.ts";
import { columnOf, readDataTable } from "../../support/data-tables.ts";

const TENNIS = readDataTable("play-tennis");
const ZOO = readDataTable("zoo");

function levels(cells: readonly string[]): string[] {
  return [...new Set(cells)].sort();
}

function counts(data: DataTable, column: string, classColumn: string): number[][] {
  const cells = columnOf(data, column);
  const classes = columnOf(data, classColumn);
  return levels(cells).map((level) =>
    levels(classes).map(
      (name) => cells.filter((cell, row) => cell === level && classes[row] === name).length,
    ),
  );
}

function rowsWhere(data: DataTable, column: string, level: string): DataTable {
  const cells = columnOf(data, column);
  return { columns: data.columns, rows: data.rows.filter((_, row) => cells[row] === level) };
}

describe("play tennis, Quinlan 1986, Induction of decision trees, table 1", () => {
  test("nine yes and five no hold 0.940286 bits", () => {
    expect(Math.abs(entropyBits([9, 5]) - 0.940286)).toBeLessThan(1e-6);
  });

  test.each([
    ["outlook", 0.24675],
    ["humidity", 0.151836],
    ["windy", 0.048127],
    ["temperature", 0.029223],
  ])("%s gains %f bits", (column, gain) => {
    expect(Math.abs(mutualInformationBits(counts(TENNIS, column, "play")) - gain)).toBeLessThan(1e-6);
  });

  test.each([
    ["outlook", 1.577406, 0.156428],
    ["temperature", 1.556657, 0.018773],
    ["humidity", 1, 0.151836],
    ["windy", 0.985228, 0.048849],
  ])("%s splits into %f bits, gain ratio %f (computed, R and exact fractions)", (column, split, ratio) => {
    const table = counts(TENNIS, column, "play");
    const splitBits = entropyBits(table.map((row) => row.reduce((sum, count) => sum + count, 0)));
    expect(Math.abs(splitBits - split)).toBeLessThan(1e-6);
    expect(Math.abs(mutualInformationBits(table) / splitBits - ratio)).toBeLessThan(1e-6);
  });

  test.each([
    ["sunny", "humidity", 0.970951],
    ["sunny", "temperature", 0.570951],
    ["sunny", "windy", 0.019973],
    ["rainy", "windy", 0.970951],
    ["rainy", "humidity", 0.019973],
    ["rainy", "temperature", 0.019973],
  ])("on a %s day %s gains %f bits", (outlook, column, gain) => {
    const day = rowsWhere(TENNIS, "outlook", outlook);
    expect(Math.abs(mutualInformationBits(counts(day, column, "play")) - gain)).toBeLessThan(1e-6);
  });
});

describe("Cover & Thomas, Elements of Information Theory", () => {
  test("the horse race of example 1.1.2 holds two bits", () => {
    expect(entropyBits([1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 64, 1 / 64, 1 / 64, 1 / 64])).toBeCloseTo(2, 12);
  });

  test("the source of example 5.6.1 holds 2.285475 bits", () => {
    expect(Math.abs(entropyBits([0.25, 0.25, 0.2, 0.15, 0.15]) - 2.285475)).toBeLessThan(1e-6);
  });

  test("the joint table of example 2.2.1 shares three eighths of a bit", () => {
    const joint = [
      [1 / 8, 1 / 16, 1 / 32, 1 / 32],
      [1 / 16, 1 / 8, 1 / 32, 1 / 32],
      [1 / 16, 1 / 16, 1 / 16, 1 / 16],
      [1 / 4, 0, 0, 0],
    ];
    expect(mutualInformationBits(joint)).toBeCloseTo(3 / 8, 12);
    expect(entropyBits(joint.flat())).toBeCloseTo(27 / 8, 12);
    const [byRow, byColumn] = [
      joint.map((row) => row.reduce((sum, chance) => sum + chance, 0)),
      [0, 1, 2, 3].map((column) => joint.reduce((sum, row) => sum + (row[column] ?? 0), 0)),
    ];
    // H(Y) = 2 over the rows, H(X) = 7/4; H(X | Y) = 11/8 and H(Y | X) = 13/8 by the chain rule.
    expect(entropyBits(byRow)).toBeCloseTo(2, 12);
    expect(entropyBits(byColumn)).toBeCloseTo(7 / 4, 12);
    expect(entropyBits(byColumn) - mutualInformationBits(joint)).toBeCloseTo(11 / 8, 12);
    expect(entropyBits(byRow) - mutualInformationBits(joint)).toBeCloseTo(13 / 8, 12);
  });
});

describe("zoo under naive Bayes with one added per level (R e1071 and scikit-learn agree)", () => {
  const classes = columnOf(ZOO, "type");
  const names = levels(classes);
  const sizes = names.map((name) => classes.filter((each) => each === name).length);

  function likelihoods(column: string): number[][] {
    const table = counts(ZOO, column, "type");
    return names.map((_, c) => table.map((row) => ((row[c] ?? 0) + 1) / ((sizes[c] ?? 0) + table.length)));
  }

  test.each([
    ["milk", 0.694761],
    ["legs", 0.683269],
    ["toothed", 0.615456],
    ["eggs", 0.614265],
    ["hair", 0.572879],
    ["feathers", 0.493673],
    ["backbone", 0.431229],
    ["breathes", 0.424092],
    ["airborne", 0.324946],
    ["tail", 0.317146],
    ["fins", 0.292147],
    ["aquatic", 0.257372],
    ["catsize", 0.21147],
    ["venomous", 0.099437],
    ["predator", 0.058046],
    ["domestic", 0.008999],
  ])("%s is expected to gain %f bits", (column, gain) => {
    expect(Math.abs(expectedInformationGainBits(sizes, likelihoods(column)) - gain)).toBeLessThan(1e-6);
  });

  test("the prior holds 2.390560 bits, and after no milk the entropy has risen to 2.438414", () => {
    expect(Math.abs(entropyBits(sizes) - 2.39056)).toBeLessThan(1e-6);
    expect(Math.abs(entropyBits(afterNoMilk()) - 2.438414)).toBeLessThan(1e-6);
  });

  test.each([
    ["legs", 0.699183],
    ["feathers", 0.581374],
    ["toothed", 0.541947],
  ])("after no milk %s is expected to gain %f bits", (column, gain) => {
    const gained = expectedInformationGainBits(afterNoMilk(), likelihoods(column));
    expect(Math.abs(gained - gain)).toBeLessThan(1e-6);
  });

  function afterNoMilk(): number[] {
    const milk = likelihoods("milk");
    return sizes.map((size, c) => size * (milk[c]?.[0] ?? 0));
  }
});

describe("laws of information", () => {
  const weights = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 });

  test("entropy lies between none and that of an even choice", () => {
    fc.assert(
      fc.property(weights, (some) => {
        const bits = entropyBits(some);
        return bits >= 0 && bits <= Math.log2(some.length) + 1e-9;
      }),
      { seed: 1948 },
    );
  });

  test("what X tells of Y, Y tells of X, and never more than either holds", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.nat(20), { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 5 }),
        (joint) => {
          const turned = [0, 1, 2].map((column) => joint.map((row) => row[column] ?? 0));
          const shared = mutualInformationBits(joint);
          const own = entropyBits(joint.map((row) => row.reduce((sum, count) => sum + count, 0)));
          return Math.abs(shared - mutualInformationBits(turned)) < 1e-9 && shared <= own + 1e-9;
        },
      ),
      { seed: 1948 },
    );
  });

  test("nothing to weigh holds no information", () => {
    expect(entropyBits([])).toBe(0);
    expect(entropyBits([0, 0])).toBe(0);
    expect(mutualInformationBits([])).toBe(0);
    expect(expectedInformationGainBits([], [])).toBe(0);
  });
});
