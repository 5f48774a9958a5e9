/**
 * The hypotheses of a question table. A small part kind keeps every hypothesis; of a large one, ways of a variant
 * that end in the same verdict become one row, and so do all parts that are not in the handbook: they answer alike,
 * or are told apart by nothing that is worth a question. Flat arrays, because hundreds of questions run over them.
 */
import { type Goal, notInHandbook } from "../evidence/goal.ts";
import type { Belief } from "./belief.ts";
import { classesOf } from "./classes.ts";
import type { CompiledPart } from "./compiled-part.ts";

/** Up to this many hypotheses stand each for itself. */
const KEPT_APART = 300;
/** A row less probable than this is left out of a large table. */
const NEGLIGIBLE = 1e-7;

/** A row of several variants (all kins of a large part kind). */
export const MIXED = -2;
/** The row of the kin of nothing. */
export const NOTHING = -1;

export interface TableRows {
  readonly ids: readonly string[];
  readonly classes: readonly string[];
  readonly probabilities: Float64Array;
  /** The one variant of a row, or NOTHING, or MIXED. */
  readonly variants: Int32Array;
  /** 1 where the row stands for the kin of its variant. */
  readonly areKin: Uint8Array;
  /** Row r has the hypotheses `members[starts[r]] … members[starts[r + 1] − 1]`, with their shares of the row. */
  readonly starts: Int32Array;
  readonly members: Int32Array;
  readonly shares: Float64Array;
  /** The mixed row by variant: the share of each variant's kin, and of the kin of nothing. */
  readonly kinShares: Float64Array;
  readonly nothingShare: number;
}

/** The rows of a table for a goal, in the order of the hypotheses. */
export function tableRows(belief: Belief, goal: Goal): TableRows {
  const { space } = belief.compiled;
  const classes = classesOf(belief.compiled, belief.ground, goal);
  const isSmall = space.size <= KEPT_APART;
  const groups = new Map<number | string, number[]>();
  const key = isSmall
    ? (h: number): number => h
    : (h: number): number =>
        h < space.inHandbook
          ? (space.variants[h] as number) * classes.names.length + (classes.of[h] as number)
          : -1;
  belief.probabilities.forEach((probability, h) => {
    if (probability <= (isSmall ? 0 : NEGLIGIBLE / space.size)) return;
    const group = groups.get(key(h));
    if (group) group.push(h);
    else groups.set(key(h), [h]);
  });
  const sumOf = (members: readonly number[]): number =>
    members.reduce((sum, h) => sum + (belief.probabilities[h] as number), 0);
  const kept = [...groups.values()]
    .map((members) => ({ members, probability: sumOf(members) }))
    .filter(({ probability }) => isSmall || probability >= NEGLIGIBLE);
  return flatRows(belief, kept, (h) => {
    const named = classes.names[classes.of[h] as number] as string;
    return { named, id: isSmall ? (space.ids[h] as string) : mergedId(belief.compiled, h, named) };
  });
}

function mergedId({ space, part }: CompiledPart, h: number, named: string): string {
  if (h >= space.inHandbook) return notInHandbook;
  const variant = part.variants[space.variants[h] as number]?.id ?? "";
  return variant === named ? variant : `${variant}:${named}`;
}

interface Kept {
  readonly members: readonly number[];
  readonly probability: number;
}

function mixture(
  { compiled: { space, part }, probabilities }: Belief,
  mixed: Kept | undefined,
): Pick<TableRows, "kinShares" | "nothingShare"> {
  const kinShares = new Float64Array(part.variants.length);
  let nothingShare = 0;
  for (const h of mixed?.members ?? []) {
    const variant = space.variants[h] as number;
    const share = (probabilities[h] as number) / (mixed?.probability ?? 1);
    if (variant < 0) nothingShare = share;
    else kinShares[variant] = share;
  }
  return { kinShares, nothingShare };
}

function flatRows(
  belief: Belief,
  kept: readonly Kept[],
  nameOf: (h: number) => { readonly id: string; readonly named: string },
): TableRows {
  const { space } = belief.compiled;
  const names = kept.map(({ members }) => nameOf(members[0] ?? 0));
  const starts = new Int32Array(kept.length + 1);
  kept.forEach(({ members }, row) => {
    starts[row + 1] = (starts[row] as number) + members.length;
  });
  const variantOf = (h: number): number => space.variants[h] as number;
  const variants = Int32Array.from(kept, ({ members }) => {
    const first = variantOf(members[0] ?? 0);
    return members.every((h) => variantOf(h) === first) ? first : MIXED;
  });
  return {
    ...mixture(belief, kept[variants.indexOf(MIXED)]),
    variants,
    ids: names.map(({ id }) => id),
    classes: names.map(({ named }) => named),
    probabilities: Float64Array.from(kept, ({ probability }) => probability),
    areKin: Uint8Array.from(kept, ({ members }) => ((members[0] ?? 0) >= space.inHandbook ? 1 : 0)),
    starts,
    members: Int32Array.from(kept.flatMap(({ members }) => members)),
    shares: Float64Array.from(
      kept.flatMap(({ members, probability }) =>
        members.map((h) => (belief.probabilities[h] as number) / probability),
      ),
    ),
  };
}
