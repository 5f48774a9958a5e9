// Imprecise dates in a chain. Their likelihood depends on the changeovers on either side of the variant together and
// does not factor over time; each of the two is given its factor with the other at its posterior mean.
import type { ChainGroup, ReportLine } from "./chain-reports.ts";
import { reportLine } from "./chain-reports.ts";
import type { ChainGround, ChainTerms } from "./chain-terms.ts";
import { profileName } from "./overlap-profile.ts";

/** Per changeover and cell: the mean share of what came after it. */
export type MeanShares = readonly Float64Array[];

/** Mean shares of the later variants from the chances of ramps. O(widths · borders · width). */
export function meanShares(ground: ChainGround, chances: readonly Float64Array[]): MeanShares {
  const { grid, widths } = ground;
  const borders = grid.cells + 1;
  return chances.map((ramp) => {
    const shares = new Float64Array(grid.cells);
    for (const [w, width] of widths.entries()) addShares(shares, ramp, w * borders, width);
    return shares;
  });
}

/** A ramp is over in a cell if it began at least `width` borders before; a step counts from its own border on. */
function addShares(shares: Float64Array, ramp: Float64Array, row: number, width: number): void {
  let over = 0;
  for (let cell = 0; cell < shares.length; cell += 1) {
    const ended = cell - width;
    if (ended >= 0) over += ramp[row + ended] as number;
    let partly = 0;
    for (let start = Math.max(0, ended + 1); start <= cell; start += 1) {
      partly += ((ramp[row + start] as number) * (cell - start + 0.5)) / width;
    }
    shares[cell] = (shares[cell] as number) + over + partly;
  }
}

/** Share after a ramp that begins `start − lo` borders from the stretch, one row per width. */
interface StretchShares {
  /** Start of the ramp relative to lo at which the first value of each row stands. */
  readonly first: readonly number[];
  readonly rows: readonly Float64Array[];
}

function stretchShares(ground: ChainGround, lo: number, hi: number): StretchShares {
  const { cars } = ground.grid;
  let made = 0;
  for (let cell = lo; cell < hi; cell += 1) made += cars[cell] as number;
  const rows = ground.widths.map((width) =>
    Float64Array.from({ length: hi - lo + width }, (_, index) => {
      const start = lo - width + 1 + index;
      let part = 0;
      for (let cell = lo; cell < hi; cell += 1) {
        const share =
          width === 0 ? Number(cell >= start) : Math.min(1, Math.max(0, (cell - start + 0.5) / width));
        part += (cars[cell] as number) * share;
      }
      return part / made;
    }),
  );
  return { first: ground.widths.map((width) => 1 - width), rows };
}

/**
 * The terms with the imprecise sightings added, each changeover seeing its neighbour at the given mean; a difference
 * that comes out negative counts as 0. O(imprecise groups · Σ(width + length)).
 */
export function withImprecise(
  ground: ChainGround,
  terms: ChainTerms,
  groups: readonly ChainGroup[],
  swapOdds: number,
  means: MeanShares,
): ChainTerms {
  const { grid, widths, replacements } = ground;
  const borders = grid.cells + 1;
  const added = terms.ramps.map((ramp) => new Float64Array(ramp.length));
  const known = new Map<string, StretchShares>();
  let { base } = terms;
  for (const group of groups) {
    const { variant, lo, hi, count } = group;
    if (hi - lo === 1) continue;
    const line = reportLine(group, swapOdds, replacements[variant] as number, replacements.length);
    const name = profileName(grid.cars, lo, hi);
    const shares = known.get(name) ?? stretchShares(ground, lo, hi);
    known.set(name, shares);
    const come = variant === 0 ? 1 : meanOver(ground, means[variant - 1] as Float64Array, lo, hi);
    const gone =
      variant === replacements.length - 1 ? 0 : meanOver(ground, means[variant] as Float64Array, lo, hi);
    const atMeans = logReport(line, come - gone);
    base += count * atMeans;
    const place = { borders, widths: widths.length, lo, count };
    addFactor(added[variant - 1], shares, place, (share) => logReport(line, share - gone) - atMeans);
    addFactor(added[variant], shares, place, (share) => logReport(line, come - share) - atMeans);
  }
  const ramps = terms.ramps.map((ramp, change) => summed(ramp, added[change] as Float64Array, borders));
  return { base, pure: terms.pure, ramps };
}

function logReport(line: ReportLine, share: number): number {
  return Math.log(line.floor + line.slope * Math.max(0, share));
}

function meanOver(ground: ChainGround, mean: Float64Array, lo: number, hi: number): number {
  let made = 0;
  let sum = 0;
  for (let cell = lo; cell < hi; cell += 1) {
    const cars = ground.grid.cars[cell] as number;
    made += cars;
    sum += cars * (mean[cell] as number);
  }
  return sum / made;
}

interface FactorPlace {
  readonly borders: number;
  readonly widths: number;
  readonly lo: number;
  readonly count: number;
}

/** Adds a factor as differences along the borders: the share is 1 left of the row, and 0 at its last place and right of it. */
function addFactor(
  added: Float64Array | undefined,
  shares: StretchShares,
  { borders, widths, lo, count }: FactorPlace,
  factor: (share: number) => number,
): void {
  if (!added) return;
  const whole = factor(1);
  for (let w = 0; w < widths; w += 1) {
    const row = shares.rows[w] as Float64Array;
    const start = lo + (shares.first[w] as number);
    const at = w * borders;
    added[at] = (added[at] as number) + count * whole;
    let former = whole;
    for (let index = 0; index < row.length; index += 1) {
      const border = Math.max(0, start + index);
      const next = factor(row[index] as number);
      if (border < borders) added[at + border] = (added[at + border] as number) + count * (next - former);
      former = next;
    }
  }
}

function summed(ramp: Float64Array, added: Float64Array, borders: number): Float64Array {
  let running = 0;
  return ramp.map((gain, place) => {
    running = place % borders === 0 ? (added[place] as number) : running + (added[place] as number);
    return gain + running;
  });
}
