/**
 * One message, one turn: hear, choose the case, change it, assess it, compose the reply. Pure: the same knowledge,
 * conversation, message and day give the same bytes, and no message makes it throw.
 */
import type { Interval } from "../../knowledge/index.ts";
import type { IncomingMessage } from "../message.ts";
import type { Reply } from "../reply.ts";
import { assess } from "./assess.ts";
import type { Assessed, NextQuestion } from "./assessed.ts";
import { type Case, type CaseFacts, noFacts, notYetPut, saysTheSame, withFacts } from "./case.ts";
import { beginChange, withNote } from "./change.ts";
import { changeCase } from "./change-case.ts";
import { type CaseChosen, chooseCase } from "./choose-case.ts";
import { type Conversation, findCase, withCase, withoutOldHistories } from "./conversation.ts";
import { type Heard, hear } from "./hear.ts";
import type { Knowledge } from "./knowledge.ts";
import { composeReply } from "./saying/compose-reply.ts";
import { openQuestion } from "./saying/say-question.ts";
import { takeCarAlong } from "./take-car-along.ts";
import type { OtherCase } from "./turn.ts";
import { answeredBy, turnedByEdition } from "./turned-by-edition.ts";

export interface StepTaken {
  readonly conversation: Conversation;
  readonly reply: Reply;
  /** Misbeliefs that the message stated, by part kind and id. */
  readonly misbeliefs: readonly { readonly part: string; readonly misbelief: string }[];
  /** The message told nothing and asked nothing that the handbook answers: it was greeting, or words about something else. */
  readonly hasNothing: boolean;
}

/**
 * `today`: one day as an interval in months, for "last month" and to refuse dates that have not happened. `serialDigest`: makes of a
 * chassis number what tells the car from others without giving the number away.
 */
export function step(
  knowledge: Knowledge,
  conversation: Conversation,
  message: IncomingMessage,
  today: Interval,
  serialDigest?: (serial: string) => string,
): StepTaken {
  const heard = hear(knowledge, conversation, message, today, serialDigest);
  const chosen = chooseCase(knowledge.handbook, conversation, message, heard);
  const wanted = wantedGoal(heard, message);
  const before = asKept(conversation, chosen.kept);
  const part = partNamed(before, chosen.kept, heard);
  const begun = takeCarAlong(knowledge.handbook.cars, beginChange(before), chosen, message.from);
  const told = changeCase(knowledge, begun, wanted, part, message.from, today);
  const turned = turnedByEdition(knowledge, before);
  const change = turned === undefined ? told : withNote(told, turned);
  const { kept, assessed, question } = settle(knowledge, change.kept, change.facts);
  const others = changeOthers(knowledge, conversation, chosen, heard, message.from, today);
  const spoken = others.map((other) => other.kept).reduce(withCase, withCase(chosen.conversation, kept));
  const after = withoutOldHistories(spoken);
  const reply = composeReply(knowledge, {
    conversation: after,
    person: message.from,
    heard: wanted,
    chosen,
    others,
    change,
    kept,
    assessed,
    question,
    before: before.facts,
    justTold: toldSince(before.facts, kept.facts),
  });
  const misbeliefs = heard.reading.misbeliefs.map(({ part: of, misbelief }) => ({ part: of, misbelief }));
  const hasNothing = change.items.length === 0 && others.length === 0 && asksNothing(heard);
  return { conversation: after, reply, misbeliefs, hasNothing };
}

/** The case as it stood before this message; one that the message opened stood empty. */
function asKept(conversation: Conversation, chosen: Case): Case {
  const known = findCase(conversation, chosen.id);
  return known ?? { ...chosen, facts: { ...noFacts, car: chosen.facts.car } };
}

/** A goal that came beside the words counts like one said, and is surer than what the words may have meant. */
function wantedGoal(heard: Heard, { goal }: IncomingMessage): Heard {
  if (goal === undefined) return heard;
  const others = heard.reading.intents.filter((intent) => intent.kind !== "goal");
  const intents = [{ kind: "goal", goal, words: "" } as const, ...others];
  return { ...heard, reading: { ...heard.reading, intents, isOpaque: false } };
}

interface Settled {
  readonly kept: Case;
  readonly assessed: Assessed | undefined;
  readonly question: NextQuestion | null;
}

/** The case with these facts and the question that is now open. */
function settle(knowledge: Knowledge, kept: Case, facts: CaseFacts): Settled {
  const compiled = facts.part === null ? undefined : knowledge.compiled(facts.part);
  const assessed = compiled && assess(compiled, facts);
  const question: NextQuestion | null = assessed === undefined ? { about: "part" } : assessed.question;
  const cautions = question?.about === "feature" ? question.feature.cautions : [];
  const warned = [...new Set([...facts.warned, ...cautions])];
  const after = withFacts(kept, { ...facts, warned, open: openQuestion(question) });
  return { kept: answeredBy(knowledge, after, assessed), assessed, question };
}

/** Cases of other parts in the same message take their own facts; the car and the wishes are the first case's. */
function changeOthers(
  knowledge: Knowledge,
  conversation: Conversation,
  chosen: CaseChosen,
  heard: Heard,
  person: string,
  today: Interval,
): readonly OtherCase[] {
  return chosen.others.map((other) => {
    const { part } = other.facts;
    const findings = heard.reading.findings.filter((finding) => finding.part === part);
    const reading = { ...heard.reading, findings, intents: heard.reading.intents.filter(isGoal) };
    const own: Heard = { ...heard, reading, marks: [] };
    const begun = beginChange(asKept(conversation, other));
    const change = changeCase(knowledge, begun, own, part, person, today);
    return { kept: outOfHand(change.kept, change.facts), items: change.items };
  });
}

/**
 * A case that was told something while another is talked of. Its question and what it comes to are worked out when it is
 * talked of itself; a question that was put before stays open until it is answered.
 */
function outOfHand(kept: Case, facts: CaseFacts): Case {
  if (saysTheSame(kept.facts, facts)) return { ...kept, facts };
  const { answered: _, ...unanswered } = kept;
  const fresh = facts.reports.filter((report) => !kept.facts.reports.includes(report));
  const isOpen = facts.open !== null && !fresh.some((report) => report.feature === facts.open?.feature);
  return withFacts(unanswered, { ...facts, open: isOpen ? facts.open : { feature: notYetPut } });
}

/** The part this message brings to the case; null when it brings none, so that an undo may take the part back. */
function partNamed(before: Case, chosen: Case, { reading }: Heard): string | null {
  const { part } = chosen.facts;
  const isNamed = reading.parts.some((one) => one.part === part);
  return part !== before.facts.part || isNamed ? part : null;
}

function isGoal(intent: { readonly kind: string }): boolean {
  return intent.kind === "goal";
}

/** Words about the open question are easily heard in any other question that begins with how or why. */
const saysLittle: ReadonlySet<string> = new Set(["small-talk", "how-to-check", "why"]);

function asksNothing({ reading, trade, isAboutCopies, isPressed }: Heard): boolean {
  const isAsked = trade !== undefined || isAboutCopies || isPressed;
  const { intents, parts, misbeliefs } = reading;
  return (
    !isAsked && parts.length + misbeliefs.length === 0 && intents.every(({ kind }) => saysLittle.has(kind))
  );
}

function toldSince(before: CaseFacts, after: CaseFacts): readonly string[] {
  const known = new Set(before.reports.map((report) => JSON.stringify(report)));
  return after.reports
    .filter((report) => report.value.kind !== "cannot-tell" && !known.has(JSON.stringify(report)))
    .map((report) => report.feature);
}
