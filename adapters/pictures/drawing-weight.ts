/**
 * What it costs to draw an SVG, known before anything is drawn: the library that draws has no limit of its own, and thirty lines in which
 * each group uses the one before twice are a thousand million shapes. Also where pictures and what merely looks like one part.
 */
import { OutsideError } from "../errors.ts";

// What the handbook allows its drawings, and the style sheet of our own charts. Nothing that loads, runs or filters.
const ELEMENTS = new Set(
  (
    "svg g defs symbol use title desc style path rect circle ellipse line polyline polygon text tspan marker pattern mask " +
    "clipPath linearGradient radialGradient stop"
  ).split(" "),
);
/** What no XML may hold (XML 1.0, section 2.2): the library that draws ends the whole process over a zero in what it complains of. */
const NO_CHARACTER = /[^\t\n\r\P{Cc}]|[\uFFFE\uFFFF]|\p{Cs}/u;
const COMMENT = /<!--[\s\S]*?-->/gu;
const TAG = /<(\/?)([A-Za-z][\w:.-]*)((?:[^<>"']|"[^"<]*"|'[^'<]*')*)>/gu;
const IDENTIFIER = /\sid\s*=\s*["']([^"']*)["']/u;
const REFERENCE = /(?:href\s*=\s*["']\s*|url\(\s*["']?)#([^"')\s]+)/gu;
/** Inside tags other writings of a reference, and in style sheets any. */
const HIDDEN_REFERENCE = /&#(?!39;)|\\/u;
const STYLE_SHEET = /<style[^<>]*>([^<]*)/gu;
const LETTERS = /<(?:text|tspan)\b[^<>]*>([^<]*)/gu;
const MOST_LETTERS_IN_A_ROW = 1000;
/** A tile or mask is drawn as a picture of its own each time it is used; a long outline costs as much as many short ones. */
const WEIGHT_OF_TILE = 2000;
const TILES = new Set(["pattern", "mask", "clipPath"]);
const CHARACTERS_OF_SHAPE = 100;

interface Group {
  readonly id: string | undefined;
  shapes: number;
  readonly references: string[];
}

/**
 * How many shapes of usual size are drawn when every reference is written out; Infinity when one refers to itself.
 * Throws OutsideError for what is not in a picture of ours: other elements, document types, hidden references. Linear.
 */
export function drawingWeight(svg: string): number {
  if (NO_CHARACTER.test(svg)) throw refused("a character that is none");
  const text = svg.replace(COMMENT, "").replace(/^\uFEFF?\s*<\?xml\s[^<>]*\?>/u, "");
  if (/<[!?]/u.test(text)) throw refused("a document type or an instruction");
  for (const [, sheet = ""] of text.matchAll(STYLE_SHEET)) {
    if (/url\s*\(|@import|\\/iu.test(sheet)) throw refused("a style sheet that refers to something");
  }
  for (const [, letters = ""] of text.matchAll(LETTERS)) {
    if (letters.length > MOST_LETTERS_IN_A_ROW) throw refused("a text without end");
  }
  const root: Group = { id: undefined, shapes: 0, references: [] };
  const groups = new Map<string, Group>();
  const open: Group[] = [root];
  for (const tag of text.matchAll(TAG)) enter(tag, open, groups);
  return writtenOut(root, groups, new Map());
}

function enter(tag: RegExpMatchArray, open: Group[], groups: Map<string, Group>): void {
  const [, closing, name = "", attributes = ""] = tag;
  if (closing === "/") {
    const group = open.length > 1 ? open.pop() : undefined;
    if (group !== undefined) close(group, open);
    return;
  }
  if (!ELEMENTS.has(name)) throw refused(`<${name.slice(0, 30)}>`);
  if (HIDDEN_REFERENCE.test(attributes)) throw refused("an attribute with escapes");
  const group: Group = {
    id: IDENTIFIER.exec(attributes)?.[1],
    shapes: TILES.has(name) ? WEIGHT_OF_TILE : 1 + Math.floor(attributes.length / CHARACTERS_OF_SHAPE),
    references: [...attributes.matchAll(REFERENCE)].map(([, id = ""]) => id),
  };
  if (group.id !== undefined) groups.set(group.id, group);
  if (attributes.endsWith("/")) close(group, open);
  else open.push(group);
}

/** What is inside a group belongs to the one around it too. */
function close(group: Group, open: readonly Group[]): void {
  const around = open.at(-1);
  if (around === undefined) return;
  around.shapes += group.shapes;
  around.references.push(...group.references);
}

function writtenOut(group: Group, groups: ReadonlyMap<string, Group>, known: Map<string, number>): number {
  let weight = group.shapes;
  for (const id of group.references) {
    const target = groups.get(id);
    if (target === undefined) continue;
    const before = known.get(id);
    if (before === undefined) known.set(id, Number.POSITIVE_INFINITY);
    const found = before ?? writtenOut(target, groups, known);
    known.set(id, found);
    weight += found;
  }
  return weight;
}

function refused(what: string): OutsideError {
  return new OutsideError(`picture: shapes and text alone can be drawn, and it holds ${what}`);
}
