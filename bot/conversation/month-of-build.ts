/**
 * A month of build said without its year, "it's a 77, built in March I think", "march": the year is the one told beside it or before. A month
 * that could belong to two years, or to none, is left alone: no year is guessed.
 */
import { type CarFinding, type Interval, monthInterval, monthNumber } from "../../knowledge/index.ts";

const month = String.raw`(?<month>jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\b\.?`;
const withoutYear = String.raw`(?!,? ?(?:of |in )?'?\d)`;
/** Said of the car's build: a month by itself may be of anything, and "march" and "may" are words besides. */
const ofTheBuild = new RegExp(
  String.raw`\b(?:built|build|finished|completed|assembled|left the (?:works|factory))\b(?: (?!not\b)\w+){0,4}? ?${month}${withoutYear}`,
  "iu",
);
const besides =
  /\b(?:actually|it|its|it's|it is|was|built|in|i think|maybe|probably|about|around|sorry|car|of|that year|the same year)\b|[^\p{L}]/giu;
const bare = new RegExp(`^${month}$`, "iu");
const denied = /\b(?:not|never|wasn'?t|isn'?t)\b/iu;
const monthsInYear = 12;

/** The car's findings with the build date narrowed to the month said; `known` is the build date told before, where one was. */
export function withMonthOfBuild(
  text: string,
  car: readonly CarFinding[],
  known: Interval | undefined,
): readonly CarFinding[] {
  const told = car.find((one) => one.about === "built") ?? car.find((one) => one.about === "model-year");
  const within = told === undefined ? known : told.interval;
  const said = monthSaid(text, car.length === 0);
  if (within === undefined || said === undefined) return car;
  const interval = onlyMonthIn(within, said.month);
  if (interval === undefined) return car;
  const words = told === undefined ? said.words : `${told.words}, ${said.words}`;
  return [...car.filter((one) => one !== told), { about: "built", interval, words }];
}

/** Month 1 to 12 that the text gives for the build, without a year. */
function monthSaid(
  text: string,
  mayBeBare: boolean,
): { readonly month: number; readonly words: string } | undefined {
  if (denied.test(text)) return undefined;
  const match =
    ofTheBuild.exec(text) ?? (mayBeBare && !/\d/.test(text) ? bare.exec(text.replace(besides, "")) : null);
  const name = match?.groups?.month;
  if (name === undefined) return undefined;
  const number = monthNumber(name);
  return number === undefined ? undefined : { month: number, words: name };
}

/** The one month of that name within; a month told before is corrected within its year. */
function onlyMonthIn(within: Interval, wanted: number): Interval | undefined {
  const first = Math.floor(within.from / monthsInYear);
  if (within.to - within.from <= 1) return monthInterval(first, wanted);
  if (within.to - within.from > 2 * monthsInYear) return undefined;
  const fitting = [first, first + 1, first + 2]
    .map((year) => monthInterval(year, wanted))
    .filter(({ from, to }) => within.from <= from && to <= within.to);
  const [only] = fitting;
  return fitting.length === 1 ? only : undefined;
}
