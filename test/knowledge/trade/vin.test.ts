// 49 CFR 565.15(c), tables III to V; the first sample from an encyclopedia article, the second the rule's own.
import { describe, expect, test } from "vitest";
import {
  findVins,
  maskSerial,
  maskVins,
  readVin,
  vinCheckDigit,
  vinCheckSum,
  vinModelYears,
} from "../../../knowledge/trade/vin.ts";

describe("check digit", () => {
  test.each([
    ["1M8GDM9AXKP042788", 351, "X"],
    ["1G4AH59H45G118341", 411, "4"],
    ["11111111111111111", 89, "1"],
  ])("%s: sum %d, digit %s", (vin, sum, digit) => {
    expect(vinCheckSum(vin)).toBe(sum);
    expect(vinCheckDigit(vin)).toBe(digit);
    expect(readVin(vin)?.passesCheck).toBe(true);
  });

  test("a wrong digit fails, and failing is no fault outside the US and Canada", () => {
    const read = readVin("1M8GDM9A1KP042788");
    expect(read?.passesCheck).toBe(false);
    expect(read?.readings[0]?.why).toContain("elsewhere position 9 is free");
    expect(read?.notBefore).toBeUndefined();
  });

  test("39 single slips of the first sample go unseen, and one swap of neighbours", () => {
    const vin = "1M8GDM9AXKP042788";
    const signs = [..."ABCDEFGHJKLMNPRSTUVWXYZ0123456789"];
    const at = (index: number, sign: string) => vin.slice(0, index) + sign + vin.slice(index + 1);
    const passing = [...vin].flatMap((own, index) =>
      index === 8 ? [] : signs.filter((sign) => sign !== own && readVin(at(index, sign))?.passesCheck),
    );
    expect(passing).toHaveLength(39);
    const swaps = [...vin].slice(0, 16).filter((own, index) => {
      const next = vin[index + 1] ?? "";
      const swapped = vin.slice(0, index) + next + own + vin.slice(index + 2);
      return own !== next && readVin(swapped)?.passesCheck;
    });
    expect(swaps).toEqual(["D"]);
  });

  test("I, O, Q and other lengths have no sum", () => {
    expect(vinCheckSum("1M8GDM9AXKP04278O")).toBeUndefined();
    expect(vinCheckSum("1M8GDM9AXKP04278")).toBeUndefined();
    expect(vinCheckSum("1M8GDM9AXKP0427888")).toBeUndefined();
    expect(readVin("")).toBeUndefined();
  });
});

describe("what the positions say", () => {
  test("a figure at position 7 is before 2010, a letter 2010 or later", () => {
    expect(vinModelYears("1M8GDM9AXKP042788")).toEqual([1989]);
    expect(vinModelYears("1M8GDMAAXKP042788")).toEqual([2019]);
    expect(vinModelYears("1M8GDM9AXAP042788")).toEqual([1980]);
    expect(vinModelYears("1M8GDM9AXUP042788")).toEqual([]);
    expect(vinModelYears("1M8GDM9AX0P042788")).toEqual([]);
  });

  test.each([
    ["1", "M", "United States"],
    ["S", "A", "United Kingdom"],
    ["S", "N", "Germany (was German Democratic Republic)"],
    ["W", "0", "Germany (was Federal Republic)"],
    ["J", "A", "Japan"],
    ["Z", "3", "Lithuania"],
  ])("%s%s is %s", (first, second, country) => {
    expect(readVin(`${first}${second}8GDM9AXKP042788`)?.country?.country).toBe(country);
  });

  test("third character 9 is a small maker: 12 to 14 are not serial", () => {
    const read = readVin("SA9GDM9AXKP042788");
    expect(read?.isSmallMaker).toBe(true);
    expect(read?.readings.at(-2)?.reading).toContain("only 15 to 17 are the serial");
    expect(readVin("1M8GDM9AXKP042788")?.isSmallMaker).toBe(false);
  });
});

describe("masking", () => {
  test("the last six are hidden, a short serial wholly", () => {
    expect(maskSerial("1M8GDM9AXKP042788")).toBe("1M8GDM9AXKP••••••");
    expect(maskSerial("AB12")).toBe("••••");
    expect(maskSerial("")).toBe("");
  });

  test("numbers in a text are masked wherever and however they stand", () => {
    expect(maskVins("a 1M8GDM9AXKP042788, b 1m8gdm9axkp042788; VIN 1M8 GDM9AX KP042788 ok")).toBe(
      "a 1M8GDM9AXKP••••••, b 1M8GDM9AXKP••••••; VIN 1M8GDM9AXKP•••••• ok",
    );
  });

  test("words and dates are left alone", () => {
    const text = "30 July to 5 August 1988, WEEK 31 OF 1981 OR 27 JULY TO 2 AUGUST 1981, internationalised";
    expect(maskVins(text)).toBe(text);
    expect(findVins(text)).toEqual([]);
  });
});
