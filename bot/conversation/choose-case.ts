/**
 * Which case a message is about. A part that is named decides; else the case in the person's hand. Two parts in one
 * message open two cases, and the first named is talked of first.
 */
import type { Handbook, MessageReading } from "../../knowledge/index.ts";
import type { IncomingMessage } from "../message.ts";
import type { Case } from "./case.ts";
import {
  type Conversation,
  caseInHand,
  findCase,
  newCase,
  withCase,
  withCaseInHand,
} from "./conversation.ts";
import type { Heard } from "./hear.ts";
import { carOf, carsOf, inheritedCar, ofCar } from "./which-car.ts";

export interface CaseChosen {
  readonly conversation: Conversation;
  readonly kept: Case;
  /** Other cases that this message opened or speaks to. */
  readonly others: readonly Case[];
  /** The case the person had in hand before. */
  readonly before: Case | undefined;
  /** True when the person now speaks of another case than before. */
  readonly hasSwitched: boolean;
  /** It is opened by this message. */
  readonly isOpened: boolean;
  /** It is about another car of the person's than the case before. */
  readonly isOfOtherCar: boolean;
  /** A number or id of a case that does not exist. */
  readonly unknownCase?: string;
}

/** The case meant, opened if need be; it is in the person's hand afterwards. Never fails: an unknown id keeps the hand as it is. */
export function chooseCase(
  handbook: Handbook,
  conversation: Conversation,
  message: IncomingMessage,
  { reading, isOfOtherCar }: Pick<Heard, "reading" | "isOfOtherCar">,
): CaseChosen {
  const person = message.from;
  const before = caseInHand(conversation, person);
  const asked = namedCase(conversation, message, reading);
  const inHand = asked.kept ?? before ?? newCase(conversation, person, handbook.cover.id);
  const isOfAnotherBook = inHand.handbook !== handbook.cover.id;
  const opened =
    opensAnew(reading) || isOfAnotherBook
      ? { conversation, kept: freshCase(conversation, inHand, person, handbook, isOfOtherCar) }
      : { conversation, kept: inHand };
  const routed = routeByPart(handbook, opened.conversation, opened.kept, message, reading);
  return {
    ...routed,
    before,
    conversation: withCaseInHand(routed.conversation, routed.kept, person),
    isOfOtherCar,
    isOpened: findCase(conversation, routed.kept.id) === undefined,
    hasSwitched: before !== undefined && before.id !== routed.kept.id,
    ...(asked.unknown === undefined ? {} : { unknownCase: asked.unknown }),
  };
}

interface Named {
  readonly kept?: Case;
  readonly unknown?: string;
}

function namedCase(conversation: Conversation, message: IncomingMessage, reading: MessageReading): Named {
  if (message.case !== undefined) {
    const kept = findCase(conversation, message.case);
    return kept === undefined ? { unknown: message.case } : { kept };
  }
  const wanted = reading.intents.find((intent) => intent.kind === "switch-case");
  if (wanted === undefined) return {};
  const kept = conversation.cases.find((one) => one.number === wanted.number);
  return kept === undefined ? { unknown: String(wanted.number) } : { kept };
}

function opensAnew(reading: MessageReading): boolean {
  return reading.intents.some((intent) => intent.kind === "new-case");
}

/** An empty case for this person: the one in hand when it is empty already; the same car, unless the part was a loose one. */
function freshCase(
  conversation: Conversation,
  inHand: Case,
  person: string,
  handbook: Handbook,
  isOfOtherCar = false,
): Case {
  const isOwn = inHand.owner === person && inHand.handbook === handbook.cover.id;
  const hasOwnCar = isOfOtherCar && Object.keys(inHand.facts.car).length > 0;
  if (isEmpty(inHand) && isOwn && !hasOwnCar) return inHand;
  const car = isOfOtherCar ? {} : inheritedCar(inHand, person);
  const fresh = newCase(conversation, person, handbook.cover.id, { car });
  return ofCar(fresh, isOfOtherCar ? carsOf(conversation, person) + 1 : isOwn ? carOf(inHand) : 1);
}

function isEmpty(kept: Case): boolean {
  return kept.facts.part === null && kept.facts.reports.length === 0;
}

interface Routed {
  readonly conversation: Conversation;
  readonly kept: Case;
  readonly others: readonly Case[];
}

function routeByPart(
  handbook: Handbook,
  conversation: Conversation,
  inHand: Case,
  message: IncomingMessage,
  reading: MessageReading,
): Routed {
  const parts = partsSpokenOf(handbook, message, reading, inHand.facts.part !== null);
  const own = ownCase(inHand, parts, message.from, reading);
  const start = own ? inHand : freshCase(conversation, inHand, message.from, handbook);
  const staysFor = start.facts.part === null ? parts[0] : start.facts.part;
  if (parts.length === 0 || (staysFor === start.facts.part && parts.includes(staysFor ?? ""))) {
    return openOthers(handbook, conversation, start, parts, message.from);
  }
  if (start.facts.part === null || isOnlyNamed(start, parts)) {
    return openOthers(handbook, conversation, withPart(start, parts[0] ?? null), parts, message.from);
  }
  const [first = ""] = parts;
  const kept = caseForPart(handbook, conversation, start, first, message.from);
  return openOthers(handbook, withCase(conversation, kept), kept, parts, message.from);
}

// "No, the rear spoiler": a part that was named and nothing more gives way to the next.
function isOnlyNamed({ facts, history }: Case, parts: readonly string[]): boolean {
  const isUnasked = facts.goal === "which-variant" && facts.reports.length === 0;
  return isUnasked && history.length <= 1 && parts.length === 1;
}

// A second voice that names a part and asks its own question, or tells of its own car, has a case of its own.
function ownCase(inHand: Case, parts: readonly string[], person: string, reading: MessageReading): boolean {
  if (inHand.owner === person || parts.length === 0) return true;
  const asksOwn = reading.intents.some((intent) => intent.kind === "goal") || reading.car.length > 0;
  const isOtherPart = inHand.facts.part !== null && !parts.includes(inHand.facts.part);
  return !(asksOwn || isOtherPart);
}

function openOthers(
  handbook: Handbook,
  conversation: Conversation,
  kept: Case,
  parts: readonly string[],
  person: string,
): Routed {
  const rest = parts.filter((part) => part !== kept.facts.part);
  return rest.reduce<Routed>(
    (routed, part) => {
      const other = caseForPart(handbook, routed.conversation, kept, part, person);
      return {
        conversation: withCase(routed.conversation, other),
        kept,
        others: [...routed.others, other],
      };
    },
    { conversation: withCase(conversation, kept), kept, others: [] },
  );
}

/** The person's case about this part, the latest of them; a new one with the same car when there is none. */
function caseForPart(
  handbook: Handbook,
  conversation: Conversation,
  like: Case,
  part: string,
  person: string,
): Case {
  const car = like.owner === person ? carOf(like) : 1;
  const known = conversation.cases.findLast(
    (kept) => kept.facts.part === part && kept.owner === person && carOf(kept) === car,
  );
  if (known !== undefined) return known;
  const fresh = newCase(conversation, person, handbook.cover.id, { part, car: inheritedCar(like, person) });
  return ofCar(fresh, car);
}

function withPart(kept: Case, part: string | null): Case {
  return { ...kept, facts: { ...kept.facts, part } };
}

/**
 * Parts the message is about, in the order said. Parts named only to compare their kinds open no case, nor does a kind's
 * name beside a part that is named itself; and a figure alone belongs to no part until one is named or in hand.
 */
function partsSpokenOf(
  handbook: Handbook,
  message: IncomingMessage,
  reading: MessageReading,
  isInHand: boolean,
): readonly string[] {
  const compared = reading.intents.flatMap((intent) =>
    intent.kind === "compare" || intent.kind === "list-variants" ? (intent.part ?? []) : [],
  );
  const findings = reading.findings.filter(({ value }) => isInHand || value.kind !== "measurement");
  const named = [
    ...partsByName(reading),
    ...findings.flatMap((finding) => finding.part ?? []),
    ...variantsAlone(reading).map((mention) => mention.part),
    ...(message.answer?.feature === "part" && "state" in message.answer ? [message.answer.state] : []),
  ];
  const told = new Set(findings.flatMap((finding) => finding.part ?? []));
  return [...new Set(named)].filter(
    (part) => handbook.parts.some((kind) => kind.id === part) && (told.has(part) || !compared.includes(part)),
  );
}

// "First type", beside "rear spoiler", is a word that a mirror's kind happens to share.
function partsByName({ parts, variants }: MessageReading): readonly string[] {
  const own = parts.filter(({ words }) => !variants.some((mention) => mention.words === words));
  return (own.length > 0 ? own : parts).map((one) => one.part);
}

function variantsAlone({ parts, variants }: MessageReading): MessageReading["variants"] {
  const isNamed = parts.some(({ words }) => !variants.some((mention) => mention.words === words));
  return isNamed ? [] : variants;
}
