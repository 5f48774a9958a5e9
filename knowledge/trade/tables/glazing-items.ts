// Items of ANSI Z26.1 as used by FMVSS 205: performance classes, not kinds of glass.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface GlazingItem extends Sourced {
  readonly item: string;
  readonly material: string;
  readonly transmission: string;
  readonly place: string;
}

const NHTSA_LETTERS = { source: "NHTSA interpretation letters on FMVSS 205", basis: "standard" } as const;
const FEDERAL_REGISTER_1996 = { source: "61 FR 41739", basis: "standard" } as const;
const NHTSA_1973 = { source: "NHTSA letter of 1973", basis: "standard" } as const;

export const GLAZING_ITEMS: readonly GlazingItem[] = [
  {
    item: "AS1",
    material: "glass, in practice laminated",
    transmission: "70 or more",
    place: "anywhere, windshield included",
    ...NHTSA_LETTERS,
  },
  {
    item: "AS2",
    material: "glass, laminated or tempered",
    transmission: "70 or more",
    place: "anywhere except windshields",
    ...NHTSA_LETTERS,
  },
  {
    item: "AS3",
    material: "glass, laminated or tempered",
    transmission: "may be under 70",
    place:
      "not windshields; not where needed for driving vision (in passenger cars: no window at driver vision level)",
    ...NHTSA_LETTERS,
  },
  {
    item: "AS4",
    material: "rigid plastics",
    transmission: "70 or more",
    place: "listed places only: partitions, roof, auxiliary, some rear windows of open cars",
    ...FROM_MEMORY,
  },
  {
    item: "AS4A",
    material: "rigid plastics",
    transmission: "70 or more",
    place: "side windows rearward of the C pillar; allowed from 1996-09-11",
    ...FEDERAL_REGISTER_1996,
  },
  {
    item: "AS5",
    material: "rigid plastics",
    transmission: "may be under 70",
    place: "as AS4 but not at levels needed for driving vision",
    ...FROM_MEMORY,
  },
  {
    item: "AS6",
    material: "flexible plastics",
    transmission: "70 or more",
    place: "soft-top rear windows, side curtains, motorcycle screens",
    ...FROM_MEMORY,
  },
  {
    item: "AS7",
    material: "flexible plastics",
    transmission: "may be under 70",
    place: "as AS6 but not at levels needed for driving vision",
    ...FROM_MEMORY,
  },
  {
    item: "AS8",
    material: "wired glass",
    transmission: "70 or more",
    place: "buses, trucks; not car windshields",
    ...FROM_MEMORY,
  },
  {
    item: "AS9",
    material: "wired glass",
    transmission: "may be under 70",
    place: "as AS8, not at vision levels",
    ...FROM_MEMORY,
  },
  {
    item: "AS10",
    material: "bullet-resistant glass",
    transmission: "70 or more",
    place: "anywhere",
    ...FROM_MEMORY,
  },
  {
    item: "AS11",
    material: "bullet-resistant glass or plastics (A, B, C)",
    transmission: "may be under 70",
    place: "special vehicles",
    ...FROM_MEMORY,
  },
  {
    item: "AS12",
    material: "rigid plastics",
    transmission: "70 or more",
    place: "as AS4 (abrasion easier); added by FMVSS 205",
    ...NHTSA_1973,
  },
  {
    item: "AS13",
    material: "flexible plastics",
    transmission: "may be under 70",
    place: "as AS6/7; added by FMVSS 205",
    ...NHTSA_1973,
  },
  {
    item: "AS14",
    material: "glass-plastics laminate",
    transmission: "70 or more",
    place: "anywhere, plastics face inside",
    ...FROM_MEMORY,
  },
  {
    item: "AS15",
    material: "glass-plastics, annealed or tempered (A, B)",
    transmission: "70 or more",
    place: "anywhere except windshields",
    ...FROM_MEMORY,
  },
];
