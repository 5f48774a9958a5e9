// What the whole list leaves open about one sighting.
export interface JudgedSighting {
  readonly id: string;
  /** Chance that the works did not fit what was reported. */
  readonly notAsBuilt: number;
  /** Chance that the part is not the one the car was built with, of whatever variant. */
  readonly swapped: number;
}
