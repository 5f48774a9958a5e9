// Marks on glass: AS items and DOT (FMVSS 205 with ANSI Z26.1), UN R43 with its roman symbols. AS items are
// performance classes and not kinds of glass; ordinary clear side glass carries no roman number.
import { GLAZING_ITEMS } from "./tables/glazing-items.ts";
import { GLAZING_SYMBOLS } from "./tables/glazing-symbols.ts";
import { basisOf, COMMON_PRACTICE, type TradeReading } from "./trade-reading.ts";

const NHTSA = "49 CFR 571.205; NHTSA letters aiam1066, nht93-4.35; 37 FR 24035";

/** The AS items named in a text ("AS1", "AS 4A"), each once, in order. */
export function readGlazingItems(text: string): readonly TradeReading[] {
  const items = [...text.slice(0, 2000).matchAll(/(?<![A-Za-z])AS[ -]?(4A|1[0-5]|[1-9])(?![\dA-Za-z])/g)];
  const wanted = [...new Set(items.map((match) => `AS${match[1]}`))];
  return wanted.flatMap((item) =>
    GLAZING_ITEMS.filter((row) => row.item === item).map((row) => ({
      reading: `${row.item}: ${row.material}; light ${row.transmission} percent; use: ${row.place}`,
      why: "an AS number is a class of performance of ANSI Z26.1, not a kind of glass: AS1 laminated, AS2 tempered is habit, not rule",
      basis: basisOf(row),
    })),
  );
}

/** What DOT, or its absence, says on glass. `hasCode`: whether DOT with a code number is there. */
export function readGlassDot(hasCode: boolean): TradeReading {
  if (hasCode) {
    return {
      reading:
        "DOT with a number: the code of the prime maker, who fabricated, laminated or tempered the pane",
      why: "the numbers belong to a published federal list that I do not hold",
      basis: NHTSA,
    };
  }
  return {
    reading:
      "no DOT number: normal on flat glass that somebody only cut; not normal on curved tempered glass made after April 1973 for a US car",
    why: "who only cuts sheet marks AS, model and own name, without DOT (in force 1 April 1973)",
    basis: NHTSA,
  };
}

/** Readings of a roman symbol of R43 ("II", "V-VI", "/P" forms); "none" is the ordinary side or rear pane. */
export function readGlazingSymbol(symbol: string): readonly TradeReading[] {
  return GLAZING_SYMBOLS.filter((row) => row.symbol === symbol).map((row) => ({
    reading: `${row.symbol === "none" ? "no roman number" : row.symbol}: ${row.meaning}`,
    why: row.remark === "" ? "additional symbol of UN Regulation 43" : row.remark,
    basis: basisOf(row),
  }));
}

/** The roman symbols in a text that also names glass or 43R; a lone I or V is taken only beside 43R. */
export function findGlazingSymbols(text: string): readonly string[] {
  const symbols = [
    ...text
      .slice(0, 2000)
      .matchAll(/(?<![\w/-])((?:I{1,3}|IV|V|VI{1,3}|IX|X|XI{1,2})(?:\/P)?|V-VI)(?![\w/-])/g),
  ];
  const found = [...new Set(symbols.map((match) => match[1] ?? ""))];
  const isBesideMark = /43\s?R|\broman\b|\bsymbol\b|\bnumeral\b/i.test(text);
  return isBesideMark
    ? found.filter((symbol) => symbol !== "I" || /\bI\b(?!\s?[a-z'])|(?:numeral|roman) I\b/.test(text))
    : [];
}

/** What "laminated" or "toughened" windscreens of UK cars had to be by April 1985. */
export const UK_1985_REMARK: TradeReading = {
  reading: "UK cars first used from 1 April 1985: windscreen and front side glass of the 1980 specification",
  why: "the Northern Ireland rule says so; Great Britain alike is common practice, no source",
  basis: "SR (NI) 1999/454, regulation 37",
};

/** Dots or bars under the letters of a word: no key is common to makers. */
export const LETTER_DOTS_REMARK: TradeReading = {
  reading: "dots or bars under letters: each letter stands for a month or a year by that maker's own key",
  why: "no key is common to makers, and I hold none",
  basis: COMMON_PRACTICE,
};
