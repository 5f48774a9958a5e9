/** "keepers' queue": everything that waits for a keeper, in one look. */
import { quoted } from "../../conversation/phrases/grammar.ts";
import type { Block } from "../../reply.ts";
import { aside } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { queueLine } from "../hand-over/hand-over-affair.ts";
import { isOpen } from "../hand-over/handed-over.ts";
import { reaches } from "../keepers/standing.ts";
import { waitingBlocks } from "../observations/shown-observation.ts";
import { oldestFirst } from "../oldest-first.ts";
import { queueEmpty, queueLead } from "../phrases/hand-over.ts";
import { notForYou } from "../phrases/keepers.ts";
import { disputeForKeepers, disputesLead, isOfACase, reviewsHow, reviewsLead } from "../phrases/pins.ts";
import { isReviewDue, standingPins } from "../pins/pin.ts";
import { disputedHere } from "../pins/pin-dispute.ts";
import { isRequest, spoken } from "../spoken.ts";

export const queueAffair: Affair = {
  name: "queue",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined || !isRequest(said, /^(?:the )?(?:keepers['’]? )?queue$/u)) return undefined;
    return queue(scene);
  },
};

function queue(scene: CommunityScene): Handled {
  if (!reaches(scene.speaker.standing, "keeper")) {
    return { blocks: [{ kind: "text", text: notForYou("keeper") }] };
  }
  const blocks = [...handedOverBlocks(scene), ...waitingBlocks(scene), ...pinBlocks(scene)];
  const empty: Block = { kind: "text", text: queueEmpty };
  return { blocks: blocks.length === 0 ? [empty] : blocks, isPrivate: true };
}

function handedOverBlocks(scene: CommunityScene): readonly Block[] {
  const open = [...scene.memory.handedOver].filter(([, record]) => isOpen(record));
  if (open.length === 0) return [];
  const items = oldestFirst(open).map(([id, record]) => queueLine(scene, id, record));
  return [{ kind: "list", lead: queueLead(open.length), items }];
}

/** Pinned answers that something speaks against, and those whose author wanted to look again by now. */
function pinBlocks(scene: CommunityScene): readonly Block[] {
  const pins = standingPins(scene.memory.pins);
  const disputes = pins.flatMap(([id, pin]) => {
    // Periods are held against it anew; what a case once said stands until the pin is changed.
    const byCase = pin.flagged !== null && isOfACase(pin.flagged) ? pin.flagged : undefined;
    const dispute = disputedHere(scene, pin) ?? byCase;
    return dispute === undefined ? [] : [disputeForKeepers(id, pin.text, dispute)];
  });
  const due = pins
    .filter(([, { review }]) => isReviewDue(scene, review))
    .map(([id, pin]) => `${id}: ${quoted(pin.text, 120)}`);
  return [
    ...(disputes.length === 0 ? [] : [{ kind: "list", lead: disputesLead, items: disputes } as const]),
    ...(due.length === 0
      ? []
      : [{ kind: "list", lead: reviewsLead, items: due } as const, aside(reviewsHow)]),
  ];
}
