/** Naive Bayes tables counted from open data, so that published figures run through the project's own posterior. */
import { type AnswerTable, posteriorFromTables } from "../../knowledge/identification/posterior.ts";
import { columnOf, type DataTable } from "./data-tables.ts";

export interface NaiveBayes {
  readonly classes: readonly string[];
  readonly prior: readonly number[];
  readonly tables: ReadonlyMap<string, AnswerTable>;
}

export interface Counting {
  readonly classColumn: string;
  /** Added to every count of a level. */
  readonly alpha: number;
  readonly skippedColumns?: readonly string[];
  /** A row that is left out. */
  readonly without?: number;
}

/**
 * Prior n_c ÷ n, likelihood (count + α) ÷ (n_c + α·K), K the levels of the column in the whole file; empty cells are
 * not counted.
 */
export function naiveBayes(data: DataTable, counting: Counting): NaiveBayes {
  const { classColumn, alpha, without } = counting;
  const labels = columnOf(data, classColumn);
  const classes = [...new Set(labels)].sort();
  const used = labels.map((_, row) => row).filter((row) => row !== without);
  const prior = classes.map((name) => used.filter((row) => labels[row] === name).length / used.length);
  const skipped = new Set([classColumn, ...(counting.skippedColumns ?? [])]);
  const tables = new Map(
    data.columns
      .filter((column) => !skipped.has(column))
      .map((column) => [column, tableOf(columnOf(data, column), labels, classes, used, alpha)]),
  );
  return { classes, prior, tables };
}

function tableOf(
  cells: readonly string[],
  labels: readonly string[],
  classes: readonly string[],
  used: readonly number[],
  alpha: number,
): AnswerTable {
  const answers = [...new Set(cells)].filter((cell) => cell !== "").sort();
  const counts = new Map<string, number>();
  const add = (key: string): void => void counts.set(key, (counts.get(key) ?? 0) + 1);
  for (const row of used) {
    if (cells[row] === "") continue;
    add(`${labels[row]}`);
    add(`${labels[row]} ${cells[row]}`);
  }
  const likelihood = classes.flatMap((name) =>
    answers.map((answer) => {
      const count = counts.get(`${name} ${answer}`) ?? 0;
      return (count + alpha) / ((counts.get(name) ?? 0) + alpha * answers.length);
    }),
  );
  return { answers, likelihood };
}

/** P(class | cells); empty cells are no evidence. */
export function classify(model: NaiveBayes, cells: Readonly<Record<string, string>>): Float64Array {
  const given = Object.entries(cells).flatMap(([column, cell]) => {
    const table = model.tables.get(column);
    return table && cell !== "" ? [[table, cell] as const] : [];
  });
  return posteriorFromTables(model.prior, given);
}

/** One row of the data without its class. */
export function cellsOf(data: DataTable, row: number, skipped: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    data.columns
      .map((column, at) => [column, data.rows[row]?.[at] ?? ""] as const)
      .filter(([column]) => !skipped.includes(column)),
  );
}

export interface Scores {
  readonly correct: number;
  readonly brier: number;
  readonly logLoss: number;
  /** Rows whose first class is wrong, as "name of the row → class". */
  readonly wrong: readonly string[];
}

/** Log losses are published with probabilities cut here (scikit-learn's log_loss). */
const LEAST_PUBLISHED = 1e-15;

/** Every row judged by the others (`isLeftOut`) or by all; log loss in nats, Brier as Σ over the classes. */
export function scores(data: DataTable, counting: Counting, isLeftOut: boolean): Scores {
  const labels = columnOf(data, counting.classColumn);
  const skipped = [counting.classColumn, ...(counting.skippedColumns ?? [])];
  const whole = naiveBayes(data, counting);
  let correct = 0;
  let brier = 0;
  let logLoss = 0;
  const wrong: string[] = [];
  labels.forEach((label, row) => {
    const model = isLeftOut ? naiveBayes(data, { ...counting, without: row }) : whole;
    const probabilities = classify(model, cellsOf(data, row, skipped));
    const first = probabilities.indexOf(Math.max(...probabilities));
    if (model.classes[first] === label) correct += 1;
    else wrong.push(`${data.rows[row]?.[0]} → ${model.classes[first]}`);
    model.classes.forEach((name, index) => {
      const target = name === label ? 1 : 0;
      brier += ((probabilities[index] ?? 0) - target) ** 2;
      if (target === 1) logLoss -= Math.log(Math.max(LEAST_PUBLISHED, probabilities[index] ?? 0));
    });
  });
  return { correct, brier: brier / labels.length, logLoss: logLoss / labels.length, wrong };
}
