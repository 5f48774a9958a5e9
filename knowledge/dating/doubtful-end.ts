// The end of use from sightings that are each only so likely to be as built: Jarić & Roberts 2014.
import { type EvenEnd, solowEnd } from "./even-end.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

/** A sighting and how likely it is to be what it seems. */
export interface DoubtfulSighting {
  readonly place: number;
  /** In [0, 1]. */
  readonly reliability: number;
}

export interface DoubtfulRecord {
  readonly sightings: readonly DoubtfulSighting[];
  readonly begun?: number;
  readonly looked: number;
  readonly level?: number;
}

/**
 * Solow's formulas with n replaced by r = Σ p_i and the last sighting by its mean t_r = Σ t_i·p_i·Π_{j>i}(1 − p_j). With
 * every p = 1 it is Solow's. Refused when fewer than two sightings are expected to be real.
 * I. Jarić & D. L. Roberts, "Accounting for observation reliability when inferring extinction based on sighting records",
 * Biodiversity and Conservation 23, 2014.
 */
export function jaricRobertsEnd(record: DoubtfulRecord): Result<EvenEnd, Refusal> {
  const rising = [...record.sightings].sort((one, other) => one.place - other.place);
  if (rising.every(({ reliability }) => reliability === 1)) {
    const { sightings, ...rest } = record;
    return solowEnd({ ...rest, places: sightings.map(({ place }) => place) });
  }
  const begun = record.begun ?? rising[0]?.place ?? 0;
  const counted = record.begun === undefined ? rising.slice(1) : rising;
  const expected = counted.reduce((sum, { reliability }) => sum + reliability, 0);
  if (expected < 2) return refused("too-few-sightings", "fewer than two sightings can be relied on");
  let noneLater = 1;
  let last = 0;
  for (const { place, reliability } of counted.toReversed()) {
    last += (place - begun) * reliability * noneLater;
    noneLater *= 1 - reliability;
  }
  const whole = record.looked - begun;
  if (!(last > 0)) return refused("sightings-tied", "all sightings lie at the beginning of use");
  if (!(whole > last)) return refused("after-the-end", "nobody has looked beyond the last sighting");
  const factor = (expected - 1) / ((whole / last) ** (expected - 1) - 1);
  return found({
    sightings: expected,
    estimate: begun + (last * (expected + 1)) / expected,
    upper: begun + last * (1 - (record.level ?? 0.95)) ** (-1 / expected),
    silenceChance: (last / whole) ** expected,
    stillInUseFactor: factor,
    stillInUse: Number.isFinite(factor) ? factor / (1 + factor) : 1,
    assumption:
      "use was constant to its end, and each sighting is real with its own chance (Jarić & Roberts 2014)",
  });
}
