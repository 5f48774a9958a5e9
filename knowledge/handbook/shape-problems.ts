/**
 * A read file checked against its shape, and the schema library's issues turned into lines for a historian: each at
 * its own place, unions answered by one sentence about the form that was probably meant.
 */
import { z } from "zod";
import { frequencyWords, parseFrequency } from "./frequency.ts";
import { didYouMean } from "./nearest-name.ts";
import { mostProblems, type Problem, problemsLeftOut } from "./problem.ts";
import { type Complaint, commaEnds, plainComplaint, showValue, valueMissing } from "./shape-words.ts";
import type { Path, YamlReading } from "./yaml-reading.ts";

type Issue = z.core.$ZodIssue;
export type Shaped<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The reading's value in the schema's output type, or all that is wrong with its shape. */
export function shaped<T>(schema: z.ZodType<T>, reading: YamlReading): Shaped<T> {
  if (reading.problems.length > 0) return { ok: false, problems: reading.problems };
  const result = schema.safeParse(reading.value, { error: knownKeys });
  if (result.success) return { ok: true, value: result.data };
  const all = result.error.issues
    .slice(0, mostProblems)
    .flatMap((issue) => complaints(issue, [], reading.value));
  const misspelt = new Set(all.flatMap(misspeltKey));
  const kept = all.filter(({ code, path, message }) => {
    return code !== "key-missing" || !misspelt.has(`${path.join("/")} ${message}`);
  });
  const problems = kept.slice(0, mostProblems).map((complaint) => placed(complaint, reading));
  const isCut = result.error.issues.length > mostProblems || kept.length > mostProblems;
  return { ok: false, problems: isCut ? [...problems, problemsLeftOut(reading.file)] : problems };
}

/** A key that is "missing" only because it was misspelt is complained of once, where it stands. */
function misspeltKey({ code, path, mend }: Complaint): readonly string[] {
  const meant = code === "key-unknown" ? /^did you mean "(.*)"\?$/.exec(mend)?.[1] : undefined;
  return meant === undefined ? [] : [`${path.slice(0, -1).join("/")} ${meant} is missing`];
}

function placed({ path, at, code, message, mend }: Complaint, reading: YamlReading): Problem {
  return { code, file: reading.file, ...reading.placeOf(path, at), message, mend };
}

/** Only while the library makes an issue does it know which keys the record has: they are handed on in its message. */
function knownKeys(issue: z.core.$ZodRawIssue): string | undefined {
  if (issue.code !== "unrecognized_keys") return undefined;
  return issue.inst instanceof z.ZodObject ? Object.keys(issue.inst.shape).join(" ") : "";
}

function complaints(issue: Issue, parent: Path, value: unknown): readonly Complaint[] {
  const path = [...parent, ...issue.path.map(plainStep)];
  const found = valueAt(value, path);
  if (issue.code === "unrecognized_keys") return unknownKeys(issue, path, found);
  if (issue.code === "invalid_key") return issue.issues.map((inner) => badKey(inner, path));
  if (found === undefined || found === null) return [valueMissing(path, found)];
  if (issue.code === "invalid_union") return unionComplaints(issue, path, found, value);
  if (issue.code === "custom" || isFrequencyPlace(issue, path)) return [writtenWrongly(issue, path, found)];
  return [plainComplaint(issue, path, found)];
}

function plainStep(step: PropertyKey): string | number {
  return typeof step === "number" ? step : String(step);
}

function valueAt(value: unknown, path: Path): unknown {
  let found: unknown = value;
  for (const step of path) {
    if (typeof found !== "object" || found === null || !Object.hasOwn(found, step)) return undefined;
    found = Reflect.get(found, step);
  }
  return found;
}

function unknownKeys(
  issue: z.core.$ZodIssueUnrecognizedKeys,
  path: Path,
  found: unknown,
): readonly Complaint[] {
  // A claim whose only fault is a key too many comes back as this issue, not as its union's.
  if (isMixedClaim(path, found)) return [mixedClaim(path)];
  return issue.keys.slice(0, mostProblems + 1).map((key) => unknownKey(key, path, issue.message));
}

function unknownKey(key: string, path: Path, known: string): Complaint {
  const mend = /\s/u.test(key) ? commaEnds : didYouMean(key, known.split(" "), "known keys");
  return { code: "key-unknown", path: [...path, key], at: "key", message: `unknown key "${key}"`, mend };
}

function badKey(issue: Issue, path: Path): Complaint {
  const key = String(path.at(-1) ?? "");
  const code = issue.message.startsWith("a year") ? "value-date" : "value-id";
  return { code, path, at: "key", message: `${showValue(key)} cannot be a key here`, mend: issue.message };
}

function isFrequencyPlace(issue: Issue, path: Path): boolean {
  const isInTable = path.includes("tells") || path.includes("causes");
  const isSaid = isInTable && path.length >= 5 && !path.includes("sources");
  return isSaid && issue.code === "invalid_type" && issue.expected === "string";
}

/** A date or a frequency that is none. */
function writtenWrongly(issue: Issue, path: Path, found: unknown): Complaint {
  const isDate = issue.code === "custom" && issue.message.startsWith("a date");
  if (isDate) return wrongDate(path, found);
  return {
    code: "value-frequency",
    path,
    at: "value",
    message: `${showValue(found)} is no frequency`,
    mend: mendFrequency(String(found)),
  };
}

function mendFrequency(written: string): string {
  const [, seen, of] = /(\d{1,5}) *(?:\/|of|out of) *(\d{1,5})$/iu.exec(written.trim()) ?? [];
  if (Number(seen) > Number(of))
    return `no more can be seen than were looked at: write ${of} of ${seen}, or count again`;
  if (seen !== undefined && /^\d/u.test(written.trim())) return `write ${seen} of ${of}`;
  if (/\d *%?$/u.test(written) && seen === undefined) {
    return "a share does not say how many were looked at: write a count such as 17 of 20, or a word such as usually";
  }
  const near = didYouMean(written, Object.keys(frequencyWords));
  if (near.startsWith("did you")) return near;
  return "write always, nearly always, usually, often, about half, sometimes, rarely, never, or a count such as 17 of 20";
}

function wrongDate(path: Path, found: unknown): Complaint {
  return {
    code: "value-date",
    path,
    at: "value",
    message: `${showValue(found)} is no date`,
    mend: "write 1980, 1980-05, 1980-05-17 or 1981-W31, a date that exists in the calendar",
  };
}

function unionComplaints(
  issue: z.core.$ZodIssueInvalidUnion,
  path: Path,
  found: unknown,
  value: unknown,
): readonly Complaint[] {
  if ("discriminator" in issue && issue.discriminator !== undefined) {
    const choices = ("options" in issue ? (issue.options ?? []) : []).map(String);
    const message = `${issue.discriminator} cannot be ${showValue(found)}`;
    return [{ code: "value-choice", path, at: "value", message, mend: didYouMean(String(found), choices) }];
  }
  const branch = (index: number) =>
    (issue.errors[index] ?? []).flatMap((inner) => complaints(inner, path, value));
  if (path.at(-2) === "tells") return claimComplaints(path, found, branch);
  if (path.at(-1) === "misread") return misreadComplaints(path, found, branch);
  return [wrongDate(path, found)];
}

type Branch = (index: number) => readonly Complaint[];
const MEASUREMENT_KEYS = new Set(["mean", "spread", "sources"]);

function claimComplaints(path: Path, found: unknown, branch: Branch): readonly Complaint[] {
  if (typeof found !== "object" || found === null || Array.isArray(found)) {
    return [claimMixed(path, `${showValue(found)} is no claim`)];
  }
  const isMeasured = Object.hasOwn(found, "mean") || Object.hasOwn(found, "spread");
  if (!isMeasured) return branch(1);
  return isMixedClaim(path, found) ? [mixedClaim(path)] : branch(0);
}

function isMixedClaim(path: Path, found: unknown): boolean {
  if (path.at(-2) !== "tells" || typeof found !== "object" || found === null) return false;
  return Object.entries(found).some(
    ([key, said]) => !MEASUREMENT_KEYS.has(key) && typeof said === "string" && parseFrequency(said),
  );
}

function mixedClaim(path: Path): Complaint {
  return claimMixed(path, "a claim cannot measure and name states at once");
}

function claimMixed(path: Path, message: string): Complaint {
  const mend =
    "write either { mean: 12.5, spread: 0.3 } or states with frequencies, such as { rough: usually, smooth: rarely }";
  return { code: "claim-mixed", path, at: "value", message, mend };
}

function misreadComplaints(path: Path, found: unknown, branch: Branch): readonly Complaint[] {
  if (typeof found === "number") return branch(0);
  if (Array.isArray(found)) return branch(1);
  const message = `misread cannot be ${showValue(found)}`;
  const mend = "write one rate such as 0.05, or a list of { is: …, said: …, rate: … }";
  return [{ code: "value-type", path, at: "value", message, mend }];
}
