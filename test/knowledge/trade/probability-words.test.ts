// Mastrandrea et al. (2010), IPCC AR5 guidance note, Table 1, as the partition of Statistics New Zealand.
import { describe, expect, test } from "vitest";
import { probabilityWords, sayProbability } from "../../../knowledge/trade/probability-words.ts";

describe("words for probability", () => {
  test.each([
    [0.995, "virtually certain"],
    [0.97, "extremely likely"],
    [0.92, "very likely"],
    [0.8, "likely"],
    [0.5, "about as likely as not"],
    [0.2, "unlikely"],
    [0.07, "very unlikely"],
    [0.03, "extremely unlikely"],
    [0.005, "exceptionally unlikely"],
  ])("%d is %s", (probability, words) => {
    expect(probabilityWords(probability)).toBe(words);
  });

  test.each([
    [0.99, "extremely likely", "virtually certain"],
    [0.95, "very likely", "extremely likely"],
    [0.9, "likely", "very likely"],
    [0.66, "about as likely as not", "likely"],
  ])("the upper edge %d still belongs to the lower word", (edge, at, above) => {
    expect(probabilityWords(edge)).toBe(at);
    expect(probabilityWords(edge + 1e-9)).toBe(above);
  });

  test.each([
    [0.33, "about as likely as not", "unlikely"],
    [0.1, "unlikely", "very unlikely"],
    [0.05, "very unlikely", "extremely unlikely"],
    [0.01, "extremely unlikely", "exceptionally unlikely"],
  ])("the lower edge %d still belongs to the upper word", (edge, at, below) => {
    expect(probabilityWords(edge)).toBe(at);
    expect(probabilityWords(edge - 1e-9)).toBe(below);
  });

  test("nothing is said to be 100 % or 0 %", () => {
    expect(sayProbability(1)).toBe("virtually certain (over 99 %)");
    expect(sayProbability(0)).toBe("exceptionally unlikely (under 1 %)");
    expect(sayProbability(0.9999)).toBe("virtually certain (over 99 %)");
    expect(sayProbability(0.99)).toBe("extremely likely (99 %)");
    expect(sayProbability(0.78)).toBe("likely (78 %)");
  });

  test("a number that is no probability is refused", () => {
    expect(() => probabilityWords(1.01)).toThrow(RangeError);
    expect(() => probabilityWords(-0.01)).toThrow(RangeError);
    expect(() => probabilityWords(Number.NaN)).toThrow(RangeError);
  });
});
