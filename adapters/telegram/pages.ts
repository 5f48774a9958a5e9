/**
 * Sections into messages within the platform's limits: a message ends where a section does, and a section that is too long for
 * one is parted at a line or sentence end, else at a blank, never inside a character.
 */
import { entitiesOf, htmlOf, lengthOf, type Section, type Span } from "./html.ts";

export const longestText = 4096;
export const longestCaption = 1024;
/** The platform reads a hundred entities and forgets the rest. */
const mostEntities = 90;
const gap = "\n\n";

/** The HTML of each message, none of them empty; no sections give no message. */
export function pagesOf(sections: readonly Section[], longest: number = longestText): readonly string[] {
  const pages: Section[][] = [];
  for (const section of sections.flatMap((one) => parted(one, longest))) {
    const page = pages.at(-1);
    if (page !== undefined && fits([...page, section], longest)) page.push(section);
    else pages.push([section]);
  }
  return pages.map((page) => page.map(htmlOf).join(gap));
}

function fits(page: readonly Section[], longest: number): boolean {
  const length = page.reduce((sum, section) => sum + lengthOf(section), gap.length * (page.length - 1));
  const entities = page.reduce((sum, section) => sum + entitiesOf(section), 0);
  return length <= longest && entities <= mostEntities;
}

function parted(section: Section, longest: number): readonly Section[] {
  const pieces: Section[] = [];
  let rest = section.spans;
  while (!fits([{ ...section, spans: rest }], longest)) {
    const [head, tail] = splitSpans(rest, longest);
    pieces.push({ ...section, spans: head });
    rest = tail;
  }
  return [...pieces, { ...section, spans: rest }].filter(({ spans }) =>
    spans.some(({ text }) => text.trim() !== ""),
  );
}

/** The longest beginning that fits and ends well, and what is left. Always takes something. */
function splitSpans(spans: readonly Span[], longest: number): readonly [readonly Span[], readonly Span[]] {
  const mostSpans = spans.slice(0, mostEntities - 1);
  const whole = mostSpans.map(({ text }) => text).join("");
  const cut = whole.length <= longest ? whole.length : goodEnd(whole, longest);
  return takeCharacters(spans, cut);
}

function takeCharacters(spans: readonly Span[], count: number): readonly [readonly Span[], readonly Span[]] {
  const head: Span[] = [];
  let left = count;
  for (const [index, span] of spans.entries()) {
    if (span.text.length > left) {
      const begun = { ...span, text: span.text.slice(0, left) };
      const rest = { ...span, text: span.text.slice(left).trimStart() };
      return [
        [...head, ...(left > 0 ? [begun] : [])],
        [rest, ...spans.slice(index + 1)],
      ];
    }
    head.push(span);
    left -= span.text.length;
    if (left === 0) return [head, spans.slice(index + 1)];
  }
  return [head, []];
}

/** The last place up to `longest` where a reader may pause. */
function goodEnd(text: string, longest: number): number {
  const window = text.slice(0, longest);
  const line = window.lastIndexOf("\n");
  const sentence = Math.max(...[". ", "? ", "! ", "; "].map((end) => window.lastIndexOf(end) + 1));
  const nearest = Math.max(line, sentence);
  if (nearest > longest / 3) return nearest;
  const blank = window.lastIndexOf(" ");
  if (blank > longest / 3) return blank;
  const isInsidePair = /[\uD800-\uDBFF]$/u.test(window);
  return isInsidePair ? longest - 1 : longest;
}

/** As much of a text as a caption holds, ended at a sentence where one ends, else with an ellipsis. */
export function captionOf(text: string): string {
  if (text.length <= longestCaption) return text;
  const end = goodEnd(text, longestCaption - 1);
  return `${text.slice(0, end).trimEnd()}…`;
}
