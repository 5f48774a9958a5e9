// Error rates of observers against the published worked example.
import { describe, expect, test } from "vitest";
import { type Label, observerReliability } from "../../../knowledge/observers/observer-reliability.ts";

/**
 * A. P. Dawid & A. M. Skene, Applied Statistics 28, 1979: 45 patients, five anaesthetists, the first of whom saw each form three times.
 * Two public transcriptions differ in patient 7; this is the one with 1, 2, 2.
 */
const patients = `
111 1 1 1 1
333 4 3 3 4
112 2 1 2 2
222 3 1 2 1
222 3 2 2 2
222 3 3 2 2
122 2 1 1 1
333 3 4 3 3
222 2 2 2 3
232 2 2 2 3
444 4 4 4 4
222 3 3 4 3
111 1 1 1 1
222 3 2 1 2
121 1 1 1 1
111 2 1 1 1
111 1 1 1 1
111 1 1 1 1
222 2 2 2 1
222 1 3 2 2
222 2 2 2 2
222 2 2 2 1
222 3 2 2 2
221 2 2 2 2
111 1 1 1 1
111 1 1 1 1
232 2 2 2 2
111 1 1 1 1
111 1 1 1 1
112 1 1 2 1
111 1 1 1 1
333 3 2 3 3
111 1 1 1 1
222 2 2 2 2
222 3 2 3 2
433 4 3 4 3
221 2 2 3 2
232 3 2 3 3
333 3 4 3 2
111 1 1 1 1
111 1 1 1 1
121 2 1 1 1
232 2 2 2 2
121 1 1 1 1
222 2 2 2 2
`;

const labels: readonly Label[] = patients
  .trim()
  .split("\n")
  .flatMap((line, patient) => {
    const [thrice = "", ...others] = line.split(" ");
    const said = [...thrice].map((label) => ["1", label] as const);
    return [...said, ...others.map((label, at) => [String(at + 2), label] as const)].map(
      ([observer, label]): Label => ({ item: String(patient + 1), observer, label: Number(label) - 1 }),
    );
  });

describe("observer reliability", () => {
  const found = observerReliability(labels, 4);

  test("the class shares are those of the paper", () => {
    // .40 .42 .11 .07 in the paper (from memory); to four figures by an independent run of EM from the shares of the votes.
    const expected = [0.3996, 0.422, 0.1118, 0.0667];
    for (const [at, share] of expected.entries()) expect(found.shares[at]).toBeCloseTo(share, 3);
    expect(found.logLikelihood).toBeCloseTo(-192.890881, 4);
  });

  test("the error rates of all five observers are those of an independent run", () => {
    const first = [
      [0.8895, 0.1105, 0, 0],
      [0.0706, 0.8764, 0.053, 0],
      [0, 0.3388, 0.6612, 0],
      [0, 0, 0.5556, 0.4444],
    ];
    const third = [
      [1, 0, 0, 0],
      [0.1064, 0.7883, 0.1053, 0],
      [0, 0.4037, 0.1988, 0.3976],
      [0, 0, 0.6667, 0.3333],
    ];
    const second = [
      [0.8342, 0.1658, 0, 0],
      [0.0527, 0.6329, 0.3143, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ];
    const fourth = [
      [0.9444, 0.0556, 0, 0],
      [0.0537, 0.8426, 0.1037, 0],
      [0, 0, 0.8012, 0.1988],
      [0, 0, 0.3333, 0.6667],
    ];
    const fifth = [
      [1, 0, 0, 0],
      [0.159, 0.7345, 0.1064, 0],
      [0, 0.2091, 0.7909, 0],
      [0, 0, 0.3333, 0.6667],
    ];
    for (const [observer, rows] of [
      ["1", first],
      ["2", second],
      ["3", third],
      ["4", fourth],
      ["5", fifth],
    ] as const) {
      // Tolerance 5e-4.
      for (const [row, rates] of rows.entries())
        for (const [column, rate] of rates.entries())
          expect(Math.abs((found.errorRates.get(observer)?.[row]?.[column] ?? 9) - rate)).toBeLessThan(5e-4);
    }
  });

  test("only patients 7, 35 and 38 are below .999", () => {
    const doubtful = [...found.truths].filter(([, chances]) => Math.max(...chances) < 0.999);
    expect(doubtful.map(([patient]) => patient)).toEqual(["7", "35", "38"]);
    expect(Math.max(...(found.truths.get("7") ?? []))).toBeCloseTo(0.981, 3);
  });

  test("a prior keeps a single disagreement from calling anybody hopeless", () => {
    const said: readonly Label[] = [
      { item: "car", observer: "ann", label: 0 },
      { item: "car", observer: "bert", label: 1 },
    ];
    const { errorRates } = observerReliability(said, 2, { right: 9, wrong: 1 });
    expect(errorRates.get("ann")?.[0]?.[0]).toBeGreaterThan(0.8);
    expect(errorRates.get("bert")?.[0]?.[0]).toBeGreaterThan(0.8);
  });
});
