/**
 * The answer, given when asking more would not change it: what it is and how sure, what speaks for and against, what is
 * left open and would settle it, what it means for the car, and the edition it rests on.
 */
import { type ClassProbability, notInHandbook, sayProbability } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { Assessed } from "../assessed.ts";
import { featuresNamed } from "../features-named.ts";
import type { Knowledge } from "../knowledge.ts";
import * as words from "../phrases/answer.ts";
import { kindItWasBuiltWithClass, notInHandbookWords } from "../phrases/goals.ts";
import { withThe } from "../phrases/grammar.ts";
import { stillTheOne } from "../phrases/standing.ts";
import { nothingFits, oddOnesOut, stillApart, writtenUp } from "../phrases/trouble.ts";
import { sayEvidence } from "./say-evidence.ts";
import { sayForYourCar } from "./say-for-your-car.ts";
import { sayLeftOpen } from "./say-left-open.ts";
import { isAboutVariants, nameInSentence, restsOn, sayStanding } from "./say-standing.ts";
import { sayReported } from "./say-value.ts";

/** All blocks of the answer; the case must have no question left. */
export function sayAnswer(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  const { identification } = assessed;
  if (assessed.goal === "what-should-it-have") return sayForYourCar(knowledge, assessed);
  if (identification.verdict?.class === notInHandbook) return nothingFitsBlocks(knowledge, assessed);
  const body = identification.verdict === null ? sayStanding(assessed, []) : verdictBlocks(assessed);
  return [
    ...body,
    ...sayEvidence(knowledge.handbook, assessed),
    ...texts([restsOn(assessed), apart(assessed), sayLeftOpen(assessed), hinges(assessed)]),
    ...sayForYourCar(knowledge, assessed),
  ];
}

/** What the answer says first: a class with its probability; "the kind it was built with" before its two classes. */
export function headline({ identification, goal }: Assessed): ClassProbability | null {
  const { verdict, kindItWasBuiltWith: kind = 0 } = identification;
  const isKind = verdict !== null && goal === "right-for-car" && kind >= 0.5;
  return isKind ? { class: kindItWasBuiltWithClass, probability: kind } : verdict;
}

/** What it is and how sure; empty without a verdict. */
export function verdictBlocks(assessed: Assessed): readonly Block[] {
  const { identification, goal } = assessed;
  const first = headline(assessed);
  if (first === null) return [];
  const asBuilt = identification.classes.find((one) => one.class === "as-built")?.probability ?? 0;
  const [likeliest] = identification.ranking;
  const line = words.answerLine(sayProbability(first.probability), nameInSentence(assessed, first.class));
  return [
    { kind: "text", text: line, tone: "answer" },
    ...texts([
      first.class === kindItWasBuiltWithClass ? stillTheOne(sayProbability(asBuilt)) : undefined,
      isAboutVariants(goal) || likeliest === undefined || likeliest.variant === notInHandbook
        ? undefined
        : words.whichItIs(likeliest.name, sayProbability(likeliest.probability)),
    ]),
  ];
}

// A contradiction that a second look did not resolve stays named.
function apart({ identification, facts, part }: Assessed): string | undefined {
  const again = identification.contradictions
    .filter(({ feature }) => facts.rechecked.includes(feature))
    .map(({ feature }) => feature);
  const names = featuresNamed(part, again).map((feature) => sayReported(feature, facts.reports));
  return names.length === 0 ? undefined : stillApart(names);
}

function hinges(assessed: Assessed): string | undefined {
  const facts = featuresNamed(assessed.part, assessed.identification.hingesOn).map((feature) =>
    sayReported(feature, assessed.facts.reports),
  );
  return facts.length === 0 || facts.length > 2 ? undefined : words.hingesOn(facts);
}

function nothingFitsBlocks(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  const { identification, part, facts } = assessed;
  const best = identification.ranking.find((one) => one.variant !== notInHandbook);
  const unknown = identification.ranking.find((one) => one.variant === notInHandbook)?.probability ?? 0;
  const odd = featuresNamed(part, identification.misfits).map((feature) =>
    sayReported(feature, facts.reports),
  );
  return [
    { kind: "text", text: words.answerLine(sayProbability(unknown), notInHandbookWords), tone: "answer" },
    ...texts([
      nothingFits(
        part.name,
        part.variants.length,
        best === undefined ? "" : `${withThe(best.name)}, ${sayProbability(best.probability)}`,
      ),
      odd.length === 0 ? writtenUp : `${oddOnesOut(odd)} ${writtenUp}`,
    ]),
    ...sayEvidence(knowledge.handbook, assessed),
  ];
}

function texts(lines: readonly (string | undefined)[]): readonly Block[] {
  return lines.flatMap((text): readonly Block[] => (text === undefined ? [] : [{ kind: "text", text }]));
}
