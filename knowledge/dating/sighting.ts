// A sighting: which variant somebody saw on which car. What a club's list holds, before it is asked about a changeover.
import type { Interval } from "../calendar/interval.ts";
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { ChainSighting } from "./chain-reports.ts";
import { swapByGrade } from "./provenance-swap.ts";
import type { ChangeoverSighting } from "./report-groups.ts";

export interface Sighting {
  readonly id: string;
  /** Id of the variant as reported. */
  readonly variant: string;
  /** When the car was built. */
  readonly built: Interval;
  readonly grade: ProvenanceGrade;
  /** Chance that the variant was misread. */
  readonly misread: number;
  /** Whether the car was looked for, whatever it would show. */
  readonly isSought: boolean;
  /** A keeper has ruled that the part is the one the car was built with. */
  readonly isRuledAsBuilt: boolean;
  readonly model?: string;
  readonly trim?: string;
  readonly market?: string;
  readonly note?: string;
  /** How many cars alike it stands for; one when left out. */
  readonly count?: number;
}

/** Chance that the part was swapped: 0 by a keeper's ruling, else by the grade. */
function swapOf(sighting: Sighting): number {
  return sighting.isRuledAsBuilt ? 0 : swapByGrade[sighting.grade];
}

/** No reading is so sure that a single one may rule a history out. */
const LEAST_MISREAD = 0.005;

/** The sightings of the old and the new variants of one changeover; those of other variants say nothing of it. */
export function sightingsOfChange(
  sightings: readonly Sighting[],
  oldVariants: readonly string[],
  newVariants: readonly string[],
): readonly ChangeoverSighting[] {
  return sightings
    .filter(({ variant }) => oldVariants.includes(variant) || newVariants.includes(variant))
    .map((sighting) => ({
      id: sighting.id,
      isNew: newVariants.includes(sighting.variant),
      built: sighting.built,
      swap: swapOf(sighting),
      misread: Math.max(LEAST_MISREAD, sighting.misread),
      isSought: sighting.isSought,
      ...(sighting.count === undefined ? {} : { count: sighting.count }),
    }));
}

/** The sightings of variants that followed each other in the given order. */
export function sightingsOfChain(
  sightings: readonly Sighting[],
  variants: readonly string[],
): readonly ChainSighting[] {
  return sightings.flatMap((sighting) => {
    const variant = variants.indexOf(sighting.variant);
    const { id, built, misread, count } = sighting;
    const cars = count === undefined ? {} : { count };
    return variant < 0 ? [] : [{ id, variant, built, swap: swapOf(sighting), misread, ...cars }];
  });
}
