/** What is said of pinned answers. */
import { listed, quoted } from "../../conversation/phrases/grammar.ts";

export const somethingElse = "something not in the handbook";
export const handbookSays = (name: string) =>
  `The handbook speaks against this: for such cars it gives ${name}.`;
export const observationsSay = (name: string) =>
  `Members’ accepted observations speak against this: on such cars they point to ${name}.`;
export const caseSays = (said: string, name: string, chance: string) =>
  `What you told speaks against this: it is not ${said} but ${name}, ${chance}. The keepers see that the two disagree.`;
/** Whoever reads it has told nothing. */
export const anAskerSays = (said: string, name: string) =>
  `${ofAnAsker} speaks against this: by that it is not ${said} but ${name}.`;
const ofAnAsker = "What an asker told";
/** A dispute that one case gave, and no period of the handbook takes back. */
export const isOfACase = (dispute: string) => dispute.startsWith(ofAnAsker);
export const reviewDue = (date: string) => `Its author wanted to look at it again by ${date}.`;
export const alsoPinned = (id: string, text: string) =>
  `Wider, and not shown to the asker: ${id}, ${quoted(text, 120)}`;
export const disputeForKeepers = (id: string, text: string, dispute: string) =>
  `Pinned answer ${id}, ${quoted(text, 160)}. ${dispute}`;
export const disputeHow = (id: string) =>
  `“replace pin ${id}: new words”, “withdraw pin ${id} because …”, or leave it as it is.`;
export const disputesLead = "Pinned answers that something speaks against:";
export const reviewsLead = "Pinned answers whose review is due:";
export const reviewsHow =
  "“review pin ID by March 2028” where it still holds; “replace pin ID: new words” or “withdraw pin ID because …” where it does not.";
export const reviewNeedsDate = (id: string) =>
  `Say a day, month or year to come: “review pin ${id} by March 2028”.`;
export const reviewSet = (id: string, date: string) =>
  `Pinned answer ${id} is to be looked at again by ${date}.`;

export const pinsLead = "Pinned answers:";
export const pinsFoundLead = (words: string) => `Pinned answers near to ${quoted(words)}:`;
export const pinLine = (id: string, text: string, scope: string, author: string, date: string) =>
  `${id}: ${quoted(text, 120)} (${scope}; ${author}, ${date})`;
export const noPins = "Nothing is pinned here yet. A keeper pins with “pin this: the answer”.";
export const noPinsFound = (words: string) => `No pinned answer is near to ${quoted(words)}.`;
export const noSuchPin = (id: string) => `There is no pinned answer ${id} here.`;
export const pinWithdrawn = (id: string) => `Pinned answer ${id} is withdrawn. Its history stays.`;
export const isWithdrawn = (id: string) => `Pinned answer ${id} was withdrawn.`;
export const reasonNeeded = (id: string) => `Say why: “withdraw pin ${id} because …”.`;
export const wordsNeeded = (id: string) => `Say the new words: “replace pin ${id}: …”.`;
export const pinReplaced = (id: string) =>
  `Pinned answer ${id} has new words. The old ones stay in its history.`;
export const pinNeedsWords =
  "Say the answer too: “pin this: …” pins your words for the case in hand; “pin for the question …: …” pins them for a plain question.";
export const pinNeedsPart = "Name the part first, or pin for a plain question: “pin for the question …: …”.";
export const pinNeedsQuestion = (answer: string) =>
  `That case names no part that the answer could hold for. Pin it for a plain question: “pin for the question …: ${answer}”.`;

export const draftLead = "This would be pinned:";
export const draftHow =
  "To change it: “only for …” (a build date, trim, market or kind), “for all cars”, “for any question”, “sources: …; …”, “says NAME” (which kind it names), “review by March 2027”, “words: …”.";
export const draftNotRead = (words: string) => `I could not read ${quoted(words)} as something it holds for.`;
export const keepIt = "keep it";
export const leaveIt = "leave it";
export const forAllCars = "for all cars";
export const carsLikeThis = "only for cars like this one";
export const forAnyQuestion = "for any question";
export const pinned = (id: string) => `Pinned as ${id}. It comes first from now on wherever it holds.`;
export const notPinned = "Nothing is pinned.";
export const overlapsWith = (ids: readonly string[]) =>
  `It meets ${listed(ids)}; where both hold, the narrower one is shown.`;

export const scopePart = (part: string) => part;
export const scopeGoal = (goal: string) => `asked ${goal}`;
export const scopeBuilt = (time: string) => `cars built ${time}`;
export const scopeKinds = (kinds: string) => `kinds: ${kinds}`;
export const scopeQuestion = (question: string) => `the question ${quoted(question, 120)}`;
export const labelWords = "words";
export const labelScope = "holds for";
export const labelSays = "says";
export const labelSources = "sources";
export const labelReview = "review by";
export const anyCar = "all cars";

export const whyPinned = (id: string, text: string) => `pinned ${id}: ${quoted(text)}`;
export const whyReplaced = (id: string, text: string) => `replaced pin ${id}: ${quoted(text)}`;
export const whyWithdrawn = (id: string, reason: string) => `withdrew pin ${id} because ${reason}`;
export const whyReviewed = (id: string, date: string) => `looked at pin ${id}, again by ${date}`;
export const whyFlagged = (id: string) => `pin ${id} is spoken against`;
