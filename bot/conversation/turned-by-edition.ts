/**
 * A case goes on when its handbook is changed under it. What it came to is kept with the edition it came from; under another edition
 * the same facts are weighed anew, and whoever asked is told when that turns the answer.
 */
import { notInHandbook, sayProbability, shortEdition } from "../../knowledge/index.ts";
import { assess } from "./assess.ts";
import type { Assessed } from "./assessed.ts";
import type { Case } from "./case.ts";
import type { Knowledge } from "./knowledge.ts";
import { answerMoved, answerTurned } from "./phrases/editions.ts";
import { notInHandbookWords } from "./phrases/goals.ts";
import { nameInSentence, rankedAnswers } from "./saying/say-standing.ts";

/** A smaller move of the same answer is not worth a line. */
const worthTelling = 0.15;

/** The case with what it comes to now, which hangs on its facts and the edition alone; without it while nothing is told. */
export function answeredBy(knowledge: Knowledge, kept: Case, assessed: Assessed | undefined): Case {
  const { answered: _, ...unanswered } = kept;
  const first = assessed && firstAnswer(assessed);
  if (first === undefined) return unanswered;
  return { ...unanswered, answered: { edition: knowledge.handbook.edition, ...first } };
}

/** The line that says so; undefined when the edition is the same, or changes nothing of note. */
export function turnedByEdition(knowledge: Knowledge, kept: Case): string | undefined {
  const { answered, facts } = kept;
  const { cover, edition } = knowledge.handbook;
  if (answered === undefined || answered.edition === edition || kept.handbook !== cover.id) return undefined;
  const compiled = facts.part === null ? undefined : knowledge.compiled(facts.part);
  if (compiled === undefined) return undefined;
  const assessed = assess(compiled, facts);
  const now = firstAnswer(assessed);
  if (now === undefined) return undefined;
  const [older, newer] = [answered.edition, edition].map(shortEdition);
  if (older === undefined || newer === undefined) return undefined;
  const name = nameInSentence(assessed, now.class);
  if (now.class !== answered.class) {
    const was =
      answered.class === notInHandbook ? notInHandbookWords : nameInSentence(assessed, answered.class);
    return answerTurned(older, newer, withShare(was, answered.probability), withShare(name, now.probability));
  }
  if (Math.abs(now.probability - answered.probability) < worthTelling) return undefined;
  return answerMoved(
    older,
    newer,
    name,
    sayProbability(answered.probability),
    sayProbability(now.probability),
  );
}

/** Ties go to the handbook's order. */
function firstAnswer(
  assessed: Assessed,
): { readonly class: string; readonly probability: number } | undefined {
  if (!assessed.facts.reports.some(({ value }) => value.kind !== "cannot-tell")) return undefined;
  const [first, ...others] = rankedAnswers(assessed);
  return others.reduce(
    (best, one) => (best !== undefined && one.probability > best.probability ? one : best),
    first,
  );
}

function withShare(name: string, probability: number): string {
  return `${name}, ${sayProbability(probability)}`;
}
