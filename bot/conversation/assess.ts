/** From the facts of a case to what they amount to: one identification, one table of open questions, one next question. */
import {
  type CompiledPart,
  type Doubts,
  doubtsAbout,
  type Identification,
  identify,
  planQuestions,
  type QuestionTable,
} from "../../knowledge/index.ts";
import type { Assessed } from "./assessed.ts";
import { carForGoal } from "./car-for-goal.ts";
import type { CaseFacts } from "./case.ts";
import { chooseQuestion } from "./choose-question.ts";
import { answeredByDate } from "./made-then.ts";

/** The assessment of a case whose part is known. */
export function assess(compiled: CompiledPart, facts: CaseFacts): Assessed {
  const asked = { car: carForGoal(facts), goal: facts.goal, reports: facts.reports };
  const identification = identifyCase(compiled, facts);
  const answered = answeredByDate(compiled.handbook.cars, facts.car);
  const excluded = new Set([...facts.unanswerable, ...answered]);
  const { table } = planQuestions(compiled, { ...asked, excluded });
  const found = { part: compiled.part, compiled, goal: facts.goal, facts, identification, table };
  return { ...found, question: chooseQuestion(found) };
}

/** What the facts of a case say, without a thought of what to ask. */
export function identifyCase(compiled: CompiledPart, facts: CaseFacts): Identification {
  return identify(compiled, { car: carForGoal(facts), goal: facts.goal, reports: facts.reports });
}

/** What in the facts of a case gives cause to ask again. */
export function doubtsOfCase(compiled: CompiledPart, facts: CaseFacts): Doubts {
  return doubtsAbout(compiled, { car: carForGoal(facts), goal: facts.goal, reports: facts.reports });
}

/** The table with nothing told: for comparing variants as such. */
export function openTable(compiled: CompiledPart): QuestionTable {
  const asked = { car: { isLoosePart: true }, goal: "which-variant", reports: [], isWhole: true } as const;
  return planQuestions(compiled, asked).table;
}

/** Share of each variant in what the works fitted to this car. */
export function asBuiltShares(compiled: CompiledPart, facts: CaseFacts): ReadonlyMap<string, number> {
  const { isLoosePart: _, ...car } = facts.car;
  const built = identify(compiled, { car, goal: "what-should-it-have", reports: [] });
  return new Map(built.classes.map(({ class: id, probability }) => [id, probability]));
}
