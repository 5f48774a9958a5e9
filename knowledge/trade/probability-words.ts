// Words for probabilities. The scale is that of Mastrandrea et al. (2010), Guidance Note for Lead Authors of the
// IPCC Fifth Assessment Report on Consistent Treatment of Uncertainties, Table 1. Its terms are nested; as one
// number needs one word, the partition used by Statistics New Zealand is taken (edges .01 .05 .10 .33 .66 .90 .95 .99).

/** By so much a sum of many shares may pass the ends. */
const ROUNDING = 1e-9;

/** The word of the published scale for a probability in [0, 1], rounding aside. Throws RangeError outside. */
export function probabilityWords(probability: number): string {
  if (!(probability >= -ROUNDING && probability <= 1 + ROUNDING)) {
    throw new RangeError(`probabilityWords: a probability in [0, 1] is needed, got ${probability}`);
  }
  if (probability > 0.99) return "virtually certain";
  if (probability > 0.95) return "extremely likely";
  if (probability > 0.9) return "very likely";
  if (probability > 0.66) return "likely";
  if (probability >= 0.33) return "about as likely as not";
  if (probability >= 0.1) return "unlikely";
  if (probability >= 0.05) return "very unlikely";
  return probability >= 0.01 ? "extremely unlikely" : "exceptionally unlikely";
}

/**
 * The word with its number: 0.78 gives "likely (78 %)". Nothing is ever 100 % or 0 %: the ends read
 * "over 99 %" and "under 1 %".
 */
export function sayProbability(probability: number): string {
  const words = probabilityWords(probability);
  if (probability > 0.99) return `${words} (over 99 %)`;
  if (probability < 0.01) return `${words} (under 1 %)`;
  return `${words} (${Math.round(100 * probability)} %)`;
}
