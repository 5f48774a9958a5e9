/** "mine", "export mine", "erase mine": what is kept about somebody, for them to see, to take along and to end. */

import { text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { sharedSheetKind } from "../car-sheet/shared-sheet.ts";
import { keepersIn } from "../keepers/keepers-record.ts";
import { sharedAnswerKind } from "../pages/page-records.ts";
import { ownQueries } from "../person/own-records.ts";
import * as phrases from "../phrases/privacy.ts";
import { newRecord } from "../record-change.ts";
import { isRequest, leavesIt, spoken } from "../spoken.ts";
import { type Erasure, erasureKind } from "./erasure-record.ts";
import { exportMine, mineLines, type OwnThings, ownThings, sayMine } from "./mine.ts";

const asksWhat = /^(?:what is |show |list )?mine$/u;
const asksForAll = /^export mine$/u;
const asksToErase = /^erase mine$/u;
const confirmsAll = /^erase all of it$/u;
const confirmsName = /^erase, but keep sightings without my name$/u;
/** Whatever is answered from one's own records. */
const asks = [asksWhat, asksForAll, asksToErase, confirmsAll, confirmsName];

export const privacyAffair: Affair = {
  name: "privacy",
  reads(message, found) {
    const said = spoken(message);
    const isAsked = said !== undefined && asks.some((one) => isRequest(said, one));
    const shared = [sharedSheetKind.kind, sharedAnswerKind].map((kind) => ({ kind, prefix: "" }));
    return isAsked ? [...ownQueries(message.from, found), ...shared] : [];
  },
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksWhat)) return sayMine(scene);
    if (isRequest(said, asksForAll)) return exportMine(scene);
    return isRequest(said, asksToErase) ? askToErase(scene) : undefined;
  },
  resume(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, confirmsAll)) return erase(scene, false);
    if (isRequest(said, confirmsName)) return erase(scene, true);
    if (leavesIt(said) || isRequest(said, /^no$/u)) {
      return { blocks: [text(phrases.notErased)], isPrivate: true, errand: null };
    }
    return undefined;
  },
};

function askToErase(scene: CommunityScene): Handled {
  const things = ownThings(scene);
  const lines = mineLines(things);
  if (lines.length === 0) return { blocks: [text(phrases.nothingMine)], isPrivate: true };
  if (isLastOwner(scene)) return { blocks: [text(phrases.lastOwnerErasing)], isPrivate: true };
  const accepted = things.observations.filter(({ stands }) => stands === "accepted").length;
  const says = [
    phrases.eraseAll,
    ...(accepted === 0 ? [] : [phrases.eraseButSightings]),
    phrases.eraseNothing,
  ];
  return {
    blocks: [
      { kind: "list", lead: phrases.mineLead, items: lines },
      text(phrases.eraseAsks),
      ...(accepted === 0 ? [] : [text(phrases.eraseObservations(accepted))]),
      ...(things.pins.length === 0 ? [] : [text(phrases.erasePins)]),
      {
        kind: "choices",
        choices: says.map((say) => ({ id: say.replaceAll(/[ ,]+/gu, "-"), label: say, say })),
      },
    ],
    isPrivate: true,
    errand: { person: scene.speaker.id, affair: "privacy", state: null },
  };
}

function isLastOwner({ memory, speaker }: CommunityScene): boolean {
  const owners = keepersIn(memory.keepers).roles.filter(({ standing }) => standing === "owner");
  return owners.length === 1 && owners[0]?.person === speaker.id;
}

function erase(scene: CommunityScene, keepsSightings: boolean): Handled {
  const things = ownThings(scene);
  const ids = (records: readonly { readonly id: string }[]) => records.map(({ id }) => id);
  const erasure: Erasure = {
    person: scene.speaker.id,
    keepsSightings,
    // Also those that cannot be read any more.
    conversations: [...new Set([...idsFound(scene, "conversation"), scene.message.conversation])],
    observations: ids(things.observations),
    pins: ids(things.pins),
    handedOver: ids(things.handedOver),
    shares: ids(things.shares),
    names: namesIn(scene, things),
    at: scene.at,
  };
  const id = scene.newId("erasure");
  return {
    blocks: [text(phrases.erased)],
    isPrivate: true,
    errand: null,
    changes: [{ ...newRecord(erasureKind, id, phrases.whyToErase, erasure), isAside: true }],
    erases: true,
  };
}

function idsFound({ found }: CommunityScene, kind: string): readonly string[] {
  return (found.get(kind) ?? []).map(({ id }) => id);
}

/** By what names others know them here: an act of theirs, or one that was done to them, may be told under any. */
function namesIn({ speaker }: CommunityScene, { role, observations, pins, handedOver }: OwnThings) {
  const names = [
    speaker.name,
    ...(role === undefined ? [] : [role.name]),
    ...observations.map(({ byName }) => byName),
    ...pins.map(({ authorName }) => authorName),
    ...handedOver.map(({ askerName }) => askerName),
  ];
  return [...new Set(names)];
}
