// Which build months would narrow a changeover most: five cars that are looked for tell more than forty that happen
// by. The measure is what one report is expected to tell of the changeover's date.
import type { Interval } from "../calendar/interval.ts";
import { instantOf } from "./cells.ts";
import type { ChangeoverPosterior } from "./changeover-posterior.ts";
import { expectedInformation, type WorthOfReport } from "./expected-information.ts";
import { overlapProfile } from "./overlap-profile.ts";
import { type Replacements, reportTerms } from "./report-chance.ts";

/** One report from a build month to look for. */
export interface CarWanted extends WorthOfReport {
  readonly built: Interval;
}

/** A car somebody goes to see: little swapped, rarely misread, reported whatever it shows. */
export const SOUGHT = { isNew: true, swap: 0.05, misread: 0.005, isSought: true } as const;

/**
 * The build months of the window, the most telling first, ties by date; months of years without production are left
 * out. I(τ; y) = h(P(new)) − Σ p(τ)·h(P(new | τ)), h the binary entropy. Ask again after each car: the best month
 * moves. O(circumstances · widths · borders + months · widths · borders).
 */
export function carsWanted(posterior: ChangeoverPosterior, replacements: Replacements): readonly CarWanted[] {
  const { grid } = posterior;
  const reading = readingSums(posterior, replacements);
  const perMonth = Math.max(1, Math.round(1 / grid.cell));
  const wanted: CarWanted[] = [];
  for (let lo = 0; lo < grid.cells; lo += perMonth) {
    const hi = Math.min(grid.cells, lo + perMonth);
    if ((grid.cars[lo] as number) <= 1) continue;
    const newByBorder = reportedNew(posterior, reading, lo, hi);
    wanted.push({
      built: { from: instantOf(grid, lo), to: instantOf(grid, hi) },
      ...expectedInformation(reading.borders, newByBorder, posterior.total),
    });
  }
  return mostTellingFirst(wanted);
}

export function mostTellingFirst(wanted: readonly CarWanted[]): readonly CarWanted[] {
  return wanted.toSorted(
    (one, other) => other.informationBits - one.informationBits || one.built.from - other.built.from,
  );
}

interface ReadingSums {
  /** Weight of each border. */
  readonly borders: Float64Array;
  /** Per border: Σ weight · base; P(read new) = base + slope · share. */
  readonly base: Float64Array;
  /** Widths × borders: Σ weight · slope. */
  readonly slope: Float64Array;
}

function readingSums(posterior: ChangeoverPosterior, replacements: Replacements): ReadingSums {
  const { weights, circumstances, joint, grid } = posterior;
  const size = grid.cells + 1;
  const borders = new Float64Array(size);
  const base = new Float64Array(size);
  const slope = new Float64Array(joint.length);
  circumstances.forEach((circumstance, c) => {
    const terms = reportTerms(SOUGHT, circumstance, replacements);
    for (let cell = 0; cell < joint.length; cell += 1) {
      const weight = weights[c * joint.length + cell] as number;
      if (weight === 0) continue;
      const border = cell % size;
      borders[border] = (borders[border] as number) + weight;
      base[border] = (base[border] as number) + weight * terms.sameBase;
      slope[cell] = (slope[cell] as number) + weight * terms.slope;
    }
  });
  return { borders, base, slope };
}

/** Per border: weight × P(reported new | border) of a car built in the cells lo … hi − 1. */
function reportedNew(
  posterior: ChangeoverPosterior,
  reading: ReadingSums,
  lo: number,
  hi: number,
): Float64Array {
  const { grid, widths } = posterior;
  const size = grid.cells + 1;
  const sums = Float64Array.from(reading.base);
  widths.forEach((width, w) => {
    const profile = overlapProfile(grid.cars, lo, hi, width);
    for (let border = 0; border < grid.cells; border += 1) {
      const offset = border - lo - profile.first;
      const part = border === 0 || offset < 0 ? profile.whole : (profile.parts[offset] ?? 0);
      if (part === 0) break;
      sums[border] =
        (sums[border] as number) + ((reading.slope[w * size + border] as number) * part) / profile.whole;
    }
  });
  return sums;
}
