// Letters beside the approval mark of safety belts (UN R16) and mirrors (UN R46).
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface BeltMirrorCode extends Sourced {
  readonly part: "belt" | "mirror";
  readonly symbol: string;
  readonly meaning: string;
  readonly regulation: number;
}

const LABEL_KEY = {
  source: "published belt label key; UN R16 and R46 amendment papers",
  basis: "standard",
} as const;

export const BELT_MIRROR_CODES: readonly BeltMirrorCode[] = [
  { part: "belt", symbol: "A", meaning: "three-point belt", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "B", meaning: "lap belt", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "S", meaning: "special-type belt or harness", regulation: 16, ...FROM_MEMORY },
  { part: "belt", symbol: "r", meaning: "has a retractor", regulation: 16, ...LABEL_KEY },
  {
    part: "belt",
    symbol: "1",
    meaning: "non-locking retractor (after r; very early)",
    regulation: 16,
    ...FROM_MEMORY,
  },
  { part: "belt", symbol: "2", meaning: "manually unlocked retractor", regulation: 16, ...FROM_MEMORY },
  { part: "belt", symbol: "3", meaning: "automatically locking retractor", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "4", meaning: "emergency locking retractor", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "N", meaning: "higher response threshold (after 4)", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "m", meaning: "retractor of multiple sensitivity", regulation: 16, ...LABEL_KEY },
  { part: "belt", symbol: "e", meaning: "energy absorber", regulation: 16, ...FROM_MEMORY },
  { part: "belt", symbol: "p", meaning: "pre-loading device", regulation: 16, ...FROM_MEMORY },
  { part: "belt", symbol: "t", meaning: "belt forming part with an airbag", regulation: 16, ...FROM_MEMORY },
  {
    part: "belt",
    symbol: "Z",
    meaning: "part of a restraint system (belt tied to a seat)",
    regulation: 16,
    ...FROM_MEMORY,
  },
  { part: "mirror", symbol: "I", meaning: "interior rear-view mirror", regulation: 46, ...FROM_MEMORY },
  { part: "mirror", symbol: "II", meaning: "main exterior, large", regulation: 46, ...FROM_MEMORY },
  {
    part: "mirror",
    symbol: "III",
    meaning: "main exterior, small (most cars)",
    regulation: 46,
    ...LABEL_KEY,
  },
  { part: "mirror", symbol: "IV", meaning: "wide-angle exterior", regulation: 46, ...FROM_MEMORY },
  { part: "mirror", symbol: "V", meaning: "close-proximity exterior", regulation: 46, ...FROM_MEMORY },
  { part: "mirror", symbol: "VI", meaning: "front mirror", regulation: 46, ...FROM_MEMORY },
  {
    part: "mirror",
    symbol: "VII",
    meaning: "main mirror, L category with bodywork",
    regulation: 46,
    ...FROM_MEMORY,
  },
  {
    part: "mirror",
    symbol: "S",
    meaning: "camera or other indirect vision device",
    regulation: 46,
    ...FROM_MEMORY,
  },
];
