// UN Regulations under the 1958 Agreement and the day each first entered into force.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface UnRegulation extends Sourced {
  readonly number: number;
  readonly subject: string;
  readonly inForce: string;
}

const TREATY_COLLECTION = { source: "UN Treaty Collection, chapter XI-B-16", basis: "standard" } as const;
const TITLE_PAGE = { source: "UN Regulation title page", basis: "standard" } as const;

export const UN_REGULATIONS: readonly UnRegulation[] = [
  {
    number: 1,
    subject: "Headlamps, asymmetric, R2/HS1 filament lamp",
    inForce: "1960-08-08",
    ...FROM_MEMORY,
  },
  { number: 2, subject: "Filament lamps for R1 headlamps", inForce: "1960-08-08", ...FROM_MEMORY },
  { number: 3, subject: "Reflex reflectors", inForce: "1963-11-01", ...FROM_MEMORY },
  { number: 4, subject: "Rear registration plate lamps", inForce: "1964-04-15", ...FROM_MEMORY },
  { number: 5, subject: "Sealed-beam headlamps (European)", inForce: "1967-09-30", ...FROM_MEMORY },
  { number: 6, subject: "Direction indicators", inForce: "1967-10-15", ...FROM_MEMORY },
  { number: 7, subject: "Front and rear position lamps, stop lamps", inForce: "1967-10-15", ...FROM_MEMORY },
  { number: 8, subject: "Halogen headlamps H1 H2 H3", inForce: "1967-11-15", ...FROM_MEMORY },
  { number: 10, subject: "Radio interference suppression", inForce: "1969-04-01", ...FROM_MEMORY },
  { number: 14, subject: "Belt anchorages", inForce: "1970-04-01", ...FROM_MEMORY },
  { number: 16, subject: "Safety belts", inForce: "1970-12-01", ...FROM_MEMORY },
  { number: 17, subject: "Seats", inForce: "1970-12-01", ...FROM_MEMORY },
  { number: 19, subject: "Front fog lamps", inForce: "1971-03-01", ...FROM_MEMORY },
  { number: 20, subject: "Halogen headlamps H4", inForce: "1971-05-01", ...FROM_MEMORY },
  { number: 22, subject: "Motorcycle helmets", inForce: "1972-06-01", ...FROM_MEMORY },
  { number: 23, subject: "Reversing lamps", inForce: "1971-12-01", ...FROM_MEMORY },
  { number: 25, subject: "Head restraints", inForce: "1972-03-01", ...FROM_MEMORY },
  { number: 26, subject: "External projections", inForce: "1972-07-01", ...FROM_MEMORY },
  { number: 27, subject: "Warning triangles", inForce: "1972-09-15", ...FROM_MEMORY },
  { number: 28, subject: "Horns", inForce: "1973-01-15", ...FROM_MEMORY },
  { number: 30, subject: "Tyres for cars", inForce: "1975-04-01", ...FROM_MEMORY },
  { number: 31, subject: "Halogen sealed-beam headlamps", inForce: "1975-05-01", ...FROM_MEMORY },
  { number: 37, subject: "Filament lamps", inForce: "1978-02-01", ...FROM_MEMORY },
  { number: 38, subject: "Rear fog lamps", inForce: "1978-08-01", ...FROM_MEMORY },
  { number: 39, subject: "Speedometers", inForce: "1978-11-20", ...FROM_MEMORY },
  { number: 43, subject: "Safety glazing", inForce: "1981-02-15", ...FROM_MEMORY },
  { number: 44, subject: "Child restraints", inForce: "1981-02-01", ...FROM_MEMORY },
  { number: 46, subject: "Mirrors (devices for indirect vision)", inForce: "1981-09-01", ...FROM_MEMORY },
  { number: 48, subject: "Installation of lighting", inForce: "1982-01-01", ...FROM_MEMORY },
  { number: 50, subject: "Motorcycle signal lamps", inForce: "1982-06-01", ...FROM_MEMORY },
  { number: 54, subject: "Tyres for commercial vehicles", inForce: "1983-03-01", ...FROM_MEMORY },
  { number: 64, subject: "Temporary-use spare wheels and tyres", inForce: "1985-10-01", ...FROM_MEMORY },
  { number: 75, subject: "Motorcycle tyres", inForce: "1988-04-01", ...TREATY_COLLECTION },
  { number: 77, subject: "Parking lamps", inForce: "1988-09-30", ...FROM_MEMORY },
  { number: 87, subject: "Daytime running lamps", inForce: "1995-11-01", ...FROM_MEMORY },
  { number: 90, subject: "Replacement brake linings", inForce: "1992-11-01", ...FROM_MEMORY },
  { number: 91, subject: "Side marker lamps", inForce: "1993-10-15", ...FROM_MEMORY },
  { number: 98, subject: "Gas-discharge headlamps", inForce: "1996-04-15", ...FROM_MEMORY },
  { number: 99, subject: "Gas-discharge light sources", inForce: "1996-04-15", ...FROM_MEMORY },
  { number: 104, subject: "Retro-reflective vehicle markings", inForce: "1998-01-15", ...FROM_MEMORY },
  {
    number: 112,
    subject: "Headlamps, asymmetric (successor of 1, 8, 20)",
    inForce: "2001-09-21",
    ...FROM_MEMORY,
  },
  { number: 113, subject: "Headlamps, symmetric", inForce: "2001-09-21", ...FROM_MEMORY },
  { number: 117, subject: "Tyre rolling noise, wet grip", inForce: "2005-04-06", ...FROM_MEMORY },
  { number: 119, subject: "Cornering lamps", inForce: "2005-04-06", ...FROM_MEMORY },
  { number: 123, subject: "Adaptive front lighting", inForce: "2007-02-02", ...FROM_MEMORY },
  { number: 124, subject: "Replacement wheels", inForce: "2006-07-01", ...FROM_MEMORY },
  { number: 148, subject: "Light-signalling devices (merged)", inForce: "2019-11-15", ...TITLE_PAGE },
  { number: 149, subject: "Road illumination devices (merged)", inForce: "2019-11-15", ...TITLE_PAGE },
];
