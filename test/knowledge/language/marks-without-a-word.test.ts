// Date marks that are said without a word for what they are: the figures stand on the part in hand, or answer the question
// about the mark. And figures and years that are no mark. Wordings of the trade's talk, from memory.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords, findingsInWords } from "../../support/reading-in-words.ts";

const read = (text: string, about = "") => findingsInWords(readDemo(text, about));
const car = (text: string, about = "") => carInWords(readDemo(text, about));

describe("a month with a stroke on a part that has such a mark", () => {
  test.each([
    ["IH 5/80, pencil, under the resin", "rear-spoiler", "rear-spoiler.laminator-date May 1980"],
    ["MB and 11/81 I think, first letter could be N", "front-wing", "front-wing.laid-date November 1981"],
    ["RIVADEN and next to it 7/79", "steering-wheel", "steering-wheel.stamp-date July 1979"],
    ["2/81, reading upward", "steering-wheel stamp-date", "steering-wheel.stamp-date February 1981"],
    ["4/80 beside the cable nut", "instrument-panel speedo-date", "instrument-panel.speedo-date April 1980"],
    ["speedo is out of the dash. 7/79 where the cable does up", "", "instrument-panel.speedo-date July 1979"],
    ["June 1980 somewhere in there", "front-wing laid-date", "front-wing.laid-date June 1980"],
  ])("%s (%s) is its date", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
  test.each([
    ["it was replaced 7/79", "front-wing"],
    ["fitted 5/80 by my father", "steering-wheel"],
    ["a 7/32 drill went in", "front-wing"],
    ["7/80 primer on it", "front-wing"],
    ["mixed 2/80 by weight", "front-wing"],
    ["moved house in June 1980", "front-wing laid-date"],
    ["4/80 and a cable nut", ""],
    ["3/41 somewhere on it", "instrument-panel"],
  ])("%s (%s) is none", (text, about) => {
    expect(read(text, about).filter((line) => line.includes("date"))).toEqual([]);
  });
});

describe("two figures that open a clause", () => {
  test.each([
    [
      "31 81 is what comes up when I breathe on it",
      "door-mirror",
      "door-mirror.glass-week 27 July to 2 August 1981",
    ],
    ["14 83 so says the hub", "road-wheel machining-stamp", "road-wheel.machining-stamp 4 to 10 April 1983"],
    ["23 81 on the glass", "door-mirror screws", "door-mirror.glass-week 1 to 7 June 1981"],
    ["22 80, so spring of 1980?", "door-mirror glass-week", "door-mirror.glass-week 26 May to 1 June 1980"],
  ])("%s (%s) are week and year", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
  test.each([
    ["12 64 pages of the book", "door-mirror"],
    ["2 screws, 80 quid", "door-mirror"],
    ["30 60 is my tape", "door-mirror"],
  ])("%s (%s) are none", (text, about) => {
    expect(read(text, about).filter((line) => line.includes("glass-week"))).toEqual([]);
  });
});

describe("a dial", () => {
  test.each([
    ["Ring of twelve little studs, eleventh missing, 78 in the middle", "road-wheel", "November 1978"],
    ["ring of studs on the back, 80 in the middle and the third stud gone", "road-wheel", "March 1980"],
    ["Dial: 84, ring of studs, stud missing at 10", "road-wheel", "October 1984"],
    ["tiny dial, pip ten struck flat, 79 in the middle", "door-mirror", "October 1979"],
    ["pip is missing at 4, centre 81", "door-mirror", "April 1981"],
    ["One pip is flattened, count says April, figures are 79", "door-mirror casting-date", "April 1979"],
    ["little dial, fourth pip gone, 80 in the middle", "door-mirror", "April 1980"],
    ["arrow at 6, and 8 3 in the middle", "rear-spoiler clock", "June 1983"],
    ["clock says 3 with 83 in the middle so march 83?", "rear-spoiler", "March 1983"],
  ])("%s (%s): %s", (text, about, month) => {
    expect(read(text, about).filter((line) => line.endsWith(month))).toHaveLength(1);
  });
  test("has no month where one pip is flat and nobody counted which", () => {
    expect(read("one pip is flattened, 79 in the middle", "door-mirror")).not.toContain(
      "door-mirror.casting-date January 1979",
    );
  });
  test("is not made of the studs that hold a part on", () => {
    expect(
      read("a 79 car, third stud missing", "rear-spoiler").filter((line) => line.includes("clock")),
    ).toEqual([]);
  });
});

test("of the readings of a told mark those stand that its speaker takes it for", () => {
  expect(read("a 9 with five dots after it, which I take for November 1979", "door-mirror")).toEqual([
    "door-mirror.glass-dots November 1979",
  ]);
});

test("figures with a stroke are no figure with dots", () => {
  expect(read("the glass has 12/82 in the corner", "door-mirror")).toEqual([
    "door-mirror.glass-week 22 to 28 March 1982",
  ]);
});

describe("a year of something else", () => {
  test.each([
    ["I saw a 1979 penny in the spoiler", ""],
    ["and a 1984 sherbet lemon", ""],
    ["made well but not in the 70s", ""],
  ])("%s dates no car", (text, about) => {
    expect(car(text, about)).toEqual([]);
  });
  test.each([
    ["as to the rim: someone in 1985 laced a glove on it", "steering-wheel"],
    ["a cover over the rim, a Christmas gift from 1984 I guess", "steering-wheel"],
    ["thermostat stamped 82", ""],
    ["we met at a show in 1995", "steering-wheel"],
    ["61 on the back", "instrument-panel"],
  ])("%s (%s) dates no part", (text, about) => {
    expect(read(text, about).filter((line) => line.includes("date") || line.includes("stamp"))).toEqual([]);
  });
  test.each(["mine is a 1981, please help", "it is an 81", "a 1980 car", "a 1980 with a rough inside"])(
    "%s is still the car's",
    (text) => {
      expect(car(text).some((line) => line.startsWith("built 198"))).toBe(true);
    },
  );
});

describe("whose word a date is", () => {
  test.each([
    ["My husband always said 1979, but the log book gives 14 May 1980", "built 14 May 1980"],
    ["it was born in March 1981", "built March 1981"],
    [
      "I bought it new and nobody else has ever owned it. It was finished in November 1979",
      "built November 1979",
    ],
  ])("%s: %s", (text, expected) => {
    expect(car(text)).toContain(expected);
  });
  test.each([
    [
      "tyre shop boy says i may use his ruler: 140 mm flange to flange",
      "road-wheel rim-width",
      "road-wheel.rim-width 140±0.5 mm",
    ],
    ["With the mirror I read 7/79 behind the spoke", "steering-wheel", "steering-wheel.stamp-date July 1979"],
  ])("%s is the speaker's own reading", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
});

test.each([
  ["~ june 1981", "built May to July 1981"],
  ["built ~1981", "built 1980 to 1982"],
])("%s is as wide as about: %s", (text, expected) => {
  expect(car(text)).toEqual([expected]);
});
