/**
 * Features that a known hidden cause governs (which tool, which supplier), with the historian's conditional table.
 * Exact where tempering only softens: the cause is summed over, its features are independent given the cause.
 */
import type { Cause, PartKind } from "../handbook/schema.ts";
import { pseudoCounts, sharesOf } from "./frequency-row.ts";
import type { StateTable } from "./state-table.ts";

export interface CauseTable {
  readonly id: string;
  readonly stateCount: number;
  /** P(cause state | variant), row-major, variants × cause states; NaN for a variant the cause does not name. */
  readonly shares: Float64Array;
  /** Feature to P(feature state | cause state), row-major, cause states × feature states. */
  readonly features: ReadonlyMap<string, Float64Array>;
}

/** Compiles a cause; features that are no state features of the part are left out. */
export function causeTable(
  part: PartKind,
  cause: Cause,
  tables: ReadonlyMap<string, StateTable>,
): CauseTable {
  const stateCount = cause.states.length;
  const shares = new Float64Array(part.variants.length * stateCount).fill(Number.NaN);
  part.variants.forEach((variant, index) => {
    const row = Object.hasOwn(cause.variants, variant.id) ? cause.variants[variant.id] : undefined;
    if (row) shares.set(sharesOf(pseudoCounts(cause.states, row)), index * stateCount);
  });
  const features = new Map<string, Float64Array>();
  for (const [feature, byCause] of Object.entries(cause.features)) {
    const states = tables.get(feature)?.channel.states;
    if (!states) continue;
    const rows = new Float64Array(stateCount * states.length);
    cause.states.forEach((state, z) => {
      rows.set(sharesOf(pseudoCounts(states, byCause[state])), z * states.length);
    });
    features.set(feature, rows);
  }
  return { id: cause.id, stateCount, shares, features };
}

/** Whether the cause says anything of this variant; else its own tells stand. */
export function isNamedByCause(cause: CauseTable, variant: number): boolean {
  return !Number.isNaN(cause.shares[variant * cause.stateCount]);
}

/** Σ_s θ_s|z · byState[s] for each cause state z; 1 for a feature the cause does not govern. */
export function givenCause(cause: CauseTable, feature: string, byState: Float64Array): Float64Array {
  const rows = cause.features.get(feature);
  const sums = new Float64Array(cause.stateCount).fill(rows ? 0 : 1);
  if (!rows) return sums;
  for (let z = 0; z < cause.stateCount; z += 1) {
    byState.forEach((chance, state) => {
      sums[z] = (sums[z] as number) + (rows[z * byState.length + state] as number) * chance;
    });
  }
  return sums;
}
