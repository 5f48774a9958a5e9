// Sizes and weights as people write them, from the bare text: value, half of what the words leave open, unit, instrument.
import { describe, expect, test } from "vitest";
import { findQuantities } from "../../../knowledge/language/quantities.ts";
import { parseNumber, shareOf } from "../../../knowledge/language/written-numbers.ts";

/** "17.375±0.0625 in", with the instrument behind it where one was named. */
function said(text: string): readonly string[] {
  return findQuantities(text).map(
    ({ value, halfWidth, unit, instrument }) =>
      `${Number(value.toFixed(5))}±${Number(halfWidth.toFixed(5))} ${unit ?? "?"}${instrument === undefined ? "" : ` ${instrument}`}`,
  );
}

const sizes: readonly (readonly [string, readonly string[]])[] = [
  ['17 3/8"', ["17.375±0.0625 in"]],
  ["17 and 3/8 inches", ["17.375±0.0625 in"]],
  ["1-1/4 in", ["1.25±0.125 in"]],
  ["5/16 inch", ["0.3125±0.03125 in"]],
  ["44 cm", ["44±0.5 cm"]],
  ["44cms", ["44±0.5 cm"]],
  ["44.5 centimetres", ["44.5±0.05 cm"]],
  ["1,180 mm", ["1180±0.5 mm"]],
  ["1,180.5 mm", ["1180.5±0.05 mm"]],
  ["44,5 cm", ["44.5±0.05 cm"]],
  ["12 mils", ["12±0.5 mm"]],
  ["1.2 m", ["120±5 cm"]],
  ["2 metres", ["200±50 cm"]],
  ["1 metre 18", ["118±0.5 cm"]],
  ["1 m 18 cm", ["118±0.5 cm"]],
  ["3 ft", ["36±6 in"]],
  ["3 ft 10", ["46±0.5 in"]],
  ["3 feet 10 inches", ["46±0.5 in"]],
  ["3' 10 1/2\"", ["46.5±0.25 in"]],
  ["50 thou", ["0.05±0.0005 in"]],
  ["3 lb 4 oz", ["3.25±0.03125 lb"]],
  ["12 oz", ["12±0.5 oz"]],
  ["2 kilos 350", ["2.35±0.0005 kg"]],
  ["2 kg 350 g", ["2.35±0.0005 kg"]],
  ["1.2kg", ["1.2±0.05 kg"]],
  ["1980 grams", ["1980±0.5 g"]],
  ["250 g", ["250±0.5 g"]],
  ["between 41 and 42 cm", ["41.5±0.5 cm"]],
  ["41-42 cm", ["41.5±0.5 cm"]],
  ["41 to 43 mm", ["42±1 mm"]],
  ["two inches", ["2±0.5 in"]],
  ["seventeen inches", ["17±0.5 in"]],
  ["half an inch", ["0.5±0.25 in"]],
  ["four and a quarter inches", ["4.25±0.125 in"]],
  ["25 and three eighths inches", ["25.375±0.0625 in"]],
  ["two kilos and a half", ["2.5±0.25 kg"]],
  ["three and a bit inches", ["3.25±0.125 in"]],
  ["an inch", ["1±0.5 in"]],
  ["about 44 cm", ["44±1 cm"]],
  ["approx. 44 cm", ["44±1 cm"]],
  ["~44 cm", ["44±1 cm"]],
  ["44 cm or so", ["44±1 cm"]],
  ["44 cm give or take", ["44±1 cm"]],
  ["a bit over 44 cm", ["44±1 cm"]],
  ["just under 44 cm", ["44±1 cm"]],
  ["slightly more than 44 cm", ["44±1 cm"]],
  ["44", ["44±0.5 ?"]],
  ["17 in the middle", ["17±0.5 ?"]],
  ["17 in wide", ["17±0.5 in"]],
  ["5.5 in between the flanges", ["5.5±0.05 in"]],
  ["44 in along", ["44±0.5 in"]],
  ["31 in stencil", ["31±0.5 ?"]],
  ["1180 \u00b1 1 mm", ["1180±1 mm"]],
  ["3 mm \u00b1.1", ["3±0.1 mm"]],
  ["46 in +/- 2 mm", ["46±0.07874 in"]],
  ["1180 wide, +/- 2 mm", ["1180±0.5 ?"]],
  ["1180 mm \u00b1 2 kg", ["1180±0.5 mm"]],
  ["9 mm and 1012 mm", ["9±0.5 mm", "1012±0.5 mm"]],
  ["9 and 1012 mm", ["9±0.5 mm", "1012±0.5 mm"]],
  ["44-5 mm", ["44±0.5 mm"]],
  ["1 180 mm", ["1180±0.5 mm"]],
  [".5 mm", ["0.5±0.05 mm"]],
  ["5/16ths of an inch", ["0.3125±0.03125 in"]],
  ["17 3/8ths inch", ["17.375±0.0625 in"]],
  ["4lb6oz", ["4.375±0.03125 lb"]],
  ["3'10\"", ["46±0.5 in"]],
  ["3ft10", ["46±0.5 in"]],
  ["a hundred and eight mm", ["108±0.5 mm"]],
  ["one thousand one hundred and eighty mm", ["1180±0.5 mm"]],
  ["eleven hundred mm", ["1100±0.5 mm"]],
  ["seventy five mm", ["75±0.5 mm"]],
  ["four point five mm", ["4.5±0.05 mm"]],
  ["two point seven five inches", ["2.75±0.005 in"]],
  ["17 point 3 mm", ["17.3±0.05 mm"]],
];
test.each(sizes)("%s", (text, expected) => {
  expect(said(text)).toEqual(expected);
});

test("a bound is no size", () => {
  for (const bound of [
    "less than",
    "more than",
    "under",
    "over",
    "at least",
    "at most",
    "up to",
    "no more than",
    "max",
    "minimum",
  ]) {
    expect([bound, said(`${bound} 44 cm`)]).toEqual([bound, []]);
  }
});

test("two numbers of which the second is no larger, or thrice as large, are no range", () => {
  expect(said("between 42 and 41 cm")).toEqual([]);
  expect(said("between 10 and 30 cm")).toEqual([]);
  expect(said("between 10 and 29 cm")).toEqual(["19.5±9.5 cm"]);
});

describe("what it was measured with", () => {
  test("is named in the same sentence, before or after", () => {
    expect(said("with the calipers 44.1 mm")).toEqual(["44.1±0.05 mm caliper"]);
    expect(said("44.1 mm by vernier")).toEqual(["44.1±0.05 mm caliper"]);
    expect(said("44 mm on the ruler")).toEqual(["44±0.5 mm rule"]);
    expect(said("44 cm with a tape")).toEqual(["44±0.5 cm tape"]);
    expect(said("2150 grams on the kitchen scales")).toEqual(["2150±0.5 g kitchen-scale"]);
    expect(said("weighed it, 1980 g")).toEqual(["1980±0.5 g kitchen-scale"]);
    expect(said("44 cm at a guess")).toEqual(["44±0.5 cm guess"]);
    expect(said("2 kg by eye")).toEqual(["2±0.5 kg guess"]);
  });
  test("is not that of another sentence, nor a scale for a length or a tape for a weight", () => {
    expect(said("I have calipers. It is 44.1 mm wide")).toEqual(["44.1±0.05 mm"]);
    expect(said("44.1 mm wide. I have calipers")).toEqual(["44.1±0.05 mm"]);
    expect(said("44 cm on the scales")).toEqual(["44±0.5 cm"]);
    expect(said("2 kg with the tape on")).toEqual(["2±0.5 kg"]);
  });
});

test("a quantity knows where it stands and what follows it", () => {
  const [first] = findQuantities("it is 44 cm across the tips of it, measured twice");
  expect(first).toMatchObject({ start: 6, end: 11, after: " across the tips of it, measured".slice(0, 30) });
});

test("no more than sixty quantities of one message are read", () => {
  expect(findQuantities("44 cm; ".repeat(61))).toHaveLength(60);
});

describe("numbers in figures and words", () => {
  const numbers: readonly (readonly [string, number, number])[] = [
    ["17", 17, 0.5],
    ["17.25", 17.25, 0.005],
    ["1,275", 1275, 0.5],
    ["1,234.8", 1234.8, 0.05],
    ["17 3/8", 17.375, 1 / 16],
    ["17-3/8", 17.375, 1 / 16],
    ["17 & 3/8", 17.375, 1 / 16],
    ["31/32", 31 / 32, 1 / 64],
    ["a", 1, 0.5],
    ["half", 0.5, 0.25],
    ["third", 1 / 3, 1 / 6],
    ["three quarters", 0.75, 0.125],
    ["quarter", 0.25, 0.125],
    ["seven eighths", 0.875, 1 / 16],
    ["five eighths", 0.625, 1 / 16],
    ["three eighths", 0.375, 1 / 16],
    ["eighth", 0.125, 1 / 16],
    ["four and a half", 4.5, 0.25],
    ["12 and a third", 12 + 1 / 3, 1 / 6],
    ["0.0000005", 5e-7, 5e-7],
  ];
  test.each(numbers)("%s", (written, value, halfWidth) => {
    expect(parseNumber(written)?.value).toBeCloseTo(value, 9);
    expect(parseNumber(written)?.halfWidth).toBeCloseTo(halfWidth, 9);
  });
  test("that are none: nothing, less than nothing, a million and more, a fraction of nought or over one", () => {
    expect(
      ["0", "-3", "1,000,001", "3/0", "8/8", "9/8", "", "wide", "four and a foot"].map(parseNumber),
    ).toEqual(Array.from({ length: 9 }, () => undefined));
    expect(parseNumber("1,000,000")?.value).toBe(1e6);
    expect(parseNumber("7/8")?.value).toBe(0.875);
  });
  test("a share in words has no figure in it", () => {
    expect(shareOf("2 halves")).toBeUndefined();
    expect(shareOf("whole")).toBeUndefined();
    expect(shareOf("a bit")).toEqual({ value: 0.25, halfWidth: 0.125 });
  });
});

test("a size that is denied is read as such, and one that is bettered is not denied", () => {
  const isDenied = (text: string) => findQuantities(text).map((each) => each.isDenied === true);
  expect(isDenied("not 1180 but 1192 mm")).toEqual([true, false]);
  expect(isDenied("1192 mm rather than 1180 mm")).toEqual([false, true]);
  expect(isDenied("it isn't 1180 mm")).toEqual([true]);
  expect(isDenied("1180 mm, no 1192 mm")).toEqual([false, false]);
});
