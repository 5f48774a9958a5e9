/**
 * Whether a drawing may be shown inside a page: only shapes and text, nothing that runs, loads or reaches out.
 * A list of what is allowed rather than of what is forbidden, because the latter is never complete. Elements and
 * attributes are those of W3C, Scalable Vector Graphics (SVG) 1.1, Second Edition (2011).
 */

/** What is unsafe or broken, and at which offset of the text. */
export interface DrawingFault {
  readonly offset: number;
  readonly message: string;
  readonly mend: string;
}

const ELEMENTS = new Set(
  (
    "svg g defs symbol use title desc path rect circle ellipse line polyline polygon text tspan marker pattern mask " +
    "clipPath linearGradient radialGradient stop"
  ).split(" "),
);
// Sticky, and no piece may hold "<": each letter of a hostile text is looked at once or twice, never for every other.
const TAG = /<(\/?)([A-Za-z][\w:.-]*)((?:[^<>"']|"[^"<]*"|'[^'<]*')*)>/y;
const ATTRIBUTE = /\s*([^\s=/"'<>]+)\s*=\s*("[^"]*"|'[^']*')/y;
const XML_DECLARATION = /^<\?xml\s[^<>]*\?>$/;
const KNOWN_ENTITY = /&(?:lt|gt|amp|quot|apos|#\d{1,7}|#x[0-9a-fA-F]{1,6});/g;

interface Scan {
  readonly text: string;
  readonly faults: DrawingFault[];
  readonly open: string[];
  hasRoot: boolean;
}

/** All faults of an SVG text, those of its markup in order of place; empty for a safe drawing. Cost: linear. */
export function drawingFaults(text: string): readonly DrawingFault[] {
  const scan: Scan = { text, faults: [], open: [], hasRoot: false };
  for (let at = text.indexOf("<"); at >= 0; ) {
    const isMeta = text[at + 1] === "!" || text[at + 1] === "?";
    const end = isMeta ? passMeta(scan, at) : passTag(scan, at);
    at = text.indexOf("<", end);
  }
  if (!scan.hasRoot) scan.faults.push({ offset: 0, ...notSvg });
  const unclosed = scan.open.at(-1);
  if (unclosed !== undefined) scan.faults.push({ offset: text.length, ...unbalanced(unclosed) });
  return [...scan.faults, ...entityFaults(text)];
}

/** Comments and the XML declaration pass; document types, CDATA and other instructions do not. Returns where it ends. */
function passMeta(scan: Scan, at: number): number {
  const closing = scan.text.startsWith("<!--", at) ? "-->" : ">";
  const found = scan.text.indexOf(closing, at + 2);
  const end = found < 0 ? scan.text.length : found + closing.length;
  const isPassed = closing === "-->" || XML_DECLARATION.test(scan.text.slice(at, Math.min(end, at + 200)));
  if (found < 0 || !isPassed) scan.faults.push({ offset: at, ...notAllowed(scan.text.slice(at, at + 12)) });
  return end;
}

function passTag(scan: Scan, at: number): number {
  TAG.lastIndex = at;
  const tag = TAG.exec(scan.text);
  if (tag === null) {
    scan.faults.push({ offset: at, ...notAllowed("<") });
    return at + 1;
  }
  const [whole, closing, name = "", inside = ""] = tag;
  if (closing === "/") {
    if (scan.open.pop() !== name) scan.faults.push({ offset: at, ...unbalanced(name) });
    return at + whole.length;
  }
  if (scan.open.length === 0 && (scan.hasRoot || name !== "svg")) scan.faults.push({ offset: at, ...notSvg });
  scan.hasRoot = true;
  if (!ELEMENTS.has(name)) scan.faults.push({ offset: at, ...forbiddenElement(name) });
  const isSelfClosing = inside.endsWith("/");
  scan.faults.push(...attributeFaults(isSelfClosing ? inside.slice(0, -1) : inside, at));
  if (!isSelfClosing) scan.open.push(name);
  return at + whole.length;
}

const notSvg = {
  message: "this is no SVG drawing",
  mend: 'save it as plain SVG; it begins with <svg xmlns="http://www.w3.org/2000/svg">',
};

function unbalanced(name: string): Omit<DrawingFault, "offset"> {
  return {
    message: `<${name.slice(0, 30)}> is not opened and closed properly`,
    mend: "save the drawing again as plain SVG",
  };
}

function notAllowed(markup: string): Omit<DrawingFault, "offset"> {
  const kind = /^<!doctype/i.test(markup) ? "a document type" : "a declaration, instruction or stray <";
  return { message: `${kind} is not allowed in a drawing`, mend: "save it as plain SVG, or delete the line" };
}

function forbiddenElement(name: string): Omit<DrawingFault, "offset"> {
  return {
    message: `<${name.slice(0, 30)}> is not allowed in a drawing`,
    mend: "a drawing holds shapes, text, title and desc alone: save it as plain SVG, or delete the element",
  };
}

function attributeFaults(inside: string, offset: number): readonly DrawingFault[] {
  const faults: DrawingFault[] = [];
  ATTRIBUTE.lastIndex = 0;
  let end = 0;
  for (let match = ATTRIBUTE.exec(inside); match !== null; match = ATTRIBUTE.exec(inside)) {
    const [, name = "", quoted = ""] = match;
    end = ATTRIBUTE.lastIndex;
    const message = attributeFault(name, quoted.slice(1, -1));
    if (message !== undefined) faults.push({ offset, message, mend: "delete the attribute" });
  }
  if (inside.slice(end).trim() === "") return faults;
  const message = "an attribute has no quotes or no value";
  return [...faults, { offset, message, mend: "save the drawing again as plain SVG" }];
}

function attributeFault(name: string, value: string): string | undefined {
  const plain = name.toLowerCase();
  if (plain === "xmlns" || plain.startsWith("xmlns:")) {
    return /^http:\/\/www\.w3\.org\/(2000\/svg|1999\/xlink)$/.test(value)
      ? undefined
      : `the name space ${name.slice(0, 30)} is not allowed in a drawing`;
  }
  if (plain.startsWith("on")) return `the event attribute ${name.slice(0, 30)} is not allowed in a drawing`;
  if (plain === "style" || plain === "src" || plain === "xml:base")
    return `the attribute ${name} is not allowed`;
  if (plain === "href" || plain.endsWith(":href")) {
    return /^#[\w.-]+$/.test(value) ? undefined : "a drawing may not refer to anything outside itself";
  }
  if (plain.includes(":") && !/^(xml:space|xml:lang)$/.test(plain))
    return `the attribute ${name.slice(0, 30)} is not allowed`;
  const outside = value.replaceAll(/url\(\s*#[\w.-]+\s*\)/g, "");
  const reaches = /url\s*\(|:\/\/|javascript|data:|@import|expression|&#|\\/i.test(outside);
  return reaches ? `the value of ${name.slice(0, 30)} reaches outside the drawing` : undefined;
}

function entityFaults(text: string): readonly DrawingFault[] {
  const blanked = text.replaceAll(KNOWN_ENTITY, (entity) => " ".repeat(entity.length));
  const offset = blanked.indexOf("&");
  if (offset < 0) return [];
  return [
    {
      offset,
      message: "an entity (&…;) is not allowed in a drawing",
      mend: "write the character itself, or &amp; for &",
    },
  ];
}
