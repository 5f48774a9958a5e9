/** What the owner wants to know; the same facts serve every goal. */
export const goals = ["which-variant", "right-for-car", "genuine", "what-should-it-have"] as const;
export type Goal = (typeof goals)[number];

/** Verdict classes beside the variants themselves. */
export const notInHandbook = "not-in-the-handbook";
export const rightForCarClasses = [
  "as-built",
  "right-kind-replaced",
  "other-year-or-model",
  "service-part",
  "reproduction",
  "other-maker",
  notInHandbook,
] as const;

/**
 * Price of a wrong verdict in looks from outside; a purchase ("is it genuine?") costs more than curiosity. On the demo
 * handbook 60 stops after four questions with up to twice the errors of a full form; 120 halves that gap for one question
 * more, and still asks for less than half of the form's effort (simulate; figures in the bench).
 */
export const lambdaOfGoal: Readonly<Record<Goal, number>> = {
  "which-variant": 120,
  "right-for-car": 120,
  genuine: 180,
  "what-should-it-have": 60,
};
