// Where a clause begins and how: at a stop, a comma, a word of contrast or "and". Everyday English, no source.
import { expect, test } from "vitest";
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
