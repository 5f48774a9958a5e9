// Letters on safety belts (UN R16: Ar4m, Br3, Ar4Nm) and roman classes on mirrors (UN R46).
import { BELT_MIRROR_CODES } from "./tables/belt-mirror-codes.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** One reading per letter of a belt code; undefined when a letter is unknown or the code does not begin with A, B or S (or Z before them). */
export function readBeltCode(code: string): readonly TradeReading[] | undefined {
  if (!/^Z?[ABS](?:r[1-4]?)?[Nmept]{0,5}$/.test(code)) return undefined;
  const rows = BELT_MIRROR_CODES.filter((row) => row.part === "belt");
  const read = [...code].map((letter) => rows.find((row) => row.symbol === letter));
  const known = read.filter((row) => row !== undefined);
  if (known.length !== code.length) return undefined;
  return known.map((row) => ({
    reading: `${row.symbol}: ${row.meaning}`,
    why: `letter of ${code}, UN Regulation ${row.regulation}`,
    basis: basisOf(row),
  }));
}

/** The class of a mirror from its roman numeral near the E mark; undefined for other numerals. */
export function readMirrorClass(roman: string): TradeReading | undefined {
  const row = BELT_MIRROR_CODES.find(
    (candidate) => candidate.part === "mirror" && candidate.symbol === roman,
  );
  if (row === undefined) return undefined;
  return {
    reading: `class ${row.symbol}: ${row.meaning}`,
    why: "roman class near the E mark, UN Regulation 46 (before: Directive 71/127/EEC)",
    basis: basisOf(row),
  };
}

/** US belts name year, model and maker by rule. */
export const US_BELT_REMARK: TradeReading = {
  reading:
    "a US belt label names the year of manufacture, the model and the maker; the rule is in force since 1 March 1967",
  why: "asked by the federal standard on belts",
  basis: "FMVSS 209 S4.1(j)",
};
