/** A frequency as one share, for judging whether claims can stand side by side. */
import { parseFrequency } from "../handbook/frequency.ts";

/** The count's share when there is a count, else the word's mean; 0 for a text that is no frequency. In [0, 1]. */
export function shareOfText(text: string): number {
  const { word, count } = parseFrequency(text) ?? {};
  if (count !== undefined) return count.seen / count.of;
  return word?.mean ?? 0;
}
