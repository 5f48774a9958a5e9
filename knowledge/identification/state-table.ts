/**
 * One state feature over all variants, compiled once per edition. Variants with the same claim share a row, so that
 * thousands of variants cost little memory and a report is weighed once per row.
 */
import { notThere } from "../evidence/report.ts";
import type { Claim, Feature, PartKind, StateFeature } from "../handbook/schema.ts";
import { type Claimed, pseudoCounts, sharesOf } from "./frequency-row.ts";
import type { ObservedState } from "./identification.ts";
import { type MistakeChannel, mistakeChannel } from "./mistake-channel.ts";

/** Share of undocumented parts that lack a feature which some known variant lacks. */
const FLAT_NOT_THERE = 0.1;

export interface StateTable {
  readonly channel: MistakeChannel;
  /** P(state | variant), row-major, distinct rows × states. */
  readonly rows: Float64Array;
  readonly rowCount: number;
  /** The row of each variant. */
  readonly rowOf: Int32Array;
  /** P(state | nothing known). */
  readonly flat: Float64Array;
}

/** State of a measurement or date mark that the part does have. */
export const there = "there";

/** The claim a variant makes about a feature's states; a measurement claim is none. */
function stateClaim(claim: Claim | undefined): Claimed | undefined {
  return claim === undefined || typeof claim.mean === "number" ? undefined : claim;
}

/** Whether some variant of the part kind may lack the feature altogether. */
export function isConditional(
  part: PartKind,
  feature: { readonly id: string; readonly none?: string | undefined },
): boolean {
  return (
    feature.none !== undefined ||
    part.variants.some((variant) => Object.hasOwn(stateClaim(variant.tells[feature.id]) ?? {}, notThere))
  );
}

type ObservedWeights = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** Accepted sightings of one feature: variant to state to weight. */
export function observedOf(
  part: PartKind,
  feature: string,
  observed: readonly ObservedState[],
): ObservedWeights {
  const weights = new Map<string, Map<string, number>>();
  for (const sighting of observed) {
    if (sighting.part !== part.id || sighting.feature !== feature) continue;
    const states = weights.get(sighting.variant) ?? new Map<string, number>();
    states.set(sighting.state, (states.get(sighting.state) ?? 0) + sighting.weight);
    weights.set(sighting.variant, states);
  }
  return weights;
}

/** Compiles a state feature (identification method, sections 2 and 3). */
export function stateTable(part: PartKind, feature: StateFeature, observed: ObservedWeights): StateTable {
  const channel = mistakeChannel(feature, isConditional(part, feature));
  const claims = part.variants.map((variant) => stateClaim(variant.tells[feature.id]));
  return tableOfClaims(part, channel, claims, observed);
}

/**
 * Whether a measurement or a date mark is there at all, as a feature of the states "there" and "not-there";
 * undefined when no variant may lack it.
 */
export function presenceTable(part: PartKind, feature: Feature): StateTable | undefined {
  if (feature.kind === "states" || !isConditional(part, feature)) return undefined;
  const channel = mistakeChannel({ states: [{ id: there }], misread: 0 }, true);
  const claims = part.variants.map((variant) => {
    const claim = variant.tells[feature.id];
    return claim && !stateClaim(claim) ? { [there]: "always" } : stateClaim(claim);
  });
  return tableOfClaims(part, channel, claims, new Map());
}

function tableOfClaims(
  part: PartKind,
  channel: MistakeChannel,
  claims: readonly (Claimed | undefined)[],
  observed: ObservedWeights,
): StateTable {
  const flat = flatShares(channel.states);
  const seenOf = (index: number) => observed.get(part.variants[index]?.id ?? "");
  const keyOf = (index: number): string => {
    const seen = seenOf(index);
    const said = channel.states.map((state) => String(claims[index]?.[state] ?? "")).join("|");
    return seen ? `${said}|${JSON.stringify([...seen])}` : said;
  };
  const { rows, rowOf } = shareRows(part.variants.length, keyOf, (index) =>
    variantShares(channel.states, claims[index], seenOf(index), flat),
  );
  return { channel, rows: concatenate(rows), rowCount: rows.length, rowOf, flat };
}

/** Even over the states; a conditional feature: .1 for "not there", the rest even. */
export function flatShares(states: readonly string[]): Float64Array {
  const real = states.filter((state) => state !== notThere).length;
  const isConditionalFeature = real < states.length;
  return Float64Array.from(states, (state) => {
    if (state === notThere) return FLAT_NOT_THERE;
    return (isConditionalFeature ? 1 - FLAT_NOT_THERE : 1) / real;
  });
}

function variantShares(
  states: readonly string[],
  claim: Claimed | undefined,
  seen: ReadonlyMap<string, number> | undefined,
  flat: Float64Array,
): Float64Array {
  const isNamed = (state: string): boolean => claim !== undefined && Object.hasOwn(claim, state);
  const isLackAllowed = states.includes(notThere);
  const isSilent = !states.some(isNamed);
  if (isLackAllowed && isSilent && !seen) return flat;
  if (isLackAllowed && claim?.[notThere] === "always" && !seen) {
    return Float64Array.from(states, (state) => (state === notThere ? 1 : 0));
  }
  const isLackNamed = isNamed(notThere) || (isLackAllowed && (isSilent || seen?.has(notThere)));
  const possible = isLackNamed ? states : states.filter((state) => state !== notThere);
  const alphas = isLackNamed && isSilent ? flat.map((share) => 2 * share) : pseudoCounts(possible, claim);
  possible.forEach((state, index) => {
    alphas[index] = (alphas[index] as number) + (seen?.get(state) ?? 0);
  });
  const shares = sharesOf(alphas);
  return Float64Array.from(states, (_, index) => shares[index] ?? 0);
}

/** Rows are shared by what is claimed and seen, which is quicker to compare than the rows themselves. */
function shareRows(
  size: number,
  keyOf: (variant: number) => string,
  rowFor: (variant: number) => Float64Array,
): { readonly rows: readonly Float64Array[]; readonly rowOf: Int32Array } {
  const rows: Float64Array[] = [];
  const known = new Map<string, number>();
  const rowOf = new Int32Array(size);
  for (let variant = 0; variant < size; variant += 1) {
    const key = keyOf(variant);
    let row = known.get(key);
    if (row === undefined) {
      row = rows.length;
      known.set(key, row);
      rows.push(rowFor(variant));
    }
    rowOf[variant] = row;
  }
  return { rows, rowOf };
}

function concatenate(rows: readonly Float64Array[]): Float64Array {
  const width = rows[0]?.length ?? 0;
  const all = new Float64Array(rows.length * width);
  rows.forEach((row, index) => {
    all.set(row, index * width);
  });
  return all;
}

/** Σ_s row[s] · byState[s] for every row of the table. */
export function overRows(table: StateTable, byState: Float64Array): Float64Array {
  const width = byState.length;
  const sums = new Float64Array(table.rowCount);
  for (let row = 0; row < table.rowCount; row += 1) {
    for (let state = 0; state < width; state += 1) {
      sums[row] =
        (sums[row] as number) + (table.rows[row * width + state] as number) * (byState[state] as number);
    }
  }
  return sums;
}

/** Σ_s flat[s] · byState[s]. */
export function overFlat(table: StateTable, byState: Float64Array): number {
  return table.flat.reduce((sum, share, state) => sum + share * (byState[state] as number), 0);
}
