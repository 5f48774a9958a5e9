// A strict reader of XML as drawings need it: throws for anything that is not well-formed.

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

const TOKEN =
  /<(?<close>\/)?(?<name>[a-z][\w-]*)(?<attributes>(?: [\w:-]+="[^"<]*")*)(?<empty>\/)?>|[^<>]+/gy;
const STRAY_AMPERSAND = /&(?!(?:amp|lt|gt|quot|#39);)/u;
// XML 1.0, section 2.2, Char.
const NO_CHARACTER = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u;

/** The elements of a document with one root, in the order in which they open. */
export function elementsOf(document: string): readonly XmlElement[] {
  const elements: XmlElement[] = [];
  const open: string[] = [];
  for (const { name, close, attributes = "", empty } of tagsOf(document.trimEnd())) {
    if (close !== undefined) {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    if (open.length === 0 && elements.length > 0) throw new Error("a second root");
    elements.push({ name, attributes: attributesOf(attributes) });
    if (empty === undefined) open.push(name);
  }
  if (open.length > 0) throw new Error(`<${open.join(">, <")}> never closed`);
  return elements;
}

interface Tag {
  readonly name: string;
  readonly close?: string;
  readonly attributes?: string;
  readonly empty?: string;
}

function* tagsOf(text: string): Generator<Tag> {
  if (NO_CHARACTER.test(text)) throw new Error("a character that XML forbids");
  if (STRAY_AMPERSAND.test(text)) throw new Error("an ampersand that begins no entity");
  let at = 0;
  for (const { 0: token, index, groups = {} } of text.matchAll(TOKEN)) {
    if (index !== at) break;
    at += token.length;
    if (groups.name !== undefined) yield { ...groups, name: groups.name };
  }
  if (at < text.length) throw new Error(`not well-formed at: ${text.slice(at, at + 60)}`);
}

function attributesOf(written: string): Readonly<Record<string, string>> {
  const pairs = [...written.matchAll(/ ([\w:-]+)="([^"]*)"/gu)].map(([, name = "", value = ""]) => [
    name,
    value,
  ]);
  const attributes: Record<string, string> = Object.fromEntries(pairs);
  if (Object.keys(attributes).length !== pairs.length) throw new Error("an attribute twice");
  return attributes;
}
