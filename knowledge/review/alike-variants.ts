/** Pairs of variants that all questions together cannot tell apart, and the cheapest new tell that would. */
import type { Feature, PartKind, Variant } from "../handbook/schema.ts";
import type { CompiledPart } from "../identification/compiled-part.ts";
import { type Margin, note } from "./remark.ts";
import { overlapOnFeature } from "./variant-overlap.ts";

/** From this overlap on the best judge of two even candidates is wrong in more than one case of four (Kailath's bound). */
export const ALIKE_FROM = 0.9;
/** More pairs of one part kind are not listed: the first ones have to be mended anyway. */
const MOST_PAIRS = 25;

export function remarkAlikeVariants(margin: Margin, compiled: CompiledPart): void {
  const { part } = compiled;
  let pairs = 0;
  for (const [other, second] of part.variants.entries()) {
    for (const [one, first] of part.variants.slice(0, other).entries()) {
      if (pairs === MOST_PAIRS || !isAlike(compiled, one, other)) continue;
      pairs += 1;
      noteAlike(margin, part, first, second, other);
    }
  }
}

function isAlike(compiled: CompiledPart, one: number, other: number): boolean {
  let overlap = 1;
  for (const feature of compiled.part.features) {
    overlap *= overlapOnFeature(compiled, feature, one, other);
    if (overlap <= ALIKE_FROM) return false;
  }
  return true;
}

function noteAlike(margin: Margin, part: PartKind, first: Variant, second: Variant, index: number): void {
  note(margin, {
    severity: "doubt",
    code: "variants-alike",
    path: ["variants", index, "id"],
    message: `no question can tell ${second.id} from ${first.id}`,
    mend: cheapestTell(part, first, second),
  });
}

/** What to write so that the two can be told apart, with the least effort for the owner; features in order of effort. */
export function cheapestTell(part: PartKind, first: Variant, second: Variant): string {
  return (
    unsaidTell(part, first, second) ??
    "add a feature in which they differ, a look from outside if there is one, or make them one variant"
  );
}

/** The cheapest thing that is not written down of the two, or that no feature asks for; undefined when all is said. */
export function unsaidTell(part: PartKind, first: Variant, second: Variant): string | undefined {
  const silent = part.features
    .filter((feature) => feature.kind !== "date" && isOpen(part, feature, first, second))
    .toSorted((one, other) => one.effort - other.effort)[0];
  if (silent !== undefined) {
    const missing = [first, second].filter((variant) => !Object.hasOwn(variant.tells, silent.id));
    const whom = missing.map(({ id }) => id).join(" and ");
    return `cheapest: say what is seen of ${silent.id} on ${whom} (effort ${silent.effort}), if it differs`;
  }
  const unlike = unlikeWords(part, first, second);
  return unlike === undefined ? undefined : `cheapest: a new feature for ${unlike}`;
}

/** The feature whose answers for the two overlap least, the cheaper of equals; undefined when none tells them apart at all. Dates are read, not counted: they are left out. */
export function bestTell(compiled: CompiledPart, first: Variant, second: Variant): Feature | undefined {
  const [one, other] = [first, second].map((variant) => compiled.part.variants.indexOf(variant));
  if (one === undefined || other === undefined) return undefined;
  let best: { readonly feature: Feature; readonly overlap: number } | undefined;
  for (const feature of compiled.part.features.toSorted((a, b) => a.effort - b.effort)) {
    const overlap = overlapOnFeature(compiled, feature, one, other);
    if (feature.kind !== "date" && overlap < 1 && (best === undefined || overlap < best.overlap))
      best = { feature, overlap };
  }
  return best?.feature;
}

/** Whether something can still be written down about a feature, on either of the two. */
function isOpen(part: PartKind, { id }: Feature, first: Variant, second: Variant): boolean {
  const isGoverned = part.causes.some(
    ({ features, variants }) =>
      Object.hasOwn(features, id) && Object.hasOwn(variants, first.id) && Object.hasOwn(variants, second.id),
  );
  return !isGoverned && !(Object.hasOwn(first.tells, id) && Object.hasOwn(second.tells, id));
}

/** What the variants are said to differ in, though no feature asks for it. */
function unlikeWords(part: PartKind, first: Variant, second: Variant): string | undefined {
  if (first.mounting !== undefined && second.mounting !== undefined && first.mounting !== second.mounting) {
    const [one, other] = [first.mounting, second.mounting].map(
      (id) => part.mountings.find((mounting) => mounting.id === id)?.name ?? id,
    );
    return `the mounting (${one} or ${other}), which the variants already name`;
  }
  if (
    first.material !== undefined &&
    second.material !== undefined &&
    first.material.toLowerCase() !== second.material.toLowerCase()
  ) {
    return `the material (${first.material} or ${second.material}), which the variants already name`;
  }
  return undefined;
}
