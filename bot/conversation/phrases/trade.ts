/** How an answer from general trade knowledge is laid out, and marks that bear on the case. */
import { capitalised, sentence } from "./grammar.ts";

export const tradeReadingsLead = (topic: string, shown: number, all: number) =>
  shown < all ? `${capitalised(topic)}, the ${shown} likeliest of ${all}:` : `${capitalised(topic)}:`;
export const tradeReadingLine = (reading: string, why: string, basis: string) =>
  `${sentence(reading)} ${why === "" ? "" : sentence(why)} [${basis}]`.replace(/ {2,}/g, " ");
export const markLabel = "mark";
export const markTooYoung = (words: string, built: string) =>
  `${sentence(words)} The car was built ${built}, so the part that carries it came later.`;
