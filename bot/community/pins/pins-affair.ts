/** "pin this: …", "pins", "pin ID", "replace pin ID: …", "review pin ID by …", "withdraw pin ID because …", and pinned answers before ordinary ones. */
import { formatInterval } from "../../../knowledge/index.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { aside } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { dayInWords } from "../day-in-words.ts";
import { reaches } from "../keepers/standing.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/pins.ts";
import { changedRecord } from "../record-change.ts";
import { recordIdOf, recordIdPattern } from "../record-id.ts";
import { say } from "../say.ts";
import { isRequest, requestAbout, spoken } from "../spoken.ts";
import { isReviewDue, type Pin, pinIndex, pinKind, standingPins } from "./pin.ts";
import { draftFromCase, draftFromHandedOver, draftFromQuestion } from "./pin-drafts.ts";
import { pinnedBeside } from "./pinned-beside.ts";
import { pinnedBlock } from "./pinned-block.ts";
import { pinningErrand, resumePinning, reviewDate, scopeInWords, showDraft } from "./pinning.ts";

const mostListed = 20;
const asksToReview = new RegExp(`^review pin (${recordIdPattern}) (?:again )?by (.+?)[.!]*$`, "iu");

export const pinsAffair: Affair = {
  name: pinningErrand,
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^(?:list )?(?:pins|pinned(?: answers?)?)$/u)) return listPins(scene);
    const sought = /^(?:find )?pins (?:about |on |for )?(.{2,200})$/iu.exec(said)?.[1];
    if (sought !== undefined) return findPins(scene, sought);
    return heardOfOne(scene, said) ?? heardOfNew(scene, said);
  },
  resume: resumePinning,
  beside: pinnedBeside,
};

function heardOfOne(scene: CommunityScene, said: string): Handled | undefined {
  const shown = requestAbout(said, "(?:show )?pin");
  if (shown !== undefined && shown.words === "") return showPin(scene, shown.id);
  const replaced = requestAbout(said, "replace pin");
  if (replaced !== undefined) return replace(scene, replaced.id, replaced.words);
  const [, reviewed, date = ""] = asksToReview.exec(said) ?? [];
  if (reviewed !== undefined) return setReview(scene, recordIdOf(reviewed), date);
  const withdrawn = requestAbout(said, "withdraw pin");
  return withdrawn === undefined ? undefined : withdraw(scene, withdrawn.id, withdrawn.words);
}

function heardOfNew(scene: CommunityScene, said: string): Handled | undefined {
  const question = /^pin for the question (.{3,300}?)\s*: ?(.+)$/iu.exec(said);
  const here = /^pin this(?: answer)?(?:\s*: ?(.+))?[.!]?$/iu.exec(said);
  if (question === null && here === null) return undefined;
  if (!reaches(scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
  if (question !== null)
    return showDraft(scene, draftFromQuestion(scene, question[1] ?? "", question[2] ?? ""));
  const kept = caseInHand(scene.conversation, scene.speaker.id);
  if (kept === undefined || kept.facts.part === null) return say(phrases.pinNeedsPart);
  const draft = draftFromCase(scene, kept, here?.[1]);
  return draft === undefined ? say(phrases.pinNeedsWords) : showDraft(scene, draft);
}

function listPins(scene: CommunityScene): Handled {
  const pins = standingPins(scene.memory.pins);
  if (pins.length === 0) return say(phrases.noPins);
  const items = pins
    .toReversed()
    .slice(0, mostListed)
    .map(([id, pin]) => lineOf(scene, id, pin));
  return { blocks: [{ kind: "list", lead: phrases.pinsLead, items }] };
}

function findPins(scene: CommunityScene, words: string): Handled {
  const { pins } = scene.memory;
  const found = pinIndex(pins)
    .find(words)
    .filter(({ score }) => score >= 0.3);
  const items = found.slice(0, mostListed).flatMap(({ id }) => {
    const pin = pins.byId.get(id);
    return pin === undefined ? [] : [lineOf(scene, id, pin)];
  });
  if (items.length === 0) return say(phrases.noPinsFound(words));
  return { blocks: [{ kind: "list", lead: phrases.pinsFoundLead(words), items }] };
}

function showPin(scene: CommunityScene, id: string): Handled {
  const pin = scene.memory.pins.byId.get(id);
  if (pin !== undefined) {
    const mark = pin.stands === "withdrawn" ? [aside(phrases.isWithdrawn(id))] : [];
    return { blocks: [...mark, pinnedBlock(id, pin), aside(scopeInWords(scene, pin))] };
  }
  // What a keeper answered to a case that was handed over can be pinned by the same words.
  const record = scene.memory.handedOver.get(id);
  if (record === undefined) return say(phrases.noSuchPin(id));
  if (!reaches(scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
  const draft = draftFromHandedOver(scene, record);
  if (draft === "no part") return say(phrases.pinNeedsQuestion(record.sayings.at(-1)?.words ?? ""));
  return draft === undefined ? say(phrases.noSuchPin(id)) : showDraft(scene, draft);
}

function replace(scene: CommunityScene, id: string, words: string): Handled {
  const { speaker, at, memory } = scene;
  const refused = refusal(scene, id);
  if (refused !== undefined) return refused;
  if (words === "") return say(phrases.wordsNeeded(id));
  const authored = { text: words, author: speaker.id, authorName: speaker.name, at, flagged: null };
  // Whoever finds new words for it has looked at it again.
  const reviewed = ({ review }: Pin) => (isReviewDue(scene, review) ? null : review);
  const was = memory.pins.byId.get(id);
  return {
    ...say(phrases.pinReplaced(id)),
    changes: [
      changedRecord(pinKind, id, phrases.whyReplaced(id, words), (before) =>
        before.stands === "standing" && before.text === was?.text
          ? { ...before, ...authored, review: reviewed(before) }
          : undefined,
      ),
    ],
  };
}

/** It still holds, and is to be looked at again by another day. */
function setReview(scene: CommunityScene, id: string, date: string): Handled {
  const refused = refusal(scene, id);
  if (refused !== undefined) return refused;
  const review = reviewDate(date);
  if (review === undefined || review.to <= scene.today.from) return say(phrases.reviewNeedsDate(id));
  const words = formatInterval(review);
  return {
    ...say(phrases.reviewSet(id, words)),
    changes: [
      changedRecord(pinKind, id, phrases.whyReviewed(id, words), (before) =>
        before.stands === "standing" ? { ...before, review } : undefined,
      ),
    ],
  };
}

function withdraw(scene: CommunityScene, id: string, reason: string): Handled {
  const refused = refusal(scene, id);
  if (refused !== undefined) return refused;
  if (reason === "") return say(phrases.reasonNeeded(id));
  return {
    ...say(phrases.pinWithdrawn(id)),
    changes: [
      changedRecord(pinKind, id, phrases.whyWithdrawn(id, reason), (before) =>
        before.stands === "standing" ? { ...before, stands: "withdrawn" as const } : undefined,
      ),
    ],
  };
}

function refusal(scene: CommunityScene, id: string): Handled | undefined {
  if (!reaches(scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
  const pin = scene.memory.pins.byId.get(id);
  if (pin === undefined) return say(phrases.noSuchPin(id));
  return pin.stands === "withdrawn" ? say(phrases.isWithdrawn(id)) : undefined;
}

function lineOf(scene: CommunityScene, id: string, pin: Pin): string {
  return phrases.pinLine(id, pin.text, scopeInWords(scene, pin), pin.authorName, dayInWords(pin.at));
}
