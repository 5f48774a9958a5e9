/** Words for the plain kinds of wrong value: missing, of another type, out of bounds, not among the choices. */
import type { z } from "zod";
import { didYouMean } from "./nearest-name.ts";
import type { ProblemCode } from "./problem.ts";
import type { Path } from "./yaml-reading.ts";
import { shortened } from "./yaml-tree.ts";

/** A problem that is not placed yet: it stands at a path's value or key. */
export interface Complaint {
  readonly code: ProblemCode;
  readonly path: Path;
  readonly at: "key" | "value";
  readonly message: string;
  readonly mend: string;
}

/** A key that is not there stands at its record; one with nothing behind its colon stands at itself. */
export function valueMissing(path: Path, found: null | undefined): Complaint {
  const key = nameOf(path);
  if (found === null) {
    const message = path.length === 0 ? "the file is empty" : `nothing stands behind ${key}`;
    const mend = mendNothing(key);
    return { code: "value-missing", path, at: "key", message, mend };
  }
  const parent = path.slice(0, -1);
  return {
    code: "key-missing",
    path: parent,
    at: "value",
    message: `${key} is missing`,
    mend: `add a line ${key}: …`,
  };
}

/** No key has a blank in it: such a one is the rest of a text. */
export const commaEnds = "a comma inside { } ends the text before it: put the whole text in quotes";

function mendNothing(key: string): string {
  if (key.includes(":")) return "put a space after the colon";
  return /\s/u.test(key) ? commaEnds : "write a value, or delete the line";
}

/** Words for one issue about a value that is there. */
export function plainComplaint(issue: z.core.$ZodIssue, path: Path, found: unknown): Complaint {
  return { path, at: "value", ...wordsFor(issue, nameOf(path), found) };
}

type Words = Pick<Complaint, "code" | "message" | "mend">;

function wordsFor(issue: z.core.$ZodIssue, name: string, found: unknown): Words {
  switch (issue.code) {
    case "invalid_type":
      return wrongType(issue.expected, name, found);
    case "invalid_value": {
      const mend = didYouMean(String(found), issue.values.map(String), "write one of");
      return { code: "value-choice", message: `${name} cannot be ${showValue(found)}`, mend };
    }
    case "invalid_format":
      return {
        code: "value-id",
        message: `${showValue(found)} is no id`,
        mend: mendId(found, issue.message),
      };
    case "too_small":
      return outOfBounds(issue.origin, name, `at least ${issue.minimum}`, issue.inclusive);
    case "too_big":
      return outOfBounds(issue.origin, name, `at most ${issue.maximum}`, issue.inclusive);
    default:
      return {
        code: "value-type",
        message: `${name} is not right`,
        mend: "compare it with a sound neighbour",
      };
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  tuple: "a list of two",
  object: "a record of key: value lines",
  record: "a record of key: value lines",
};

function wrongType(expected: string, name: string, found: unknown): Words {
  const message = `${name} must be ${TYPES[expected] ?? expected}, not ${showValue(found)}`;
  return { code: "value-type", message, mend: mendType(expected, name, found) };
}

function mendType(expected: string, name: string, found: unknown): string {
  const isSingle = typeof found !== "object";
  if (expected === "string" && isSingle) return `put it in quotes: "${String(found)}"`;
  if (expected === "array" && isSingle) return `write ${name}: [${shortened(String(found))}]`;
  if (expected === "array" && found !== null && !Array.isArray(found))
    return "put a hyphen before each entry";
  if (expected === "boolean") return "write true or false";
  if (expected === "number" || expected === "int") return "write plain figures, without quotes or a unit";
  return `write ${TYPES[expected] ?? expected}`;
}

function mendId(found: unknown, rule: string): string {
  const slug = String(found)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "");
  return slug !== "" && slug !== found && slug.length <= 60 ? `write ${slug}` : rule;
}

function outOfBounds(origin: string, name: string, bound: string, isInclusive: boolean | undefined): Words {
  if (origin === "string") {
    const isEmpty = bound === "at least 1";
    const message = isEmpty ? `${name} is empty` : `${name} is too long`;
    return {
      code: "text-length",
      message,
      mend: isEmpty ? "write some text, or delete the line" : `keep it to ${bound} letters`,
    };
  }
  if (origin === "array") {
    return {
      code: "list-length",
      message: `${name} needs ${bound} entries`,
      mend: "add or remove entries to fit",
    };
  }
  const limit = isInclusive === false ? bound.replace("at least", "more than") : bound;
  return { code: "value-range", message: `${name} must be ${limit}`, mend: "correct the number" };
}

/** The nearest key above a value: of variants[3].also[0] it is "also". */
function nameOf(path: Path): string {
  const key = path.findLast((step) => typeof step === "string");
  return key === undefined ? "the file" : shortened(String(key));
}

/** A value as it can be shown in one line. */
export function showValue(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "a record";
  return typeof value === "string" ? `"${shortened(value)}"` : String(value);
}
