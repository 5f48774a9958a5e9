/**
 * A measurement as a question with answers: the sizes between the variants' means are cut into a few stretches of
 * round numbers, because a conversation offers buttons and a plan needs a finite table.
 */
import type { ReportValue } from "../evidence/report.ts";
import type { MeasurementFeature } from "../handbook/schema.ts";
import { type MeanRange, type Reading, readingOf } from "./measurement-likelihood.ts";
import { type MeasurementTable, overMeans } from "./measurement-table.ts";

/** At most this many answers are offered. */
const MOST_BINS = 8;

interface SizeBin {
  readonly id: string;
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

/** The answers of a measured feature; fewer than two when the variants' means do not differ. */
export function sizeBins(feature: MeasurementFeature, table: MeasurementTable): readonly SizeBin[] {
  if (!table.range) return [];
  const means = [...new Set(table.means.filter((mean) => !Number.isNaN(mean)))].sort(
    (one, other) => one - other,
  );
  const edges = edgesBetween(means);
  if (edges.length === 0) return [];
  const low = table.range.lowest / 1.5;
  const high = table.range.highest * 1.5;
  const cuts = [low, ...edges, high];
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] as number;
    return { id: `${plain(from)}-${plain(to)}`, label: labelOf(from, to, low, high, feature.unit), from, to };
  });
}

/** Round numbers between neighbouring means, the widest gaps first when there are many. */
function edgesBetween(means: readonly number[]): readonly number[] {
  const gaps = means.slice(1).map((mean, index) => {
    const before = means[index] as number;
    return { edge: roundBetween(before, mean), width: Math.log(mean / before) };
  });
  return gaps
    .sort((one, other) => other.width - one.width)
    .slice(0, MOST_BINS - 1)
    .map(({ edge }) => edge)
    .sort((one, other) => one - other);
}

/** The middle of two numbers, rounded to 1, 2 or 5 units of a decimal place no coarser than a fifth of their gap. */
function roundBetween(from: number, to: number): number {
  const finest = (to - from) / 5;
  const decade = 10 ** Math.floor(Math.log10(finest));
  const step = [5, 2, 1].map((factor) => factor * decade).find((candidate) => candidate <= finest) ?? decade;
  return Number((Math.round((from + to) / 2 / step) * step).toPrecision(12));
}

function plain(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function labelOf(from: number, to: number, low: number, high: number, unit: string): string {
  if (from === low) return `under ${plain(to)} ${unit}`;
  if (to === high) return `${plain(from)} ${unit} or more`;
  return `${plain(from)} to ${plain(to)} ${unit}`;
}

/** What pressing the answer says: a size somewhere in the stretch. */
export function valueOfBin(bin: SizeBin, feature: MeasurementFeature): ReportValue {
  return {
    kind: "measurement",
    value: (bin.from + bin.to) / 2,
    halfWidth: (bin.to - bin.from) / 2,
    unit: feature.unit,
    unitConfirmed: true,
  };
}

/** The bins as readings of one careful person, so that a row is what the same answer would weigh afterwards. */
function readingsOfBins(
  bins: readonly SizeBin[],
  feature: MeasurementFeature,
  range: MeanRange,
): readonly Reading[] {
  return bins.flatMap((bin) => {
    const value = valueOfBin(bin, feature);
    return readingOf({ feature: feature.id, by: "", certainty: 1, words: "", value }, feature, range) ?? [];
  });
}

/** P(answer | variant) over the bins, one row per variant, and P(answer | flat); every row sums to one. */
export function chancesOfBins(
  bins: readonly SizeBin[],
  feature: MeasurementFeature,
  table: MeasurementTable,
  range: MeanRange,
): { readonly byVariant: readonly Float64Array[]; readonly flat: Float64Array } {
  const answers = readingsOfBins(bins, feature, range).map((reading) => overMeans(table, [reading]));
  const flat = normalised(answers.map((answer) => answer.flat));
  const byVariant = Array.from(table.means, (_, variant) =>
    normalised(answers.map((answer) => answer.byVariant[variant] as number)),
  );
  return { byVariant, flat };
}

function normalised(chances: readonly number[]): Float64Array {
  const total = chances.reduce((sum, chance) => sum + chance, 0);
  return Float64Array.from(chances, (chance) => chance / total);
}
