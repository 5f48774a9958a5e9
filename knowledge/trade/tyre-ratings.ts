// Load index and speed symbol. The table is checked against the series 45 × 10^(index / 80) kg; VR inside a size
// is "over 210 km/h" and not the 240 of the later V.
import { sayNumber } from "./plain-numbers.ts";
import { TYRE_LOADS } from "./tables/tyre-loads.ts";
import { TYRE_SPEED_SYMBOLS } from "./tables/tyre-speed-symbols.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** The load of an index, 0 to 150; undefined outside. 88 gives 560 kg. */
export function readLoadIndex(loadIndex: number): TradeReading | undefined {
  const row = TYRE_LOADS[loadIndex];
  if (row === undefined) return undefined;
  return {
    reading: `load index ${loadIndex}: ${sayNumber(row.kilograms, 1)} kg (${row.pounds} lb) for one tyre`,
    why: "the series 45 × 10^(index / 80) kg, rounded to preferred figures",
    basis: basisOf(row),
  };
}

/** What a speed symbol says where it stands: "V" after a load index, "VR" inside a size. All rows that carry it. */
export function readSpeedSymbol(symbol: string): readonly TradeReading[] {
  const wanted = symbol.toUpperCase();
  return TYRE_SPEED_SYMBOLS.filter((row) => row.symbol === wanted).map((row) => ({
    reading: `${row.symbol}: ${row.kilometresPerHour} km/h`,
    why: row.place,
    basis: basisOf(row),
  }));
}

/** Why a tyre without treadwear, traction and temperature grades proves nothing. */
export const GRADES_REMARK: TradeReading = {
  reading:
    "treadwear, traction and temperature grades: car tyres for the US; traction AA not before 9 March 1998",
  why: "winter tyres, temporary spares, rims of 12 inches or less and sizes made in 15,000 a year or fewer need none, so absence proves nothing",
  basis: "49 CFR 575.104; 61 FR 47437",
};
