/**
 * How alike two variants look: the overlap of what owners would answer for either. One number a feature, and features
 * multiply, because answers about different features are taken as independent here.
 */
import type { Feature } from "../handbook/schema.ts";
import type { CompiledPart } from "../identification/compiled-part.ts";
import type { StateTable } from "../identification/state-table.ts";

/**
 * The Bhattacharyya coefficient Σ √(p·q) over the answers to one feature's question, from 0 (never the same answer) to 1
 * (the same shares). With it ρ, the chance of error of the best judge of two even candidates lies between
 * (1 − √(1 − ρ²)) / 2 and ρ / 2: Kailath (1967), "The divergence and Bhattacharyya distance measures in signal selection",
 * IEEE Trans. Commun. Technol. 15:52-60, section III (from memory). 1 where the handbook is silent on either: nobody can
 * count on a difference that is not written down. `one`, `other`: indices of variants.
 */
export function overlapOnFeature(
  compiled: CompiledPart,
  feature: Feature,
  one: number,
  other: number,
): number {
  if (feature.kind !== "date" && (isSilent(compiled, feature, one) || isSilent(compiled, feature, other)))
    return 1;
  const cause = compiled.causes.get(feature.id);
  if (cause !== undefined && (isNamed(cause, one) || isNamed(cause, other))) {
    return isNamed(cause, one) && isNamed(cause, other)
      ? overlap(cause.shares, one * cause.stateCount, other * cause.stateCount, cause.stateCount)
      : 1;
  }
  const rows = compiled.answers.get(feature.id);
  if (rows !== undefined) {
    const width = rows.answers.length;
    return overlap(
      rows.rows,
      (rows.rowOf[one] as number) * width,
      (rows.rowOf[other] as number) * width,
      width,
    );
  }
  const presence = compiled.presence.get(feature.id);
  const seen = presence === undefined ? 1 : overlapOfPresence(presence, one, other);
  return feature.kind === "date" ? Math.min(seen, overlapOfTimes(compiled, one, other)) : seen;
}

/** Whether the handbook says nothing of a feature on a variant, neither there nor by a cause. */
function isSilent({ part, causes }: CompiledPart, feature: Feature, variant: number): boolean {
  const cause = causes.get(feature.id);
  if (cause !== undefined && isNamed(cause, variant)) return false;
  return !Object.hasOwn(part.variants[variant]?.tells ?? {}, feature.id);
}

function isNamed(
  cause: { readonly shares: Float64Array; readonly stateCount: number },
  variant: number,
): boolean {
  return !Number.isNaN(cause.shares[variant * cause.stateCount]);
}

function overlap(rows: Float64Array, one: number, other: number, width: number): number {
  let sum = 0;
  for (let answer = 0; answer < width; answer += 1) {
    sum += Math.sqrt((rows[one + answer] as number) * (rows[other + answer] as number));
  }
  return Math.min(1, sum);
}

function overlapOfPresence(table: StateTable, one: number, other: number): number {
  return overlap(table.rows, (table.rowOf[one] as number) * 2, (table.rowOf[other] as number) * 2, 2);
}

/** A date mark tells variants apart that were made at different times: the share of the shorter time that both have. */
function overlapOfTimes(compiled: CompiledPart, one: number, other: number): number {
  const [first, second] = [one, other].map((index) => timesOf(compiled, index));
  if (first === undefined || second === undefined) return 1;
  const common = Math.min(first.to, second.to) - Math.max(first.from, second.from);
  const shorter = Math.min(first.to - first.from, second.to - second.from);
  return Math.max(0, Math.min(1, common / shorter));
}

/** From the first fitting or sale of a variant to the last, in months. */
function timesOf(
  compiled: CompiledPart,
  index: number,
): { readonly from: number; readonly to: number } | undefined {
  const spans = [
    ...compiled.fleet.spans.filter(({ variant }) => variant === index),
    ...(compiled.sales[index] ?? []),
  ];
  if (spans.length === 0) return undefined;
  return {
    from: Math.min(...spans.map(({ from }) => from)),
    to: Math.max(...spans.map(({ to }) => to)),
  };
}
