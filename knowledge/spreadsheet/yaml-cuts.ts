/** Places in a YAML text by the library's tree, and stretches of it to be cut out or put in. */
import { isMap, isSeq } from "yaml";

/** A stretch of the text and what is to stand there. */
export interface Cut {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

function rangeOf(node: unknown): readonly [number, number] | undefined {
  if (typeof node !== "object" || node === null || !("range" in node) || !Array.isArray(node.range))
    return undefined;
  return [Number(node.range[0]), Number(node.range[1])];
}

/** Where a node of the tree begins. */
export function startOf(node: unknown): number {
  return rangeOf(node)?.[0] ?? 0;
}

/** Where a value's own text ends: a block takes its line ends and what follows with it, which are not its own. */
export function endOfValue(text: string, node: unknown): number {
  if (isMap(node) && node.flow !== true) {
    const last = node.items.at(-1);
    return endOfValue(text, last?.value ?? last?.key);
  }
  if (isSeq(node) && node.flow !== true) return endOfValue(text, node.items.at(-1));
  const end = rangeOf(node)?.[1] ?? 0;
  return end - (/\s*$/u.exec(text.slice(startOf(node), end))?.[0].length ?? 0);
}

export function lineStart(text: string, offset: number): number {
  return text.lastIndexOf("\n", offset - 1) + 1;
}

/** The offset of the line end at or after `offset`; the length of a text that has none. */
export function lineEnd(text: string, offset: number): number {
  const end = text.indexOf("\n", offset);
  if (end < 0) return text.length;
  return text[end - 1] === "\r" ? end - 1 : end;
}

/** Where the line after the one at `offset` begins; the length of a text that has none. */
export function nextLine(text: string, offset: number): number {
  const end = text.indexOf("\n", offset);
  return end < 0 ? text.length : end + 1;
}

/** How far in a place stands on its line. */
export function columnOf(text: string, offset: number): number {
  return offset - lineStart(text, offset);
}
