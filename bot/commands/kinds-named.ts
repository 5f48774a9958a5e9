/**
 * Kinds named by their whole names, one after another, as the choices of a comparison say them. The reader looks for what tells kinds apart and
 * takes "first-type mirror with …" twice for one.
 */
import type { PartKind } from "../../knowledge/index.ts";

/** The ids of the kinds whose whole names stand in `text`, in the order said; a name inside a longer one is none of its own. */
export function kindsNamed({ variants }: PartKind, text: string): readonly string[] {
  let rest = ` ${text.toLowerCase().replaceAll(/\s+/gu, " ")} `;
  const found: { readonly id: string; readonly at: number }[] = [];
  for (const { id, name } of variants.toSorted((one, other) => other.name.length - one.name.length)) {
    const words = name.toLowerCase();
    const at = placeOf(words, rest);
    if (at === undefined) continue;
    found.push({ id, at });
    rest = rest.slice(0, at) + " ".repeat(words.length) + rest.slice(at + words.length);
  }
  return found.toSorted((one, other) => one.at - other.at).map(({ id }) => id);
}

/** Where the words begin, standing by themselves. */
function placeOf(words: string, text: string): number | undefined {
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    const around = text.charAt(at - 1) + text.charAt(at + words.length);
    if (!/[\p{L}\p{N}]/u.test(around)) return at;
  }
  return undefined;
}
