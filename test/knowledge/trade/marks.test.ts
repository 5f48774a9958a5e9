import { describe, expect, test } from "vitest";
import { formatInterval, parseDateText } from "../../../knowledge/calendar/date-text.ts";
import { dayInterval, monthInterval } from "../../../knowledge/calendar/interval.ts";
import { readApprovalMark } from "../../../knowledge/trade/approval-mark.ts";
import { readBeltCode, readMirrorClass } from "../../../knowledge/trade/belt-mirror-codes.ts";
import { beginningOf, datedRulesFor, highStopLampRule } from "../../../knowledge/trade/dated-rules.ts";
import {
  findGlazingSymbols,
  readGlassDot,
  readGlazingItems,
  readGlazingSymbol,
} from "../../../knowledge/trade/glazing-mark.ts";
import {
  readHeadlampArrow,
  readReferenceNumber,
  readSaeLens,
  readUnLampCode,
  splitSaeLetters,
} from "../../../knowledge/trade/lamp-codes.ts";

function notBefore(text: string): string | undefined {
  const mark = readApprovalMark(text)?.notBefore;
  return mark && formatInterval(mark);
}

describe("approval marks", () => {
  // Dates of joining the 1958 Agreement, published table of contracting parties.
  test.each([
    ["E1", "28 January 1966"],
    ["E 12", "11 May 1971"],
    ["(E14)", "28 August 1973"],
    ["E16", "4 April 1975"],
    ["E20", "13 March 1979"],
    ["E21", "28 March 1980"],
    ["E23", "5 December 1992"],
    ["E24", "24 March 1998"],
    ["E43", "24 November 1998"],
  ])("%s is not older than %s", (mark, date) => {
    expect(notBefore(mark)).toBe(date);
  });

  test.each(["E11 43R-001234", "E11 43 R - 00 1234", "(E11) 43R-00", "E11*43R00", "e11 43R-001234"])(
    "%s is an approval by the United Kingdom under Regulation 43, not older than the regulation",
    (mark) => {
      expect(readApprovalMark(mark)?.authority?.authority).toBe("United Kingdom");
      expect(readApprovalMark(mark)?.regulationNumber).toBe(43);
      expect(notBefore(mark)).toBe("15 February 1981");
    },
  );

  test("a country that joined after the regulation rules the date", () => {
    expect(notBefore("E24 43R-001234")).toBe("24 March 1998");
  });

  test("the leading two figures are the series of amendments", () => {
    const readings = readApprovalMark("E4 43R-011234")?.readings.map((reading) => reading.reading);
    expect(readings).toContain("series of amendments 01, approval number 1234");
  });

  test("numbers with an earlier holder are not dated by the present one", () => {
    expect(notBefore("E8")).toBe("20 June 1959");
    expect(notBefore("E10")).toBe("20 June 1959");
    expect(notBefore("E15")).toBe("20 June 1959");
    expect(readApprovalMark("E8")?.readings[0]?.reading).toContain("Czechoslovakia");
  });

  test("vacant and unheard numbers give no date", () => {
    expect(notBefore("E33")).toBeUndefined();
    expect(readApprovalMark("E33")?.readings[0]?.reading).toContain("not assigned");
    expect(readApprovalMark("E67")).toBeUndefined();
    expect(readApprovalMark("E0")).toBeUndefined();
    expect(readApprovalMark("E66")).toBeDefined();
  });

  test("a small e gives both readings unless a rectangle is named", () => {
    expect(readApprovalMark("e1")?.readings).toHaveLength(2);
    expect(readApprovalMark("e1 in a rectangle")?.readings).toHaveLength(1);
    expect(notBefore("e1 in a rectangle")).toBe("1970");
  });

  test("tyre sizes and lengths are no approval marks", () => {
    expect(readApprovalMark("E70-14")).toBeUndefined();
    expect(readApprovalMark("the edge 12 mm")).toBeUndefined();
    expect(readApprovalMark("165 R 15")).toBeUndefined();
  });
});

describe("glass", () => {
  test("AS items are classes: AS2 may be laminated too", () => {
    const [item] = readGlazingItems("AS2 and nothing else");
    expect(item?.reading).toContain("laminated or tempered");
    expect(item?.why).toContain("habit, not rule");
  });

  test.each([
    ["AS1", 1],
    ["AS 4A", 1],
    ["AS15", 1],
    ["AS16", 0],
    ["AS0", 0],
    ["ASA", 0],
  ])("%s gives %d items", (text, count) => {
    expect(readGlazingItems(text)).toHaveLength(count);
  });

  test("glass without DOT is no fault where somebody only cut the sheet", () => {
    expect(readGlassDot(false).reading).toContain("normal on flat glass");
    expect(readGlassDot(true).why).toContain("do not hold");
  });

  test("roman symbols are read beside a mark, and the ordinary side pane carries none", () => {
    expect(findGlazingSymbols("E4 43R-00123 II")).toEqual(["II"]);
    expect(findGlazingSymbols("43R V-VI")).toEqual(["V-VI"]);
    expect(findGlazingSymbols("type II mirror")).toEqual([]);
    expect(readGlazingSymbol("II")[0]?.reading).toBe("II: ordinary laminated windscreen");
    expect(readGlazingSymbol("none")[0]?.why).toBe("the ordinary side or rear window");
    expect(readGlazingSymbol("XX")).toEqual([]);
  });
});

describe("lamps", () => {
  test("R is main beam on a headlamp and tail lamp at the rear: both unless the place is known", () => {
    expect(readUnLampCode("R")).toHaveLength(2);
    expect(readUnLampCode("R", "rear").map((reading) => reading.reading)).toEqual([
      "R: rear position lamp (on a rear lamp) (UN Regulation 7)",
    ]);
    expect(readUnLampCode("R", "front")[0]?.reading).toContain("main beam");
    expect(readUnLampCode("QQ")).toEqual([]);
  });

  test("the arrow is read from the front; from behind it turns round", () => {
    expect(readHeadlampArrow("right", "front").reading).toContain("keep-left traffic only");
    expect(readHeadlampArrow("left", "behind").reading).toContain("keep-left traffic only");
    expect(readHeadlampArrow("right", "behind").reading).toContain("no marking of the regulation");
    expect(readHeadlampArrow("none", "front").reading).toContain("keep-right");
    expect(readHeadlampArrow("both", "front").reading).toContain("either side");
  });

  test("reference numbers are the twelve that exist", () => {
    expect(readReferenceNumber("17.5")?.reading).toContain("17.5");
    expect(readReferenceNumber("55")).toBeUndefined();
  });

  test("AIST 70 is reflector, turn, stop and tail to the 1970 handbook", () => {
    const lens = readSaeLens("SAE AIST 70");
    expect(lens?.readings.map((reading) => reading.reading.split(":")[0])).toEqual([
      "A",
      "I",
      "S",
      "T",
      "to the SAE handbook of 1970",
    ]);
    expect(lens?.notBefore).toEqual(parseDateText("1970"));
  });

  test("letters may stand apart, with compartments counted", () => {
    const lens = readSaeLens("SAE (2) I-S-T 78");
    expect(lens?.readings.map((reading) => reading.reading.split(":")[0])).toEqual([
      "I",
      "S",
      "T",
      "2 compartments",
      "to the SAE handbook of 1978",
    ]);
    expect(readSaeLens("SAE U3 86")?.readings[0]?.reading).toContain("centre high-mounted stop lamp");
    expect(readSaeLens("J759")).toBeUndefined();
    expect(readSaeLens("SAE handbook")).toBeUndefined();
  });

  test("letters that can be cut in more ways give them all, within bounds", () => {
    expect(splitSaeLetters("HR")).toEqual([["HR"], ["H", "R"]]);
    expect(splitSaeLetters("XJ")).toEqual([]);
    expect(splitSaeLetters("PC2PC2PC2PC2").length).toBeLessThanOrEqual(8);
    expect(splitSaeLetters("A".repeat(13))).toEqual([]);
  });

  // FMVSS 108; NHTSA interpretations 86-3.1, 86-4.17.
  test.each([
    [dayInterval(1984, 7, 31), "none"],
    [dayInterval(1984, 8, 1), "allowed"],
    [monthInterval(1984, 9), "allowed"],
    [dayInterval(1985, 8, 31), "allowed"],
    [dayInterval(1985, 9, 1), "required"],
    [monthInterval(1985, 9), "required"],
    [{ from: 12 * 1985, to: 12 * 1986 }, "open"],
  ])("a US car built %j: centre high stop lamp %s", (built, rule) => {
    expect(highStopLampRule(built)).toBe(rule);
  });
});

describe("belts and mirrors", () => {
  test.each([
    ["Ar4m", ["A", "r", "4", "m"]],
    ["Br3", ["B", "r", "3"]],
    ["Ar4Nm", ["A", "r", "4", "N", "m"]],
    ["B", ["B"]],
  ])("%s is read letter by letter", (code, letters) => {
    expect(readBeltCode(code)?.map((reading) => reading.reading.split(":")[0])).toEqual(letters);
  });

  test.each(["Cr4", "Ar5", "A4", "", "Ar44"])("%j is no belt code", (code) => {
    expect(readBeltCode(code)).toBeUndefined();
  });

  test("class III is the usual outside mirror", () => {
    expect(readMirrorClass("III")?.reading).toContain("most cars");
    expect(readMirrorClass("IX")).toBeUndefined();
  });
});

describe("dated rules", () => {
  test.each([
    ["when did high level brake lights become compulsory", "1 September 1985"],
    ["when did traction AA begin", "9 March 1998"],
    ["since when are there side markers", "1 January 1968"],
    ["when did the recycling triangle start", "1988"],
    ["when did 17 digit VINs start", "1981"],
    ["when did blade fuses come", "1976"],
    ["since when is there a JWL mark", "1972"],
    ["unified thread since when", "November 1948"],
    ["symbols on the switches when", "1978-1980"],
  ])("%s: %s", (question, date) => {
    expect(
      datedRulesFor(question)
        .map((rule) => rule.reading)
        .join("; "),
    ).toContain(date);
  });

  test("spans and decades begin with their first year", () => {
    expect(beginningOf("1978-1980")).toEqual(parseDateText("1978"));
    expect(beginningOf("1980s")).toEqual(parseDateText("1980"));
    expect(beginningOf("1985-09-01")).toEqual(parseDateText("1985-09-01"));
    expect(beginningOf("soon")).toBeUndefined();
  });

  test("an unknown sign has no rule", () => {
    expect(datedRulesFor("when did the second type come in")).toEqual([]);
  });
});
