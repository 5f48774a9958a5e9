// What a denial leaves: "just ABS, no arrows" denies the arrows and says the letters, and only one of the states left
// has letters. A word of the sentence that some of them hold and the others do not settles between them.
import type { StateFeature } from "../handbook/schema.ts";
import { isGeneralWord } from "./common-words.ts";
import { stemsOf } from "./name-stems.ts";
import { denyingName, lendingNames } from "./part-words.ts";

/** The states other than those denied, narrowed to the ones that a telling word of `said` speaks for. */
export function statesLeft(
  feature: StateFeature,
  denied: ReadonlySet<string>,
  said: readonly string[],
): readonly string[] {
  const left = feature.states.filter((state) => !denied.has(state.id));
  if (left.length < 2) return left.map((state) => state.id);
  const telling = new Set(said.filter((stem) => !isGeneralWord(stem)));
  const spoken = left.filter((state) =>
    lendingNames(state)
      .filter((name) => !denyingName.test(name) || name === state.name)
      .some((name) => stemsOf(name).some((stem) => telling.has(stem))),
  );
  return (spoken.length > 0 ? spoken : left).map((state) => state.id);
}
