/** The names behind the ids of a scope; an id that an edition no longer has stands for itself. */
import { variantById } from "../../../knowledge/index.ts";
import { findPart } from "../../conversation/knowledge.ts";
import type { CommunityScene } from "../affair.ts";
import type { PinScope } from "./pin.ts";

export interface ScopeNames {
  readonly part: string;
  /** Models, trims and markets, in this order. */
  readonly cars: readonly string[];
  readonly variants: (ids: readonly string[]) => readonly string[];
}

export function namesOf({ loaded, knowledge }: CommunityScene, scope: PinScope): ScopeNames {
  const known = loaded.find(({ handbook }) => handbook.cover.id === scope.handbook) ?? knowledge;
  const { cars } = known.handbook;
  const part = findPart(known, scope.part);
  const named = (list: readonly { readonly id: string; readonly name: string }[], ids: readonly string[]) =>
    ids.map((id) => list.find((one) => one.id === id)?.name ?? id);
  return {
    part: part?.name ?? scope.part ?? "",
    cars: [
      ...named(cars.models, scope.models),
      ...named(cars.trims, scope.trims),
      ...named(cars.markets, scope.markets),
    ],
    variants: (ids) => ids.map((id) => (part === undefined ? id : (variantById(part, id)?.name ?? id))),
  };
}
