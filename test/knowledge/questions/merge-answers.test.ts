// Putting answers together loses nothing that the beliefs could tell, and never more than is allowed.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergeAnswers } from "../../../knowledge/questions/merge-answers.ts";

const weights = Float64Array.of(0.5, 0.3, 0.2);

/** Σ_a Σ_h (p(h)·P(a|h))² ÷ P(a): the expected Σ P(h)² after the answer, written out plainly. */
function expectedSquares(likelihood: Float64Array, count: number, beliefs: Float64Array): number {
  const answers = Array.from({ length: count }, (_, a) =>
    Array.from(beliefs, (belief, h) => belief * (likelihood[a * beliefs.length + h] ?? 0)),
  );
  return answers.reduce((sum, joint) => {
    const mass = joint.reduce((total, one) => total + one, 0);
    return mass > 0 ? sum + joint.reduce((total, one) => total + one * one, 0) / mass : sum;
  }, 0);
}

const drawn = fc
  .tuple(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 2, max: 6 }))
  .chain(([count, size]) =>
    fc.record({
      count: fc.constant(count),
      beliefs: fc.array(fc.integer({ min: 1, max: 50 }), { minLength: size, maxLength: size }),
      cells: fc.array(fc.integer({ min: 1, max: 50 }), { minLength: count * size, maxLength: count * size }),
    }),
  )
  .map(({ count, beliefs, cells }) => {
    const size = beliefs.length;
    const whole = beliefs.reduce((sum, one) => sum + one, 0);
    const totals = beliefs.map((_, h) =>
      Array.from({ length: count }, (_unused, a) => cells[a * size + h] ?? 0).reduce(
        (sum, one) => sum + one,
        0,
      ),
    );
    return {
      count,
      weights: Float64Array.from(beliefs, (one) => one / whole),
      likelihood: Float64Array.from(cells, (cell, at) => cell / (totals[at % size] ?? 1)),
    };
  });

describe("answers put together", () => {
  test("are those that say the same of every hypothesis", () => {
    const likelihood = Float64Array.of(0.2, 0.1, 0.4, 0.4, 0.2, 0.2, 0.4, 0.7, 0.4);
    const years = Float64Array.of(0.2, 0.1, 0.4, 0.1, 0.05, 0.2, 0.7, 0.85, 0.4);
    expect(mergeAnswers(likelihood, 3, weights, 1e-9).count).toBe(3);
    const merged = mergeAnswers(years, 3, weights, 1e-9);
    expect(merged.count).toBe(2);
    [0.3, 0.15, 0.6, 0.7, 0.85, 0.4].forEach((chance, at) => {
      expect(merged.likelihood[at]).toBeCloseTo(chance, 12);
    });
  });

  test("lose no more than is allowed of the expected sum of squares, and always sum to what they were", () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 0, max: 0.1, noNaN: true }), (question, allowed) => {
        const merged = mergeAnswers(question.likelihood, question.count, question.weights, allowed);
        const before = expectedSquares(question.likelihood, question.count, question.weights);
        const after = expectedSquares(merged.likelihood, merged.count, question.weights);
        expect(after).toBeLessThanOrEqual(before + 1e-12);
        expect(after).toBeGreaterThanOrEqual(before - allowed - 1e-12);
        question.weights.forEach((_, h) => {
          const sum = Array.from(
            { length: merged.count },
            (_unused, a) => merged.likelihood[a * question.weights.length + h] ?? 0,
          ).reduce((total, one) => total + one, 0);
          expect(sum).toBeCloseTo(1, 9);
        });
      }),
      { seed: 1963, numRuns: 200 },
    );
  });
});
