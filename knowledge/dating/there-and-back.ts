// A variant that went and came back: old, new, old again, or the reverse. Two changes at least three months apart. The
// likelihood of two changes is that of each alone, save for imprecise dates that lie across both: those are mended.
import { borderLikelihoods, type LikelihoodGround } from "./border-likelihood.ts";
import { type OverlapProfile, overlapProfile } from "./overlap-profile.ts";
import { reportChance, reportTerms } from "./report-chance.ts";
import type { ReportGroup } from "./report-groups.ts";
import { UNITS_PER_NAT, wholeLogarithm } from "./whole-logarithm.ts";

/** Months between the going and the coming back, at least. */
const APART = 3;

export interface ThereAndBack {
  /** Logarithm of the evidence. */
  readonly logEvidence: number;
  /** P(new | cell). */
  readonly shares: Float64Array;
}

/** One way of going and coming back: whole logarithms of pairs of borders. */
interface Way {
  readonly logPrior: number;
  /** The new variant is the one in the middle. */
  readonly isNewBetween: boolean;
  readonly width: number;
  readonly going: Float64Array;
  readonly coming: Float64Array;
  readonly shared: number;
  readonly mended: Float64Array;
}

/** Evidence and shares, averaged over circumstances, widths and both directions. O(borders² · ways). */
export function thereAndBack(ground: LikelihoodGround, groups: readonly ReportGroup[]): ThereAndBack {
  const ways = allWays(ground, groups);
  const borders = ground.grid.cells + 1;
  let greatest = -Infinity;
  for (const way of ways) {
    eachPair(way, borders, (logarithm) => {
      if (logarithm > greatest) greatest = logarithm;
    });
  }
  const shares = new Float64Array(ground.grid.cells);
  let sum = 0;
  for (const way of ways) {
    const going = new Float64Array(borders);
    const coming = new Float64Array(borders);
    let own = 0;
    eachPair(way, borders, (logarithm, first, second) => {
      const weight = logarithm - greatest < -40 ? 0 : Math.exp(logarithm - greatest);
      own += weight;
      going[first] = (going[first] as number) + weight;
      coming[second] = (coming[second] as number) + weight;
    });
    sum += own;
    addShares(shares, way, going, coming, own);
  }
  const pairs = ((borders - 1 - APART) * (borders - 2 - APART)) / 2;
  return {
    logEvidence: sum > 0 ? greatest + Math.log(sum / pairs) : -Infinity,
    shares: shares.map((share) => (sum > 0 ? share / sum : 0.5)),
  };
}

function allWays(ground: LikelihoodGround, groups: readonly ReportGroup[]): readonly Way[] {
  const { grid, widths, circumstances } = ground;
  const borders = grid.cells + 1;
  const rising = borderLikelihoods(ground, groups);
  const falling = borderLikelihoods({ ...ground, isReversed: true }, groups);
  return circumstances.flatMap((circumstance, c) =>
    widths.flatMap((width, w) =>
      [true, false].map((isNewBetween): Way => {
        const row = (c * widths.length + w) * borders;
        const [going, coming] = isNewBetween ? [rising, falling] : [falling, rising];
        return {
          logPrior: Math.log(circumstance.prior / widths.length / 2),
          isNewBetween,
          width,
          going: going.subarray(row, row + borders),
          coming: coming.subarray(row, row + borders),
          shared: going[row] as number,
          mended: mendedPairs(ground, groups, c, width, isNewBetween),
        };
      }),
    ),
  );
}

function eachPair(
  way: Way,
  borders: number,
  visit: (logarithm: number, first: number, second: number) => void,
): void {
  for (let first = 1; first < borders - 1; first += 1) {
    const before = (way.going[first] as number) - way.shared;
    for (let second = first + APART; second < borders - 1; second += 1) {
      const whole =
        before + (way.coming[second] as number) + (way.mended[first * borders + second] as number);
      visit(way.logPrior + whole / UNITS_PER_NAT, first, second);
    }
  }
}

/** For stretches that lie across both changes: the logarithm of the true share minus what the two parts say. */
function mendedPairs(
  ground: LikelihoodGround,
  groups: readonly ReportGroup[],
  c: number,
  width: number,
  isNewBetween: boolean,
): Float64Array {
  const { grid, circumstances, replacements } = ground;
  const borders = grid.cells + 1;
  const mended = new Float64Array(borders * borders);
  for (const group of groups) {
    const circumstance = circumstances[c];
    if (group.hi - group.lo === 1 || !circumstance) continue;
    const terms = reportTerms(group, circumstance, replacements);
    const isBetween = group.isNew === isNewBetween;
    const logarithmAt = (between: number): number =>
      wholeLogarithm(
        isBetween ? reportChance(terms, between, 1 - between) : reportChance(terms, 1 - between, between),
      );
    mendGroup(mended, borders, group, overlapProfile(grid.cars, group.lo, group.hi, width), logarithmAt);
  }
  return mended;
}

function mendGroup(
  mended: Float64Array,
  borders: number,
  group: ReportGroup,
  profile: OverlapProfile,
  logarithmAt: (between: number) => number,
): void {
  const start = group.lo + profile.first;
  const shares = Array.from(profile.parts, (part) => part / profile.whole);
  const afterFirst = shares.map((share) => logarithmAt(share));
  const beforeSecond = shares.map((share) => logarithmAt(1 - share));
  const all = logarithmAt(1);
  for (let one = Math.max(0, 1 - start); one < shares.length; one += 1) {
    const last = Math.min(shares.length, borders - 1 - start);
    for (let other = one + APART; other < last; other += 1) {
      const between = Math.max(0, (shares[one] as number) - (shares[other] as number));
      const apart = (afterFirst[one] as number) + (beforeSecond[other] as number) - all;
      const place = (start + one) * borders + start + other;
      mended[place] = (mended[place] as number) + group.units * (logarithmAt(between) - apart);
    }
  }
}

/** Adds what a way says of the new variant's share: after the going and before the coming back, or the reverse. */
function addShares(
  shares: Float64Array,
  way: Way,
  going: Float64Array,
  coming: Float64Array,
  own: number,
): void {
  const after = (weights: Float64Array, cell: number): number => {
    const reach = Math.ceil(way.width / 2) + 1;
    let sum = 0;
    for (let border = 0; border <= Math.min(weights.length - 1, cell + reach); border += 1) {
      const away = cell - border + 0.5;
      const share = way.width === 0 ? Number(away > 0) : Math.min(1, Math.max(0, away / way.width + 0.5));
      sum += (weights[border] as number) * share;
    }
    return sum;
  };
  for (let cell = 0; cell < shares.length; cell += 1) {
    const between = after(going, cell) - after(coming, cell);
    shares[cell] = (shares[cell] as number) + (way.isNewBetween ? between : own - between);
  }
}
