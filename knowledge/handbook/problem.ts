/**
 * What is wrong with a handbook, where, and how to mend it. A historian reads these lines, so a problem is a
 * value with words for a person and a code for programs and tests, never an exception.
 */

/** Every way in which a handbook can be unsound; tests and callers match on these, not on the words. */
export const problemCodes = [
  // the folder and its files
  "folder-missing",
  "folder-unreadable",
  "folder-too-large",
  "too-many-files",
  "file-missing",
  "file-unknown",
  "file-path",
  "file-twice",
  "file-too-large",
  "file-not-text",
  "file-empty",
  "file-name",
  "problems-left-out",
  // the writing
  "yaml-syntax",
  "yaml-tab",
  "yaml-indentation",
  "yaml-key",
  "yaml-key-twice",
  "yaml-alias",
  "yaml-tag",
  "yaml-depth",
  "yaml-several-documents",
  "json-syntax",
  // the shape
  "key-unknown",
  "key-missing",
  "value-missing",
  "value-type",
  "value-range",
  "value-choice",
  "value-id",
  "value-date",
  "value-frequency",
  "value-number",
  "text-length",
  "list-length",
  "claim-mixed",
  "learnt-words-shape",
  // what one place says of another
  "id-twice",
  "id-reserved",
  "id-unknown",
  "id-itself",
  "period-order",
  "period-outside-production",
  "variant-never-fitted",
  "variant-never-sold",
  "variant-not-fitted-by-works",
  "claim-kind",
  "claim-empty",
  "claim-sum",
  "misread-sum",
  "serial-form",
  "serial-order",
  "chain-cycle",
  "chain-fork",
  "feature-in-two-groups",
  "drawing-missing",
  "drawing-unused",
  "drawing-unsafe",
  "learnt-words-unknown",
  "learnt-words-missing",
] as const;
export type ProblemCode = (typeof problemCodes)[number];

export interface Problem {
  readonly code: ProblemCode;
  /** Path inside the handbook folder, such as parts/rear-spoiler.yaml; "." for the folder itself. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units as editors count. */
  readonly column: number;
  /** What is wrong, lower case, no full stop. */
  readonly message: string;
  /** What to do about it, lower case, no full stop. */
  readonly mend: string;
}

/** Where in a file something stands; line and column count from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

export const fileStart: Place = { line: 1, column: 1 };

/** More than this of one file helps nobody, and placing each would let a hostile file take all day. */
export const mostProblems = 200;

/** Stands for the problems of a file that are not listed. */
export function problemsLeftOut(file: string): Problem {
  const message = `only the first ${mostProblems} problems of this file are listed`;
  return { code: "problems-left-out", file, ...fileStart, message, mend: "mend these first" };
}

/** One line for a person: `parts/rear-spoiler.yaml:41:7  unknown state "ruff" … did you mean "rough"?`; a problem of the folder has no place. */
export function problemText(problem: Problem): string {
  const told = `${problem.message} … ${problem.mend}`;
  return problem.file === "." ? told : `${problem.file}:${problem.line}:${problem.column}  ${told}`;
}

/** The problems by file, line, column and code; equal lines are listed once. */
export function sortedProblems(problems: readonly Problem[]): readonly Problem[] {
  const unique = new Map(problems.map((problem) => [problemText(problem), problem]));
  return [...unique.values()].sort(
    (one, other) =>
      byCodeUnit(one.file, other.file) ||
      one.line - other.line ||
      one.column - other.column ||
      byCodeUnit(one.code, other.code) ||
      byCodeUnit(one.message, other.message),
  );
}

/** Order of two texts by code unit: the same on every machine, whatever its language. */
export function byCodeUnit(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
