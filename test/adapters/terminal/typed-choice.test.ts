import { expect, test } from "vitest";
import { areCounted, typedAgainst } from "../../../adapters/terminal/typed-choice.ts";
import { choice, groove, reply, thickness } from "./replies.ts";

const asked = reply(groove, { kind: "choices", choices: [choice("sources", "show the sources", "sources")] });

test("a shown number presses its answer, with or without a dot", () => {
  const pressed = { answer: { feature: "gasket-groove", state: "rounded" } };
  expect(typedAgainst("2", asked)).toEqual(pressed);
  expect(typedAgainst(" 2. ", asked)).toEqual(pressed);
});

test("the words of an answer press it too, in any case", () => {
  expect(typedAgainst("Square-Cut", asked)).toEqual({
    answer: { feature: "gasket-groove", state: "square" },
  });
});

test("what is offered beside an answer is said in its own words", () => {
  expect(typedAgainst("why this?", asked)).toEqual({ text: "why do you ask" });
  expect(typedAgainst("show the sources", asked)).toEqual({ text: "sources" });
});

test("a number that was not shown is words", () => {
  expect(typedAgainst("3", asked)).toEqual({ text: "3" });
  expect(typedAgainst("0", asked)).toEqual({ text: "0" });
  expect(typedAgainst("2 screws", asked)).toEqual({ text: "2 screws" });
});

test("where a measurement is asked for, a number is the measurement", () => {
  expect(typedAgainst("1", reply(thickness))).toEqual({ text: "1" });
  expect(typedAgainst("no glass", reply(thickness))).toEqual({
    answer: { feature: "glass-thickness", state: "not-there" },
  });
});

test("without a question the things to do next are numbered", () => {
  const done = reply({ kind: "choices", choices: [choice("car", "tell me about the car", "my car")] });
  expect(typedAgainst("1", done)).toEqual({ text: "my car" });
});

test("before the first reply everything is words", () => {
  expect(typedAgainst("1", undefined)).toEqual({ text: "1" });
});

test("where another answer names that count, a number is the count and not a place", () => {
  const screws = ["two screws", "three screws", "clamp on the door edge"].map((label) =>
    choice(label, label),
  );
  const counted = reply({ ...groove, answers: screws });
  expect(typedAgainst("3", counted)).toEqual({ text: "3" });
  expect(typedAgainst("2", counted)).toEqual({ text: "2" });
  expect(typedAgainst("three screws", counted)).toEqual({
    answer: { feature: "gasket-groove", state: "three screws" },
  });
});

test.each([
  [["one plug", "two plugs"], false],
  [["six dials", "five dials", "seven dials"], false],
  [["two drain notches", "no drain notches"], false],
  [["six screws", "four studs", "tape", "undrilled"], true],
  [["2 holes", "3 holes", "none"], true],
  [["rounded", "square"], false],
])("%s are counts that a place could be taken for: %s", (labels, are) => {
  expect(areCounted(labels.map((label) => choice(label, label)))).toBe(are);
});
