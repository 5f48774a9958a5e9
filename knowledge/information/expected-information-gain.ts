// Expected information gain of a question: by how many bits its answer is expected to lower the entropy
// of what we believe. It equals the mutual information of hypothesis and answer.

import { mutualInformationBits } from "./mutual-information.ts";

/**
 * Expected gain in bits, H(hypothesis) − Σ_a P(a)·H(hypothesis | a)
 * (D. V. Lindley, "On a measure of the information provided by an experiment", 1956; as "information
 * gain" in J. R. Quinlan, "Induction of decision trees", 1986).
 * `prior`: one weight per hypothesis, ≥ 0, need not sum to one. `likelihood`: for each hypothesis its row
 * P(answer | hypothesis), summing to one. Never below 0; a hypothesis without a row counts as not there.
 */
export function expectedInformationGainBits(
  prior: readonly number[],
  likelihood: readonly (readonly number[])[],
): number {
  return mutualInformationBits(
    prior.map((weight, hypothesis) => (likelihood[hypothesis] ?? []).map((chance) => weight * chance)),
  );
}
