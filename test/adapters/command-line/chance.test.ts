import { expect, test } from "vitest";
import { chanceFrom, splitMix64, xoshiro128 } from "../../../adapters/command-line/simulation/chance.ts";

test("xoshiro128** gives the outputs of its authors' program from the state 1, 2, 3, 4", () => {
  // xoshiro128starstar.c 1.1, Blackman & Vigna, as printed in the test of the Rust package rand_xoshiro.
  const next = xoshiro128([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test("SplitMix64 gives the published outputs from 1234567", () => {
  // splitmix64.c, Vigna; the five values are those of the Rosetta Code page on this generator.
  expect(splitMix64(1234567n, 5)).toEqual([
    6457827717110365317n,
    3203168211198807973n,
    9817491932198370423n,
    4593380528125082431n,
    16408922859458223821n,
  ]);
});

test("the same number gives the same draws, another number others", () => {
  const draws = (number: number) => Array.from({ length: 50 }, chanceFrom(number));
  expect(draws(7)).toEqual(draws(7));
  expect(draws(7)).not.toEqual(draws(8));
});

test("draws lie in [0, 1) and spread evenly", () => {
  const draws = Array.from({ length: 20_000 }, chanceFrom(3));
  expect(draws.every((draw) => draw >= 0 && draw < 1)).toBe(true);
  // The mean of 20,000 even draws has a deviation of .00204: five of them.
  expect(Math.abs(draws.reduce((sum, draw) => sum + draw, 0) / draws.length - 0.5)).toBeLessThan(0.0102);
});
