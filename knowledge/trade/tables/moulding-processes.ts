// How composite and plastic parts are made, and the traces each way leaves. Density in g/cm³.
import { FROM_MEMORY, type Range, type Sourced } from "./sourced.ts";

export interface MouldingProcess extends Sourced {
  readonly process: string;
  readonly outerFace: string;
  readonly innerFace: string;
  readonly edge: string;
  readonly thicknessMillimetres: Range;
  readonly density: Range;
  readonly traces: string;
  readonly period: string;
}

const PROCESS_SHEETS = {
  source:
    "Published process descriptions and data sheets for one rough face, closed-mould faces, densities; sizes from memory",
  basis: "standard",
} as const;

export const MOULDING_PROCESSES: readonly MouldingProcess[] = [
  {
    process: "hand lay-up",
    outerFace: "smooth (gel coat)",
    innerFace: "rough, brush or roller marks, visible mat strands 25-50 mm, overlaps at corners",
    edge: "sawn, ground or knife-trimmed; thickness varies 30 to 50 percent within a part",
    thicknessMillimetres: { from: 2, to: 5 },
    density: { from: 1.4, to: 1.6 },
    traces:
      "air bubbles at corners, pigment runs, tissue, bonded-in wood or metal, signatures and dates in resin",
    period: "short runs, 1950s on",
    ...PROCESS_SHEETS,
  },
  {
    process: "spray-up",
    outerFace: "smooth (gel coat)",
    innerFace: "short random chopped fibres, no mat pattern, thick and thin bands following the gun",
    edge: "ground",
    thicknessMillimetres: { from: 2, to: 6 },
    density: { from: 1.4, to: 1.55 },
    traces: "overspray inside, no straight mat edges",
    period: "from about 1960",
    ...PROCESS_SHEETS,
  },
  {
    process: "cold press (matched mould, low pressure)",
    outerFace: "smooth",
    innerFace: "smooth or lightly dimpled; both faces from tools",
    edge: "cut edge, even thickness",
    thicknessMillimetres: { from: 2.5, to: 4 },
    density: { from: 1.5, to: 1.7 },
    traces: "pinch line; little draft",
    period: "1960s on",
    ...FROM_MEMORY,
  },
  {
    process: "RTM (resin injection)",
    outerFace: "smooth",
    innerFace: "smooth; injection and vent spots",
    edge: "even, trimmed flash",
    thicknessMillimetres: { from: 2, to: 4 },
    density: { from: 1.5, to: 1.8 },
    traces: "continuous-strand mat swirl seen in raw faces; gate mark",
    period: "1970s on, common in small series from 1980s",
    ...PROCESS_SHEETS,
  },
  {
    process: "hot-press SMC",
    outerFace: "smooth, very even, slight waviness",
    innerFace: "smooth; ribs, bosses, knit and flow lines; grey or black through",
    edge: "moulded edge or sheared flash 0.1-0.3 mm",
    thicknessMillimetres: { from: 2, to: 3 },
    density: { from: 1.8, to: 1.96 },
    traces:
      "ejector-pin rings 6-20 mm, sink over ribs, pores in paint edge, moulded part number and date clock",
    period: "late 1960s on; needs volume (thousands)",
    ...PROCESS_SHEETS,
  },
  {
    process: "RIM / RRIM polyurethane",
    outerFace: "smooth, flexes",
    innerFace: "smooth with parting line; gate along one edge",
    edge: "moulded",
    thicknessMillimetres: { from: 3, to: 5 },
    density: { from: 1, to: 1.25 },
    traces: "soft, dents with a nail, cracks star-shaped with age; mould-release pinholes",
    period: "about 1974 on",
    ...FROM_MEMORY,
  },
  {
    process: "vacuum forming",
    outerFace: "grained or smooth on the outside",
    innerFace: "soft corners, no ribs, wall thins at corners to a third",
    edge: "trimmed by saw or router",
    thicknessMillimetres: { from: 1.5, to: 4 },
    density: { from: 1.05, to: 1.05 },
    traces: "stretch marks, vent-hole pips 0.5-1 mm, no bosses",
    period: "1950s on",
    ...FROM_MEMORY,
  },
  {
    process: "injection moulding",
    outerFace: "sharp detail",
    innerFace: "ribs, bosses, ejector-pin rings 2-8 mm",
    edge: "moulded, gate scar",
    thicknessMillimetres: { from: 2, to: 3 },
    density: { from: 0.9, to: 1.4 },
    traces: "sink marks opposite ribs, weld lines, parting line, date clock, cavity number",
    period: "1940s on; tools costly, so volume",
    ...FROM_MEMORY,
  },
  {
    process: "blow or rotational moulding",
    outerFace: "smooth",
    innerFace: "same as outside, hollow",
    edge: "flash line or none",
    thicknessMillimetres: { from: 3, to: 6 },
    density: { from: 0.94, to: 0.96 },
    traces: "pinch-off seam (blow); no seam, uneven thickness (rotational)",
    period: "tanks and ducts",
    ...FROM_MEMORY,
  },
  {
    process: "filament or woven pre-preg",
    outerFace: "peel-ply or gloss",
    innerFace: "even weave, no dry spots",
    edge: "water-cut or routed",
    thicknessMillimetres: { from: 1, to: 3 },
    density: { from: 1.45, to: 1.6 },
    traces: "weave lines straight and unbroken",
    period: "competition",
    ...FROM_MEMORY,
  },
  {
    process: "splash copy (mould off an original)",
    outerFace: "smooth, copies scratches, badge holes and paint texture of the pattern",
    innerFace: "any; often chopped mat",
    edge: "ground; often oversize trim",
    thicknessMillimetres: { from: 2, to: 5 },
    density: { from: 1.4, to: 1.6 },
    traces:
      "0.2-0.5 percent smaller per mould generation; softened edges; filled holes print through; moulded-in ghost of original marks",
    period: "any time after the original",
    ...FROM_MEMORY,
  },
];
