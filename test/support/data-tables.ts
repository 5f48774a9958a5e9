// Open data as question tables: every row a hypothesis, every column a question whose answer is the row's cell,
// without misreading. Then the exact optima known for these data can be asked of the policy.

import { readFileSync } from "node:fs";
import type { Question, QuestionTable } from "../../knowledge/questions/question-table.ts";

export interface DataTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A comma-separated file of test/published/data, first line the column names; no quoting is used there. */
export function readDataTable(name: string): DataTable {
  const text = readFileSync(new URL(`../published/data/${name}.csv`, import.meta.url), "utf8");
  const [columns = [], ...rows] = text
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(","));
  return { columns, rows };
}

export function columnOf(data: DataTable, column: string): readonly string[] {
  const at = data.columns.indexOf(column);
  return data.rows.map((row) => row[at] ?? "");
}

function columnQuestion(data: DataTable, column: string, cost: number): Question {
  const cells = columnOf(data, column);
  const answers = [...new Set(cells)].sort();
  const likelihood = new Float64Array(cells.length * answers.length);
  cells.forEach((cell, row) => {
    likelihood[row * answers.length + answers.indexOf(cell)] = 1;
  });
  return { id: column, cost, answers, likelihood, cannotTell: 0 };
}

/** Rows equally likely, the class column as verdict, the other columns as questions at the given costs (else 1). */
export function questionTableOf(
  data: DataTable,
  classColumn: string,
  lambda: number,
  costs: Readonly<Record<string, number>>,
  skipped: readonly string[],
): QuestionTable {
  const classes = columnOf(data, classColumn);
  return {
    hypotheses: classes.map((name, row) => ({ id: `row ${row}`, prior: 1 / classes.length, class: name })),
    questions: data.columns
      .filter((column) => column !== classColumn && !skipped.includes(column))
      .map((column) => columnQuestion(data, column, costs[column] ?? 1)),
    lambda,
  };
}
