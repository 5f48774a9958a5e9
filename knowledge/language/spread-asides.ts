// How a closing word reaches back: "two screws, he says", "…, apparently", "…, but that was my previous one", and guesses
// that take each other back.
import type { Clause } from "./clauses.ts";
import type { Aside } from "./stance.ts";
import { isElsewhere } from "./unreal-cues.ts";

/** Sets aside what a later clause of the sentence takes back; `asides` is changed in place. */
export function spreadBack(clauses: readonly Clause[], asides: (Aside | undefined)[]): void {
  spreadTrailing(clauses, asides);
  spreadDisclaimer(clauses, asides);
  spreadElsewhere(clauses, asides);
  spreadGuesses(clauses, asides);
}

/** "two screws, he says": a short closing clause of hearsay governs the one before it. */
function spreadTrailing(clauses: readonly Clause[], asides: (Aside | undefined)[]): void {
  clauses.forEach((clause, at) => {
    if (asides[at] !== "hearsay" || clause.join !== "comma" || clause.to - clause.from > 4) return;
    if (asides[at - 1] === undefined) asides[at - 1] = "hearsay";
  });
}

/** "It has a wide flange and an N inside, apparently": the last word takes the whole sentence back. */
function spreadDisclaimer(clauses: readonly Clause[], asides: (Aside | undefined)[]): void {
  clauses.forEach((clause, at) => {
    const isLast = clauses[at + 1]?.sentence !== clause.sentence;
    if (
      !isLast ||
      !/\b(?:apparently|allegedly|supposedly|reputedly|so (?:he|she|they) says?|i (?:heard|was told))$/.test(
        clause.text,
      )
    )
      return;
    for (let before = at; clauses[before]?.sentence === clause.sentence; before -= 1)
      asides[before] ??= "hearsay";
  });
}

/** Clauses that a closing word reaches back over. */
const mostGoverned = 3;

/** "Three spokes, but that was my previous one": the end of the sentence says that all of it was another. */
function spreadElsewhere(clauses: readonly Clause[], asides: (Aside | undefined)[]): void {
  clauses.forEach((clause, at) => {
    // "I changed it myself and wish I had kept the other": the wish is for the other only.
    if (!isElsewhere(clause.text.replace(/\bwish .*$/, "")) && !openEnd.test(clause.text)) return;
    for (
      let before = at;
      before > at - mostGoverned && clauses[before]?.sentence === clause.sentence;
      before -= 1
    )
      asides[before] ??= "another-car";
  });
}

/** "Maybe it is rough, maybe it isn't", "could be ply could be toast": two guesses in one breath tell nothing. */
function spreadGuesses(clauses: readonly Clause[], asides: (Aside | undefined)[]): void {
  const guesses = clauses.map(({ text }) => text.match(guess)?.length ?? 0);
  clauses.forEach((clause, at) => {
    const isNear = (other: number): boolean =>
      Math.abs(other - at) <= 1 && clauses[other]?.sentence === clause.sentence;
    const near = guesses.reduce((sum, count, other) => (isNear(other) ? sum + count : sum), 0);
    if (near > 1 && (guesses[at] ?? 0) > 0) asides[at] ??= "question";
  });
}

/** "A and B don't go together, or do they?" */
const openEnd =
  /^or (?:do|does|is|are|did|has|have|can|will|was|were|should|could) (?:they|it|that|he|she|i|you|we)(?: not)?$/;
const guess = /\b(?:maybe|perhaps|(?:could|might|may) be|it might|it could)\b/g;
