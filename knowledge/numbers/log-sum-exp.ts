/**
 * Sums and normalisation of numbers held as natural logarithms. The maximum is subtracted first, so that a case
 * with forty facts neither underflows nor loses its small hypotheses.
 */

/** ln Σ exp(x) over the values; −Infinity for no values or when all are −Infinity. */
export function logSumExp(logarithms: ArrayLike<number>): number {
  const greatest = greatestOf(logarithms);
  if (greatest === -Infinity) return -Infinity;
  let sum = 0;
  for (let i = 0; i < logarithms.length; i += 1) sum += Math.exp((logarithms[i] as number) - greatest);
  return greatest + Math.log(sum);
}

function greatestOf(logarithms: ArrayLike<number>): number {
  let greatest = -Infinity;
  for (let i = 0; i < logarithms.length; i += 1) {
    if ((logarithms[i] as number) > greatest) greatest = logarithms[i] as number;
  }
  return greatest;
}

/** The probabilities whose logarithms, up to a common constant, are given; even when all are −Infinity. */
export function normaliseLogarithms(logarithms: ArrayLike<number>): Float64Array {
  const probabilities = new Float64Array(logarithms.length);
  const greatest = greatestOf(logarithms);
  if (greatest === -Infinity) return probabilities.fill(1 / logarithms.length);
  // Divided by their sum, not lessened by its logarithm: beside logarithms of thousands that has too few places to add up to one.
  let total = 0;
  for (let i = 0; i < logarithms.length; i += 1) {
    const weight = Math.exp((logarithms[i] as number) - greatest);
    probabilities[i] = weight;
    total += weight;
  }
  for (let i = 0; i < probabilities.length; i += 1) probabilities[i] = (probabilities[i] as number) / total;
  return probabilities;
}
