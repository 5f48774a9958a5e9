/** What would tell the variants apart that are still left. */
import { expectedInformationGainBits } from "../information/expected-information-gain.ts";
import type { Belief } from "./belief.ts";
import type { Identification } from "./identification.ts";

const MOST_VARIANTS = 3;
const MOST_FEATURES = 3;
/** A variant less probable than this is no longer in question, unless it is the only rival left. */
const LEFT = 0.05;
const LAST_RIVAL = 0.002;
/** A feature that gains less than this (bits, of one between two) tells nothing worth naming. */
const LEAST_GAIN = 0.05;

/**
 * For each of the first two or three variants left, the features not yet reported that tell it best from the others:
 * Σ over the others of the information one answer gives between the two, in bits. `probabilities`: one per variant.
 */
export function toldApartBy(belief: Belief, probabilities: Float64Array): Identification["toldApartBy"] {
  const { part, answers } = belief.compiled;
  const left = part.variants
    .map((_, index) => index)
    .sort((one, other) => (probabilities[other] as number) - (probabilities[one] as number) || one - other)
    .filter((index, rank) => (probabilities[index] as number) >= (rank < 2 ? LAST_RIVAL : LEFT))
    .slice(0, MOST_VARIANTS);
  if (left.length < 2) return [];
  const open = [...answers].filter(([feature]) => !belief.answered.has(feature));
  return left.map((variant) => {
    const features = open
      .map(
        ([
          feature,
          {
            rows,
            rowOf,
            answers: { length: width },
          },
        ]) => {
          const rowFor = (index: number): readonly number[] => {
            const start = (rowOf[index] as number) * width;
            return [...rows.subarray(start, start + width)];
          };
          const gain = left.reduce((sum, other) => {
            if (other === variant || rowOf[other] === rowOf[variant]) return sum;
            return sum + expectedInformationGainBits([0.5, 0.5], [rowFor(variant), rowFor(other)]);
          }, 0);
          return { feature, gain };
        },
      )
      .filter(({ gain }) => gain >= LEAST_GAIN)
      .sort((one, other) => other.gain - one.gain)
      .slice(0, MOST_FEATURES)
      .map(({ feature }) => feature);
    return { variant: part.variants[variant]?.id ?? "", features };
  });
}
