/**
 * Words for the weight of a fact. Grades of Kass & Raftery (1995), "Bayes factors", JASA 90:773-795, section 3.2, which
 * tidy those of Jeffreys (1961), Theory of Probability, appendix B: below half a ban "not worth more than a bare
 * mention", to one "substantial", to two "strong", beyond "decisive". Our words are plainer; the edges are theirs.
 */

/** Below this weight (in decimal bans, a ratio of about 1.12) a fact says nothing that is worth a line. Ours, no source. */
export const hushedBans = 0.05;

/** The word for a weight in decimal bans, either sign. */
export function strengthOf(bans: number): string {
  const size = Math.abs(bans);
  if (size >= 2) return "very strong";
  if (size >= 1) return "strong";
  if (size >= 0.5) return "fair";
  return size >= hushedBans ? "weak" : "says nothing";
}
