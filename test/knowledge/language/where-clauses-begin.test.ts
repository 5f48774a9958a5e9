// Where a clause begins and how: at a stop, a comma, a word of contrast or "and"; and which clauses ask, want a nod or tell. Everyday English,
// no source.
import { expect, test } from "vitest";
import { isQuestion, isTagged } from "../../../knowledge/language/asking-clauses.ts";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";

const cut = (text: string): readonly string[] =>
  clausesOf(tokenise(text)).map(
    ({ join, text: words, sentence, isAsked, isDoubted }) =>
      `${join} ${sentence}: ${words}${isAsked ? " ?" : ""}${isDoubted ? " ??" : ""}`,
  );

test.each([
  ["", []],
  ["square", ["sentence 0: square"]],
  ["It is square. It is round", ["sentence 0: it is square", "sentence 1: it is round"]],
  ["it is square, nice but small", ["sentence 0: it is square", "comma 0: nice", "contrast 0: but small"]],
  ["it is square, but small", ["sentence 0: it is square", "contrast 0: but small"]],
  ["it is square, and but small", ["sentence 0: it is square", "contrast 0: and", "contrast 0: but small"]],
  ["it is square, and small", ["sentence 0: it is square", "comma 0: and small"]],
  ["it is square and small", ["sentence 0: it is square", "and 0: and small"]],
  ["it is square n small", ["sentence 0: it is square", "and 0: n small"]],
  ["letters N small", ["sentence 0: letters n small"]],
  ["it is square but", ["sentence 0: it is square but"]],
  ["it is square, but", ["sentence 0: it is square", "contrast 0: but"]],
  ["it is still square", ["sentence 0: it is still square"]],
  ["only two", ["sentence 0: only two"]],
  ["it has only two", ["sentence 0: it has only two"]],
  ["but small", ["sentence 0: but small"]],
  ["is it square? yes", ["sentence 0: is it square ?", "sentence 1: yes"]],
  ["is it square?? yes", ["sentence 0: is it square ? ??", "sentence 1: yes"]],
  ["is it square(?), yes", ["sentence 0: is it square ? ??", "sentence 1: yes"]],
  ["it is square, is it?", ["sentence 0: it is square", "comma 0: is it ?"]],
  ["44,5 mm", ["sentence 0: 44 five mm"]],
  ["44, 5 mm", ["sentence 0: 44", "comma 0: five mm"]],
  ["square - small", ["sentence 0: square", "comma 0: small"]],
  ["square-cut", ["sentence 0: square cut"]],
  ["square / small", ["sentence 0: square", "comma 0: small"]],
  ["square... small", ["sentence 0: square", "sentence 1: small"]],
  ["square; small", ["sentence 0: square", "sentence 1: small"]],
  [
    "S. P. Q. R. plate",
    ["sentence 0: s", "sentence 1: p", "sentence 2: q", "sentence 3: r", "sentence 4: plate"],
  ],
  ["S.P.Q. plate", ["sentence 0: spq", "sentence 1: plate"]],
] as const)("%s: %s", (text, expected) => {
  expect(cut(text)).toEqual(expected);
});

test("a clause knows its words, and every word is in one", () => {
  const clauses = clausesOf(tokenise("It is square, and small. Is it?"));
  expect(clauses.map(({ from, to }) => [from, to])).toEqual([
    [0, 2],
    [3, 4],
    [5, 6],
  ]);
});

const asked = (text: string): string => {
  const clauses = clausesOf(tokenise(text));
  return clauses
    .map((clause, at) => {
      if (isQuestion(clause, clauses, at)) return "asks";
      return isTagged(clauses, at) ? "tags" : "tells";
    })
    .join(", ");
};

test.each([
  ["is it square?", "asks"],
  ["is it square", "asks"],
  ["is it square.", "asks"],
  ["it is square", "tells"],
  ["it is square?", "asks"],
  ["it is square??", "tells"],
  ["it is square(?)", "tells"],
  ["it is square, right?", "tags, tags"],
  ["it is square, isn't it?", "tags, asks"],
  ["it has two, doesn't it?", "tags, asks"],
  ["is it square, right?", "asks, tags"],
  ["what is it, eh?", "asks, tags"],
  ["square, no?", "tags, tags"],
  ["square. right?", "tells, tags"],
  ["square, and round, and small, and tall, right?", "tells, tags, tags, tags, tags"],
  ["square, and round, and small, and tall, and wide, right?", "tells, tells, tags, tags, tags, tags"],
  ["square, right", "tells, tells"],
  ["right?", "tags"],
  ["thoughts?", "tells"],
  ["real?", "tells"],
  ["makes sense?", "tells"],
  ["Steel ball? Yes", "tells, tells"],
  ["Steel ball? Yes, there", "tells, tells, tells"],
  ["Steel ball? No", "asks, tells"],
  ["The very old steel ball in it? Yes", "asks, tells"],
  ["steel ball? there it is. yes", "asks, tells, tells"],
  ["which spoiler is this with the rough inside?", "tells"],
  ["which spoiler is this with the rough inside, and two screws?", "tells, tells"],
  ["which spoiler is this with the rough inside, is it old?", "tells, asks"],
  [
    "which spoiler is this with the rough inside, and two, and three, and four, and five, and six?",
    "tells, tells, tells, tells, tells, asks",
  ],
  ["which spoiler is it with the rough inside?", "tells"],
  ["which spoiler has the rough inside?", "asks"],
  ["which spoiler is this without the rough inside?", "asks"],
  ["so what is mine with two screws, it is old", "tells, tells"],
  ["what is on those with two screws", "tells"],
  ["what is on those days with two screws", "asks"],
  ["where the paint came off it is cream", "tells"],
  ["where the paint came off it is cream?", "asks"],
  ["where is it", "asks"],
  ["where my paint came off", "tells"],
  ["when I got it it was cream", "tells"],
  ["how its edge was cut I saw", "tells"],
  ["how is its edge cut", "asks"],
  ["how there it lay", "tells"],
  ["how did it lie", "asks"],
  ["it is square, which has a lip", "tells, tells"],
  ["it is square, which has a lip?", "tells, asks"],
  ["which has a lip", "asks"],
  ["it is square. which has a lip", "tells, asks"],
  ["it is square, where it lies", "tells, tells"],
  ["does it matter that the gel coat is grey", "tells"],
  ["should I worry that it is grey?", "tells"],
  ["is it a problem that it is grey?", "tells"],
  ["is it normal that it is grey", "tells"],
  ["is it grey that it is", "asks"],
  ["so is it square", "asks"],
  ["hi, is it square", "tells, asks"],
  ["well ok so does it fit", "asks"],
  ["while I am here is it square", "asks"],
  ["and where is it", "asks"],
  ["what is it that lies there for so many years in the barn of my old aunt", "tells"],
  ["what is it that lies there for so many years in the barn of my aunt?", "asks"],
  ["is the edge square", "tells"],
  ["is the edge better than mine", "asks"],
  ["is the edge square or round", "asks"],
  ["are the edges good enough", "asks"],
  ["was a foot better", "asks"],
  ["is square", "tells"],
  ["has two notches", "tells"],
  ["has it two notches", "asks"],
  ["have they two", "asks"],
  ["had anyone two", "asks"],
  ["does fit", "tells"],
  ["does the foot fit", "asks"],
  ["did my foot fit", "asks"],
  ["can you tell", "asks"],
  ["could a foot fit", "asks"],
  ["will there be two", "asks"],
  ["shall we", "asks"],
  ["may I", "asks"],
  ["doesn't it fit", "asks"],
  ["dont they fit", "asks"],
  ["isnt it square", "asks"],
  ["aren't they square", "asks"],
  ["arent square", "tells"],
  ["am I right", "asks"],
  ["was there a lip", "asks"],
  ["I wonder if it is square", "asks"],
  ["let me know whether it is square", "asks"],
  ["tell me what it is", "asks"],
  ["it is square and is it old?", "tells, asks"],
  ["it is old and square?", "tells, asks"],
  ["I ask, it is old, is it square?", "tells, tells, asks"],
  ["square? it is", "asks, tells"],
] as const)("%s: %s", (text, expected) => {
  expect(asked(text)).toBe(expected);
});
