// A list of sightings from comma-separated text, as a spreadsheet saves it: all rows or none, and every fault with its
// row and column, so that whoever keeps the list can mend it in one go.
import { z } from "zod";
import { parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import { provenanceGrades } from "../evidence/car-description.ts";
import { type CellRow, readCommaSeparated } from "./comma-separated.ts";
import { found, type Result } from "./result.ts";
import type { Sighting } from "./sighting.ts";

export interface SightingProblem {
  readonly code:
    | "csv"
    | "column-unknown"
    | "column-missing"
    | "column-twice"
    | "cell"
    | "id-twice"
    | "too-many-rows";
  /** Line of the text, from 1. */
  readonly row: number;
  /** From 1; 0 for the row as a whole. */
  readonly column: number;
  /** Lower case, no full stop. */
  readonly message: string;
}

/** One row: `id` and everything after `built` may be left out. */
const SightingRow = z.object({
  id: z.string().max(120, "no more than 120 characters stand here").default(""),
  variant: z
    .string()
    .min(1, "a sighting names the variant that was seen")
    .max(120, "no more than 120 characters stand here"),
  built: z.string().transform((text, context): Interval => {
    const interval = readBuilt(text);
    if (interval) return interval;
    context.addIssue({
      code: "custom",
      message: "a build date is written 1980, 1980-05, 1980-05-17, 1981-W31, or two of them with / between",
    });
    return z.NEVER;
  }),
  grade: z
    .enum(provenanceGrades, { error: `a grade is one of ${provenanceGrades.join(", ")}` })
    .default("history-unknown"),
  misread: z
    .string()
    .regex(/^(0(\.\d+)?|\.\d+)$/, "a misread rate is a number from 0 to .5")
    .transform(Number)
    .refine((rate) => rate <= 0.5, "a misread rate is a number from 0 to .5")
    .default(0.02),
  sought: z.enum(["yes", "no"], { error: "sought is yes or no" }).default("no"),
  ruling: z.enum(["as-built"], { error: "a ruling is as-built or nothing" }).optional(),
  model: z.string().max(120, "no more than 120 characters stand here").optional(),
  trim: z.string().max(120, "no more than 120 characters stand here").optional(),
  market: z.string().max(120, "no more than 120 characters stand here").optional(),
  note: z.string().max(2000, "no more than 2000 characters stand here").optional(),
});
type SightingRow = z.output<typeof SightingRow>;

const COLUMNS: readonly string[] = Object.keys(SightingRow.shape);
const NEEDED = ["variant", "built"] as const;
const MOST_ROWS = 20_000;
const MOST_PROBLEMS = 200;

/**
 * The sightings of a text whose first row names the columns (`variant` and `built` are needed; `id`, `grade`, `misread`,
 * `sought`, `ruling`, `model`, `trim`, `market`, `note` may follow in any order), or its first 200 problems. A row
 * without an id is called "row-" and its line. Cells that look like formulas are text like any other.
 */
export function parseSightings(csvText: string): Result<readonly Sighting[], readonly SightingProblem[]> {
  const { rows, faults } = readCommaSeparated(csvText);
  if (faults.length > 0) return refusedWith(faults.map((fault) => ({ code: "csv", ...fault })));
  const [head, ...body] = rows;
  if (!head)
    return refusedWith([
      problem("column-missing", 1, 0, "the text is empty: its first row names the columns"),
    ]);
  const columns = head.cells.map(({ text }) => text.trim().toLowerCase());
  const headProblems = checkHead(head, columns);
  if (headProblems.length > 0) return refusedWith(headProblems);
  if (body.length > MOST_ROWS) {
    return refusedWith([problem("too-many-rows", MOST_ROWS, 0, `more than ${MOST_ROWS} sightings at once`)]);
  }
  return readRows(body, columns);
}

function problem(
  code: SightingProblem["code"],
  row: number,
  column: number,
  message: string,
): SightingProblem {
  return { code, row, column, message };
}

function refusedWith(problems: readonly SightingProblem[]): {
  readonly ok: false;
  readonly problem: readonly SightingProblem[];
} {
  return { ok: false, problem: problems.slice(0, MOST_PROBLEMS) };
}

function checkHead(head: CellRow, columns: readonly string[]): readonly SightingProblem[] {
  const wrong = columns.flatMap((name, index): SightingProblem[] => {
    if (!COLUMNS.includes(name)) {
      const message = `there is no column "${name.slice(0, 60)}"; the columns are ${COLUMNS.join(", ")}`;
      return [problem("column-unknown", head.row, index + 1, message)];
    }
    if (columns.indexOf(name) === index) return [];
    return [problem("column-twice", head.row, index + 1, `the column ${name} stands here a second time`)];
  });
  const missing = NEEDED.filter((name) => !columns.includes(name)).map((name) =>
    problem("column-missing", head.row, 0, `the column ${name} is missing`),
  );
  return [...wrong, ...missing];
}

function readRows(
  rows: readonly CellRow[],
  columns: readonly string[],
): Result<readonly Sighting[], readonly SightingProblem[]> {
  const problems: SightingProblem[] = [];
  const sightings: Sighting[] = [];
  const ids = new Set<string>();
  for (const row of rows) {
    if (problems.length >= MOST_PROBLEMS) break;
    const read = readRow(row, columns);
    if (!read.ok) {
      problems.push(...read.problem);
      continue;
    }
    if (ids.has(read.value.id)) {
      const message = `the id "${read.value.id}" has been given to an earlier sighting`;
      problems.push(problem("id-twice", row.row, columns.indexOf("id") + 1, message));
    }
    ids.add(read.value.id);
    sightings.push(read.value);
  }
  return problems.length > 0 ? refusedWith(problems) : found(sightings);
}

function readRow(row: CellRow, columns: readonly string[]): Result<Sighting, readonly SightingProblem[]> {
  const extra = row.cells[columns.length];
  if (extra) {
    const message = `this row has ${row.cells.length} cells, the first row names ${columns.length} columns`;
    return refusedWith([problem("csv", row.row, extra.column, message)]);
  }
  const written = row.cells
    .map(({ text }, index) => [columns[index] as string, text.trim()] as const)
    .filter(([name, text]) => text !== "" || NEEDED.some((needed) => needed === name));
  const parsed = SightingRow.safeParse({ variant: "", built: "", ...Object.fromEntries(written) });
  if (parsed.success) return found(sightingOf(parsed.data, row.row));
  return refusedWith(
    parsed.error.issues.map((issue) =>
      problem("cell", row.row, columns.indexOf(String(issue.path[0])) + 1, issue.message),
    ),
  );
}

function sightingOf(read: SightingRow, row: number): Sighting {
  const { model, trim, market, note } = read;
  return {
    id: read.id === "" ? `row-${row}` : read.id,
    variant: read.variant,
    built: read.built,
    grade: read.grade,
    misread: read.misread,
    isSought: read.sought === "yes",
    isRuledAsBuilt: read.ruling === "as-built",
    ...(model === undefined ? {} : { model }),
    ...(trim === undefined ? {} : { trim }),
    ...(market === undefined ? {} : { market }),
    ...(note === undefined ? {} : { note }),
  };
}

/** A date, or a stretch from the start of one date to the end of another: `1979-05/1979-08` (ISO 8601). */
function readBuilt(text: string): Interval | undefined {
  const dates = text.split("/").map((date) => parseDateText(date.trim()));
  const [first, last] = [dates[0], dates.at(-1)];
  if (!first || !last || dates.length > 2) return undefined;
  return last.to > first.from ? { from: first.from, to: last.to } : undefined;
}
