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

test("each gram is kept with the place of its first word, what no word says with none", () => {
  const [sentence] = sentencesOf(tarnView("Is a curl shiny?", undefined, { part: "door-handle" }));
  expect([...(sentence?.grams ?? [])]).toEqual([
    ["is_a", 0],
    ["a_curl", 1],
    ["curl", 2],
    ["curl_shiny", 2],
    ["shiny", 3],
    ["curl+shiny", 2],
    ["?", -1],
    ["asked nothing", -1],
    ["case door-handle", -1],
    ["alone", -1],
  ]);
});

test("a size is a size, whatever its figure: it is no word and joins none", () => {
  expect(gramsOf("curl 12 mm shiny")).toEqual([
    ["curl", "curl_#", "#_#", "#_shiny", "shiny", "curl+shiny", "asked nothing", "case door-handle", "alone"],
  ]);
});
