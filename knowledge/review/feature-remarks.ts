/** Features and their states against what the variants claim: never asked, never true, the same everywhere, unreadable. */
import { notThere } from "../evidence/report.ts";
import type { Feature, PartKind, StateFeature } from "../handbook/schema.ts";
import { mistakeChannel } from "../identification/mistake-channel.ts";
import { type Margin, note } from "./remark.ts";
import { shareOfText } from "./share-of-text.ts";

/** From this share of owners on, who look and cannot tell, the question is a waste of their time. */
const MOST_UNSURE = 0.6;
/** Taking something apart without being surer than this is no check for an owner. */
const UNSURE_AND_DEAR = { effort: 7, unsure: 0.4 } as const;
/** States are muddled when their rows of answers differ by less than this (total variation). */
const MUDDLED = 0.2;

export function remarkFeatures(margin: Margin, part: PartKind): void {
  const claims = claimsOf(part);
  for (const [index, feature] of part.features.entries()) {
    remarkChecking(margin, feature, index);
    remarkApplies(margin, feature, claims, index);
    if (feature.kind !== "date") remarkClaimed(margin, part, feature, claims, index);
    if (feature.kind !== "states") continue;
    remarkStates(margin, feature, claims, index);
    remarkMuddled(margin, feature, index);
  }
}

/** Feature to the states that some variant may show, each with its greatest share. */
type Claims = ReadonlyMap<string, ReadonlyMap<string, number>>;

function claimsOf(part: PartKind): Claims {
  const rows: (readonly [string, Readonly<Record<string, unknown>>])[] = [
    ...part.variants.flatMap(({ tells }) => Object.entries(tells)),
    ...part.causes.flatMap(({ features }) =>
      Object.entries(features).flatMap(([feature, byCause]) =>
        Object.values(byCause).map((row): [string, typeof row] => [feature, row]),
      ),
    ),
  ];
  const claims = new Map<string, Map<string, number>>();
  for (const [feature, row] of rows) {
    const states = claims.get(feature) ?? new Map<string, number>();
    claims.set(feature, states);
    for (const [state, said] of Object.entries(row)) {
      const share = typeof said === "string" ? shareOfText(said) : 1;
      if (state !== "sources") states.set(state, Math.max(share, states.get(state) ?? 0));
    }
  }
  return claims;
}

function remarkChecking(margin: Margin, feature: Feature, index: number): void {
  const { id, unsure, effort, photograph } = feature;
  const isHopeless = unsure >= MOST_UNSURE;
  const isTooDear = effort >= UNSURE_AND_DEAR.effort && unsure >= UNSURE_AND_DEAR.unsure && !photograph;
  if (!isHopeless && !isTooDear) return;
  note(margin, {
    severity: "doubt",
    code: "feature-uncheckable",
    path: ["features", index, "unsure"],
    message: isHopeless
      ? `${Math.round(unsure * 100)} % of those who look at ${id} cannot tell`
      : `${id} is effort ${effort}, shows on no photograph, and ${Math.round(unsure * 100)} % cannot tell even then`,
    mend: "find a plainer check (a tool, a light, a place to compare with), split the states anew, or drop it",
  });
}

function remarkApplies(margin: Margin, feature: Feature, claims: Claims, index: number): void {
  for (const [named, states] of Object.entries(feature.when)) {
    const claimed = claims.get(named);
    if (claimed === undefined || states.some((state) => (claimed.get(state) ?? 0) > 0.02)) continue;
    note(margin, {
      severity: "doubt",
      code: "feature-never-applies",
      path: ["features", index, "when", named],
      message: `${feature.id} is asked only when ${named} is ${states.join(" or ")}, which no variant is`,
      mend: "correct the condition, or claim that state for a variant",
    });
  }
}

function remarkClaimed(
  margin: Margin,
  part: PartKind,
  feature: Feature,
  claims: Claims,
  index: number,
): void {
  const path = ["features", index, "id"];
  if (!claims.has(feature.id)) {
    note(margin, {
      severity: "doubt",
      code: "feature-unasked",
      path,
      message: `no variant claims anything about ${feature.id}, so it is never asked`,
      mend: "say on the variants what is seen of it, or delete it",
    });
    return;
  }
  const isGoverned = part.causes.some(({ features }) => Object.hasOwn(features, feature.id));
  const rows = part.variants.map(({ tells }) => {
    const { sources: _, ...row } = tells[feature.id] ?? { sources: [] };
    return JSON.stringify(Object.entries(row).toSorted());
  });
  if (isGoverned || new Set(rows).size > 1) return;
  note(margin, {
    severity: "wish",
    code: "feature-same-everywhere",
    path,
    message: `${feature.id} is the same on all variants, so it tells nothing`,
    mend: "delete it, or write down where it differs",
  });
}

function remarkStates(margin: Margin, feature: StateFeature, claims: Claims, index: number): void {
  const claimed = claims.get(feature.id);
  if (claimed === undefined) return;
  for (const [position, { id }] of feature.states.entries()) {
    if ((claimed.get(id) ?? 0) > 0.02) continue;
    const isNever = claimed.has(id);
    note(margin, {
      severity: "wish",
      code: "state-unseen",
      path: ["features", index, "states", position, "id"],
      message: isNever
        ? `${id} of ${feature.id} is never seen on any variant`
        : `no variant has ${id} of ${feature.id}`,
      mend: `say on which variant it is seen, or delete it; for "there is none" use ${notThere}`,
    });
  }
}

/** Two states which owners report with the same words as often as not. */
function remarkMuddled(margin: Margin, feature: StateFeature, index: number): void {
  const { states, chances } = mistakeChannel(feature, false);
  const size = states.length;
  for (let one = 0; one < size; one += 1) {
    for (let other = one + 1; other < size; other += 1) {
      let apart = 0;
      for (let said = 0; said < size; said += 1) {
        apart +=
          Math.abs((chances[one * size + said] as number) - (chances[other * size + said] as number)) / 2;
      }
      if (apart >= MUDDLED) continue;
      note(margin, {
        severity: "doubt",
        code: "state-muddled",
        path: ["features", index, "misread"],
        at: "key",
        message: `${states[one]} and ${states[other]} of ${feature.id} are misread so often that an answer says next to nothing`,
        mend: "make them one state, describe them so that they can be told apart, or lower misread",
      });
    }
  }
}
