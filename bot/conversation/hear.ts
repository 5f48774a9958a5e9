/**
 * A message as it is heard: bounded, read against the handbook, a pressed answer put into the same form as words. Nothing
 * that anybody can send makes it fail.
 */
import {
  type Handbook,
  type Interval,
  type MessageReading,
  parseDateText,
  type ReadingContext,
  stateName,
  type TradeAnswer,
  type TradeEvidence,
} from "../../knowledge/index.ts";
import type { IncomingMessage, PressedAnswer } from "../message.ts";
import { builtAgain } from "./built-again.ts";
import { type Case, notYetPut } from "./case.ts";
import { type Conversation, caseInHand, findCase } from "./conversation.ts";
import { asksForCopies, towardsGenuine } from "./copies-asked.ts";
import { unitQuestionPrefix } from "./doubted-reading.ts";
import { hearTrade } from "./hear-trade.ts";
import { inAskedUnit } from "./in-asked-unit.ts";
import type { Knowledge } from "./knowledge.ts";
import { readOfOtherCar } from "./other-car.ts";
import { readOn } from "./read-on.ts";
import { readWords } from "./read-words.ts";

/** Longer messages are read only so far, and that is said. */
export const longestMessage = 8000;

export interface Heard {
  readonly reading: MessageReading;
  readonly isCut: boolean;
  /** Neither words nor an answer. */
  readonly isEmpty: boolean;
  /** Signs without a letter or figure, such as a thumb. */
  readonly isNod: boolean;
  readonly hasPhotographs: boolean;
  /** An answer came by a control, with or without words. */
  readonly isPressed: boolean;
  /** Asks what tells a genuine part from its copies. */
  readonly isAboutCopies: boolean;
  /** Opens a case for another car of the speaker's. */
  readonly isOfOtherCar: boolean;
  /** What general trade knowledge answers; undefined when the message asks no such thing. */
  readonly trade: TradeAnswer | undefined;
  /** Marks that were told, not asked about. */
  readonly marks: readonly TradeEvidence[];
}

export function hear(
  knowledge: Knowledge,
  conversation: Conversation,
  message: IncomingMessage,
  today: Interval,
  serialDigest?: (serial: string) => string,
): Heard {
  const kept = spokenOf(conversation, message);
  const text = (message.text ?? "").slice(0, longestMessage);
  const context = { ...contextOf(kept, today), ...(serialDigest === undefined ? {} : { serialDigest }) };
  const read = readWords(knowledge, text, context);
  const continued = inAskedUnit(
    knowledge,
    context.part ?? null,
    context.askedFeature,
    builtAgain(knowledge, text, context, kept, message.from, read) ??
      readOn(knowledge, text, context, kept, message.from, read) ??
      read,
  );
  const ofOther = readOfOtherCar(text, continued, (words) => readWords(knowledge, words, context));
  const whole = ofOther ?? continued;
  const isAboutCopies = asksForCopies(whole, text);
  const { reading: spoken, ...ofTrade } = hearTrade(
    text,
    isAboutCopies ? towardsGenuine(whole) : whole,
    kept,
    today,
  );
  const pressed =
    message.answer === undefined ? undefined : pressedReading(knowledge, kept, message.answer, context);
  return {
    reading: pressed === undefined ? spoken : both(spoken, pressed, text.trim() === ""),
    isCut: (message.text ?? "").length > longestMessage,
    isEmpty: spoken.shownText.trim() === "" && pressed === undefined,
    isNod: text.trim() !== "" && !/[\p{L}\p{N}]/u.test(text),
    hasPhotographs: (message.photographs ?? []).length > 0,
    isPressed: pressed !== undefined,
    isAboutCopies,
    isOfOtherCar: ofOther !== undefined,
    ...ofTrade,
  };
}

/** What the reader may use beside the words: the part in hand and the question that waits. */
export function contextOf(kept: Case | undefined, today: Interval): ReadingContext {
  const part = kept?.facts.part;
  const asked = kept?.facts.open?.feature;
  const built = kept?.facts.car.built;
  return {
    today,
    ...(built === undefined ? {} : { built }),
    ...(part === null || part === undefined ? {} : { part }),
    ...(asked === undefined || asked === notYetPut ? {} : { askedFeature: asked }),
  };
}

function spokenOf(conversation: Conversation, message: IncomingMessage): Case | undefined {
  const named = message.case === undefined ? undefined : findCase(conversation, message.case);
  return named ?? caseInHand(conversation, message.from);
}

type Heardables = Pick<MessageReading, "parts" | "findings" | "car" | "intents">;

function pressedReading(
  knowledge: Knowledge,
  kept: Case | undefined,
  answer: PressedAnswer,
  context: ReadingContext,
): Heardables {
  const nothing: Heardables = { parts: [], findings: [], car: [], intents: [] };
  const { feature } = answer;
  if ("cannotTell" in answer) return { ...nothing, intents: [{ kind: "cannot-tell", feature }] };
  if ("reading" in answer) {
    return pressedWords(knowledge, answer.reading, feature, context);
  }
  const { state } = answer;
  if (feature.startsWith(unitQuestionPrefix)) {
    return { ...nothing, intents: [{ kind: state === "yes" ? "yes" : "no" }] };
  }
  if (feature === "part") return { ...nothing, parts: [{ part: state, words: state }] };
  const about = carAspects.find((one) => feature === `car.${one}`);
  if (about !== undefined) return { ...nothing, car: [{ about, id: state, words: state }] };
  const part = context.part ?? onlyPartWith(knowledge.handbook, feature);
  const words = stateWords(knowledge.handbook, kept, feature, state);
  return {
    ...nothing,
    parts: context.part === undefined && part !== null ? [{ part, words: part }] : [],
    findings: [{ part, feature, value: { kind: "state", state }, certainty: 1, words }],
  };
}

/** A size or a date filled in; a date in the strict forms of scripts (1981-08, 1981-W31) is taken as it stands. */
function pressedWords(
  knowledge: Knowledge,
  text: string,
  feature: string,
  context: ReadingContext,
): Heardables {
  const part = context.part ?? onlyPartWith(knowledge.handbook, feature);
  const parts = context.part === undefined && part !== null ? [{ part, words: part }] : [];
  const known = knowledge.handbook.parts.find((one) => one.id === part);
  const isDate = known?.features.find((one) => one.id === feature)?.kind === "date";
  const strict = isDate || feature === "car.built" ? parseDateText(text.trim()) : undefined;
  const nothing: Heardables = { parts, findings: [], car: [], intents: [] };
  if (strict !== undefined && feature === "car.built") {
    return { ...nothing, car: [{ about: "built", interval: strict, words: text }] };
  }
  if (strict !== undefined) {
    const value = { kind: "date", readings: [{ interval: strict, weight: 1 }] } as const;
    return { ...nothing, findings: [{ part, feature, value, certainty: 1, words: text }] };
  }
  const placed = part === null ? context : { ...context, part };
  const read = readWords(knowledge, text, { ...placed, askedFeature: feature });
  return { ...inAskedUnit(knowledge, part, feature, read), parts: [...parts, ...read.parts] };
}

/** The one part kind that has such a feature; null when none or several have. */
function onlyPartWith(handbook: Handbook, feature: string): string | null {
  const having = handbook.parts.filter((part) => part.features.some((one) => one.id === feature));
  const [only] = having;
  return having.length === 1 && only !== undefined ? only.id : null;
}

const carAspects = ["model", "trim", "market"] as const;

function stateWords(handbook: Handbook, kept: Case | undefined, id: string, state: string): string {
  const part = handbook.parts.find((one) => one.id === kept?.facts.part);
  const feature = part?.features.find((one) => one.id === id);
  return feature === undefined ? state : stateName(feature, state);
}

function both(spoken: MessageReading, pressed: Heardables, isPressedOnly: boolean): MessageReading {
  return {
    ...spoken,
    parts: [...spoken.parts, ...pressed.parts],
    findings: [...spoken.findings, ...pressed.findings],
    car: [...spoken.car, ...pressed.car],
    intents: [...spoken.intents, ...pressed.intents],
    isOpaque: isPressedOnly ? isEmptyHearing(pressed) : false,
  };
}

function isEmptyHearing({ parts, findings, car, intents }: Heardables): boolean {
  return parts.length + findings.length + car.length + intents.length === 0;
}
