// As many at once as the machine has processors: every try is a process of its own.
import { availableParallelism } from "node:os";

/** What `work` makes of each item, in the order of the items. */
export async function eachAtOnce<Item, Made>(
  items: readonly Item[],
  work: (item: Item) => Promise<Made>,
): Promise<readonly Made[]> {
  const made: Made[] = [];
  const waiting = items.entries();
  const worker = async (): Promise<void> => {
    for (const [at, item] of waiting) made[at] = await work(item);
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return made;
}
