/**
 * The reply of a turn in its fixed order: what was done, what was understood, corrections, direct answers, where it
 * stands or the answer, cautions, one question. What has not changed is not said again.
 */
import { answerWishes } from "../commands/answer-wishes.ts";
import { caseChoice, partNameOf } from "../commands/cases.ts";
import type { Scene } from "../commands/scene.ts";
import type { Block, Reply } from "../reply.ts";
import { longestMessage } from "./hear.ts";
import type { Knowledge } from "./knowledge.ts";
import {
  alsoOpened,
  alsoOpenedSeveral,
  caseInHandNow,
  newCaseOpened,
  noSuchCase,
  waitingCase,
  withdrawSay,
} from "./phrases/commands.ts";
import { listed } from "./phrases/grammar.ts";
import { nothingSaid, notUnderstood, readOnlySoFar } from "./phrases/understood.ts";
import { sayAnswer } from "./say-answer.ts";
import { sayCautions } from "./say-cautions.ts";
import { sayMisbeliefs } from "./say-misbeliefs.ts";
import { sayNextSteps } from "./say-next-steps.ts";
import { questionBlock } from "./say-question.ts";
import { hasEvidence, sayStanding } from "./say-standing.ts";
import { sayTradeAnswer } from "./say-trade-answer.ts";
import { sayBrokenDates, sayReason } from "./say-trouble.ts";
import { summaryOf } from "./summary.ts";
import type { Turn } from "./turn.ts";
import { understoodBlock } from "./understood.ts";

export function composeReply(knowledge: Knowledge, turn: Turn): Reply {
  const { handbook } = knowledge;
  const { heard, change } = turn;
  const direct = [
    ...answerWishes(sceneOf(knowledge, turn), heard.reading.intents),
    ...(heard.trade === undefined ? [] : sayTradeAnswer(heard.trade)),
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
  const blocks = [...opening, ...stands, ...asked(knowledge, turn)];
  return { blocks, summary: summaryOf(handbook, turn.kept, turn.assessed, turn.question) };
}

function sceneOf(knowledge: Knowledge, turn: Turn): Scene {
  const { conversation, kept, assessed, question, person } = turn;
  return { knowledge, conversation, kept, assessed, question, person };
}

/** One line when nothing could be made of the message; the open question follows. */
function misunderstood({ heard }: Turn): readonly Block[] {
  if (heard.isEmpty) return [aside(nothingSaid)];
  return [aside(notUnderstood)];
}

function doneLines(knowledge: Knowledge, turn: Turn): readonly Block[] {
  const { heard, chosen, change, kept } = turn;
  const { parts } = knowledge.handbook;
  const isNew = heard.reading.intents.some((intent) => intent.kind === "new-case");
  const lines = [
    heard.isCut ? readOnlySoFar(longestMessage) : undefined,
    chosen.unknownCase === undefined ? undefined : noSuchCase(chosen.unknownCase),
    isNew ? newCaseOpened(kept.number, Object.keys(kept.facts.car).length > 0) : undefined,
    chosen.hasSwitched && !isNew ? caseInHandNow(kept.number, partNameOf(parts, kept)) : undefined,
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

function waiting(knowledge: Knowledge, { chosen }: Turn): string | undefined {
  const names = chosen.others.map((other) =>
    waitingCase(other.number, partNameOf(knowledge.handbook.parts, other)),
  );
  if (names.length === 0) return undefined;
  return names.length === 1 ? alsoOpened(listed(names)) : alsoOpenedSeveral(listed(names));
}

/** Where it stands, or the answer; nothing when nothing has changed since it was last said. */
function standsBlocks(knowledge: Knowledge, turn: Turn): readonly Block[] {
  const { assessed, question, hasChanged, chosen, justTold, heard } = turn;
  const isAskedFor = heard.reading.intents.some(
    (intent) => intent.kind === "switch-case" || intent.kind === "goal",
  );
  if (assessed === undefined || !(hasChanged || chosen.hasSwitched || isAskedFor)) return [];
  const dates = sayBrokenDates(assessed);
  if (question === null) {
    return [...dates, ...sayAnswer(knowledge, assessed), ...sayNextSteps(knowledge, assessed)];
  }
  const isWorthSaying = hasEvidence(assessed) || assessed.facts.car.built !== undefined;
  const isShouldHave = assessed.goal === "what-should-it-have";
  return isWorthSaying && !isShouldHave ? [...dates, ...sayStanding(assessed, justTold)] : dates;
}

/** The open question with what must stand before it; cautions are not repeated while the same question stays open. */
function asked(knowledge: Knowledge, turn: Turn): readonly Block[] {
  const { question, assessed, kept, change } = turn;
  if (question === null) return otherCases(turn);
  const block = questionBlock(knowledge.handbook, kept.facts, question);
  const isSame = change.kept.facts.open?.feature === block.feature && !turn.hasChanged;
  const reason = assessed === undefined || isSame ? undefined : sayReason(assessed, question);
  const cautions =
    assessed === undefined || isSame || question.about !== "feature"
      ? undefined
      : sayCautions(assessed.part, question.feature, kept.facts);
  return [reason, cautions, block].filter((one) => one !== undefined);
}

// When this case has its answer, the ones that wait are one press away.
function otherCases({ chosen }: Turn): readonly Block[] {
  return chosen.others.length === 0 ? [] : [{ kind: "choices", choices: chosen.others.map(caseChoice) }];
}

function aside(text: string): Block {
  return { kind: "text", text, tone: "aside" };
}
