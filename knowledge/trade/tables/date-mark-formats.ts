// Forms of date marks in use on car parts, for showing; the decoders stand in ../date-marks.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface DateMarkFormat extends Sourced {
  readonly form: string;
  readonly example: string;
  readonly reading: string;
  readonly period: string;
}

const TIN_FOUR = { source: "49 CFR 574; 64 FR 36807", basis: "standard" } as const;
const TIN_THREE = { source: "49 CFR 574; 63 FR 55832", basis: "standard" } as const;
const TYRE_GUIDES = { source: "two published tyre guides", basis: "standard" } as const;
const TIN_RETREAD = { source: "49 CFR 574.5; 80 FR 19553", basis: "standard" } as const;
const GLASS_GUIDES = { source: "two published glass-marking guides", basis: "standard" } as const;
const INSERT_MAKERS = {
  source: "makers of date inserts; reading from common practice",
  basis: "standard",
} as const;
const MARKING_MAKER = { source: "marking-machine maker page", basis: "standard" } as const;
const BRAKE_HOSE = { source: "FMVSS 106 S5.2.2; NHTSA nht75-1.46", basis: "standard" } as const;
const BELT_LABEL = { source: "FMVSS 209 S4.1(j)", basis: "standard" } as const;
const CERTIFICATION = { source: "49 CFR 567; NHTSA aiam0206", basis: "standard" } as const;

export const DATE_MARK_FORMATS: readonly DateMarkFormat[] = [
  {
    form: "tyre TIN, four digits",
    example: "DOT .... 3107",
    reading: "week 31 of 2007",
    period: "2000 on",
    ...TIN_FOUR,
  },
  {
    form: "tyre TIN, three digits",
    example: "DOT .... 318",
    reading: "week 31 of 1978, 1988 or 1998",
    period: "1971 to mid 2000",
    ...TIN_THREE,
  },
  {
    form: "tyre TIN, three digits and triangle",
    example: "318 with triangle",
    reading: "week 31 of 1998 (common practice for the 1990s)",
    period: "1990s",
    ...TYRE_GUIDES,
  },
  {
    form: "retread TIN",
    example: "R or 4-symbol plant and date",
    reading: "date of retreading, not of the casing",
    period: "",
    ...TIN_RETREAD,
  },
  {
    form: "glass, figure with dots, reading A",
    example: "..7 or 7..",
    reading:
      "dots before: month 7 minus count; dots after: month 13 minus count; figure is last digit of year",
    period: "common practice",
    ...FROM_MEMORY,
  },
  {
    form: "glass, figure with dots, reading B",
    example: "..7 or 7..",
    reading: "dots before: month equals count; dots after: 6 plus count",
    period: "published guide; other makers",
    ...GLASS_GUIDES,
  },
  { form: "glass, month over year", example: "4/82", reading: "April 1982", period: "", ...FROM_MEMORY },
  {
    form: "glass, dots or bars under letters of a word",
    example: "",
    reading: "each letter stands for a month or a year: needs that maker’s key",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "moulded clock",
    example: "ring 1 to 12, arrow, two-digit centre",
    reading: "month at the arrow tip, year in the centre",
    period: "1970s on",
    ...INSERT_MAKERS,
  },
  {
    form: "moulded twin clock",
    example: "one ring of months, one of years",
    reading: "tip of each arrow",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "dot grid",
    example: "row of years, dots beside each",
    reading: "last year with dots; count of dots is the month in it",
    period: "1960s on",
    ...FROM_MEMORY,
  },
  {
    form: "day clock",
    example: "1 to 31 ring",
    reading: "day, with a month and a year clock beside it",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "casting dial",
    example: "ring with studs or screw heads",
    reading: "removed or added stud marks month",
    period: "wheels, housings",
    ...FROM_MEMORY,
  },
  {
    form: "Julian",
    example: "1278",
    reading: "day 127 of a year ending in 8 (JJJY)",
    period: "",
    ...MARKING_MAKER,
  },
  {
    form: "Julian, year first",
    example: "8127",
    reading: "day 127 of a year ending in 8 (YJJJ)",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "week/year",
    example: "31/81 or 3181",
    reading: "week 31 of 1981 (31 cannot be a month; 07/81 stays open: week 7 or July)",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "month/year",
    example: "7/79 or 779",
    reading: "July 1979",
    period: "instruments, coils, relays",
    ...FROM_MEMORY,
  },
  {
    form: "month letter and year figure",
    example: "G9",
    reading: "July of a year ending in 9 (A January; I sometimes left out)",
    period: "castings, electrical",
    ...FROM_MEMORY,
  },
  {
    form: "quarter/year",
    example: "2 74 or II/74",
    reading: "second quarter of 1974",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "brake hose",
    example: "10/1/74",
    reading: "1 October 1974 (month/day/year by rule)",
    period: "1974 on",
    ...BRAKE_HOSE,
  },
  {
    form: "belt label",
    example: "1983 or 02 83",
    reading: "year by rule, month by practice",
    period: "1967 on",
    ...BELT_LABEL,
  },
  {
    form: "US certification label",
    example: "04/83",
    reading: "month and year the car was finished",
    period: "1969 on",
    ...CERTIFICATION,
  },
  {
    form: "roman and figures on body or trim",
    example: "IV 71",
    reading: "April 1971, chalk or grease pencil",
    period: "",
    ...FROM_MEMORY,
  },
  {
    form: "capacitor, relay, chip",
    example: "8127",
    reading: "week 27 of 1981 (YYWW)",
    period: "1970s on",
    ...FROM_MEMORY,
  },
];
