// Seventeen-character vehicle numbers: position, check digit, model year, country, small makers. Sources: 49 CFR 565
// tables III to VII, ISO 3779 and 3780, 73 FR 23367. The check digit is a US and Canada rule: passing is weak
// evidence, failing on a car for elsewhere is no fault. The last six characters never leave this file.
import { type Interval, yearInterval } from "../calendar/interval.ts";
import { VIN_LETTER_VALUES, VIN_MODEL_YEARS, VIN_WEIGHTS } from "./tables/vin-codes.ts";
import { VIN_COUNTRIES, type VinCountry } from "./tables/vin-countries.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

const PART_565 = "49 CFR 565.15(c), tables III to V";
const ORDER = "ABCDEFGHJKLMNPRSTUVWXYZ1234567890";

/** A vehicle number with its last six hidden and what its positions say. */
export interface VinReading {
  readonly masked: string;
  readonly passesCheck: boolean;
  readonly modelYears: readonly number[];
  readonly country: VinCountry | undefined;
  readonly isSmallMaker: boolean;
  readonly notBefore: Interval | undefined;
  readonly readings: readonly TradeReading[];
}

/** Hides the last six characters of a serial (all of it when it has six or fewer): "1M8GDM9AXKP••••••". */
export function maskSerial(serial: string): string {
  const characters = [...serial];
  const kept = Math.max(0, characters.length - 6);
  return characters.slice(0, kept).join("") + "•".repeat(characters.length - kept);
}

/** The vehicle numbers written in a text, without spaces, in upper case. Groups may be parted by single spaces or hyphens. */
export function findVins(text: string): readonly string[] {
  return vinSpots(text).map((spot) => spot.vin);
}

/** The text with every vehicle number in it masked. */
export function maskVins(text: string): string {
  return vinSpots(text).reduceRight((masked, spot) => {
    return masked.slice(0, spot.from) + maskSerial(spot.vin) + masked.slice(spot.from + spot.length);
  }, text);
}

interface VinSpot {
  readonly vin: string;
  readonly from: number;
  readonly length: number;
}

/** Parted groups are one number only when they cannot be words: capitals, a group of letters and figures, figures last. */
function isGroupedNumber(groups: readonly string[]): boolean {
  const isWordless = groups.every(
    (group) => /^[A-Z0-9]+$/.test(group) && (/\d/.test(group) || group.length <= 3),
  );
  const isMixed = groups.some((group) => /[A-Z]/.test(group) && /\d/.test(group));
  return isWordless && isMixed && /\d{4}$/.test(groups.at(-1) ?? "");
}

interface Group {
  readonly text: string;
  readonly from: number;
}

/** One number beginning at a group: alone, or up to five groups parted by one space or hyphen each. */
function vinAt(text: string, groups: readonly Group[], start: number): VinSpot | undefined {
  const from = groups[start]?.from ?? 0;
  let vin = "";
  let end = from;
  for (let index = start; index < Math.min(groups.length, start + 5); index += 1) {
    const group = groups[index];
    const isJoined = index === start || /^[ -]$/.test(text.slice(end, group?.from));
    if (group === undefined || !isJoined || vin.length + group.text.length > 17) return undefined;
    vin += group.text;
    end = group.from + group.text.length;
    const parts = groups.slice(start, index + 1).map((part) => part.text);
    const isNumber = index === start ? vin.replace(/\D/g, "").length >= 3 : isGroupedNumber(parts);
    if (vin.length === 17 && isNumber) return { vin: vin.toUpperCase(), from, length: end - from };
  }
  return undefined;
}

function vinSpots(text: string): readonly VinSpot[] {
  const groups = [...text.matchAll(/[A-Za-z0-9]{1,60}/g)].map((match) => ({
    text: match[0],
    from: match.index,
  }));
  const spots: VinSpot[] = [];
  for (const [start, group] of groups.entries()) {
    const last = spots.at(-1);
    const isTaken = last !== undefined && group.from < last.from + last.length;
    const spot = isTaken ? undefined : vinAt(text, groups, start);
    if (spot !== undefined) spots.push(spot);
  }
  return spots;
}

/** Sum of value × weight over 17 characters; undefined when a character has no value (I, O, Q) or the length is not 17. */
export function vinCheckSum(vin: string): number | undefined {
  if (!/^[A-HJ-NPR-Z0-9]{17}$/.test(vin)) return undefined;
  return [...vin].reduce((sum, character, index) => {
    const value = VIN_LETTER_VALUES[character] ?? Number(character);
    return sum + value * (VIN_WEIGHTS[index] ?? 0);
  }, 0);
}

/** The check digit the rule asks for at position 9: remainder by 11, 10 written X. Undefined as vinCheckSum. */
export function vinCheckDigit(vin: string): string | undefined {
  const sum = vinCheckSum(vin);
  if (sum === undefined) return undefined;
  return sum % 11 === 10 ? "X" : String(sum % 11);
}

/**
 * Model years of a US or Canadian number. A figure at position 7 means 1980 to 2009, a letter 2010 to 2039;
 * empty when position 10 holds no year code.
 */
export function vinModelYears(vin: string): readonly number[] {
  const first = VIN_MODEL_YEARS[vin[9] ?? ""];
  if (first === undefined) return [];
  return /\d/.test(vin[6] ?? "") ? [first] : [first + 30];
}

function countryOf(vin: string): VinCountry | undefined {
  const place = (character: string | undefined): number => ORDER.indexOf(character ?? "?");
  return VIN_COUNTRIES.find((row) => {
    const isFirst = row.from[0] === vin[0];
    return isFirst && place(vin[1]) >= place(row.from[1]) && place(vin[1]) <= place(row.to[1]);
  });
}

function checkReading(vin: string): TradeReading {
  const asked = vinCheckDigit(vin) ?? "?";
  if (asked === vin[8]) {
    return {
      reading: `check digit ${asked} at position 9 is right`,
      why: "passing is weak evidence: one number in eleven passes by chance, and some slips go unseen",
      basis: PART_565,
    };
  }
  return {
    reading: `check digit: ${asked} asked, ${vin[8]} read at position 9`,
    why: "a fault only in a number under the US and Canada rule; elsewhere position 9 is free. Look for O/0, I/1, S/5, B/8",
    basis: PART_565,
  };
}

const SCHEME_READING: TradeReading = {
  reading: "seventeen characters: US cars from model year 1981; elsewhere since ISO 3779 of February 1977",
  why: "on a car of 1978 or before it would be exceptionally early: look for a later plate or a re-issued number",
  basis: "49 CFR 565; ISO 3779:1977",
};

function yearReadings(vin: string, isAmerican: boolean): readonly TradeReading[] {
  const years = vinModelYears(vin);
  if (years.length === 0) return [];
  const rule = isAmerican ? "" : "; outside the US and Canada position 10 need not be a year";
  return [
    {
      reading: `position 10 (${vin[9]}): model year ${years.join(" or ")}`,
      why: `position 7 is a ${/\d/.test(vin[6] ?? "") ? "figure: before 2010" : "letter: 2010 or later"}; model year is not build year${rule}`,
      basis: "49 CFR 565, table VII",
    },
  ];
}

function smallMakerReading(vin: string): readonly TradeReading[] {
  if (vin[2] !== "9") return [];
  return [
    {
      reading:
        "third character 9: a small maker; positions 12 to 14 complete the maker's identifier, only 15 to 17 are the serial",
      why: "fewer than 500 a year under the rule to 2008, fewer than 1,000 since; reading 12 to 14 as serial is the classic error for hand-built cars",
      basis: "49 CFR 565; 73 FR 23367",
    },
  ];
}

/** What a 17-character number says; undefined for another length or a number with I, O or Q. */
export function readVin(written: string): VinReading | undefined {
  const vin = written.replace(/[ -]/g, "").toUpperCase();
  const asked = vinCheckDigit(vin);
  if (asked === undefined) return undefined;
  const country = countryOf(vin);
  const isAmerican = country?.region === "North America";
  const passesCheck = asked === vin[8];
  const [firstYear] = vinModelYears(vin);
  const isYearSure = isAmerican && passesCheck && firstYear !== undefined;
  const origin: readonly TradeReading[] =
    country === undefined
      ? []
      : [
          {
            reading: `${vin.slice(0, 2)}: ${country.country} (${country.region})`,
            why: "the first two characters give the country of the maker's code; assignments grew with time",
            basis: basisOf(country),
          },
        ];
  return {
    masked: maskSerial(vin),
    passesCheck,
    modelYears: vinModelYears(vin),
    country,
    isSmallMaker: vin[2] === "9",
    notBefore: isYearSure ? yearInterval(firstYear - 1) : undefined,
    readings: [
      checkReading(vin),
      ...origin,
      ...yearReadings(vin, isAmerican),
      ...smallMakerReading(vin),
      SCHEME_READING,
    ],
  };
}
