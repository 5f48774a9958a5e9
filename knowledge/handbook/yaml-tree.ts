/**
 * From the YAML library's tree to plain values, refusing what a handbook has no use for: aliases, tags, keys that
 * are no words, keys given twice, numbers that two readers would read differently, bottomless nesting. Done by our
 * own walk, because the library's duplicate check compares every key with every other, and its conversion to
 * values would expand aliases first.
 */
import { isAlias, isMap, isScalar, isSeq, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { ProblemCode } from "./problem.ts";

/** A fault at an offset of the text. */
export interface Fault {
  readonly offset: number;
  readonly code: ProblemCode;
  readonly message: string;
  readonly mend: string;
}

const DEEPEST = 16;
const DECIMAL = /^-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?$/;

/** The plain value of a node; what is refused is added to `faults` and read as undefined. */
export function plainValue(node: unknown, faults: Fault[], depth = 0): unknown {
  if (node === null || node === undefined) return null;
  if (depth > DEEPEST) return refuse(faults, node, deep);
  if (isAlias(node)) return refuse(faults, node, alias);
  if (!isScalar(node) && !isMap(node) && !isSeq(node)) return refuse(faults, node, notPlain);
  if (node.tag !== undefined) return refuse(faults, node, tag);
  if (isScalar(node)) return scalarValue(node, faults);
  return isMap(node) ? recordValue(node, faults, depth) : listValue(node, faults, depth);
}

const deep = {
  code: "yaml-depth",
  message: "lists and records lie too deep inside one another",
  mend: "a handbook needs no more than a few steps of indentation",
} as const;
const alias = {
  code: "yaml-alias",
  message: "a reference (*) to another place is not allowed",
  mend: "write the value out, or put the text in quotes if it begins with a star",
} as const;
const tag = {
  code: "yaml-tag",
  message: "a tag (!) is not allowed",
  mend: "remove it, or put the text in quotes if it begins with an exclamation mark",
} as const;
const notPlain = {
  code: "yaml-syntax",
  message: "this is neither text, number, list nor record",
  mend: "put text in quotes",
} as const;

function listValue(node: YAMLSeq, faults: Fault[], depth: number): unknown[] {
  return node.items.map((item) => plainValue(item, faults, depth + 1));
}

function recordValue(node: YAMLMap, faults: Fault[], depth: number): Record<string, unknown> {
  const record: Record<string, unknown> = {};
  for (const pair of node.items) {
    const key = keyText(pair.key);
    const fault = keyFault(key, record);
    if (key === undefined || fault !== undefined) refuse(faults, pair.key ?? node, fault ?? badKey);
    else record[key] = plainValue(pair.value, faults, depth + 1);
  }
  return record;
}

const badKey = {
  code: "yaml-key",
  message: "a key is missing or is no plain word",
  mend: "write key: value, with one word before the colon",
} as const;

/** The text of a key as written, so that 1980 stays 1980; undefined when it is no scalar or is empty. */
export function keyText(key: unknown): string | undefined {
  if (!isScalar(key) || key.tag !== undefined) return undefined;
  const text = key.type === "PLAIN" ? key.source : String(key.value);
  return text === "" ? undefined : text;
}

function keyFault(key: string | undefined, record: object): Omit<Fault, "offset"> | undefined {
  if (key === undefined) return badKey;
  if (key === "__proto__") return { ...badKey, message: `the key ${key} is not allowed` };
  if (!Object.hasOwn(record, key)) return undefined;
  return {
    code: "yaml-key-twice",
    message: `the key ${shortened(key)} is given twice`,
    mend: "keep one of the two, or rename one",
  };
}

function scalarValue(node: Scalar, faults: Fault[]): unknown {
  const { value, source = "" } = node;
  if (typeof value !== "number") return value;
  const isRead = DECIMAL.test(source) && Number.isFinite(value) && isExact(value);
  if (isRead) return value;
  return refuse(faults, node, {
    code: "value-number",
    message: `the number ${shortened(source)} can be read in more than one way or is too large`,
    mend: `put it in quotes if it is text ("${shortened(source)}"); else write a plain decimal number`,
  });
}

function isExact(value: number): boolean {
  return Math.abs(value) <= Number.MAX_SAFE_INTEGER;
}

function refuse(faults: Fault[], node: unknown, fault: Omit<Fault, "offset">): undefined {
  faults.push({ ...fault, offset: offsetOf(node) ?? 0 });
  return undefined;
}

/** Where a node begins in the text; undefined for what has no place of its own. */
export function offsetOf(node: unknown): number | undefined {
  const hasRange = isScalar(node) || isMap(node) || isSeq(node) || isAlias(node);
  return hasRange ? node.range?.[0] : undefined;
}

/** A text bounded for a one-line message. */
export function shortened(text: string): string {
  const oneLine = text.replaceAll(/[\s\p{Cc}]+/gu, " ").trim();
  return oneLine.length > 40 ? `${oneLine.slice(0, 37)}...` : oneLine;
}
