// Sizes in the many ways they are said: each unit in the singular and the plural, units that stand behind a greater one, what makes a figure rough,
// what it was measured with. Everyday English, no source.
import { describe, expect, test } from "vitest";
import { findQuantities } from "../../../knowledge/language/quantities.ts";
import { parseNumber } from "../../../knowledge/language/written-numbers.ts";
import { wordings } from "../../support/wordings.ts";

/** "17.375±0.0625 in", with the instrument behind it where one was named. */
function said(text: string): string {
  return findQuantities(text)
    .map(
      ({ value, halfWidth, unit, instrument }) =>
        `${Number(value.toFixed(5))}±${Number(halfWidth.toFixed(5))} ${unit ?? "?"}${instrument === undefined ? "" : ` ${instrument}`}`,
    )
    .join(", ");
}

test.each([
  ["12±0.5 mm", "12{ , ,-}{mm,millimetre,millimetres,millimeter,millimeters,mil,mils}"],
  ["12±0.5 cm", "12 {cm,cms,centimetre,centimetres,centimeter,centimeters}"],
  ["1200±50 cm", "12 {m,metre,metres,meter,meters}"],
  ["12±0.5 in", `12 {inch,inches,ins,"}`],
  ["12±0.5 in", "12 ''"],
  ["144±6 in", "12 {ft,foot,feet,'}"],
  ["0.012±0.0005 in", "12 thou"],
  ["12±0.5 kg", "12 {kg,kgs,kilo,kilos,kilogram,kilogramme,kilogrammes}"],
  ["12±0.5 g", "12 {g,gr,gram,grams,gramme,grammes}"],
  ["12±0.5 lb", "12 {lb,lbs,pound,pounds}"],
  ["12±0.5 oz", "12 {oz,ounce,ounces}"],
  ["12±0.5 ?", "12 {mmx,people,kgx,inchworm}"],
] as const)("%s", (size, table) => {
  expect(
    wordings(table)
      .filter((text) => said(text) !== size)
      .map((text) => [text, said(text)]),
  ).toEqual([]);
});

describe("behind a greater unit", () => {
  test.each([
    ["2.35±0.0005 kg", "{2 kg,2 kilos} {350,350 g,and 350 grams}"],
    ["2±0.5 kg, 35±0.5 ?", "2 kg 35"],
    ["2±0.5 kg, 3500±0.5 ?", "2 kg 3500"],
    ["2±0.5 kg, 350±0.5 in", "2 kg 350 in."],
    ["118±0.5 cm", "{1 m,1 metre} {18,18 cm,and 18 cms}"],
    ["100±50 cm, 8±0.5 ?", "1 m 8"],
    ["100±50 cm, 180±0.5 ?", "1 m 180"],
    ["100±50 cm, 18±0.5 in", "1 m 18 inches"],
    ["1±0.5 mm, 18±0.5 ?", "1 mm 18"],
    ["46±0.5 in", `{3 ft,3 foot,3 feet,3'} {10,10 in,10 inches,10",10''}`],
    ["36±6 in, 10±0.5 oz", "3 ft 10 oz"],
    ["3±0.5 in, 10±0.5 ?", "3 in 10"],
    ["3.25±0.03125 lb", "{3 lb,3 lbs,3 pounds} {4 oz,and 4 ounces}"],
    ["3±0.5 lb, 4±0.5 ?", "3 lb 4"],
    ["3±0.5 lb, 4±0.5 g", "3 lb 4 g"],
    ["3±0.5 kg, 4±0.5 oz", "3 kg 4 oz"],
  ] as const)("%s", (size, table) => {
    expect(
      wordings(table)
        .filter((text) => said(text) !== size)
        .map((text) => [text, said(text)]),
    ).toEqual([]);
  });
});

describe("two figures and what is over", () => {
  test.each([
    ["41.5±0.5 cm", "{,between }41{-, - , to , and , or ,..}42 cm"],
    ["4150±50 cm", "41 to 42 m"],
    ["41±0.5 cm", "41 to 41 cm"],
    ["41±0.5 cm", "41 to 40 cm"],
    ["", "between {41 and 41,between 42 and 41,between 10 and 30} cm"],
    ["1.25±0.125 kg", "{1 kg and a quarter,one and a quarter kg}"],
    ["1.5±0.25 kg", "{1 kg,one kilo} and a half"],
    ["150±25 cm", "1 metre and a half"],
    ["15±1.5 in", "1 foot and a quarter"],
    ["2.5±0.25 ?", "2 and a half"],
  ] as const)("%s", (size, table) => {
    expect(
      wordings(table)
        .filter((text) => said(text) !== size)
        .map((text) => [text, said(text)]),
    ).toEqual([]);
  });
});

describe("a figure is rough, or no size, by the word beside it", () => {
  test.each([
    [
      "44±1 cm",
      "{about,approx,approx.,approximately,around,roughly,circa,ca,ca.,nearly,almost,some,say,maybe,just over,just shy of,a touch under,a hair more than,slightly less than} {,a ,the }44 cm",
    ],
    ["44±1 cm", "44 cm{ ish,-ish, or so, give or take, approx, roughly, more or less, or thereabouts, odd}"],
    ["44±0.5 cm", "{about it is ,abouts }44 cm{, and the rest is roughly so,, oddly}"],
    [
      "",
      "{less than,more than,under,over,at least,at most,up to,no more than,max,maximum,min,minimum} 44 cm",
    ],
    ["44±0.5 cm", "{maximal,over there are,under it is} 44 cm"],
    ["44±0.5 cm", "max: 44 cm"],
  ] as const)("%s", (size, table) => {
    expect(
      wordings(table)
        .filter((text) => said(text) !== size)
        .map((text) => [text, said(text)]),
    ).toEqual([]);
  });
});

test.each([
  [
    "17±0.5 in",
    "17 in{,. so,: so, wide, high, tall, across, thick, long, deep, dia, diameter, overall, at, over, from, tip, to, on, with, by, x, and, or, for, exactly, about, max, maximum, is, so, but, rim, rims, wheel, wheels, between, apart, off, as, i, it, its, measured, centre, centres, center, centers}",
  ],
  ["17±1 in", "17 in {approx,approximately}"],
  ["17±0.5 ?", "17 in {the middle,stencil,pencil,raised figures,one corner,total,isolation}"],
  ["17.5±0.05 in", "17.5 in {the middle,all}"],
  ["17.375±0.0625 in", "17 3/8 in {the middle,all}"],
] as const)("%s: inches, where a size may go on, and else a place", (size, table) => {
  expect(
    wordings(table)
      .filter((text) => said(text) !== size)
      .map((text) => [text, said(text)]),
  ).toEqual([]);
});

test.each([
  ["44±0.5 mm caliper", "44 mm {by,with} {caliper,calipers,calliper,callipers,vernier,micrometer,mic}"],
  ["44±0.5 g kitchen-scale", "44 g {on the scale,on the scales,on kitchen scales,weighed}"],
  ["44±0.5 cm tape", "44 cm by tape{, measure}"],
  ["44±0.5 cm rule", "44 cm by {rule,ruler,steel rule}"],
  ["44±0.5 cm guess", "44 cm {by eye,eyeball,eyeballed,eyeballing,guess,guessing,guesstimate,estimate}"],
  ["44±0.5 cm", "44 cm {by micro,tapered,by ruling,on the scale}"],
  ["44±0.5 cm", "with a tape, which I then put away into the box where it always lies, 44 cm"],
  ["44±0.5 cm", "tape{!,?,;,.} It is 44 cm{.,!,?,;} tape"],
  ["44±0.5 ? tape", "44 by tape"],
  ["44±0.5 ? kitchen-scale", "44 by scales"],
  ["44±0.5 g guess", "44 g by eye"],
  ["44±0.5 g", "44 g by {tape,ruler,calipers}"],
] as const)("%s: the instrument that can give such a reading and is named near it", (size, table) => {
  expect(
    wordings(table)
      .filter((text) => said(text) !== size)
      .map((text) => [text, said(text)]),
  ).toEqual([]);
});

test.each([
  ["12,345", 12345, 0.5],
  ["123,456.25", 123456.25, 0.005],
  ["5/16", 5 / 16, 1 / 32],
  ["x5/16", undefined, undefined],
  ["5/16x", undefined, undefined],
  ["5/161", undefined, undefined],
  ["x1,234", undefined, undefined],
  ["1,234x", undefined, undefined],
  ["1234,567", 1234.567, 0.0005],
  ["an", 1, 0.5],
  ["any", undefined, undefined],
  ["25 and a quarter", 25.25, 1 / 8],
  ["x25 and a quarter", 0.25, 1 / 8],
] as const)("the number %s", (written, value, halfWidth) => {
  const number = parseNumber(written);
  if (value === undefined) expect(number).toBeUndefined();
  else {
    expect(number?.value).toBeCloseTo(value, 9);
    expect(number?.halfWidth).toBeCloseTo(halfWidth, 9);
  }
});
