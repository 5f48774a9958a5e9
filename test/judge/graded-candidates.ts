/**
 * What the judge is taught by: every candidate of annotated messages with its grounds and whether the annotators noted it, and
 * every message with likely candidates, with its grounds and whether they noted anything of its states.
 */
import {
  type Candidate,
  candidateOfAnswer,
  gatherObservations,
} from "../../knowledge/language/gather-observations.ts";
import { type Grounds, groundsOf } from "../../knowledge/language/grounds.ts";
import { takenFrom } from "../../knowledge/language/judge.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import { messageGroundsOf } from "../../knowledge/language/message-grounds.ts";
import { readIntents } from "../../knowledge/language/read-intents.ts";
import { wholeOf } from "../../knowledge/language/seen-candidate.ts";
import { readShortAnswer } from "../../knowledge/language/short-answers.ts";
import { weighCandidates } from "../../knowledge/language/weighed-candidates.ts";
import { testToday } from "../support/demo-lexicon.ts";
import type { AnnotatedFact, AnnotatedMessage } from "../support/score-corpus.ts";
import { writerOf } from "./taught-messages.ts";

export interface Graded extends Grounds {
  readonly writer: string;
  readonly isRight: boolean;
}

/** All that the judge is asked about in a message, the short answer among it where nothing else tells its feature. */
function candidatesOf({ text, context }: AnnotatedMessage, lexicon: Lexicon) {
  const { view, figures } = layOut(text, lexicon, { today: testToday, ...context });
  const answer = readShortAnswer(view, readIntents(view), figures);
  const { candidates: gathered } = gatherObservations(view, answer);
  const isOpen = !gathered.some(({ feature }) => feature === answer?.finding.feature);
  const answered = answer === undefined || !isOpen ? undefined : candidateOfAnswer(view, answer);
  return { view, candidates: answered === undefined ? gathered : [...gathered, answered] };
}

/** The message as a whole, where anything of it is likely. */
export function gradedMessage(message: AnnotatedMessage, lexicon: Lexicon): readonly Graded[] {
  const { view, candidates } = candidatesOf(message, lexicon);
  const whole = wholeOf(view, candidates, 0);
  const weighed = weighCandidates(view, candidates, whole);
  if (weighed.every(({ probability }) => probability < takenFrom)) return [];
  const figures = message.facts.filter(({ reading, date }) => (reading ?? date) !== undefined).length;
  const isRight = message.facts.some(({ state, not }) => (state ?? not) !== undefined);
  return [{ writer: writerOf(message), ...messageGroundsOf(view, weighed, whole, figures), isRight }];
}

/** A candidate is left out where another of its feature is right: which of two is for the weighing. */
export function gradedCandidates(message: AnnotatedMessage, lexicon: Lexicon): readonly Graded[] {
  const { view, candidates } = candidatesOf(message, lexicon);
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
