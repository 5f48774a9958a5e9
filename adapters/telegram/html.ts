/**
 * Text as Telegram's HTML. Everything that is not a mark of ours is escaped, so no text can break an entity; names are parted from
 * their "@", so none of them rings for anybody. Lengths count what is shown, in UTF-16 units, as the platform counts.
 */

export type Mark = "bold" | "italic" | "code";

/** Words with one look. */
export interface Span {
  readonly text: string;
  readonly mark?: Mark;
  readonly link?: string;
}

/** What stands together; "folded" opens when it is touched, "columns" keeps every blank. */
export interface Section {
  readonly spans: readonly Span[];
  readonly look: "plain" | "quote" | "folded" | "columns";
}

const tagOfMark: Readonly<Record<Mark, string>> = { bold: "b", italic: "i", code: "code" };

export function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** Without control characters and marks that turn the direction of writing; "@name" is no mention any more. */
export function clean(text: string): string {
  return text
    .replace(/[\p{Cc}\u{202A}-\u{202E}\u{2066}-\u{2069}]/gu, (sign) => (sign === "\n" ? sign : " "))
    .replace(/\p{Surrogate}/gu, "\u{FFFD}")
    .replace(/@(?=[\p{L}\p{N}_])/gu, "@\u{2060}");
}

export function htmlOf({ spans, look }: Section): string {
  const inside = spans.map(spanHtml).join("");
  switch (look) {
    case "plain":
      return inside;
    case "quote":
      return `<blockquote>${inside}</blockquote>`;
    case "folded":
      return `<blockquote expandable>${inside}</blockquote>`;
    case "columns":
      return `<pre>${inside}</pre>`;
  }
}

function spanHtml({ text, mark, link }: Span): string {
  if (text === "") return "";
  const inside = escapeHtml(text);
  const linked = link === undefined ? inside : `<a href="${escapeHtml(link)}">${inside}</a>`;
  if (mark === undefined) return linked;
  const tag = tagOfMark[mark];
  return `<${tag}>${linked}</${tag}>`;
}

/** Characters as the platform counts them after reading the entities. */
export function lengthOf({ spans }: Section): number {
  return spans.reduce((sum, { text }) => sum + text.length, 0);
}

/** How many entities a section makes, of which a message may have a hundred. */
export function entitiesOf({ spans, look }: Section): number {
  const marked = spans.filter(({ mark, link }) => mark !== undefined || link !== undefined).length;
  return marked + (look === "plain" ? 0 : 1);
}

/** The first `most` units of a text, never half a character. */
export function begun(text: string, most: number): string {
  return text.slice(0, most).replace(/[\uD800-\uDBFF]$/u, "");
}
