// What a right verdict says of an invented part. A part is of the right kind when at least one car in twenty like this
// one left the works with its variant (identification method, section 7).

import { type Goal, notInHandbook } from "../../knowledge/evidence/goal.ts";
import { carGround } from "../../knowledge/identification/car-ground.ts";
import type { CompiledPart } from "../../knowledge/identification/compiled-part.ts";
import type { OwnedPart } from "./invented-parts.ts";

export function classOfPart(compiled: CompiledPart, { car, part }: OwnedPart, goal: Goal): string {
  const variant = compiled.part.variants[part.variant];
  if (part.way === "unknown" || variant === undefined) return notInHandbook;
  if (goal === "which-variant") return variant.id;
  if (part.way === "reproduction" || part.way === "other-maker") return part.way;
  if (goal === "genuine") return "genuine";
  if (part.way === "works") return "as-built";
  if (variant.origin === "service") return "service-part";
  const share = carGround(compiled, car).mix.average[part.variant] ?? 0;
  return share >= 0.05 ? "right-kind-replaced" : "other-year-or-model";
}
