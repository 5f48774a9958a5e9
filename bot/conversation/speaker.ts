/** Whose voice it is: facts by the owner of the case are simply facts, those by anybody else are shown as theirs. */
import type { Case } from "./case.ts";

export interface Speaker {
  readonly id: string;
  readonly isOwner: boolean;
}

export function speakerOf(kept: Case, person: string): Speaker {
  return { id: person, isOwner: kept.owner === person };
}
