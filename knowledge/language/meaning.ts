// What a phrase of the handbook can mean. One phrase may mean several things ("rough" of two features): the
// phrase is kept once with all its meanings, and the message around it decides.

export type Meaning =
  | { readonly kind: "part"; readonly part: string }
  | { readonly kind: "feature"; readonly part: string; readonly feature: string }
  | { readonly kind: "state"; readonly part: string; readonly feature: string; readonly state: string }
  | { readonly kind: "variant"; readonly part: string; readonly variant: string }
  | { readonly kind: "model" | "trim" | "market"; readonly id: string };

export interface Phrase {
  /** Stems of its words in order, glue words left out. */
  readonly stems: readonly string[];
  /** All words, glue included, of a name with one telling word: they must stand together as written. */
  readonly literal?: readonly string[];
  readonly meanings: readonly Meaning[];
  /** True for a name far down a list: read only as it stands there. */
  readonly isSaying: boolean;
  /** True for a single word too general to stand alone for a state. */
  readonly isGeneral: boolean;
  /** True for names that must be said in their order: "narrow flange wing" is not "wing has a narrow flange". */
  readonly isOrdered: boolean;
}
