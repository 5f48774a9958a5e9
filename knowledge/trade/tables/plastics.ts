// Plastics and composites of car parts with their ISO 1043 symbols; density in g/cm³.
import { FROM_MEMORY, type Range, type Sourced } from "./sourced.ts";

export interface Plastic extends Sourced {
  readonly symbol: string;
  readonly material: string;
  readonly density: Range;
  readonly use: string;
}

const DENSITY_TABLES = { source: "Published polymer density tables", basis: "standard" } as const;
const SMC_SHEET = {
  source: "Published SMC data sheet: 1.84-1.96, 27.5 percent glass, mould shrinkage 0.000",
  basis: "standard",
} as const;

export const PLASTICS: readonly Plastic[] = [
  {
    symbol: "ABS",
    material: "acrylonitrile-butadiene-styrene",
    density: { from: 1.02, to: 1.08 },
    use: "grilles, trim, plated parts, mirror shells; from the 1960s",
    ...DENSITY_TABLES,
  },
  {
    symbol: "ASA",
    material: "acrylonitrile-styrene-acrylate",
    density: { from: 1.05, to: 1.07 },
    use: "unpainted outside trim; from the 1970s",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PC",
    material: "polycarbonate",
    density: { from: 1.19, to: 1.22 },
    use: "lenses from the 1980s, bumpers in blends",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PC+ABS",
    material: "blend of PC and ABS",
    density: { from: 1.1, to: 1.15 },
    use: "dash and console shells; late 1980s on",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PMMA",
    material: "acrylic",
    density: { from: 1.17, to: 1.2 },
    use: "lamp lenses, side screens; from the 1940s",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PP",
    material: "polypropylene",
    density: { from: 0.89, to: 0.915 },
    use: "battery cases, heater boxes, bumpers; 1960s on; floats in water",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PP-TD20",
    material: "polypropylene with 20 percent talc",
    density: { from: 1.03, to: 1.06 },
    use: "heater boxes, trim; 1980s on",
    ...FROM_MEMORY,
  },
  {
    symbol: "PE-HD",
    material: "high-density polyethylene",
    density: { from: 0.94, to: 0.97 },
    use: "tanks, washer bottles, ducts; floats",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PA6",
    material: "polyamide 6 (nylon)",
    density: { from: 1.12, to: 1.15 },
    use: "clips, bushes, fans",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PA66",
    material: "polyamide 66",
    density: { from: 1.14, to: 1.16 },
    use: "clips, connectors",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PA66-GF30",
    material: "polyamide 66, 30 percent glass",
    density: { from: 1.35, to: 1.4 },
    use: "brackets, manifolds; 1980s on",
    ...FROM_MEMORY,
  },
  {
    symbol: "POM",
    material: "acetal",
    density: { from: 1.41, to: 1.43 },
    use: "handles, gears, clips",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PBT",
    material: "polybutylene terephthalate",
    density: { from: 1.3, to: 1.32 },
    use: "connectors, lamp bezels; late 1970s on",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PVC",
    material: "polyvinyl chloride",
    density: { from: 1.18, to: 1.45 },
    use: "trim cloth, cable, seals",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PS",
    material: "polystyrene",
    density: { from: 1.04, to: 1.07 },
    use: "early trim, instrument faces",
    ...DENSITY_TABLES,
  },
  {
    symbol: "CA",
    material: "cellulose acetate",
    density: { from: 1.27, to: 1.34 },
    use: "steering wheels, knobs to the 1950s",
    ...DENSITY_TABLES,
  },
  {
    symbol: "CAB",
    material: "cellulose acetate butyrate",
    density: { from: 1.15, to: 1.22 },
    use: "steering wheels, knobs, lamp lenses 1940s to 1960s",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PF",
    material: "phenolic moulding",
    density: { from: 1.36, to: 1.45 },
    use: "distributor parts, switch bodies; dark, brittle, no softening",
    ...DENSITY_TABLES,
  },
  {
    symbol: "PUR",
    material: "polyurethane: solid RIM",
    density: { from: 1, to: 1.15 },
    use: "soft noses, spoilers, from about 1974",
    ...FROM_MEMORY,
  },
  {
    symbol: "PUR foam",
    material: "integral-skin or flexible foam",
    density: { from: 0.05, to: 0.6 },
    use: "steering-wheel rims, armrests, dash padding",
    ...FROM_MEMORY,
  },
  {
    symbol: "EPDM",
    material: "ethylene-propylene rubber",
    density: { from: 0.85, to: 1.2 },
    use: "seals",
    ...FROM_MEMORY,
  },
  {
    symbol: "TPO",
    material: "olefin elastomer (PP+EPDM)",
    density: { from: 0.89, to: 0.98 },
    use: "bumper skins; 1980s on; waxy, floats",
    ...FROM_MEMORY,
  },
  {
    symbol: "UP-GF",
    material: "polyester with glass, hand lay or spray, about 30 percent glass",
    density: { from: 1.4, to: 1.6 },
    use: "bodies and panels",
    ...FROM_MEMORY,
  },
  {
    symbol: "UP-(GF+MD)",
    material: "SMC, about 27 percent glass and filler",
    density: { from: 1.8, to: 1.96 },
    use: "pressed panels",
    ...SMC_SHEET,
  },
  {
    symbol: "EP-GF",
    material: "epoxy with glass",
    density: { from: 1.6, to: 1.9 },
    use: "repair and competition parts",
    ...FROM_MEMORY,
  },
  {
    symbol: "EP-CF",
    material: "epoxy with carbon fibre",
    density: { from: 1.45, to: 1.6 },
    use: "competition; late 1970s on, road cars later",
    ...FROM_MEMORY,
  },
];
