/** What would change the answer: answers to open questions, likely enough to be heard, that put another class first. */
import { heaviest, heaviestFirst } from "./classes.ts";
import type { PlannedQuestions } from "./question-plan.ts";

/** An answer less probable than this is not worth mentioning. */
const LEAST_CHANCE = 0.05;

interface TurningAnswer {
  readonly question: string;
  readonly answer: string;
  /** P(this answer), given that something is told. */
  readonly probability: number;
  /** The class that would then stand first. */
  readonly first: string;
}

/**
 * Answers with P ≥ .05 after which another class would stand first (identification method, section 7), the most
 * probable first; equal ones in the order of the questions. Empty when no single answer would change anything.
 */
export function wouldChange({ table }: PlannedQuestions): readonly TurningAnswer[] {
  const names = [...new Set(table.hypotheses.map((hypothesis) => hypothesis.class))];
  const classOf = table.hypotheses.map((hypothesis) => names.indexOf(hypothesis.class));
  const sums = (weightOf: (h: number) => number): Float64Array => {
    const totals = new Float64Array(names.length);
    classOf.forEach((named, h) => {
      totals[named] = (totals[named] as number) + (table.hypotheses[h]?.prior ?? 0) * weightOf(h);
    });
    return totals;
  };
  const present = sums(() => 1);
  const total = present.reduce((sum, belief) => sum + belief, 0);
  const first = heaviest(present);
  const turning = table.questions.flatMap(({ id, answers, likelihood }) =>
    answers.flatMap((answer, column): TurningAnswer[] => {
      const joint = sums((h) => likelihood[h * answers.length + column] as number);
      const probability = joint.reduce((sum, belief) => sum + belief, 0) / total;
      const then = heaviest(joint);
      if (then === first || probability < LEAST_CHANCE) return [];
      return [{ question: id, answer, probability, first: names[then] as string }];
    }),
  );
  return heaviestFirst(turning.map(({ probability }) => probability)).flatMap(
    (index) => turning[index] ?? [],
  );
}
