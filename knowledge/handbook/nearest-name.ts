/**
 * The name somebody probably meant. Edit distance with neighbouring letters swapped (optimal string alignment),
 * rather than a fuzzy search library: the lists are short, and a suggestion must be near or not be made at all.
 */

/**
 * The name among `names` that is nearest to `written`, ignoring case and treating spaces and underscores as hyphens;
 * undefined when none is within a third of its length (at most 3 edits). Ties go to the first in the list.
 * Cost: one distance per name, length × length each; names of more than 60 letters are passed over.
 */
export function nearestName(written: string, names: Iterable<string>): string | undefined {
  const wanted = folded(written);
  if (wanted.length > LONGEST) return undefined;
  let nearest: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const allowed = Math.min(3, Math.ceil(Math.max(wanted.length, name.length) / 3));
    if (name.length > LONGEST || Math.abs(name.length - wanted.length) > allowed) continue;
    const edits = editDistance(wanted, folded(name));
    if (edits <= allowed && edits < fewest) {
      fewest = edits;
      nearest = name;
    }
  }
  return nearest;
}

const LONGEST = 60;

function folded(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, "-");
}

/** Insertions, deletions, replacements and swaps of neighbours that turn `one` into `other`, each piece edited once. */
export function editDistance(one: string, other: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row++) {
    const current = [row];
    for (let column = 1; column <= other.length; column++) {
      const isSame = one[row - 1] === other[column - 1];
      const isSwap = row > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const edits = [
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + Number(!isSame),
        isSwap ? (beforeLast[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
      ];
      current.push(Math.min(...edits));
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length] ?? 0;
}

/** `did you mean "rough"?`, or the known names when nothing is near: `known: foam, rough, smooth`. */
export function didYouMean(written: string, names: readonly string[], kind = "known"): string {
  const nearest = nearestName(written, names);
  if (nearest !== undefined) return `did you mean "${nearest}"?`;
  if (names.length === 0) return `there is none to choose from yet: add it first, or delete this`;
  const shown = names.slice(0, 12).join(", ");
  return `${kind}: ${shown}${names.length > 12 ? ` and ${names.length - 12} more` : ""}`;
}
