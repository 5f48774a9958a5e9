// Rim designations: 6J x 15 H2 ET30, 15 x 6 J, 13 x 5.50 B (ISO 4000-2:2021). Width is between the flanges and
// about an inch less than overall; offset is mounting face to centre line, + when the face is outboard.
import { NUMBER, parsePlainNumber, parseSignedNumber, sayNumber } from "./plain-numbers.ts";
import { RIM_DIAMETERS } from "./tables/rim-diameters.ts";
import { RIM_FLANGES } from "./tables/rim-flanges.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

const INCH = 25.4;
const ISO_4000 = "ISO 4000-2:2021";
const FLANGE = "JJ|JK|J|K|B|D|E|F|L|P";

/** A rim as written. Inches for width and diameter, millimetres for offset and back space. */
export interface RimDesignation {
  readonly written: string;
  readonly widthInches: number;
  readonly diameterInches: number | undefined;
  readonly flange: string | undefined;
  readonly hump: string | undefined;
  readonly offsetMillimetres: number | undefined;
  readonly backSpaceMillimetres: number | undefined;
  readonly readings: readonly TradeReading[];
}

/** Back space in mm, about (width + 1 inch) × 12.7 + offset: 6 inches, ET 30 gives 118.9. */
export function backSpaceMillimetres(widthInches: number, offsetMillimetres: number): number {
  return ((widthInches + 1) * INCH) / 2 + offsetMillimetres;
}

function number(text: string | undefined): number | undefined {
  return text === undefined ? undefined : parsePlainNumber(text);
}

interface RimParts {
  readonly written: string;
  readonly width: number;
  readonly diameter: number | undefined;
  readonly flange: string | undefined;
}

const WIDTH_FIRST = new RegExp(
  String.raw`(?<![\w.,/])(${NUMBER}) ?(${FLANGE})(?: ?[x×-] ?(1\d|2[0-4])(?![\d.])(?:H2?|FH2?|CH|EH2)?)?(?![A-Za-z])`,
  "i",
);
const DIAMETER_FIRST = new RegExp(
  String.raw`(?<![\w.,/])(1\d|2[0-4]) ?[x×] ?(${NUMBER}) ?(${FLANGE})(?!\w)`,
  "i",
);

function parseRim(text: string): RimParts | undefined {
  const diameterFirst = DIAMETER_FIRST.exec(text);
  const widthFirst = diameterFirst === null ? WIDTH_FIRST.exec(text) : null;
  const match = diameterFirst ?? widthFirst;
  if (match === null) return undefined;
  const [written, one, other, third] = match;
  const parts =
    diameterFirst === null
      ? { width: number(one), flange: other, diameter: number(third) }
      : { width: number(other), flange: third, diameter: number(one) };
  return { ...parts, written, width: parts.width ?? 0, flange: parts.flange?.toUpperCase() };
}

function flangeReading(letter: string | undefined): readonly TradeReading[] {
  return RIM_FLANGES.filter((row) => row.letter === letter).map((row) => ({
    reading: `${row.letter}: flange ${row.heightMillimetres} mm high; ${row.use}`,
    why: "the letter names shape and height of the flange; a rule decides B against J or K, never J against JJ",
    basis: basisOf(row),
  }));
}

function diameterReading(inches: number | undefined): readonly TradeReading[] {
  return RIM_DIAMETERS.filter((row) => row.nominalInches === inches).map((row) => ({
    reading: `${row.nominalInches} inch rim: ${row.beadSeatMillimetres} mm across the bead seats`,
    why: "nominal size; the seat itself is measured, not the flange",
    basis: basisOf(row),
  }));
}

function offsetReading(width: number, offset: number | undefined): readonly TradeReading[] {
  if (offset === undefined) return [];
  const back = backSpaceMillimetres(width, offset);
  return [
    {
      reading: `offset ${offset} mm: back space about ${sayNumber(back, 1)} mm (${sayNumber(back / INCH, 2)} inches)`,
      why: "(width + 1 inch) × 12.7 + offset; overall width is about an inch more than between the flanges",
      basis: "arithmetic; the extra inch is common practice, no source",
    },
  ];
}

/** The rim designation in a text; undefined when there is none or the width is outside 3 to 16 inches. */
export function readRimDesignation(text: string): RimDesignation | undefined {
  const clean = text.slice(0, 2000).replace(/\s{1,20}/g, " ");
  const parts = parseRim(clean);
  if (parts === undefined || parts.width < 3 || parts.width > 16) return undefined;
  const offset = parseSignedNumber(
    /\b(?:ET|IS|offset)[ :=]{0,3}([+-]?\d{1,3}(?:[.,]\d)?)\b/i.exec(clean)?.[1] ?? "",
  );
  const hump = /(?:\b|\d)(EH2|FH2?|CH|H2|H1|H)\b/.exec(clean)?.[1];
  const said = `${sayNumber(parts.width, 2)} inches wide between the flanges${parts.diameter === undefined ? "" : `, ${parts.diameter} inches across`}`;
  const size: TradeReading = {
    reading: `${parts.written.trim()}: ${said}`,
    why: "width is between the flanges, not overall",
    basis: ISO_4000,
  };
  const humps: readonly TradeReading[] =
    hump === undefined
      ? []
      : [
          {
            reading: `${hump}: safety hump on the bead seat`,
            why: "hump letter of the designation",
            basis: ISO_4000,
          },
        ];
  return {
    written: parts.written.trim(),
    widthInches: parts.width,
    diameterInches: parts.diameter,
    flange: parts.flange,
    hump,
    offsetMillimetres: offset,
    backSpaceMillimetres: offset === undefined ? undefined : backSpaceMillimetres(parts.width, offset),
    readings: [
      size,
      ...flangeReading(parts.flange),
      ...diameterReading(parts.diameter),
      ...humps,
      ...offsetReading(parts.width, offset),
    ],
  };
}

/** What an offset alone says ("ET30"); undefined without one. */
export function readOffset(text: string): TradeReading | undefined {
  const offset = parseSignedNumber(/\b(?:ET|IS) ?([+-]?\d{1,3})\b/i.exec(text.slice(0, 2000))?.[1] ?? "");
  if (offset === undefined) return undefined;
  const side = offset > 0 ? "outboard of" : offset < 0 ? "inboard of" : "on";
  return {
    reading: `ET ${offset}: the mounting face lies ${offset === 0 ? "" : `${Math.abs(offset)} mm `}${side} the rim's centre line`,
    why: "offset in millimetres, plus when the face is outboard",
    basis: ISO_4000,
  };
}

/** Test marks on wheels: what they say and since when. */
export const WHEEL_MARKS: readonly TradeReading[] = [
  {
    reading: "JWL: the maker's own statement to the Japanese light-alloy standard; JWL-T trucks and buses",
    why: "a statement, not a test by others",
    basis: "JWTC questions and answers",
  },
  {
    reading: "VIA: tested and registered by the council; not before 1972",
    why: "the council was founded in April 1972",
    basis: "JWTC questions and answers; press, 1972",
  },
  {
    reading: "no mark: US rims for passenger cars need none",
    why: "absence proves nothing",
    basis: "NHTSA letter 1984-3.34",
  },
];
