/**
 * What is to be rewritten so that somebody is in no record any more. All of it is gathered before any is erased: what is erased cannot be
 * searched, and an erasure that fails while others are still looked for would be heard by nobody.
 */
import { standings } from "../../message.ts";
import type { ErasedToo, Store } from "../../ports.ts";
import type { Reply } from "../../reply.ts";
import { aside } from "../../text-blocks.ts";
import { sharedSheetKind } from "../car-sheet/shared-sheet.ts";
import { handedOverKind } from "../hand-over/handed-over.ts";
import { keepersId, keepersKind } from "../keepers/keepers-record.ts";
import { LedgerEntry, ledgerKind } from "../ledger.ts";
import { noticesKind } from "../notices/notices.ts";
import { observationKind } from "../observations/observations-view.ts";
import { isSharedBy, sharedAnswerKind, transcriptKind } from "../pages/page-records.ts";
import { nobody, Person, personKind, personRecordId } from "../person/person-record.ts";
import { whyDismissed, whyRedeemed } from "../phrases/keepers.ts";
import { erasedAnswer, whyErased } from "../phrases/privacy.ts";
import { pinKind } from "../pins/pin.ts";
import { signInLinkKind } from "../sign-in/sign-in-link.ts";
import { summaryBeside } from "../summary-beside.ts";
import type { DoorKind } from "./door-kind.ts";
import type { Erasure } from "./erasure-record.ts";
import {
  conversationWithout,
  handedOverWithout,
  isHeldBy,
  keepersWithout,
  noticesWithout,
  observationWithout,
  photographWithout,
  pinWithout,
  sightingWithout,
  transcriptWithout,
} from "./without-person.ts";

export interface Rewriting {
  readonly kind: string;
  /** In the store. */
  readonly id: string;
  readonly without: (state: unknown) => unknown;
  readonly also: ErasedToo;
}

type Place = Pick<Rewriting, "kind" | "id" | "without">;

/** What is left of an answer. */
const answerErased: Reply = { blocks: [aside(erasedAnswer)], summary: summaryBeside(undefined) };

const gone = (): undefined => undefined;

/** `doorKinds`: what doors keep of people beside. Reads all photographs, notices and records of doors. */
export async function rewritingsFor(
  store: Store,
  community: string,
  erasure: Erasure,
  doorKinds: readonly DoorKind[],
): Promise<readonly Rewriting[]> {
  const also = erasedToo(erasure);
  const found: Rewriting[] = [...conversationsOf(erasure), ...recordsOf(community, erasure)].map((place) => ({
    ...place,
    also,
  }));
  for (const { kind, prefix, isMeant, without } of searchesFor(community, erasure, doorKinds)) {
    for await (const { id, state } of store.currents(kind, prefix)) {
      if (isMeant(id, state)) found.push({ kind, id, without, also });
    }
  }
  return [...found, ...(await answersToOthers(store, community, erasure))];
}

/** Who did something is taken out, and with it what was said of it: a reason can hold anybody's words. */
export function erasedToo({ person, names, observations, pins, handedOver }: Erasure): ErasedToo {
  const acts = names.flatMap((name) =>
    standings.flatMap((standing) => [whyRedeemed(name, standing), whyDismissed(name, standing)]),
  );
  const theirs = [person, ...observations, ...pins, ...handedOver, ...acts];
  return {
    // A message that comes again after its answer is gone is told so.
    outcome: () => answerErased,
    by: (by) => (by === person ? nobody : by),
    why: (why, by) => (by === person || theirs.some((words) => why.includes(words)) ? whyErased : why),
  };
}

function conversationsOf({ person, conversations }: Erasure): readonly Place[] {
  return conversations.flatMap((id) => [
    { kind: "conversation", id, without: (state) => conversationWithout(person, state) },
    { kind: transcriptKind, id, without: gone },
  ]);
}

function recordsOf(community: string, erasure: Erasure): readonly Place[] {
  const { person, keepsSightings, found } = erasure;
  const own: readonly (readonly [string, readonly string[], Place["without"]])[] = [
    [observationKind.kind, erasure.observations, keepsSightings ? sightingWithout : gone],
    [sharedSheetKind.kind, erasure.shares, gone],
    [personKind.kind, [personRecordId(person)], gone],
  ];
  const places = own.flatMap(([kind, ids, without]) =>
    ids.map((id): Place => ({ kind, id: `${community}/${id}`, without })),
  );
  const changed = [
    ...erasure.pins.map((id) => ({ kind: pinKind.kind, id })),
    ...erasure.handedOver.map((id) => ({ kind: handedOverKind.kind, id })),
    { kind: keepersKind.kind, id: keepersId },
    ...(found?.changed ?? []),
  ];
  const others = new Map(
    changed.map(({ kind, id }): [string, Place] => {
      const without = withoutByKind[kind];
      const rewrite = (state: unknown) => (without === undefined ? state : without(person, state));
      return [`${kind}/${id}`, { kind, id: `${community}/${id}`, without: rewrite }];
    }),
  );
  const ledger = (state: unknown) => (LedgerEntry.safeParse(state).success ? state : undefined);
  return [...places, ...others.values(), { kind: ledgerKind, id: community, without: ledger }];
}

/** Of records that stay because they are others' too; in a kind that is not among them nobody is named. */
const withoutByKind: Readonly<Record<string, (person: string, state: unknown) => unknown>> = {
  [observationKind.kind]: observationWithout,
  [pinKind.kind]: pinWithout,
  [handedOverKind.kind]: handedOverWithout,
  [keepersKind.kind]: keepersWithout,
};

/** Records that are found by what is in them. */
interface Search {
  readonly kind: string;
  readonly prefix: string;
  readonly isMeant: (id: string, state: unknown) => boolean;
  readonly without: Place["without"];
}

function searchesFor(community: string, erasure: Erasure, doorKinds: readonly DoorKind[]): readonly Search[] {
  const { person, handedOver, observations } = erasure;
  const prefix = `${community}/`;
  const ids = [...handedOver, ...observations];
  const ofEverybody = (kind: string, isMeant: Search["isMeant"]): Search => ({
    kind,
    prefix: "",
    isMeant,
    without: gone,
  });
  return [
    // Also those that were sent and belong to no observation.
    {
      ...ofEverybody("photograph", (_, state) => isHeldBy(person, state)),
      without: (state) => photographWithout(person, state),
    },
    {
      kind: noticesKind.kind,
      prefix,
      isMeant: () => true,
      without: (state) => noticesWithout(erasure, ids, state),
    },
    { ...ofEverybody(signInLinkKind.kind, (_, state) => names(person, state)), prefix },
    ofEverybody(sharedAnswerKind, (_, state) => isSharedBy(person, state)),
    ...doorKinds.flatMap(({ kind, without }): readonly Search[] => {
      const ofPerson = ofEverybody(kind, (id, state) => isOfDoor(person, id, state));
      if (without === undefined) return [ofPerson];
      const isShared = (id: string) => id !== person && erasure.conversations.includes(id);
      return [
        { ...ofPerson, isMeant: (id, state) => !isShared(id) && isOfDoor(person, id, state) },
        { ...ofPerson, isMeant: isShared, without: (state) => without(person, state) },
      ];
    }),
  ];
}

/** A door's record goes when it is called by the person's own number, or names them: what it was for is theirs. */
function isOfDoor(person: string, id: string, state: unknown): boolean {
  const number = person.slice(person.indexOf(":") + 1);
  return id === number || id === person || names(person, state);
}

function names(person: string, state: unknown): boolean {
  return JSON.stringify(state).includes(JSON.stringify(person));
}

/** What others were shown of them: the answers that keepers were given stay, but for those that name them or a record of theirs. */
async function answersToOthers(
  store: Store,
  community: string,
  { person, names: called, observations, handedOver, conversations, found }: Erasure,
): Promise<readonly Rewriting[]> {
  const words = [person, ...called, ...observations, ...handedOver].map((one) =>
    JSON.stringify(one).slice(1, -1),
  );
  const tells = (kept: unknown) => {
    const text = JSON.stringify(kept);
    return words.some((one) => text.includes(one));
  };
  const ids = new Set<string>();
  for (const reader of found?.readers ?? []) {
    const index = Person.safeParse(
      await store.current(personKind.kind, `${community}/${personRecordId(reader)}`),
    );
    for (const id of index.data?.conversations ?? []) ids.add(id);
  }
  return [...ids]
    .filter((id) => !conversations.includes(id))
    .flatMap((id): readonly Rewriting[] => [
      {
        kind: "conversation",
        id,
        without: (state) => state,
        also: { outcome: (outcome) => (tells(outcome) ? answerErased : outcome) },
      },
      { kind: transcriptKind, id, without: (state) => transcriptWithout(called, tells, state), also: {} },
    ]);
}
