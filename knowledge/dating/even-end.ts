// The end of use when sightings came evenly until it: Solow 1993 and Strauss & Sadler 1989. On any even scale; for
// parts of cars that is cars built, see production-scale.ts.
import { found, type Refusal, type Result, refused } from "./result.ts";

/** What a record of sightings says of the end of use, on the scale of the record. */
export interface EndEstimate {
  /** Sightings used. */
  readonly sightings: number;
  readonly estimate: number;
  /** One-sided limit at the asked level: use ended before it. */
  readonly upper: number;
  /** What has to be true for it, in one sentence. */
  readonly assumption: string;
}

export interface EvenEnd extends EndEstimate {
  /** Chance of so long a silence if use had not ended: Solow's p. */
  readonly silenceChance: number;
  /** Bayes factor of "still in use" against "ended", and the chance of it with even odds beforehand. */
  readonly stillInUseFactor: number;
  readonly stillInUse: number;
}

/** A record of sightings of one variant. */
export interface SightingRecord {
  /** Places on the scale, in any order. */
  readonly places: readonly number[];
  /** Where use is known to have begun; without it the first sighting stands for it and is not counted. */
  readonly begun?: number;
  /** Up to where one has looked. */
  readonly looked: number;
  /** Level of the upper limit; .95 when left out. */
  readonly level?: number;
}

/** Places since the beginning, rising, with the beginning taken off. */
export function sinceBegun(record: SightingRecord): {
  readonly begun: number;
  readonly since: readonly number[];
} {
  const rising = [...record.places].sort((one, other) => one - other);
  const begun = record.begun ?? rising[0] ?? 0;
  const counted = record.begun === undefined ? rising.slice(1) : rising;
  return { begun, since: counted.map((place) => place - begun) };
}

/**
 * Solow 1993: p = (t_n/T)^n, estimate t_n(n + 1)/n, limit t_n·α^(−1/n), B = (n − 1)/((T/t_n)^(n−1) − 1). Refused with
 * fewer than two counted sightings, with the last at the beginning, and when nobody looked beyond the last.
 * A. R. Solow, "Inferring extinction from sighting data", Ecology 74, 1993, eqs 2–3; Math. Biosciences 195, 2005, eqs 3–5.
 */
export function solowEnd(record: SightingRecord): Result<EvenEnd, Refusal> {
  const { begun, since } = sinceBegun(record);
  const count = since.length;
  const last = since.at(-1) ?? 0;
  if (count < 2) return refused("too-few-sightings", "it needs two sightings after the beginning of use");
  if (!(last > 0)) return refused("sightings-tied", "all sightings lie at the beginning of use");
  const whole = record.looked - begun;
  if (!(whole > last)) return refused("after-the-end", "nobody has looked beyond the last sighting");
  const alpha = 1 - (record.level ?? 0.95);
  const factor = (count - 1) / ((whole / last) ** (count - 1) - 1);
  return found({
    sightings: count,
    estimate: begun + (last * (count + 1)) / count,
    upper: begun + last * alpha ** (-1 / count),
    silenceChance: (last / whole) ** count,
    stillInUseFactor: factor,
    stillInUse: Number.isFinite(factor) ? factor / (1 + factor) : 1,
    assumption: "use was constant to its end and every car as likely to be seen (Solow 1993)",
  });
}

/**
 * Strauss & Sadler 1989: estimate (n·max − min)/(n − 1), limit max + (α^(−1/(n−1)) − 1)(max − min). Refused with fewer
 * than three sightings or all at one place. "Classical confidence intervals and Bayesian probability estimates for ends of local taxon
 * ranges", Mathematical Geology 21, 1989, eqs 8 and 20.
 */
export function straussSadlerEnd(record: SightingRecord): Result<EndEstimate, Refusal> {
  const rising = [...record.places].sort((one, other) => one - other);
  const count = rising.length;
  const least = rising[0] ?? 0;
  const most = rising.at(-1) ?? 0;
  if (count < 3) return refused("too-few-sightings", "it needs three sightings");
  if (!(most > least)) return refused("sightings-tied", "all sightings lie at one place");
  const alpha = 1 - (record.level ?? 0.95);
  return found({
    sightings: count,
    estimate: (count * most - least) / (count - 1),
    upper: most + (alpha ** (-1 / (count - 1)) - 1) * (most - least),
    assumption: "use was constant from its unknown beginning to its end (Strauss & Sadler 1989)",
  });
}
