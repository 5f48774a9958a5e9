// Signs with a known beginning: what carries one is not older. Dates as printed (a span where the source gives one).
import type { Sourced } from "./sourced.ts";

export interface DatedRequirement extends Sourced {
  readonly sign: string;
  readonly date: string;
  readonly use: string;
}

export const DATED_REQUIREMENTS: readonly DatedRequirement[] = [
  {
    sign: ">PP< style material mark",
    date: "1987-12-15",
    use: "seldom before",
    source: "ISO 1043-1 first edition 1987-12-15; ISO 11469 from 1993; common from the 1990s",
    basis: "standard",
  },
  {
    sign: "recycling triangle with 1 to 7",
    date: "1988",
    use: "not before",
    source: "plastics industry code of 1988",
    basis: "common practice",
  },
  {
    sign: "tyre TIN with four date digits",
    date: "2000",
    use: "not before about 2000",
    source: "64 FR 36807; obligatory by July 2000",
    basis: "standard",
  },
  {
    sign: "tyre TIN of any kind",
    date: "1971-05-22",
    use: "not before",
    source: "49 CFR 574",
    basis: "common practice",
  },
  {
    sign: "UTQG grades on a tyre",
    date: "1979",
    use: "not before",
    source: "49 CFR 575.104; cars tyres only; limited-production tyres exempt",
    basis: "common practice",
  },
  {
    sign: "traction grade AA",
    date: "1998-03-09",
    use: "not before",
    source: "61 FR 47437",
    basis: "standard",
  },
  {
    sign: "JWL or VIA on a wheel",
    date: "1972",
    use: "not before",
    source: "test council founded April 1972",
    basis: "standard",
  },
  {
    sign: "centre high stop lamp mark U3 or S3",
    date: "1984-08-01",
    use: "not before (US cars)",
    source: "FMVSS 108: optional then, required 1985-09-01",
    basis: "standard",
  },
  {
    sign: "side marker lamps or reflectors",
    date: "1968-01-01",
    use: "US cars",
    source: "FMVSS 108; both from 1970-01-01",
    basis: "common practice",
  },
  {
    sign: "ISO pictograms on switches",
    date: "1978-1980",
    use: "rare before",
    source: "FMVSS 101-80 (1980-09-01) and Directive 78/316",
    basis: "standard",
  },
  {
    sign: "brake hose with two stripes and DOT",
    date: "1974-09-01",
    use: "not before",
    source: "FMVSS 106-74; date as month/day/year in numerals",
    basis: "standard",
  },
  {
    sign: "belt label with year of manufacture",
    date: "1967-03-01",
    use: "US belts",
    source: "FMVSS 209",
    basis: "standard",
  },
  {
    sign: "door-edge certification label with month and year",
    date: "1969-09-01",
    use: "US cars",
    source: "49 CFR 567 (then 367)",
    basis: "standard",
  },
  {
    sign: "17-character VIN",
    date: "1981",
    use: "not before",
    source: "49 CFR 565, model year 1981; ISO 3779 first issued 1977",
    basis: "standard",
  },
  {
    sign: "third VIN character 9 in US code, fewer than 500 a year",
    date: "1981",
    use: "to 2008",
    source: "49 CFR 565 as first made",
    basis: "standard",
  },
  {
    sign: "third VIN character 9 in US code, fewer than 1,000 a year",
    date: "2008-10-27",
    use: "from",
    source: "73 FR 23367",
    basis: "standard",
  },
  {
    sign: "Unified thread in a British car",
    date: "1948-11",
    use: "not before",
    source: "accord of November 1948; makers changed through the 1950s",
    basis: "standard",
  },
  {
    sign: "metric thread in a new British design",
    date: "1965-11-23",
    use: "rare before",
    source: "BSI statement; usual from the 1970s",
    basis: "standard",
  },
  {
    sign: "CE mark on electrical accessory",
    date: "1993-1996",
    use: "not before",
    source: "EU directives",
    basis: "common practice",
  },
  {
    sign: "lower-case e mark with EC glazing",
    date: "1992",
    use: "not before",
    source: "Directive 92/22/EEC",
    basis: "standard",
  },
  {
    sign: "refrigerant R-134a label",
    date: "1991-1994",
    use: "not before",
    source: "change from R-12 complete in new cars about 1994-1996",
    basis: "common practice",
  },
  {
    sign: "blade fuses",
    date: "1976",
    use: "not before",
    source: "introduced about 1976; common from 1980s",
    basis: "common practice",
  },
  {
    sign: "asbestos-free mark on friction parts",
    date: "1980s",
    use: "not before",
    source: "national bans 1980s to 1999",
    basis: "common practice",
  },
];
