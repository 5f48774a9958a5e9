/** "open questions", "it was right", "it was wrong": what was asked, what was missing, and how answers turned out. */
import { type CaseFacts, cannotTells } from "../../conversation/case.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import type { StepTaken } from "../../conversation/step.ts";
import type { Affair, Beside, CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/board.ts";
import { notForYou } from "../phrases/keepers.ts";
import { keptRecord, type RecordChange } from "../record-change.ts";
import { recordId } from "../record-id.ts";
import { isRequest, spoken } from "../spoken.ts";
import { boardBlocks } from "./board-blocks.ts";
import { askedKind, type QuestionAsked } from "./question-asked.ts";

const asksForBoard = /^(?:open questions|(?:the )?board)$/u;

export const boardAffair: Affair = {
  name: "board",
  reads(message) {
    const said = spoken(message);
    return said !== undefined && isRequest(said, asksForBoard) ? [{ kind: askedKind.kind, prefix: "" }] : [];
  },
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksForBoard)) return board(scene);
    const received = /^(?:yes,? )?(?:it|that) was (right|wrong)[.!]?$/iu.exec(said)?.[1]?.toLowerCase();
    if (received === "right" || received === "wrong") return noteReceived(scene, received);
    return undefined;
  },
  beside: noteAsked,
};

function board(scene: CommunityScene): Handled {
  if (!reaches(scene.speaker.standing, "keeper")) {
    return { blocks: [{ kind: "text", text: notForYou("keeper") }] };
  }
  return { blocks: boardBlocks(scene), isPrivate: true };
}

function noteReceived(scene: CommunityScene, received: "right" | "wrong"): Handled | undefined {
  const kept = caseInHand(scene.conversation, scene.speaker.id);
  // In the middle of a case it is a fact that was wrong, and the case hears that itself.
  if (kept === undefined || kept.facts.part === null || kept.facts.open !== null) return undefined;
  const { facts, handbook } = kept;
  const text = received === "right" ? phrases.thanksRight : phrases.thanksWrong;
  return {
    blocks: [{ kind: "text", text }],
    changes: [
      noted(scene, kept.id, (before) => ({
        ...(before ?? asBegun(scene, handbook, facts)),
        at: scene.at,
        stands: "answered",
        received,
      })),
    ],
  };
}

/** A note when a case names its part, has its answer, or a misbelief was stated; and with the answer, a word on telling later. */
function noteAsked(
  scene: CommunityScene,
  { conversation, reply, misbeliefs }: StepTaken,
): Beside | undefined {
  const after = caseInHand(conversation, scene.speaker.id);
  if (after === undefined || after.facts.part === null) return undefined;
  const before = scene.conversation.cases.find(({ id }) => id === after.id)?.facts;
  const wasDone = before !== undefined && before.part !== null && before.open === null;
  const isNewlyDone = reply.summary.done && !wasDone;
  const isNew = before === undefined || before.part !== after.facts.part || before.goal !== after.facts.goal;
  const { facts, handbook } = after;
  const couldNotTell = before !== undefined && cannotTells(before) < cannotTells(facts);
  if (!isNew && !isNewlyDone && !couldNotTell && misbeliefs.length === 0) return undefined;
  const change = noted(scene, after.id, (known) => ({
    ...asBegun(scene, handbook, facts),
    stands: standsNow(reply),
    wouldTell: [...new Set(reply.summary.uncertainty.remaining.flatMap(({ toldApartBy }) => toldApartBy))],
    misbeliefs: [...(known?.misbeliefs ?? []), ...misbeliefs].slice(-mostMisbeliefs),
    received: known?.received ?? null,
  }));
  return { changes: [change], ...(isNewlyDone ? { last: lastWords(reply) } : {}) };
}

const mostMisbeliefs = 20;

function lastWords({ summary }: StepTaken["reply"]): NonNullable<Beside["last"]> {
  if (summary.verdict === null || summary.goal === "what-should-it-have") return [];
  const choices = [phrases.wasRight, phrases.wasWrong].map((say) => ({
    id: say.replaceAll(" ", "-"),
    label: say,
    say,
  }));
  return [
    { kind: "text", text: phrases.turnsOut, tone: "aside" },
    { kind: "choices", choices },
  ];
}

function standsNow({ summary }: StepTaken["reply"]): QuestionAsked["stands"] {
  if (!summary.done) return "open";
  return summary.verdict === null ? "left-open" : "answered";
}

function asBegun(scene: CommunityScene, handbook: string, facts: CaseFacts): QuestionAsked {
  const told = facts.reports
    .filter(({ value }) => value.kind === "cannot-tell")
    .map(({ feature }) => feature);
  return {
    handbook,
    part: facts.part ?? "",
    goal: facts.goal,
    at: scene.at,
    stands: "open",
    cannotTell: cannotTells(facts) === 0 ? [] : [...told, ...facts.unanswerable],
    wouldTell: [],
    misbeliefs: [],
    received: null,
  };
}

function noted(
  { message, at }: CommunityScene,
  kept: string,
  change: (before: QuestionAsked | undefined) => QuestionAsked,
): RecordChange {
  // The id gives nobody away: it is a digest of where it was asked.
  const id = recordId(message.conversation, kept);
  return { ...keptRecord(askedKind, id, `asked at ${at}`, change), isAside: true, isNameless: true };
}
