/** The fact that does not go with a doubted one: without it the doubted fact would be believed. */
import { identify } from "../../../knowledge/index.ts";
import type { Assessed } from "../assessed.ts";
import { carForGoal } from "../car-for-goal.ts";

/** The chance of a misreading must fall by this much without the partner. Ours, no source. */
const leastFall = 0.2;

/** Feature id of the partner; undefined when no single fact is at odds with the doubted one. Costs one identification a fact. */
export function partnerOf(assessed: Assessed, doubted: string): string | undefined {
  const { facts, identification } = assessed;
  const flagged = identification.contradictions.find((one) => one.feature === doubted);
  if (flagged?.isNeverTogether && flagged.against !== null) return flagged.against;
  const misread = flagged?.misreadProbability ?? 0;
  const told = [...new Set(facts.reports.map((report) => report.feature))].filter((id) => id !== doubted);
  const falls = told
    .map((id) => ({ id, fall: misread - misreadWithout(assessed, doubted, id) }))
    .toSorted((one, other) => other.fall - one.fall || (one.id < other.id ? -1 : 1));
  const [best] = falls;
  return best !== undefined && best.fall >= leastFall ? best.id : undefined;
}

// A fact that is no longer doubted counts as not misread at all.
function misreadWithout({ compiled, facts, goal }: Assessed, doubted: string, without: string): number {
  const reports = facts.reports.filter((report) => report.feature !== without);
  const { contradictions } = identify(compiled, { car: carForGoal(facts), goal, reports });
  return contradictions.find((one) => one.feature === doubted)?.misreadProbability ?? 0;
}
