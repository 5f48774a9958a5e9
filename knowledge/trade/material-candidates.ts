// Materials whose density fits a measured one. Every material that overlaps is named, for neighbours overlap
// (ABS and polyurethane RIM, polycarbonate and filled polypropylene): weighing narrows, it seldom decides.
import { sayNumber } from "./plain-numbers.ts";
import { OTHER_MATERIALS } from "./tables/other-materials.ts";
import { PLASTICS } from "./tables/plastics.ts";
import type { Range } from "./tables/sourced.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** A material that fits, with the density its table gives it (g/cm³). */
export interface MaterialCandidate extends TradeReading {
  readonly symbol: string;
  readonly density: Range;
}

function distance(range: Range, density: number): number {
  return Math.abs((range.from + range.to) / 2 - density);
}

/**
 * All materials of the tables whose density meets the measured band (g/cm³), those whose middle lies nearest
 * first, ties by symbol. Empty when nothing is so light or so heavy.
 */
export function materialsOfDensity(band: Range): readonly MaterialCandidate[] {
  const measured = (band.from + band.to) / 2;
  return [...PLASTICS, ...OTHER_MATERIALS]
    .filter((row) => row.density.from <= band.to && row.density.to >= band.from)
    .toSorted((one, other) => {
      const nearer = distance(one.density, measured) - distance(other.density, measured);
      return nearer || (one.symbol < other.symbol ? -1 : 1);
    })
    .map((row) => ({
      symbol: row.symbol,
      density: row.density,
      reading: row.symbol === row.material ? row.symbol : `${row.symbol}: ${row.material}`,
      why: `${sayNumber(measured, 2)} g/cm³ meets its ${sayNumber(row.density.from, 3)} to ${sayNumber(row.density.to, 3)}; ${row.use}`,
      basis: basisOf(row),
    }));
}
