/**
 * The one question of a turn. A doubt about what was told comes before anything new; for a goal that is about the car its
 * build date comes first; then the search for the question worth its effort decides, and may decide that none is.
 */
import { featureById, nextQuestion, type QuestionTable } from "../../knowledge/index.ts";
import { type Assessed, carQuestions, type NextQuestion } from "./assessed.ts";
import { cannotTells } from "./case.ts";
import { questionOfDoubt } from "./doubt.ts";

type Found = Omit<Assessed, "question">;

/** The question to ask now; null when asking more would not change the answer by more than it costs. */
export function chooseQuestion(found: Found): NextQuestion | null {
  return questionOfDoubt(found) ?? carFirst(found) ?? worthAsking(found);
}

// "Is it right for my car?" means little without the car's date, and everybody can look the date up.
function carFirst({ goal, facts }: Found): NextQuestion | undefined {
  const isAboutCar = goal === "right-for-car" || goal === "what-should-it-have";
  const isOpen = facts.car.built === undefined && !facts.unanswerable.includes("car.built");
  return isAboutCar && isOpen ? { about: "car", ask: "car.built" } : undefined;
}

function worthAsking(found: Found): NextQuestion | null {
  const { part } = found;
  const { question } = nextQuestion(withinReach(found));
  if (question === null) return null;
  const ask = carQuestions.find((one) => one === question);
  if (ask !== undefined) return { about: "car", ask };
  const feature = featureById(part, question);
  return feature === undefined ? null : { about: "feature", feature, because: { kind: "next" } };
}

/** So many "cannot tell" and nothing seen: the owner is not beside the part. Ours, no source. */
const outOfReachAfter = 3;
/** After these nothing more is asked; whatever is told later opens the questions again. Ours, no source. */
const givenUpAfter = 5;
/** What can be seen without taking anything off, on the handbook's scale from 1 to 8. */
const nothingTakenOff = 4;

// Nobody who could not see the face of a panel is asked to pull it out.
function withinReach({ part, facts, table }: Found): QuestionTable {
  const hasSeen = facts.reports.some((report) => report.value.kind !== "cannot-tell");
  if (hasSeen || cannotTells(facts) < outOfReachAfter) return table;
  if (cannotTells(facts) >= givenUpAfter) return { ...table, questions: [] };
  const isNear = (id: string) => (featureById(part, id)?.effort ?? 1) < nothingTakenOff;
  return { ...table, questions: table.questions.filter(({ id }) => isNear(id)) };
}
