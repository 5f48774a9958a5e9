/**
 * One YAML file as a plain value, with a way to ask afterwards where a path of it stands. Places are worked out
 * only when there is something to complain of, so a sound handbook loads at the price of its values alone.
 */
import { type Document, isMap, isSeq, type Pair, parseDocument } from "yaml";
import { fileProblem, type HandbookFile } from "./handbook-file.ts";
import { placesIn } from "./place-in-text.ts";
import { readPlainYaml } from "./plain-yaml.ts";
import { fileStart, mostProblems, type Place, type Problem, problemsLeftOut } from "./problem.ts";
import { type Fault, keyText, offsetOf, plainValue } from "./yaml-tree.ts";
import { yamlComplaints } from "./yaml-words.ts";

/** Keys and list positions from the top of a file: ["variants", 3, "tells", "finish"]. */
export type Path = readonly (string | number)[];

export interface YamlReading {
  readonly file: string;
  readonly value: unknown;
  /** Not empty: `value` must not be used. */
  readonly problems: readonly Problem[];
  /** Where a path's value stands, or its key; of a path that is not in the file, where its nearest parent stands. */
  readonly placeOf: (path: Path, at?: "key" | "value") => Place;
}

/** Reads one YAML document; every fault is a problem with its place, and nothing is thrown. */
export function readYaml(file: HandbookFile): YamlReading {
  const value = readPlainYaml(file.text);
  if (value === undefined) return readAnyYaml(file);
  const placed = lazily(() => readAnyYaml(file));
  return { file: file.path, value, problems: [], placeOf: (path, at) => placed().placeOf(path, at) };
}

/** The same by the library alone, which reads all of YAML and knows where everything stands. */
export function readAnyYaml(file: HandbookFile): YamlReading {
  const document = parsed(file.text);
  if (document === undefined) {
    const problem = fileProblem(
      "yaml-depth",
      file.path,
      "lists and records lie too deep inside one another",
      "a handbook needs no more than a few steps of indentation",
    );
    return { file: file.path, value: undefined, problems: [problem], placeOf: () => fileStart };
  }
  const place = lazily(() => placesIn(file.text));
  const faults: Fault[] = [...yamlComplaints(document.errors, file.text)];
  const value = faults.length === 0 ? plainValue(document.contents, faults) : undefined;
  return {
    file: file.path,
    value,
    problems: placedFaults(file.path, faults, place),
    placeOf: (path, at = "value") => place()(offsetOfPath(document, path, at)),
  };
}

function placedFaults(
  file: string,
  faults: readonly Fault[],
  place: () => (offset: number) => Place,
): readonly Problem[] {
  const problems = faults
    .slice(0, mostProblems)
    .map(({ offset, ...fault }) => ({ file, ...fault, ...place()(offset) }));
  return faults.length > mostProblems ? [...problems, problemsLeftOut(file)] : problems;
}

/** The library's tree; undefined when the nesting is so deep that reading it runs out of stack. */
function parsed(text: string): Document.Parsed | undefined {
  try {
    return parseDocument(text, { uniqueKeys: false, prettyErrors: false, logLevel: "error" });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function offsetOfPath(document: Document.Parsed, path: Path, at: "key" | "value"): number {
  let node: unknown = document.contents;
  let offset = offsetOf(node) ?? 0;
  for (const [index, step] of path.entries()) {
    const isLast = index === path.length - 1;
    const child = childOf(node, step);
    if (child === undefined) return offset;
    node = child.value;
    const wanted = isLast && at === "key" ? child.key : child.value;
    offset = offsetOf(wanted) ?? offsetOf(child.key) ?? offset;
  }
  return offset;
}

function childOf(node: unknown, step: string | number): { key: unknown; value: unknown } | undefined {
  if (isSeq(node) && typeof step === "number") {
    return step in node.items ? { key: node.items[step], value: node.items[step] } : undefined;
  }
  if (!isMap(node)) return undefined;
  const pair: Pair | undefined = node.items.find((item) => keyText(item.key) === String(step));
  return pair && { key: pair.key, value: isEmptyScalar(pair.value) ? undefined : pair.value };
}

/** `key:` with nothing behind it has an empty value that begins who knows where: its key is the better place. */
function isEmptyScalar(node: unknown): boolean {
  return typeof node === "object" && node !== null && "source" in node && node.source === "";
}

function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
