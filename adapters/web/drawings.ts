/**
 * The drawings of the handbooks as pictures with addresses of their own, named by their content, so that a browser keeps them for ever.
 * They are shown as images and never put into a page: whatever a drawing holds, it can do nothing there.
 */
import { createHash } from "node:crypto";
import type { QuestionBlock } from "../../bot/index.ts";
import { type Feature, featureById, type Handbook, partById } from "../../knowledge/index.ts";

export interface Drawings {
  /** Where a drawing is shown from; a chart made for one reply carries itself. */
  readonly address: (svg: string) => string;
  /** A drawing of a handbook as its name, for what is kept; `address` takes either. Other pictures stay as they are. */
  readonly shortened: (svg: string) => string;
  /** The drawing at an address of ours, ink and paper following the reader's theme; undefined for any other name. */
  readonly found: (name: string) => string | undefined;
  /** What a drawing says of itself. */
  readonly words: (svg: string) => string;
  /** Address and words of the drawing of what is asked, in the handbook that has that part and asks so. */
  readonly ofFeature: (part: string, asked: Asked) => Shown | undefined;
  readonly ofState: (part: string, asked: Asked, state: string) => Shown | undefined;
}

type Asked = Pick<QuestionBlock, "feature" | "text">;

export interface Shown {
  readonly address: string;
  readonly alternative: string;
}

// Drawings are in one colour, that of the text around them; as an image there is none, so the theme is said here.
const THEME =
  "<style>svg{color:#1c1b19}@media(prefers-color-scheme:dark){svg{color:#e9e6de}}@media print{svg{color:#000}}</style>";

/** Black or coloured by itself: it keeps its paper. */
const OWN_PAPER = "<style>@media(prefers-color-scheme:dark){svg{background:#e9e6de}}</style>";

const nameForm = /^[0-9a-f]{20}\.svg$/u;

/** `handbooks`: those that serve now. A drawing of an edition that has gone is still found: old answers show it. */
export function drawingsOf(handbooks: () => readonly Handbook[]): Drawings {
  const byName = new Map<string, string>();
  const taken = new Set<string>();
  const served = (): readonly Handbook[] => {
    const now = handbooks();
    for (const { edition, drawings } of now) {
      if (taken.has(edition)) continue;
      taken.add(edition);
      for (const svg of drawings.values()) byName.set(nameOf(svg), themed(svg));
    }
    return now;
  };
  served();
  const shortened = (svg: string): string => {
    const name = nameOf(svg);
    if (!byName.has(name)) served();
    return byName.has(name) ? name : svg;
  };
  const address = (svg: string): string => {
    const short = nameForm.test(svg) ? svg : shortened(svg);
    if (nameForm.test(short)) return `/drawings/${short}`;
    return `data:image/svg+xml;base64,${Buffer.from(svg).toString("base64")}`;
  };
  const featureIn = (part: string, { feature: id, text }: Asked) => {
    const found = served().flatMap((handbook) => {
      const kind = partById(handbook, part);
      const feature = kind && featureById(kind, id);
      return feature === undefined ? [] : [{ handbook, feature }];
    });
    const asking = found.filter(({ feature }) => text.includes(feature.question));
    const [whole] = asking.toSorted((one, other) => lengthOf(other.feature) - lengthOf(one.feature));
    return whole ?? found[0];
  };
  const shown = (handbook: Handbook, path: string | undefined): Shown | undefined => {
    const svg = path === undefined ? undefined : handbook.drawings.get(path);
    return svg === undefined ? undefined : { address: address(svg), alternative: wordsOf(svg) };
  };
  return {
    address,
    shortened,
    words: wordsOf,
    found: (name) => byName.get(name),
    ofFeature(part, asked) {
      const found = featureIn(part, asked);
      return found && shown(found.handbook, found.feature.drawing);
    },
    ofState(part, asked, state) {
      const found = featureIn(part, asked);
      return found && shown(found.handbook, stateDrawing(found.feature, state));
    },
  };
}

function lengthOf({ question }: Feature): number {
  return question.length;
}

function stateDrawing(feature: Feature, state: string): string | undefined {
  return feature.kind === "states" ? feature.states.find(({ id }) => id === state)?.drawing : undefined;
}

function nameOf(svg: string): string {
  return `${createHash("sha256").update(svg).digest("hex").slice(0, 20)}.svg`;
}

function themed(svg: string): string {
  const theme = svg.includes("currentColor") ? THEME : OWN_PAPER;
  return svg.replace(/<svg\b[^>]*>/u, (tag) => `${tag}${theme}`);
}

/** What a drawing says of itself: its description, else its title. */
function wordsOf(svg: string): string {
  const said = /<desc>([^<]*)<\/desc>/u.exec(svg)?.[1] ?? /<title>([^<]*)<\/title>/u.exec(svg)?.[1] ?? "";
  return said
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll(/&(?:apos|#39);/gu, "'")
    .replaceAll("&amp;", "&")
    .trim();
}
