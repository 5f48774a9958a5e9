/**
 * The name somebody probably meant. Edit distance with neighbouring letters swapped (optimal string alignment),
 * rather than a fuzzy search library: the lists are short, and a suggestion must be near or not be made at all.
 */
import { boundedEditDistance } from "../language/edit-distance.ts";

/**
 * The name among `names` that is nearest to `written`, ignoring case and treating spaces and underscores as hyphens;
 * undefined when none is within half of its length (at most 3 edits). Ties go to the first in the list.
 * Cost: one distance per name, length × length each; names of more than 60 letters are passed over.
 */
export function nearestName(written: string, names: Iterable<string>): string | undefined {
  const wanted = folded(written);
  if (wanted.length > LONGEST) return undefined;
  let nearest: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const allowed = Math.min(3, Math.ceil(Math.max(wanted.length, name.length) / 2));
    if (name.length > LONGEST || Math.abs(name.length - wanted.length) > allowed) continue;
    const edits = boundedEditDistance(wanted, folded(name), allowed);
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

/** `did you mean "rough"?`, or the known names when nothing is near: `known: foam, rough, smooth`. */
export function didYouMean(written: string, names: readonly string[], kind = "known"): string {
  const nearest = nearestName(written, names);
  if (nearest !== undefined) return `did you mean "${nearest}"?`;
  if (names.length === 0) return `there is none to choose from yet: add it first, or delete this`;
  const shown = names.slice(0, 12).join(", ");
  return `${kind}: ${shown}${names.length > 12 ? ` and ${names.length - 12} more` : ""}`;
}
