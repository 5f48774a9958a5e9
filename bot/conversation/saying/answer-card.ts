/**
 * A case as somebody else reads it, on a page that its asker shares: what was asked, what was seen, the answer with its weights, what
 * is open and what would settle it, and the sources. A value by itself, so that what was shared stays as it was shared.
 */
import { featureById, type Handbook, sayProbability } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { carInWords } from "../apply-car.ts";
import { assess } from "../assess.ts";
import type { Assessed } from "../assessed.ts";
import type { Case } from "../case.ts";
import { caseInHand, findCase, readConversation } from "../conversation.ts";
import { featuresNamed } from "../features-named.ts";
import type { Knowledge } from "../knowledge.ts";
import { blocksInWordsOf, thingOf, wordedFor } from "../named-thing.ts";
import { effortWords } from "../phrases/effort.ts";
import { goalWords } from "../phrases/goals.ts";
import { open } from "../phrases/hand-over.ts";
import { byInformationPerEffort } from "../question-worth.ts";
import { sayAnswer } from "./say-answer.ts";
import { sayEdition } from "./say-edition.ts";
import { nameOfClass, rankedAnswers } from "./say-standing.ts";
import { sayValue } from "./say-value.ts";
import { sourcesBehind } from "./sources-behind.ts";
import { sourcesBlock } from "./sources-of.ts";

export interface AnswerCard {
  readonly case: string;
  /** Ids, for links into the handbook. */
  readonly handbook: string;
  readonly part: string;
  readonly partName: string;
  /** What the handbook is about, "car" or its cover's own word. */
  readonly thing: string;
  /** Completes "wanted to know …". */
  readonly goal: string;
  readonly car: readonly { readonly label: string; readonly value: string }[];
  readonly seen: readonly {
    readonly label: string;
    readonly value: string;
    readonly words: string;
    /** The asker said it; else somebody else in the conversation. */
    readonly isAskers: boolean;
  }[];
  /** Names of features about which the asker could not tell. */
  readonly untold: readonly string[];
  /** Where it stands, the likeliest first. */
  readonly standing: readonly {
    readonly name: string;
    readonly probability: number;
    readonly words: string;
  }[];
  /** The answer, its weights of evidence and what is left open. */
  readonly answer: readonly Block[];
  /** "Would settle it: …"; undefined when nothing in the handbook would. */
  readonly settle: string | undefined;
  readonly sources: Block | undefined;
  readonly edition: string;
}

const mostSettling = 3;
/** Below this a name in the list tells nothing. */
const worthListing = 0.005;
const mostListed = 6;

/**
 * The card of a case in a kept conversation, the one in the person's hand when no id is given; undefined where there is no such case,
 * its part is not known yet, or its handbook no longer serves.
 */
export function answerCard(
  known: readonly Knowledge[],
  state: unknown,
  asked: { readonly person: string; readonly case?: string },
): AnswerCard | undefined {
  const conversation = readConversation(state);
  if (conversation === undefined) return undefined;
  const kept =
    asked.case === undefined ? caseInHand(conversation, asked.person) : findCase(conversation, asked.case);
  const knowledge = known.find(({ handbook }) => handbook.cover.id === kept?.handbook);
  if (kept === undefined || knowledge === undefined || kept.facts.part === null) return undefined;
  return cardOfCase(knowledge, kept);
}

/** The card of a case; undefined while its part is not known. */
export function cardOfCase(knowledge: Knowledge, kept: Case): AnswerCard | undefined {
  const compiled = kept.facts.part === null ? undefined : knowledge.compiled(kept.facts.part);
  return compiled && cardOf(knowledge, kept, assess(compiled, kept.facts));
}

function cardOf(knowledge: Knowledge, kept: Case, assessed: Assessed): AnswerCard {
  const { handbook } = knowledge;
  const { part, facts } = assessed;
  const untold = facts.reports.filter((report) => report.value.kind === "cannot-tell");
  return inWordsOfItsThing(handbook, {
    case: kept.id,
    handbook: handbook.cover.id,
    part: part.id,
    partName: part.name,
    thing: thingOf(handbook).one,
    goal: goalWords[facts.goal],
    car: Object.entries(carInWords(handbook.cars, facts.car)).map(([label, value]) => ({ label, value })),
    seen: seenIn(kept, assessed),
    untold: featuresNamed(
      part,
      untold.map(({ feature }) => feature),
    ).map(({ name }) => name),
    standing: ranked(assessed),
    answer: sayAnswer(knowledge, assessed),
    settle: settleLine(assessed),
    sources: sourcesBlock(handbook, sourcesBehind(assessed, null)),
    edition: sayEdition(knowledge),
  });
}

/** A handbook about something else than cars is told in its own word here too; what a member said stays as it was said. */
function inWordsOfItsThing(handbook: Handbook, card: AnswerCard): AnswerCard {
  const worded = (text: string) => wordedFor(handbook, text);
  return {
    ...card,
    goal: worded(card.goal),
    car: card.car.map(({ label, value }) => ({ label: worded(label), value })),
    standing: card.standing.map((row) => ({ ...row, name: worded(row.name) })),
    answer: blocksInWordsOf(handbook, card.answer),
    settle: card.settle === undefined ? undefined : worded(card.settle),
  };
}

/** The page has room for more than a chat: all that is likelier than one in two hundred. */
function ranked(assessed: Assessed): AnswerCard["standing"] {
  return rankedAnswers(assessed)
    .toSorted((one, other) => other.probability - one.probability)
    .filter(({ probability }, index) => index === 0 || probability >= worthListing)
    .slice(0, mostListed)
    .map(({ class: id, probability }) => ({
      name: nameOfClass(assessed, id),
      probability,
      words: sayProbability(probability),
    }));
}

function seenIn(kept: Case, { part, facts }: Assessed): AnswerCard["seen"] {
  return facts.reports.flatMap((report) => {
    const feature = featureById(part, report.feature);
    if (feature === undefined || report.value.kind === "cannot-tell") return [];
    const value = sayValue(feature, report.value);
    const words = report.words.trim();
    const isSame = words.toLowerCase() === value.toLowerCase();
    return [{ label: feature.name, value, words: isSame ? "" : words, isAskers: report.by === kept.owner }];
  });
}

function settleLine({ part, table }: Assessed): string | undefined {
  const ids = byInformationPerEffort(table).map(({ question }) => question.id);
  const looks = featuresNamed(part, ids)
    .slice(0, mostSettling)
    .map(({ name, effort }) => `${name} (${effortWords(effort)})`);
  return looks.length === 0 ? undefined : open(looks.join("; "));
}
