// Flange letters of rims: shape and height.
import type { Sourced } from "./sourced.ts";

export interface RimFlange extends Sourced {
  readonly letter: string;
  readonly heightMillimetres: string;
  readonly use: string;
}

const WHEEL_GUIDES = {
  source: "Four published Japanese wheel guides agree on B, J, JJ",
  basis: "standard",
} as const;
const MANUALS_FROM_MEMORY = { source: "ETRTO/TRA manuals, from memory", basis: "common practice" } as const;

export const RIM_FLANGES: readonly RimFlange[] = [
  { letter: "B", heightMillimetres: "14.0", use: "small and early cars; flange 10 mm wide", ...WHEEL_GUIDES },
  { letter: "D", heightMillimetres: "17.4", use: "commercial and early cars", ...MANUALS_FROM_MEMORY },
  { letter: "E", heightMillimetres: "19.8", use: "early heavy cars and vans", ...MANUALS_FROM_MEMORY },
  { letter: "F", heightMillimetres: "22.2", use: "commercial", ...MANUALS_FROM_MEMORY },
  {
    letter: "J",
    heightMillimetres: "17.5",
    use: "the usual car flange, 13 mm wide (17.3 in later European lists, from memory)",
    ...WHEEL_GUIDES,
  },
  {
    letter: "JJ",
    heightMillimetres: "18.0",
    use: "as J, 0.5 mm taller, 13 mm wide; also used loosely for J",
    ...WHEEL_GUIDES,
  },
  {
    letter: "JK",
    heightMillimetres: "18.0 to 18.5",
    use: "between J and K; sources differ",
    ...MANUALS_FROM_MEMORY,
  },
  { letter: "K", heightMillimetres: "19.6", use: "large cars of the 1950s to 1970s", ...MANUALS_FROM_MEMORY },
  { letter: "L", heightMillimetres: "21.6", use: "heavy cars and light commercial", ...MANUALS_FROM_MEMORY },
  {
    letter: "P",
    heightMillimetres: "about 19.8",
    use: "early small cars; sources differ",
    ...MANUALS_FROM_MEMORY,
  },
];
