/** Where the checks of one file write down what they find: problems that stop the handbook, warnings that do not. */
import { didYouMean } from "./nearest-name.ts";
import { mostProblems, type Problem, type ProblemCode, problemsLeftOut } from "./problem.ts";
import type { Path, YamlReading } from "./yaml-reading.ts";

export interface CheckSheet {
  readonly file: string;
  readonly problems: Problem[];
  readonly warnings: Problem[];
  readonly placeOf: YamlReading["placeOf"];
}

export interface Finding {
  readonly code: ProblemCode;
  readonly path: Path;
  /** Default: the value. */
  readonly at?: "key" | "value";
  readonly message: string;
  readonly mend: string;
}

export function checkSheet(reading: YamlReading): CheckSheet {
  return { file: reading.file, problems: [], warnings: [], placeOf: reading.placeOf };
}

/** Writes down a problem, unless the sheet is full. */
export function fault(sheet: CheckSheet, finding: Finding): void {
  if (isFull(sheet)) return;
  sheet.problems.push(placed(sheet, finding));
  if (sheet.problems.length === mostProblems) sheet.problems.push(problemsLeftOut(sheet.file));
}

/** Writes down a warning: the handbook serves, but somebody should look. */
export function warn(sheet: CheckSheet, finding: Finding): void {
  if (sheet.warnings.length < mostProblems) sheet.warnings.push(placed(sheet, finding));
}

/** Whether no more problems are taken: then it is not worth working out a suggestion either. */
export function isFull(sheet: CheckSheet): boolean {
  return sheet.problems.length > mostProblems;
}

function placed(sheet: CheckSheet, { code, path, at, message, mend }: Finding): Problem {
  return { code, file: sheet.file, ...sheet.placeOf(path, at), message, mend };
}

/** Ids that may be named, by what they are called in a message; undefined means their own file is broken: no check. */
export type KnownIds = ReadonlySet<string> | undefined;

/** Checks that a named id exists. `what`: "variant", "source" …, as the message calls it. */
export function checkKnown(
  sheet: CheckSheet,
  what: string,
  id: string,
  known: KnownIds,
  path: Path,
): boolean {
  if (known === undefined || known.has(id)) return true;
  if (isFull(sheet)) return false;
  fault(sheet, {
    code: "id-unknown",
    path,
    at: path.at(-1) === id ? "key" : "value",
    message: `unknown ${what} "${id}"`,
    mend: didYouMean(id, [...known]),
  });
  return false;
}

/** Checks every id of a list. */
export function checkAllKnown(
  sheet: CheckSheet,
  what: string,
  ids: readonly string[],
  known: KnownIds,
  path: Path,
): void {
  for (const [index, id] of ids.entries()) checkKnown(sheet, what, id, known, [...path, index]);
}

/** Checks that no two items of a list have one id, and returns the ids. */
export function checkUnique(
  sheet: CheckSheet,
  what: string,
  items: readonly { readonly id: string }[],
  path: Path,
): ReadonlySet<string> {
  const firstIndex = new Map<string, number>();
  for (const [index, { id }] of items.entries()) {
    const first = firstIndex.get(id);
    if (first === undefined) firstIndex.set(id, index);
    else noteTwice(sheet, what, id, [...path, index, "id"], [...path, first, "id"]);
  }
  return new Set(firstIndex.keys());
}

function noteTwice(sheet: CheckSheet, what: string, id: string, path: Path, first: Path): void {
  fault(sheet, {
    code: "id-twice",
    path,
    message: `two have the ${what} id "${id}"`,
    mend: `the first stands in line ${sheet.placeOf(first).line}: rename one of them`,
  });
}
