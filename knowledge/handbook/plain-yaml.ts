/**
 * A fast reader for the YAML that handbooks are really written in: indented records and lists, text with or without
 * quotes, brackets, folded and literal text. It either gives the very value the YAML library gives or gives up, and
 * then the library reads the file and places what is wrong. Why: the library takes half a second a megabyte, five
 * times as long, and the bot must answer its first question within one. A test holds the two against each other.
 */
import {
  giveUp,
  isUncertain,
  type PlainText,
  readBracketed,
  readQuoted,
  resolvePlain,
  withoutTrailingBlanks,
} from "./plain-yaml-value.ts";

interface Lines extends PlainText {
  /** Offset of each line's first letter that is no blank. */
  readonly starts: number[];
  readonly ends: number[];
  readonly indents: number[];
  /** The line in hand. */
  line: number;
}

const KEY = /^(?:([A-Za-z0-9][\w-]*)|"([A-Za-z0-9][\w -]*)"):(?: +|$)/;
const DEEPEST = 14;

/** The record a plain YAML text holds; undefined when it is not plain in every letter. Cost: linear. */
export function readPlainYaml(written: string): Readonly<Record<string, unknown>> | undefined {
  const text = written.replaceAll("\r\n", "\n");
  if (/[\t\r\uFEFF]/.test(text)) return undefined;
  const lines = linesOf(text);
  skipEmpty(lines);
  if (lines.indents[lines.line] !== 0) return undefined;
  const value = readRecord(lines, 0, 0);
  skipEmpty(lines);
  return lines.isGivenUp || lines.line < lines.starts.length ? undefined : value;
}

function linesOf(text: string): Lines {
  const lines: Lines = { text, isGivenUp: false, starts: [], ends: [], indents: [], line: 0 };
  for (let from = 0; from < text.length; ) {
    const found = text.indexOf("\n", from);
    const end = found < 0 ? text.length : found;
    let start = from;
    while (start < end && text[start] === " ") start++;
    lines.starts.push(start);
    lines.ends.push(end);
    lines.indents.push(start - from);
    from = end + 1;
  }
  return lines;
}

function isBlank(lines: Lines, line: number): boolean {
  return lines.starts[line] === lines.ends[line];
}

function skipEmpty(lines: Lines): void {
  while (lines.line < lines.starts.length) {
    if (!isBlank(lines, lines.line) && lines.text[lines.starts[lines.line] ?? 0] !== "#") return;
    lines.line++;
  }
}

function content(lines: Lines): string {
  return lines.text.slice(lines.starts[lines.line], lines.ends[lines.line]);
}

/** The indent of the next line that says something; -1 at the end. */
function nextIndent(lines: Lines): number {
  skipEmpty(lines);
  return lines.indents[lines.line] ?? -1;
}

function readRecord(lines: Lines, indent: number, depth: number): Record<string, unknown> {
  const record: Record<string, unknown> = {};
  while (!lines.isGivenUp && nextIndent(lines) === indent) {
    const key = KEY.exec(content(lines));
    const name = key?.[1] ?? key?.[2];
    if (name === undefined || Object.hasOwn(record, name)) {
      lines.isGivenUp = true;
      return record;
    }
    const at = (lines.starts[lines.line] ?? 0) + (key?.[0].length ?? 0);
    record[name] = readBehind(lines, at, indent, depth, true);
  }
  return record;
}

function readList(lines: Lines, indent: number, depth: number): unknown[] {
  const items: unknown[] = [];
  while (!lines.isGivenUp && nextIndent(lines) === indent) {
    const dash = /^- +/.exec(content(lines));
    if (dash === null) {
      lines.isGivenUp = !/^[A-Za-z0-9]/.test(content(lines));
      return items;
    }
    const at = (lines.starts[lines.line] ?? 0) + dash[0].length;
    const rest = lines.text.slice(at, lines.ends[lines.line]);
    if (KEY.test(rest)) {
      // The item's first key stands behind its hyphen: the line counts as indented to there.
      lines.starts[lines.line] = at;
      lines.indents[lines.line] = indent + dash[0].length;
      items.push(deeper(lines, indent + dash[0].length, depth));
    } else items.push(readBehind(lines, at, indent, depth, false));
  }
  return items;
}

function deeper(lines: Lines, indent: number, depth: number): unknown {
  if (depth >= DEEPEST) return giveUp(lines, 0).value;
  const isList = lines.text.startsWith("- ", lines.starts[lines.line]);
  return isList ? readList(lines, indent, depth + 1) : readRecord(lines, indent, depth + 1);
}

/** What stands behind a key's colon or a list's hyphen, on the line or below it. */
function readBehind(lines: Lines, at: number, indent: number, depth: number, isKey: boolean): unknown {
  const end = lines.ends[lines.line] ?? at;
  const first = lines.text[at];
  if (at >= end || first === "#") {
    lines.line++;
    const next = nextIndent(lines);
    const isListBelow = isKey && next === indent && lines.text.startsWith("- ", lines.starts[lines.line]);
    if (next <= indent && !isListBelow) return giveUp(lines, at).value;
    const below = lines.starts[lines.line] ?? at;
    const isInline = /^[[{"']/.test(content(lines)) && !KEY.test(content(lines));
    return isInline ? readInline(lines, below, indent, depth) : deeper(lines, next, depth);
  }
  if (first === "|" || first === ">") return readTextBlock(lines, at, indent);
  return readInline(lines, at, indent, depth);
}

function readInline(lines: Lines, at: number, indent: number, depth: number): unknown {
  const first = lines.text[at];
  if (first === "[" || first === "{") return finish(lines, readBracketed(lines, at, depth), indent);
  if (first === '"' || first === "'") return finish(lines, readQuoted(lines, at), indent);
  return readPlainText(lines, at, indent);
}

/** Moves to the line behind a value that may have run over several; their indents and what follows must be in order. */
function finish(
  lines: Lines,
  read: { readonly value: unknown; readonly end: number },
  indent: number,
): unknown {
  if (lines.isGivenUp) return undefined;
  while ((lines.ends[lines.line] ?? Number.POSITIVE_INFINITY) < read.end) {
    lines.line++;
    if (!isBlank(lines, lines.line) && (lines.indents[lines.line] ?? 0) <= indent) lines.isGivenUp = true;
  }
  const rest = lines.text.slice(read.end, lines.ends[lines.line]);
  if (!/^ *$|^ +#/.test(rest)) lines.isGivenUp = true;
  lines.line++;
  if (nextIndent(lines) > indent) lines.isGivenUp = true;
  return read.value;
}

function readPlainText(lines: Lines, at: number, indent: number): unknown {
  const pieces = [lines.text.slice(at, lines.ends[lines.line])];
  lines.line++;
  while (!isEnd(lines) && (lines.indents[lines.line] ?? 0) > indent) {
    const piece = content(lines);
    if (piece.startsWith("#")) lines.isGivenUp = true;
    pieces.push(piece);
    lines.line++;
  }
  const isSingle = pieces.length === 1;
  const [only = ""] = pieces;
  const comment = isSingle ? only.search(/ #/) : -1;
  const trimmed = (comment < 0 ? pieces : [only.slice(0, comment)]).map(withoutTrailingBlanks);
  if (trimmed.some(isUncertain) || nextIndent(lines) > indent) lines.isGivenUp = true;
  return resolvePlain(lines, trimmed.join(" "));
}

function isEnd(lines: Lines): boolean {
  return lines.line >= lines.starts.length || isBlank(lines, lines.line);
}

/** Text under `>`, `>-`, `|` or `|-`; blank lines inside and lines indented further are left to the library. */
function readTextBlock(lines: Lines, at: number, indent: number): unknown {
  const header = /^([|>])(-?) *$/.exec(lines.text.slice(at, lines.ends[lines.line]));
  lines.line++;
  const inner = lines.indents[lines.line] ?? 0;
  const pieces: string[] = [];
  while (!isEnd(lines) && (lines.indents[lines.line] ?? 0) > indent) {
    const piece = content(lines);
    if (lines.indents[lines.line] !== inner || piece.endsWith(" ")) lines.isGivenUp = true;
    pieces.push(piece);
    lines.line++;
  }
  // A comment that follows, or text after a blank line, may still belong to the block.
  const isOpen = pieces.length === 0 || blockGoesOn(lines, indent);
  if (header === null || isOpen) return giveUp(lines, at).value;
  return pieces.join(header[1] === ">" ? " " : "\n") + (header[2] === "-" ? "" : "\n");
}

function blockGoesOn(lines: Lines, indent: number): boolean {
  let line = lines.line;
  while (line < lines.starts.length && isBlank(lines, line)) {
    if ((lines.indents[line] ?? 0) > indent) return true;
    line++;
  }
  return line < lines.starts.length && (lines.indents[line] ?? 0) > indent;
}
