// Additional symbols beside a UN R43 approval mark.
import type { Sourced } from "./sourced.ts";

export interface GlazingSymbol extends Sourced {
  readonly symbol: string;
  readonly meaning: string;
  readonly remark: string;
}

const GLASS_GUIDES = { source: "Three published glass-marking guides agree", basis: "standard" } as const;
const R43_FROM_MEMORY = { source: "UN R43 paragraph 5.5, from memory", basis: "common practice" } as const;
const AMENDMENT_2018 = { source: "ECE/TRANS/WP.29/2018/122", basis: "standard" } as const;

export const GLAZING_SYMBOLS: readonly GlazingSymbol[] = [
  { symbol: "I", meaning: "toughened windscreen", remark: "", ...GLASS_GUIDES },
  { symbol: "I/P", meaning: "toughened windscreen, plastics-faced inside", remark: "", ...R43_FROM_MEMORY },
  { symbol: "II", meaning: "ordinary laminated windscreen", remark: "", ...GLASS_GUIDES },
  {
    symbol: "II/P",
    meaning: "ordinary laminated windscreen, plastics-faced",
    remark: "",
    ...R43_FROM_MEMORY,
  },
  { symbol: "III", meaning: "treated laminated windscreen", remark: "", ...GLASS_GUIDES },
  {
    symbol: "III/P",
    meaning: "treated laminated windscreen, plastics-faced",
    remark: "",
    ...R43_FROM_MEMORY,
  },
  {
    symbol: "IV",
    meaning: "glass-plastics windscreen (published guides say plastics)",
    remark: "",
    ...GLASS_GUIDES,
  },
  {
    symbol: "V",
    meaning: "not a windscreen; light transmission under 70 percent",
    remark: "",
    ...GLASS_GUIDES,
  },
  {
    symbol: "V-VI",
    meaning: "double unit, light transmission under 70 percent",
    remark: "symbols are joined by a hyphen",
    ...GLASS_GUIDES,
  },
  { symbol: "VI", meaning: "multiple (double) glazed unit", remark: "", ...R43_FROM_MEMORY },
  {
    symbol: "VII",
    meaning: "uniformly toughened pane usable as windscreen of slow vehicles",
    remark: "tractors, works vehicles",
    ...R43_FROM_MEMORY,
  },
  {
    symbol: "VIII",
    meaning: "rigid plastics pane",
    remark: "with /A /B /C and /L or /M",
    ...R43_FROM_MEMORY,
  },
  { symbol: "IX", meaning: "flexible plastics pane", remark: "", ...R43_FROM_MEMORY },
  { symbol: "X", meaning: "rigid plastics double-glazed unit", remark: "", ...R43_FROM_MEMORY },
  {
    symbol: "XI",
    meaning: "laminated pane, not a windscreen",
    remark: "later amendment; absent on early laminated side glass",
    ...R43_FROM_MEMORY,
  },
  {
    symbol: "XII",
    meaning: "glass-plastics pane, not a windscreen",
    remark: "later amendment",
    ...R43_FROM_MEMORY,
  },
  {
    symbol: "none",
    meaning: "uniformly toughened pane, 70 percent or more, not a windscreen",
    remark: "the ordinary side or rear window",
    ...GLASS_GUIDES,
  },
  { symbol: "/A", meaning: "plastics: forward facing allowed", remark: "", ...R43_FROM_MEMORY },
  { symbol: "/B", meaning: "plastics: sides, rear, roof", remark: "", ...R43_FROM_MEMORY },
  { symbol: "/C", meaning: "plastics: little or no chance of head impact", remark: "", ...R43_FROM_MEMORY },
  {
    symbol: "/L",
    meaning: "plastics: abrasion and wiping requirement met (field of vision)",
    remark: "",
    ...R43_FROM_MEMORY,
  },
  { symbol: "/M", meaning: "plastics: lower abrasion requirement", remark: "", ...R43_FROM_MEMORY },
  {
    symbol: "/D",
    meaning: "laminated, extra ball and headform test",
    remark: "amendment of 2018",
    ...AMENDMENT_2018,
  },
];
