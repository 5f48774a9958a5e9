/** "share this answer", "stop sharing answers": a page of the answer in hand under an address nobody can guess, in whatever chat it was given. */
import { keyedDigest } from "../../../knowledge/index.ts";
import { answerCard } from "../../conversation/saying/answer-card.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/share-answer.ts";
import type { RecordChange } from "../record-change.ts";
import { isRequest, spoken } from "../spoken.ts";
import {
  isSharedBy,
  isTakenBack,
  sharedAnswerKind,
  sharedAnswerPath,
  withdrawnShare,
} from "./page-records.ts";

const asksToShare = /^(?:share|make a page of) (?:this|the|my) answer$/u;
const asksToStop = /^stop sharing (?:my )?answers?$/u;

export const shareAffair: Affair = {
  name: "share-answer",
  reads(message) {
    const said = spoken(message);
    return said !== undefined && isRequest(said, asksToStop) ? [{ kind: sharedAnswerKind, prefix: "" }] : [];
  },
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksToShare)) return share(scene);
    return isRequest(said, asksToStop) ? stopSharing(scene) : undefined;
  },
};

function share(scene: CommunityScene): Handled {
  const { speaker, community, at, secretKey } = scene;
  const card = answerCard(scene.loaded, scene.conversation, { person: speaker.id });
  if (card === undefined) return { blocks: [{ kind: "text", text: phrases.nothingToShare }] };
  const id = keyedDigest(secretKey, `answer ${scene.newId("answer")} ${at}`).slice(0, 32);
  const state = { by: speaker.id, at, isWithdrawn: false, card };
  return {
    blocks: [
      { kind: "page", label: phrases.pageOfAnswer(card.partName), path: sharedAnswerPath(community, id) },
      { kind: "text", text: phrases.howToStop, tone: "aside" },
    ],
    changes: [{ kind: sharedAnswerKind, id, why: phrases.whyShared, isAside: true, advance: () => state }],
  };
}

function stopSharing({ speaker, found }: CommunityScene): Handled {
  const own = (found.get(sharedAnswerKind) ?? []).filter(
    ({ state }) => isSharedBy(speaker.id, state) && !isTakenBack(state),
  );
  const changes = own.map(
    ({ id }): RecordChange => ({
      kind: sharedAnswerKind,
      id,
      why: phrases.whyUnshared,
      isAside: true,
      advance: withdrawnShare,
    }),
  );
  const text = own.length === 0 ? phrases.nothingShared : phrases.unshared(own.length);
  return { blocks: [{ kind: "text", text }], changes, isPrivate: true };
}
