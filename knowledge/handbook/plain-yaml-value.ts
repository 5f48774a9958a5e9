/**
 * Values on one line, and lists and records in brackets, for the reader of plain YAML (plain-yaml.ts). Whatever is
 * not certain is given up: the library reads it then.
 */

/** The text being read. `isGivenUp`: something is not plain; every value read since means nothing. */
export interface PlainText {
  readonly text: string;
  isGivenUp: boolean;
}

/** A value and the offset behind it. */
export interface PlainValue {
  readonly value: unknown;
  readonly end: number;
}

const DEEPEST = 14;
const PLAIN_KEY = /[A-Za-z0-9][\w-]*(?=: |:\n|:$)/y;
// What no plain text begins with; a hyphen may begin a number or a word.
const NO_START = /^(?:[?:,[\]{}#&*!|>'"%@` ]|-(?![A-Za-z0-9.]))/;
const DECIMAL = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?$/;
// Everything the core schema of YAML 1.2.2 (section 10.3.2) reads as a number, and a little more.
const NUMBER_LIKE = /^[-+]?(?:(?:\.\d+|\d+\.?\d*)(?:e[-+]?\d+)?|0[xo][\da-f]+|\.inf|\.nan)$/i;

export function giveUp(plain: PlainText, end: number): PlainValue {
  plain.isGivenUp = true;
  return { value: undefined, end };
}

/** The value of a text without quotes; text that the two readers might read differently is given up. */
export function resolvePlain(plain: PlainText, written: string): unknown {
  if (NO_START.test(written)) return giveUp(plain, 0).value;
  if (written === "true") return true;
  if (written === "false") return false;
  if (/^(?:~|null|true|false)?$/i.test(written)) return giveUp(plain, 0).value;
  if (DECIMAL.test(written)) {
    const value = Number(written);
    return Math.abs(value) <= Number.MAX_SAFE_INTEGER ? value : giveUp(plain, 0).value;
  }
  return NUMBER_LIKE.test(written) ? giveUp(plain, 0).value : written;
}

/** A quoted text that begins at `at`; over several lines it is folded (YAML 1.2.2, section 7.3). Escapes and empty lines are given up. */
export function readQuoted(plain: PlainText, at: number): PlainValue {
  const { text } = plain;
  const quote = text[at] ?? "";
  let end = text.indexOf(quote, at + 1);
  while (quote === "'" && text[end + 1] === "'" && end >= 0) end = text.indexOf(quote, end + 2);
  const inside = end < 0 ? "\n" : text.slice(at + 1, end);
  if (inside.includes("\\") || /^ *\n|\n *\n|\n *$/.test(inside)) return giveUp(plain, at);
  const folded = inside.includes("\n") ? inside.split("\n").map(trimmedInside).join(" ") : inside;
  return { value: quote === "'" ? folded.replaceAll("''", "'") : folded, end: end + 1 };
}

/** Blanks around a line break in quotes are none of the text; those behind the opening and before the closing quote are. */
function trimmedInside(line: string, index: number, lines: readonly string[]): string {
  const tail = index === lines.length - 1 ? line : withoutTrailingBlanks(line);
  return index === 0 ? tail : tail.replace(/^ +/, "");
}

/** A list or record in brackets that begins at `at`, over as many lines as it takes. */
export function readBracketed(plain: PlainText, at: number, depth = 0): PlainValue {
  if (depth > DEEPEST) return giveUp(plain, at);
  return plain.text[at] === "[" ? readFlowList(plain, at, depth) : readFlowRecord(plain, at, depth);
}

function readFlowList(plain: PlainText, at: number, depth: number): PlainValue {
  const items: unknown[] = [];
  let position = pastBlanks(plain.text, at + 1);
  while (plain.text[position] !== "]") {
    const item = readFlowItem(plain, position, depth);
    items.push(item.value);
    position = pastComma(plain, item.end, "]");
    if (plain.isGivenUp) return giveUp(plain, at);
  }
  return { value: items, end: position + 1 };
}

function readFlowRecord(plain: PlainText, at: number, depth: number): PlainValue {
  const record: Record<string, unknown> = {};
  let position = pastBlanks(plain.text, at + 1);
  while (plain.text[position] !== "}") {
    PLAIN_KEY.lastIndex = position;
    const key = PLAIN_KEY.exec(plain.text)?.[0];
    if (key === undefined || Object.hasOwn(record, key)) return giveUp(plain, at);
    const item = readFlowItem(plain, pastBlanks(plain.text, position + key.length + 1), depth);
    record[key] = item.value;
    position = pastComma(plain, item.end, "}");
    if (plain.isGivenUp) return giveUp(plain, at);
  }
  return { value: record, end: position + 1 };
}

function readFlowItem(plain: PlainText, at: number, depth: number): PlainValue {
  const first = plain.text[at];
  if (first === "[" || first === "{") return readBracketed(plain, at, depth + 1);
  if (first === '"' || first === "'") return readQuoted(plain, at);
  let end = at;
  while (end < plain.text.length && !",[]{}\n".includes(plain.text[end] ?? "")) end++;
  const written = withoutTrailingBlanks(plain.text.slice(at, end));
  if (written === "" || isUncertain(written)) return giveUp(plain, at);
  return { value: resolvePlain(plain, written), end };
}

/** Without the blanks at the end; a loop, because the regular expression for it is quadratic in blanks inside. */
export function withoutTrailingBlanks(text: string): string {
  let end = text.length;
  while (text[end - 1] === " ") end--;
  return text.slice(0, end);
}

/** Text in which a colon or a hash might mean something. */
export function isUncertain(written: string): boolean {
  return written.includes(": ") || written.includes(" #") || written.endsWith(":");
}

function pastComma(plain: PlainText, at: number, closing: string): number {
  const position = pastBlanks(plain.text, at);
  if (plain.text[position] === closing) return position;
  if (plain.text[position] === ",") return pastBlanks(plain.text, position + 1);
  return giveUp(plain, at).end;
}

function pastBlanks(text: string, at: number): number {
  let position = at;
  while (text[position] === " " || text[position] === "\n") position++;
  return position;
}
