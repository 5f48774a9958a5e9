/** A fact just told that hardly moves anything is called so: its owner should not build on it. */
import { identify } from "../../../knowledge/index.ts";
import type { Assessed } from "../assessed.ts";
import { carForGoal } from "../car-for-goal.ts";
import { featuresNamed } from "../features-named.ts";
import { saysLittle } from "../phrases/standing.ts";
import { sayReported } from "./say-value.ts";
import { shownDuel } from "./shown-duel.ts";

/** Half the sum of all changes in the ranking; below it a fact says little. Ours, no source. */
const littleShift = 0.05;
/** A fact of this weight speaks, even where it cannot move a settled ranking. Ours, no source. */
const quietBans = 0.2;
/** More facts than this at once are not judged one by one. */
const mostJudged = 2;

/** The line, only while the search goes on; beside a doubt or a verdict it would be one too many. */
export function sayLittleTold(assessed: Assessed, justTold: readonly string[]): string | undefined {
  const { question, part, facts } = assessed;
  if (question?.about !== "feature" || question.because.kind !== "next") return undefined;
  if (justTold.length > mostJudged) return undefined;
  const weights = shownDuel(assessed)?.weights ?? [];
  const isQuiet = (id: string) =>
    Math.abs(weights.find((one) => one.feature === id)?.bans ?? 0) < quietBans &&
    shiftBy(assessed, id) < littleShift;
  const names = featuresNamed(part, justTold.filter(isQuiet)).map((feature) =>
    sayReported(feature, facts.reports),
  );
  return names.length === 0 ? undefined : saysLittle(names);
}

/** Total variation distance between the ranking with and without the fact, in [0, 1]. */
function shiftBy({ compiled, facts, identification }: Assessed, without: string): number {
  const reports = facts.reports.filter((report) => report.feature !== without);
  const { ranking } = identify(compiled, { car: carForGoal(facts), goal: "which-variant", reports });
  const before = new Map(ranking.map(({ variant, probability }) => [variant, probability]));
  const changes = identification.ranking.map(({ variant, probability }) =>
    Math.abs(probability - (before.get(variant) ?? 0)),
  );
  return changes.reduce((sum, change) => sum + change, 0) / 2;
}
