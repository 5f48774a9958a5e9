/** Coverage by year as a drawing: a bar a year on a ruler; what no variant is known for stays hatched, so it shows without colour. */
import type { YearCoverage } from "../../../knowledge/index.ts";
import { percent } from "./words.ts";

const STEP = 30;
const HEIGHT = 60;
const BASE = 70;

/** `id` sets the hatching of one chart apart from another's on the same page. */
export function coverageChart(id: string, years: readonly YearCoverage[]): string {
  const width = Math.max(1, years.length) * STEP;
  const hatch = `hatch-${id}`;
  const bars = years.map(({ year, covered }, index) => {
    const x = index * STEP + 3;
    const height = Math.round(covered * HEIGHT);
    const label =
      years.length <= 16 || index % 2 === 0 ? `<text x="${x + 12}" y="${BASE + 14}">${year}</text>` : "";
    return `<g><title>${year}: ${percent(covered)}</title><rect class="hole" x="${x}" y="${BASE - HEIGHT}" width="24" height="${HEIGHT}" fill="url(#${hatch})"/><rect class="known" x="${x}" y="${BASE - height}" width="24" height="${height}"/>${label}</g>`;
  });
  const holes = years.filter(({ covered }) => covered < 0.95).map(({ year }) => year);
  const told = holes.length === 0 ? "every year is covered" : `not wholly covered: ${holes.join(", ")}`;
  return `<svg class="years" viewBox="0 0 ${width} 90" role="img" aria-label="Coverage by year; ${told}"><defs><pattern id="${hatch}" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="line" d="M0 0 V5"/></pattern></defs>${bars.join("")}<path class="line" d="M0 ${BASE} H${width}"/></svg>`;
}
