/**
 * Every candidate of annotated messages with its grounds and whether the annotators noted it. A candidate is left out where
 * another of its feature is right: which of two is for the weighing.
 */
import {
  type Candidate,
  candidateOfAnswer,
  gatherObservations,
} from "../../knowledge/language/gather-observations.ts";
import { type Grounds, groundsOf } from "../../knowledge/language/grounds.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import { readIntents } from "../../knowledge/language/read-intents.ts";
import { wholeOf } from "../../knowledge/language/seen-candidate.ts";
import { readShortAnswer } from "../../knowledge/language/short-answers.ts";
import { testToday } from "../support/demo-lexicon.ts";
import type { AnnotatedFact, AnnotatedMessage } from "../support/score-corpus.ts";
import { writerOf } from "./taught-messages.ts";

export interface Graded extends Grounds {
  readonly writer: string;
  readonly isRight: boolean;
}

export function gradedCandidates(message: AnnotatedMessage, lexicon: Lexicon): readonly Graded[] {
  const { view, figures } = layOut(message.text, lexicon, { today: testToday, ...message.context });
  const answer = readShortAnswer(view, readIntents(view), figures);
  const { candidates: gathered } = gatherObservations(view, answer);
  const isOpen = !gathered.some(({ feature }) => feature === answer?.finding.feature);
  const answered = answer === undefined || !isOpen ? undefined : candidateOfAnswer(view, answer);
  const candidates = answered === undefined ? gathered : [...gathered, answered];
  const whole = wholeOf(view, candidates, 0);
  const isNoted = (candidate: Candidate): boolean => message.facts.some((fact) => notes(fact, candidate));
  const own = candidates.filter(({ clause }) => view.stances[clause]?.mayTell ?? true);
  return own.flatMap((candidate) => {
    const isRight = isNoted(candidate);
    const isSettled = candidates.some((other) => other.feature === candidate.feature && isNoted(other));
    if (!isRight && isSettled) return [];
    return [{ writer: writerOf(message), ...groundsOf(view, candidate, whole), isRight }];
  });
}

function notes(fact: AnnotatedFact, { part, feature, state, isDenied }: Candidate): boolean {
  if (fact.feature !== feature || (part !== null && fact.part !== part)) return false;
  if (!isDenied) return fact.state === state;
  return fact.not === state || (fact.state !== undefined && fact.state !== state);
}
