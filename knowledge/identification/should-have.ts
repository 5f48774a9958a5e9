/** "What should my car have?": the as-built mix of the car alone. What sits on it now is no evidence of that. */
import { entropyBits } from "../information/entropy.ts";
import type { CarGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import type { Identification } from "./identification.ts";
import { rankingOf } from "./ranking.ts";

const VERDICT = 0.5;

/** No class at all for a car to which the works fitted no kind of the part. */
export function asBuiltAnswer(compiled: CompiledPart, ground: CarGround): Identification {
  const ranking = ground.isFitted ? rankingOf(compiled.part, ground.mix.average) : [];
  const classes = ranking.map(({ variant, probability }) => ({ class: variant, probability }));
  const first = classes[0];
  return {
    ranking,
    classes,
    verdict: first && first.probability >= VERDICT ? first : null,
    entropyBits: entropyBits(classes.map(({ probability }) => probability)),
    movedBits: 0,
    duel: null,
    contradictions: [],
    doubtful: [],
    brokenLinks: [],
    hingesOn: [],
    toldApartBy: [],
    misfits: [],
  };
}
