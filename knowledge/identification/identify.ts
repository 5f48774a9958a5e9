/**
 * The front of the identification room: from a car and what was said of a part to a ranked, explained verdict.
 * Deterministic: sums run in the handbook's order, and equal probabilities keep it.
 */
import type { Goal } from "../evidence/goal.ts";
import { entropyBits } from "../information/entropy.ts";
import { type Belief, beliefOf } from "./belief.ts";
import { brokenLinks } from "./broken-links.ts";
import { classesOf, heaviest, heaviestFirst, overClasses } from "./classes.ts";
import { type CompiledPart, compilePart } from "./compiled-part.ts";
import { contradictionsOf } from "./contradictions.ts";
import { doubtfulReadings } from "./doubtful-readings.ts";
import { duelOf } from "./duel.ts";
import { hingesOf } from "./hinges.ts";
import type { ClassProbability, Identification, IdentificationInput, Told } from "./identification.ts";
import { misfitsOf } from "./misfits.ts";
import { overVariantsOf, rankingOf } from "./ranking.ts";
import { asBuiltAnswer } from "./should-have.ts";
import { toldApartBy } from "./told-apart.ts";

/** Below this the first class is no verdict. */
const VERDICT = 0.5;
/** From this on "not in the handbook" is mentioned, with the facts that fit worst. */
const MENTION_UNKNOWN = 0.2;

export interface Question extends Told {
  readonly goal: Goal;
}

/** What of an identification gives cause to ask again. */
export type Doubts = Pick<Identification, "contradictions" | "doubtful">;

/** The doubts that `identify` finds in what was told, without the rest of its work. */
export function doubtsAbout(compiled: CompiledPart, asked: Question): Doubts {
  if (asked.goal === "what-should-it-have") return { contradictions: [], doubtful: [] };
  const belief = beliefOf(compiled, asked.car, asked.reports);
  return doubtsIn(belief, overVariantsOf(compiled.space, compiled.part, belief.probabilities));
}

function doubtsIn(belief: Belief, byVariant: Float64Array): Doubts {
  return {
    contradictions: contradictionsOf(belief, byVariant[heaviest(byVariant)] as number),
    doubtful: doubtfulReadings(belief),
  };
}

/** The identification of one part: of a compiled part kind and what is asked, or of everything in one input. */
export function identify(compiled: CompiledPart, asked: Question): Identification {
  const belief = beliefOf(compiled, asked.car, asked.reports);
  if (asked.goal === "what-should-it-have") return asBuiltAnswer(compiled, belief.ground);
  const classes = classesOf(compiled, belief.ground, asked.goal);
  const sums = overClasses(classes, belief.probabilities);
  const ordered = heaviestFirst(sums)
    .filter((index) => (sums[index] as number) > 0)
    .map(
      (index): ClassProbability => ({
        class: classes.names[index] as string,
        probability: Math.min(1, sums[index] as number),
      }),
    );
  const byVariant = overVariantsOf(compiled.space, compiled.part, belief.probabilities);
  const duel = duelOf(belief, classes);
  const first = ordered[0];
  return {
    ranking: rankingOf(compiled.part, byVariant),
    classes: ordered,
    verdict: first && first.probability >= VERDICT ? first : null,
    ...(asked.goal === "right-for-car" ? { kindItWasBuiltWith: kindItWasBuiltWith(ordered) } : {}),
    entropyBits: entropyBits([...sums]),
    movedBits: movedBits(belief),
    duel,
    ...doubtsIn(belief, byVariant),
    brokenLinks: brokenLinks(compiled, asked.car, belief.facts),
    hingesOn: hingesOf(belief, classes),
    toldApartBy: toldApartBy(belief, byVariant),
    misfits: misfitsIfUnknown(belief, byVariant),
  };
}

/** The same for callers that keep nothing; undefined when the handbook has no such part kind. Compiles each time. */
export function identifyOnce(input: IdentificationInput): Identification | undefined {
  const compiled = compilePart(input.handbook, input.part, input.observed);
  return compiled && identify(compiled, input);
}

function kindItWasBuiltWith(classes: readonly ClassProbability[]): number {
  const shares = classes
    .filter((entry) => entry.class === "as-built" || entry.class === "right-kind-replaced")
    .reduce((sum, { probability }) => sum + probability, 0);
  return Math.min(1, shares);
}

/** Σ p · log₂(p/prior) over the hypotheses, in bits: how far the facts moved what the car alone says. */
function movedBits({ probabilities, ground }: Belief): number {
  const moved = probabilities.reduce(
    (sum, probability, h) =>
      probability > 0 ? sum + probability * Math.log2(probability / (ground.prior[h] as number)) : sum,
    0,
  );
  return Math.max(0, moved);
}

function misfitsIfUnknown(belief: Belief, byVariant: Float64Array): readonly string[] {
  const known = byVariant.subarray(0, -1);
  const unknown = byVariant[byVariant.length - 1] as number;
  const best = heaviest(known);
  return unknown >= MENTION_UNKNOWN && best >= 0 ? misfitsOf(belief, best) : [];
}
