/** What is said about the words just read: taken, taken with doubt, left aside, not understood. */
import { capitalised, listed, quoted, withThe } from "./grammar.ts";

export const understoodLead = "I read";

export const partLabel = "part";
export const carLabels = {
  model: "car",
  trim: "trim",
  market: "market",
  built: "car built",
  modelYear: "model year",
  grade: "history",
  loose: "where it is",
  serial: "chassis number",
} as const;

export const loosePartValue = "loose, not on a car";

const gradeWords: Readonly<Record<string, string>> = {
  "documented-from-new": "documented from new",
  "one-owner": "one owner",
  "history-unknown": "not known",
  "known-replaced": "part known to be replaced",
};
export function historyWords(grade: string): string {
  return gradeWords[grade] ?? grade;
}

/** The doubt shown beside a value, none when it was said firmly. */
export function certaintyDoubt(certainty: number): string | undefined {
  if (certainty >= 0.95) return undefined;
  return certainty >= 0.65 ? "you think" : "hard to tell";
}
/** Beside a value that does not agree with somebody else's on the same feature. */
export const otherSays = (value: string) => `told otherwise before: ${value}`;
export const saidByAnother = "said by another member";
export const unitNotSaid = "unit not said";
export const severalReadings = (count: number) => `${count} ways to read it`;
export const cannotTellValue = "cannot tell";

/** Beside a value that took the place of an earlier one by the same person. */
export const replacedEarlier = (earlier: string) => `before: ${earlier}`;

/** At most this many of somebody's words come back in one remark. */
const mostQuoted = 3;
const allQuoted = (words: readonly string[]) => {
  const shown = words.slice(0, mostQuoted).map((one) => quoted(one));
  return listed(words.length > mostQuoted ? [...shown, "the rest"] : shown);
};

export const hearsayLeftAside = (words: readonly string[]) =>
  `${allQuoted(words)} I leave aside: it is what somebody says, not what you saw.`;
export const namedVariantLeftAside = (words: string, who: "another" | "you") =>
  who === "another"
    ? `${quoted(words)} is what somebody calls it; I leave that aside, it is not something you saw.`
    : `${quoted(words)} is what you take it for; I keep to what can be seen.`;
export const questionLeftAside =
  "I read that as a question. What you see on the part counts; say it, and I take it.";
export const notYetLeftAside = (words: readonly string[]) =>
  `${allQuoted(words)} has not happened yet, so I left it aside.`;
export const anotherCarLeftAside = (words: readonly string[]) =>
  `${allQuoted(words)} I leave aside: it is about another car.`;
/** `sizes`: what of the part could have such a size, to be named; undefined when the words are no size. */
export const severalReadingsLeftAside = (words: readonly string[], sizes?: readonly string[]) => {
  const said = allQuoted(words);
  const [only] = sizes ?? [];
  if (sizes === undefined) return `${said} can be read in more than one way, so I took none of it.`;
  if (only === undefined) return `The handbook records no size of this part that ${said} could be.`;
  if (sizes.length === 1) return `${said} does not look like the ${only}, so I took none of it.`;
  return `${said} I cannot place; say what you measured: ${listed(sizes, "or")}.`;
};

export const notYourCar = "What you say of the car I leave aside: this case is about somebody else's.";
/** What was told of the car does not go together. */
export const madeAtOtherTimes = (name: string, times: string, built: string) =>
  `${capitalised(withThe(name))} was made ${times}; built ${built} does not go with that. One of the two wants checking.`;
export const noTrimOfModel = (trim: string, model: string) =>
  `${capitalised(withThe(trim))} was not made as ${model}. One of the two wants checking.`;
/** The car of a part that is not on one. */
export const carOfLoosePart =
  "It is a loose part, so the car says nothing of which it is; “is it right for my car?” sets the two side by side.";
export const onTheCarValue = "on the car";
/** Beside a build date that the car's number gives. */
export const byItsNumber = "by its number";
export const serialMasked = "I keep the chassis number only masked.";

export const didYouMean = (words: string, meant: string) =>
  `${quoted(words)} I do not know; the nearest word I have is ${meant}.`;

/** `meant`: the feature and its state in words that are always understood. */
export const meantThis = (words: string, part: string, meant: string) =>
  `By ${quoted(words)}, did you mean the ${part}? If so, say “${meant}”; until then I leave it aside.`;

export const leftAsideThen = (words: string) => `Then ${quoted(words)} stays aside.`;

export const goalChanged = (goal: string) => `You want to know ${goal}.`;

export const comparedWithTheCar = "You tell me what it has, so I check whether that is right for the car.";

export const notUnderstood = "I did not understand that.";
export const answerNotOnOffer = "That is no answer to anything I ask about this part.";
export const onlyPhotographs =
  "I look at no photographs myself: say in words what it shows. “Record an observation” asks for photographs and keeps them.";
export const nothingSaid = "There was nothing to read in that message.";
export const readOnlySoFar = (characters: number) =>
  `That message is very long: I read the first ${thousands(characters)} characters.`;

export const misbeliefLead = (claim: string) => `Often said: ${quoted(claim, 160)}`;

/** A correction with its sources behind it, "(no source)" never hidden. */
export function correction(text: string, sources: string): string {
  return sources === "" ? capitalised(text) : `${capitalised(text)} ${sources}`;
}

function thousands(count: number): string {
  return String(count).replace(/(\d)(?=(\d{3})+$)/g, "$1,");
}

export const asInCase = (number: number) => `as in case ${number}`;
export const keptForLater = "What you saw I keep until I know which part it is.";
