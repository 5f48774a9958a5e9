// Ways of writing a tyre size, by era.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface TyreSizeFormat extends Sourced {
  readonly system: string;
  readonly example: string;
  readonly era: string;
  readonly reading: string;
}

const SIZING_ACCOUNT = { source: "Published account of tyre sizing systems", basis: "standard" } as const;

export const TYRE_SIZE_FORMATS: readonly TyreSizeFormat[] = [
  {
    system: "large-section inch",
    example: "710x90",
    era: "to about 1930",
    reading: "overall diameter mm x section mm",
    ...FROM_MEMORY,
  },
  {
    system: "low-pressure inch",
    example: "6.40-15",
    era: "to late 1960s, returning on classic-pattern tyres",
    reading: "section inches - rim inches; aspect about 92 if the width ends in 0, about 82 if not",
    ...SIZING_ACCOUNT,
  },
  {
    system: "cross-ply with speed",
    example: "5.60 S 15",
    era: "about 1960 to 1975",
    reading: "S up to 175, H up to 200 and V over 200 km/h for cross-ply (from memory)",
    ...FROM_MEMORY,
  },
  {
    system: "metric radial, no ratio",
    example: "165 R 15; 165 SR 15; 175 HR 14",
    era: "1950s to 1980s",
    reading: "section mm, aspect about 82 (80 in later lists), rim inches",
    ...SIZING_ACCOUNT,
  },
  {
    system: "metric radial with ratio",
    example: "185/70 VR 15; 205/60 HR 15",
    era: "about 1967 to 1990",
    reading: "speed letter inside the size",
    ...SIZING_ACCOUNT,
  },
  {
    system: "alpha-numeric",
    example: "E70-14; FR78-15; G78-15",
    era: "1968 to about 1980, North America",
    reading: "load letter, R if radial, aspect, rim",
    ...SIZING_ACCOUNT,
  },
  {
    system: "P-metric",
    example: "P205/70R14",
    era: "from 1976",
    reading: "P passenger car; R radial, B bias-belted, D diagonal",
    ...SIZING_ACCOUNT,
  },
  {
    system: "ISO metric",
    example: "195/65 R 15 91 V",
    era: "from late 1970s, general by 1990",
    reading: "size plus service description (load index, speed symbol)",
    ...SIZING_ACCOUNT,
  },
  {
    system: "millimetric",
    example: "190/65 R 390; 220/55 VR 390",
    era: "about 1975 to 1990s",
    reading: "rim diameter in mm: needs its own rim",
    ...SIZING_ACCOUNT,
  },
  {
    system: "temporary spare",
    example: "T125/70 D 15",
    era: "from about 1980",
    reading: "T temporary use; 420 kPa and 80 km/h usual",
    ...FROM_MEMORY,
  },
  {
    system: "light truck flotation",
    example: "31x10.50R15LT",
    era: "from 1970s",
    reading: "overall inches x width inches, rim inches",
    ...FROM_MEMORY,
  },
];
