// What one more report is expected to tell of a date of change, in bits: the same sum for one change and for those of a chain.

export interface WorthOfReport {
  /** What one report is expected to tell of the date, in bits. */
  readonly informationBits: number;
  /** Chance that it is reported with the new variant. */
  readonly reportedNew: number;
}

const DUST = 1e-9;

/**
 * I(τ; y) = h(P(new)) − Σ p(τ)·h(P(new | τ)), h the binary entropy; what is less than 1e-9 bits counts as 0. `borders`: weight of
 * each place of the change; `newByBorder`: weight × P(reported new | the change lies there); `total`: their sum.
 */
export function expectedInformation(
  borders: Float64Array,
  newByBorder: Float64Array,
  total: number,
): WorthOfReport {
  let reported = 0;
  let remaining = 0;
  borders.forEach((weight, border) => {
    if (weight === 0) return;
    const share = (newByBorder[border] as number) / weight;
    reported += newByBorder[border] as number;
    remaining += weight * binaryEntropyBits(share);
  });
  const bits = binaryEntropyBits(reported / total) - remaining / total;
  return { informationBits: bits > DUST ? bits : 0, reportedNew: reported / total };
}

function binaryEntropyBits(chance: number): number {
  if (chance <= 0 || chance >= 1) return 0;
  return -(chance * Math.log2(chance) + (1 - chance) * Math.log2(1 - chance));
}
