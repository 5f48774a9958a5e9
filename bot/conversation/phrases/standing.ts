/** Where the case stands before it is settled. */
import { listed, withThe } from "./grammar.ts";

export const standingLead = "Where it stands";
export const nothingSeenYet = "Before anything is looked at";
export const asBuiltLead = "What the works fitted";

export const restsOnDate = "This rests on your car's date, not on what you saw.";
export const restsOnCar = "This rests on what you told me of the car, not on what you saw.";
export const restsOnCommonness =
  "So far this is only how common each kind is; nothing you told me moves it yet.";
/** Two people who see it differently, and neither can be believed over the other. */
export const cancelOut = (features: readonly string[]) =>
  `I was told two things of the ${listed(features)}; together they say little, and another look would help.`;
export const saysLittle = (facts: readonly string[]) => `That says little here: ${listed(facts)}.`;
export const saysLittleBeside = (other: string, fact: string) => `Beside ${other}, ${fact} says little more.`;
export const mayBeUnknown = (probability: string) =>
  `That it is something not in the handbook: ${probability}.`;
export const noVerdictYet = (one: string, other: string, features: readonly string[]) =>
  features.length === 0
    ? `No verdict: nearest are ${withThe(one)} and ${withThe(other)}, and nothing that I may still ask tells them apart.`
    : `No verdict: nearest are ${withThe(one)} and ${withThe(other)}. What tells them apart: ${listed(features)}.`;
export const closestKind = (name: string, probability: string) => `Closest kind: ${name}, ${probability}.`;
export const stillTheOne = (probability: string) => `That it is the one this car left with: ${probability}.`;
