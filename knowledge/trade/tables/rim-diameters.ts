// Bead seat diameters of 5 degree drop-centre rims.
import type { Sourced } from "./sourced.ts";

export interface RimDiameter extends Sourced {
  readonly nominalInches: number;
  readonly beadSeatMillimetres: number;
}

const ETRTO_MEMORY = {
  source: "ETRTO, 5 degree drop-centre rims, from memory",
  basis: "common practice",
} as const;

export const RIM_DIAMETERS: readonly RimDiameter[] = [
  { nominalInches: 10, beadSeatMillimetres: 253.2, ...ETRTO_MEMORY },
  { nominalInches: 12, beadSeatMillimetres: 304, ...ETRTO_MEMORY },
  { nominalInches: 13, beadSeatMillimetres: 329.4, ...ETRTO_MEMORY },
  { nominalInches: 14, beadSeatMillimetres: 354.8, ...ETRTO_MEMORY },
  { nominalInches: 15, beadSeatMillimetres: 380.2, ...ETRTO_MEMORY },
  { nominalInches: 16, beadSeatMillimetres: 405.6, ...ETRTO_MEMORY },
  { nominalInches: 17, beadSeatMillimetres: 436.6, ...ETRTO_MEMORY },
  { nominalInches: 18, beadSeatMillimetres: 462, ...ETRTO_MEMORY },
  { nominalInches: 19, beadSeatMillimetres: 487.4, ...ETRTO_MEMORY },
  { nominalInches: 20, beadSeatMillimetres: 512.8, ...ETRTO_MEMORY },
];
