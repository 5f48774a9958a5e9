// What is put right within one message, denied in more words than one, left open, or written as a list: each sentence with what
// it says, against the demo handbook.
import { expect, test } from "vitest";
import { type Row, readDemo } from "../../support/read-demo.ts";
import { carInWords, findingsInWords, intentsInWords } from "../../support/reading-in-words.ts";

const screws = (states: string): readonly string[] => [`door-mirror.screws ${states}`];
const inside = (states: string): readonly string[] => [`rear-spoiler.inside-finish ${states}`];
const notches = (state: string): readonly string[] => [`rear-spoiler.drain-notches ${state}`];

const putRight: readonly Row[] = [
  ["it has two screws, no three screws", "door-mirror", screws("three")],
  ["two screws, no three", "door-mirror", screws("three")],
  ["two, no three", "door-mirror screws", screws("three")],
  ["no three screws", "door-mirror screws", screws("three")],
  ["not two but three screws", "door-mirror", screws("three")],
  ["three screws, not two", "door-mirror", screws("three")],
  ["no of screws 3", "door-mirror", screws("three")],
  ["1180 mm wide, no 1192 mm", "rear-spoiler", ["rear-spoiler.width 1192±0.5 mm"]],
  ["1192 mm wide, not 1180 mm", "rear-spoiler", ["rear-spoiler.width 1192±0.5 mm"]],
  ["not 1180 but 1192 mm wide", "rear-spoiler", ["rear-spoiler.width 1192±0.5 mm"]],
  ["it is not 1180 mm wide", "rear-spoiler", []],
  ["not 350", "steering-wheel rim-diameter", []],
];
test.each(putRight)("what is put right is what counts: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual(expected);
});

const denied: readonly Row[] = [
  ["inside is anything but smooth", "rear-spoiler", inside("rough|painted")],
  ["inside is far from smooth", "rear-spoiler", inside("rough|painted")],
  ["inside is hardly smooth", "rear-spoiler", inside("rough|painted")],
  ["more than two screws", "door-mirror", screws("three|five-holes|clamp")],
  ["fewer than three screws", "door-mirror", screws("two|five-holes|clamp")],
  ["non-alloy", "door-mirror", ["door-mirror.housing moulded-plastic|pressed-steel"]],
  ["it doesn`t have drain notches", "rear-spoiler", notches("plain")],
  ["it dosent have drain notches", "rear-spoiler", notches("plain")],
  ["there aint no notches", "rear-spoiler", notches("plain")],
];
test.each(denied)("a denial in more words than one, or misspelt, denies: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual(expected);
});

test("a place far from something denies nothing", () => {
  expect(findingsInWords(readDemo("there are drain notches far from the edge", "rear-spoiler"))).toEqual(
    notches("notches"),
  );
});

const open: readonly Row[] = [
  ["2-3 screws", "door-mirror", screws("two|three")],
  ["twenty two screws", "door-mirror", []],
];
test.each(open)(
  "two figures that follow each other leave it open, and a figure is read whole: %s",
  (...row) => {
    const [text, about, expected] = row;
    expect(findingsInWords(readDemo(text, about))).toEqual(expected);
  },
);

const lists: readonly Row[] = [
  [
    "\u2022 three screws\n\u2022 alloy housing",
    "door-mirror",
    [...screws("three"), "door-mirror.housing cast-alloy"],
  ],
  [
    "\u2022 alloy housing\n\u2022 3 screws",
    "door-mirror",
    ["door-mirror.housing cast-alloy", ...screws("three")],
  ],
  [
    "1. three screws\n2. alloy housing",
    "door-mirror",
    [...screws("three"), "door-mirror.housing cast-alloy"],
  ],
  ['there is an "N" inside', "rear-spoiler", ["rear-spoiler.maker-mark norrick-n"]],
  ["\u{1f44d}", "rear-spoiler drain-notches", notches("notches")],
  ["\u{1f44e}", "rear-spoiler drain-notches", notches("plain")],
];
test.each(lists)(
  "bullets, numbers of a list, quoted letters and thumbs stand for what they are: %s",
  (...row) => {
    const [text, about, expected] = row;
    expect(findingsInWords(readDemo(text, about))).toEqual(expected);
  },
);

test("the break of a full line within a sentence is none of the writer's", () => {
  const text = "I looked at the mirror this morning in good light and it has three\nscrews in the foot";
  expect(findingsInWords(readDemo(text, "door-mirror"))).toEqual(screws("three"));
});

test("a quoted line does not run on into the next", () => {
  const text = "> it has two screws in the foot and the housing is of alloy\nmine has three screws";
  expect(findingsInWords(readDemo(text, "door-mirror"))).toEqual(screws("three"));
});

test("the letter of a mark answers no question, and a stock number is no case", () => {
  expect(intentsInWords(readDemo("mark: N", "rear-spoiler"))).toEqual([]);
  expect(intentsInWords(readDemo("n", "rear-spoiler drain-notches"))).toEqual(["no"]);
  expect(intentsInWords(readDemo("stock number 31", "instrument-panel"))).toEqual([]);
  expect(intentsInWords(readDemo("number 2"))).toEqual(["switch-case 2"]);
});

test.each([
  ["built before june 1980", ["built September 1976 to May 1980"]],
  ["built no later than 1980", ["built September 1976 to December 1980"]],
  ["built after 1981", ["built January 1982 to June 1985"]],
  ["built no earlier than 1981", ["built January 1981 to June 1985"]],
  ["built a year before 1981", []],
  ["built june 81, registered 1982", ["built June 1981"]],
  ["1981 august car", ["built August 1981"]],
  ["car from 1981/08/03", ["built 3 August 1981"]],
  ["No, a Mk2", ["model shrike-ii"]],
  ["Mk2, no, Mk1", ["model shrike"]],
  ["either an S or a Touring", []],
  ["home or continental market, not sure", []],
  ["converted to RHD", []],
  ["Shrike at the autojumble with one", []],
  ["found a mirror under the bench", ["loose"]],
])("of the car is told what is said, up to the ends of production: %s", (text, expected) => {
  expect(carInWords(readDemo(text))).toEqual(expected);
});

test("one found behind something is a loose part, the part in hand spoken of", () => {
  expect(carInWords(readDemo("found one behind the shed", "door-mirror"))).toEqual(["loose"]);
  expect(carInWords(readDemo("found mine behind the shed", "door-mirror"))).toEqual([]);
});

const marks: readonly Row[] = [
  ["1981", "door-mirror glass-week", ["door-mirror.glass-week 1981"]],
  ["it says 1981", "door-mirror glass-week", ["door-mirror.glass-week 1981"]],
  ["stamped 1981", "road-wheel", ["road-wheel.machining-stamp 1981"]],
  ["stamped 2280", "road-wheel", ["road-wheel.machining-stamp 26 May to 1 June 1980"]],
  ["81 wk 32", "door-mirror glass-week", ["door-mirror.glass-week 3 to 9 August 1981"]],
  ["32. KW 1981", "door-mirror glass-week", ["door-mirror.glass-week 3 to 9 August 1981"]],
  ["the 31st week, 1981", "door-mirror glass-week", ["door-mirror.glass-week 27 July to 2 August 1981"]],
  ["\u00b1 .1", "door-mirror", []],
];
test.each(marks)(
  "a year by itself is the year, a week may follow it, a tolerance has no dots: %s",
  (...row) => {
    const [text, about, expected] = row;
    expect(findingsInWords(readDemo(text, about))).toEqual(expected);
  },
);

test("the dots of a mark may stand apart", () => {
  const dots = (text: string) => findingsInWords(readDemo(text, "door-mirror glass-dots"));
  expect(dots(". . 8")).toEqual(dots("..8"));
  expect(dots("\u2022\u2022 8")).toEqual(dots("..8"));
  expect(dots("\u2022 8")).toEqual(dots(".8"));
  expect(dots("\u2022 8")).toHaveLength(1);
});

const sizes: readonly Row[] = [
  ["9 mm and 1012 mm wide", "rear-spoiler", ["rear-spoiler.width 1012±0.5 mm"]],
  ["width 1180 \u00b1 1 mm", "rear-spoiler", ["rear-spoiler.width 1180±1 mm"]],
  ["width 1180mm +/- 2mm", "rear-spoiler", ["rear-spoiler.width 1180±2 mm"]],
  ["1180 wide give or take 2 mm", "rear-spoiler", ["rear-spoiler.width 1180±0.5 ?"]],
  ["bolt circle a hundred and eight mm", "road-wheel", ["road-wheel.bolt-spacing 108±0.5 mm"]],
  ["46.5in. wide", "rear-spoiler", ["rear-spoiler.width 46.5±0.05 in"]],
];
test.each(sizes)("a size is read with what it may be out by, and whole: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual(expected);
});
