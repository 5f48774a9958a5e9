// Which build months would narrow one changeover of a chain most: as for a single one, with everything before the change taken
// as its old side and everything after it as its new one.
import { type CarWanted, mostTellingFirst, SOUGHT } from "./cars-wanted.ts";
import { instantOf } from "./cells.ts";
import type { ChainPosterior, ChangeoverChain } from "./changeover-chain.ts";
import { expectedInformation } from "./expected-information.ts";
import { swapChance } from "./report-chance.ts";

/**
 * The build months of the window, the most telling of the changeover from variant `change` to the next first, ties by date;
 * none for a change the chain does not have. Months of years without production are left out.
 * O(months · cells of a month · widths · borders).
 */
export function chainCarsWanted({ posterior }: ChangeoverChain, change: number): readonly CarWanted[] {
  const ramp = posterior.ramps[change];
  if (ramp === undefined) return [];
  const { grid } = posterior.ground;
  const places = middlesOf(posterior, ramp);
  const perMonth = Math.max(1, Math.round(1 / grid.cell));
  const line = readingLine(posterior, change);
  const wanted: CarWanted[] = [];
  for (let lo = 0; lo < grid.cells; lo += perMonth) {
    const hi = Math.min(grid.cells, lo + perMonth);
    if ((grid.cars[lo] as number) <= 1) continue;
    const newByPlace = places.map((weight) => line.base * weight);
    for (let cell = lo; cell < hi; cell += 1)
      addRisen(posterior, ramp, cell, line.slope / (hi - lo), newByPlace);
    wanted.push({
      built: { from: instantOf(grid, lo), to: instantOf(grid, hi) },
      ...expectedInformation(places, newByPlace, 1),
    });
  }
  return mostTellingFirst(wanted);
}

/** P(read as a later variant) = base + slope · the share of later variants, averaged over the odds of a swap. */
function readingLine({ ground: { replacements }, byOdds }: ChainPosterior, change: number) {
  const later = replacements.slice(change + 1).reduce((sum, share) => sum + share, 0);
  const swapped = byOdds.reduce(
    (sum, { swapOdds, chance }) => sum + chance * swapChance(SOUGHT.swap, swapOdds),
    0,
  );
  const readRight = 1 - 2 * SOUGHT.misread;
  return { base: SOUGHT.misread + readRight * swapped * later, slope: readRight * (1 - swapped) };
}

/** Chances of the half-way point, over half cells. */
function middlesOf({ ground: { grid, widths } }: ChainPosterior, ramp: Float64Array): Float64Array {
  const borders = grid.cells + 1;
  const middles = new Float64Array(2 * grid.cells + 1);
  ramp.forEach((chance, place) => {
    const middle = 2 * (place % borders) + (widths[Math.floor(place / borders)] as number);
    middles[middle] = (middles[middle] as number) + chance;
  });
  return middles;
}

function addRisen(
  { ground: { grid, widths } }: ChainPosterior,
  ramp: Float64Array,
  cell: number,
  slope: number,
  sums: Float64Array,
): void {
  const borders = grid.cells + 1;
  widths.forEach((width, w) => {
    for (let start = 0; start <= cell; start += 1) {
      const chance = ramp[w * borders + start] as number;
      if (chance === 0) continue;
      const share = start + width <= cell ? 1 : (cell - start + 0.5) / width;
      const middle = 2 * start + width;
      sums[middle] = (sums[middle] as number) + slope * chance * share;
    }
  });
}
