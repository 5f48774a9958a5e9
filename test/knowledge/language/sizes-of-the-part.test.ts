// Sizes and the measurement they are of: by the words beside them, by the question just asked, and by lying where the sizes of one
// feature lie; and figures that are no size of the part. Wordings of the trade's talk, from memory.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords, findingsInWords, intentsInWords } from "../../support/reading-in-words.ts";

const read = (text: string, about = "") => findingsInWords(readDemo(text, about));

describe("a size that lies where those of one feature lie", () => {
  test.each([
    ["calipers across the hole from behind 63.4 mm", "road-wheel", "road-wheel.centre-bore 63.4±0.05 mm"],
    [
      "edge of one hole to the same edge of the next 80.8 mm",
      "road-wheel",
      "road-wheel.bolt-spacing 80.8±0.05 mm",
    ],
    ["76.4 mm left edge to left edge", "road-wheel bolt-spacing", "road-wheel.bolt-spacing 76.4±0.05 mm"],
    [
      "calipers on the front flange, three places, middle one 4.1 mm",
      "rear-spoiler",
      "rear-spoiler.edge-thickness 4.1±0.05 mm",
    ],
    ["1171 by the tape", "rear-spoiler", "rear-spoiler.width 1171±0.5 ?"],
    ["80.8 between neighbours", "road-wheel", "road-wheel.bolt-spacing 80.8±0.05 ?"],
    ["1012 mm along the bottom", "instrument-panel", "instrument-panel.panel-width 1012±0.5 mm"],
  ])("%s (%s) is that feature's: %s", (text, about, expected) => {
    expect(read(text, about)).toEqual([expected]);
  });
});

describe("names in their order", () => {
  test.each([
    ["centre hole is 58.1 mm", "road-wheel", "road-wheel.centre-bore 58.1±0.05 mm"],
    ["centre hole 57.1 from behind", "road-wheel", "road-wheel.centre-bore 57.1±0.05 ?"],
    [
      "the hole in the middle is 70.1 mm with a sleeve in it",
      "road-wheel",
      "road-wheel.centre-bore 70.1±0.05 mm",
    ],
    ["hole centres 76.4 mm", "road-wheel", "road-wheel.bolt-spacing 76.4±0.05 mm"],
  ])("%s (%s): %s", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
});

describe("a weight", () => {
  test.each([
    ["3850 g, bare, on Jean's jam scale", "rear-spoiler", "rear-spoiler.mass 3850±0.5 g"],
    ["total weight 640 Gramm", "door-mirror", "door-mirror.mass 640±0.5 g"],
    ["wing 5.1kg on the bathroom scales, me minus me and wing", "", "front-wing.mass 5.1±0.05 kg"],
    ["3 pounds and 4 ounces", "rear-spoiler mass", "rear-spoiler.mass 3.25±0.0313 lb"],
  ])("%s (%s): %s", (text, about, expected) => {
    expect(read(text, about)).toEqual([expected]);
  });
  test("of a person is none of a part", () => {
    expect(read("My bathroom scales say 81 kg and that is before lunch")).toEqual([]);
  });
});

test.each([
  ["he makes it three foot eight along the top", "front-wing length", "front-wing.length 44±0.5 in"],
  ["3 feet and 8 inches", "front-wing length", "front-wing.length 44±0.5 in"],
  ["44 Zoll", "front-wing length", "front-wing.length 44±0.5 in"],
  ["over the tips 1176, and again 1176 mm the other way", "rear-spoiler", "rear-spoiler.width 1176±0.5 mm"],
])("%s (%s) is one size: %s", (text, about, expected) => {
  expect(read(text, about)).toEqual([expected]);
});

describe("figures that are no size of the part", () => {
  test.each([
    ["trailing edge deflects about 3 mm under the thumb", "rear-spoiler"],
    ["the edge flexes by 3 mm", "rear-spoiler edge-thickness"],
    ["it weighs 420 mm", "front-wing length"],
    ["a man leaning on a wing while somebody sprays four feet away", ""],
    ["pressed number plates, 25 quid a pair from the unit next to the chippy", "road-wheel"],
    ["£25 for the wheel bolts", "road-wheel"],
    ["ours ends 40 and this one ends 12", "front-wing"],
    ["the number starts with 61", "front-wing"],
    ["see page 44 on length", "front-wing"],
    ["the hub nuts are 32 mm", "road-wheel"],
    ["a 4 mm ball seats in the groove", "door-mirror"],
    ["70 hours of work", "front-wing"],
    ["I am 180 cm tall", "rear-spoiler"],
    ["the bench is 1180 mm wide", "rear-spoiler"],
    ["the box was 400 mm long", "steering-wheel"],
  ])("%s (%s)", (text, about) => {
    expect(read(text, about).filter((line) => line.includes("±"))).toEqual([]);
  });
});

test.each([
  ["the rim is 24 mm thick", "steering-wheel", "steering-wheel.rim-thickness 24±0.5 mm"],
  ["the glass is 2.1 mm thick", "door-mirror", "door-mirror.glass-thickness 2.1±0.05 mm"],
])("%s (%s): a word of the part is no other thing", (text, about, expected) => {
  expect(read(text, about)).toEqual([expected]);
});

test("a lip that was buffed to a mirror names no mirror", () => {
  expect(read("my alloys, the lip buffed to a mirror by hand. centre bore 70mm")).toContain(
    "road-wheel.centre-bore 70±0.5 mm",
  );
});

test("a glass one reads by is not the part that is read", () => {
  const reading = readDemo("With the mirror I read RIVADEN behind the spoke", "steering-wheel");
  expect(reading.parts.map(({ part }) => part)).not.toContain("door-mirror");
});

test("a state said around the name of a part names the part", () => {
  const text =
    "Steering wheel here has a glove threaded on with a bootlace. The rim dips 45mm in front of the bolts";
  expect(read(text)).toEqual(["steering-wheel.rim-cover laced-glove", "steering-wheel.dish 45±0.5 mm"]);
});

test("a car with no wheels speaks of no wheels", () => {
  const reading = readDemo("26 mm thick. I sat in a car with no wheels", "steering-wheel");
  expect(findingsInWords(reading)).toEqual(["steering-wheel.rim-thickness 26±0.5 mm"]);
});

test("new tyres are no new wheels", () => {
  expect(carInWords(readDemo("got new tyres fitted", "road-wheel"))).toEqual([]);
});

test.each([
  ["built in march, not sure of the year", []],
  ["not sure of the year", ["cannot-tell"]],
])("%s: half a date leaves no question open: %s", (text, expected) => {
  expect(intentsInWords(readDemo(text, "door-mirror screws"))).toEqual(expected);
});

test.each(["sold as a one owner car", "the ad says one owner", "seller swears it is documented"])(
  "%s: a seller's word on the history is none",
  (text) => {
    expect(carInWords(readDemo(text, "door-mirror"))).toEqual([]);
  },
);
