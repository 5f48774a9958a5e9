/** Where it stands, before it is settled: the goal's classes, then which kind, with the cause of the doubt named. */
import {
  type ClassProbability,
  formatInterval,
  type Goal,
  notInHandbook,
  sayProbability,
} from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { asBuiltShares } from "../assess.ts";
import type { Assessed } from "../assessed.ts";
import { featuresNamed } from "../features-named.ts";
import { noneFitted } from "../phrases/answer.ts";
import { kindItWasBuiltWithClass, notInHandbookWords, wordsOfClass } from "../phrases/goals.ts";
import { withThe } from "../phrases/grammar.ts";
import {
  asBuiltLead,
  cancelOut,
  closestKind,
  mayBeUnknown,
  nothingSeenYet,
  noVerdictYet,
  restsOnCar,
  restsOnCommonness,
  restsOnDate,
  standingLead,
} from "../phrases/standing.ts";
import { sayLittleTold } from "./say-little-told.ts";
import { variantName } from "./say-variant.ts";

/** Shares below this are not worth a place in the list; what is left out is never what the verdict says. */
const worthNaming = 0.05;
const mostNamed = 3;
/** From here on "not in the handbook" is mentioned (identification method, section 8). */
const unknownWorthMentioning = 0.2;
/** Below this many bits the answer rests on the car alone (identification method, section 8). */
const movedEnoughBits = 0.25;

type StandingItem = Extract<Block, { kind: "standing" }>["items"][number];

/** The ranking and what qualifies it. `justTold`: features told in this turn, to say which of them say little. */
export function sayStanding(assessed: Assessed, justTold: readonly string[]): readonly Block[] {
  const { goal } = assessed;
  const isCarOnly = goal === "what-should-it-have" || (goal === "right-for-car" && !hasEvidence(assessed));
  if (isCarOnly) return [asBuiltStanding(assessed)];
  if (isCarAsked(assessed))
    return [{ kind: "standing", lead: standingLead, items: itemsOf(assessed, variantsOf(assessed)) }];
  const lead = hasEvidence(assessed) ? standingLead : nothingSeenYet;
  const standing: Block = { kind: "standing", lead, items: standingItems(assessed) };
  return [standing, ...remarks(assessed, justTold).map((text): Block => ({ kind: "text", text }))];
}

/** What the works fitted to the car, or that they fitted none to such a car. */
function asBuiltStanding(assessed: Assessed): Block {
  const none = saysNoneFitted(assessed);
  return none === undefined
    ? { kind: "standing", lead: asBuiltLead, items: asBuiltItems(assessed) }
    : { kind: "text", text: none };
}

/** That the works fitted no kind of the part to such a car; undefined where they did, and of a loose part. */
export function saysNoneFitted({ compiled, facts, part }: Assessed): string | undefined {
  const { built, isLoosePart } = facts.car;
  if (isLoosePart === true || asBuiltShares(compiled, facts).size > 0) return undefined;
  return noneFitted(part.name, built === undefined ? undefined : formatInterval(built));
}

/** Before anything is seen the car alone speaks: what the works fitted to it. */
function asBuiltItems({ compiled, facts, part }: Assessed): readonly StandingItem[] {
  return [...asBuiltShares(compiled, facts)]
    .toSorted(([, one], [, other]) => other - one)
    .filter(([, share], index) => index === 0 || share >= worthNaming)
    .slice(0, mostNamed)
    .map(([id, share]) => ({
      name: variantName(part, id),
      probability: share,
      words: sayProbability(share),
    }));
}

/** The classes of the goal, or the variants when the goal is which one; at most three, with "not in the handbook" from .2. */
export function standingItems(assessed: Assessed): readonly StandingItem[] {
  return itemsOf(assessed, rankedAnswers(assessed));
}

/** "Is it right for my car?" before the car's date is told: only which kind it looks like can be said. */
function isCarAsked({ goal, question }: Assessed): boolean {
  return goal === "right-for-car" && question?.about === "car" && question.ask === "car.built";
}

function itemsOf(assessed: Assessed, answers: readonly ClassProbability[]): readonly StandingItem[] {
  return answers
    .toSorted((one, other) => other.probability - one.probability)
    .filter((one, index) => isWorthNaming(one.class, one.probability, index))
    .slice(0, mostNamed)
    .map(({ class: id, probability }) => ({
      name: nameOfClass(assessed, id),
      probability,
      words: sayProbability(probability),
    }));
}

/** The answers of the goal; "the kind it was built with" stands for its two classes, which differ only by history and dates. */
export function rankedAnswers(assessed: Assessed): readonly ClassProbability[] {
  const { identification, goal } = assessed;
  if (isAboutVariants(goal)) return variantsOf(assessed);
  const { classes, kindItWasBuiltWith } = identification;
  if (goal !== "right-for-car" || kindItWasBuiltWith === undefined) return classes;
  const others = classes.filter((one) => one.class !== "as-built" && one.class !== "right-kind-replaced");
  return [{ class: kindItWasBuiltWithClass, probability: kindItWasBuiltWith }, ...others];
}

function variantsOf({ identification }: Assessed): readonly ClassProbability[] {
  return identification.ranking.map(({ variant, probability }) => ({ class: variant, probability }));
}

export function isAboutVariants(goal: Goal): boolean {
  return goal === "which-variant" || goal === "what-should-it-have";
}

/** The name of a class or of a variant, as it stands in a list. */
export function nameOfClass(assessed: Assessed, id: string): string {
  if (id === notInHandbook) return notInHandbookWords;
  return wordsOfClass(id) ?? variantName(assessed.part, id);
}

/** A variant takes its article; a class has its own. */
export function nameInSentence(assessed: Assessed, id: string): string {
  const isVariant = assessed.part.variants.some((variant) => variant.id === id);
  const name = nameOfClass(assessed, id);
  return isVariant ? withThe(name) : name;
}

function isWorthNaming(id: string, probability: number, index: number): boolean {
  if (index === 0) return true;
  return probability >= (id === notInHandbook ? unknownWorthMentioning : worthNaming);
}

/** Whether anything that counts has been told of the part itself. */
export function hasEvidence(assessed: Assessed): boolean {
  return assessed.facts.reports.some((report) => report.value.kind !== "cannot-tell" && report.certainty > 0);
}

function remarks(assessed: Assessed, justTold: readonly string[]): readonly string[] {
  return [
    closest(assessed),
    hasEvidence(assessed) ? undefined : saysNoneFitted(assessed),
    (hasEvidence(assessed) ? restsOn(assessed) : undefined) ?? sayLittleTold(assessed, justTold),
    notVerdict(assessed),
    unknownMention(assessed),
  ].filter((line) => line !== undefined);
}

// Goals about classes say beside them which kind it looks like.
function closest({ goal, identification }: Assessed): string | undefined {
  const [likeliest] = identification.ranking;
  if (isAboutVariants(goal) || likeliest === undefined || likeliest.variant === notInHandbook)
    return undefined;
  return closestKind(likeliest.name, sayProbability(likeliest.probability));
}

/** The line that says the ranking rests on the car's date, when it does and there is something to rest. */
export function restsOn(assessed: Assessed): string | undefined {
  const { movedBits, contradictions } = assessed.identification;
  // Two facts that cancel out did say something: their quarrel is named instead.
  if (movedBits >= movedEnoughBits || contradictions.length > 0) return undefined;
  const { car } = assessed.facts;
  const told = disagreed(assessed);
  if (told.length > 0) return cancelOut(told);
  if (car.isLoosePart === true) return restsOnCommonness;
  if (car.built !== undefined) return restsOnDate;
  return (car.model ?? car.trim ?? car.market) === undefined ? restsOnCommonness : restsOnCar;
}

/** Names of features of which different people told different things. */
function disagreed({ facts, part }: Assessed): readonly string[] {
  const told = facts.reports.filter(({ value }) => value.kind !== "cannot-tell");
  const ids = told
    .filter((one) =>
      told.some(
        (other) =>
          other.feature === one.feature &&
          other.by !== one.by &&
          JSON.stringify(other.value) !== JSON.stringify(one.value),
      ),
    )
    .map(({ feature }) => feature);
  return featuresNamed(part, [...new Set(ids)]).map(({ name }) => name);
}

// While questions remain the doubt is obvious; without any left it has to be said.
function notVerdict(assessed: Assessed): string | undefined {
  const { identification, part, question } = assessed;
  if (identification.verdict !== null || question !== null) return undefined;
  const [one, other] = identification.ranking;
  if (one === undefined || other === undefined) return undefined;
  const telling = identification.toldApartBy.flatMap((pair) => pair.features);
  const features = featuresNamed(part, telling).map(({ name }) => name);
  return noVerdictYet(
    nameOfClass(assessed, one.variant),
    nameOfClass(assessed, other.variant),
    [...new Set(features)].slice(0, 3),
  );
}

function unknownMention(assessed: Assessed): string | undefined {
  const named = standingItems(assessed).some((item) => item.name === notInHandbookWords);
  const unknown =
    assessed.identification.classes.find((one) => one.class === notInHandbook)?.probability ?? 0;
  return !named && unknown >= unknownWorthMentioning ? mayBeUnknown(sayProbability(unknown)) : undefined;
}
