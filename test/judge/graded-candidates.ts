/**
 * Every candidate of the development messages, also those in clauses that are left aside, with its grounds and whether the
 * annotators noted it. A candidate is left out where another of its feature is right: which of two is for the weighing.
 */
import {
  type Candidate,
  candidateOfAnswer,
  gatherObservations,
} from "../../knowledge/language/gather-observations.ts";
import { groundsOf } from "../../knowledge/language/grounds.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import type { MessageView } from "../../knowledge/language/message-view.ts";
import { readIntents } from "../../knowledge/language/read-intents.ts";
import { wholeOf } from "../../knowledge/language/seen-candidate.ts";
import { readShortAnswer } from "../../knowledge/language/short-answers.ts";
import { annotatedMessages } from "../support/corpus-folder.ts";
import { testToday } from "../support/demo-lexicon.ts";
import type { AnnotatedFact, AnnotatedMessage } from "../support/score-corpus.ts";

export interface Graded {
  /** The writer: what stands before the number of the message. */
  readonly writer: string;
  readonly grounds: readonly number[];
  readonly isRight: boolean;
}

export function gradedCandidates(lexicon: Lexicon): readonly Graded[] {
  return annotatedMessages("development").flatMap((message) => gradedOf(message, lexicon));
}

function gradedOf(message: AnnotatedMessage, lexicon: Lexicon): readonly Graded[] {
  const { view, figures } = layOut(message.text, lexicon, { today: testToday, ...message.context });
  const open: MessageView = {
    ...view,
    stances: view.stances.map((stance) => ({ ...stance, aside: undefined })),
  };
  const { candidates: gathered } = gatherObservations(open);
  const asked = message.context?.askedFeature;
  const isOpen = asked !== undefined && !gathered.some(({ feature }) => feature === asked);
  const answer = isOpen ? readShortAnswer(open, readIntents(view), figures) : undefined;
  const answered = answer === undefined ? undefined : candidateOfAnswer(open, answer);
  const candidates = answered === undefined ? gathered : [...gathered, answered];
  const own = candidates.filter(({ clause }) => view.stances[clause]?.aside === undefined);
  const whole = wholeOf(view, own, 0);
  const isNoted = (candidate: Candidate): boolean => message.facts.some((fact) => notes(fact, candidate));
  return candidates.flatMap((candidate) => {
    const isRight = isNoted(candidate);
    const isSettled = candidates.some((other) => other.feature === candidate.feature && isNoted(other));
    if (!isRight && isSettled) return [];
    const writer = message.id.split("-")[0] ?? "";
    return [{ writer, grounds: groundsOf(view, candidate, whole), isRight }];
  });
}

function notes(fact: AnnotatedFact, { part, feature, state, isDenied }: Candidate): boolean {
  if (fact.feature !== feature || (part !== null && fact.part !== part)) return false;
  if (!isDenied) return fact.state === state;
  return fact.not === state || (fact.state !== undefined && fact.state !== state);
}
