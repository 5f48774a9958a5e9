// Letters on lamps. UN letters are read per lamp: R is main beam on a headlamp and tail lamp at the rear. SAE J759
// letters run together in any order; the year beside them is that of the SAE handbook, so the lens is not older.
import { type Interval, yearInterval } from "../calendar/interval.ts";
import { SAE_LAMP_CODES } from "./tables/lamp-codes-sae.ts";
import { UN_LAMP_CODES } from "./tables/lamp-codes-un.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** Where the lamp sits, when the member said so. */
export type LampPlace = "front" | "rear" | "side";

/** All readings of one UN letter group ("HCR", "2a", "R"), only those of the place when it is known. */
export function readUnLampCode(code: string, place?: LampPlace): readonly TradeReading[] {
  const rows = UN_LAMP_CODES.filter((row) => row.code === code);
  const there = rows.filter((row) => place === undefined || row.place.includes(place));
  return (there.length === 0 ? rows : there).map((row) => ({
    reading: `${row.code}: ${row.meaning} (UN Regulation ${row.regulations.join(", ")})`,
    why: `${row.place}; letters are read per lamp`,
    basis: basisOf(row),
  }));
}

/** Main-beam reference numbers that exist; others near a main beam are no reference number. */
export function readReferenceNumber(text: string): TradeReading | undefined {
  const numbers = ["7.5", "10", "12.5", "17.5", "20", "25", "27.5", "30", "37.5", "40", "45", "50"];
  const row = UN_LAMP_CODES.find((candidate) => candidate.code === "10..50");
  if (!numbers.includes(text) || row === undefined) return undefined;
  return {
    reading: `${text}: main-beam reference number; the sum on one car was limited to 75, later 100`,
    why: "a figure beside the main-beam mark; the later limit is from memory",
    basis: basisOf(row),
  };
}

/**
 * What the arrow on a dipped headlamp says, as seen from the front; seen from behind (from the driver's seat)
 * left and right change places, which is the slip of keys that say "arrow left = left traffic".
 */
export function readHeadlampArrow(
  direction: "left" | "right" | "both" | "none",
  seenFrom: "front" | "behind",
): TradeReading {
  const flipped = direction === "left" ? "right" : "left";
  const isSided = direction === "left" || direction === "right";
  const fromFront = isSided && seenFrom === "behind" ? flipped : direction;
  const basis = "UN R112, paragraph 4.2";
  const why = "the arrow is read standing in front of the car";
  if (fromFront === "right")
    return { reading: "arrow to the right: dipped beam for keep-left traffic only", why, basis };
  if (fromFront === "both")
    return { reading: "double arrow: may be set for either side of the road", why, basis };
  if (fromFront === "none")
    return { reading: "no arrow: dipped beam for keep-right traffic only", why, basis };
  return {
    reading:
      "arrow to the left as seen from the front: no marking of the regulation; most likely seen from behind",
    why,
    basis,
  };
}

/** DOT on a lamp: nobody approves it. */
export const LAMP_DOT_REMARK: TradeReading = {
  reading:
    "DOT on a lens is the maker's own statement; no approval exists, and it is obligatory on headlamps only",
  why: "US law knows no approval of types; the maker certifies",
  basis: "NHTSA 11673ZTV; FMVSS 108",
};

/** An SAE function code by itself ("DRL"); empty when SAE has none of that name. */
export function readSaeLampCode(code: string): readonly TradeReading[] {
  return SAE_LAMP_CODES.filter((row) => row.code === code).map((row) => ({
    reading: `SAE ${row.code}: ${row.meaning} (SAE ${row.reference})`,
    why: "a function letter of SAE J759; letters changed their meaning with time",
    basis: basisOf(row),
  }));
}

/** A lens mark of SAE J759 taken apart. `notBefore`: the year of the SAE handbook it names. */
export interface SaeLens {
  readonly written: string;
  readonly readings: readonly TradeReading[];
  readonly notBefore: Interval | undefined;
}

/** All ways to cut run-together letters into known codes; at most eight, fewest pieces first. */
export function splitSaeLetters(letters: string): readonly (readonly string[])[] {
  const codes = SAE_LAMP_CODES.map((row) => row.code);
  const ways: (readonly string[])[] = [];
  const walk = (rest: string, taken: readonly string[]): void => {
    if (rest === "") ways.push(taken);
    if (rest === "" || ways.length >= 64) return;
    for (const code of codes) if (rest.startsWith(code)) walk(rest.slice(code.length), [...taken, code]);
  };
  if (letters.length <= 12) walk(letters, []);
  return ways
    .toSorted((one, other) => one.length - other.length || (one.join(" ") < other.join(" ") ? -1 : 1))
    .slice(0, 8);
}

function handbookYear(figures: string | undefined): number | undefined {
  if (figures === undefined) return undefined;
  const year = Number(figures);
  return year >= 40 ? 1900 + year : 2000 + year;
}

function lensReadings(letters: string): readonly TradeReading[] {
  const ways = splitSaeLetters(letters);
  const codes = [...new Set(ways.flat())];
  const why =
    ways.length > 1
      ? `the letters can be cut in ${ways.length} ways: ${ways.map((way) => way.join(" ")).join(" or ")}`
      : "function letters of SAE J759";
  return codes.flatMap((code) =>
    SAE_LAMP_CODES.filter((row) => row.code === code).map((row) => ({
      reading: `${row.code}: ${row.meaning} (SAE ${row.reference})`,
      why,
      basis: basisOf(row),
    })),
  );
}

/** "SAE AIST 70", "SAE (2) I-S-T 78", "SAE U3 86": letters, compartments and handbook year; undefined without "SAE". */
export function readSaeLens(text: string): SaeLens | undefined {
  const match =
    /\bSAE[ -]{1,3}(?:\(?(\d)\)?[ -]{1,3})?([A-Z][A-Z0-9]{0,2}(?:[A-Z0-9 -]{0,12}?[A-Z0-9])??)(?:[ '-]{1,3}(\d{2}))?(?![A-Za-z0-9]|[ -][A-Z]{1,2}\d?(?![A-Za-z]))/.exec(
      text.slice(0, 2000),
    );
  if (match === null) return undefined;
  const letters = (match[2] ?? "").replace(/[ -]/g, "");
  if (letters.includes("DOT")) return undefined;
  const readings = lensReadings(letters);
  const year = handbookYear(match[3]);
  if (readings.length === 0) return undefined;
  const compartments: readonly TradeReading[] =
    match[1] === undefined
      ? []
      : [
          {
            reading: `${match[1]} compartments`,
            why: "a number before the letters counts compartments",
            basis: "SAE J759",
          },
        ];
  const handbook: readonly TradeReading[] =
    year === undefined
      ? []
      : [
          {
            reading: `to the SAE handbook of ${year}: the lens is of about that year or later`,
            why: "the year is of the specification, not of manufacture",
            basis: "SAE J759 (forum reprint)",
          },
        ];
  return {
    written: match[0],
    readings: [...readings, ...compartments, ...handbook],
    notBefore: year === undefined ? undefined : yearInterval(year),
  };
}
