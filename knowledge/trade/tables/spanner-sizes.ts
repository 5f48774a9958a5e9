// Hexagons across flats by thread series; inches unless the text says mm.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface SpannerSize extends Sourced {
  readonly series: string;
  readonly size: string;
  readonly acrossFlats: string;
  readonly alternative: string;
  readonly note: string;
}

export const SPANNER_SIZES: readonly SpannerSize[] = [
  { series: "BSW", size: "1/8", acrossFlats: "0.338", alternative: "", note: "W 1/8", ...FROM_MEMORY },
  { series: "BSW", size: "3/16", acrossFlats: "0.445", alternative: "", note: "W 3/16", ...FROM_MEMORY },
  {
    series: "BSW",
    size: "1/4",
    acrossFlats: "0.525",
    alternative: "0.445",
    note: "W 1/4 (war-time and later: one size down)",
    ...FROM_MEMORY,
  },
  { series: "BSW", size: "5/16", acrossFlats: "0.600", alternative: "0.525", note: "W 5/16", ...FROM_MEMORY },
  { series: "BSW", size: "3/8", acrossFlats: "0.710", alternative: "0.600", note: "W 3/8", ...FROM_MEMORY },
  { series: "BSW", size: "7/16", acrossFlats: "0.820", alternative: "0.710", note: "W 7/16", ...FROM_MEMORY },
  { series: "BSW", size: "1/2", acrossFlats: "0.920", alternative: "0.820", note: "W 1/2", ...FROM_MEMORY },
  { series: "BSF", size: "1/4", acrossFlats: "0.445", alternative: "", note: "W 3/16", ...FROM_MEMORY },
  { series: "BSF", size: "5/16", acrossFlats: "0.525", alternative: "", note: "W 1/4", ...FROM_MEMORY },
  { series: "BSF", size: "3/8", acrossFlats: "0.600", alternative: "", note: "W 5/16", ...FROM_MEMORY },
  { series: "BSF", size: "7/16", acrossFlats: "0.710", alternative: "", note: "W 3/8", ...FROM_MEMORY },
  { series: "BSF", size: "1/2", acrossFlats: "0.820", alternative: "", note: "W 7/16", ...FROM_MEMORY },
  { series: "BA", size: "0BA", acrossFlats: "0.413", alternative: "", note: "", ...FROM_MEMORY },
  { series: "BA", size: "2BA", acrossFlats: "0.324", alternative: "", note: "", ...FROM_MEMORY },
  { series: "BA", size: "4BA", acrossFlats: "0.248", alternative: "", note: "", ...FROM_MEMORY },
  { series: "BA", size: "6BA", acrossFlats: "0.193", alternative: "", note: "", ...FROM_MEMORY },
  { series: "UNC/UNF", size: "1/4", acrossFlats: "0.4375", alternative: "", note: "7/16 AF", ...FROM_MEMORY },
  { series: "UNC/UNF", size: "5/16", acrossFlats: "0.500", alternative: "", note: "1/2 AF", ...FROM_MEMORY },
  { series: "UNC/UNF", size: "3/8", acrossFlats: "0.5625", alternative: "", note: "9/16 AF", ...FROM_MEMORY },
  { series: "UNC/UNF", size: "7/16", acrossFlats: "0.625", alternative: "", note: "5/8 AF", ...FROM_MEMORY },
  { series: "UNC/UNF", size: "1/2", acrossFlats: "0.750", alternative: "", note: "3/4 AF", ...FROM_MEMORY },
  {
    series: "ISO metric",
    size: "M5",
    acrossFlats: "ISO 272 8 mm",
    alternative: "DIN before about 1990 8 mm",
    note: "Japanese small series 8 mm",
    ...FROM_MEMORY,
  },
  {
    series: "ISO metric",
    size: "M6",
    acrossFlats: "ISO 272 10 mm",
    alternative: "DIN before about 1990 10 mm",
    note: "Japanese small series 10 mm",
    ...FROM_MEMORY,
  },
  {
    series: "ISO metric",
    size: "M8",
    acrossFlats: "ISO 272 13 mm",
    alternative: "DIN before about 1990 13 mm",
    note: "Japanese small series 12 mm",
    ...FROM_MEMORY,
  },
  {
    series: "ISO metric",
    size: "M10",
    acrossFlats: "ISO 272 16 mm",
    alternative: "DIN before about 1990 17 mm",
    note: "Japanese small series 14 mm",
    ...FROM_MEMORY,
  },
  {
    series: "ISO metric",
    size: "M12",
    acrossFlats: "ISO 272 18 mm",
    alternative: "DIN before about 1990 19 mm",
    note: "Japanese small series 17 mm",
    ...FROM_MEMORY,
  },
  {
    series: "ISO metric",
    size: "M14",
    acrossFlats: "ISO 272 21 mm",
    alternative: "DIN before about 1990 22 mm",
    note: "Japanese small series 19 mm",
    ...FROM_MEMORY,
  },
];
