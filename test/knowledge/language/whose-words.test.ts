// To whom the words of a message belong: to the part's own names, to what its historians wrote of it, to talk that goes with anything, to figures, or
// to none of these. Parts of the bench book, whose historians are given some prose here.
import { expect, test } from "vitest";
import { layOut } from "../../../knowledge/language/lay-out.ts";
import { compileLexicon } from "../../../knowledge/language/lexicon.ts";
import { isOtherThing } from "../../../knowledge/language/other-things.ts";
import { plainTalk } from "../../../knowledge/language/plain-talk.ts";
import { classesOf } from "../../../knowledge/language/word-classes.ts";
import { benchHandbook, benchToday } from "../../support/bench-lexicon.ts";

const lexicon = compileLexicon({
  ...benchHandbook,
  parts: benchHandbook.parts.map((part) =>
    part.id === "door-mirror" ? { ...part, summary: "Fettled by apprentices in the annex." } : part,
  ),
});

/** "own talk prose" for the words of a text about a part. */
const classes = (text: string, part = "door-mirror"): string =>
  classesOf(layOut(text, lexicon, { today: benchToday, ...(part === "" ? {} : { part }) }).view).join(" ");

test.each([
  ["two screws", "figure own"],
  ["the lozenge and the housing", "talk own talk talk own"],
  ["apprentices fettled the shell", "prose prose talk own"],
  ["a hamster sat there", "talk foreign foreign talk"],
  ["hamsters 120 screws", "foreign figure own"],
  ["mirror door", "talk own"],
  ["plastic like a sofa of alloy, alloy", "own talk talk talk talk talk own"],
  ["plastic as if alloy", "own talk talk talk"],
  ["plastic as alloy", "own talk own"],
  ["plastic like alloy", "own talk own"],
  ["plastic like an alloy", "own talk talk talk"],
  ["plastic like thealloy", "own talk foreign"],
  ["smooth as on alloy. alloy", "foreign talk talk talk own"],
  ["as a board", "talk talk talk"],
  ["square groove", "own own"],
  ["convex", "own"],
  ["walnut", "foreign"],
  ["the question of effort", "talk foreign talk foreign"],
] as const)("%s: %s", (text, expected) => {
  expect(classes(text)).toBe(expected);
});

test("where no part is spoken of there are no words of it", () => {
  expect(classes("hamster lozenge the 12", "")).toBe("foreign foreign talk figure");
  expect(classes("walnut apprentices", "steering-wheel")).toBe("own foreign");
});

test("of another thing than a part are the rest of a car, the household and people; talk is what goes with anything", () => {
  expect(
    ["bonnet", "sofa", "labrador", "wife", "tea", "weather", "primer"].filter((word) => !isOtherThing(word)),
  ).toEqual([]);
  expect(["", "lozenge", "flange", "spoiler"].filter(isOtherThing)).toEqual([]);
  expect(["a", "whole", "gracias", "cheers", "mm", "y"].filter((word) => !plainTalk.has(word))).toEqual([]);
  expect(["", "lozenge", "sofa"].filter((word) => plainTalk.has(word))).toEqual([]);
});
