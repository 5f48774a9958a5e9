// What judges weigh, strongest first. `chance` (that a part is still as built) is a suggestion, not a measurement.
import type { Sourced } from "./sourced.ts";

export interface ProvenanceGrade extends Sourced {
  readonly grade: string;
  readonly evidence: string;
  readonly chance: number;
  readonly shows: string;
}

const PRACTICE = {
  source: "common practice; the chances are suggestions",
  basis: "common practice",
} as const;

export const PROVENANCE_GRADES: readonly ProvenanceGrade[] = [
  {
    grade: "A1",
    evidence: "maker’s own build record for this chassis, seen in copy from the archive",
    chance: 0.97,
    shows: "the car as ordered and despatched; not what is on it now",
    ...PRACTICE,
  },
  {
    grade: "A2",
    evidence: "dated works or press photograph of this chassis",
    chance: 0.95,
    shows: "what the lens shows on that day; prototypes and press cars differ",
    ...PRACTICE,
  },
  {
    grade: "A3",
    evidence: "unbroken single ownership from new with papers",
    chance: 0.92,
    shows: "that visible parts were never changed, save wear items",
    ...PRACTICE,
  },
  {
    grade: "B1",
    evidence: "period photograph by owner, date known",
    chance: 0.88,
    shows: "from that date only",
    ...PRACTICE,
  },
  {
    grade: "B2",
    evidence: "untouched car, long stored, history by papers",
    chance: 0.85,
    shows: "parts may have been changed in early life",
    ...PRACTICE,
  },
  {
    grade: "B3",
    evidence: "maker’s parts list or service bulletin for the range",
    chance: 0.85,
    shows: "what was meant; effective dates can lead or lag the line",
    ...PRACTICE,
  },
  {
    grade: "C1",
    evidence: "club register entry or expert inspection with photographs",
    chance: 0.75,
    shows: "depends on the inspector",
    ...PRACTICE,
  },
  {
    grade: "C2",
    evidence: "older restoration with records of parts kept",
    chance: 0.6,
    shows: "new parts known",
    ...PRACTICE,
  },
  {
    grade: "C3",
    evidence: "known restoration without records",
    chance: 0.4,
    shows: "nothing hidden can be trusted",
    ...PRACTICE,
  },
  { grade: "D1", evidence: "several owners, no papers", chance: 0.35, shows: "prior only", ...PRACTICE },
  {
    grade: "D2",
    evidence: "dismantled, rebuilt from parts of more cars",
    chance: 0.15,
    shows: "",
    ...PRACTICE,
  },
  {
    grade: "E",
    evidence: "hearsay: seller or forum says",
    chance: 0.1,
    shows: "never raises a verdict alone",
    ...PRACTICE,
  },
  {
    grade: "X",
    evidence: "part known replaced",
    chance: 0,
    shows: "evidence of service parts only",
    ...PRACTICE,
  },
];
