// Answers that say nearly the same of every hypothesis count as one in the search: of fourteen build years a part kind
// that changed twice tells three apart. Each answer is a branch, and each branch a search of its own.

export interface AnswersMerged {
  readonly count: number;
  /** Answer-major, answers × hypotheses; a row of zeros follows an odd number of answers. */
  readonly likelihood: Float64Array;
}

interface Pair {
  readonly one: number;
  readonly other: number;
  readonly loss: number;
}

/**
 * The answers of a question with those put together that lose least, until `allowed` is used up. The loss of putting two
 * together is what the expected Σ P(hypothesis)² falls by, P(a)·P(b)/(P(a) + P(b)) · Σ (P(h|a) − P(h|b))² (J. H. Ward,
 * "Hierarchical grouping to optimize an objective function", 1963). `likelihood`: answer-major. Cost: answers² × hypotheses.
 */
export function mergeAnswers(
  likelihood: Float64Array,
  count: number,
  weights: Float64Array,
  allowed: number,
): AnswersMerged {
  const width = weights.length;
  const rows = Array.from({ length: count }, (_, a) => likelihood.slice(a * width, (a + 1) * width));
  const masses = rows.map((row) => row.reduce((sum, chance, h) => sum + (weights[h] as number) * chance, 0));
  let left = allowed;
  for (;;) {
    const pair = nearestPair(rows, masses, weights);
    if (rows.length <= 2 || pair === undefined || pair.loss > left)
      return { count: rows.length, likelihood: answerMajor(rows, width) };
    const { one, other, loss } = pair;
    left -= loss;
    const added = rows[other] as Float64Array;
    rows[one] = (rows[one] as Float64Array).map((chance, h) => chance + (added[h] as number));
    masses[one] = (masses[one] as number) + (masses[other] as number);
    rows.splice(other, 1);
    masses.splice(other, 1);
  }
}

function nearestPair(
  rows: readonly Float64Array[],
  masses: readonly number[],
  weights: Float64Array,
): Pair | undefined {
  let nearest: Pair | undefined;
  for (let one = 0; one < rows.length; one += 1) {
    for (let other = one + 1; other < rows.length; other += 1) {
      const loss = lossOf(
        rows[one] as Float64Array,
        masses[one] as number,
        rows[other] as Float64Array,
        masses[other] as number,
        weights,
      );
      if (nearest === undefined || loss < nearest.loss) nearest = { one, other, loss };
    }
  }
  return nearest;
}

function lossOf(
  one: Float64Array,
  mass: number,
  other: Float64Array,
  otherMass: number,
  weights: Float64Array,
): number {
  if (mass <= 0 || otherMass <= 0) return 0;
  let squares = 0;
  for (let h = 0; h < weights.length; h += 1) {
    const apart = (weights[h] as number) * ((one[h] as number) / mass - (other[h] as number) / otherMass);
    squares += apart * apart;
  }
  return (squares * mass * otherMass) / (mass + otherMass);
}

function answerMajor(rows: readonly Float64Array[], width: number): Float64Array {
  const likelihood = new Float64Array((rows.length + (rows.length % 2)) * width);
  rows.forEach((row, answer) => {
    likelihood.set(row, answer * width);
  });
  return likelihood;
}
