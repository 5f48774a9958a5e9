// Date marks with a sign between their parts: 7/79, 31/81, 10/1/74, II/74, IV 71, G9, "week 31 of 1981". A form
// that could be two things (07/81: July or week 7; 2/74: February or second quarter) gives both.
import { isCivilDay } from "../../calendar/civil-day.ts";
import { dayInterval, type Interval, monthStart } from "../../calendar/interval.ts";
import { COMMON_PRACTICE } from "../trade-reading.ts";
import { type DateMarkReading, monthReadings, weekReadings, yearsEnding } from "./date-mark-reading.ts";

const ROMANS = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];
const BRAKE_HOSE = "FMVSS 106 S5.2.2; NHTSA nht75-1.46 (brake hoses: month, day, year)";

function quarterReadings(quarter: number, year: string, era: Interval): readonly DateMarkReading[] {
  if (quarter < 1 || quarter > 4) return [];
  const told = { form: "quarter", why: `quarter ${quarter} of the year`, basis: COMMON_PRACTICE } as const;
  return yearsEnding(year, era).map((value) => {
    const from = monthStart(value, 3 * quarter - 2);
    return { interval: { from, to: from + 3 }, ...told };
  });
}

function pairReadings(first: number, second: string, era: Interval): readonly DateMarkReading[] {
  const monthYear = {
    form: "month-year",
    why: `month ${first} over year ${second}`,
    basis: COMMON_PRACTICE,
  } as const;
  const weekYear = {
    form: "week-year",
    why: `week ${first} over year ${second}`,
    basis: COMMON_PRACTICE,
  } as const;
  return [...monthReadings(first, second, era, monthYear), ...weekReadings(first, second, era, weekYear)];
}

/** "7/79", "31-81", "81/31", "2 74": two numbers with a sign between. */
export function readNumberPair(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^(\d{1,2}) ?[/.\- ] ?(\d{4}|\d{1,2})$/.exec(text);
  if (match === null) return [];
  const [first = "", second = ""] = [match[1], match[2]];
  const yearWeek = {
    form: "year-week",
    why: `year ${first}, week ${Number(second)}`,
    basis: COMMON_PRACTICE,
  } as const;
  const readings = pairReadings(Number(first), second, era);
  const quarters = first.length === 1 ? quarterReadings(Number(first), second, era) : [];
  const reversed =
    first.length === 2 && second.length <= 2 ? weekReadings(Number(second), first, era, yearWeek) : [];
  return [...readings, ...quarters, ...reversed];
}

/** "II/74" and "IV 71": a roman numeral is a month, and up to four also a quarter. */
export function readRomanDate(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^([IVX]{1,4}) ?[/.\- ] ?(\d{4}|\d{1,2})$/i.exec(text);
  const number = ROMANS.indexOf((match?.[1] ?? "").toUpperCase()) + 1;
  if (match === null || number === 0) return [];
  const told = { form: "month-year", why: `roman ${number} for the month`, basis: COMMON_PRACTICE } as const;
  return [
    ...monthReadings(number, match[2] ?? "", era, told),
    ...quarterReadings(number, match[2] ?? "", era),
  ];
}

/** "Q2 74", "2nd quarter 1974". */
export function readQuarter(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^(?:Q([1-4])|([1-4])(?:st|nd|rd|th) quarter)(?: of)?[ /]?(\d{4}|\d{2})$/i.exec(text);
  return match === null ? [] : quarterReadings(Number(match[1] ?? match[2]), match[3] ?? "", era);
}

/** "10/1/74": month, day, year by the brake-hose rule; day, month, year elsewhere. Both when both exist. */
export function readDayMonthYear(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})$/.exec(text);
  if (match === null) return [];
  const [first, second] = [Number(match[1]), Number(match[2])];
  return yearsEnding(match[3] ?? "", era).flatMap((year) => {
    const american: readonly DateMarkReading[] = isCivilDay(year, first, second)
      ? [
          {
            interval: dayInterval(year, first, second),
            form: "day-month-year",
            why: "month, day, year",
            basis: BRAKE_HOSE,
          },
        ]
      : [];
    const isSame = first === second;
    const european: readonly DateMarkReading[] =
      !isSame && isCivilDay(year, second, first)
        ? [
            {
              interval: dayInterval(year, second, first),
              form: "day-month-year",
              why: "day, month, year",
              basis: COMMON_PRACTICE,
            },
          ]
        : [];
    return [...american, ...european];
  });
}

/** "G9": July of a year ending in 9 with A for January; makers who leave out I are one letter behind from J on. */
export function readMonthLetter(text: string, era: Interval): readonly DateMarkReading[] {
  const match = /^([A-M]) ?(\d{1,2})$/i.exec(text);
  if (match === null) return [];
  const letter = (match[1] ?? "").toUpperCase();
  const place = letter.charCodeAt(0) - 64;
  const all = {
    form: "month-letter",
    why: `${letter} is month ${place} when every letter counts`,
    basis: COMMON_PRACTICE,
  } as const;
  const withoutI = {
    form: "month-letter",
    why: `${letter} is month ${place - 1} where I is left out`,
    basis: COMMON_PRACTICE,
  } as const;
  return [
    ...monthReadings(place, match[2] ?? "", era, all),
    ...(place > 9 ? monthReadings(place - 1, match[2] ?? "", era, withoutI) : []),
  ];
}

/** "week 31 of 1981", "wk 31/81", "1981-W31". */
export function readNamedWeek(text: string, era: Interval): readonly DateMarkReading[] {
  const told = {
    form: "week-year",
    why: "a week named with its year, counted by ISO 8601",
    basis: "ISO 8601:2000, 5.2.3",
  } as const;
  const iso = /^(\d{4})-?W(\d{2})$/i.exec(text);
  if (iso !== null) return weekReadings(Number(iso[2]), iso[1] ?? "", era, told);
  const words = /^(?:week|wk\.?|w) ?(\d{1,2})(?: of|,)?[ /'’-]{0,3}(\d{4}|\d{2})$/i.exec(text);
  return words === null ? [] : weekReadings(Number(words[1]), words[2] ?? "", era, told);
}
