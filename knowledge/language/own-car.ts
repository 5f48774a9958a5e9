// Whether a name of a car is told of the speaker's own: not of somebody else's, nor of any car that a question, a rule or letters
// of a mark speak of. Everyday English, no source.
import { isAnyCar, isOthersCar } from "./any-car.ts";
import type { MessageView } from "./message-view.ts";

/** Whether what the tokens name is told of the speaker's own car. */
export function isOfOwnCar(view: MessageView, from: number, to: number): boolean {
  const at = view.clauseOf[from] ?? 0;
  const aside = view.stances[at]?.aside;
  const before = view.tokens[from - 1];
  if (aside === "another-car" && !isToldOfOwn(view, from, at)) return false;
  if (aside === "hearsay" || isAnyCar(view, at)) return false;
  if (aside === "question" && isGeneral(view, from, before?.folded ?? "")) return false;
  if (/\bas a rule\b/.test(view.clauses[at]?.text ?? "")) return false;
  return !isAmongLetters(view, to) && !isOthersCar(view, from, to);
}

/** "It's a Touring so I guess it should be": a rule about it, and still what it is. */
function isToldOfOwn(view: MessageView, from: number, at: number): boolean {
  const first = view.clauses[at]?.from ?? from;
  return /^(?:and |but |so )?(?:its|it is|mine is|mines|(?:my |the )?car(?: is|s)) (?:an? )?$/.test(
    `${view.tokens
      .slice(first, from)
      .map(({ folded }) => folded)
      .join(" ")} `,
  );
}

const article = /^(?:the|an)$/;

/** "Did only the S get the clock?", "would that rule out the S?": of no car that somebody says to have. */
function isGeneral(view: MessageView, from: number, before: string): boolean {
  const isOwned = view.clauses.some(({ text }) =>
    /\b(?:my|mine|our|ive|i have|i own|i got|this|right)\b/.test(text),
  );
  const first = view.tokens[from]?.folded ?? "";
  return !isOwned && (article.test(first) || article.test(before));
}

/** "An S R and some digits": letters of a mark. */
function isAmongLetters(view: MessageView, to: number): boolean {
  const [last, next] = [view.tokens[to], view.tokens[to + 1]];
  return last?.folded.length === 1 && next?.folded.length === 1 && next.isCapital && next.folded !== "i";
}
