/** What is said of what is kept about somebody, and of its end. */
import { counted } from "../../conversation/phrases/grammar.ts";

export const mineLead = "What is kept here that is yours:";
export const mineCases = (count: number, facts: number) =>
  `${counted(count, "case")} with ${counted(facts, "fact")} in your words`;
export const mineObservations = (count: number) => counted(count, "observation");
export const minePhotographs = (count: number) => counted(count, "photograph");
export const mineHandOvers = (count: number) => `${counted(count, "case")} handed to the keepers`;
export const minePins = (count: number) => counted(count, "pinned answer");
export const mineRole = (standing: string) => `your role: ${standing}`;
export const mineShares = (count: number) => `${counted(count, "car sheet")} shared`;
export const minePages = (count: number) => `${counted(count, "answer")} shared as a page`;
export const mineSaid = (count: number) =>
  `${counted(count, "reply", "replies")} of yours to others’ cases and observations`;
export const mineSerials =
  "Chassis numbers are never kept in clear: only a digest that tells one car from another, and the months a number stands for.";
export const mineHow = "“export mine” gives it to you as a file; “erase mine” erases it.";
export const nothingMine = "Nothing of yours is kept here.";
export const exportName = "mine.json";
export const exportAlternative = "everything kept here that is yours, as JSON";

export const eraseAsks =
  "Everything of yours here would go for good: cases, words, photographs, links, your name. Shall it?";
export const eraseObservations = (count: number) =>
  `${count === 1 ? "Your observation can" : `Your ${count} observations can`} stay as a sighting without your name, your words and your photographs, so that others keep what it taught.`;
export const erasePins = "Pinned answers stay, because others go by them; your name on them goes.";
export const eraseAll = "erase all of it";
export const eraseButSightings = "erase, but keep sightings without my name";
export const eraseNothing = "leave it";
export const erased = "It is erased. Backups made before today still hold it until they are replaced.";
export const notErased = "Nothing is erased.";
export const lastOwnerErasing =
  "You are the last owner here; invite another one first, so that nobody is locked out. Then say “erase mine” again.";

export const someone = "somebody who has left";
export const whyErased = "erased at its owner's wish";
export const whyForgotten = "forgotten: untouched for longer than the community keeps cases";
export const whyToErase = "asked to be erased";

export const erasedAnswer = "This answer was erased at its owner’s wish.";
