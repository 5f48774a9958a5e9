/**
 * What sightings of real cars taught about a changeover, as it enters the as-built mix: not a step at its most likely
 * date but the share of the new variant at every build date, averaged over all dates still possible.
 */
import type { PartKind } from "../handbook/schema.ts";

export interface LearntChange {
  readonly part: string;
  /** Variant ids: `old` gave way to `new`. */
  readonly old: string;
  readonly new: string;
  /** P(new | old or new, built then), cell by cell from an instant in months; before and after, the first and last. */
  readonly shares: { readonly from: number; readonly cell: number; readonly new: Float64Array };
}

/** The same by index of the variants. */
export interface ChangeOfMix {
  readonly old: number;
  readonly new: number;
  readonly shares: LearntChange["shares"];
}

/** The changes that concern production variants of a part kind; others are passed over. */
export function changesOf(part: PartKind, learnt: readonly LearntChange[]): readonly ChangeOfMix[] {
  const indexOf = (id: string): number =>
    part.variants.findIndex((variant) => variant.id === id && variant.origin === "production");
  return learnt
    .filter((change) => change.part === part.id && change.shares.new.length > 0)
    .map((change) => ({ old: indexOf(change.old), new: indexOf(change.new), shares: change.shares }))
    .filter((change) => change.old >= 0 && change.new >= 0 && change.old !== change.new);
}

/**
 * Divides what the handbook gives to the two variants together by what was learnt, in place: new = (old + new)·P(new).
 * A change of which one variant was never fitted to such a car (another trim) is left alone. `raw`: one per variant.
 */
export function applyChanges(
  raw: Float64Array,
  isFitted: (variant: number) => boolean,
  changes: readonly ChangeOfMix[],
  time: number,
): void {
  for (const { old, new: successor, shares } of changes) {
    if (!isFitted(old) || !isFitted(successor)) continue;
    const cell = Math.floor((time - shares.from) / shares.cell);
    const chance = shares.new[Math.min(shares.new.length - 1, Math.max(0, cell))] as number;
    const both = (raw[old] as number) + (raw[successor] as number);
    raw[old] = both * (1 - chance);
    raw[successor] = both * chance;
  }
}
