// Paint systems, when they were in use and how they show.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface PaintSystem extends Sourced {
  readonly system: string;
  readonly period: string;
  readonly signs: string;
}

export const PAINT_SYSTEMS: readonly PaintSystem[] = [
  {
    system: "nitrocellulose lacquer",
    period: "1924 to about 1965",
    signs: "thin, dissolves in thinner, crazes, polishes to colour",
    ...FROM_MEMORY,
  },
  {
    system: "synthetic (alkyd) enamel",
    period: "1930 to 1990",
    signs: "one thick coat, chalks, orange peel",
    ...FROM_MEMORY,
  },
  {
    system: "acrylic lacquer",
    period: "1956 to about 1985",
    signs: "thin coats, thinner softens, checks in lines",
    ...FROM_MEMORY,
  },
  {
    system: "acrylic or baked enamel",
    period: "1960 to 1995",
    signs: "hard, not softened by thinner at once",
    ...FROM_MEMORY,
  },
  {
    system: "two-pack polyurethane or acrylic",
    period: "1970 on",
    signs: "not touched by thinner, high gloss build",
    ...FROM_MEMORY,
  },
  {
    system: "base coat and clear",
    period: "metallics late 1970s, general by 1990",
    signs: "wet-sand water stays white; edge shows a clear layer",
    ...FROM_MEMORY,
  },
  { system: "water-borne base", period: "1990s on", signs: "as base and clear", ...FROM_MEMORY },
  {
    system: "gel coat in colour, no paint",
    period: "1953 on",
    signs: "0.4-0.8 mm, colour through, chips show glass; dulls and polishes back",
    ...FROM_MEMORY,
  },
  {
    system: "grey or red oxide primer",
    period: "to 1980s",
    signs: "many works layers: primer, surfacer, colour",
    ...FROM_MEMORY,
  },
  {
    system: "electro-coat primer",
    period: "1963 on, general 1980s",
    signs: "thin even film inside box sections and holes; small works seldom had it",
    ...FROM_MEMORY,
  },
];
