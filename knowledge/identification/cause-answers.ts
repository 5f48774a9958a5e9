/** What each variant is expected to answer about a feature that a known cause governs, given what is told of others. */
import type { AnswerRows } from "./answer-rows.ts";
import type { Belief } from "./belief.ts";
import type { CauseTable } from "./cause-table.ts";
import type { Fact } from "./facts.ts";
import { KIN_LIKENESS } from "./likelihood.ts";
import type { VariantRows } from "./question-rows.ts";
import { reportsByState } from "./state-reports.ts";
import { causeLikelihood } from "./variant-likelihood.ts";

/** P(answer | variant, facts of the same cause) = P(answer, facts | variant) ÷ Σ over the answers; kins likewise. */
export function causeRows(
  belief: Belief,
  cause: CauseTable,
  feature: string,
  plain: AnswerRows,
): VariantRows {
  const { compiled } = belief;
  const size = compiled.part.variants.length;
  const width = plain.answers.length;
  const told = belief.facts.filter((fact) => compiled.causes.get(fact.feature) === cause);
  const rows = new Float64Array(size * width);
  const kinRows = new Float64Array(size * width);
  const flat = new Float64Array(width);
  plain.answers.forEach(({ value }, column) => {
    const asked: Fact = { feature, reports: [{ feature, by: "", certainty: 1, words: "", value }] };
    const likelihood = causeLikelihood(compiled, cause, [...told, asked], (table, fact) =>
      reportsByState(table.channel, fact.reports),
    );
    flat[column] = likelihood.flat;
    likelihood.byVariant.forEach((chance, variant) => {
      rows[variant * width + column] = chance;
      kinRows[variant * width + column] = KIN_LIKENESS * chance + (1 - KIN_LIKENESS) * likelihood.flat;
    });
  });
  for (const matrix of [rows, kinRows, flat]) normaliseRows(matrix, width);
  return { width, rows, kinRows, flat, rowOf: Int32Array.from({ length: size }, (_, variant) => variant) };
}

function normaliseRows(matrix: Float64Array, width: number): void {
  for (let start = 0; start < matrix.length; start += width) {
    const row = matrix.subarray(start, start + width);
    const total = row.reduce((sum, chance) => sum + chance, 0);
    for (let column = 0; column < width; column += 1) row[column] = (row[column] as number) / total;
  }
}
