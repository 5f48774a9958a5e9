import { expect, test } from "vitest";
import { isCorrectingNo } from "../../../knowledge/language/correcting-no.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";

/** The words that put right. */
function correcting(text: string): readonly number[] {
  const tokens = tokenise(text);
  return tokens.flatMap((_, at) => (isCorrectingNo(tokens, at) ? [at] : []));
}

test("a no that opens a clause right before a count puts right", () => {
  expect(correcting("two screws, no three")).toEqual([2]);
  expect(correcting("no 12 spokes")).toEqual([0]);
});

test("nobody, a denial within a clause, and two that are not alike put nothing right", () => {
  for (const text of [
    "no one knows",
    "it has no three",
    "no two are alike",
    "no two of them look alike",
    "no, three",
    "not three",
  ])
    expect([text, correcting(text)]).toEqual([text, []]);
});
