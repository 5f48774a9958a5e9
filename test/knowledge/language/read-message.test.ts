import { expect, test } from "vitest";
import { readMessage } from "../../../knowledge/language/read-message.ts";
import { demoLexicon, testToday } from "../../support/demo-lexicon.ts";
import { carInWords, findingsInWords, intentsInWords } from "../../support/reading-in-words.ts";

const lexicon = await demoLexicon();
const read = (text: string, part?: string, askedFeature?: string) =>
  readMessage(text, lexicon, {
    today: testToday,
    ...(part === undefined ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });

test("a vague post gives what was seen and leaves the seller's word aside", () => {
  const reading = read(
    "got a pair of mirrors for my Shrike at a swap meet, guy swears first type. alloy housing, two screws, cant find a casting mark inside. legit?",
  );
  expect(findingsInWords(reading)).toEqual([
    "door-mirror.housing cast-alloy",
    "door-mirror.screws two",
    "door-mirror.casting-mark no-mark",
  ]);
  expect(intentsInWords(reading)).toEqual(["genuine"]);
  expect(reading.variants.map((mention) => mention.as)).toEqual(["hearsay"]);
  expect(reading.leftAside.map((aside) => aside.because)).toContain("hearsay");
});

test("a build date and a mark on the part each fill their own role", () => {
  const reading = read("car was finished 2 november 1981, the glass is marked week 31 81");
  expect(carInWords(reading)).toEqual(["built 2 November 1981"]);
  expect(findingsInWords(reading)).toEqual(["door-mirror.glass-week 27 July to 2 August 1981"]);
});

test("a message that is one word of a state speaks for itself, whatever was asked; a word beside other talk does not", () => {
  expect(findingsInWords(read("RIVADEN", "steering-wheel", "rim-diameter"))).toEqual([
    "steering-wheel.maker-stamp rivaden",
  ]);
  expect(findingsInWords(read("can't reach it, rough day", "rear-spoiler", "width"))).toEqual([]);
});

test("a figure picks an answer by its place, unless the answers are figures themselves", () => {
  expect(findingsInWords(read("1", "rear-spoiler", "tips"))).toEqual(["rear-spoiler.tips square"]);
  expect(findingsInWords(read("2", "door-mirror", "screws"))).toEqual(["door-mirror.screws two"]);
  expect(findingsInWords(read("1", "door-mirror", "screws"))).toEqual([]);
});

test.each([
  [
    "which mirror is it, plastic housing, three screws",
    ["door-mirror.housing moulded-plastic", "door-mirror.screws three"],
  ],
  [
    "which spoiler have i got, its rough inside and has six screws",
    ["rear-spoiler.inside-finish rough", "rear-spoiler.fixing six-screws"],
  ],
  ["is it rough or smooth inside, how do i tell", []],
])("who asks what the part is goes on to describe it: %s", (text, expected) => {
  expect(findingsInWords(read(text))).toEqual(expected);
});

test.each(["steering wheel, built june 81", "is this steering wheel right for my car? built june 81"])(
  "a month beside a wheel is the car's, not a dial's: %s",
  (text) => {
    const reading = read(text);
    expect(reading.parts.map(({ part }) => part)).toEqual(["steering-wheel"]);
    expect(carInWords(reading)).toEqual(["built June 1981"]);
  },
);
