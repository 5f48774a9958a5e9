import { describe, expect, test } from "vitest";
import { formatInterval, parseDateText } from "../../../knowledge/calendar/date-text.ts";
import { type Interval, monthStart } from "../../../knowledge/calendar/interval.ts";
import { dateMarkEvidence, decodeDateMark } from "../../../knowledge/trade/decode-date-mark.ts";

const EIGHTIES: Interval = { from: monthStart(1976, 1), to: monthStart(1986, 1) };
const CENTURY: Interval = { from: monthStart(1960, 1), to: monthStart(2020, 1) };

function dates(
  mark: string,
  form: Parameters<typeof decodeDateMark>[1]["form"],
  era: Interval,
): readonly string[] {
  const readings = decodeDateMark(mark, form === undefined ? { era } : { form, era });
  return [...new Set(readings.map((reading) => formatInterval(reading.interval)))];
}

describe("figure and dots on glass", () => {
  test.each([
    ["..7", ["February 1977", "May 1977"]],
    ["7...", ["September 1977", "October 1977"]],
    ["7..", ["August 1977", "November 1977"]],
    [". . . . . . 1", ["January 1981", "June 1981"]],
    ["81.", ["July 1981", "December 1981"]],
    ["••1", ["February 1981", "May 1981"]],
    ["two dots before the 7", ["February 1977", "May 1977"]],
    ["7 with three dots after it", ["September 1977", "October 1977"]],
    ["7…", ["September 1977", "October 1977"]],
  ])("%s keeps both habits", (mark, expected) => {
    expect(dates(mark, "glass-dots", EIGHTIES)).toEqual(expected);
  });

  test("habit B has two published guides, habit A none", () => {
    const readings = decodeDateMark("..7", { form: "glass-dots", era: EIGHTIES });
    expect(readings.map((reading) => reading.basis)).toEqual([
      "two published glass-marking guides",
      "common practice, no source",
    ]);
  });

  test("the decade comes from the era, and a bare figure is a year", () => {
    expect(dates("..7", "glass-dots", { from: monthStart(1985, 1), to: monthStart(1990, 1) })).toEqual([
      "February 1987",
      "May 1987",
    ]);
    expect(dates("7", "glass-dots", EIGHTIES)).toEqual(["1977"]);
  });

  test("more than six dots, and dots on both sides, are no mark", () => {
    expect(dates(".......7", "glass-dots", EIGHTIES)).toEqual([]);
    expect(dates(".7.", "glass-dots", EIGHTIES)).toEqual([]);
  });
});

// 49 CFR 574.5 with 64 FR 36807: examples of published notes on tyre numbers.
describe("tyre numbers", () => {
  test.each([
    ["DOT XX YY ABC 318", ["30 July to 5 August 1978", "31 July to 6 August 1988", "2 to 8 August 1998"]],
    ["318 with a triangle", ["2 to 8 August 1998"]],
    ["031", ["17 to 23 January 1971", "18 to 24 January 1981", "20 to 26 January 1991"]],
    ["0301", ["21 to 27 January 2001"]],
    ["3107", ["5 to 11 August 2007"]],
    ["0109", ["4 to 10 January 2009"]],
    ["2501", ["24 to 30 June 2001"]],
    ["1299", ["21 to 27 March 1999"]],
  ])("%s", (mark, expected) => {
    expect(dates(mark, "tyre", CENTURY)).toEqual(expected);
  });

  test("317 is week 31 of 1977, 1987 or 1997", () => {
    const years = decodeDateMark("317", { form: "tyre", era: CENTURY }).map((reading) =>
      Math.floor(reading.interval.from / 12),
    );
    expect(years).toEqual([1977, 1987, 1997]);
  });

  test("a code ending in 5 is 1975, 1985 or 1995, for numbers began in 1971", () => {
    const years = decodeDateMark("205", { form: "tyre", era: CENTURY }).map((reading) =>
      Math.floor(reading.interval.from / 12),
    );
    expect(years).toEqual([1975, 1985, 1995]);
  });

  test("weeks over 53 reject the reading: 799 is not July 1999", () => {
    expect(dates("799", "tyre", CENTURY)).toEqual([]);
    expect(dates("5499", "tyre", CENTURY)).toEqual([]);
    expect(dates("005", "tyre", CENTURY)).toEqual([]);
    expect(dates("538", "tyre", CENTURY)).toEqual(["31 December 1978 to 6 January 1979"]);
  });
});

describe("figures and signs", () => {
  test.each([
    ["8127", ["7 May 1978", "29 June to 5 July 1981"]],
    ["31/81", ["27 July to 2 August 1981"]],
    ["81/31", ["27 July to 2 August 1981"]],
    ["3181", ["27 July to 2 August 1981", "14 November 1981"]],
    ["07/81", ["9 to 15 February 1981", "July 1981"]],
    ["7/79", ["12 to 18 February 1979", "July 1979"]],
    ["779", ["July 1979"]],
    ["G9", ["July 1979"]],
    ["K9", ["October 1979", "November 1979"]],
    ["A0", ["January 1980"]],
    ["II/84", ["February 1984", "April to June 1984"]],
    ["IV 81", ["April 1981", "October to December 1981"]],
    ["Q2 84", ["April to June 1984"]],
    ["10/1/84", ["10 January 1984", "1 October 1984"]],
    ["13/1/84", ["13 January 1984"]],
    ["1/1/84", ["1 January 1984"]],
    ["1983", ["1983"]],
    ["week 31 of 1981", ["27 July to 2 August 1981"]],
    ["wk 31/81", ["27 July to 2 August 1981"]],
    ["1981-W31", ["27 July to 2 August 1981"]],
    ["arrow at 7, centre 81", ["July 1981"]],
    ["arrow at 1, centre 8|1", ["January 1981", "January 1982"]],
    ["day 12, month 7, year 81", ["12 July 1981"]],
    ["last year 79, 5 dots", ["May 1979"]],
    ["79: 12 dots", ["December 1979", "1980"]],
  ])("%s reads as %j", (mark, expected) => {
    const found = dates(mark, undefined, EIGHTIES);
    expect(found).toEqual(expect.arrayContaining(expected));
  });

  test("1278 as a day of the year is 7 May of a year ending in 8", () => {
    const days = decodeDateMark("1278", {
      form: "day-of-year",
      era: { from: monthStart(1978, 1), to: monthStart(1979, 1) },
    });
    expect(days.map((reading) => formatInterval(reading.interval))).toEqual(["7 May 1978"]);
  });

  test.each(["13/99", "54/81", "00/81", "N9", "XIII/81", "Q5 81", "31/2/81x", "hello", ""])(
    "%j gives nothing",
    (mark) => {
      expect(dates(mark, undefined, EIGHTIES)).toEqual([]);
    },
  );

  test("week 53 stands only in years that have one", () => {
    expect(dates("week 53 of 1981", undefined, EIGHTIES)).toEqual(["28 December 1981 to 3 January 1982"]);
    expect(dates("week 53 of 1980", undefined, EIGHTIES)).toEqual([]);
  });

  test("what lies after today is dropped", () => {
    const today = parseDateText("1981-06-01") ?? EIGHTIES;
    const readings = decodeDateMark("G1", { era: EIGHTIES, today });
    expect(readings).toEqual([]);
    expect(decodeDateMark("E1", { era: EIGHTIES, today })).toHaveLength(1);
  });

  test("an open era is cut, not looped for ever", () => {
    const open = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
    expect(decodeDateMark("7/79", { era: open }).length).toBeLessThan(20);
  });

  test("evidence weighs distinct intervals alike and sums to one", () => {
    const evidence = dateMarkEvidence(
      decodeDateMark("..7", { form: "glass-dots", era: EIGHTIES }),
      "glass",
      "..7",
    );
    expect(evidence?.kind).toBe("date-mark");
    const weights = evidence?.kind === "date-mark" ? evidence.readings.map((reading) => reading.weight) : [];
    expect(weights).toEqual([0.5, 0.5]);
    expect(dateMarkEvidence([], "glass", "x")).toBeUndefined();
  });
});
