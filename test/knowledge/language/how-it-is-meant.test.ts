// How each clause of a message is meant: seen (1, .75, .5 by how firmly), somebody else's word, a question, or another car; clause
// by clause, and how far a word reaches. Everyday English, no source.
import { expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { stancesOf } from "../../../knowledge/language/stance.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";

function meant(text: string): string {
  const clauses = clausesOf(tokenise(text));
  return stancesOf(clauses, () => false)
    .map(({ aside, certainty }) => aside ?? String(certainty))
    .join(", ");
}

test.each([
  ["it is rough", "1"],
  ["it is rough, square, and has two screws", "1, 1, 1"],
  ["I think it is rough", "0.75"],
  ["it is rough, I think", "0.75, 0.75"],
  ["maybe it is rough", "0.5"],
  ["it is rough, not sure", "0.5, 0.5"],
  ["not sure, it is rough", "0.5, 0.5"],
  ["I think it is rough, maybe", "0.5, 0.5"],
  ["rough??", "0.5"],
  ["rough (?)", "0.5"],
  ["it is rough. I think it is old. it is square", "1, 0.75, 1"],
  ["two screws, right?", "0.75, 0.75"],
  ["has two screws, doesn't it?", "0.75, question"],
  ["is it rough?", "question"],
  ["is it rough", "question"],
  ["is the edge square", "1"],
  ["is the edge better than the lip", "question"],
  ["has the notches", "1"],
  ["does the edge run on", "question"],
  ["does it matter that the edge is grey", "1"],
  ["should I worry that the edge is grey", "1"],
  ["and what is it", "question"],
  ["while I'm here is it rough", "question"],
  ["which spoiler is this with the rough inside?", "1"],
  ["which spoiler is this with the rough inside, three screws?", "1, 1"],
  ["which spoiler comes with a lip?", "question"],
  ["it has a lip, which is wide", "1, 1"],
  ["it has a lip, which is it?", "1, question"],
  ["steel ball? yes", "1, 1"],
  ["steel ball? no", "question, 1"],
  ["a steel ball with the long thin stem? yes", "question, 1"],
  ["it is rough, square?", "1, question"],
  ["the seller says it is rough", "hearsay"],
  ["the seller says it is rough, square and has two screws", "hearsay, hearsay, hearsay"],
  ["the seller says it is rough but it is smooth", "hearsay, 1"],
  ["the seller says it is rough. It is square", "hearsay, 1"],
  ["the seller says it is rough, I can see two screws", "hearsay, 1"],
  ["bloke reckons it is early. Says it is rough inside. It is square", "hearsay, hearsay, 1"],
  ["it is rough. Says so on the label", "1, 1"],
  ["it has two screws, he says", "hearsay, hearsay"],
  ["it has a lip and two screws, apparently", "hearsay, hearsay, hearsay"],
  ["it has a lip and two screws, so he says. It is square", "hearsay, hearsay, hearsay, 1"],
  ["someone wrote RB in pencil", "1"],
  ["someone wrote that it is rough", "hearsay"],
  ["my mate has one with two screws", "another-car"],
  ["my other car is rough, mine is square", "another-car, 1"],
  ["three spokes, but that was my previous one", "another-car, another-car"],
  ["it is rough. three spokes, but that was my previous one", "1, another-car, another-car"],
  ["looking for a rough one, two screws", "question, question"],
  ["I want one. mine is rough", "question, 1"],
  ["had a dream. it was rough. it had two screws", "question, question, question"],
  ["had a dream. it was rough. my car has two screws", "question, question, 1"],
  ["haven't seen it. it is rough", "hearsay, hearsay"],
  ["haven't seen it. my car has two screws", "hearsay, 1"],
  ["can't see behind it, it is square", "question, 1"],
  ["look for three screws", "question"],
  ["early ones had two", "another-car"],
  ["soft letters mean a copy, it is hard", "question, 1"],
  ["I sold the blue one, it is square", "another-car, another-car"],
  ["maybe it is rough, maybe it isn't", "question, question"],
  ["could be ply could be toast", "question"],
  ["they don't go together, or do they", "another-car, question"],
  ["what is it, plastic, three screws", "question, 1, 1"],
  ["is it genuine, two screws", "question, 1"],
  ["where the number should be it is rough", "0.75"],
])("%s: %s", (text, expected) => {
  expect(meant(text)).toBe(expected);
});

test("a clause that stands in quotation marks is somebody's word", () => {
  const clauses = clausesOf(tokenise("it is rough, it is square"));
  const stances = stancesOf(clauses, (clause) => clause === clauses[0]);
  expect(stances.map(({ aside }) => aside)).toEqual(["hearsay", "hearsay"]);
});
