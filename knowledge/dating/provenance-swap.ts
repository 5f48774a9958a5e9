// How likely a part is not the one the car was built with, by how well the car's history is known. A start, to be
// corrected by the sightings themselves: the odds of all grades share one factor, learned per part kind.
import type { ProvenanceGrade } from "../evidence/car-description.ts";

/** Chance of a swap by grade (common practice, no source). */
export const swapByGrade: Readonly<Record<ProvenanceGrade, number>> = {
  "documented-from-new": 0.01,
  "one-owner": 0.06,
  "history-unknown": 0.2,
  "known-replaced": 0.9,
};
