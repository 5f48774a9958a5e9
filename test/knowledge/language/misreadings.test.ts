// Sentences that were once read wrongly, each with what it says.
import { expect, test } from "vitest";
import { readMessage } from "../../../knowledge/language/read-message.ts";
import { demoLexicon, testToday } from "../../support/demo-lexicon.ts";

const lexicon = await demoLexicon();
const read = (text: string, part?: string, askedFeature?: string) =>
  readMessage(text, lexicon, {
    today: testToday,
    ...(part === undefined ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });
const carKinds = (text: string) => read(text).car.map(({ about }) => about);
const intents = (text: string, part?: string) => read(text, part).intents.map(({ kind }) => kind);
const features = (text: string, part: string) => read(text, part).findings.map(({ feature }) => feature);

test("a list in answer to the build date gives date, market and trim", () => {
  expect(carKinds("home, june 1980, shrike S").toSorted()).toEqual(["built", "market", "trim"]);
});

test("the week of a tyre is no date of the car or of a part", () => {
  const { car, findings } = read("the tyre was made week 31 81");
  expect([car, findings]).toEqual([[], []]);
});

test("a rusted stud is undone, not an answer", () => {
  expect(intents("how do I undo a rusted stud")).not.toContain("undo");
  expect(intents("undo that")).toContain("undo");
});

test("a goal needs no question mark", () => {
  expect(intents("not sure this mirror is right for my mk1")).toContain("goal");
  expect(intents("is my spoiler genuine")).toContain("goal");
});

test("two models to choose from are no model said", () => {
  expect(carKinds("mk1 or mk2?")).toEqual([]);
});

test.each(["I don't have the car here", "none for sale", "is it for sale?", "the car is for sale"])(
  "a car that is elsewhere or offered does not make the part a loose one: %s",
  (text) => {
    expect(carKinds(text)).not.toContain("loose-part");
  },
);

test.each(["bought two front wings at a farm sale", "FOR SALE pair of wing mirrors", "mirror, £180 posted"])(
  "a part traded by itself is loose: %s",
  (text) => {
    expect(carKinds(text)).toContain("loose-part");
  },
);

test("bolts spaced are bolts apart and no back space", () => {
  expect(features("4 bolts spaced 76.4 mm", "road-wheel")).toEqual(["bolt-spacing"]);
});

test("what the glass says is the week of the glass, though the figures could be a month's", () => {
  expect(features("the glass says 12 81", "door-mirror")).toEqual(["glass-week"]);
  expect(features("it says 12 81", "door-mirror")).toEqual(["casting-date"]);
});

test("a glass date is the week of the glass", () => {
  expect(features("glass date 35/82", "door-mirror")).toEqual(["glass-week"]);
});

test("who asks what parts are known asks for the list", () => {
  expect(intents("what parts do you know")).toContain("list-variants");
});

test("a year to come is no build date, and is said not to have come yet", () => {
  const { car, leftAside } = read("built 2035");
  expect(car).toEqual([]);
  expect(leftAside).toContainEqual({ words: "2035", because: "not-yet" });
});

test("three things said in one breath are three findings", () => {
  expect(features("3 spokes leather cross stitched", "steering-wheel").toSorted()).toEqual([
    "rim-cover",
    "spokes",
    "stitch",
  ]);
});

test.each([
  ["31 81", "door-mirror", "glass-week"],
  ["2280", "road-wheel", "machining-stamp"],
  ["79 in the middle, fifth pip gone", "door-mirror", "casting-date"],
  ["arrow's at six, 82 in the middle", "rear-spoiler", "clock"],
  ["3 dots and an 8", "door-mirror", "glass-dots"],
])("a mark is read as it stands in the answer: %s", (text, part, asked) => {
  const [finding] = read(text, part, asked).findings;
  expect([finding?.feature, finding?.value.kind]).toEqual([asked, "date"]);
});

test.each([
  "if it sticks to a magnet it's pressed steel, else it's one of the other two mirrors",
  "a spoiler with four studs would look daft on my car",
  "don't ever sand the inside of a spoiler smooth",
  "the mirrors I sold in 2004 were alloy with two screws",
  "my spoiler arrives thursday, will check for the black gel coat",
  "soft letters on a wheel mean a copy",
])("what is supposed, advised, planned, sold or true of a kind is no state seen: %s", (text) => {
  expect(read(text).findings).toEqual([]);
});
