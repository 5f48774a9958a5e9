/**
 * What a message asks of general trade knowledge. One that plainly asks comes before what its words would mean else:
 * "how do I tell 5x120 from 5x120.65" compares no two spoilers. A part that is named or described still wins.
 */
import {
  answerTradeQuestion,
  type FeatureFinding,
  type Intent,
  type Interval,
  type MessageReading,
  readTradeEvidence,
  type TradeAnswer,
  type TradeEvidence,
} from "../../knowledge/index.ts";
import type { Case } from "./case.ts";

export interface TradeHeard {
  /** What is left of the reading once the question has taken its words. */
  readonly reading: MessageReading;
  /** What general trade knowledge answers; undefined when the message asks no such thing. */
  readonly trade: TradeAnswer | undefined;
  /** Marks that were told, not asked about. */
  readonly marks: readonly TradeEvidence[];
}

const asking = /\?|\bmean(s|ing)?\b|^\s*(what|which|when|how|is|are|does|do|can)\b/i;

/** The message against trade knowledge; `kept` is the case it is said in, whose car bounds the dates. */
export function hearTrade(
  text: string,
  reading: MessageReading,
  kept: Case | undefined,
  today: Interval,
): TradeHeard {
  const built = kept?.facts.car.built;
  const context = { today, ...(built === undefined ? {} : { era: built }) };
  const answer = answerTradeQuestion(text, context);
  if (answer?.isAsked === true && isOnlyAsked(reading)) {
    return { reading: withoutQuestion(reading, kept), trade: answer, marks: [] };
  }
  // A mark that is told counts, and is explained only when nothing else was read.
  const isAsking = asking.test(text);
  const marks = readTradeEvidence(withoutQuestions(text), context);
  const isElse = reading.findings.length > 0 || reading.intents.length > 0 || (!isAsking && marks.length > 0);
  return { reading: withoutFiguresOf(marks, reading), trade: isElse ? undefined : answer, marks };
}

/** "The glass is marked E4 43R-001234" says no size, whatever size is asked for. */
function withoutFiguresOf(marks: readonly TradeEvidence[], reading: MessageReading): MessageReading {
  if (!marks.some(({ kind }) => kind === "not-before")) return reading;
  const findings = reading.findings.filter(
    ({ value }) => value.kind !== "measurement" || value.unit !== null,
  );
  return { ...reading, findings };
}

/** What is told beside a question: "it says >PUR< inside, is it genuine?" tells a mark. */
function withoutQuestions(text: string): string {
  const pieces = text.split(/(?<=[.?!;,]\s)/);
  return pieces.filter((piece) => !asking.test(piece)).join("");
}

/** Whether all that was read may be the question's own words: figures, and wishes that name nothing of a handbook. */
function isOnlyAsked({ parts, variants, findings, intents }: MessageReading): boolean {
  return (
    parts.length + variants.length === 0 && findings.every(isFigure) && intents.every(isWordingOfQuestion)
  );
}

function isFigure({ value }: FeatureFinding): boolean {
  return value.kind === "measurement" || value.kind === "date";
}

function isWordingOfQuestion(intent: Intent): boolean {
  switch (intent.kind) {
    case "compare":
      return intent.variants.length === 0;
    case "list-variants":
      return intent.part === null;
    case "how-to-check":
      return intent.feature === undefined;
    case "goal":
      return intent.goal === "which-variant";
    default:
      return false;
  }
}

// A size told of the part in hand stays told; a figure with no part to belong to, or a mark asked about, is no fact.
function withoutQuestion(reading: MessageReading, kept: Case | undefined): MessageReading {
  const inHand = kept?.facts.part ?? undefined;
  const findings = reading.findings.filter(
    ({ part, value }) => inHand !== undefined && part === inHand && value.kind === "measurement",
  );
  return { ...reading, findings, intents: [], leftAside: [], nearMisses: [], isOpaque: false };
}
