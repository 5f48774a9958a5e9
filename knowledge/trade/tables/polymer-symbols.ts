// Symbols of moulded material marks: polymers (ISO 1043-1), fillers (ISO 1043-2), and words often met that are
// no symbols at all. Names after a published list based on ISO 1043; fillers TD, MD, GB, CF, WD from memory.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface MarkSymbol extends Sourced {
  readonly symbol: string;
  readonly name: string;
}

const LISTED = { source: "UL list of symbols based on ISO 1043", basis: "standard" } as const;
const ISO_1043_2 = { source: "ISO 1043-2, clause 2 (extract)", basis: "standard" } as const;
const EXAMPLES = { source: "ISO 1043 examples in secondary texts", basis: "standard" } as const;

export const POLYMERS: readonly MarkSymbol[] = [
  { symbol: "ABS", name: "acrylonitrile-butadiene-styrene", ...LISTED },
  { symbol: "ASA", name: "acrylonitrile-styrene-acrylate", ...LISTED },
  { symbol: "CA", name: "cellulose acetate", ...LISTED },
  { symbol: "CAB", name: "cellulose acetate butyrate", ...LISTED },
  { symbol: "EP", name: "epoxy", ...LISTED },
  { symbol: "EPDM", name: "ethylene-propylene rubber", ...FROM_MEMORY },
  { symbol: "MF", name: "melamine-formaldehyde", ...LISTED },
  { symbol: "PA", name: "polyamide (nylon)", ...LISTED },
  { symbol: "PBT", name: "polybutylene terephthalate", ...LISTED },
  { symbol: "PC", name: "polycarbonate", ...LISTED },
  { symbol: "PE", name: "polyethylene", ...LISTED },
  { symbol: "PET", name: "polyethylene terephthalate", ...LISTED },
  { symbol: "PF", name: "phenol-formaldehyde", ...LISTED },
  { symbol: "PMMA", name: "acrylic", ...LISTED },
  { symbol: "POM", name: "acetal", ...LISTED },
  { symbol: "PP", name: "polypropylene", ...LISTED },
  { symbol: "PPE", name: "polyphenylene ether", ...LISTED },
  { symbol: "PPS", name: "polyphenylene sulphide", ...LISTED },
  { symbol: "PS", name: "polystyrene", ...LISTED },
  { symbol: "PTFE", name: "polytetrafluoroethylene", ...LISTED },
  { symbol: "PUR", name: "polyurethane", ...LISTED },
  { symbol: "PVC", name: "polyvinyl chloride", ...LISTED },
  { symbol: "SAN", name: "styrene-acrylonitrile", ...LISTED },
  { symbol: "SMA", name: "styrene-maleic anhydride", ...LISTED },
  { symbol: "UF", name: "urea-formaldehyde", ...LISTED },
  { symbol: "UP", name: "unsaturated polyester", ...LISTED },
];

export const FILLERS: readonly MarkSymbol[] = [
  { symbol: "GF", name: "glass fibre", ...ISO_1043_2 },
  { symbol: "GCM", name: "glass chopped-strand mat", ...ISO_1043_2 },
  { symbol: "MED", name: "metal powder", ...ISO_1043_2 },
  { symbol: "MD", name: "mineral powder", ...EXAMPLES },
  { symbol: "TD", name: "talc powder", ...FROM_MEMORY },
  { symbol: "GB", name: "glass beads", ...FROM_MEMORY },
  { symbol: "GD", name: "glass powder", ...FROM_MEMORY },
  { symbol: "CF", name: "carbon fibre", ...FROM_MEMORY },
  { symbol: "WD", name: "wood powder", ...FROM_MEMORY },
];

export const MODIFIERS: readonly MarkSymbol[] = [
  { symbol: "HI", name: "high impact", ...EXAMPLES },
  { symbol: "HD", name: "high density", ...FROM_MEMORY },
  { symbol: "LD", name: "low density", ...FROM_MEMORY },
  { symbol: "E", name: "expanded", ...FROM_MEMORY },
  { symbol: "U", name: "unplasticised", ...FROM_MEMORY },
  { symbol: "P", name: "plasticised", ...EXAMPLES },
  { symbol: "FR", name: "flame retardant", ...FROM_MEMORY },
  { symbol: "REC", name: "recycled", source: "practice note on ISO 11469:2016", basis: "standard" },
];

/** Names of processes and trade shorthand: none is an ISO 1043-1 symbol (from memory). */
export const PROCESS_NAMES: readonly string[] = ["SMC", "BMC", "RIM", "RRIM", "GRP", "FRP", "RTM"];
