import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { loadHandbookFolder } from "../../adapters/handbook-folder/index.ts";
import { compileLexicon } from "../../knowledge/language/lexicon.ts";
import { readMessage } from "../../knowledge/language/read-message.ts";
import { testToday } from "../support/demo-lexicon.ts";
import { type Row, readDemo } from "../support/read-demo.ts";
import { findingsInWords } from "../support/reading-in-words.ts";
import { fitLogistic } from "./logistic-regression.ts";

// One of four right without the value and three of four with it: the odds are 1/3 and 3, their ratio 9.
test("without a ridge the weight is the logarithm of the ratio of the odds", () => {
  const rows = [0, 1].flatMap((value) =>
    [0, 1, 2, 3].map((at) => ({ values: [value], isRight: at < 1 + 2 * value, weight: 1 })),
  );
  const [intercept, weight] = fitLogistic(rows, 1e-6);
  expect(intercept).toBeCloseTo(Math.log(1 / 3), 2);
  expect(weight).toBeCloseTo(Math.log(9), 2);
});

test("a wider ridge pulls a weight towards nothing", () => {
  const rows = [0, 1].map((value) => ({ values: [value], isRight: value === 1, weight: 1 }));
  const weights = [0.1, 1, 10].map((ridge) => fitLogistic(rows, ridge)[1] ?? 0);
  expect(weights).toEqual(weights.toSorted((one, other) => other - one));
  expect(weights.at(-1)).toBeGreaterThan(0);
});

const chatter: readonly Row[] = [
  ["wearing leather gloves, it's freezing", "steering-wheel", []],
  ["the bonnet is smooth inside, shiny even", "front-wing", []],
  ["Seats are black leather. Any idea on the wheel?", "steering-wheel", []],
  ["is there a bird on all of them?", "steering-wheel horn-push", []],
  ["my back is killing me, flat on the sofa", "road-wheel spoke-back", []],
];
test.each(chatter)("a state said of another thing is not asserted: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual(expected);
});

test("a lone state is the answer where its feature was just asked for", () => {
  expect(findingsInWords(readDemo("leather", "steering-wheel rim-cover"))).toEqual([
    "steering-wheel.rim-cover leather",
  ]);
});

test("a state that may have been meant is kept apart, to be asked back", () => {
  const reading = readDemo("it could be the steel ball I suppose", "door-mirror");
  expect(reading.findings).toEqual([]);
  expect(reading.inDoubt).toEqual([
    { part: "door-mirror", feature: "joint", state: "steel", words: "steel ball" },
  ]);
  expect(readDemo("the ball is steel", "door-mirror").inDoubt).toEqual([]);
});

test("the weights serve a handbook they were not learnt with", async () => {
  const folder = fileURLToPath(new URL("../../knowledge/handbooks/ollerton-finch", import.meta.url));
  const loaded = await loadHandbookFolder(folder);
  if (!loaded.ok) throw new Error("the handbook of sewing machines does not load");
  const machines = compileLexicon(loaded.handbook);
  const read = (text: string) =>
    findingsInWords(readMessage(text, machines, { today: testToday, part: "face-plate" }));
  expect(read("the plate is nickelled, two slotted screws and a smooth back").toSorted()).toEqual([
    "face-plate.back rolled",
    "face-plate.plating nickel",
    "face-plate.screws two-slotted",
  ]);
  expect(read("my neighbour's cat is black and her curtains are plain")).toEqual([]);
});
