// How each clause is meant: the speaker's own observation and how firmly, somebody else's word, a question, or a
// remark about another car. A stance runs on through commas and "and" until a contrast or the speaker's own eyes end it.
import { certainties } from "../evidence/report.ts";
import { isQuestion, isTagged } from "./asking-clauses.ts";
import type { Clause } from "./clauses.ts";
import {
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
import { spreadBack } from "./spread-asides.ts";
import { goesOn, isElsewhere, isOfKind, isUnreal, placeOfNorm } from "./unreal-cues.ts";

export type Aside = "hearsay" | "question" | "another-car";

export interface Stance {
  /** Undefined when the clause is the speaker's own statement. */
  readonly aside: Aside | undefined;
  readonly certainty: number;
  /** Whether it may tell of the part in hand: the speaker's own statement, or a question that describes what it asks about. */
  readonly mayTell: boolean;
}

/** One stance for each clause, in order. */
export function stancesOf(
  clauses: readonly Clause[],
  isQuoted: (clause: Clause) => boolean,
): readonly Stance[] {
  const asides: (Aside | undefined)[] = [];
  /** Questions that describe something, by clause. */
  const describes: boolean[] = [];
  let isWished = false;
  let running: Aside | undefined;
  const isNeverSeen = clauses.some((clause) => neverSeenCues.test(clause.text));
  let lasting: Aside | undefined = isNeverSeen ? "hearsay" : undefined;
  clauses.forEach((clause, at) => {
    lasting = lastingAfter(clause.text, lasting);
    if (beginsAnew(clause)) running = lasting;
    const isTold = isQuoted(clause) || saysOn(clause, asides[at - 1]);
    const own = isTold ? "hearsay" : ownAside(clause, clauses, at);
    isWished = wishAfter(isWished, running, own, isWish(clause, clauses, at, own));
    running = own ?? running;
    const here = running ?? notAtHand(clause.text);
    if (here !== undefined && goesOn(clause.text)) running = here;
    asides.push(here);
    describes.push(isRealQuestion(running, lasting, isWished) && mayDescribe(clause.text));
    if (own === "question" && isWhatItIs.test(clause.text)) running = lasting;
  });
  spreadBack(clauses, asides);
  return clauses.map((clause, at) => ({
    aside: asides[at],
    certainty: certaintyOf(clauses, at, clause),
    mayTell: mayTell(asides[at], describes[at] === true),
  }));
}

/** A wish runs on like the aside it is. */
function wishAfter(
  before: boolean,
  running: Aside | undefined,
  own: Aside | undefined,
  isOne: boolean,
): boolean {
  return running === undefined || own !== undefined ? isOne : before;
}

function isRealQuestion(running: Aside | undefined, lasting: Aside | undefined, isWished: boolean): boolean {
  return running === "question" && lasting !== "question" && !isWished;
}

function beginsAnew({ join, text }: Clause): boolean {
  return join === "sentence" || join === "contrast" || isOwnLooking(text);
}

function mayTell(aside: Aside | undefined, describes: boolean): boolean {
  return aside === undefined || (aside === "question" && describes);
}

/** Set aside for what is wished for, not for being asked. */
function isWish(clause: Clause, clauses: readonly Clause[], at: number, own: Aside | undefined): boolean {
  return own === "question" && !isQuestion(clause, clauses, at);
}

function mayDescribe(text: string): boolean {
  return !asksOutright.test(text) && notAtHand(text) === undefined;
}

/** "Is it smooth?", "are they steel": whoever asks so does not know. */
const asksOutright =
  /^(?:(?:so|and|but|or|ok|well) )*(?:is|are|was|were) (?:it|they|this|that|these|those|mine|yours|its \w+)\b/;

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
  const text = ownWords(clause.text);
  if (hearsayCues.test(text)) return "hearsay";
  if (otherCarCues.test(text.replace(placeOfNorm, "")) && !ownEyesCues.test(clause.text))
    return "another-car";
  return undefined;
}

const papers =
  /\b(?:log ?book|build (?:sheet|card|record)|certificate|registration|works (?:record|ledger)) (?:gives|shows|says|has|states)\b/g;

/** What was seen with one's own eyes or stands in the car's papers ends what others say. */
function isOwnLooking(text: string): boolean {
  return ownEyesCues.test(text) || text.search(papers) >= 0;
}

/** The clause without turns that sound like another's word or another's car, and are neither. */
function ownWords(text: string): string {
  return notAnothers.reduce((left, turn) => left.replace(turn, ""), text);
}

/** "Somebody wrote RB 11-3-79 in pencil": on the part, not in a message. */
const wroteOnPart =
  /\b(?:someone|somebody|laminator) (?:has |had )?(?:wrote|written|signed)\b(?! (?:that|to|back|me|on (?:here|the forum)|in (?:the|his|her|an?) (?:ad|advert|listing|thread|post|mail|email)))/;

/** "Somebody has laced a leather glove over the rim": what was done to the part, whoever did it. */
const handsOnPart =
  /\b(?:someone|somebody|some (?:hero|idiot|clown|bodger|fool|genius|previous owner|owner))(?: before me| else)?(?: has| had| have)? (?!told|said|posted|sold|asked|showed|wanted|claimed|reckoned|mentioned|offered|listed|advertised|called|described|wrote|owned|used)(?:been at|put|cut|stuck|sawn|ground|sewn|laid|bent|gone over|\w{3,}ed) (?:the|this|that|it|them|these|my|an?|over|all|on|in|into|through|round|out|off)\b/;

const notAnothers: readonly RegExp[] = [
  wroteOnPart,
  handsOnPart,
  // The part itself or a paper of the car says it.
  /\bso says (?:the|its|my) (?:hub|spoke|rim|case|casting|back|glass|dial|clock|stamp|mark|label|sticker|plate|tape|ruler|rule|calipers?|scales?)\b/g,
  papers,
  /\b(?:with|in|through|using|by|under) (?:the|an?|my) (?:\w+ )?(?:part|mirror|torch|lamp|light|lens|loupe|glass|glasses|magnif\w+) (?:i|we) (?:can |could )?read\b/g,
  // Leave to do something, and the only owner there was.
  /\bsays (?:i|we) (?:may|can|could|should)\b/g,
  /\b(?:nobody|no one|noone|none) (?:else )?(?:has |had )?ever owned\b|(?<=\bonly owner (?:it|(?:the|this|that|my) \w+) (?:has |had )?)ever had\b/g,
  // When it was done, not whose it is.
  /\bwhile (?:the|my) \w+ (?:was|is|were) (?:out|away|asleep|shopping|in bed|at (?:work|church|school|her \w+|his \w+))\b/g,
  // The car of somebody who is gone is the speaker's.
  /\b(?:late (?:\w+s|\w+ in laws)|(?:fathers|dads|mothers|mums|husbands|wifes|grandfathers|grandads) old) car\b/g,
];

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
