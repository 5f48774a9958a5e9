/**
 * Records in the order in which they came. A process that read them from the store has them by id, one that heard of them as they came
 * in another order; of one moment the id decides, so that both say the same.
 */

/** By `at`, then by id. */
export function oldestFirst<Shape extends { readonly at: number }>(
  records: Iterable<readonly [string, Shape]>,
): readonly (readonly [string, Shape])[] {
  return [...records].sort(
    ([id, one], [otherId, other]) => one.at - other.at || (id < otherId ? -1 : id > otherId ? 1 : 0),
  );
}
