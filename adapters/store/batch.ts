/**
 * Which entries go into one batch: none that changes a record which another of the batch changes, or which an earlier one waits to
 * change. What an entry changes alongside is known only after it has run. So a collision may be found after running too; the later
 * entry then waits for the next batch and runs again, and what it was found to change keeps it out of batches until its turn has come.
 */
import { MOST_ROWS } from "./alongside.ts";

const LARGEST_BATCH = 128;

interface Entry {
  /** Keys of the records it changes, as far as is known. */
  readonly records: ReadonlySet<string>;
}

/** The next batch in the order of arrival, and what goes on waiting. */
export function chosenBatch<Each extends Entry>(
  waiting: readonly Each[],
): { readonly batch: readonly Each[]; readonly rest: Each[] } {
  const claims = claimedRecords();
  const batch: Each[] = [];
  const rest: Each[] = [];
  for (const entry of waiting) {
    const isFree = batch.length < LARGEST_BATCH && claims.claim(entry.records);
    (isFree ? batch : rest).push(entry);
  }
  return { batch, rest };
}

/** Those that collide with none before them and fit into one statement. */
export function withoutCollisions<Each extends { readonly entry: Entry }>(
  drafts: readonly Each[],
): readonly Each[] {
  const claims = claimedRecords();
  let rows = 0;
  return drafts.filter(({ entry }) => {
    if (!claims.claim(entry.records) || rows + entry.records.size > MOST_ROWS) return false;
    rows += entry.records.size;
    return true;
  });
}

function claimedRecords(): { claim(records: ReadonlySet<string>): boolean } {
  const claimed = new Set<string>();
  return {
    /** True: nobody before has claimed any. Who is refused has claimed them too, so that nobody later overtakes on the same record. */
    claim(records) {
      const isFree = [...records].every((record) => !claimed.has(record));
      for (const record of records) claimed.add(record);
      return isFree;
    },
  };
}
