// One line to show before a step that can hurt. The source is the authority behind the line.
import type { Sourced } from "./sourced.ts";

export interface Caution extends Sourced {
  readonly id: string;
  readonly beforeStep: string;
  readonly line: string;
}

const GRP = { source: "NIOSH 76-148 (as adapted by a state OSHA); HSE COSHH", basis: "standard" } as const;
const STYRENE = {
  source: "NIOSH 76-148; NIOSH surveys found levels above limits in gel-coating",
  basis: "standard",
} as const;
const PRODUCT_SHEETS = { source: "product safety sheets", basis: "common practice" } as const;
const ISOCYANATE = {
  source: "HSE motor vehicle repair pages; COSHH essentials MR2; BS EN 14594",
  basis: "standard",
} as const;
const LEAD_PAINT = {
  source: "16 CFR 1303 (does not reach car paint); EPA lead pamphlets",
  basis: "standard",
} as const;
const LEAD_AT_WORK = { source: "national lead-at-work rules", basis: "common practice" } as const;
const ASBESTOS = {
  source: "29 CFR 1910.1001 appendix F; EPA best practices, March 2007",
  basis: "standard",
} as const;
const FLUORO_SEAL = {
  source: "HSE fluoroelastomers page (hazard rare); engine makers’ safety sheets",
  basis: "standard",
} as const;
const PETROL = { source: "HSE fire and explosion page; DSEAR", basis: "standard" } as const;
const UNDER_CAR = { source: "HSE under-vehicles page; HSG261; INDG434", basis: "standard" } as const;
const LIFTING = {
  source: "HSE manual handling guidance (figures from memory)",
  basis: "common practice",
} as const;
const AIRBAG = {
  source: "HSE airbags page; INDG280; Explosives Regulations 2014",
  basis: "standard",
} as const;
const BATTERY = { source: "HSE battery guidance", basis: "common practice" } as const;
const REFRIGERANT = { source: "40 CFR 82 subpart B; EU F-gas rules", basis: "common practice" } as const;
const PRACTICE = { source: "common practice, no source", basis: "common practice" } as const;
const RADIATION = { source: "national radiation rules", basis: "common practice" } as const;
const FIRE_SERVICE = { source: "fire service guidance", basis: "common practice" } as const;
const WHEEL = { source: "maker’s manual; national roadworthiness law", basis: "common practice" } as const;
const BELT = { source: "UN R16 practice", basis: "common practice" } as const;
const LAMP_LAW = { source: "national lighting and glazing law", basis: "common practice" } as const;

export const CAUTIONS: readonly Caution[] = [
  {
    id: "grp-dust",
    beforeStep: "sanding, cutting or drilling glass fibre",
    line: "Glass-fibre dust irritates lungs, skin and eyes: wet-sand or extract at the tool, wear a fitted P3/N95-or-better respirator, goggles and gloves; follow the product sheet and local rules.",
    ...GRP,
  },
  {
    id: "styrene",
    beforeStep: "laminating or gel-coating with polyester",
    line: "Styrene vapour: ventilate well and use an organic-vapour respirator; follow the resin maker’s sheet and local limits.",
    ...STYRENE,
  },
  {
    id: "catalyst",
    beforeStep: "mixing peroxide catalyst (MEKP)",
    line: "Peroxide catalyst blinds and burns: goggles and gloves on, never mix it with the cobalt accelerator directly.",
    ...PRODUCT_SHEETS,
  },
  {
    id: "isocyanate",
    beforeStep: "spraying or sanding fresh two-pack paint",
    line: "Two-pack paint mist causes asthma even when it cannot be seen: air-fed breathing apparatus in a booth, visor down until the clearance time is over; filter masks do not do. Best left to an equipped paint shop.",
    ...ISOCYANATE,
  },
  {
    id: "lead-paint",
    beforeStep: "sanding or stripping old paint",
    line: "Old paint may hold lead, car paint of any date included: test first, wet methods only, no dry sanding, no torch, keep children away, wash before eating; follow local waste rules.",
    ...LEAD_PAINT,
  },
  {
    id: "lead-filler",
    beforeStep: "filing or heating lead-loaded seams",
    line: "Body lead: file or pare by hand, never grind; no flame without extraction; wash hands; collect the swarf.",
    ...LEAD_AT_WORK,
  },
  {
    id: "asbestos",
    beforeStep: "opening old brakes, clutches, gaskets, undersealed panels",
    line: "Old friction and gasket material may hold asbestos: do not blow, brush dry or sand; wet or enclosed HEPA method, bag as local law says, or hand it to a licensed firm.",
    ...ASBESTOS,
  },
  {
    id: "fluoro-seal",
    beforeStep: "parts from a burnt or overheated car",
    line: "Charred seals or sticky black residue: leave alone, gloves and goggles, wash down with plenty of water (lime water where advised). The agency notes no verified injury from a burnt-out car, yet acid burns need hospital at once.",
    ...FLUORO_SEAL,
  },
  {
    id: "petrol-tank",
    beforeStep: "draining, opening, inspecting or heating a tank",
    line: "An empty tank is the dangerous one: no flame, spark or mains lamp; drain outdoors with a fuel retriever, keep vapour out of pits; welding a tank is for a firm that gas-frees and certifies it.",
    ...PETROL,
  },
  {
    id: "under-car",
    beforeStep: "looking beneath",
    line: "Never under a car on a jack alone: level hard ground, wheels chocked, rated stands with their own pins at the maker’s points.",
    ...UNDER_CAR,
  },
  {
    id: "lifting",
    beforeStep: "lifting panels, glass, wheels, hard tops",
    line: "Two people and a plan for anything over about 20 kg or wide in the wind; support the stay before unbolting a lid.",
    ...LIFTING,
  },
  {
    id: "airbag",
    beforeStep: "touching a steering wheel, dash or belt with a pyrotechnic unit",
    line: "Airbags and pretensioners are explosives: battery off and wait as the manual says, no meter on the leads, carry face outward, leave removal to trained hands; storage may need a licence.",
    ...AIRBAG,
  },
  {
    id: "battery",
    beforeStep: "working on wiring, lamps, instruments",
    line: "Disconnect the earth lead first (check polarity: some old cars are positive earth); no ring or watch; charging batteries give off explosive gas.",
    ...BATTERY,
  },
  {
    id: "refrigerant",
    beforeStep: "opening an air-conditioning line",
    line: "Refrigerant freezes skin and must not be vented: certified technician and recovery machine only.",
    ...REFRIGERANT,
  },
  {
    id: "spring",
    beforeStep: "removing coil or torsion springs",
    line: "Compressed springs kill: proper compressor, never improvised; else a workshop.",
    ...PRACTICE,
  },
  {
    id: "glass",
    beforeStep: "removing or reading old glass",
    line: "Toughened glass bursts from an edge knock: goggles, gloves, long sleeves; no scraping at the mark.",
    ...PRACTICE,
  },
  {
    id: "radium",
    beforeStep: "old instruments",
    line: "Luminous dials before about 1965 may be radium: do not open, scrape or sand; ask the radiation authority.",
    ...RADIATION,
  },
  {
    id: "magnesium",
    beforeStep: "filing or drilling light castings",
    line: "Magnesium swarf burns fiercely: test a shaving away from the car, never use water on it; use class D sand or powder.",
    ...FIRE_SERVICE,
  },
  {
    id: "solvent",
    beforeStep: "cleaning a mark",
    line: "Try soap and a soft brush first; solvent can dissolve plastics and paint and its vapour ignites: gloves, air, no smoking.",
    ...PRODUCT_SHEETS,
  },
  {
    id: "wheel",
    beforeStep: "refitting a wheel",
    line: "Tighten in a cross pattern to the maker’s torque and check again after 50 to 100 km; old or repaired alloy wheels and tyres past their age are for a specialist to pass.",
    ...WHEEL,
  },
  {
    id: "belt",
    beforeStep: "judging an old belt",
    line: "A belt that was in a crash, is frayed, or of unknown age is for looking at, not for use: replace as the law of the place requires.",
    ...BELT,
  },
  {
    id: "lamp-law",
    beforeStep: "changing lamps or glass",
    line: "Marks decide what is legal on the road: check the rules of your country before fitting.",
    ...LAMP_LAW,
  },
];
