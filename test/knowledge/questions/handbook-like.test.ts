// On tables shaped like a handbook's no optimum can be proven; the policy is played against a greedy assistant
// that stops at 95 %, on the same cases with the same luck.

import { expect, test } from "vitest";
import { nextQuestion } from "../../../knowledge/questions/next-question.ts";
import { playPolicies } from "../../bench/policy-on-large-tables.ts";
import { handbookLikeTable } from "../../support/handbook-like-table.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { greedyUntil } from "../../support/simple-policies.ts";

test.each([
  { variants: 12, ways: 4, questions: 14, goal: "variant", lambda: 60 },
  { variants: 20, ways: 4, questions: 25, goal: "right for car", lambda: 60 },
] as const)("at least five per cent are saved with $variants variants, $questions questions", (shape) => {
  const chance = chanceFrom(9);
  const table = handbookLikeTable(shape, chance);
  const played = playPolicies(
    table,
    { ours: (here) => nextQuestion(here).question, greedy: greedyUntil(0.95) },
    60,
    chance,
  );
  expect(played.ours?.objective).toBeLessThan(0.95 * (played.greedy?.objective ?? 0));
});
