// Which part a sentence speaks of, where the words that were learnt of the parts say otherwise than the names in it: "looked all
// round with a torch and a mirror" of a wing is about no mirror.
import type { Ears } from "./ears.ts";
import { partOdds, type SoundedSentence } from "./hearing.ts";

/** Nats by which another part must be heard rather than the one named. */
const leastLead = 4;
/** Nats from which on a part is heard where none is named. */
const leastOdds = 1.5;

/** The part of each clause; sentences that speak of several keep them. */
export function withHeardParts(
  partOf: readonly (string | undefined)[],
  sentences: readonly SoundedSentence[],
  ears: Ears,
): readonly (string | undefined)[] {
  const found = [...partOf];
  for (const sentence of sentences) {
    const { first, last } = sentence;
    const named = new Set(partOf.slice(first, last + 1));
    const [only] = named;
    if (named.size !== 1) continue;
    const odds = partOdds(sentence, ears);
    const [best] = [...odds].sort(([, one], [, other]) => other - one);
    if (best === undefined || best[0] === only) continue;
    const [part, heard] = best;
    const isClearer = only === undefined ? heard >= leastOdds : heard - (odds.get(only) ?? 0) >= leastLead;
    if (isClearer) found.fill(part, first, last + 1);
  }
  return found;
}
