// A logistic regression by Newton's steps, for a published dose-response that a slow change is held against; it gives the project's linear
// systems a published fit to reproduce.
import { solveLinear } from "../../knowledge/numbers/linear-system.ts";

export interface DoseRow {
  readonly terms: readonly number[];
  readonly count: number;
  readonly of: number;
}

export interface LogisticFit {
  readonly coefficients: readonly number[];
  /** The inverse of the information at the fit. */
  readonly covariance: readonly (readonly number[])[];
}

/** The fit that makes the counts likeliest; its steps are over when they are below 1e-12. */
export function logisticFit(rows: readonly DoseRow[]): LogisticFit {
  const size = rows[0]?.terms.length ?? 0;
  let coefficients: readonly number[] = new Array<number>(size).fill(0);
  for (let round = 0; round < 50; round += 1) {
    const { information, score } = slopes(rows, coefficients);
    const step = solved(information, score);
    coefficients = coefficients.map((value, at) => value + (step[at] as number));
    if (step.every((length) => Math.abs(length) < 1e-12)) break;
  }
  const { information } = slopes(rows, coefficients);
  const unit = (at: number): readonly number[] => coefficients.map((_, other) => Number(other === at));
  return { coefficients, covariance: coefficients.map((_, at) => solved(information, unit(at))) };
}

function slopes(rows: readonly DoseRow[], coefficients: readonly number[]) {
  const information = coefficients.map(() => new Array<number>(coefficients.length).fill(0));
  const score = new Array<number>(coefficients.length).fill(0);
  for (const { terms, count, of } of rows) {
    const logit = terms.reduce((sum, term, at) => sum + term * (coefficients[at] as number), 0);
    const share = 1 / (1 + Math.exp(-logit));
    terms.forEach((term, i) => {
      score[i] = (score[i] as number) + term * (count - of * share);
      terms.forEach((other, j) => {
        const row = information[i] as number[];
        row[j] = (row[j] as number) + term * other * of * share * (1 - share);
      });
    });
  }
  return { information, score };
}

function solved(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const found = solveLinear(matrix, right);
  if (found === undefined) throw new Error("the rows do not tell the terms apart");
  return found;
}
