// Was there a sharp change at all? A changeover is asked for only after other histories have had their say: a slow
// one, both variants throughout, a variant that came back, or one that was carried over all along.
import { logSumExp, normaliseLogarithms } from "../numbers/log-sum-exp.ts";
import { sharesOf } from "./as-built-shares.ts";
import { borderLikelihoods, type LikelihoodGround } from "./border-likelihood.ts";
import { type CellGrid, cellGrid } from "./cells.ts";
import { type Circumstance, evenlyReported, overlapMonths, widthPrior } from "./change-priors.ts";
import type { AsBuiltShares } from "./changeover.ts";
import { type ChangeoverSetting, EVEN_REPLACEMENTS } from "./dated-change.ts";
import { reportChance, reportTerms } from "./report-chance.ts";
import { type ChangeoverSighting, groupReports, type ReportGroup } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";
import { thereAndBack } from "./there-and-back.ts";
import { UNITS_PER_NAT, wholeLogarithm } from "./whole-logarithm.ts";

/** change: overlap of at most a year; slow: one and a half to four years; the rest as named. */
export const shapesOfChange = ["change", "slow", "both-throughout", "came-back", "carried-over"] as const;
export type ShapeOfChange = (typeof shapesOfChange)[number];

export interface ShapesOfChange {
  /** Most likely first; ties in the order of shapesOfChange. */
  readonly shapes: readonly { readonly shape: ShapeOfChange; readonly chance: number }[];
  /** To be named beside the first when that is below .9. */
  readonly runnerUp?: ShapeOfChange;
  /** P(new) month by month, averaged over the shapes: the prior for identification. */
  readonly asBuilt: AsBuiltShares;
}

const PRIOR: Readonly<Record<ShapeOfChange, number>> = {
  change: 0.8,
  slow: 0.05,
  "both-throughout": 0.05,
  "came-back": 0.05,
  "carried-over": 0.05,
};
const SURE = 0.9;
const LONGEST_CHANGE = 12;
const SLOW_OVERLAPS = [18, 24, 36, 48] as const;
const BACK_OVERLAPS = [0, 4] as const;
const STEADY_SHARES = Array.from({ length: 19 }, (_, index) => (index + 1) / 20);

interface ShapeEvidence {
  readonly logEvidence: number;
  readonly shares: Float64Array;
}

/**
 * The chance of each shape, from log evidences and the priors .8 and .05 each; monthly cells, even reporting. Below 60
 * sightings "changed late" and "carried over" cannot be told apart. Refused for a window that is none.
 */
export function shapeOfChange(
  setting: ChangeoverSetting,
  sightings: readonly ChangeoverSighting[],
): Result<ShapesOfChange, Refusal> {
  const grid = cellGrid(setting.window, setting.production, 1);
  if (!grid) return refused("no-window", "the window of build dates is empty or longer than a century");
  const { groups } = groupReports(grid, sightings);
  const replacements = setting.replacements ?? EVEN_REPLACEMENTS;
  const even = { grid, circumstances: evenlyReported, replacements };
  const ground = (widths: readonly number[]): LikelihoodGround => ({ ...even, widths });
  const evidences: Readonly<Record<ShapeOfChange, ShapeEvidence>> = {
    change: oneChange(ground(overlapMonths.filter((months) => months <= LONGEST_CHANGE)), groups),
    slow: oneChange(ground(SLOW_OVERLAPS), groups),
    "both-throughout": steady(even, groups, STEADY_SHARES),
    "came-back": thereAndBack(ground(BACK_OVERLAPS), groups),
    "carried-over": steady(even, groups, [0, 1]),
  };
  return found(weighed(grid, evidences));
}

function weighed(grid: CellGrid, evidences: Readonly<Record<ShapeOfChange, ShapeEvidence>>): ShapesOfChange {
  const chances = normaliseLogarithms(
    shapesOfChange.map((shape) => Math.log(PRIOR[shape]) + evidences[shape].logEvidence),
  );
  const shapes = shapesOfChange
    .map((shape, index) => ({ shape, chance: chances[index] as number }))
    .sort((one, other) => other.chance - one.chance);
  const shares = new Float64Array(grid.cells);
  for (const { shape, chance } of shapes) {
    evidences[shape].shares.forEach((share, cell) => {
      shares[cell] = (shares[cell] as number) + chance * share;
    });
  }
  const [first, second] = shapes;
  const isSure = (first?.chance ?? 0) >= SURE;
  return {
    shapes,
    ...(second && !isSure ? { runnerUp: second.shape } : {}),
    asBuilt: { from: grid.from, cell: grid.cell, new: shares },
  };
}

/** One change at a border inside the window, all of them equally likely beforehand. */
function oneChange(ground: LikelihoodGround, groups: readonly ReportGroup[]): ShapeEvidence {
  const { grid, widths, circumstances } = ground;
  const borders = grid.cells + 1;
  const likelihoods = borderLikelihoods(ground, groups);
  const prior = widthPrior(widths).map(Math.log);
  const inside = Math.log(borders - 2);
  const logarithms = likelihoods.map((whole, place) => {
    const border = place % borders;
    if (border === 0 || border === borders - 1) return -Infinity;
    const row = Math.floor(place / borders);
    const { prior: own } = circumstances[Math.floor(row / widths.length)] as Circumstance;
    return whole / UNITS_PER_NAT + Math.log(own) + (prior[row % widths.length] as number) - inside;
  });
  const chances = normaliseLogarithms(logarithms);
  const joint = new Float64Array(widths.length * borders);
  chances.forEach((chance, place) => {
    joint[place % joint.length] = (joint[place % joint.length] as number) + chance;
  });
  return { logEvidence: logSumExp(logarithms), shares: sharesOf(joint, widths, grid.cells) };
}

/** The same share of the new variant all through the window; the given shares equally likely beforehand. */
function steady(
  ground: Omit<LikelihoodGround, "widths">,
  groups: readonly ReportGroup[],
  newShares: readonly number[],
): ShapeEvidence {
  const { circumstances, replacements, grid } = ground;
  const logarithms = newShares.flatMap((share) =>
    circumstances.map((circumstance) => {
      let whole = 0;
      for (const group of groups) {
        const terms = reportTerms(group, circumstance, replacements);
        const chance = group.isNew
          ? reportChance(terms, share, 1 - share)
          : reportChance(terms, 1 - share, share);
        whole += group.units * wholeLogarithm(chance);
      }
      return whole / UNITS_PER_NAT + Math.log(circumstance.prior / newShares.length);
    }),
  );
  const chances = normaliseLogarithms(logarithms);
  const mean = chances.reduce(
    (sum, chance, index) => sum + chance * (newShares[Math.floor(index / circumstances.length)] as number),
    0,
  );
  return { logEvidence: logSumExp(logarithms), shares: new Float64Array(grid.cells).fill(mean) };
}
