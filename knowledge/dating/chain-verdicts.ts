// Which sightings of a chain look swapped or misread once all of them are known. A variant is a suspect wherever it was seen,
// also far from both of its own changes, which no pair of neighbours would notice.
import { type ChainGroup, type ChainSighting, groupOfSighting, reportLine } from "./chain-reports.ts";
import type { ChainGround } from "./chain-terms.ts";
import type { ChainPosterior, ChangeoverChain } from "./changeover-chain.ts";
import type { JudgedSighting } from "./judged-sighting.ts";
import { type ReportVerdict, swapChance } from "./report-chance.ts";

/**
 * A verdict for every sighting within the window, in the order given: for a share f of the reported variant at the works
 * not as built = floor·(1 − f) ÷ (floor + slope·f), swapped = σ·r ÷ (the same), r = e + (1−m−e)q. Averaged over the
 * posterior, exactly where the build date is known to a cell; an imprecise date takes the mean share of its stretch. The
 * posterior already contains the sighting. O(kinds of sightings · factors · Σ widths).
 */
export function chainVerdicts(
  chain: ChangeoverChain,
  sightings: readonly ChainSighting[],
): readonly JudgedSighting[] {
  const { posterior } = chain;
  const known = new Map<string, ReportVerdict>();
  return sightings.flatMap((sighting) => {
    const group = groupOfSighting(posterior.ground.grid, sighting, posterior.ground.replacements.length);
    if (group === undefined) return [];
    const { variant, lo, hi, swap, misread } = group;
    const name = [variant, lo, hi, swap, misread].join(" ");
    const verdict = known.get(name) ?? verdictOf(posterior, group);
    known.set(name, verdict);
    return [{ id: sighting.id, ...verdict }];
  });
}

type Kind = Omit<ChainGroup, "count">;

function verdictOf(posterior: ChainPosterior, kind: Kind): ReportVerdict {
  const { ground } = posterior;
  const sum = { notAsBuilt: 0, swapped: 0 };
  for (const { swapOdds, chance, ramps } of posterior.byOdds) {
    const terms = verdictTerms(ground, kind, swapOdds);
    const add = (weight: number, share: number): void => {
      const read = terms.floor + terms.slope * share;
      sum.notAsBuilt += (chance * weight * terms.floor * (1 - share)) / read;
      sum.swapped += (chance * weight * terms.replaced) / read;
    };
    if (kind.hi - kind.lo === 1) overShares(ground, ramps, kind, add);
    else add(1, meanShareOver(posterior, kind));
  }
  return { notAsBuilt: Math.min(1, sum.notAsBuilt), swapped: Math.min(1, sum.swapped) };
}

function verdictTerms({ replacements }: ChainGround, kind: Kind, swapOdds: number) {
  const share = replacements[kind.variant] as number;
  const { floor, slope } = reportLine(kind, swapOdds, share, replacements.length);
  const error = kind.misread / Math.max(1, replacements.length - 1);
  const readSwapped = error + (1 - kind.misread - error) * share;
  return { floor, slope, replaced: swapChance(kind.swap, swapOdds) * readSwapped };
}

/** Every share the variant may have had in the cell, with its chance: ramps never overlap, so one of them alone decides. */
function overShares(
  { widths, grid }: ChainGround,
  ramps: readonly Float64Array[],
  { variant, lo }: Kind,
  add: (weight: number, share: number) => void,
): void {
  const borders = grid.cells + 1;
  const passed = (ramp: Float64Array, within: (chance: number, risen: number) => void) => {
    const before = { begun: 0, done: 0 };
    widths.forEach((width, w) => {
      for (let start = 0; start <= lo; start += 1) {
        const chance = ramp[w * borders + start] as number;
        before.begun += chance;
        if (start + width <= lo) before.done += chance;
        else within(chance, (lo - start + 0.5) / width);
      }
    });
    return before;
  };
  const come =
    variant === 0
      ? { begun: 1, done: 1 }
      : passed(ramps[variant - 1] as Float64Array, (chance, risen) => add(chance, risen));
  const next = ramps[variant];
  const gone =
    next === undefined ? { begun: 0, done: 0 } : passed(next, (chance, risen) => add(chance, 1 - risen));
  const alone = Math.max(0, come.done - gone.begun);
  add(alone, 1);
  add(Math.max(0, 1 - come.begun) + gone.done, 0);
}

function meanShareOver({ ground: { grid }, means }: ChainPosterior, { variant, lo, hi }: Kind): number {
  let made = 0;
  let fitted = 0;
  for (let cell = lo; cell < hi; cell += 1) {
    const cars = grid.cars[cell] as number;
    const come = variant === 0 ? 1 : ((means[variant - 1] as Float64Array)[cell] as number);
    made += cars;
    fitted += cars * Math.max(0, come - (means[variant]?.[cell] ?? 0));
  }
  return Math.min(1, fitted / made);
}
