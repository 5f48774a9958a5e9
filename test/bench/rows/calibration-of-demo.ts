// Whether the demo handbook's probabilities mean what they say if its tables are true: parts are drawn from the model's own
// prior, and each answer from the table the next question would be chosen by, so that tells of one cause go together.

import { scoresOf } from "../../../adapters/command-line/simulation/scores.ts";
import type { PlayedCase } from "../../../adapters/command-line/simulation/ways-of-asking.ts";
import {
  type CarDescription,
  type CompiledPart,
  type Goal,
  identify,
  lambdaOfGoal,
  planQuestions,
  type Report,
} from "../../../knowledge/index.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { even, indexAt, pick } from "../../support/draws.ts";
import { type Chance, chanceFrom } from "../../support/random-tables.ts";
import type { Figure, Row } from "../row.ts";

const OWNERS = 400;
const START = 1984;
const FACTS = [3, 7, 12];
const GOALS = ["which-variant", "right-for-car"] as const;

export const calibrationOfDemo: Row = {
  name: "calibration-of-demo",
  about: `owners drawn from the demo handbook's own tables, ${OWNERS} a part kind and line`,
  starts: [START],
  measure: () => FACTS.flatMap(figuresOf),
};

function figuresOf(facts: number): readonly Figure[] {
  const { handbook, compiled } = demoKnowledge();
  const parts = handbook.parts.flatMap(({ id }) => compiled(id) ?? []);
  const what = `demo handbook, ${facts} facts`;
  return GOALS.flatMap((goal) => {
    const chance = chanceFrom(START + facts);
    const played = parts.flatMap((part) =>
      Array.from({ length: OWNERS }, () => playedCase(part, facts, goal, chance)),
    );
    const scores = scoresOf(played, lambdaOfGoal[goal]);
    return [
      { what: `${what}: right, ${goal}`, value: 100 * scores.topOneAccuracy, unit: "%" },
      {
        what: `${what}: calibration error, ${goal}`,
        value: scores.expectedCalibrationError,
        unit: "",
        budget: { atMost: 0.03 },
      },
      { what: `${what}: Brier score, ${goal}`, value: scores.brier, unit: "" },
    ];
  });
}

/** Half of the owners know in which month the car was built. */
function playedCase(part: CompiledPart, facts: number, goal: Goal, chance: Chance): PlayedCase {
  const { from, to } = part.productionSpan;
  const month = Math.floor(even(chance, from, to));
  const car: CarDescription = chance() < 0.5 ? {} : { built: { from: month, to: month + 1 } };
  const luck = chance();
  let truth: { readonly id: string; readonly class: string } | undefined;
  const reports: Report[] = [];
  while (reports.length < facts) {
    const { table, plans } = planQuestions(part, { car, goal, reports, isWhole: true });
    truth ??=
      table.hypotheses[
        indexAt(
          table.hypotheses.map(({ prior }) => prior),
          luck,
        )
      ];
    const row = table.hypotheses.findIndex(({ id }) => id === truth?.id);
    const open = table.questions.filter(({ id }) => plans.get(id)?.kind !== "car");
    if (open.length === 0 || row < 0) break;
    const question = pick(chance, open);
    const width = question.answers.length;
    const answer = indexAt(question.likelihood.subarray(row * width, (row + 1) * width), chance());
    const plan = plans.get(question.id);
    if (plan === undefined || plan.kind === "car") break;
    const value = plan.answers[answer]?.value ?? { kind: "cannot-tell" as const };
    reports.push({ feature: plan.feature, by: "owner", certainty: 1, words: "", value });
  }
  const { classes } = identify(part, { car, goal, reports });
  return {
    effort: 0,
    questions: reports.length,
    classes: new Map(classes.map(({ class: name, probability }) => [name, probability])),
    trueClass: truth?.class ?? "",
  };
}
