/** What accepting an observation would change, and what members have seen, on the pages. */
import type { ProvenanceGrade } from "../../../knowledge/index.ts";

export const shareChange = (name: string, before: string, after: string) =>
  `${name}: ${before}, then ${after}`;
export const sharesLead = (date: string) => `As built, for a car of ${date}:`;
export const sharesLeadUndated = "As built, for such a car:";
export const kindsLead = "Which kind it is, by its looks alone:";
export const somethingElse = "something not in the handbook";
export const changeChange = (old: string, fresh: string, before: string, after: string) =>
  `${old} to ${fresh}: ${before}, then ${after}`;
export const changesLead = "When one gave way to the other, to nine in ten:";
export const changesNothing = "The numbers stay as they are.";
export const tooFewYet = "too few cars seen to say";
export const percent = (share: number) =>
  share > 0.99 ? "over 99 %" : share < 0.01 ? "under 1 %" : `${(100 * share).toFixed(1)} %`;
export const changed = (old: string, fresh: string, interval: string, cars: number) =>
  `${old} gave way to ${fresh} between ${interval} (nine in ten; ${cars} cars seen).`;
const grades: Readonly<Record<ProvenanceGrade, string>> = {
  "documented-from-new": "documented from new",
  "one-owner": "one owner from new",
  "history-unknown": "history not known",
  "known-replaced": "known replaced",
};
export const sightingWords = (name: string, date: string, grade: ProvenanceGrade) =>
  `${name} on a car built ${date}, ${grades[grade]}`;
