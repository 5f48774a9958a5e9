/** The notes of a case as one plain text, so that a keeper need not ask again what was already said. */

export const title = (number: number, part: string) => `Case ${number}: ${part}`;
export const wants = (goal: string) => `Wants to know: ${goal}.`;
export const car = (words: string) => `Car: ${words}.`;
export const carUnknown = "Car: not told.";
export const seen = "Seen:";
export const seenNothing = "Seen: nothing told yet.";
export const fact = (label: string, value: string, words: string, by: string) =>
  `- ${label}: ${value}${words === "" ? "" : `, said as “${words}”`}${by}`;
export const mark = (words: string) => `- mark: ${words}`;
export const byAnother = " (another member)";
export const couldNotTell = (features: string) => `Could not tell: ${features}.`;
export const stands = (ranking: string) => `Stands at: ${ranking}.`;
export const speaksFor = (facts: string) => `For it: ${facts}.`;
export const speaksAgainst = (facts: string) => `Against it: ${facts}.`;
export const pullsApart = (facts: string) => `Does not go with the rest: ${facts}.`;
export const open = (features: string) => `Would settle it: ${features}.`;
