/** Naive Bayes tables counted from open data, so that published figures run through the project's own posterior. */
import { type AnswerTable, posteriorFromTables } from "../../knowledge/identification/posterior.ts";
import { columnOf, type DataTable } from "./data-tables.ts";

export interface NaiveBayes {
  readonly classes: readonly string[];
  readonly prior: readonly number[];
  readonly tables: ReadonlyMap<string, AnswerTable>;
}

interface Counting {
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
  const { classColumn, without } = counting;
  const labels = columnOf(data, classColumn);
  const classes = [...new Set(labels)].sort();
  const used = labels.map((_, row) => row).filter((row) => row !== without);
  const prior = classes.map((name) => used.filter((row) => labels[row] === name).length / used.length);
  const skipped = new Set([classColumn, ...(counting.skippedColumns ?? [])]);
  const tables = new Map(
    data.columns
      .filter((column) => !skipped.has(column))
      .map((column) => [column, tableOf(data, column, classes, counting)]),
  );
  return { classes, prior, tables };
}

/** How often each class shows each level, and shows any: counted once, then one row taken off again. */
interface Counts {
  readonly answers: readonly string[];
  readonly byClass: ReadonlyMap<string, ReadonlyMap<string, number>>;
}
const counted = new WeakMap<DataTable, Map<string, Counts>>();

function countsOf(data: DataTable, column: string, classColumn: string): Counts {
  const known = counted.get(data) ?? new Map<string, Counts>();
  counted.set(data, known);
  const found = known.get(column);
  if (found) return found;
  const cells = columnOf(data, column);
  const byClass = new Map<string, Map<string, number>>();
  columnOf(data, classColumn).forEach((label, row) => {
    const cell = cells[row] ?? "";
    const levels = byClass.get(label) ?? new Map<string, number>();
    byClass.set(label, levels.set(cell, (levels.get(cell) ?? 0) + 1));
  });
  const counts = { answers: [...new Set(cells)].filter((cell) => cell !== "").sort(), byClass };
  known.set(column, counts);
  return counts;
}

function tableOf(
  data: DataTable,
  column: string,
  classes: readonly string[],
  counting: Counting,
): AnswerTable {
  const { answers, byClass } = countsOf(data, column, counting.classColumn);
  const leftOut = counting.without === undefined ? undefined : data.rows[counting.without];
  const label = leftOut?.[data.columns.indexOf(counting.classColumn)];
  const cell = leftOut?.[data.columns.indexOf(column)];
  const likelihood = classes.flatMap((name) => {
    const counts = answers.map(
      (answer) => (byClass.get(name)?.get(answer) ?? 0) - Number(name === label && answer === cell),
    );
    const total = counts.reduce((sum, count) => sum + count, 0);
    return counts.map((count) => (count + counting.alpha) / (total + counting.alpha * answers.length));
  });
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
