// How much of a stretch of build dates falls after a changeover: all of it, none, or a part that depends only on how
// far the stretch lies from the changeover. Kept as whole numbers over a common whole, for exact complements.

/** The new variant's share of the production of a stretch, by the border of the changeover relative to its start. */
export interface OverlapProfile {
  /** Offset (border − lo) of the first part share; at smaller offsets the share is 1. */
  readonly first: number;
  /** Part shares × whole, one per offset from `first`; at larger offsets the share is 0. */
  readonly parts: Float64Array;
  readonly whole: number;
}

/**
 * 2w·F at the centre of the cell `cellsAfter` cells right of the changeover (negative: left of it), width w in cells:
 * F(t; τ, w) = clip((t − τ)/w + ½, 0, 1); a step for w = 0, where the whole is 2.
 */
export function doubledShare(cellsAfter: number, width: number): number {
  if (width === 0) return cellsAfter >= 0 ? 2 : 0;
  return Math.min(2 * width, Math.max(0, 2 * cellsAfter + 1 + width));
}

/** The whole of doubledShare. */
export function doubledWhole(width: number): number {
  return width === 0 ? 2 : 2 * width;
}

/** The profile of the cells lo … hi − 1 (weights `cars`, whole numbers) for an overlap of `width` cells. */
export function overlapProfile(cars: Float64Array, lo: number, hi: number, width: number): OverlapProfile {
  const first = Math.floor((1 - width) / 2) + 1;
  const last = Math.ceil(hi - lo - 0.5 + width / 2) - 1;
  let made = 0;
  for (let cell = lo; cell < hi; cell += 1) made += cars[cell] as number;
  const parts = Float64Array.from({ length: last - first + 1 }, (_, index) => {
    const border = lo + first + index;
    let part = 0;
    for (let cell = lo; cell < hi; cell += 1)
      part += (cars[cell] as number) * doubledShare(cell - border, width);
    return part;
  });
  return { first, parts, whole: made * doubledWhole(width) };
}

/** A name that two stretches with the same profile share: even stretches differ only by length. */
export function profileName(cars: Float64Array, lo: number, hi: number): string {
  for (let cell = lo + 1; cell < hi; cell += 1) {
    if (cars[cell] !== cars[lo]) return `${lo}-${hi}`;
  }
  return `${hi - lo}`;
}
