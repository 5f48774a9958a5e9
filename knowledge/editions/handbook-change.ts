/** One difference between two editions of a handbook, with the names it takes to say it; the words are the conversation's. */
import type { Claim } from "../handbook/schema.ts";

/** Something that has a name of its own in a handbook. */
export type NamedThing =
  | "part kind"
  | "variant"
  | "feature"
  | "state"
  | "misbelief"
  | "mounting"
  | "model"
  | "trim"
  | "market"
  | "source";

export interface Name {
  readonly id: string;
  readonly name: string;
}

interface OfVariant {
  readonly part: Name;
  readonly variant: Name;
}

export type HandbookChange =
  /** How often a state is seen; undefined on the side that does not say. */
  | (OfVariant & {
      readonly about: "claim";
      readonly feature: Name;
      readonly state: Name;
      readonly before: string | undefined;
      readonly after: string | undefined;
    })
  | (OfVariant & {
      readonly about: "measure";
      readonly feature: Name;
      readonly unit: string;
      readonly before: Measure | undefined;
      readonly after: Measure | undefined;
    })
  /** All periods of the variant; empty on a side that has none. */
  | (OfVariant & {
      readonly about: "periods";
      readonly which: "fitted" | "sold";
      readonly before: readonly string[];
      readonly after: readonly string[];
    })
  /** `part`: where it stands; undefined for what belongs to the whole handbook, and for a part kind itself. */
  | {
      readonly about: "added" | "removed" | "renamed" | "reworded";
      readonly what: NamedThing;
      readonly part: Name | undefined;
      readonly variant: Name | undefined;
      readonly thing: Name;
      /** Of a new name: the old one. Of other words: which of them changed. */
      readonly detail: string;
    }
  /** How owners speak of the states: `messages`, from how many it was learnt; undefined when it is no longer there. */
  | {
      readonly about: "learnt words";
      readonly part: undefined;
      readonly variant: undefined;
      readonly messages: number | undefined;
    }
  /** Everything else: where. */
  | {
      readonly about: "other";
      readonly part: Name | undefined;
      readonly variant: Name | undefined;
      readonly detail: string;
    };

export interface Measure {
  readonly mean: number;
  readonly spread: number;
}

/** The figures of a claim that measures; undefined for one that names states. */
export function measureOf(claim: Claim | undefined): Measure | undefined {
  return typeof claim?.mean === "number" && typeof claim.spread === "number"
    ? { mean: claim.mean, spread: claim.spread }
    : undefined;
}

/** The words of a claim by state; empty for a measure. */
export function frequenciesOf(claim: Claim | undefined): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(claim ?? {}).flatMap(([state, said]) =>
      state !== "sources" && typeof said === "string" ? [[state, said]] : [],
    ),
  );
}

/** What a change is about: the part kind and, unless it is about all of them, the variant; undefined for what is no part's. */
export function touchedBy(
  change: HandbookChange,
): { readonly part: string; readonly variant: string | undefined } | undefined {
  const ofKind = "what" in change && change.what === "part kind" ? change.thing : undefined;
  const part = change.part ?? ofKind;
  return part && { part: part.id, variant: change.variant?.id };
}
