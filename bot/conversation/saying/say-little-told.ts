/** A fact just told that hardly moves anything is called so: its owner should not build on it. */
import { featureById, type QuietFact, quietFacts } from "../../../knowledge/index.ts";
import type { Assessed } from "../assessed.ts";
import { carForGoal } from "../car-for-goal.ts";
import { saysLittle, saysLittleBeside } from "../phrases/standing.ts";
import { sayReported } from "./say-value.ts";
import { shownDuel } from "./shown-duel.ts";

/** A fact of this weight speaks, even where it cannot move a settled ranking. Ours, no source. */
const quietBans = 0.2;
/** More facts than this at once are not judged one by one. */
const mostJudged = 2;

/** The line, only while the search goes on; beside a doubt or a verdict it would be one too many. */
export function sayLittleTold(assessed: Assessed, justTold: readonly string[]): string | undefined {
  const { question, compiled, facts } = assessed;
  if (question?.about !== "feature" || question.because.kind !== "next") return undefined;
  if (justTold.length > mostJudged) return undefined;
  const weights = shownDuel(assessed)?.weights ?? [];
  const light = justTold.filter(
    (id) => Math.abs(weights.find((one) => one.feature === id)?.bans ?? 0) < quietBans,
  );
  const quiet = quietFacts(compiled, { car: carForGoal(facts), reports: facts.reports }, light);
  const alone = quiet
    .filter(({ beside }) => beside === null)
    .flatMap(({ feature }) => say(assessed, feature));
  const lines = [
    ...(alone.length === 0 ? [] : [saysLittle(alone)]),
    ...quiet.flatMap((fact) => besideAnother(assessed, fact)),
  ];
  return lines.length === 0 ? undefined : lines.join(" ");
}

function besideAnother(assessed: Assessed, { feature, beside }: QuietFact): readonly string[] {
  if (beside === null) return [];
  const [fact] = say(assessed, feature);
  const [other] = say(assessed, beside);
  return fact === undefined || other === undefined ? [] : [saysLittleBeside(other, fact)];
}

function say({ part, facts }: Assessed, id: string): readonly string[] {
  const feature = featureById(part, id);
  return feature === undefined ? [] : [sayReported(feature, facts.reports)];
}
