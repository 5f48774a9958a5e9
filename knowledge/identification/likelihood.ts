/** What something told says of each variant, and of a part that resembles none. */
export interface VariantLikelihood {
  /** P(what was told | variant), one per variant, > 0. */
  readonly byVariant: Float64Array;
  /** P(what was told | flat): what a part of no known kind would show. */
  readonly flat: number;
}

/** A kin of a variant shows what the variant shows this often, and anything else (identification method, section 1). */
export const KIN_LIKENESS = 0.6;
