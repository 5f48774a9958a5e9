/** What would tell the variants apart that are still left. */
import type { AnswerRows } from "./answer-rows.ts";
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
  const left = variantsLeft(part.variants.length, probabilities);
  if (left.length < 2) return [];
  const open = [...answers].filter(([feature]) => !belief.answered.has(feature));
  return left.map((variant) => {
    const features = open
      .map(([feature, expected]) => ({
        feature,
        gain: left.reduce(
          (sum, other) => (other === variant ? sum : sum + bitsBetween(expected, variant, other)),
          0,
        ),
      }))
      .filter(({ gain }) => gain >= LEAST_GAIN)
      .sort((one, other) => other.gain - one.gain)
      .slice(0, MOST_FEATURES)
      .map(({ feature }) => feature);
    return { variant: part.variants[variant]?.id ?? "", features };
  });
}

/** The most probable variants first; equal ones in the handbook's order. */
function variantsLeft(count: number, probabilities: Float64Array): readonly number[] {
  const left: number[] = [];
  for (let variant = 0; variant < count; variant += 1) {
    if ((probabilities[variant] as number) >= LAST_RIVAL) left.push(variant);
  }
  return left
    .sort((one, other) => (probabilities[other] as number) - (probabilities[one] as number))
    .filter((variant, rank) => rank < 2 || (probabilities[variant] as number) >= LEFT)
    .slice(0, MOST_VARIANTS);
}

/**
 * What one answer tells of which of two equally believed variants it is, in bits: the Jensen–Shannon divergence of their
 * rows (J. Lin, "Divergence measures based on the Shannon entropy", 1991).
 */
function bitsBetween({ rows, rowOf, answers }: AnswerRows, one: number, other: number): number {
  if (rowOf[one] === rowOf[other]) return 0;
  const width = answers.length;
  const start = (rowOf[one] as number) * width;
  const otherStart = (rowOf[other] as number) * width;
  let bits = 0;
  for (let answer = 0; answer < width; answer += 1) {
    const here = rows[start + answer] as number;
    const there = rows[otherStart + answer] as number;
    const middle = (here + there) / 2;
    if (here > 0) bits += (here / 2) * Math.log2(here / middle);
    if (there > 0) bits += (there / 2) * Math.log2(there / middle);
  }
  return bits;
}
