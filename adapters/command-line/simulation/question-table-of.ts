/** The printed tables as the question policy takes them: what `model` shows is exactly what `simulate` plays. */
import type { ModelTables, QuestionTable } from "../../../knowledge/index.ts";

export function questionTableOf(tables: ModelTables): QuestionTable {
  return {
    hypotheses: tables.hypotheses,
    questions: tables.questions.map((question) => ({
      ...question,
      likelihood: Float64Array.from(question.likelihood.flat()),
    })),
    lambda: tables.lambda,
  };
}
