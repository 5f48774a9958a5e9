/** Which sources stand behind a statement, and how they are cited: short in brackets, long on request. */
import { type Handbook, type PartKind, type Source, sourceById } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";

/** Source ids behind what the handbook says of a feature on these variants; the feature's own when the claims name none. */
export function sourcesOfTell(
  part: PartKind,
  feature: string,
  variants: readonly string[],
): readonly string[] {
  const claimed = part.variants
    .filter((variant) => variants.includes(variant.id))
    .flatMap((variant) => variant.tells[feature]?.sources ?? []);
  const described = part.features.find((one) => one.id === feature)?.sources ?? [];
  return [...new Set(claimed.length > 0 ? claimed : described)];
}

/** "[parts list 1981; owners' survey 2019]", at most two named; empty without sources. */
export function inBrackets(handbook: Handbook, ids: readonly string[]): string {
  const short = shortSources(handbook, ids);
  return short === "" ? "" : `[${short}]`;
}

/** The same without brackets, for a renderer that sets its own. */
export function shortSources(handbook: Handbook, ids: readonly string[], most = 2): string {
  const known = sourcesById(handbook, ids);
  const named = known.slice(0, most).map((source) => source.short);
  const more = known.length > most ? [`${known.length - most} more`] : [];
  return [...named, ...more].join("; ");
}

/** The long form, in the order given; undefined when the handbook names no source. */
export function sourcesBlock(handbook: Handbook, ids: readonly string[]): Block | undefined {
  const known = sourcesById(handbook, ids);
  if (known.length === 0) return undefined;
  return {
    kind: "sources",
    items: known.map(({ short, citation, grade }) => ({ short, citation, grade })),
  };
}

function sourcesById(handbook: Handbook, ids: readonly string[]): readonly Source[] {
  return [...new Set(ids)].flatMap((id) => sourceById(handbook, id) ?? []);
}
