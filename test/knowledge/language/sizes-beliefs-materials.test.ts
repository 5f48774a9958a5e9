// Which feature a size is of, which misbelief is stated, what came close to a name, and what a density says of a material: by the words round them.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";
import { wordings } from "../../support/wordings.ts";

function expectEach(table: string, of: (text: string) => string, expected: string): void {
  expect(
    wordings(table)
      .map((text) => [text, of(text)])
      .filter(([, found]) => found !== expected),
  ).toEqual([]);
}

describe("a size of the part in hand", () => {
  const found = (text: string): string => findingsInWords(readDemo(text, "rear-spoiler")).join(", ");
  test.each([
    [
      "rear-spoiler.width 1180±0.5 mm",
      `width{, is,:,?, of it is} 1180 mm
      1180 mm wide
      the width, measured over the tips, 1180 mm
      I think it is 1180 mm wide
      width 12, lip 1180 mm`,
    ],
    ["rear-spoiler.width 1182±0.5 mm", "width 1180 mm, no 1182 mm\nwidth 1000 mm, width 1182 mm"],
    ["rear-spoiler.width 1182±1 mm", "1180 mm, 1181 mm, so say 1182 mm wide"],
    ["rear-spoiler.width 47±0.5 ?", "width is 47"],
    ["rear-spoiler.width 8±0.5 mm", "width 8 mm studs"],
    ["rear-spoiler.width 5±0.5 mm", "width 5 mm"],
    ["rear-spoiler.lip-height 57±0.5 mm", "lip height 57 mm\n57 mm high"],
    ["rear-spoiler.lip-height 57±0.5 mm, rear-spoiler.width 1180±0.5 mm", "lip 57 mm, width 1180 mm"],
    ["rear-spoiler.width 1180±0.5 ?, rear-spoiler.lip-height 57±0.5 ?", "1180 wide and 57 high"],
    ["rear-spoiler.stud-spacing 100±0.5 mm", "stud spacing 100 mm"],
    ["rear-spoiler.mass 2150±0.5 g", "2150 g\nit weighs 2150 g"],
    [
      "",
      `lip 57
      8 mm {stud,studs,bolt,screws,spanner,hex}
      60 mm {crack,scratch,dent}
      1180 mm at 3 o'clock
      1180 mm{/side, per side}
      width 3{, screws}
      2150 g {in,under} water
      the seller says 1180 mm wide
      is it 1180 mm wide?
      width 30000 mm
      {1180,99} mm
      width. 1180 mm`,
    ],
  ] as const)("%s", (expected, table) => {
    expectEach(table, found, expected);
  });
  test("belongs to the part it names where none is in hand", () => {
    const anywhere = (text: string): string => findingsInWords(readDemo(text)).join(", ");
    expectEach("spoiler 1180 mm wide\nspoiler width 1180 mm", anywhere, "rear-spoiler.width 1180±0.5 mm");
    expectEach("wing 5 mm thick", anywhere, "front-wing.thickness 5±0.5 mm");
    expectEach("20 mm wide", anywhere, "");
  });
  test("is left aside in its own words where it is of no feature", () => {
    const leftAside = (text: string): string =>
      readDemo(text, "rear-spoiler")
        .leftAside.map(({ words, because }) => `${words}: ${because}`)
        .join(", ");
    expectEach("it has 8 mm studs\n8 mm studs", leftAside, "8 mm: several-readings");
    expectEach("1180 mm wide\n3 studs\nan inch", leftAside, "");
  });
});

describe("a misbelief", () => {
  const stated = (text: string): string =>
    readDemo(text, "door-mirror")
      .misbeliefs.map(({ misbelief, words }) => `${misbelief}: ${words}`)
      .join(", ");
  test.each([
    "a mirror without the foundry diamond is a reproduction",
    "no diamond means fake mirror",
    "genuine mirrors all have the diamond",
    "the seller says no diamond means fake mirror",
  ])("is stated by whoever holds it: %s", (text) => {
    expect(stated(text)).toBe(`no-casting-mark-no-original: ${text}`);
  });
  test("is stated within one sentence, which is what is shown", () => {
    expect(stated("all Mk1 cars left with metal mirrors. two screws")).toBe(
      "alloy-means-mark-one: all Mk1 cars left with metal mirrors",
    );
    expect(stated("two screws. Every Mk1, I think, had alloy mirrors")).toBe(
      "alloy-means-mark-one: Every Mk1, I think, had alloy mirrors",
    );
  });
  test("is not stated by a description, nor without its never or its all", () => {
    const plain = `a mirror with the foundry diamond is a reproduction
      no diamond
      it has no diamond and two screws and a nice foot
      genuine mirrors have the diamond
      the dots are never subtracted. from seven`;
    expectEach(plain, stated, "");
  });
  test("of another part is none of the part in hand", () => {
    expect(
      readDemo("no diamond means fake mirror", "rear-spoiler").misbeliefs.map(({ part }) => part),
    ).toEqual(["door-mirror"]);
    expect(readDemo("it is rough", "rear-spoiler").misbeliefs).toEqual([]);
  });
});

test.each([
  ["the blured mark", "blured: blurred diamond, no letter (state)"],
  ["the casthing", "casthing: casting mark (feature)"],
  ["the gasgket is worn", "gasgket: gasket groove (feature)"],
  ["hosing is plastick", "hosing: housing material (feature), plastick: moulded plastic (state)"],
  ["spiegal", ""],
  ["xylophone", ""],
  ["teh", ""],
  ["the footplate", ""],
])("what comes close to a name is asked after: %s", (text, expected) => {
  expect(
    readDemo(text, "door-mirror")
      .nearMisses.map(({ words, meant, kind }) => `${words}: ${meant} (${kind})`)
      .join(", "),
  ).toBe(expected);
});

test.each([
  "two screws, the blured mark",
  "the blured mark on a rear spoiler",
  "the blured mark of my 1980 car",
  "hello, the blured mark",
])("beside what is understood nothing is asked after: %s", (text) => {
  expect(readDemo(text, "door-mirror").nearMisses).toEqual([]);
});

describe("a density", () => {
  const housing = (text: string): string => findingsInWords(readDemo(text, "door-mirror")).join(", ");
  test.each([
    [
      "door-mirror.housing cast-alloy",
      `density {,is ,of ,about ,came out at ,= }{2.7,2.65}{, g/cm3, g/cc, g per ml}
      {specific gravity,sg} {,of ,of about }{2.7,2.65}
      2.7{, }{g/cm3,g/cc,g per cc,g/ml,g per cubic centimetre}
      2.7 {gram,grams} per {cc,cubic centimetre}
      2.7 ± 0.1 g/cm3`,
    ],
    ["door-mirror.housing moulded-plastic", "density 1.1\n1.1 g/cm3"],
    ["door-mirror.housing moulded-plastic, door-mirror.material-mark bracketed", "marked >ABS<"],
    ["", "density {9.9,high}\nis the density 2.7?\nthe seller says the density is 2.7\n2.7\n2.7 of them"],
  ] as const)("%s", (expected, table) => {
    expectEach(table, housing, expected);
  });
});
