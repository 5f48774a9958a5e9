/**
 * Finding things in a handbook by id. Lists keep the historian's order; an index is made once a list and lives as
 * long as the list does, so nobody scans 3,000 variants and nobody has to carry an index about.
 */
import { notThere } from "../evidence/report.ts";
import type { Feature, Handbook, PartKind, Source, Variant } from "./schema.ts";

const indexes = new WeakMap<readonly object[], ReadonlyMap<string, object>>();

function byId<T extends { readonly id: string }>(items: readonly T[], id: string): T | undefined {
  let index = indexes.get(items);
  if (index === undefined) {
    index = new Map(items.map((item) => [item.id, item]));
    indexes.set(items, index);
  }
  // The index of a list holds that list's own items.
  return index.get(id) as T | undefined;
}

export function partById(handbook: Handbook, id: string): PartKind | undefined {
  return byId(handbook.parts, id);
}

export function featureById(part: PartKind, id: string): Feature | undefined {
  return byId(part.features, id);
}

export function variantById(part: PartKind, id: string): Variant | undefined {
  return byId(part.variants, id);
}

export function sourceById(handbook: Handbook, id: string): Source | undefined {
  return byId(handbook.sources, id);
}

/**
 * The name of a feature's state. `not-there` has the name the feature gives it, else "not there"; an id that the
 * feature does not have (it may come from an earlier edition) stands for itself.
 */
export function stateName(feature: Feature, state: string): string {
  if (state === notThere) return feature.none ?? "not there";
  if (feature.kind !== "states") return state;
  return byId(feature.states, state)?.name ?? state;
}

/** The short forms of sources in brackets, `[works ledger; parts list 2]`; "" for none. Ids not known are left out. */
export function citation(handbook: Handbook, sourceIds: readonly string[]): string {
  const shorts = sourceIds.flatMap((id) => sourceById(handbook, id)?.short ?? []);
  const unique = [...new Set(shorts)];
  return unique.length === 0 ? "" : `[${unique.join("; ")}]`;
}
