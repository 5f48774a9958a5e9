// Moulded material marks: >PP-TD20<, >PC+ABS<, >PA66-(GF25+MD15)<. Form by ISO 11469 with symbols of ISO 1043
// (-1 polymers, -2 fillers, -3 plasticisers, -4 flame retardants): between the points no spaces, blends joined
// by + with the larger share first, fillers after a hyphen with per cent by mass.
import { dayInterval, type Interval } from "../calendar/interval.ts";
import { mixtureDensity } from "./density.ts";
import { PLASTICS } from "./tables/plastics.ts";
import { FILLERS, type MarkSymbol, MODIFIERS, POLYMERS, PROCESS_NAMES } from "./tables/polymer-symbols.ts";
import type { Range } from "./tables/sourced.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** One material mark taken apart. `symbols`: the whole code, then each polymer; `density` in g/cm³ where known. */
export interface MaterialMark extends TradeReading {
  readonly code: string;
  readonly symbols: readonly string[];
  readonly isFullyRead: boolean;
  readonly density: Range | undefined;
}

/** First edition of ISO 1043-1, 15 December 1987: a mark with points is seldom older. */
export const MATERIAL_MARK_BEGINS: Interval = dayInterval(1987, 12, 15);

const MARK = />\s{0,3}([A-Za-z][A-Za-z0-9()+\-/.,]{0,38}[A-Za-z0-9)])\s{0,3}</g;
const FILLER_DENSITIES: Readonly<Record<string, number>> = { TD: 2.75, GF: 2.56, GB: 2.5, MD: 2.75 };

interface ReadPart {
  readonly words: string;
  readonly source: MarkSymbol | undefined;
}

function findPolymer(text: string): ReadPart {
  const plain = POLYMERS.find((row) => row.symbol === text);
  if (plain !== undefined) return { words: plain.name, source: plain };
  const polyamide = /^PA(\d{1,4}[A-Z]?|MXD6)$/.exec(text);
  const family = POLYMERS.find((row) => row.symbol === "PA");
  if (polyamide !== null) return { words: `polyamide ${polyamide[1]} (nylon)`, source: family };
  if (PROCESS_NAMES.includes(text)) {
    return { words: `${text}, the name of a process and not an ISO 1043 symbol`, source: undefined };
  }
  return { words: `${text}, a symbol my table does not hold`, source: undefined };
}

function findFiller(text: string): ReadPart | undefined {
  const match = /^([A-Z]{1,3}?)(\([A-Za-z]{1,4}\))?(\d{1,2})?$/.exec(text);
  const row = FILLERS.find((filler) => filler.symbol === match?.[1]);
  if (match === null || row === undefined) return undefined;
  const share = match[3] === undefined ? "" : `${Number(match[3])} % `;
  return { words: `${share}${row.name}${match[2] === undefined ? "" : ` ${match[2]}`}`, source: row };
}

function findSuffix(text: string): ReadPart {
  const modifier = /^\(?([A-Z]{1,3})\d{0,2}\)?(\([A-Za-z0-9]{1,8}\))?$/.exec(text);
  const row = MODIFIERS.find((candidate) => candidate.symbol === modifier?.[1]);
  const filler = findFiller(text);
  if (filler !== undefined) return filler;
  if (modifier !== null && row !== undefined) {
    return { words: `${row.name}${modifier[2] === undefined ? "" : ` ${modifier[2]}`}`, source: row };
  }
  return { words: `${text}, an addition my table does not hold`, source: undefined };
}

/** Splits at a sign, but not inside brackets: "PA66-(GF25+MD15)" at "-" gives two pieces. */
function splitOutside(text: string, sign: string): readonly string[] {
  const pieces: string[] = [""];
  let depth = 0;
  for (const character of text) {
    if (character === "(") depth += 1;
    if (character === ")") depth -= 1;
    if (character === sign && depth === 0) pieces.push("");
    else pieces[pieces.length - 1] += character;
  }
  return pieces.filter((piece) => piece !== "");
}

function unwrap(text: string): string {
  return text.startsWith("(") && text.endsWith(")") ? text.slice(1, -1) : text;
}

function readSuffixes(texts: readonly string[]): readonly ReadPart[] {
  return texts.flatMap((text) => {
    const isGroup = text.startsWith("(") && text.includes("+");
    return isGroup ? splitOutside(unwrap(text), "+").map(findSuffix) : [findSuffix(text)];
  });
}

/** Density (g/cm³) of a code: its own row, or one resin with one filler by the rule of mixtures; else undefined. */
function densityOf(code: string): Range | undefined {
  const row = PLASTICS.find((plastic) => plastic.symbol === code);
  if (row !== undefined) return row.density;
  const filled = /^([A-Z0-9]{2,6})-([A-Z]{2})(\d{1,2})$/.exec(code);
  const resin = PLASTICS.find((plastic) => plastic.symbol === filled?.[1])?.density;
  const filler = FILLER_DENSITIES[filled?.[2] ?? ""];
  if (filled === null || resin === undefined || filler === undefined) return undefined;
  const share = Number(filled[3]) / 100;
  return {
    from: mixtureDensity(resin.from, filler, share),
    to: mixtureDensity(resin.to, filler, share),
  };
}

/** Reads the code between the points (without them): "PP-TD20". */
function readMaterialCode(written: string): MaterialMark {
  const code = written.toUpperCase().replace(/\(AL\)/, "(Al)");
  const [head = "", ...suffixes] = splitOutside(code, "-");
  const polymerTexts = splitOutside(unwrap(head), "+");
  // In PC+ABS-GF20 the hyphen hangs on the last polymer only by its place: it qualifies the whole blend.
  const polymers = polymerTexts.map(findPolymer);
  const additions = readSuffixes(suffixes);
  const parts = [...polymers, ...additions];
  const blend = polymers.map((part) => part.words).join(" with ");
  const blendRemark = polymers.length > 1 ? "; the first named is the larger share" : "";
  const added = additions.map((part) => part.words).join(", ");
  const sources = parts.flatMap((part) => (part.source === undefined ? [] : [basisOf(part.source)]));
  return {
    code,
    symbols: [...new Set([code, head, ...polymerTexts])],
    isFullyRead: parts.length > 0 && parts.every((part) => part.source !== undefined),
    density: densityOf(code),
    reading: `${code}: ${blend}${added === "" ? "" : `, ${added}`}${blendRemark}`,
    why: "symbols of ISO 1043; between points they are a moulded material mark (ISO 11469)",
    basis: [...new Set(sources)].join("; "),
  };
}

/** Every material mark with points in a text, in order; `>` and `<` of other use are left alone. */
export function findMaterialMarks(text: string): readonly MaterialMark[] {
  return [...text.matchAll(MARK)]
    .map((match) => readMaterialCode(match[1] ?? ""))
    .filter((mark) => /[A-Z]{2}/.test(mark.code));
}

/** The code in "what does PP-TD20 mean", written without points; undefined when its plastic is unknown. */
export function findAskedMaterialCode(text: string): MaterialMark | undefined {
  const named =
    /\b(?:[Ww]hat(?:'s| is| are|s| plastic is| material is)|[Dd]oes) ([A-Z][A-Z0-9()+-]{1,30})(?= ?\?*$| (?:used|made|plastic|any good))|^([A-Z][A-Z0-9()+-]{1,30}),? what is it/.exec(
      text,
    );
  const asked =
    named?.[1] ??
    named?.[2] ??
    /\bwhat (?:does|do|is) (?:the )?(?:mark |code |letters? )?["']?([A-Z][A-Z0-9()+-]{1,30})["']? (?:mean|stand|as a material|plastic)/.exec(
      text,
    )?.[1];
  if (asked === undefined) return undefined;
  const mark = readMaterialCode(asked);
  const isKnown = mark.isFullyRead || (named === null && PROCESS_NAMES.includes(mark.code));
  return isKnown ? mark : undefined;
}
