// Which state of one feature some words come nearest to, where no name of a state stands in them whole: each word
// votes for the states whose names hold it, by how often they do. A choice needs a clear lead, else there is none.
import type { StateFeature } from "../handbook/schema.ts";
import { glueWords, isGeneralWord } from "./common-words.ts";
import { numberOf } from "./fold-word.ts";
import { denyingName, lendingNames } from "./part-words.ts";
import { tokenise } from "./tokens.ts";

const generalWeight = 0.4;
const least = 0.6;
const lead = 0.4;

/** The state with the most votes of `said` (stems), undefined without a clear lead. */
export function nearestState(feature: StateFeature, said: readonly string[]): string | undefined {
  const uses = usesOf(feature);
  const scores = feature.states
    .map(({ id }) => ({ id, score: [...new Set(said)].reduce((sum, stem) => sum + vote(uses, stem, id), 0) }))
    .sort((one, other) => other.score - one.score);
  const [best, second] = scores;
  if (best === undefined || best.score < least) return undefined;
  return best.score - (second?.score ?? 0) >= lead ? best.id : undefined;
}

type Uses = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** Counted once for each feature of an edition. */
const usesKnown = new WeakMap<StateFeature, Uses>();

function usesOf(feature: StateFeature): Uses {
  const known = usesKnown.get(feature);
  if (known !== undefined) return known;
  const uses = countUses(feature);
  usesKnown.set(feature, uses);
  return uses;
}

/** In how many names of each state a stem stands. */
function countUses(feature: StateFeature): Uses {
  const uses = new Map<string, Map<string, number>>();
  for (const state of feature.states) {
    for (const name of lendingNames(state).filter((each) => !denyingName.test(each))) {
      const telling = tokenise(name).filter(({ folded }) => !glueWords.has(folded));
      for (const stem of new Set(telling.map((token) => token.stem))) {
        const byState = uses.get(stem) ?? new Map<string, number>();
        uses.set(stem, byState.set(state.id, (byState.get(state.id) ?? 0) + 1));
      }
    }
  }
  return uses;
}

function vote(uses: Uses, stem: string, state: string): number {
  const byState = uses.get(stem);
  if (byState === undefined || glueWords.has(stem) || stem.length < 2) return 0;
  const all = [...byState.values()].reduce((sum, count) => sum + count, 0);
  const weight = isGeneralWord(stem) && numberOf(stem) === undefined ? generalWeight : 1;
  return (weight * (byState.get(state) ?? 0)) / all;
}
