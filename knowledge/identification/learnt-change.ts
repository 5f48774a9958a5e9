/**
 * What sightings of real cars taught about a changeover, as it enters the as-built mix: not a step at its most likely
 * date but the share of the new variant at every build date, averaged over all dates still possible.
 */
import type { CarDescription } from "../evidence/car-description.ts";
import type { PartKind } from "../handbook/schema.ts";

/** The cars that a change was learnt of: those of a trim, of a market, or of both. */
export type ChangeScope = Pick<CarDescription, "trim" | "market">;

export interface LearntChange {
  readonly part: string;
  /** Variant ids: `old` gave way to `new`. */
  readonly old: string;
  readonly new: string;
  /** Left out: all cars of which no other change of the same two was learnt. */
  readonly scope?: ChangeScope;
  /** P(new | old or new, built then), cell by cell from an instant in months; before and after, the first and last. None: what the handbook has stands. */
  readonly shares: { readonly from: number; readonly cell: number; readonly new: Float64Array };
}

/** The same by index of the variants. */
export interface ChangeOfMix {
  readonly old: number;
  readonly new: number;
  readonly scope: ChangeScope;
  readonly shares: LearntChange["shares"];
}

/** The changes that concern production variants of a part kind; others are passed over. */
export function changesOf(part: PartKind, learnt: readonly LearntChange[]): readonly ChangeOfMix[] {
  const indexOf = (id: string): number =>
    part.variants.findIndex((variant) => variant.id === id && variant.origin === "production");
  return learnt
    .filter((change) => change.part === part.id)
    .map((change) => ({
      old: indexOf(change.old),
      new: indexOf(change.new),
      scope: change.scope ?? {},
      shares: change.shares,
    }))
    .filter((change) => change.old >= 0 && change.new >= 0 && change.old !== change.new);
}

/**
 * The changes as they stand for such a car: of those of the same two variants that of the narrowest scope it lies in,
 * the first of several. A car whose trim or market is not known lies in no scope that names one.
 */
export function changesFor(changes: readonly ChangeOfMix[], car: CarDescription): readonly ChangeOfMix[] {
  const chosen = new Map<string, ChangeOfMix>();
  for (const change of changes) {
    const { trim, market } = change.scope;
    const holds =
      (trim === undefined || trim === car.trim) && (market === undefined || market === car.market);
    const pair = `${change.old} ${change.new}`;
    const known = chosen.get(pair);
    if (holds && (known === undefined || narrowness(change) > narrowness(known))) chosen.set(pair, change);
  }
  return [...chosen.values()];
}

function narrowness({ scope: { trim, market } }: ChangeOfMix): number {
  return (trim === undefined ? 0 : 1) + (market === undefined ? 0 : 1);
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
    if (shares.new.length === 0 || !isFitted(old) || !isFitted(successor)) continue;
    const cell = Math.floor((time - shares.from) / shares.cell);
    const chance = shares.new[Math.min(shares.new.length - 1, Math.max(0, cell))] as number;
    const both = (raw[old] as number) + (raw[successor] as number);
    raw[old] = both * (1 - chance);
    raw[successor] = both * chance;
  }
}
