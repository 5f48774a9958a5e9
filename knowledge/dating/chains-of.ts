// Which kinds of a part followed each other in a row. Where one gave way to several, or came after several, the way with the most
// cars goes on and the others stay pairs: a chain has no branches.
import type { Succession } from "./successions.ts";

type Link = Pick<Succession, "old" | "new">;

/** Kinds of a chain: fewer are a pair. */
const FEWEST = 3;

/**
 * The chains of three kinds or more, without those at their ends of which no car was seen; each kind is in one at most. `carsOf`:
 * cars seen with a kind. Ties go to the first of the successions. O(successions²).
 */
export function chainsOf(
  successions: readonly Link[],
  carsOf: (variant: string) => number,
): readonly (readonly string[])[] {
  const best = (links: readonly Link[], end: "old" | "new"): Link | undefined =>
    links.reduce<Link | undefined>(
      (most, link) => (most === undefined || carsOf(link[end]) > carsOf(most[end]) ? link : most),
      undefined,
    );
  const links = successions.filter((link) => {
    const onward = best(
      successions.filter((one) => one.old === link.old),
      "new",
    );
    const back = best(
      successions.filter((one) => one.new === link.new),
      "old",
    );
    return onward === link && back === link;
  });
  const next = new Map(links.map((link) => [link.old, link.new]));
  const followers = new Set(links.map((link) => link.new));
  return [...next.keys()]
    .filter((variant) => !followers.has(variant))
    .map((variant) => seenPart(walked(variant, next), carsOf))
    .filter((chain) => chain.length >= FEWEST);
}

function walked(first: string, next: ReadonlyMap<string, string>): readonly string[] {
  const chain = [first];
  for (let at = next.get(first); at !== undefined && !chain.includes(at); at = next.get(at)) chain.push(at);
  return chain;
}

/** From the first kind that was seen to the last; nothing of a chain of which none was (−1 to 0). */
function seenPart(chain: readonly string[], carsOf: (variant: string) => number): readonly string[] {
  const isSeen = (variant: string): boolean => carsOf(variant) > 0;
  return chain.slice(chain.findIndex(isSeen), chain.findLastIndex(isSeen) + 1);
}
