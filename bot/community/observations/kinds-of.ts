/** Which kind an observation is about, by what was told and what its author says it is. */
import { identify, notInHandbook } from "../../../knowledge/index.ts";
import type { CommunityScene } from "../affair.ts";
import type { Observation, Sighting } from "./observation.ts";
import { knowledgeFor } from "./step-answers.ts";

/** A member who names the kind, and a keeper who accepts it, are wrong about once in twenty (common practice, no source). */
const namedRightly = 0.95;
const leastKept = 0.05;
const mostKept = 5;

/** The likeliest first; chances below one in twenty are left out. Worked out with the handbook alone, so that observations do not teach themselves. */
export function kindsOf(scene: CommunityScene, saw: Sighting): Observation["kinds"] {
  if (saw.variant !== null && saw.reports.length === 0)
    return [{ variant: saw.variant, chance: namedRightly }];
  const compiled = plainFor(scene, saw)?.compiled(saw.part);
  if (compiled === undefined) return [];
  // By the part alone: a kind that was guessed from the build date could not tell when that kind was fitted.
  const asked = { car: { isLoosePart: true }, goal: "which-variant", reports: saw.reports } as const;
  const { ranking } = identify(compiled, asked);
  const weighed = ranking
    .filter(({ variant }) => variant !== notInHandbook)
    .map(({ variant, probability }) => ({ variant, chance: probability * weightOfNaming(saw, variant) }));
  const whole = weighed.reduce((sum, { chance }) => sum + chance, 0);
  if (whole === 0) return [];
  return weighed
    .map(({ variant, chance }) => ({ variant, chance: Math.round((1e6 * chance) / whole) / 1e6 }))
    .filter(({ chance }) => chance >= leastKept)
    .sort((one, other) => other.chance - one.chance || (one.variant < other.variant ? -1 : 1))
    .slice(0, mostKept);
}

function weightOfNaming({ variant: named }: Sighting, variant: string): number {
  if (named === null) return 1;
  return named === variant ? namedRightly / (1 - namedRightly) : 1;
}

/** The handbook it was recorded against, without any observation. */
export function plainFor(scene: CommunityScene, saw: Sighting) {
  return scene.served.find(({ handbook }) => handbook.cover.id === saw.handbook) ?? knowledgeFor(scene, saw);
}
