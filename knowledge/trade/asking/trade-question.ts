// A message prepared for the trade topics, and the one judgement they share: is this a question that general
// knowledge can answer, or a description of a part in the middle of an identification? When in doubt, the latter.
import type { Interval } from "../../calendar/interval.ts";
import { spellFractions } from "../plain-numbers.ts";
import type { TradeAnswer, TradeReading } from "../trade-reading.ts";

const LONGEST_MESSAGE = 2000;

/** Today, and the years the case is about when a case is open. */
export interface TradeContext {
  readonly era?: Interval;
  readonly today: Interval;
}

/** A message as the topics read it. `lower` is `text` in lower case, same length. */
export interface TradeQuestion {
  readonly text: string;
  readonly lower: string;
  /** Asks, or is a bare mark without a verb of describing, and is not about a part's rightness. */
  readonly mayBeAnswered: boolean;
  /** Asks in words (a question sign or a word such as what, when, mean), or states a mark and nothing else. */
  readonly isAsking: boolean;
  /** States the mark of a bolt head, tyre, rim, lens, belt label, wire or spanner and nothing else. */
  readonly isPlainMark: boolean;
  readonly context: TradeContext;
}

/** A topic gives the body of an answer, or undefined when the question is not its own. */
export type TopicReader = (question: TradeQuestion) => Omit<TradeAnswer, "evidence" | "isAsked"> | undefined;

const ASKING =
  /\?|\b(?:wh?[ao]t|wh?[ao]t'?s|earliest|which(?! (?:was|were|has|had|i|is|my|surprised)\b)|whens|how|why|(?<!i )mean|means|meaning|decode|convert|explain|identify|vs|versus|difference|who's|whos)\b|\bwhen\b(?! (?:i|we|you|he|she|they|it|it's|the)\b)|^(?:which|is|are|does|do|can|was|were|could|did|when|should|will|would|who)\b|^(?:\w+ )?(?:densit\w+|lead times?|tolerances?|shrinkage|batch size|e[- ]?(?:mark )?numbers?|wire colou?rs?) (?:of|for|on)\b|\b(?:wire|loom) colou?rs$|^(?:10th|tenth) (?:digit|character)|, (?:is|are|was|does) (?:that|it|this)\b|^vin (?:starts|begins)|^(?:un|ece) ?(?:reg\w* ?)?r? ?\d{1,3}$|^bs ?au ?7\b|^[a-z]{2,14} density$|^(?:which |un |ece )?regulation for\b/;
// "Copied from an original" speaks of copying, not of whether a part in hand is one.
const COPYING =
  /\b(?:cast|cop(?:y|ied)|taken|mould(?:ed)?|mold(?:ed)?|splash(?:ed)?) (?:\w+ )?(?:from|off|of) (?:an|the) original\b/;
const DECODING =
  /\bmeans?\b|\bmeaning\b|\bdecode\b|\bstands? for\b|\bconvert\b|\bexplain\b|\bvalid\b|\bok\b|\bhow old\b|\b(?:best|strongest) (?:proof|evidence)\b/;
const IDENTIFYING =
  /\bgenuine\b|\boriginal\b|\b(?:right|correct|ok|okay) (?:for|on) (?:my|this|the|a)\b|\bfakes?\b|\brepros?\b|\breproductions?\b|\blegit\b|\bwhich (?:version|variant|type|one|kind)\b|\bearly or late\b|\bwhat (?:have i|do i have|is this|part)\b|\bshould (?:my|it|the|a)\b|\bworth\b|\b(?:the|an?) (?:early|late|earlier|later) (?!\d)[a-z]|\bthe works\b|\brecogni[sz]e (?:this|these)\b|\bsuit my\b|\bleft with\b|\bno idea which car\b|\bis (?:that|this|it) normal\b|\bfrom (?:a|my|the) .{1,30}\?/;
const DESCRIBING =
  /\b(?:is|are|was|were|has|have|had|got|it's|its|there's|there|marked|says|reads|looks|seems|think|shows|found|fitted|came|comes|weighs|weighed|measures|measured|carries|stamped|etched)\b/;

const COLOUR =
  "(?:light )?(?:brown|white|green|purple|violet|blue|red|black|yellow|slate|orange|pink|gr[ae]y)";
const PLAIN_MARK = new RegExp(
  `^(?:(?:the|my|a|an|this) )?(?:(?:bolts?(?:[ -]?heads?)?|head of (?:the |my |a )?bolt|t[yi]re|sidewall|rim|lens|(?:seat ?)?belt label|wire|spanner)(?: code| size| date)? (?:has|have|with|says|reads|shows|is|ends|carries|marked|stamped)\\b|dot (?:code|date|number)\\b|\\d\\d[ab]? terminal$|terminal (?:[\\dbd][a-f0-9+-]{0,2}|df)\\??$|${COLOUR}(?:(?: with (?:an? )?| and |/)${COLOUR}(?: tracer| stripe)?)? wires?(?: with (?:an? )?${COLOUR}(?: tracer| stripe)?)?(?: (?:on|in) an? \\w+ (?:loom|car|harness))?$|belt label [a-z])`,
);
const MORE_IS_SAID =
  /\b(?:i|i'm|i've|mine|they|but|so|because|car|off|fitted|nothing|sure|missing|gone|broken|torn|cracked|worn)\b|[;!]|,(?! (?:et|dot|code))/;
const LONGEST_PLAIN_MARK = 11;
const LONGEST_WITHOUT_SIGN = 24;

/** Prepares a message; at most 2,000 characters of it are read. */
export function toTradeQuestion(message: string, context: TradeContext): TradeQuestion {
  const text = spellFractions(message.slice(0, LONGEST_MESSAGE)).replace(/\s+/g, " ").trim();
  // Lower-casing must not move characters: signs that grow in lower case stay as they are.
  const lower = [...text]
    .map((sign) => (sign.toLowerCase().length === sign.length ? sign.toLowerCase() : sign))
    .join("");
  const words = lower.split(" ").length;
  const isPlainMark =
    PLAIN_MARK.test(lower) && words <= LONGEST_PLAIN_MARK && !ASKING.test(lower) && !MORE_IS_SAID.test(lower);
  // A long message without a question sign tells; its "when", "how" and "which" hang on what is told.
  const isShort = words <= LONGEST_WITHOUT_SIGN || lower.includes("?");
  const isAsking = isPlainMark || (isShort && ASKING.test(lower));
  const isFragment = !DESCRIBING.test(lower) && words <= 12;
  const isAboutRightness = IDENTIFYING.test(lower.replace(COPYING, "")) && !DECODING.test(lower);
  const mayBeAnswered = (isAsking || isFragment) && !isAboutRightness;
  return { text, lower, isAsking, isPlainMark, mayBeAnswered, context };
}

/** The parts of an answer that every topic states; no readings, no answer. */
export function topicAnswer(
  topic: string,
  readings: readonly TradeReading[],
  said: { readonly cannotSay: string; readonly lookNext: string; readonly cautions?: readonly string[] },
): Omit<TradeAnswer, "evidence" | "isAsked"> | undefined {
  if (readings.length === 0) return undefined;
  return {
    topic,
    readings,
    cannotSay: said.cannotSay,
    lookNext: said.lookNext,
    cautions: said.cautions ?? [],
  };
}

/** Whether words shortly before a place deny what stands there: "no JWL mark", "without any >ABS<". */
export function isDeniedAt(lower: string, at: number): boolean {
  const before = lower.slice(Math.max(0, at - 24), at);
  return /\b(?:no|not|without|never|lacks?|missing|isn't|hasn't|can't find|cannot find)\b(?: (?:a|an|any|the|find|see))?[ \w-]{0,8}$/.test(
    before,
  );
}

const COUNT_WORDS: Readonly<Record<string, number>> = {
  no: 0,
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
};

/** The number of a count word or of figures ("three", "3"); undefined for other words. */
export function parseCount(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  return /^\d{1,3}$/.test(word) ? Number(word) : COUNT_WORDS[word];
}
