// A changeover's date and shares without its verdicts: what answers need after every new sighting, at a fraction of the cost.
import { asBuiltShares } from "./as-built-shares.ts";
import type { LikelihoodMemory } from "./border-likelihood.ts";
import { cellGrid } from "./cells.ts";
import type { AsBuiltShares } from "./changeover.ts";
import type { ChangeoverPosterior } from "./changeover-posterior.ts";
import { type ChangeoverSetting, type DatedChange, posteriorOf, whenChanged } from "./dated-change.ts";
import { type ChangeoverSighting, groupReports } from "./report-groups.ts";
import { found, type Refusal, type Result, refused } from "./result.ts";

export interface BriefChangeover extends DatedChange {
  readonly asBuilt: AsBuiltShares;
  readonly posterior: ChangeoverPosterior;
}

/** The same date and shares as `changeover` gives, to the last digit. O(circumstances · groups · Σ(width + length of stretch)). */
export function briefChangeover(
  setting: ChangeoverSetting,
  sightings: readonly ChangeoverSighting[],
  memory?: LikelihoodMemory,
): Result<BriefChangeover, Refusal> {
  const grid = cellGrid(setting.window, setting.production, setting.cell);
  if (!grid) return refused("no-window", "the window of build dates is empty or longer than a century");
  const posterior = posteriorOf(grid, setting, groupReports(grid, sightings), {
    stated: setting.stated,
    memory,
  });
  const asBuilt = { from: grid.from, cell: grid.cell, new: asBuiltShares(posterior) };
  return found({ ...whenChanged(posterior), asBuilt, posterior });
}
