// Which words of a clause stand under a negation. The scope runs from the cue to the end of its clause, or to the
// word where the speaker starts anew ("no mark it has two screws"); idioms that only look negative are excepted.
import type { Clause } from "./clauses.ts";
import { isCorrectingNo } from "./correcting-no.ts";
import { cueWords } from "./cue-words.ts";
import { numberOf } from "./fold-word.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt, type Token } from "./tokens.ts";

export interface Negation {
  /** Token of the cue. */
  readonly cue: number;
  /** Last token it governs. */
  readonly to: number;
}

/** What stands behind a cue when it denies nothing about the part. */
const harmless =
  /^(?:(?:not|isnt|arent|wasnt) the \w+ (?:that|which|who) |(?:not|isnt|arent|wasnt|am not|never) (?:sure|certain|so sure|too sure|really sure|at all sure|entirely sure|quite sure|one(?= (?:of|hundred|100)\b|$)|clear|only|just|necessarily|yet|sure|to mention|looked|checked|measured|bad|much help|been|from|for sale|in (?:a|the) position)|no (?:idea|doubt|clue|question|problem|worries|rush|hurry|need|matter|more than|less than|longer|chance|way of|use|good|joy|luck|point|one|history|paperwork|papers|records?|offence|way to|offense|thanks|that|wait|sorry|its|it|i|they|theyre|there|theres|thats|the other|this|actually|smooth)|nothing (?:else|to|wrong|special|more|about|fancy)|(?:dont|didnt|cant|cannot|couldnt|wouldnt|do not|did not|can not|could not) (?:know|understand|remember|recall|care|mind|want|wish|like|need|tell|say|decide|make out(?! (?:any|an?)\b)|read|be sure|be certain|help|wait|afford|get (?:to|at|near|my|under|behind|in|it|a (?:look|good|clear))|reach|look|check|notice|measure|work out|figure|quote|ask|trust|worry|hesitate|seem to get|stand|believe (?:him|her|them|the seller)|have (?:a clue|an idea|time|the tools?|the car|access|it here|one here))|(?:havent|hasnt|hadnt|have not|had not) (?:looked|checked|measured|had|tried|weighed|removed|taken|been|time|yet|seen one|a clue|an idea|got (?:it|the car|round|around|time|access|a clue))|missing (?:some|something|out)|minus (?:two|one|three|the)|zero (?:idea|clue|to)|neither (?:do|am|can|of (?:us|them))|without (?:removing|taking|a|the)? ?(?:removing|taking|doubt|dismantling|question|damaging|knowing|looking|drilling|seeing|scratching|history|it off|lifting|going|having|spending|much|any (?:history|paperwork|problem)))\b/;

/** "can't see whether …", "can't see inside": nothing was seen, so nothing is denied. */
const unseen =
  /^(?:cant|cannot|couldnt|can not|could not|dont|didnt|do not|did not) (?:really |quite |properly |clearly |actually |even )?(?:see|find|spot|feel|view)(?: (?:if|whether|what|which|how|where|that far|in there|behind|under|underneath|inside|it|them|much|well|anything|the (?:back|inside|underside|rear|other side|figures?|date|arrow|number))\b|$)/;

const restarts: ReadonlySet<string> = new Set(
  "its has have theres there i got with its thats they theyre is are was were because it just only instead simply merely".split(
    " ",
  ),
);

/** Negations of one clause; words that a phrase already holds ("no mark" as the name of a state) deny nothing. */
export function negationsIn(
  clause: Clause,
  tokens: readonly Token[],
  phrasesAt: ReadonlyMap<number, readonly Spotted[]>,
): readonly Negation[] {
  const found: Negation[] = [];
  for (let at = clause.from; at <= clause.to; at += 1) {
    if (phrasesAt.has(at) || !denies(tokens, at, clause)) continue;
    found.push({ cue: at, to: scopeEnd(at, clause, tokens, phrasesAt) });
  }
  return found;
}

function denies(tokens: readonly Token[], at: number, clause: Clause): boolean {
  const word = foldedAt(tokens, at);
  if (isTurnedRound(tokens, at)) return true;
  if (!cueWords.negations.has(word) || isNumberSign(tokens, at) || isBareNo(word, at, clause)) return false;
  if (isCorrectingNo(tokens, at)) return false;
  if (isHarmless(textFrom(tokens, at, clause.to))) return false;
  const isSplit = word === "not" && at > clause.from;
  return !(isSplit && isHarmless(textFrom(tokens, at - 1, clause.to)));
}

/** "Anything but smooth", "far from smooth"; "far from the edge" is a place. "More than two" is not two. */
function isTurnedRound(tokens: readonly Token[], at: number): boolean {
  return turnedRound.test(textFrom(tokens, at, at + 2)) && !/^(?:no|not)$/.test(foldedAt(tokens, at - 1));
}
const turnedRound =
  /^(?:non \w|anything but |(?:hardly|scarcely) (?!any\b|there\b|seen\b|\w+(?:ed|ible|able)\b)|far from (?!(?:the|my|its|it|here|there|an?)\b)|(?:more|fewer|less|rather) than (?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b)/;

function isHarmless(ahead: string): boolean {
  return harmless.test(ahead) || unseen.test(ahead);
}

/** "no" alone in its clause answers a question. */
function isBareNo(word: string, at: number, clause: Clause): boolean {
  return word === "no" && at === clause.to;
}

/** "part no 12": an abbreviated number. */
function isNumberSign(tokens: readonly Token[], at: number): boolean {
  const before = foldedAt(tokens, at - 1);
  // "6 no. screws" is a drawing office's count.
  if (numberOf(before) !== undefined && foldedAt(tokens, at) === "no") return true;
  if (foldedAt(tokens, at) === "no" && foldedAt(tokens, at + 1) === "of") return true;
  const isLabel = /^(?:part|serial|chassis|casting|model|engine|car|body|phone|frame|mold|drawing)$/.test(
    before,
  );
  return foldedAt(tokens, at) === "no" && isLabel && beginsNumber(tokens, at + 1);
}

/** "12", "RX 12": a figure, letters before it or none. */
function beginsNumber(tokens: readonly Token[], at: number): boolean {
  const [first, second] = [foldedAt(tokens, at), foldedAt(tokens, at + 1)];
  return numberOf(first) !== undefined || (first.length <= 2 && numberOf(second) !== undefined);
}

function scopeEnd(
  cue: number,
  clause: Clause,
  tokens: readonly Token[],
  phrasesAt: ReadonlyMap<number, readonly Spotted[]>,
): number {
  let hasContent = false;
  for (let at = cue + 1; at <= clause.to; at += 1) {
    const word = foldedAt(tokens, at);
    if (hasContent && (restarts.has(word) || word === "no" || word === "not")) return at - 1;
    if (phrasesAt.get(at)?.some((term) => term.to === at)) hasContent = true;
  }
  return clause.to;
}

function textFrom(tokens: readonly Token[], from: number, to: number): string {
  return tokens
    .slice(from, Math.min(to, from + 7) + 1)
    .map((token) => token.folded)
    .join(" ");
}
