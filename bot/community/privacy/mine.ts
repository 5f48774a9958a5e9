/** What of somebody is kept: counted for "mine", whole for "export mine". */

import { findPart } from "../../conversation/knowledge.ts";
import { text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { SharedSheet, sharedSheetKind } from "../car-sheet/shared-sheet.ts";
import { keepersIn } from "../keepers/keepers-record.ts";
import { knowledgeFor } from "../observations/step-answers.ts";
import { oldestFirst } from "../oldest-first.ts";
import { isSharedBy, isTakenBack, sharedAnswerKind } from "../pages/page-records.ts";
import { ownConversations } from "../person/own-records.ts";
import { standingNames } from "../phrases/keepers.ts";
import * as phrases from "../phrases/privacy.ts";

/** Everything that is the speaker's own, in plain values. */
export function ownThings(scene: CommunityScene) {
  const { id } = scene.speaker;
  const { observations, pins, handedOver, keepers } = scene.memory;
  const cases = ownConversations(scene.found).flatMap(({ id: conversation, conversation: kept }) =>
    kept.cases
      .filter(({ owner, facts }) => owner === id || facts.reports.some(({ by }) => by === id))
      .map((one) => ({
        conversation,
        case: one.id,
        part: findPart(knowledgeFor(scene, one), one.facts.part)?.name ?? one.facts.part,
        goal: one.facts.goal,
        ...(one.owner === id ? { car: one.facts.car, told: one.facts.unplaced } : {}),
        facts: one.facts.reports.filter(({ by }) => by === id),
      })),
  );
  const own = <Value extends { readonly at: number }>(
    records: ReadonlyMap<string, Value>,
    isOwn: (value: Value) => boolean,
  ) =>
    oldestFirst([...records].filter(([, value]) => isOwn(value))).map(([recordId, value]) => ({
      id: recordId,
      ...value,
    }));
  return {
    cases: cases.filter(
      // Of a car alone, without a fact about a part, its date or its number's digest is kept all the same.
      ({ facts, told = [], car = {} }) => facts.length + told.length + Object.keys(car).length > 0,
    ),
    observations: own(observations.byId, ({ by }) => by === id),
    pins: own(pins.byId, ({ author }) => author === id),
    handedOver: own(handedOver, ({ asker }) => asker === id),
    role: keepersIn(keepers).roles.find(({ person }) => person === id),
    shares: (scene.found.get(sharedSheetKind.kind) ?? []).flatMap(({ id: share, state }) => {
      const parsed = SharedSheet.safeParse(state);
      return parsed.success && parsed.data.person === id ? [{ id: share, ...parsed.data }] : [];
    }),
    pages: (scene.found.get(sharedAnswerKind) ?? []).flatMap(({ id: page, state }) =>
      isSharedBy(id, state) && !isTakenBack(state) ? [{ id: page }] : [],
    ),
    said: [...observations.byId, ...handedOver].flatMap(([record, one]) =>
      ("asker" in one ? one.asker : one.by) === id
        ? []
        : one.sayings.flatMap(({ by, at, words }) => (by === id ? [{ about: record, at, words }] : [])),
    ),
  };
}

export type OwnThings = ReturnType<typeof ownThings>;

export function sayMine(scene: CommunityScene): Handled {
  const items = mineLines(ownThings(scene));
  if (items.length === 0) return { blocks: [text(phrases.nothingMine)], isPrivate: true };
  return {
    blocks: [
      { kind: "list", lead: phrases.mineLead, items },
      text(phrases.mineSerials),
      { kind: "text", text: phrases.mineHow, tone: "aside" },
    ],
    isPrivate: true,
  };
}

/** A line for each kind of thing of which there is any. */
export function mineLines({
  cases,
  observations,
  pins,
  handedOver,
  role,
  shares,
  pages,
  said,
}: OwnThings): readonly string[] {
  const facts = cases.reduce((sum, one) => sum + one.facts.length, 0);
  const photographs = observations.reduce((sum, { saw }) => sum + saw.photographs.length, 0);
  const shared = shares.filter(({ stands }) => stands === "shared").length;
  return [
    ...(cases.length === 0 ? [] : [phrases.mineCases(cases.length, facts)]),
    ...(observations.length === 0 ? [] : [phrases.mineObservations(observations.length)]),
    ...(photographs === 0 ? [] : [phrases.minePhotographs(photographs)]),
    ...(handedOver.length === 0 ? [] : [phrases.mineHandOvers(handedOver.length)]),
    ...(pins.length === 0 ? [] : [phrases.minePins(pins.length)]),
    ...(role === undefined ? [] : [phrases.mineRole(standingNames[role.standing])]),
    ...(shared === 0 ? [] : [phrases.mineShares(shared)]),
    ...(pages.length === 0 ? [] : [phrases.minePages(pages.length)]),
    ...(said.length === 0 ? [] : [phrases.mineSaid(said.length)]),
  ];
}

export function exportMine(scene: CommunityScene): Handled {
  const things = ownThings(scene);
  return {
    blocks: [
      {
        kind: "file",
        name: phrases.exportName,
        mediaType: "application/json",
        text: `${JSON.stringify(things, null, 2)}\n`,
        alternative: phrases.exportAlternative,
      },
    ],
    isPrivate: true,
    isMadeAnew: true,
  };
}
