/** "Did you mean", for names people type at a shell: stricter than for a handbook, because HOME is not a misspelt HOST. */
import { boundedEditDistance } from "../knowledge/index.ts";

/**
 * The known name nearest to `typed`: at most one slip for names up to five letters, two for longer ones.
 * Undefined when none is near or two are equally near, because a wrong hint is worse than none.
 */
export function closestName(typed: string, known: readonly string[]): string | undefined {
  const near = known
    .map((name) => ({ name, slips: boundedEditDistance(typed, name, 2) }))
    .filter(({ name, slips }) => slips <= (name.length <= 5 ? 1 : 2))
    .sort((a, b) => a.slips - b.slips);
  const [first, second] = near;
  if (first === undefined || first.slips === second?.slips) return undefined;
  return first.name;
}
