// Single places of a 17-character number asked about without the number: the model-year code, the first characters.
import { VIN_MODEL_YEARS } from "./tables/vin-codes.ts";
import { VIN_COUNTRIES } from "./tables/vin-countries.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** Both model years of a code at position 10 ("B": 1981 and 2011); empty for characters that are no code. */
export function readModelYearCode(code: string): readonly TradeReading[] {
  const year = VIN_MODEL_YEARS[code.toUpperCase()];
  if (year === undefined) return [];
  return [
    {
      reading: `position 10 ${code.toUpperCase()}: model year ${year}, or ${year + 30} when position 7 is a letter`,
      why: "US and Canada rule; the code returns after thirty years, and a model year may begin the January before",
      basis: "49 CFR 565, table VII",
    },
  ];
}

/** Countries of a number that begins so, one to three characters; with one, every country of that letter. */
export function readVinBeginning(beginning: string): readonly TradeReading[] {
  const order = "ABCDEFGHJKLMNPRSTUVWXYZ1234567890";
  const [first, second] = beginning.toUpperCase();
  const place = (character: string | undefined): number => order.indexOf(character ?? "?");
  return VIN_COUNTRIES.filter(
    (row) =>
      row.from[0] === first &&
      (second === undefined || (place(second) >= place(row.from[1]) && place(second) <= place(row.to[1]))),
  ).map((row) => ({
    reading: `${row.from} to ${row.to}: ${row.country} (${row.region})`,
    why: "the first two characters give the country of the maker's code; assignments grew with time",
    basis: basisOf(row),
  }));
}
