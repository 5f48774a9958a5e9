/**
 * The reply of a turn in its fixed order: what was done, what was understood, corrections, direct answers, where it
 * stands or the answer, cautions, one question. What has not changed is not said again.
 */
import type { Intent } from "../../../knowledge/index.ts";
import { answerWishes } from "../../commands/answer-wishes.ts";
import { caseChoice, partNameOf } from "../../commands/cases.ts";
import type { Scene } from "../../commands/scene.ts";
import { tellCopies } from "../../commands/tell-copies.ts";
import type { Block, Reply } from "../../reply.ts";
import { aside } from "../../text-blocks.ts";
import { doubtsOfCase } from "../assess.ts";
import type { Assessed, NextQuestion } from "../assessed.ts";
import type { CaseFacts } from "../case.ts";
import { questionOfDoubt } from "../doubt.ts";
import { longestMessage } from "../hear.ts";
import type { Knowledge } from "../knowledge.ts";
import {
  alsoOpened,
  alsoOpenedSeveral,
  caseInHandNow,
  newCaseOpened,
  noSuchCase,
  smallTalkInCase,
  waitingCase,
  withdrawSay,
} from "../phrases/commands.ts";
import { listed } from "../phrases/grammar.ts";
import {
  answerNotOnOffer,
  nothingSaid,
  notUnderstood,
  onlyPhotographs,
  partLabel,
  readOnlySoFar,
} from "../phrases/understood.ts";
import type { Turn } from "../turn.ts";
import { understoodBlock } from "../understood.ts";
import { sayAnswer } from "./say-answer.ts";
import { sayAnswerAgain } from "./say-answer-again.ts";
import { sayCautions } from "./say-cautions.ts";
import { sayLeadTimes } from "./say-lead-times.ts";
import { sayMisbeliefs } from "./say-misbeliefs.ts";
import { choicesAfter, sayNextSteps } from "./say-next-steps.ts";
import { openQuestion, questionBlock } from "./say-question.ts";
import { hasEvidence, sayStanding } from "./say-standing.ts";
import { sayTradeAnswer } from "./say-trade-answer.ts";
import { sayBrokenDates, sayReason } from "./say-trouble.ts";
import { sayWayOut } from "./say-way-out.ts";
import { summaryOf } from "./summary.ts";

export function composeReply(knowledge: Knowledge, turn: Turn): Reply {
  const { handbook } = knowledge;
  const { heard, change } = turn;
  const direct = [
    ...answerWishes(sceneOf(knowledge, turn), wishesOf(turn), heard.reading.shownText),
    ...(heard.trade === undefined ? [] : sayTradeAnswer(heard.trade)),
    ...(heard.isAboutCopies ? tellCopies(sceneOf(knowledge, turn)) : []),
  ];
  const read = understoodBlock(change.items, change.remarks);
  const told: readonly Block[] = [
    ...doneLines(knowledge, turn),
    ...(read === undefined ? [] : [read]),
    ...sayMisbeliefs(handbook, heard.reading.misbeliefs),
    ...direct,
  ];
  const stands = standsBlocks(knowledge, turn);
  const opening = told.length + stands.length === 0 ? misunderstood(turn) : told;
  const isAside = direct.length > 0 && isUntold(turn) && !heard.reading.intents.some(isAboutQuestion);
  const isLost = told.length + stands.length === 0;
  const blocks = [...opening, ...stands, ...(isAside ? [] : asked(knowledge, turn, isLost))];
  return { blocks, summary: summaryOf(handbook, turn.kept, turn.assessed, turn.question) };
}

function sceneOf(knowledge: Knowledge, turn: Turn): Scene {
  const { conversation, kept, assessed, question, person } = turn;
  return { knowledge, conversation, kept, assessed, question, person };
}

/** Somebody who asked in passing, and has no case yet, is not pressed to open one. */
function isUntold({ kept, change, heard }: Turn): boolean {
  const hasTold = change.items.length > 0 && heard.trade === undefined;
  return kept.facts.part === null && !hasTold && kept.facts.unplaced.length === 0;
}

/** A greeting beside something told needs no answer of its own. */
function wishesOf({ heard, change }: Turn): readonly Intent[] {
  const { intents } = heard.reading;
  const hasTold = change.items.length > 0 && change.facts.part !== null;
  return hasTold ? intents.filter((intent) => intent.kind !== "small-talk") : intents;
}

/** After these the open question belongs to the answer. */
function isAboutQuestion({ kind }: Intent): boolean {
  return kind === "small-talk" || kind === "why" || kind === "how-to-check";
}

/** One line when nothing could be made of the message; the open question follows. */
function misunderstood({ heard, question }: Turn): readonly Block[] {
  if (heard.isEmpty) return [aside(heard.hasPhotographs ? onlyPhotographs : nothingSaid)];
  // What was asked or named already: the open question is the answer.
  if (heard.reading.intents.some(({ kind }) => kind === "goal") || heard.reading.parts.length > 0) return [];
  if (heard.isPressed) return [aside(answerNotOnOffer)];
  if (heard.isNod) return question === null ? [aside(smallTalkInCase)] : [];
  return [aside(notUnderstood)];
}

function doneLines(knowledge: Knowledge, turn: Turn): readonly Block[] {
  const { heard, chosen, change, kept } = turn;
  const { parts } = knowledge.handbook;
  const isNew = heard.reading.intents.some((intent) => intent.kind === "new-case");
  const hasCar = !chosen.isOfOtherCar && Object.keys(chosen.kept.facts.car).length > 0;
  const lines = [
    heard.isCut ? readOnlySoFar(longestMessage) : undefined,
    chosen.unknownCase === undefined ? undefined : noSuchCase(chosen.unknownCase),
    isNew
      ? newCaseOpened(kept.number, !chosen.isOfOtherCar && Object.keys(kept.facts.car).length > 0)
      : undefined,
    chosen.hasSwitched && !isNew
      ? caseInHandNow(kept.number, partNameOf(parts, kept), chosen.isOpened && hasCar)
      : undefined,
    ...change.notes,
    waiting(knowledge, turn),
  ].filter((line) => line !== undefined);
  const choices = change.withdrawable.map((name) => ({
    id: `withdraw-${name}`,
    label: name,
    say: withdrawSay(name),
  }));
  return [...lines.map(aside), ...(choices.length === 0 ? [] : [{ kind: "choices", choices } as const])];
}

function waiting(knowledge: Knowledge, { others }: Turn): string | undefined {
  const names = others.map(({ kept, items }) =>
    waitingCase(
      kept.number,
      [
        partNameOf(knowledge.handbook.parts, kept),
        ...items.filter((item) => item.label !== partLabel).map((item) => `${item.label}: ${item.value}`),
      ].join("; "),
    ),
  );
  if (names.length === 0) return undefined;
  return names.length === 1 ? alsoOpened(listed(names)) : alsoOpenedSeveral(listed(names));
}

/** Where it stands, or the answer; nothing when nothing that bears on it has changed since it was last said. */
function standsBlocks(knowledge: Knowledge, turn: Turn): readonly Block[] {
  const { assessed, question, chosen, justTold, heard, before, kept } = turn;
  const isAskedFor = heard.reading.intents.some(
    ({ kind }) => (kind === "switch-case" && chosen.unknownCase === undefined) || kind === "goal",
  );
  const isNamedAgain = question === null && onlyNames(turn);
  const isNew = chosen.hasSwitched || isAskedFor || isNamedAgain || bearsOnAnswer(before, kept.facts);
  const isDoneNow = question === null && before.open !== null;
  if (assessed === undefined || !(isNew || isDoneNow)) return [];
  const dates = [...sayBrokenDates(assessed), ...sayLeadTimes(assessed, justTold)];
  if (question === null) {
    const answer =
      isAskedFor || isNamedAgain
        ? sayAnswer(knowledge, assessed)
        : sayAnswerAgain(knowledge, assessed, before);
    return [...dates, ...answer, ...sayNextSteps(knowledge, assessed)];
  }
  // "What do you know so far?" has said it already.
  const isSaid = heard.reading.intents.some(({ kind }) => kind === "what-do-you-know");
  const isWorthSaying = !isSaid && (hasEvidence(assessed) || assessed.facts.car.built !== undefined);
  const isShouldHave = assessed.goal === "what-should-it-have";
  return isWorthSaying && !isShouldHave ? [...dates, ...sayStanding(assessed, justTold)] : dates;
}

/** "And the spoiler?" once it has its answer: the part in hand named, and nothing else. */
function onlyNames({ heard, change }: Turn): boolean {
  const { parts, misbeliefs, intents } = heard.reading;
  const said = change.items.length + change.remarks.length + change.notes.length + misbeliefs.length;
  const isAsking = intents.length > 0 || heard.trade !== undefined;
  return parts.length > 0 && said === 0 && !isAsking;
}

/** Whether the evidence, the car or the goal has changed; other words for the same are none, nor is "cannot tell". */
function bearsOnAnswer(before: CaseFacts, after: CaseFacts): boolean {
  const bearing = ({ part, goal, car, reports }: CaseFacts) => {
    const evidence = reports.filter((report) => report.value.kind !== "cannot-tell");
    const { maskedSerial: _, serialDigest: __, ...described } = car;
    return JSON.stringify([part, goal, described, evidence.map((report) => ({ ...report, words: "" }))]);
  };
  return bearing(before) !== bearing(after);
}

/** The open question with what must stand before it; cautions are not repeated while the same question stays open. */
function asked(knowledge: Knowledge, turn: Turn, isLost: boolean): readonly Block[] {
  const { question, assessed, kept, before } = turn;
  if (question === null) return isLost ? waysOn(assessed) : otherCases(turn);
  const block = questionBlock(knowledge.handbook, kept.facts, question);
  // What stood before the question last time need not stand there again.
  const isStillOpen = before.open?.feature === block.feature && before.part === kept.facts.part;
  const reason = assessed === undefined ? undefined : freshReason(assessed, question, before);
  const cautions =
    isStillOpen || question.about !== "feature" ? undefined : sayCautions(question.feature, before.warned);
  return [reason, cautions, block, sayWayOut(before, kept.facts)].filter((one) => one !== undefined);
}

/** The cause of a second look, unless it stood before the same question already. */
function freshReason(assessed: Assessed, question: NextQuestion, before: CaseFacts): Block | undefined {
  const reason = sayReason(assessed, question);
  const isOpen = before.open?.feature === openQuestion(question)?.feature;
  if (reason === undefined || !isOpen || before.part !== assessed.facts.part) return reason;
  const { part, compiled } = assessed;
  const earlier = { part, facts: before, identification: doubtsOfCase(compiled, before) };
  const was = sayReason(earlier, questionOfDoubt(earlier) ?? null);
  return JSON.stringify(was) === JSON.stringify(reason) ? undefined : reason;
}

// Whoever was not understood after the answer is shown again what can be done.
function waysOn(assessed: Assessed | undefined): readonly Block[] {
  return assessed === undefined ? [] : [{ kind: "choices", choices: choicesAfter(assessed) }];
}

// When this case has its answer, the ones that wait are one press away.
function otherCases({ chosen }: Turn): readonly Block[] {
  return chosen.others.length === 0 ? [] : [{ kind: "choices", choices: chosen.others.map(caseChoice) }];
}
