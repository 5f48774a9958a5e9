/**
 * What the car alone says before anybody has looked at the part: how likely it is still the part it left the works
 * with, and where it came from if not (identification method, section 1).
 */
import type { Interval } from "../calendar/interval.ts";
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { Cover, PartKind } from "../handbook/schema.ts";
import type { HypothesisSpace, Way } from "./hypothesis-space.ts";
import { saleLeft, serviceMonths } from "./sale-spans.ts";

/** Odds of "replaced", as a multiple of the part kind's odds; judgement, not fitted. */
const gradeFactor: Readonly<Record<Exclude<ProvenanceGrade, "known-replaced">, number>> = {
  "documented-from-new": 0.1,
  "one-owner": 0.35,
  "history-unknown": 1,
};
const KNOWN_REPLACED = 0.98;

/** Chance that the part is not in the handbook, by how complete its historians call it. */
const unknownShare: Readonly<Record<Cover["completeness"], number>> = {
  complete: 0.01,
  good: 0.03,
  fair: 0.06,
  poor: 0.12,
};
/** Of what is not in the handbook, this share resembles a known variant. */
const KIN_SHARE = 0.9;

const wayShare: Readonly<Partial<Record<Way, number>>> = {
  service: 0.35,
  used: 0.3,
  reproduction: 0.25,
  "other-maker": 0.1,
};

/** q: the chance that the part was replaced, from odds q/(1 − q) = g · r/(1 − r); known replaced: .98. */
export function replacedShare(replaced: number, grade: ProvenanceGrade): number {
  if (grade === "known-replaced") return KNOWN_REPLACED;
  const odds = (gradeFactor[grade] * replaced) / (1 - replaced);
  return odds / (1 + odds);
}

interface PriorGround {
  readonly part: PartKind;
  readonly completeness: Cover["completeness"];
  readonly space: HypothesisSpace;
  readonly grade: ProvenanceGrade;
  /** Share of each variant among cars like this one, as built. */
  readonly asBuilt: Float64Array;
  /** Share of each variant among all cars, as built: where used parts come from. */
  readonly amongAllCars: Float64Array;
  /** Sale periods by variant. */
  readonly sales: readonly (readonly Interval[])[];
  /** A service part was sold after this instant. */
  readonly earliestSale: number;
  /** Mounting fit by variant. */
  readonly fits: Float64Array;
}

/** P(h), summing to one; 0 for a way that has no candidate on this car (a sale that ended before it was built). */
export function priorOf(ground: PriorGround): Float64Array {
  const { space, part } = ground;
  const unknown = unknownShare[ground.completeness];
  const replaced = replacedShare(part.replaced, ground.grade);
  const candidates = candidateWeights(ground);
  const totals = new Map<Way, number>();
  for (let h = 0; h < space.inHandbook; h += 1) {
    const way = space.ways[h] as Way;
    totals.set(way, (totals.get(way) ?? 0) + (candidates[h] as number));
  }
  const shares = shareOfWays(totals, replaced);
  const prior = new Float64Array(space.size);
  const byVariant = new Float64Array(part.variants.length);
  for (let h = 0; h < space.inHandbook; h += 1) {
    const way = space.ways[h] as Way;
    const total = totals.get(way) ?? 0;
    if (total <= 0) continue;
    const given = ((shares.get(way) ?? 0) * (candidates[h] as number)) / total;
    const variant = space.variants[h] as number;
    prior[h] = (1 - unknown) * given;
    byVariant[variant] = (byVariant[variant] as number) + given;
  }
  for (let h = space.inHandbook; h < space.size; h += 1) {
    const variant = space.variants[h] as number;
    prior[h] = variant < 0 ? unknown * (1 - KIN_SHARE) : unknown * KIN_SHARE * (byVariant[variant] as number);
  }
  return prior;
}

function shareOfWays(totals: ReadonlyMap<Way, number>, replaced: number): ReadonlyMap<Way, number> {
  const open = [...totals].filter(([way, total]) => way !== "works" && total > 0).map(([way]) => way);
  const openShare = open.reduce((sum, way) => sum + (wayShare[way] ?? 0), 0);
  const hasWorks = (totals.get("works") ?? 0) > 0;
  const others = hasWorks ? replaced : 1;
  const shares = new Map<Way, number>([["works", openShare > 0 ? 1 - replaced : 1]]);
  for (const way of open) shares.set(way, (others * (wayShare[way] ?? 0)) / openShare);
  return shares;
}

/** x_v · fit of every hypothesis within its way; for the works, the as-built mix itself. */
function candidateWeights(ground: PriorGround): Float64Array {
  const { space, part } = ground;
  const weights = new Float64Array(space.inHandbook);
  for (let h = 0; h < space.inHandbook; h += 1) {
    const variant = space.variants[h] as number;
    const fit = ground.fits[variant] as number;
    switch (space.ways[h]) {
      case "works":
        weights[h] = ground.asBuilt[variant] as number;
        break;
      case "used":
        weights[h] = fit * (ground.amongAllCars[variant] as number);
        break;
      case "service":
        weights[h] = fit * monthsOfService(part, ground, variant);
        break;
      default:
        weights[h] = fit;
    }
  }
  return weights;
}

function monthsOfService(part: PartKind, ground: PriorGround, index: number): number {
  const variant = part.variants[index];
  if (!variant) return 0;
  return serviceMonths(variant, saleLeft(ground.sales[index] ?? [], ground.earliestSale));
}
