/**
 * The one question of a turn. A doubt about what was told comes before anything new; for a goal that is about the car its
 * build date comes first; then the search for the question worth its effort decides, and may decide that none is.
 */
import { featureById, nextQuestion } from "../../knowledge/index.ts";
import { type Assessed, carQuestions, type NextQuestion } from "./assessed.ts";
import { doubtedReading } from "./doubted-reading.ts";

type Found = Omit<Assessed, "question">;

/** The question to ask now; null when asking more would not change the answer by more than it costs. */
export function chooseQuestion(found: Found): NextQuestion | null {
  return unitInDoubt(found) ?? needsSecondLook(found) ?? carFirst(found) ?? worthAsking(found);
}

function unitInDoubt({ identification, part, facts }: Found): NextQuestion | undefined {
  for (const { feature: id, reason, meantUnit } of identification.doubtful) {
    const feature = featureById(part, id);
    if (feature === undefined || reason !== "unit" || meantUnit === undefined) continue;
    if (doubtedReading(facts.reports, id, meantUnit) === undefined) continue;
    return { about: "unit", feature, unit: meantUnit };
  }
  return undefined;
}

function needsSecondLook({ identification, part, facts }: Found): NextQuestion | undefined {
  const outliers = identification.doubtful
    .filter((doubt) => doubt.reason === "outlier")
    .map((doubt) => ({ feature: doubt.feature, because: { kind: "outlier" } as const }));
  const contradictions = identification.contradictions.map(({ feature }) => ({
    feature,
    because: { kind: "contradiction" } as const,
  }));
  for (const { feature: id, because } of [...outliers, ...contradictions]) {
    const feature = featureById(part, id);
    if (feature !== undefined && !facts.rechecked.includes(id)) return { about: "feature", feature, because };
  }
  return undefined;
}

// "Is it right for my car?" means little without the car's date, and everybody can look the date up.
function carFirst({ goal, facts }: Found): NextQuestion | undefined {
  const isAboutCar = goal === "right-for-car" || goal === "what-should-it-have";
  const isOpen = facts.car.built === undefined && !facts.unanswerable.includes("car.built");
  return isAboutCar && isOpen ? { about: "car", ask: "car.built" } : undefined;
}

function worthAsking({ part, table }: Found): NextQuestion | null {
  const { question } = nextQuestion(table);
  if (question === null) return null;
  const ask = carQuestions.find((one) => one === question);
  if (ask !== undefined) return { about: "car", ask };
  const feature = featureById(part, question);
  return feature === undefined ? null : { about: "feature", feature, because: { kind: "next" } };
}
