// Telegram's HTML as it is read there: a strict reading that refuses what the platform refuses, so that text which would break a
// message breaks a test first. Tags and named entities as in "HTML style" of the Bot API's formatting options.

export interface Entity {
  readonly type: string;
  readonly offset: number;
  readonly length: number;
  readonly url?: string;
}

export type Reading =
  | { readonly ok: true; readonly text: string; readonly entities: readonly Entity[] }
  | { readonly ok: false; readonly problem: string };

const tags: Readonly<Record<string, string>> = {
  b: "bold",
  strong: "bold",
  i: "italic",
  em: "italic",
  u: "underline",
  ins: "underline",
  s: "strikethrough",
  code: "code",
  pre: "pre",
  a: "text_link",
  blockquote: "blockquote",
};

const named: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"' };

interface Open {
  readonly tag: string;
  readonly type: string;
  readonly offset: number;
  readonly url?: string;
}

/** The text that stays and the entities in it; offsets in UTF-16 units. */
export function readHtml(html: string): Reading {
  let text = "";
  const open: Open[] = [];
  const entities: Entity[] = [];
  let at = 0;
  while (at < html.length) {
    const sign = html[at];
    if (sign === "&") {
      const read = readNamed(html, at);
      text += read.text;
      at = read.next;
    } else if (sign === "<") {
      const end = html.indexOf(">", at);
      if (end < 0) return fault(`Unclosed start tag at byte offset ${at}`);
      const problem = takeTag(html.slice(at + 1, end), text.length, open, entities);
      if (problem !== undefined) return fault(`${problem} at byte offset ${at}`);
      at = end + 1;
    } else {
      text += sign;
      at += 1;
    }
  }
  const left = open.at(-1);
  if (left !== undefined) return fault(`Can't find end tag corresponding to start tag "${left.tag}"`);
  return { ok: true, text, entities: entities.sort((a, b) => a.offset - b.offset) };
}

function fault(problem: string): Reading {
  return { ok: false, problem: `Bad Request: can't parse entities: ${problem}` };
}

/** An ampersand that begins nothing known stays itself, as on the platform. */
function readNamed(html: string, at: number): { readonly text: string; readonly next: number } {
  const match = /^&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]+));/iu.exec(html.slice(at, at + 12));
  if (match === null) return { text: "&", next: at + 1 };
  const [whole, decimal, hex, name] = match;
  const code = decimal === undefined ? Number.parseInt(hex ?? "", 16) : Number(decimal);
  const text = name === undefined ? String.fromCodePoint(code) : (named[name] ?? whole);
  return { text, next: at + whole.length };
}

function takeTag(inside: string, offset: number, open: Open[], entities: Entity[]): string | undefined {
  if (inside.startsWith("/")) return closeTag(inside.slice(1), offset, open, entities);
  const match = /^([a-z]+)((?:\s+[a-z-]+(?:="[^"]*")?)*)$/u.exec(inside);
  const [, tag = "", attributes = ""] = match ?? [];
  const type = tags[tag];
  if (type === undefined) return `Unsupported start tag "${inside.split(/\s/u)[0]}"`;
  const url = /\shref="([^"]*)"/u.exec(attributes)?.[1];
  open.push({ tag, type, offset, ...(url === undefined ? {} : { url }) });
  return undefined;
}

function closeTag(tag: string, offset: number, open: Open[], entities: Entity[]): string | undefined {
  const last = open.pop();
  if (last?.tag !== tag) return `Unmatched end tag, expected "</${last?.tag ?? ""}>", found "</${tag}>"`;
  const { type, url } = last;
  const length = offset - last.offset;
  if (length > 0) entities.push({ type, offset: last.offset, length, ...(url === undefined ? {} : { url }) });
  return undefined;
}
