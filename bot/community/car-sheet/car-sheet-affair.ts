/** "car sheet", "share car sheet", "stop sharing car sheet": the owner's own, private until shared. */

import { keyedDigest } from "../../../knowledge/index.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import type { Block } from "../../reply.ts";
import { aside, text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { oldestFirst } from "../oldest-first.ts";
import { ownConversations, ownQueries } from "../person/own-records.ts";
import * as phrases from "../phrases/car-sheet.ts";
import { keptRecord, newRecord, type RecordChange } from "../record-change.ts";
import { isRequest, spoken } from "../spoken.ts";
import { type CarSheet, carSheet, isSameCar, type OwnCar, ownCars } from "./car-sheet.ts";
import { SharedSheet, sharedSheetKind, sharedSheetPath } from "./shared-sheet.ts";
import { sheetBlocks } from "./sheet-blocks.ts";

const asksForSheet = /^(?:show )?(?:my )?car sheet(?: (\d{1,3}))?$/u;
const asksToShare = /^share (?:my )?car sheet(?: (\d{1,3}))?$/u;
const asksToStop = /^stop sharing (?:my )?car sheets?$/u;

export const carSheetAffair: Affair = {
  name: "car-sheet",
  reads(message, found) {
    const said = spoken(message);
    const isAsked =
      said !== undefined && [asksForSheet, asksToShare, asksToStop].some((one) => isRequest(said, one));
    return isAsked ? [...ownQueries(message.from, found), { kind: sharedSheetKind.kind, prefix: "" }] : [];
  },
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksForSheet)) return withCar(scene, numberIn(said), phrases.sheetOf, show);
    if (isRequest(said, asksToShare)) return withCar(scene, numberIn(said), phrases.shareSheet, share);
    return isRequest(said, asksToStop) ? stopSharing(scene) : undefined;
  },
};

function numberIn(said: string): number | undefined {
  const number = /\d+/u.exec(said)?.[0];
  return number === undefined ? undefined : Number(number);
}

/** The car asked for: by its number, else that of the case in hand, else the only one. */
function withCar(
  scene: CommunityScene,
  number: number | undefined,
  sayWhich: (number: number) => string,
  handle: (scene: CommunityScene, car: NumberedCar) => Handled,
): Handled {
  const cars = ownCars(scene.speaker.id, ownConversations(scene.found));
  const inHand = caseInHand(scene.conversation, scene.speaker.id);
  const ofCase = cars.find(({ cases }) =>
    cases.some(
      ({ conversation, kept }) => conversation === scene.message.conversation && kept.id === inHand?.id,
    ),
  );
  const car = number === undefined ? (ofCase ?? (cars.length === 1 ? cars[0] : undefined)) : cars[number - 1];
  if (car !== undefined) {
    return handle(scene, { car, number: cars.length === 1 ? undefined : cars.indexOf(car) + 1 });
  }
  if (cars.length === 0) return { blocks: [text(phrases.noCar)], isPrivate: true };
  const choices = cars.map((_, at) => ({
    id: `sheet-${at + 1}`,
    label: phrases.sheetOf(at + 1),
    say: sayWhich(at + 1),
  }));
  return {
    blocks: [text(phrases.severalCars(cars.length)), { kind: "choices", choices }],
    isPrivate: true,
  };
}

interface NumberedCar {
  readonly car: OwnCar;
  /** Undefined of the only one, which needs none. */
  readonly number: number | undefined;
}

function show(scene: CommunityScene, { car, number }: NumberedCar): Handled {
  const sheet = sheetOf(scene, car);
  if (sheet === undefined) return { blocks: [text(phrases.noCar)], isPrivate: true };
  const isShared = ownShared(scene).length > 0;
  // The sheet that is shown is the one that is shared, whichever case is in hand by then.
  const shareIt = number === undefined ? phrases.shareIt : phrases.shareSheet(number);
  const choices = [shareIt, ...(isShared ? [phrases.stopSharing] : [])].map((say) => ({
    id: say.replaceAll(" ", "-"),
    label: say,
    say,
  }));
  return {
    blocks: [...sheetBlocks(sheet), aside(phrases.privateUntilShared(shareIt)), { kind: "choices", choices }],
    isPrivate: true,
  };
}

function sheetOf(scene: CommunityScene, car: OwnCar): CarSheet | undefined {
  const knowledge = scene.loaded.find(({ handbook }) => handbook.cover.id === car.handbook);
  return (
    knowledge &&
    carSheet(
      knowledge,
      car,
      ownPhotographs(scene.memory.observations.byId, scene.speaker.id, car),
      scene.today,
    )
  );
}

/** Photographs of the owner's own observations of this car, by part kind. */
export function ownPhotographs(
  observations: ReadonlyMap<string, Own>,
  person: string,
  car: Pick<OwnCar, "handbook" | "description">,
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const own = oldestFirst([...observations].filter(([, { by }]) => by === person));
  for (const [, { stands, saw }] of own) {
    if (stands === "withdrawn" || !isSameCar(car, { handbook: saw.handbook, description: saw.car })) continue;
    found.set(saw.part, [...(found.get(saw.part) ?? []), ...saw.photographs]);
  }
  return found;
}

interface Own {
  readonly by: string;
  readonly at: number;
  readonly stands: string;
  readonly saw: {
    readonly handbook: string;
    readonly part: string;
    readonly car: OwnCar["description"];
    readonly photographs: readonly string[];
  };
}

function share(scene: CommunityScene, { car: { cases } }: NumberedCar): Handled {
  // Nobody who has not been given it can guess it.
  const id = keyedDigest(scene.secretKey, `sheet ${scene.community} ${scene.speaker.id} ${scene.at}`).slice(
    0,
    32,
  );
  const record: SharedSheet = {
    person: scene.speaker.id,
    cases: cases.map(({ conversation, kept }) => ({ conversation, case: kept.id })),
    at: scene.at,
    stands: "shared",
  };
  const blocks: readonly Block[] = [
    text(phrases.shared),
    { kind: "page", label: phrases.linkLabel, path: sharedSheetPath(scene.community, id) },
  ];
  return {
    blocks,
    isPrivate: true,
    changes: [{ ...newRecord(sharedSheetKind, id, phrases.whyShared, record), isAside: true }],
  };
}

function stopSharing(scene: CommunityScene): Handled {
  const changes = ownShared(scene).map((id): RecordChange => {
    const change = keptRecord(
      sharedSheetKind,
      id,
      phrases.whyUnshared,
      (before) => before && { ...before, stands: "revoked" as const },
    );
    return { ...change, isAside: true };
  });
  const words = changes.length === 0 ? phrases.notShared : phrases.unshared;
  return { blocks: [text(words)], isPrivate: true, changes };
}

/** Ids of the speaker's sheets that stand under a link. */
function ownShared({ found, speaker }: CommunityScene): readonly string[] {
  return (found.get(sharedSheetKind.kind) ?? []).flatMap(({ id, state }) => {
    const parsed = SharedSheet.safeParse(state);
    const isOwn = parsed.success && parsed.data.person === speaker.id && parsed.data.stands === "shared";
    return isOwn ? [id] : [];
  });
}
