import { expect, test } from "vitest";
import { yearInterval } from "../../../knowledge/calendar/interval.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { planQuestions } from "../../../knowledge/identification/plan-questions.ts";
import { wouldChange } from "../../../knowledge/identification/would-change.ts";
import { compiledExample, measures, report, sees } from "../../support/worked-examples.ts";

const compiled = compiledExample();
const car = { built: yearInterval(1979) };

test("an answer that would change the first class does change it when it is given", () => {
  const reports = [sees("mark", "present")];
  const asked = { car, goal: "which-variant", reports } as const;
  const planned = planQuestions(compiled, asked);
  const turning = wouldChange(planned);
  expect(turning.length).toBeGreaterThan(2);
  const before = identify(compiled, asked).classes[0]?.class;
  for (const { question, answer, first } of turning) {
    const plan = planned.plans.get(question);
    const pressed = plan?.kind === "car" ? undefined : plan?.answers.find(({ id }) => id === answer);
    const after = identify(compiled, {
      ...asked,
      reports: [...reports, report(question, pressed?.value ?? { kind: "cannot-tell" })],
    });
    expect(first).not.toBe(before);
    expect(after.classes[0]?.class).toBe(first);
  }
});
test("the most probable answer stands first, and none below one in twenty is named", () => {
  const chances = wouldChange(planQuestions(compiled, { car, goal: "which-variant", reports: [] })).map(
    ({ probability }) => probability,
  );
  expect(chances).toEqual([...chances].sort((one, other) => other - one));
  expect(Math.min(...chances)).toBeGreaterThanOrEqual(0.05);
});
test("nothing is named once the answer is settled", () => {
  const reports = [measures("width", 412), sees("inside", "rough"), sees("fixing", "two")];
  expect(wouldChange(planQuestions(compiled, { car, goal: "which-variant", reports }))).toEqual([]);
});
