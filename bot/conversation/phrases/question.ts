/** How a question is put, and what is always on offer beside it. */
import type { Choice } from "../../reply.ts";
import { effortWords, misreadWords } from "./effort.ts";
import { capitalised, listed } from "./grammar.ts";

export const besides: readonly Choice[] = [
  { id: "cannot-tell", label: "cannot tell", say: "cannot tell" },
  { id: "why", label: "why this?", say: "why this?" },
  { id: "how", label: "how do I check?", say: "how do I check?" },
  { id: "undo", label: "undo", say: "undo" },
];

export const whichPart = "Which part is it?";
export const whenBuilt = "When was the car built? A month and year is best; the year alone will do.";
export const whichTrim = "Which trim is the car?";
export const whichModel = "Which model is the car?";
export const whichMarket = "Which market was the car built for?";

/** "in in" would be no sentence. */
const unitNames: Readonly<Record<string, string>> = { in: "inches", lb: "pounds", oz: "ounces" };
export const inUnit = (question: string, unit: string) =>
  `${question} (in ${unitNames[unit] ?? unit}, or name your unit)`;
export const lookAgain = (question: string) => `Please look again: ${question}`;
export const measuredWhere = (question: string) =>
  `Please measure again, and say from which edge to which: ${question}`;

export const weighedHow = (question: string) => `Please weigh it again, with nothing else on it: ${question}`;

/** "You wrote 420 mm. That would be 42 cm; did you mean 420 cm?" has the reading as said and as meant. */
export const isItThisUnit = (said: string, meant: string) => `You wrote ${said}. Did you mean ${meant}?`;
export const noUnitSaid = (number: string, meant: string) =>
  `You wrote ${number} without a unit. Is it ${meant}?`;
export const yes: Choice = { id: "yes", label: "yes", say: "yes" };
export const no: Choice = { id: "no", label: "no", say: "no" };
export const unitExample = "such as 420 mm or 42 cm";
export const readingDropped = (said: string) =>
  `Then I leave ${said} aside. Give it again with its unit, ${unitExample}.`;
export const unitKept = (reading: string) => `Good: ${reading}.`;

/** Offered beside the question to somebody who cannot look. */
export const outOfReach = "out of reach: what to photograph";

// Why this question?
export const whySeparates = (names: readonly string[]) =>
  `What is left is ${listed(names, "or")}; this helps to tell them apart.`;
export const whySettles = (answer: string, variant: string, probability: string) =>
  `${capitalised(answer)} would make it ${variant}, ${probability}.`;
export const whyEffort = (effort: number, misread: number | undefined) =>
  misread === undefined
    ? `It takes ${effortWords(effort)}.`
    : `It takes ${effortWords(effort)}, and is ${misreadWords(misread)}.`;
export const whyRecheck =
  "Two things you told me do not go together, and this is the likelier one to have been misread.";
export const whyPart = "Each part has its own tells; without the part I can ask nothing useful.";
export const whyBuilt =
  "The works fitted different kinds at different times. The build date says which your car should have, before anything is looked at.";
export const whyTrim = "Some kinds went to one trim only.";
export const whyModel = "Some kinds went to one model only.";
export const whyMarket = "Some kinds went to one market only.";
export const whyUnit = "A number without the right unit would mislead everything after it.";
/** `car`: what was told of it, "built June 1981". */
export const whyAsBuilt = (car: readonly string[]) =>
  `That goes by when the works fitted each kind, and by the car: ${car.length === 0 ? "nothing told of it yet" : listed(car)}.`;
export const whyNothing = "Nothing is being asked at the moment.";

// How do I check?
export const howBuilt =
  "The build sheet, the registration paper or the maker's plate says it. The date of first registration is later, often by months.";
export const howTrim = "The build sheet says it; a badge can be changed.";
export const howModel = "The build sheet or the plate says it.";
export const howMarket =
  "The build sheet or the plate says it; units on the speedometer and the side of the steering wheel hint at it.";
export const howPart = "Name it in your own words, or choose one.";
export const toolsNeeded = (tools: readonly string[]) => `You need: ${listed(tools)}.`;
export const photographDoes = "A sharp photograph shows it too, for somebody else to read.";
export const drawingOf = (name: string) => `Drawing: ${name}`;
export const howUnit = "Look at the scale you read it from.";

export const asSaidBefore = (opening: string) =>
  `As said before: ${opening.slice(0, 1).toLowerCase()}${opening.slice(1)}.`;
