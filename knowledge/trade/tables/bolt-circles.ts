// Bolt circles met on cars; the distances between holes follow by arithmetic in ../bolt-circle.ts.
import type { Sourced } from "./sourced.ts";

export interface BoltCircle extends Sourced {
  readonly bolts: number;
  readonly diameterMillimetres: number;
}

const MET_ON_CARS = { source: "s = PCD x sin(180/n); arithmetic", basis: "standard" } as const;

export const BOLT_CIRCLES: readonly BoltCircle[] = [
  { bolts: 3, diameterMillimetres: 98, ...MET_ON_CARS },
  { bolts: 3, diameterMillimetres: 112, ...MET_ON_CARS },
  { bolts: 3, diameterMillimetres: 130, ...MET_ON_CARS },
  { bolts: 3, diameterMillimetres: 160, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 95.25, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 98, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 100, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 101.6, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 108, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 110, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 114.3, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 120, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 130, ...MET_ON_CARS },
  { bolts: 4, diameterMillimetres: 140, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 98, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 100, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 107.95, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 108, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 110, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 112, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 114.3, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 115, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 118, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 120, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 120.65, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 127, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 130, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 139.7, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 160, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 165.1, ...MET_ON_CARS },
  { bolts: 5, diameterMillimetres: 205, ...MET_ON_CARS },
  { bolts: 6, diameterMillimetres: 114.3, ...MET_ON_CARS },
  { bolts: 6, diameterMillimetres: 120, ...MET_ON_CARS },
  { bolts: 6, diameterMillimetres: 130, ...MET_ON_CARS },
  { bolts: 6, diameterMillimetres: 139.7, ...MET_ON_CARS },
  { bolts: 6, diameterMillimetres: 170, ...MET_ON_CARS },
];
