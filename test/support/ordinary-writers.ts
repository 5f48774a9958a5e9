/**
 * Writers of the development half who wrote as they would write, and those who were asked for near misses and for wordings of
 * their own in every second message, or for nothing but brief statements. The two are read with so different success that a
 * floor for all would hold for neither.
 */
import type { AnnotatedMessage } from "./score-corpus.ts";

const hard = /^(?:kapok|lime|mulberry|olive|pine|quince|sorrel|tansy|umber|verbena|willow)-/;
const brief = /^(?:yarrow|zinnia)-/;

export function isOrdinary({ id }: AnnotatedMessage): boolean {
  return !hard.test(id) && !brief.test(id);
}
