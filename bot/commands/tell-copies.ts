/** "How can I tell if it is a repro?": for each copy the looks that give it away, best first for the effort. */
import {
  type Claim,
  type Feature,
  type PartKind,
  planQuestions,
  type Variant,
} from "../../knowledge/index.ts";
import type { Assessed } from "../conversation/assessed.ts";
import { featuresNamed } from "../conversation/features-named.ts";
import { copiesLead, copyLine, noCopiesKnown, tellOfCopy } from "../conversation/phrases/variants.ts";
import { byInformationPerEffort } from "../conversation/question-worth.ts";
import { sayNumber } from "../conversation/saying/say-value.ts";
import { sayClaimBriefly } from "../conversation/saying/say-variant.ts";
import { inBrackets, sourcesOfTell } from "../conversation/saying/sources-of.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

const mostTells = 3;
const copied: ReadonlySet<string> = new Set(["reproduction", "other-maker"]);

/** The list for the part in hand; empty while no part is, for then the part is asked for first. */
export function tellCopies({ assessed, knowledge }: Scene): readonly Block[] {
  if (assessed === undefined) return [];
  const { part } = assessed;
  const features = byEffort(assessed);
  const genuine = part.variants.filter((variant) => !copied.has(variant.origin));
  const items = part.variants
    .filter((variant) => copied.has(variant.origin))
    .flatMap((copy) => {
      const telling = features.filter((feature) => isApart(feature, copy, genuine)).slice(0, mostTells);
      const tells = telling.map((feature) => tellOf(feature, copy, genuine));
      const sources = telling.flatMap((feature) => sourcesOfTell(part, feature.id, [copy.id]));
      return tells.length === 0 ? [] : [copyLine(copy.name, tells, inBrackets(knowledge.handbook, sources))];
    });
  if (items.length === 0) return [{ kind: "text", text: noCopiesKnown(part.name) }];
  return [{ kind: "list", lead: copiesLead(part.name), items }];
}

function byEffort({ compiled, part }: Assessed): readonly Feature[] {
  const asked = { car: { isLoosePart: true }, goal: "genuine", reports: [], isWhole: true } as const;
  const questions = byInformationPerEffort(planQuestions(compiled, asked).table);
  return featuresNamed(
    part,
    questions.map(({ question }) => question.id),
  );
}

/** Whether the copy shows what no genuine kind usually does. */
function isApart(feature: Feature, copy: Variant, genuine: PartKind["variants"]): boolean {
  const shown = copy.tells[feature.id];
  const said = sayClaimBriefly(feature, shown);
  const claims = genuine.flatMap((variant) => variant.tells[feature.id] ?? []);
  if (said === undefined || claims.length === 0) return false;
  return claims.every((claim) => sayClaimBriefly(feature, claim) !== said && !areNear(shown, claim));
}

/** Two sizes that one careful reading would not tell apart. */
function areNear(one: Claim | undefined, other: Claim): boolean {
  const from = sizeOf(one);
  const to = sizeOf(other);
  return from !== undefined && to !== undefined && Math.abs(from.mean - to.mean) < from.spread + to.spread;
}

function sizeOf(claim: Claim | undefined): { readonly mean: number; readonly spread: number } | undefined {
  if (claim === undefined || typeof claim.mean !== "number" || typeof claim.spread !== "number") return;
  return { mean: claim.mean, spread: claim.spread };
}

function tellOf(feature: Feature, copy: Variant, genuine: PartKind["variants"]): string {
  const shown = sayClaimBriefly(feature, copy.tells[feature.id]) ?? "";
  const claims = genuine.flatMap((variant) => variant.tells[feature.id] ?? []);
  const sizes = claims.flatMap((claim) => sizeOf(claim)?.mean ?? []).toSorted((one, other) => one - other);
  const states = claims.flatMap((claim) => sayClaimBriefly(feature, claim) ?? []);
  return tellOfCopy(feature.name, shown, [...new Set(sizes.length > 0 ? sizes.map(sayNumber) : states)]);
}
