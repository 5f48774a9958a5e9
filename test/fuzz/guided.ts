// Attempts that build on those before: what came to a new place in the code is kept, and most of what is tried next is one of the kept
// with some of its draws changed.
import { pick } from "../support/draws.ts";
import { type Chance, chanceFrom } from "../support/random-tables.ts";
import { openCoverage } from "./coverage.ts";
import { type Change, chanceOf, type Recipe, written } from "./recipe.ts";
import type { Target } from "./target.ts";

export interface Guided {
  readonly findings: readonly string[];
  readonly kept: number;
  readonly places: number;
}

interface Kept {
  readonly recipe: Recipe;
  /** How many it drew. */
  readonly draws: number;
}

/** A recipe with more changes than this is no parent: it would take long to read. */
const MOST_CHANGES = 24;
const FRESH_SHARE = 0.2;

export async function guided(target: Target, start: number, runs: number): Promise<Guided> {
  const open = await target.open();
  const coverage = await openCoverage();
  const chance = chanceFrom(start);
  const kept: Kept[] = [];
  const findings: string[] = [];
  await coverage.fresh();
  for (let number = 0; number < runs; number += 1) {
    const recipe = nextRecipe(kept, start + number, chance);
    const { drawn, counted } = countedDraws(chanceOf(recipe));
    const finding = await outcomeOf(() => open.attempt(counted));
    if (finding !== undefined) findings.push(`${written(recipe)}: ${finding}`);
    if ((await coverage.fresh()) > 0) kept.push({ recipe, draws: drawn() });
  }
  const places = coverage.places();
  await coverage.close();
  await open.close();
  return { findings, kept: kept.length, places };
}

/** What did not hold, or what was thrown. */
export async function outcomeOf(
  attempt: () => Promise<string | undefined> | string | undefined,
): Promise<string | undefined> {
  try {
    return await attempt();
  } catch (failure) {
    return failure instanceof Error ? (failure.stack ?? failure.message) : String(failure);
  }
}

function nextRecipe(kept: readonly Kept[], fresh: number, chance: Chance): Recipe {
  const parents = kept.filter(({ recipe, draws }) => recipe.changes.length < MOST_CHANGES && draws > 0);
  if (parents.length === 0 || chance() < FRESH_SHARE) return { start: fresh, changes: [] };
  // The latest half as often as all the others: they stand where the others have not been.
  const { recipe, draws } = pick(
    chance,
    chance() < 0.5 ? parents.slice(-Math.ceil(parents.length / 4)) : parents,
  );
  const changes = Array.from({ length: 1 + Math.floor(3 * chance()) }, () => changeOf(draws, chance));
  return { start: recipe.start, changes: [...recipe.changes, ...changes] };
}

function changeOf(draws: number, chance: Chance): Change {
  return {
    at: Math.floor(draws * chance()),
    kind: pick(chance, ["=", "=", "=", "+", "-"] as const),
    draws: 1 + Math.floor(chance() ** 3 * 20),
    start: Math.floor(2 ** 31 * chance()),
  };
}

function countedDraws(chance: Chance): { readonly drawn: () => number; readonly counted: Chance } {
  let count = 0;
  return {
    drawn: () => count,
    counted: () => {
      count += 1;
      return chance();
    },
  };
}
