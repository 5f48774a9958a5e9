/**
 * A conversation is a place where people talk and the cases opened there. Each person has a case in hand; somebody who
 * has none joins the case talked of last, because that is what a second voice in a thread is about.
 */
import { z } from "zod";
import { Case, type CaseFacts, noFacts } from "./case.ts";
import { Errand } from "./errand.ts";

/** Raised when the shape of a kept conversation changes; older ones are then read by their own rules. */
const conversationVersion = 1;

/** Not a z.record: that leaves "__proto__" out, which is a name like any other where people choose their own. */
function holdsTexts(value: unknown): boolean {
  const isRecord = typeof value === "object" && value !== null && !Array.isArray(value);
  return isRecord && Object.values(value).every((each) => typeof each === "string");
}

export const Conversation = z
  .strictObject({
    version: z.literal(conversationVersion),
    cases: z.array(Case).readonly(),
    /** The case each person has in hand, by person. */
    inHand: z.custom<Readonly<Record<string, string>>>(holdsTexts),
    /** The case talked of last. */
    latest: z.string().nullable(),
    /** What people are in the middle of, beside their cases. */
    errands: z.array(Errand).readonly().exactOptional(),
    /** Everybody who has spoken here. */
    people: z.array(z.string()).readonly().exactOptional(),
    /** Which pinned answers, in which words, were shown in which case. */
    shown: z
      .array(z.strictObject({ case: z.string(), marks: z.array(z.string()).readonly() }).readonly())
      .readonly()
      .exactOptional(),
    /** The highest number of a case that was forgotten or erased: it is given to no other, for old buttons and keepers' answers still name it. */
    lastGone: z.number().int().positive().exactOptional(),
  })
  .readonly();
export type Conversation = z.output<typeof Conversation>;

export const emptyConversation: Conversation = {
  version: conversationVersion,
  cases: [],
  inHand: {},
  latest: null,
};

export function findCase(conversation: Conversation, id: string): Case | undefined {
  return conversation.cases.find((kept) => kept.id === id);
}

/** The case a person speaks about when they do not say which; undefined in an empty conversation. */
export function caseInHand(conversation: Conversation, person: string): Case | undefined {
  const own = Object.hasOwn(conversation.inHand, person) ? conversation.inHand[person] : undefined;
  const id = own ?? conversation.latest;
  return id === null || id === undefined ? undefined : findCase(conversation, id);
}

/** The conversation with this case put in place of its earlier self, or added, and in the person's hand. */
export function withCaseInHand(conversation: Conversation, kept: Case, person: string): Conversation {
  return {
    ...withCase(conversation, kept),
    inHand: { ...conversation.inHand, [person]: kept.id },
    latest: kept.id,
  };
}

/** The conversation with this case put in place of its earlier self, or added. */
export function withCase(conversation: Conversation, kept: Case): Conversation {
  const isKnown = conversation.cases.some((other) => other.id === kept.id);
  const cases = isKnown
    ? conversation.cases.map((other) => (other.id === kept.id ? kept : other))
    : [...conversation.cases, kept];
  return { ...conversation, cases };
}

/** Of so many cases, the newest, the steps can be taken back; older ones keep their facts. */
const casesWithHistory = 20;

/** The conversation without the histories of its old cases, so that a busy channel does not grow without end. */
export function withoutOldHistories(conversation: Conversation): Conversation {
  const old = conversation.cases.length - casesWithHistory;
  if (!conversation.cases.some((kept, index) => index < old && kept.history.length > 0)) return conversation;
  const cases = conversation.cases.map((kept, index) => (index < old ? { ...kept, history: [] } : kept));
  return { ...conversation, cases };
}

export function errandOf(conversation: Conversation, person: string): Errand | undefined {
  return conversation.errands?.find((errand) => errand.person === person);
}

/** The conversation with this errand as the person's only one; null: with none. */
export function withErrand(conversation: Conversation, person: string, errand: Errand | null): Conversation {
  const others = (conversation.errands ?? []).filter((one) => one.person !== person);
  const errands = errand === null ? others : [...others, errand];
  const { errands: _, ...rest } = conversation;
  return errands.length === 0 ? rest : { ...rest, errands };
}

/** The marks of the pinned answers that were shown in a case. */
export function pinsShown(conversation: Conversation, id: string): readonly string[] {
  return conversation.shown?.find((one) => one.case === id)?.marks ?? [];
}

/** Of so many cases it is remembered which pinned answers they were shown. */
const mostShown = 50;

export function withPinsShown(
  conversation: Conversation,
  id: string,
  marks: readonly string[],
): Conversation {
  const others = (conversation.shown ?? []).filter((one) => one.case !== id);
  const all = [...new Set([...pinsShown(conversation, id), ...marks])];
  return { ...conversation, shown: [...others, { case: id, marks: all }].slice(-mostShown) };
}

/** The highest number that a case here has or had; 0 where there never was one. */
function lastNumber({ cases, lastGone = 0 }: Conversation): number {
  return cases.reduce((last, kept) => Math.max(last, kept.number), lastGone);
}

/** What is left of a conversation once all in it is forgotten: the number to go on from; undefined where there was no case. */
export function forgotten(conversation: Conversation): Conversation | undefined {
  const lastGone = lastNumber(conversation);
  return lastGone === 0 ? undefined : { ...emptyConversation, lastGone };
}

/** A fresh case with the next number; it is not yet part of the conversation. */
export function newCase(
  conversation: Conversation,
  owner: string,
  handbook: string,
  facts: Partial<CaseFacts> = {},
): Case {
  const number = lastNumber(conversation) + 1;
  return {
    id: `case-${number}`,
    number,
    owner,
    handbook,
    facts: { ...noFacts, ...facts },
    history: [],
  };
}

/** A conversation as a store gave it back; undefined when it is damaged or of another version. */
export function readConversation(state: unknown): Conversation | undefined {
  const parsed = Conversation.safeParse(state);
  return parsed.success ? parsed.data : undefined;
}
