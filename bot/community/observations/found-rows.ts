/** What was found in a text that is to be taken in: the observations, and what could not be read with where it stands. */
import type { Observation } from "./observation.ts";

export interface FoundRows {
  readonly rows: readonly { readonly id: string; readonly observation: Observation }[];
  readonly faults: readonly { readonly place: string; readonly fault: string }[];
}
