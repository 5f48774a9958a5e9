// "It has two screws, no three screws": a "no" that opens a clause right before a count puts right what was said, and denies nothing.
import { numberOf } from "./fold-word.ts";
import { foldedAt, type Token } from "./tokens.ts";

/** Whether the word is such a "no". "No one" is nobody, and "no two are alike" denies. */
export function isCorrectingNo(tokens: readonly Token[], at: number): boolean {
  const count = numberOf(foldedAt(tokens, at + 1)) ?? 0;
  if (foldedAt(tokens, at) !== "no" || count < 2) return false;
  if (tokens[at]?.breakBefore === "none" || tokens[at + 1]?.breakBefore !== "none") return false;
  return !tokens.slice(at + 2, at + 6).some(({ folded }) => folded === "same" || folded === "alike");
}
