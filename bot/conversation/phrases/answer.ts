/** The answer when asking more would not change it: what it is, for, against, open, and what would settle it. */
import { capitalised, counted, listed, numberInWords, sentence, withThe } from "./grammar.ts";

/** "Very likely (94 %) the trade reproduction." from the words of a probability and a name. */
export const answerLine = (probability: string, name: string) => `${capitalised(probability)}: ${name}.`;
export const whichItIs = (name: string, probability: string) =>
  `Which one: ${withThe(name)}, ${probability}.`;
/** Heads the facts of one side where the balance cannot be drawn. */
export const speaksFor = (name: string, rival: string) => `Speaks for ${name} rather than ${rival}:`;
export const saysNothingEitherWay = (facts: readonly string[], more: number) =>
  `Says little either way: ${listed(more > 0 ? [...facts, `${numberInWords(more)} more`] : facts)}.`;

export const leftOpenRival = (rival: string, probability: string) => `Left open: ${rival}, ${probability}.`;
export const leftOpenLittle = (share: string) => `Left open: little; that it is anything else is ${share}.`;
export const leftOpenLittleBut = (share: string, rival: string) =>
  `Left open: little; that it is anything else is ${share}, and ${rival} comes nearest.`;
/** What a question about the car is called when it would settle something, by the question's id. */
export const carNames: Readonly<Record<string, string>> = {
  "car.built": "the car's build date",
  "car.trim": "the car's trim",
  "car.market": "the car's market",
  "car.model": "the car's model",
};
export const wouldSettle = (features: readonly string[]) => `What would settle it: ${listed(features)}.`;
export const wouldSettleNothing = "Nothing else in the handbook tells the two clearly apart.";
export const hingesOn = (facts: readonly string[]) =>
  `It hinges on ${listed(facts)}: were that wrong, the answer would change.`;
export const dearer = (feature: string, effort: string) => `${feature} (${effort})`;
export const wouldSettleUntold = (features: readonly string[]) =>
  `What would settle it, you could not tell: ${listed(features)}.`;

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
/** Of a car from before the first or after the last of the part, or of a trim or market that never had it. */
export const noneFitted = (part: string, date: string | undefined) =>
  `For your car: the handbook has no ${part} that the works fitted to such a car${date === undefined ? "" : `, built ${date}`}.`;
export const fittedToOthers = "What the works fitted to which cars";
export const fittedToOthersHead = ["kind", "cars", "when", "sources"] as const;
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
export const observations = (count: number, mark: string) => `${counted(count, "observation")} (${mark})`;

export const choiceLabels = {
  sources: "show the sources",
  keeper: "ask a keeper",
  rightForCar: "is it right for my car?",
  shouldHave: "what should my car have?",
  photographs: "what to photograph",
  compare: "compare the two",
  nextCase: "a new part",
} as const;
