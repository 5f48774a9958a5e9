/** Pinned answers before the bot's own: the narrowest that holds, once when it comes into scope and again with the answer. */
import { formatInterval } from "../../../knowledge/index.ts";
import { type Conversation, caseInHand, pinsShown } from "../../conversation/conversation.ts";
import type { StepTaken } from "../../conversation/step.ts";
import type { Block, Reply } from "../../reply.ts";
import type { Beside, CommunityScene } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/pins.ts";
import { changedRecord } from "../record-change.ts";
import { spoken } from "../spoken.ts";
import { isReviewDue, type Pin, pinKind, questionIndex, standingPins } from "./pin.ts";
import { type Dispute, disputedByCase, disputedHere } from "./pin-dispute.ts";
import { byNarrowness, isInScope, leastOfQuestion } from "./pin-scope.ts";
import { pinnedBlock } from "./pinned-block.ts";

export function pinnedBeside(
  scene: CommunityScene,
  { conversation: after, reply, hasNothing }: StepTaken,
): Beside | undefined {
  if (scene.memory.pins.byId.size === 0) return undefined;
  const asked = answering(scene);
  const scoped = inScope(scene, after, reply);
  // Who asks nothing but a pinned question wants its answer, whatever else holds for the case in hand.
  const holding = hasNothing
    ? [...asked.toSorted(byNarrowness), ...scoped.toSorted(byNarrowness)]
    : [...scoped, ...asked].sort(byNarrowness);
  const [narrowest] = holding;
  if (narrowest === undefined) return undefined;
  const [id, pin] = narrowest;
  const { id: kept = "" } = caseInHand(after, scene.speaker.id) ?? {};
  const mark = `${id} ${pin.at}`;
  const isAnswer = reply.summary.done && !wasDone(scene, kept);
  const answersWords = asked.some(([one]) => one === id);
  const isShown = pinsShown(scene.conversation, kept).includes(mark);
  if (isShown && !isAnswer && !answersWords) return { pinned: [id] };
  const dispute = disputeOf(scene, after, reply, pin);
  return {
    first: [
      pinnedBlock(id, pin, dispute?.toAsker),
      ...remarks(scene, pin),
      ...forKeepers(scene, holding.slice(1)),
    ],
    pinned: [id],
    answersWords,
    shown: { case: kept, marks: [mark] },
    ...(dispute === undefined || dispute.toKeepers === pin.flagged ? {} : flag(id, pin, dispute.toKeepers)),
  };
}

function inScope(
  scene: CommunityScene,
  after: Conversation,
  { summary }: Reply,
): readonly (readonly [string, Pin])[] {
  const kept = caseInHand(after, scene.speaker.id);
  if (kept === undefined) return [];
  return standingPins(scene.memory.pins).filter(([, { scope }]) =>
    isInScope(scope, kept.handbook, kept.facts, summary.ranking),
  );
}

/** Those whose plain question is asked in this message. */
function answering(scene: CommunityScene): readonly (readonly [string, Pin])[] {
  const said = spoken(scene.message);
  if (said === undefined) return [];
  const { pins } = scene.memory;
  return questionIndex(pins)
    .askedIn(said)
    .filter(({ score }) => score >= leastOfQuestion)
    .flatMap(({ id }) => {
      const pin = pins.byId.get(id);
      return pin === undefined ? [] : [[id, pin] as const];
    });
}

/** Whether the case had its answer before this message. */
function wasDone({ conversation }: CommunityScene, kept: string): boolean {
  const before = conversation.cases.find(({ id }) => id === kept);
  return before !== undefined && before.facts.part !== null && before.facts.open === null;
}

function disputeOf(
  scene: CommunityScene,
  after: Conversation,
  { summary }: Reply,
  pin: Pin,
): Dispute | undefined {
  const kept = caseInHand(after, scene.speaker.id);
  const byPeriods = disputedHere(scene, pin);
  if (byPeriods !== undefined) return { toAsker: byPeriods, toKeepers: byPeriods };
  if (kept === undefined) return undefined;
  return disputedByCase(scene.knowledge, pin, kept.facts, summary.ranking);
}

function remarks(scene: CommunityScene, { review }: Pin): readonly Block[] {
  if (review === null || !isReviewDue(scene, review)) return [];
  return [{ kind: "text", text: phrases.reviewDue(formatInterval(review)), tone: "aside" }];
}

/** Keepers see what is not shown because something narrower holds. */
function forKeepers(
  { speaker }: CommunityScene,
  wider: readonly (readonly [string, Pin])[],
): readonly Block[] {
  if (!reaches(speaker.standing, "keeper")) return [];
  return wider.map(([id, { text }]) => ({ kind: "text", text: phrases.alsoPinned(id, text), tone: "aside" }));
}

function flag(id: string, pin: Pin, dispute: string): Pick<Beside, "changes" | "tellings"> {
  const words = [phrases.disputeForKeepers(id, pin.text, dispute), phrases.disputeHow(id)];
  return {
    changes: [
      changedRecord(pinKind, id, phrases.whyFlagged(id), (before) => ({ ...before, flagged: dispute })),
    ],
    tellings: [{ audience: "keepers", blocks: words.map((text) => ({ kind: "text", text })) }],
  };
}
