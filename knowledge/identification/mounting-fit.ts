/** How well a part goes on a car drilled for another: parts that do not fit are seldom found fitted. */
import type { PartKind } from "../handbook/schema.ts";

const fitFactor = { direct: 1, "with-work": 0.2, no: 0.02 } as const;

/** Factor of a part's mounting on a car's mounting; an unknown mounting, or the same one, fits directly. */
function pairFactor(part: PartKind, onPart: string | undefined, onCar: string | undefined): number {
  if (onPart === undefined || onCar === undefined || onPart === onCar) return 1;
  const named = part.fits.find((fit) => fit.part === onPart && fit.car === onCar);
  return fitFactor[named?.fit ?? "no"];
}

/**
 * One factor per variant: its fit averaged over what the car may be drilled for, which is the mounting of whatever
 * it was built with (`asBuilt`: share of each variant, summing to one over the production variants).
 */
export function mountingFits(part: PartKind, asBuilt: Float64Array): Float64Array {
  const onCar = new Map<string | undefined, number>();
  part.variants.forEach(({ mounting }, index) => {
    onCar.set(mounting, (onCar.get(mounting) ?? 0) + (asBuilt[index] as number));
  });
  const total = asBuilt.reduce((sum, share) => sum + share, 0);
  const byMounting = new Map(onCar);
  for (const mounting of onCar.keys()) {
    let factor = 0;
    for (const [carMounting, share] of onCar) factor += share * pairFactor(part, mounting, carMounting);
    byMounting.set(mounting, total > 0 ? factor / total : 1);
  }
  return Float64Array.from(part.variants, ({ mounting }) => byMounting.get(mounting) as number);
}
