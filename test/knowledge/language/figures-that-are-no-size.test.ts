// Figures that are no size of a part though a unit or a word of measuring stands beside them: money and time, what an instrument has, how far
// something gives way, the places of a list, the size of a screw. Everyday English, no source.
import { describe, expect, test } from "vitest";
import { findQuantities, type Quantity } from "../../../knowledge/language/quantities.ts";
import { isClockHour, isOfSomethingElse } from "../../../knowledge/language/size-of-another.ts";
import { wordings } from "../../support/wordings.ts";

const said = (text: string): string =>
  findQuantities(text)
    .map(({ value, unit }) => `${Number(value.toFixed(5))} ${unit ?? "?"}`)
    .join(", ");

test.each([
  [
    "of money, time and shares",
    "",
    "44 {quid,euro,euros,bucks,dollars,pence,percent,%,year,years,yr,yrs,week,weeks,day,days,hour,hours,hr,hrs,minute,minutes,min,mins,ono,each}",
  ],
  ["of money only where it stands right behind", "44 ?", "44 {and a quid,wide each,onofre,eachway}"],
  [
    "that number something",
    "",
    "{drove,walked,end,ends,ending,start,starts,starting,begin,begins,beginning,page,stall,lot,row,unit} {,in ,with ,on ,at ,no ,no. ,number }44",
  ],
  ["that number nothing", "44 ?", "{send,depends on,the page has,lot is} 44"],
  [
    "by which something gives way",
    "",
    `it {deflect,deflects,flex,flexes,bend,bends,move,moves,squash,squashes,yield,yields,spring,springs,sag,sags,droop,droops,missed} {,by ,only by about ,down }3 mm
    there is play{,}{, of, of maybe} 3 mm`,
  ],
  [
    "that something is before it gives way",
    "3 mm",
    "{it bends and is,the spring is,moved from there to} 3 mm",
  ],
  [
    "that an instrument has",
    "",
    "my {scale,scales,tape,rule,ruler,caliper,calipers} {go,goes,stop,stops,end,ends,runs out,give up,gives up,gave up,start,starts} {,just }{to,at} 20 cm",
  ],
  ["that an instrument reads", "20 cm", "my {scale,tape} {says,reads,is at,goes there; it is} 20 cm"],
  [
    "in a length where something was weighed",
    "",
    "it {weigh,weighs,weighed,weighing} {,in }{,at ,about ,only just ,around }44 cm",
  ],
  ["that a tape has", "", "my {tape,rule} {only ,sadly }goes to 20 cm"],
  ["of what water leaves", "", "{in,under} water{,:} {,it is ,it weighs ,is ,its reads }44 g"],
  ["of one of two as good", "41.5 cm", "41 cm to 42 cm"],
  ["of the first of two", "41 cm", "between us, 41 to 40 cm"],
  ["in words", "35 mm, 30 mm, 41 mm", "thirty five mm, thirty mm, forty-one mm"],
  ["of a weight", "44 kg", "it weighs {,in }{,at ,only just }44 kg"],
  ["of a foot that is worn", "", "{one,a} foot {rubbed,worn,broken,gone,missing} there"],
  ["of feet and inches", "20 in", "one foot 8 worn"],
  ["of feet", "252 in", "twenty one foot worn"],
  ["of a foot", "12 in", "one foot {wide,. worn,so}"],
  ["in a row of three", "", "gaps go 60, 71, 58"],
  ["in a row of four", "", "gaps go 60, 71, 58, 8"],
  ["of which two belong together", "60 ?, 71 ?", "gaps go 60, 71"],
  ["of which one stands apart", "58 ?", "gaps go 60 71, 58"],
  ["with a word between", "60 ?, 8 ?, 9 ?", "it is 60 wide, 8, 9"],
  ["with a word between", "4 ?, 9 ?, 3 ?", "it is 4, 9, so 3"],
  ["with a word between", "8 ?, 9 ?, 10 ?", "it is 8, so 9, 10\nit is 8, 9 wide, 10"],
  ["that count the items of a list", "", "3) front\n12) rear"],
  ["in brackets", "12 ?", "wide (12)"],
] as const)("figures %s: %s", (_, size, table) => {
  expect(
    wordings(table)
      .filter((text) => said(text) !== size)
      .map((text) => [text, said(text)]),
  ).toEqual([]);
});

test("a size ends where its own words end, and what stands behind it is another's", () => {
  const words = (text: string) => findQuantities(text).map(({ start, end }) => text.slice(start, end));
  expect(words("44 cm and a hole")).toEqual(["44 cm"]);
  expect(words("44 cm 3 holes")).toEqual(["44 cm", "3"]);
  expect(words("17 in the middle and 3 holes")).toEqual(["17 ", "3"]);
  expect(words("3 ft 10 in wide")).toEqual(["3 ft 10 in"]);
  expect(words("2 kilos and 350 grams it is")).toEqual(["2 kilos and 350 grams"]);
});

test("a message tells sixty sizes at most, and each knows the thirty signs behind it", () => {
  expect(findQuantities("5 mm ".repeat(70))).toHaveLength(60);
  const [first] = findQuantities("5 mm abcdefghijklmnopqrstuvwxyz0123456789");
  expect(first?.after).toBe(" abcdefghijklmnopqrstuvwxyz012");
});

describe("behind a size", () => {
  const size = (after: string, unit: Quantity["unit"] = "mm", value = 8): Quantity => ({
    start: 0,
    end: 1,
    value,
    halfWidth: 0.5,
    unit,
    after,
  });
  test("stands what has it, and that is no part", () => {
    const others = ` {,-}{stud,studs,screws,bolt,hole,holes,nut,thread,head,spanner,socket,drill,washer,wire,self tapper,rivet,allen key,hex,tap,wheel,tyre,tire,engine,crack,chip,scratch,dent,gap,tape,rule,mark}
      {stud,-stud}
      {,when }{in,under} water
      {/m,/ m,per metre, per metre}
      {lower,higher,shorter,longer,closer,further}
      from the end
      the same
      {away,back,behind,from} {,from }{me,us,him,the car,the house}
      away`;
    const afters = wordings(others).map((each) => (/^[-/]|^per|^stud/.test(each) ? each : ` ${each}`));
    expect(afters.filter((after) => !isOfSomethingElse(size(after)))).toEqual([]);
  });
  test("stands a distance between things, or nothing that has it", () => {
    const own = ` {hole,stud,bolt} {spacing,centres,centers,circle,pitch,apart,to stud}
      hole in the middle
      /2
      / 2
      wide{, in water,/m, away, longer, the same, from the end, from us, stud}
      on the screw
      passed away
      fallback`;
    const afters = wordings(own).map((each) => (each.startsWith("/") ? each : ` ${each}`));
    expect(afters.filter((after) => isOfSomethingElse(size(after)))).toEqual([]);
  });
  test("stands nothing that a small count needs", () => {
    expect([12, 13, 2.5].map((value) => isOfSomethingElse(size("", null, value)))).toEqual([
      true,
      false,
      false,
    ]);
    expect(isOfSomethingElse(size("", "mm", 12))).toBe(false);
  });
  test("stands the clock where it is a place", () => {
    const hours = [" o'clock", "o'clock", " oclock", " o' clock", " o clock", " O'Clock"];
    expect(hours.filter((after) => !isClockHour(size(after)))).toEqual([]);
    expect(
      [" on the clock", " or so by the oclock", " oclocks"].filter((after) => isClockHour(size(after))),
    ).toEqual([]);
  });
});
