import { describe, expect, test } from "vitest";
import {
  NUMBER,
  parsePlainNumber,
  sayNumber,
  spellFractions,
} from "../../../knowledge/trade/plain-numbers.ts";

describe("numbers as typed", () => {
  test.each([
    ["17 3/8", 17.375],
    ["17-3/8", 17.375],
    ["3/8", 0.375],
    ["17.375", 17.375],
    ["17,5", 17.5],
    ["70,53", 70.53],
    ["0,312", 0.312],
    ["1,200", 1200],
    [".312", 0.312],
    ["1180", 1180],
  ])("%s is %d", (text, value) => {
    expect(parsePlainNumber(text)).toBeCloseTo(value, 12);
    expect(new RegExp(`^(?:${NUMBER})$`).test(text)).toBe(true);
  });

  test.each(["", "3/0", "abc", "1/2/3", "--"])("%j is no number", (text) => {
    expect(parsePlainNumber(text)).toBeUndefined();
  });

  test("fraction signs are spelled out", () => {
    expect(spellFractions("17½ in, ⅜ wide")).toBe("17 1/2 in, 3/8 wide");
  });

  test("numbers are said without trailing zeros", () => {
    expect(sayNumber(651.6, 1)).toBe("651.6");
    expect(sayNumber(60, 2)).toBe("60");
  });
});
