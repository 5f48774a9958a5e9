import { expect, test } from "vitest";
import { chainsOf } from "../../../knowledge/dating/chains-of.ts";

const link = (old: string, fresh: string) => ({ old, new: fresh });
const cars = (counts: Readonly<Record<string, number>>) => (variant: string) => counts[variant] ?? 0;

test("kinds that followed each other are one chain, a pair is none", () => {
  expect(chainsOf([link("a", "b"), link("b", "c"), link("x", "y")], () => 1)).toEqual([["a", "b", "c"]]);
});

test("at a branch the chain goes on with the kind of the most cars, and with the first of as many", () => {
  const branched = [link("a", "b"), link("b", "c"), link("b", "d")];
  expect(chainsOf(branched, cars({ a: 1, b: 1, c: 1, d: 5 }))).toEqual([["a", "b", "d"]]);
  expect(chainsOf(branched, () => 2)).toEqual([["a", "b", "c"]]);
});

test("where two gave way to one, the one of the most cars is in the chain", () => {
  const joined = [link("a", "c"), link("b", "c"), link("c", "d")];
  expect(chainsOf(joined, cars({ a: 1, b: 3, c: 1, d: 1 }))).toEqual([["b", "c", "d"]]);
});

test("kinds at the ends that nobody has seen are left out, one between others is kept", () => {
  const row = [link("a", "b"), link("b", "c"), link("c", "d"), link("d", "e")];
  expect(chainsOf(row, cars({ b: 1, d: 1 }))).toEqual([["b", "c", "d"]]);
  expect(chainsOf(row, cars({ b: 1, c: 1 }))).toEqual([]);
  expect(chainsOf(row, () => 0)).toEqual([]);
});
