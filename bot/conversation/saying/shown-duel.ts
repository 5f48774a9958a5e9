/**
 * The duel as it is shown. When the first two answers differ only in the part's history ("as built" or "right kind,
 * fitted later") what was seen cannot tell them apart, and the duel of the first two variants is the one that explains.
 */
import { type Duel, duelOfVariants } from "../../../knowledge/index.ts";
import type { Assessed } from "../assessed.ts";
import { carForGoal } from "../car-for-goal.ts";

const ofTheKind: ReadonlySet<string> = new Set(["as-built", "right-kind-replaced"]);

/** Null when there is no rival. */
export function shownDuel({ identification, compiled, facts }: Assessed): Duel | null {
  const { duel } = identification;
  if (duel === null || !(ofTheKind.has(duel.first) && ofTheKind.has(duel.rival))) return duel;
  return duelOfVariants(compiled, { car: carForGoal(facts), reports: facts.reports });
}
