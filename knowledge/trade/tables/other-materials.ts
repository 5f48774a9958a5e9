// Metals, glass, wood and filled plastics whose densities (g/cm³) meet those of car parts. Filled plastics are
// reckoned by the rule of mixtures (resin PP 0.905, ABS 1.05; talc 2.75, glass 2.56).
import { FROM_MEMORY, type Range, type Sourced } from "./sourced.ts";

export interface OtherMaterial extends Sourced {
  readonly symbol: string;
  readonly material: string;
  readonly density: Range;
  readonly use: string;
}

const MIXTURE = {
  source: "rule of mixtures, 10 to 40 percent filler (arithmetic)",
  basis: "standard",
} as const;
const WOOD_HANDBOOK = {
  source: "USDA Wood Handbook values as reprinted in TM 5-852-4 (12 percent moisture)",
  basis: "standard",
} as const;
const HANDBOOK_TABLE = { source: "Engineers Edge density table", basis: "standard" } as const;

export const OTHER_MATERIALS: readonly OtherMaterial[] = [
  {
    symbol: "PP-filled",
    material: "polypropylene with talc or glass",
    density: { from: 0.97, to: 1.22 },
    use: "trim, heater boxes, fans",
    ...MIXTURE,
  },
  {
    symbol: "ABS-GF",
    material: "ABS with glass fibre",
    density: { from: 1.11, to: 1.37 },
    use: "brackets, frames",
    ...MIXTURE,
  },
  {
    symbol: "GF sheet",
    material: "pressed glass-fibre sheet",
    density: { from: 1.84, to: 1.9 },
    use: "pressed panels",
    ...HANDBOOK_TABLE,
  },
  {
    symbol: "magnesium",
    material: "magnesium alloy",
    density: { from: 1.74, to: 1.84 },
    use: "wheels, housings",
    ...FROM_MEMORY,
  },
  {
    symbol: "glass",
    material: "window glass",
    density: { from: 2.45, to: 2.55 },
    use: "glazing",
    ...FROM_MEMORY,
  },
  {
    symbol: "aluminium",
    material: "aluminium alloy",
    density: { from: 2.63, to: 2.82 },
    use: "castings, panels",
    ...FROM_MEMORY,
  },
  {
    symbol: "titanium",
    material: "titanium alloy",
    density: { from: 4.4, to: 4.55 },
    use: "competition parts",
    ...FROM_MEMORY,
  },
  {
    symbol: "zinc",
    material: "zinc die-casting alloy",
    density: { from: 6.6, to: 6.8 },
    use: "handles, badges, lamp bezels",
    ...FROM_MEMORY,
  },
  {
    symbol: "cast iron",
    material: "cast iron",
    density: { from: 6.9, to: 7.4 },
    use: "hubs, brackets",
    ...FROM_MEMORY,
  },
  {
    symbol: "steel",
    material: "steel",
    density: { from: 7.7, to: 8.0 },
    use: "brackets, fasteners",
    ...FROM_MEMORY,
  },
  {
    symbol: "brass",
    material: "brass",
    density: { from: 8.4, to: 8.75 },
    use: "fittings, badges",
    ...FROM_MEMORY,
  },
  {
    symbol: "copper or bronze",
    material: "copper or bronze",
    density: { from: 8.7, to: 8.96 },
    use: "bushes, pipes",
    ...FROM_MEMORY,
  },
  {
    symbol: "lead",
    material: "lead and body solder",
    density: { from: 9.5, to: 11.4 },
    use: "filler, ballast",
    ...FROM_MEMORY,
  },
  {
    symbol: "Douglas-fir",
    material: "Douglas-fir",
    density: { from: 0.45, to: 0.51 },
    use: "framing",
    ...WOOD_HANDBOOK,
  },
  {
    symbol: "western hemlock",
    material: "western hemlock",
    density: { from: 0.45, to: 0.48 },
    use: "framing",
    ...WOOD_HANDBOOK,
  },
  {
    symbol: "ponderosa pine",
    material: "ponderosa pine",
    density: { from: 0.38, to: 0.42 },
    use: "framing",
    ...WOOD_HANDBOOK,
  },
  {
    symbol: "plywood",
    material: "plywood, softwood to birch",
    density: { from: 0.46, to: 0.7 },
    use: "floors, bulkheads",
    ...FROM_MEMORY,
  },
];
