/** Tells that need dismantling, though a photograph tells apart whatever they tell apart. */
import type { Feature } from "../handbook/schema.ts";
import type { CompiledPart } from "../identification/compiled-part.ts";
import { type Margin, note } from "./remark.ts";
import { overlapOnFeature } from "./variant-overlap.ts";

/** From this effort on something has to be taken off or apart. */
const DISMANTLING = 5;
/** Up to this effort a photograph is taken without taking anything off. */
const EASY = 3;
/** A pair counts as told apart up to this overlap of the answers. */
const TOLD_APART = 0.6;
/** Of larger part kinds only so many variants are compared. */
const MOST_VARIANTS = 200;

export function remarkDearFeatures(margin: Margin, compiled: CompiledPart): void {
  const { features } = compiled.part;
  const easy = features.filter(({ photograph, effort }) => photograph && effort <= EASY);
  for (const [index, feature] of features.entries()) {
    if (feature.effort < DISMANTLING || feature.kind === "date") continue;
    const instead = substitutes(compiled, feature, easy);
    if (instead === undefined || instead.length === 0) continue;
    const names = instead.map(({ id, effort }) => `${id} (effort ${effort})`).join(", ");
    note(margin, {
      severity: "wish",
      code: "feature-dear",
      path: ["features", index, "effort"],
      message: `${feature.id} needs dismantling (effort ${feature.effort}), though a photograph tells the same variants apart`,
      mend: `${names} will do: keep ${feature.id} only if it is the surer tell, and say so in why`,
    });
  }
}

/** The easy features that tell apart every pair this one does; undefined when it tells some pair apart alone, or none. */
function substitutes(
  compiled: CompiledPart,
  dear: Feature,
  easy: readonly Feature[],
): readonly Feature[] | undefined {
  const used = new Set<Feature>();
  const size = Math.min(compiled.part.variants.length, MOST_VARIANTS);
  for (let one = 0; one < size; one += 1) {
    for (let other = one + 1; other < size; other += 1) {
      if (overlapOnFeature(compiled, dear, one, other) > TOLD_APART) continue;
      const instead = easy.find((feature) => overlapOnFeature(compiled, feature, one, other) <= TOLD_APART);
      if (instead === undefined) return undefined;
      used.add(instead);
    }
  }
  return easy.filter((feature) => used.has(feature));
}
