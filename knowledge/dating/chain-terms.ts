// What the sightings known to one cell say: a gain for every cell in which their variant was fitted alone, and gains
// along the ramps into and out of it. Exact; tabulated by kind of sighting, so that one costs additions only.
import type { CellGrid } from "./cells.ts";
import { type ChainGroup, type ReportLine, reportLine } from "./chain-reports.ts";

export interface ChainGround {
  readonly grid: CellGrid;
  /** Overlaps in cells. */
  readonly widths: readonly number[];
  /** Share of each variant among the replacements; as many as there are variants. */
  readonly replacements: readonly number[];
}

/** Logarithms relative to "the variant was not fitted at all". */
export interface ChainTerms {
  /** Σ over all sightings of the logarithm of that. */
  readonly base: number;
  /** Per variant: sums of the gains of cells 0 … c − 1, cells + 1 values. */
  readonly pure: readonly Float64Array[];
  /** Per changeover: widths × borders, gains of a ramp that begins at a border. */
  readonly ramps: readonly Float64Array[];
}

/** The terms of one value of the swap odds. O(groups · Σ widths). */
export function chainTerms(ground: ChainGround, groups: readonly ChainGroup[], swapOdds: number): ChainTerms {
  const { grid, widths, replacements } = ground;
  const borders = grid.cells + 1;
  const pure = replacements.map(() => new Float64Array(borders));
  const ramps = replacements.slice(1).map(() => new Float64Array(widths.length * borders));
  const tables = new Map<string, readonly Float64Array[]>();
  let base = 0;
  for (const group of groups) {
    if (group.hi - group.lo !== 1) continue;
    const { variant, swap, misread, lo, count } = group;
    const line = reportLine(group, swapOdds, replacements[variant] as number, replacements.length);
    const name = `${swap} ${misread} ${replacements[variant]}`;
    const gains = tables.get(name) ?? rampGains(widths, line);
    tables.set(name, gains);
    base += count * Math.log(line.floor);
    const own = pure[variant] as Float64Array;
    own[lo + 1] = (own[lo + 1] as number) + count * Math.log1p(line.slope / line.floor);
    addRamp(ramps[variant - 1], gains, widths, borders, lo, count, true);
    addRamp(ramps[variant], gains, widths, borders, lo, count, false);
  }
  for (const gains of pure) {
    for (let border = 1; border < borders; border += 1) {
      gains[border] = (gains[border] as number) + (gains[border - 1] as number);
    }
  }
  return { base, pure, ramps };
}

/** ln(1 + slope · f ÷ floor), f = (i + ½)/w for the i-th cell of a ramp of w cells, one row per width. */
function rampGains(widths: readonly number[], line: ReportLine): readonly Float64Array[] {
  return widths.map((width) =>
    Float64Array.from({ length: width }, (_, index) =>
      Math.log1p((line.slope * (index + 0.5)) / (width * line.floor)),
    ),
  );
}

function addRamp(
  ramp: Float64Array | undefined,
  gains: readonly Float64Array[],
  widths: readonly number[],
  borders: number,
  cell: number,
  count: number,
  isRising: boolean,
): void {
  if (!ramp) return;
  for (let w = 0; w < widths.length; w += 1) {
    const width = widths[w] as number;
    const row = gains[w] as Float64Array;
    const first = Math.max(0, cell - width + 1);
    for (let start = first; start <= cell; start += 1) {
      const place = w * borders + start;
      const gain = row[isRising ? cell - start : width - 1 - cell + start] as number;
      ramp[place] = (ramp[place] as number) + count * gain;
    }
  }
}
