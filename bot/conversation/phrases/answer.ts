/** The answer when asking more would not change it: what it is, for, against, open, and what would settle it. */
import { capitalised, listed, numberInWords, sentence, withThe } from "./grammar.ts";

/** "Very likely (94 %) the trade reproduction." from the words of a probability and a name. */
export const answerLine = (probability: string, name: string) => `${capitalised(probability)}: ${name}.`;
export const whichItIs = (name: string, probability: string) =>
  `Which one: ${withThe(name)}, ${probability}.`;
/** Heads the facts of one side where the balance cannot be drawn. */
export const speaksFor = (name: string) => `Speaks for ${name}:`;
export const saysNothingEitherWay = (facts: readonly string[], more: number) =>
  `Says little either way: ${listed(more > 0 ? [...facts, `${numberInWords(more)} more`] : facts)}.`;

export const leftOpenRival = (rival: string, probability: string) => `Left open: ${rival}, ${probability}.`;
export const leftOpenLittle = (share: string) => `Left open: little; that it is anything else is ${share}.`;
export const wouldSettle = (features: readonly string[]) => `What would settle it: ${listed(features)}.`;
export const wouldSettleNothing = "Nothing in the handbook that you have not answered would settle it.";
export const hingesOn = (facts: readonly string[]) =>
  `It hinges on ${listed(facts)}: were that wrong, the answer would change.`;
export const dearer = (feature: string, effort: string) => `${feature} (${effort})`;
export const couldNotTell = (feature: string) => `${feature} (you could not tell)`;

/** Before an answer that stays the same; `was`: its probability in words, when that has moved. */
export const stillSo = (was: string | undefined) =>
  was === undefined ? "That does not change the answer." : `The answer stays; it was ${was}.`;

// For your car
export const carNotTold = (variant: string, periods: string) =>
  `For your car: you have not told me its build date. ${sentence(`${withThe(variant)} belongs to cars built ${periods}`)}`;
export const carNotKnown = (variant: string, periods: string) =>
  `For your car: its build date is not known. ${sentence(`${withThe(variant)} belongs to cars built ${periods}`)}`;
export const carNotToldAndNeverFitted = (variant: string) =>
  `For your car: the works never fitted ${withThe(variant)}.`;
export const carShouldHave = (date: string, shares: readonly string[]) =>
  `For your car: one built ${date} left the works with ${shares.join("; or ")}.`;
export const variantShare = (variant: string, probability: string) => `${withThe(variant)}, ${probability}`;
export const loosePart = "It is a loose part, so no car speaks for or against it.";

// What should it have
export const shouldHave = (name: string, probability: string) =>
  `As built: ${withThe(name)}, ${probability}.`;
export const shouldHaveOpen = (name: string, probability: string, isDated: boolean) =>
  `As built it cannot be told which; likeliest is ${withThe(name)}, ${probability}.${isDated ? "" : " The build date would tell more."}`;
export const asBuiltHead = ["kind", "how likely", "when", "sources"] as const;
export const inChangeover = (date: string, one: string, other: string) =>
  `${capitalised(date)} lies in the time when both were fitted, ${withThe(one)} and ${withThe(other)}.`;

export const edition = (name: string, hash: string) => `${name}, edition ${hash}`;

export const choiceLabels = {
  sources: "show the sources",
  keeper: "ask a keeper",
  rightForCar: "is it right for my car?",
  shouldHave: "what should my car have?",
  compare: "compare the two",
  nextCase: "a new part",
} as const;
