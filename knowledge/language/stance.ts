// How each clause is meant: the speaker's own observation and how firmly, somebody else's word, a question, or a
// remark about another car. A stance runs on through commas and "and" until a contrast or the speaker's own eyes end it.
import { certainties } from "../evidence/report.ts";
import type { Clause } from "./clauses.ts";
import {
  cueWords,
  embeddedQuestionCues,
  fictionCues,
  hearsayCues,
  maybeCues,
  neverSeenCues,
  otherCarCues,
  ownEyesCues,
  thanksCues,
  thinksCues,
  unseenCues,
  wishCues,
} from "./cue-words.ts";
import { withdraw } from "./intents.ts";
import { goesOn, isElsewhere, isOfKind, isUnreal, placeOfNorm } from "./unreal-cues.ts";

export type Aside = "hearsay" | "question" | "another-car";

export interface Stance {
  /** Undefined when the clause is the speaker's own statement. */
  readonly aside: Aside | undefined;
  readonly certainty: number;
}

/** One stance for each clause, in order. */
export function stancesOf(
  clauses: readonly Clause[],
  isQuoted: (clause: Clause) => boolean,
): readonly Stance[] {
  const asides: (Aside | undefined)[] = [];
  let running: Aside | undefined;
  const isNeverSeen = clauses.some((clause) => neverSeenCues.test(clause.text));
  let lasting: Aside | undefined = isNeverSeen ? "hearsay" : undefined;
  clauses.forEach((clause, at) => {
    const isNewSentence = clause.join === "sentence";
    lasting = lastingAfter(clause.text, lasting);
    if (isNewSentence || clause.join === "contrast" || ownEyesCues.test(clause.text)) running = lasting;
    const isTold = isQuoted(clause) || saysOn(clause, asides[at - 1]);
    const own = isTold ? "hearsay" : ownAside(clause, clauses, at);
    if (own !== undefined) running = own;
    const here = running ?? notAtHand(clause.text);
    if (here !== undefined && goesOn(clause.text)) running = here;
    asides.push(here);
    if (own === "question" && isWhatItIs.test(clause.text)) running = lasting;
  });
  spreadTrailing(clauses, asides);
  spreadDisclaimer(clauses, asides);
  spreadElsewhere(clauses, asides);
  spreadGuesses(clauses, asides);
  return clauses.map((clause, at) => ({ aside: asides[at], certainty: certaintyOf(clauses, at, clause) }));
}

/** "Which mirror is it, plastic, three screws": who asks what the part in hand is goes on to describe it. */
const isWhatItIs =
  /^(?:\w+ ){0,2}(?:which|what)(?: \w+){0,5} (?:(?:is|are) (?:it|this|that|these|those|mine|they)|(?:have|did|do) i (?:got|have|get|buy|bought))$|^(?:is|are) (?:it|this|that|these|those|mine|they|my)(?: \w+){0,3} (?:genuine|original|legit|real|right|correct|(?:a )?(?:copy|repro\w*|fake))(?: (?:for|on) (?:\w+ ?){1,6})?$/;

/** What fiction begins lasts until the speaker comes to what is their own. */
function lastingAfter(text: string, lasting: Aside | undefined): Aside | undefined {
  if (fictionCues.test(text)) return "question";
  const isOwn = ownEyesCues.test(text) || /\bmy (?!wife|husband|mother|friend)/.test(text);
  return isOwn ? undefined : lasting;
}

/** "Bloke reckons it is early. Says it is rough inside.": the next sentence leaves its speaker out. */
function saysOn(clause: Clause, before: Aside | undefined): boolean {
  return (
    before === "hearsay" &&
    /^(?:and |also )?(?:says|said|reckons|claims|swears|insists|adds|thinks)\b/.test(clause.text)
  );
}

/** What could not be seen, or is taken back. */
function tellsNothing(text: string): boolean {
  return unseenCues.test(text) || thanksCues.test(text) || withdraw.test(text);
}

function ownAside(clause: Clause, clauses: readonly Clause[], at: number): Aside | undefined {
  if (isQuestion(clause, clauses, at)) return "question";
  if (wishCues.test(clause.text)) return "question";
  const text = clause.text.replace(wroteOnPart, "").replace(handsOnPart, "");
  if (hearsayCues.test(text)) return "hearsay";
  if (otherCarCues.test(text.replace(placeOfNorm, "")) && !ownEyesCues.test(clause.text))
    return "another-car";
  return undefined;
}

/** "Somebody wrote RB 11-3-79 in pencil": on the part, not in a message. */
const wroteOnPart =
  /\b(?:someone|somebody|laminator) (?:has |had )?(?:wrote|written|signed)\b(?! (?:that|to|back|me|on (?:here|the forum)|in (?:the|his|her|an?) (?:ad|advert|listing|thread|post|mail|email)))/;

/** "Somebody has laced a leather glove over the rim": what was done to the part, whoever did it. */
const handsOnPart =
  /\b(?:someone|somebody|some (?:hero|idiot|clown|bodger|fool|genius|previous owner|owner))(?: before me| else)?(?: has| had| have)? (?!told|said|posted|sold|asked|showed|wanted|claimed|reckoned|mentioned|offered|listed|advertised|called|described|wrote|owned|used)(?:been at|put|cut|stuck|sawn|ground|sewn|laid|bent|gone over|\w{3,}ed) (?:the|this|that|it|them|these|my|an?|over|all|on|in|into|through|round|out|off)\b/;

/** What something is likened to is supposed only for the picture. */
const likening = /\b(?:as if|as though|like (?:an?|the|on|in|when|it|some\w*|old|those|what)) .*$/;
/** "A stamp I can't read" is there all the same. */
const illegible =
  /(?<=\w) (?:that |which )?(?:i|we) (?:cant|couldnt|cannot|can not) (?:quite |really )?(?:read|make out|decipher)$/;

/** What the clause itself is of, with no bearing on the next: not seen, supposed, or of another. */
function notAtHand(text: string): Aside | undefined {
  const plain = text.replace(likening, "").replace(illegible, "");
  if (tellsNothing(plain) || isUnreal(plain)) return "question";
  if (isElsewhere(plain)) return "another-car";
  return isOfKind(text) && !ownEyesCues.test(text) ? "question" : undefined;
}

/** "Does it matter that the gel coat is grey": what follows "that" is so. */
const factive =
  /\b(?:does it matter|is it (?:normal|odd|strange|a problem|bad|wrong|usual|ok|okay)|should i (?:worry|mind|be worried)|does it mean anything) that\b/;
const openers =
  /^(?:(?:and|so|but|or|well|ok|okay|also|then|now|hi|hello|hey|please|just|anyway|only|while (?:im|i am|were|we are) (?:here|at it|on)) )+/;
const showsOwnPart =
  /\b(?:this|these(?! days)|that|those(?! days)|i (?:have|ve|got)|ive|mine|my|is it|are they)\b/;

function isQuestion(clause: Clause, clauses: readonly Clause[], at: number): boolean {
  if (isTagged(clauses, at)) return false;
  if (clause.join !== "sentence" && tellsWhileAsking(clauses, at)) return false;
  if (factive.test(clause.text)) return false;
  const text = clause.text.replace(placeOfNorm, "there").replace(openers, "");
  const [first = ""] = text.split(" ", 1);
  if (embeddedQuestionCues.test(clause.text)) return true;
  const isWh = cueWords.interrogative.has(first) && !cueWords.polar.has(first);
  if (isWh && presupposes(text)) return false;
  if ((isRelative(clause, first) || subordinate.test(text)) && !isAskedSentence(clauses, at)) return false;
  const endsAsked = isAskedSentence(clauses, at);
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
  return /^(?:right|correct|yes|no|ok|okay|yeah|eh|huh|innit|isnt it|arent they|doesnt it|is it|legit|thoughts|any ideas?|any thoughts|real|genuine|original|makes sense)$/.test(
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
    if (!isElsewhere(clause.text) && !openEnd.test(clause.text)) return;
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

/** The lower of the clause's own doubt and that of a neighbour made of doubt alone ("rough inside, I think"). */
function certaintyOf(clauses: readonly Clause[], at: number, clause: Clause): number {
  const next = clauses[at + 1];
  const previous = clauses[at - 1];
  let certainty = isTagged(clauses, at) ? certainties.thinks : doubtIn(clause.text);
  if (clause.isDoubted) certainty = certainties.maybe;
  if (next !== undefined && next.sentence === clause.sentence && isOnlyDoubt(next)) {
    certainty = Math.min(certainty, doubtIn(next.text));
  }
  const leads = previous !== undefined && previous.sentence === clause.sentence && isOnlyDoubt(previous);
  if (leads) certainty = Math.min(certainty, doubtIn(previous.text));
  return certainty;
}

function isOnlyDoubt(clause: Clause): boolean {
  return clause.to - clause.from <= 3 && doubtIn(clause.text) < certainties.firm;
}

function doubtIn(text: string): number {
  if (maybeCues.test(text)) return certainties.maybe;
  return thinksCues.test(text) ? certainties.thinks : certainties.firm;
}
