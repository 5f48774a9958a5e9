// Which clauses ask: by their mark, the order of their words or a question put inside a statement. What only looks like a
// question (a tag, a heading that is answered, "where the paint came off") still tells.
import type { Clause } from "./clauses.ts";
import { cueWords, embeddedQuestionCues } from "./cue-words.ts";
import { placeOfNorm } from "./unreal-cues.ts";

/** "Does it matter that the gel coat is grey": what follows "that" is so. */
const factive =
  /\b(?:does it matter|is it (?:normal|odd|strange|a problem|bad|wrong|usual|ok|okay)|should i (?:worry|mind|be worried)|does it mean anything) that\b/;
const openers =
  /^(?:(?:and|so|but|or|well|ok|okay|also|then|now|hi|hello|hey|please|just|anyway|only|while (?:im|i am|were|we are) (?:here|at it|on)) )+/;
const showsOwnPart =
  /\b(?:this|these(?! days)|that|those(?! days)|i (?:have|ve|got)|ive|mine|my|is it|are they)\b/;

/** Whether a clause asks, and so tells nothing. */
export function isQuestion(clause: Clause, clauses: readonly Clause[], at: number): boolean {
  if (isTagged(clauses, at)) return false;
  if (clause.join !== "sentence" && tellsWhileAsking(clauses, at)) return false;
  if (factive.test(clause.text)) return false;
  if (embeddedQuestionCues.test(clause.text)) return true;
  return asksByItsOrder(clauses, at, clause);
}

function asksByItsOrder(clauses: readonly Clause[], at: number, clause: Clause): boolean {
  const text = clause.text.replace(placeOfNorm, "there").replace(openers, "");
  const [first = ""] = text.split(" ", 1);
  const isWh = cueWords.interrogative.has(first) && !cueWords.polar.has(first);
  if (isWh && presupposes(text)) return false;
  const endsAsked = isAskedSentence(clauses, at);
  if ((isRelative(clause, first) || subordinate.test(text)) && !endsAsked) return false;
  if (isWh) return endsAsked || clause.text.split(" ").length <= 12;
  if (cueWords.polar.has(first)) return endsAsked || looksInverted(text);
  return clause.isAsked && !clause.isDoubted && !isTag(clause.text) && !isHeading(clause, clauses[at + 1]);
}

/** "Which spoiler is this with the rough inside?" tells of the part while it asks. */
function presupposes(text: string): boolean {
  return / with (?!out)/.test(text) && showsOwnPart.test(text);
}

/** "Where the paint came off it is cream": no question turns its words so. */
const subordinate =
  /^(?:where|when|how) (?:the|its?|i|my|ive|id|you|youd|they|he|this|that|there?s?|some\w*)\b/;

/** "…, which has a wide flange": the pronoun goes on telling. */
function isRelative(clause: Clause, first: string): boolean {
  return clause.join === "comma" && /^(?:which|who|whose|where|when)$/.test(first);
}

/** Whether an earlier clause of the sentence asks in that way and this one goes on telling. */
function tellsWhileAsking(clauses: readonly Clause[], at: number): boolean {
  const clause = clauses[at];
  if (
    clause === undefined ||
    cueWords.interrogative.has(clause.text.replace(openers, "").split(" ", 1)[0] ?? "")
  )
    return false;
  return clauses
    .slice(Math.max(0, at - 4), at)
    .some(
      (earlier) =>
        earlier.sentence === clause.sentence &&
        /^(?:so )?(?:which|what)\b/.test(earlier.text) &&
        presupposes(earlier.text),
    );
}

const tag =
  /(?:^|\s)(?:right|correct|yes|eh|huh|innit|isnt it|arent they|doesnt it|dont they|hasnt it|havent they|no)$/;

/** "two screws, right?", "has two screws, doesn't it?": a statement that wants a nod. */
export function isTagged(clauses: readonly Clause[], at: number): boolean {
  const clause = clauses[at];
  const last = clauses.slice(at, at + 4).findLast((each) => each.sentence === clause?.sentence);
  if (clause === undefined || last === undefined || !last.isAsked || !tag.test(last.text)) return false;
  return !looksInverted(clause.text) && !/^(?:what|which|who|how|why|where|when)\b/.test(clause.text);
}

/** "Steel ball? Yes.": the question is answered in the same breath. */
function isHeading(clause: Clause, next: Clause | undefined): boolean {
  const isShort = clause.to - clause.from <= 4;
  return isShort && next !== undefined && /^(?:yes|yep|yeah|present|yup|correct)\b/.test(next.text);
}

/** "is it …", "does the …": the verb stands before who does it. "Has the notches" leaves its subject out instead. */
function looksInverted(text: string): boolean {
  if (/^(?:is|are|was|were) (?:the|an?) .*\b(?:than|better|enough|or)\b/.test(text)) return true;
  return (
    /^(?:does|do|did|can|could|should|would|will|shall|may|doesnt|dont|didnt|shouldnt|wouldnt) (?:i|it|its|this|that|these|those|they|the|my|you|we|he|she|a|an|any|anyone|anybody|all|there|someone|somebody)\b/.test(
      text,
    ) ||
    /^(?:is|are|was|were|am|has|have|had|isnt|arent|hasnt|havent) (?:i|it|this|that|these|those|they|my|you|we|he|she|anyone|anybody|there|someone|somebody)\b/.test(
      text,
    )
  );
}

function isTag(text: string): boolean {
  return /^(?:right|correct|yes|no|ok|okay|yeah|eh|huh|innit|legit|thoughts|real|genuine|original|makes sense)$/.test(
    text,
  );
}

function isAskedSentence(clauses: readonly Clause[], at: number): boolean {
  const sentence = clauses[at]?.sentence;
  for (let next = at; clauses[next]?.sentence === sentence && next < clauses.length; next += 1) {
    if (clauses[next]?.isAsked) return true;
  }
  return false;
}
