/** "mine", "export mine", "erase mine": what is kept about somebody, for them to see, to take along and to end. */

import { text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { sharedSheetKind } from "../car-sheet/shared-sheet.ts";
import { keepersIn } from "../keepers/keepers-record.ts";
import { ownConversations, ownQueries } from "../person/own-records.ts";
import * as phrases from "../phrases/privacy.ts";
import { newRecord } from "../record-change.ts";
import { isRequest, spoken } from "../spoken.ts";
import { type Erasure, erasureKind } from "./erasure-record.ts";
import { exportMine, mineLines, ownThings, sayMine } from "./mine.ts";

const asks = /^(?:what is |show |list )?mine$|^export mine$|^erase mine$/u;
const confirms = [phrases.eraseAll, phrases.eraseButSightings];

export const privacyAffair: Affair = {
  name: "privacy",
  reads(message, found) {
    const said = spoken(message)?.toLowerCase().replace(/[.!]$/u, "");
    const isAsked = said !== undefined && (asks.test(said) || confirms.includes(said));
    return isAsked ? [...ownQueries(message.from, found), { kind: sharedSheetKind.kind, prefix: "" }] : [];
  },
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^(?:what is |show |list )?mine$/u)) return sayMine(scene);
    if (isRequest(said, /^export mine$/u)) return exportMine(scene);
    return isRequest(said, /^erase mine$/u) ? askToErase(scene) : undefined;
  },
  resume(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^erase all of it$/u)) return erase(scene, false);
    if (isRequest(said, /^erase, but keep sightings without my name$/u)) return erase(scene, true);
    if (isRequest(said, /^(?:leave it|no|cancel|stop)$/u)) {
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
    conversations: [
      ...new Set([...ownConversations(scene.found).map(({ id }) => id), scene.message.conversation]),
    ],
    observations: ids(things.observations),
    pins: ids(things.pins),
    handedOver: ids(things.handedOver),
    shares: ids(things.shares),
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
