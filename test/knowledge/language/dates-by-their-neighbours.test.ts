// Dates by what stands beside them: a figure in a year's place or a list's, a mark on a place of the part, somebody else's car, a penny; and the
// stretches of time that figures stand for. Common usage, no source; weeks are ISO 8601.
import { describe, expect, test } from "vitest";
import { formatInterval } from "../../../knowledge/calendar/date-text.ts";
import {
  dayInterval,
  monthInterval,
  monthStart,
  yearInterval,
} from "../../../knowledge/calendar/interval.ts";
import { dateAgo } from "../../../knowledge/language/date-ago.ts";
import { shapeForm } from "../../../knowledge/language/date-features.ts";
import { findDates } from "../../../knowledge/language/date-phrases.ts";
import { isOfErrand, isOfOtherThing, markReadings, roleOf } from "../../../knowledge/language/date-roles.ts";
import { day, monthOf, nearby, span, week, widen } from "../../../knowledge/language/date-spans.ts";
import { partOfDecade, partOfYear } from "../../../knowledge/language/parts-of-year.ts";
import { wordings } from "../../support/wordings.ts";

const era = {
  production: { from: monthStart(1977, 1), to: monthStart(1985, 1) },
  today: monthInterval(2025, 6),
};
const said = (text: string): string =>
  findDates(text, era)
    .map(({ interval, shape }) => `${formatInterval(interval)} (${shape})`)
    .join(", ");
const roleIn = (text: string): string => {
  const [date] = findDates(text, era);
  return date === undefined ? "no date" : roleOf(date, text, { car: () => -1, mark: () => -1 });
};

describe("a date is read", () => {
  test.each([
    [
      "14 February 1979 (day)",
      "{pencil,pencilled,wrote,written,date,dated,signed,ink,inked,scribbled,scratched,marker,felt tip}{ , ', under the resin in big letters '}14 2 79{,',. so}",
    ],
    ["4 February 1979 (day)", "pencilled 4 2 79\npencilled 4 02 79"],
    ["1979 (short-year)", "pencilled. 14 2 79\npencilled in 3 places 14 2 79\nunpencilled14 2 79\n14 2 79"],
    ["", "pencilled 14 2 {791,79/3,79.5}"],
    [
      "March 1980 (pair)",
      `{3 80,on it; 3 80,note: 3 80,it is so. 3 80,it is so.3 80,and 3 80}{, is it, on it, pop up, pops up, come up, comes up, show there, shows there, appear, appears, in the resin, so it is, and so, as it is, was on it, punched, stamped,.,:,)}`,
    ],
    ["25 to 31 May 1981 (week)", "22 81 is on it"],
    ["1980 (short-year)", "so 3 80"],
    ["", "3 80 mm\n340s\n7.805"],
    ["1995 (short-year)", "3 95 is on it"],
    ["1980 to 1983 (range)", "{early 80s,early the 80s,early to mid 80s,early '80s,early-80's,early 1980s}"],
    ["1983 to 1986 (range)", "{mid 80s,mid-80s,mid eighties,mid-eighties,mid-1980s}"],
    ["1986 to 1989 (range)", "{late 80s,late-eighties,late the 80s}"],
    ["1990 to 1999 (range)", "{nineties,the nineties}"],
  ] as const)("%s", (date, table) => {
    expect(
      wordings(table)
        .map((text) => [text, said(text)])
        .filter(([, found]) => found !== date),
    ).toEqual([]);
  });
  test("once, in the order said, and a month of that year is one of the year last said", () => {
    expect(said("built in may 1980, stamped 5/80, in 1981")).toBe(
      "May 1980 (month), May 1980 (pair), 1981 (year)",
    );
    expect(said("week 47 1982 on the glass, the dial says september that year")).toBe(
      "22 to 28 November 1982 (week), September 1982 (month)",
    );
    expect(said("in 1982, and may of the same year")).toBe("1982 (year), May 1982 (month)");
    expect(said("september that year")).toBe("");
    expect(said("september that year, which was 1982")).toBe("1982 (year)");
    expect(said("in the 80s, september that year")).toBe("1980 to 1989 (range)");
  });
  test("of that year by every name of a month", () => {
    const names =
      "{jan,january} {feb,february} {mar,march} {apr,april} {may} {jun,june} {jul,july} {aug,august} {sep,sept,september} {oct,october} {nov,november} {dec,december}";
    for (const [at, table] of names.split(" ").entries())
      for (const name of wordings(table))
        expect(said(`in 1982, ${name} that year`)).toBe(
          `1982 (year), ${formatInterval(monthInterval(1982, at + 1))} (month)`,
        );
  });
  test("in the order said, each with its own words", () => {
    const text = "in 1981, in may 1980, march that year, built 5/79";
    const found = findDates(text, era);
    expect(found.map(({ start, end }) => text.slice(start, end))).toEqual([
      "1981",
      "may 1980",
      "march that year",
      "5/79",
    ]);
    expect(found.map((each) => each.text)).toEqual(found.map(({ start, end }) => text.slice(start, end)));
  });
  test("of one form forty times at most", () => {
    expect(findDates("may 1980, ".repeat(45), era).filter(({ shape }) => shape === "month")).toHaveLength(40);
  });
  test("as a bare year within twenty years of the cars", () => {
    expect(["a 55", "a 56", "a 05", "a 06"].map(said)).toEqual([
      "",
      "1956 (short-year)",
      "2005 (short-year)",
      "",
    ]);
  });
});

describe("what has a date is", () => {
  test.each([
    [
      "built",
      `{log book,logbook} 5/80
      {i got,we got,i have,mine is} a nice one, 1981
      a {,old ,early ,mid ,late old }1979
      he got a mirror and i have a 1981
      since the car is of 1981
      built by team '81
      1981car
      a 1979{,., with, and so on, so, but it, that, which, in it, here, needs a foot, need a foot, wants a foot, want a foot, is it, of mine, please}`,
    ],
    [
      "none",
      `{he,she,they}{'s,’s,s,'ve,ve, has, have} got a nice one, 1981
      {he,she,they}{,'s,s,'ve,ve, has, have} {got,had,own,owns,drive,drives,run,runs,bought} {a,an} {,old ,late old }1981
      a {,old ,late old }1979 {penny,winter,needle,hobby}
      the car since 1995
      my mirror 5/80
      stamped in the 80s
      the {rim,hub,glass,spoke} {in,from,since} 1985
      the {rim,hub,glass} {in,about,around} 85`,
    ],
    [
      "mark",
      `{date,dated,stamp,stamped,stamps,mark,marked,clock,arrow,centre,center,mould,moulded,mold,cast,casting,label,labelled,sticker,tag,laid,felt,pen,ink,inked,pencil,crayon,chalk,chalked,figure,figures,say,says,read,reads,written,wrote,laminated,engraved,punched,struck,etched,embossed,scribed,signed,initial,initialled,code} on the rim in 1985
      the rim in 1985 {stamped,on the glass}
      the rim 1985
      the rim in {1985 on the hub,5/85,white 1985}
      molded on the rim in 1985
      {week 31 81,built 31/81}`,
    ],
    ["model-year", "1981 {model,model year,modelyear}\n{model year,modelyear} 1981"],
  ] as const)("%s", (role, table) => {
    expect(
      wordings(table)
        .map((text) => [text, roleIn(text)])
        .filter(([, found]) => found !== role),
    ).toEqual([]);
  });
  test("a tyre, a key or a radiator, and not what is built before or after", () => {
    const isOther = (text: string): boolean => {
      const [date] = findDates(text, era);
      return date !== undefined && isOfOtherThing(date, text);
    };
    const others = `{carb,carbs,carburettor,headlight,headlights,headlamp,headlamps,key,keys,tyre,belt,hose} {of,made} 5/80
      {everything,anything,those,ones} {built,made,produced} {in,before,after,from} 1981
      not {,in ,from ,built in ,made in ,before }{,the }1981`;
    expect(wordings(others).filter((text) => !isOther(text))).toEqual([]);
    const own = "keyed 5/80\ncarton of 5/80\nit was not stamped in 1981\nthe ones I have are of 1981";
    expect(wordings(own).filter(isOther)).toEqual([]);
  });
  test("what somebody did then", () => {
    const [date] = findDates("replaced 7/79", era);
    expect(date && isOfErrand(date, "replaced 7/79")).toBe(true);
    expect(date && isOfErrand(date, "stampeds 7/79")).toBe(false);
  });
});

describe("a mark is read", () => {
  const feature = (...forms: readonly string[]) =>
    ({ forms }) as unknown as Parameters<typeof markReadings>[2];
  const readings = (written: string, forms: readonly string[], own?: { from: number; to: number }) =>
    markReadings(written, own, feature(...forms), era.production, era.today).map(
      ({ interval, weight }) => `${formatInterval(interval)} ${weight}`,
    );
  test("in the forms that its feature has, once, and else as the date that stands there", () => {
    expect(readings("31 81", ["week-year"])).toEqual(["27 July to 2 August 1981 1"]);
    expect(readings("31 81", ["month-year"])).toEqual([]);
    expect(readings("31 81", ["month-year"], monthInterval(1981, 5))).toEqual(["May 1981 1"]);
    expect(readings("12 81", ["week-year", "month-year"])).toHaveLength(2);
    expect(readings("12 81", ["month-year"], monthInterval(1975, 5))).toEqual(["December 1981 1"]);
  });
  test("as a tenth as likely where the cars were not built, three years before them and one after", () => {
    const weighed = (year: number) => readings(`5/${year}`, ["month-year"]);
    expect([73, 74, 85, 86].map(weighed)).toEqual([
      ["May 1973 0.1"],
      ["May 1974 1"],
      ["May 1985 1"],
      ["May 1986 0.1"],
    ]);
    expect(weighed(71)).toEqual([]);
  });
});

describe("figures stand for", () => {
  const year = (of: number, from: number, to: number) => ({
    from: monthStart(of, 1) + from - 1,
    to: monthStart(of, 1) + to,
  });
  test("a month, a day or a week of the calendar, or for nothing", () => {
    expect([0, 1, 12, 13].map((number) => monthOf(1981, number))).toEqual([
      undefined,
      monthInterval(1981, 1),
      monthInterval(1981, 12),
      undefined,
    ]);
    expect([day(1981, 2, 28), day(1981, 2, 29)]).toEqual([dayInterval(1981, 2, 28), undefined]);
    expect([week(1981, 53) === undefined, week(1982, 53), week(1982, 0)]).toEqual([
      false,
      undefined,
      undefined,
    ]);
  });
  test("a stretch that goes forward, as wide as it was said", () => {
    const [may, june] = [monthInterval(1981, 5), monthInterval(1981, 6)];
    expect(span(may, june)).toEqual({ from: may.from, to: june.to });
    expect(span(may, may)).toEqual(may);
    expect([span(june, may), span(undefined, may), span(may, undefined)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(widen(may, 2)).toEqual({ from: may.from - 2, to: may.to + 2 });
    expect(widen(undefined, 2)).toBeUndefined();
  });
  test("a date within five years of the cars where they are bare", () => {
    const { production } = era;
    const before = { from: production.from - 61, to: production.from - 60 };
    const after = { from: production.to + 60, to: production.to + 61 };
    const moved = (by: number, { from, to }: { from: number; to: number }) => ({
      from: from + by,
      to: to + by,
    });
    expect([before, after].map((each) => nearby(each, production))).toEqual([undefined, undefined]);
    expect([moved(1, before), moved(-1, after)].map((each) => nearby(each, production))).toEqual([
      moved(1, before),
      moved(-1, after),
    ]);
    expect(nearby(undefined, production)).toBeUndefined();
  });
  test.each([
    [1, 3, "very early,q1,first quarter"],
    [10, 12, "very late,q4,last quarter,fourth quarter"],
    [1, 6, "early to mid,first half"],
    [7, 12, "mid to late,second half"],
    [1, 4, "early,beginning,start of"],
    [5, 8, "mid,middle of"],
    [9, 12, "late,end of"],
    [4, 6, "q2,second quarter"],
    [7, 9, "q3,third quarter"],
    [3, 5, "spring,easter"],
    [6, 8, "summer"],
    [9, 11, "autumn,fall"],
    [11, 14, "winter"],
    [12, 12, "christmas"],
    [1, 12, "somewhen"],
  ] as const)("the months %i to %i of a year", (from, to, pieces) => {
    for (const piece of pieces.split(","))
      expect([piece, partOfYear(piece, 1981)]).toEqual([piece, year(1981, from, to)]);
  });
  test("some years of a decade", () => {
    const years = (from: number, to: number) => ({ from: monthStart(from, 1), to: monthStart(to, 1) });
    expect(["early", "mid", "late", undefined].map((piece) => partOfDecade(piece, 1980))).toEqual([
      years(1980, 1984),
      years(1983, 1987),
      years(1986, 1990),
      years(1980, 1990),
    ]);
  });
  test("a week or a month by the form in which they are struck", () => {
    const weeks = "13/81,31 81,52.80,19-79,31 / 81,week 3 81,wk 31,w 31,w3181,in week 31,aw31";
    const months = "12/81,5/80,5.80,05-80,5 1980,5 / 80,may 1980,31/1981,60/81,1/81";
    const none = "131/81,5/8,5/80 it,x5/80,5 80 5,ma 80,/80,31  81";
    expect(weeks.split(",").filter((mark) => shapeForm(mark) !== "week-year")).toEqual([]);
    expect(months.split(",").filter((mark) => shapeForm(mark) !== "month-year")).toEqual([]);
    expect(none.split(",").filter((mark) => shapeForm(mark) !== undefined)).toEqual([]);
    expect(shapeForm("13/811")).toBe("month-year");
  });
});

describe("reckoned back from today", () => {
  const today = dayInterval(2025, 6, 18);
  const from = (year: number, month: number, dayOf: number) => dayInterval(year, month, dayOf).from;
  const to = (year: number, month: number, dayOf: number) => dayInterval(year, month, dayOf).to;
  test.each([
    ["today", today],
    ["this morning", today],
    ["just now", today],
    ["yesterday", dayInterval(2025, 6, 17)],
    ["3 days ago", dayInterval(2025, 6, 15)],
    ["a day ago", dayInterval(2025, 6, 17)],
    ["two weeks ago", { from: from(2025, 6, 1), to: to(2025, 6, 7) }],
    ["one month ago", monthInterval(2025, 5)],
    ["ten months ago", monthInterval(2024, 8)],
    ["an year ago", yearInterval(2024)],
    ["60 years ago", yearInterval(1965)],
    ["61 years ago", undefined],
    ["0 years ago", undefined],
    ["a couple of years ago", undefined],
    ["a few weeks ago", undefined],
    ["umpteen weeks ago", undefined],
    ["this year", yearInterval(2025)],
    ["last year", yearInterval(2024)],
    ["last month", monthInterval(2025, 5)],
    ["this month", monthInterval(2025, 6)],
    ["this week", { from: from(2025, 6, 12), to: today.to }],
    ["last week", { from: from(2025, 6, 5), to: to(2025, 6, 17) }],
    ["last weekend", { from: from(2025, 6, 5), to: to(2025, 6, 17) }],
    ["the other day", { from: from(2025, 6, 5), to: to(2025, 6, 17) }],
    ["last spring", { from: monthStart(2025, 3), to: monthStart(2025, 6) }],
    ["last summer", { from: monthStart(2025, 6), to: today.to }],
    ["last autumn", { from: monthStart(2024, 9), to: monthStart(2024, 12) }],
    ["last winter", { from: monthStart(2024, 11), to: monthStart(2025, 3) }],
    ["some time", undefined],
  ] as const)("%s", (words, interval) => {
    expect(dateAgo(`seen it ${words}`, today)).toEqual(interval);
  });
});
