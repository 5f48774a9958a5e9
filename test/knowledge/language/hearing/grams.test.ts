import { expect, test } from "vitest";
import { countedWords, sentencesOf } from "../../../../knowledge/language/hearing/grams.ts";
import { tokenise } from "../../../../knowledge/language/tokens.ts";
import { tarnView } from "../../../support/tarn-lexicon.ts";

const gramsOf = (...written: Parameters<typeof tarnView>) =>
  sentencesOf(tarnView(...written)).map(({ grams }) => [...grams.keys()]);

test("words are counted by their stems, with their neighbours, and in pairs across small words", () => {
  expect(gramsOf("It curls at the tips")).toEqual([
    [
      "it_curls",
      "curl",
      "curls_at",
      "at_the",
      "the_tips",
      "tip",
      "curl+tip",
      "asked nothing",
      "case door-handle",
      "alone",
    ],
  ]);
});

test("up to three words after a denial are counted as denied, until the next break", () => {
  const counted = (text: string) => countedWords(tokenise(text)).filter((word) => word !== undefined);
  expect(counted("no shiny old brass curl")).toEqual(["not", "not shiny", "not old", "not brass", "curl"]);
  expect(counted("hasn't got the curl")).toEqual(["not", "not curl"]);
  expect(counted("no curl, shiny")).toEqual(["not", "not curl", "shiny"]);
  expect(counted("shiny, no curl")).toEqual(["shiny", "not", "not curl"]);
});

test("a sentence offers what was asked before it, and whether a case is open", () => {
  expect(gramsOf("Shiny", undefined, {})).toEqual([["shiny", "asked nothing", "no case", "alone"]]);
  expect(gramsOf("Shiny", undefined, { part: "door-handle", askedFeature: "lever" })).toEqual([
    ["shiny", "asked lever", "case door-handle", "alone"],
  ]);
});

test("sentences are told apart by their place, and a question is marked", () => {
  const [first, second] = gramsOf("It curls. What is it?");
  expect(first).toContain("first");
  expect(first).not.toContain("?");
  expect(second).toContain("later");
  expect(second).toContain("?");
});

test("a gram that comes twice is kept once, where it came first; clauses of one sentence stay together", () => {
  const [sentence, ...others] = sentencesOf(tarnView("Shiny lever, and it is a shiny pivot"));
  expect(others).toEqual([]);
  expect(sentence?.grams.get("shiny")).toBe(0);
  expect(sentence?.last).toBe(1);
});
