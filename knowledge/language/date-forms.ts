// The forms of dates as people say them: "2 november 1981", "Nov '81", "11/81", "early 1980", "summer of 80",
// "between 79 and 81", "week 31 81". Own grammar: a general date reader finds full dates only and fills gaps from
// today's clock.
import { type Interval, yearInterval } from "../calendar/interval.ts";
import { day, isYearOfCars, monthOf, nearby, span, week, widen } from "./date-spans.ts";
import {
  type DateEra,
  type DateForm,
  fullYear,
  type Groups,
  month,
  numberOf,
  of,
  unit,
  year,
} from "./date-words.ts";
import { partOfDecade, partOfYear } from "./parts-of-year.ts";
import { yearFirstForms, yearThenForms } from "./year-first-forms.ts";

const part = `(?<part>very early|very late|early to mid|mid to late|early|mid(?:dle)?(?: of| part of)?|late(?: in)?|(?:the )?(?:beginning|start) of|(?:the )?end of|(?:the )?first half of|(?:the )?second half of|first quarter of|second quarter of|third quarter of|(?:last|fourth) quarter of|q1|q2|q3|q4|spring(?: of)?|summer(?: of)?|autumn(?: of)?|fall(?: of)?|winter(?: of)?|easter|christmas)`;
const about = String.raw`(?:\b(?<about>about|around|circa|c\.?|ca\.?|approx(?:imately)?\.?|roughly)|(?<sign>~)) ?`;

/** All forms, the more particular first: what one has taken no later one reads. */
export const dateForms: readonly DateForm[] = [
  ...yearFirstForms,
  {
    shape: "day",
    pattern: new RegExp(
      String.raw`\b(?<d>\d{1,2})(?:st|nd|rd|th)? ?(?:of )?[-/]?${month("m")}${of}${year("y")}`,
      "g",
    ),
    read: ({ d, m, y }, era) => day(fullYear(y, era), numberOf(m), Number(d)),
  },
  {
    shape: "day",
    pattern: new RegExp(
      String.raw`\b${month("m")} (?<d>\d{1,2})(?:st|nd|rd|th)?,? (?<y>(?:19|20)\d\d|'\d\d)\b`,
      "g",
    ),
    read: ({ d, m, y }, era) => day(fullYear(y, era), numberOf(m), Number(d)),
  },
  {
    shape: "day",
    pattern:
      /(?<![\d/.-])(?<d>\d{1,2})(?<sign>[/.-])(?<m>\d{1,2})\k<sign>(?<y>(?:19|20)\d\d|\d\d)(?![\d/]|-\d|\.\d)/g,
    read: ({ d, m, y }, era) =>
      day(fullYear(y, era), Number(m), Number(d)) ?? day(fullYear(y, era), Number(d), Number(m)),
  },
  {
    // "Pencilled under the resin, '14 2 79'": three figures where something was written.
    shape: "day",
    pattern:
      /(?<=\b(?:pencil|wrote|written|dated?|signed|ink|scrib|scratch|marker|felt)\w*\b[^.;\d]{0,40}[ "'])(?<d>\d{1,2}) (?<m>\d{1,2}) (?<y>[6-9]\d)(?![\d/]|[.,]\d)/g,
    read: ({ d, m, y }, era) => day(fullYear(y, era), Number(m), Number(d)),
  },
  {
    shape: "week",
    pattern: new RegExp(
      String.raw`\b(?<w>\d{1,2})(?:(?:st|nd|rd|th),? (?:week|wk)|\. ?kw),?(?: of| in)? ${year("y")}`,
      "g",
    ),
    read: ({ w, y }, era) => week(fullYear(y, era), Number(w)),
  },
  {
    shape: "week",
    pattern: new RegExp(
      String.raw`\b(?:week|wk|kw|w)\.? ?(?:no\.? ?|number )?(?<w>\d{1,2})(?:,? ?(?:of|in|and|year|yr)?,? ?(?:the )?(?:year )?|[/.-])${year("y")}`,
      "g",
    ),
    read: ({ w, y }, era) => week(fullYear(y, era), Number(w)),
  },
  {
    shape: "range",
    pattern: new RegExp(
      String.raw`\b${month("m")}(?: ?(?<y>'?\d{2}|(?:19|20)\d\d))? ?(?:-|to|/|or|and|through|until) ?${month("m2")}${of}${year("y2")}`,
      "g",
    ),
    read: ({ m, y, m2, y2 }, era) => {
      const last = fullYear(y2, era);
      const first = y === undefined ? last : fullYear(y, era);
      return span(monthOf(first, numberOf(m)), monthOf(last, numberOf(m2)));
    },
  },
  {
    shape: "month",
    pattern: new RegExp(
      String.raw`(?:${about})?(?<half>\b(?:early|mid|late|end of|beginning of|start of) )?\b${month("m")}${of}${year("y")}`,
      "g",
    ),
    read: ({ m, y, about: loosely, sign }, era) =>
      widen(monthOf(fullYear(y, era), numberOf(m)), (loosely ?? sign) === undefined ? 0 : 1),
  },
  ...yearThenForms,
  {
    shape: "range",
    pattern: new RegExp(
      String.raw`\b(?:(?:between|from|either|somewhere between|sometime between) ?)?(?:(?<p1>early|mid|late)[ -])?(?<y>'?\d{2}|(?:19|20)\d\d) ?(?<sign>-|to|and|or|until|through|\/) ?(?:(?<p2>early|mid|late)[ -])?${year("y2")}`,
      "g",
    ),
    read: readYearRange,
  },
  {
    shape: "pair",
    pattern:
      /(?<![\d/.,-])(?<m>\d{1,2}) ?[/-] ?(?<y>(?:19|20)\d\d|'?\d\d)(?![\d/]|(?<=[/-](?:16|32|64))"|-\d|[.,]\d| ?(?:in(?! (?:the|a|pencil|ink|crayon|chalk|resin|white|black|red|yellow|blue|raised|small|big|it|my|his|by|felt|biro|marker|pen|wax|grease|paint|tiny|neat))|inch|inches|mm|cm|ths?)\b)/g,
    read: ({ m, y }, era) => monthOf(fullYear(y, era), Number(m)) ?? week(fullYear(y, era), Number(m)),
  },
  {
    shape: "pair",
    pattern:
      /(?<=\b(?:dated?|stamp(?:ed)?|dial|says|reads|shows|marked|code|is|week|cast|read)[: ]{1,2}(?:in |on [\w ]{1,16} )?)(?<m>\d{1,2}) (?<y>[4-9]\d)\b(?! (?:mm|cm|kg|g|in|inch)\b)/g,
    read: ({ m, y }, era) => monthOf(fullYear(y, era), Number(m)) ?? week(fullYear(y, era), Number(m)),
  },
  {
    // "31 81 is what I make out", "22 80, so spring": a mark that opens its clause.
    shape: "pair",
    pattern:
      /(?<=(?:^|[.;:,!?\n] ?|\band )(?: )?)(?<m>\d{1,2}) (?<y>[6-9]\d)(?= ?(?:[.,;:!?)\n]|$)| (?:is|on|pops? up|comes? up|shows?|appears?|in the|at the|by the|under|beside|next to|so|and|it|as|was|punched|stamped|etched)\b)/g,
    read: ({ m, y }, era) =>
      nearby(monthOf(fullYear(y, era), Number(m)) ?? week(fullYear(y, era), Number(m)), era.production),
  },
  {
    shape: "pair",
    pattern:
      /(?<=\b(?:dated?|stamp(?:ed)?|says|reads|marked|wrote|written|pencil\w*)[: ]{1,2}(?:in |is )?["']?)(?<m>0?[1-9]|1[0-2])\.(?<y>[4-9]\d)(?![\d/]|[.,]\d| ?(?:mm|cm|kg|g|lbs?|inch(?:es)?)\b)/g,
    read: ({ m, y }, era) => monthOf(fullYear(y, era), Number(m)),
  },
  {
    // "11.79 punched in it", "etched in the corner: 12.80".
    shape: "pair",
    pattern:
      /(?:(?<=\b(?:etched|stamped|punched|pencilled|scratched|inked|engraved|written)\b[^.;\d]{0,40}[: ])|(?<![\d/.,-])(?=\d{1,2}\.\d\d (?:is |was )?(?:stamped|punched|pencilled|scratched|inked|engraved|written|etched)))(?<m>0?[1-9]|1[0-2])\.(?<y>[6-9]\d)(?![\d/]|[.,]\d| ?(?:mm|cm|kg|g|lbs?|inch(?:es)?)\b)/g,
    read: ({ m, y }, era) => monthOf(fullYear(y, era), Number(m)),
  },
  {
    // "Hub face stamped 2280", "stamp: 0479"; "stamped 1981" is the year.
    shape: "pair",
    pattern:
      /(?<=\b(?:stamp(?:ed)?|punched|date code)\b(?: (?:is|on|in|my|the|steering|wheel|says|reads|it|with|face|hub|spoke)){0,5}[: ]{1,2})(?<m>\d\d)(?<y>[6-9]\d)(?![\w/]|[.,-]\d)/g,
    read: ({ m, y }, era) =>
      isYearOfCars(`${m}${y}`, era.production)
        ? undefined
        : (monthOf(fullYear(y, era), Number(m)) ?? week(fullYear(y, era), Number(m))),
  },
  {
    shape: "pair",
    pattern: /(?<![\d/.,-])(?<m>\d{1,2})\.(?<y>19\d\d)(?![\d/]|[.,]\d)/g,
    read: ({ m, y }) => monthOf(Number(y), Number(m)),
  },
  {
    shape: "season",
    pattern: new RegExp(String.raw`\b${part}[ -](?:in |of |the )*${year("y")}(?!'?s\b)`, "g"),
    read: ({ part: piece, y }, era) => partOfYear(piece ?? "", fullYear(y, era)),
  },
  {
    shape: "range",
    pattern: /\b(?<part>early|mid|late)?(?:[ -](?:to[ -]mid |the )?)?(?:19)?'?(?<decade>[4-9])0'?s\b/g,
    read: ({ part: piece, decade }) => partOfDecade(piece, 1900 + 10 * Number(decade)),
  },
  {
    shape: "range",
    pattern:
      /\b(?:(?<part>early|mid|late)[ -])?(?:the )?(?<decade>fifties|sixties|seventies|eighties|nineties)\b/g,
    read: ({ part: piece, decade }) =>
      partOfDecade(
        piece,
        1950 + 10 * ["fifties", "sixties", "seventies", "eighties", "nineties"].indexOf(decade ?? ""),
      ),
  },
  {
    shape: "year",
    pattern: new RegExp(
      String.raw`(?:${about})?(?<![\d/.,'•#-])(?<y>(?:19|20)\d\d)(?![\d/"•]|[.,]\d|-\d| ?(?:${unit})\b)`,
      "g",
    ),
    read: ({ y, about: loosely, sign }) =>
      widen(yearInterval(Number(y)), (loosely ?? sign) === undefined ? 0 : 12),
  },
  {
    shape: "short-year",
    pattern:
      /(?<![\w/.,"•#-]|\bx |\bby )(?<y>'?\d\d)(?![\d/"'•%]|[.,]\d|-\d| ?(?:mm|cm|kg|g|in|inch|inches|lbs?|oz|ft|thou|mil|bhp|mph|quid|pounds|euros?|screws?|studs?|bolts?|of|years?|yrs?|holes?|th|st|nd|rd|percent)\b)/g,
    read: ({ y }, era) => yearInterval(fullYear(y, era)),
  },
];

/** "79 to 81", "late 79 or early 80", "1979-81"; "11/81" and other pairs that are no two years are not read here. */
function readYearRange(groups: Groups, era: DateEra): Interval | undefined {
  const [first, last] = [fullYear(groups.y, era), fullYear(groups.y2, era)];
  const isPlausible = first < last && last - first < 40 && first > 1930;
  const isShortSlash = groups.sign === "/" && (groups.y ?? "").length < 4 && last - first > 3;
  if (!isPlausible || isShortSlash) return undefined;
  return span(wholeOrPart(groups.p1, first), wholeOrPart(groups.p2, last));
}

function wholeOrPart(piece: string | undefined, ofYear: number): Interval | undefined {
  return piece === undefined ? yearInterval(ofYear) : partOfYear(piece, ofYear);
}
