// The date at the end of a tyre identification number. Three figures WWY until mid 2000 (63 FR 55832), four
// WWYY after the rule of 8 July 1999 (64 FR 36807); numbers required since 1971. Weeks are Sunday to Saturday.
// Pages that read 799 as July 1999 are wrong: 79 is no week, and 1299 is week 12 of 1999.
import { type Interval, intersect, monthStart } from "../../calendar/interval.ts";
import { tyreWeekInterval } from "../../calendar/tyre-week.ts";
import { type DateMarkReading, yearsEnding } from "./date-mark-reading.ts";

const THREE_FIGURES: Interval = { from: monthStart(1971, 1), to: monthStart(2000, 8) };
const FOUR_FIGURES_FROM = monthStart(1999, 1);
const NINETIES: Interval = { from: monthStart(1990, 1), to: monthStart(2000, 1) };

interface TyreCode {
  readonly week: number;
  readonly yearFigures: string;
  readonly hasTriangle: boolean;
}

/** Takes the last group of three or four figures after DOT, or the bare figures; undefined when there are none. */
function parseTyreCode(text: string): TyreCode | undefined {
  const match =
    /(?:^|[^0-9,/])(\d{2})(\d{1,2})\s{0,2}(?:[△▲▵◁◀<]|(?:and |with |then )?(?:a )?(?:small )?triangle)?[\s.?!)"']{0,4}$/i.exec(
      text.slice(-60),
    );
  if (match === null) return undefined;
  const hasTriangle = /[△▲▵◁◀<]|triangle/i.test(match[0]);
  return { week: Number(match[1]), yearFigures: match[2] ?? "", hasTriangle };
}

function reading(
  year: number,
  code: TyreCode,
  told: { readonly why: string; readonly basis: string },
): readonly DateMarkReading[] {
  const interval = tyreWeekInterval(year, code.week);
  return interval === undefined ? [] : [{ interval, form: "tyre", ...told }];
}

function threeFigures(code: TyreCode, era: Interval): readonly DateMarkReading[] {
  const span = intersect(era, code.hasTriangle ? NINETIES : THREE_FIGURES);
  if (span === undefined) return [];
  const told = code.hasTriangle
    ? {
        why: `week ${code.week}, year ending in ${code.yearFigures}; the triangle means the 1990s by custom of some makers`,
        basis: "two published tyre guides",
      }
    : {
        why: `three figures are week ${code.week} and a year ending in ${code.yearFigures}, decade open`,
        basis: "49 CFR 574; 63 FR 55832",
      };
  return yearsEnding(code.yearFigures, span).flatMap((year) => reading(year, code, told));
}

function fourFigures(code: TyreCode, era: Interval): readonly DateMarkReading[] {
  const span = intersect(era, { from: FOUR_FIGURES_FROM, to: Number.POSITIVE_INFINITY });
  if (span === undefined) return [];
  const told = {
    why: `four figures are week ${code.week} and year ${code.yearFigures}, in use since the rule of July 1999`,
    basis: "49 CFR 574; 64 FR 36807",
  };
  return yearsEnding(code.yearFigures, span).flatMap((year) => reading(year, code, told));
}

/** All readings of a tyre's date code in the era: "318" gives week 31 of 1978, 1988 and 1998. */
export function readTyreDate(text: string, era: Interval): readonly DateMarkReading[] {
  const code = parseTyreCode(text);
  if (code === undefined) return [];
  return code.yearFigures.length === 1 ? threeFigures(code, era) : fourFigures(code, era);
}
