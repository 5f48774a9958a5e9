/**
 * The one question of a turn. A doubt about what was told comes before anything new; for a goal that is about the car its
 * build date comes first; then the search for the question worth its effort decides, and may decide that none is.
 */
import { nextQuestion } from "../../knowledge/index.ts";
import { type Assessed, type CarQuestion, featureOf, type NextQuestion } from "./assessed.ts";
import { unansweredCarQuestions, worthOfCarQuestion } from "./car-question.ts";

type Found = Omit<Assessed, "question">;

/** The question to ask now; null when asking more would not change the answer by more than it costs. */
export function chooseQuestion(found: Found): NextQuestion | null {
  return unitInDoubt(found) ?? needsSecondLook(found) ?? carFirst(found) ?? worthAsking(found);
}

function unitInDoubt({ identification, part, facts }: Found): NextQuestion | undefined {
  for (const doubt of identification.doubtful) {
    const feature = featureOf(part, doubt.feature);
    const isSettled = facts.reports.some(
      ({ feature: id, value }) =>
        id === doubt.feature && value.kind === "measurement" && value.unitConfirmed === true,
    );
    if (feature === undefined || doubt.reason !== "unit" || doubt.meantUnit === undefined || isSettled) continue;
    return { about: "unit", feature, unit: doubt.meantUnit };
  }
  return undefined;
}

function needsSecondLook({ identification, part, facts }: Found): NextQuestion | undefined {
  const outliers = identification.doubtful
    .filter((doubt) => doubt.reason === "outlier")
    .map((doubt) => ({ feature: doubt.feature, because: { kind: "outlier" } as const }));
  const contradictions = identification.contradictions.map(({ feature, against }) => ({
    feature,
    because: { kind: "contradiction", against } as const,
  }));
  for (const { feature: id, because } of [...outliers, ...contradictions]) {
    const feature = featureOf(part, id);
    if (feature !== undefined && !facts.rechecked.includes(id)) return { about: "feature", feature, because };
  }
  return undefined;
}

// "Is it right for my car?" means little without the car's date, and everybody can look the date up.
function carFirst(found: Found): NextQuestion | undefined {
  const { goal, facts } = found;
  const isAboutCar = goal === "right-for-car" || goal === "what-should-it-have";
  if (isAboutCar && unansweredCarQuestions(facts).includes("car.built")) {
    return { about: "car", ask: "car.built" };
  }
  return goal === "what-should-it-have" ? (bestCarQuestion(found) ?? undefined) : undefined;
}

function worthAsking(found: Found): NextQuestion | null {
  if (found.goal === "what-should-it-have") return null;
  const decision = nextQuestion(found.table);
  const feature = decision.question === null ? undefined : featureOf(found.part, decision.question);
  const easy = feature !== undefined && feature.effort <= easyEffort;
  const car = easy ? undefined : bestCarQuestion(found);
  if (car !== undefined) return car;
  return feature === undefined ? null : { about: "feature", feature, because: { kind: "next" } };
}

/** A look of this effort is asked before the car; anything dearer must first be compared with what the papers say. */
const easyEffort = 2;

function bestCarQuestion(found: Found): NextQuestion | undefined {
  const worths = unansweredCarQuestions(found.facts)
    .map((ask) => ({ ask, worth: worthOfCarQuestion(found, ask) }))
    .filter(({ worth }) => worth > 0)
    .toSorted((one, other) => other.worth - one.worth || order(one.ask) - order(other.ask));
  const [best] = worths;
  return best && { about: "car", ask: best.ask };
}

function order(ask: CarQuestion): number {
  return ["car.built", "car.trim", "car.market", "car.model"].indexOf(ask);
}
