/**
 * Carries out what was asked to be erased, record by record; each can be done twice without harm, so that whoever is interrupted begins
 * again. Asynchronous because the store is.
 */
import type { Change, ErasedToo, Store } from "../../ports.ts";
import type { Reply } from "../../reply.ts";
import { sharedSheetKind } from "../car-sheet/shared-sheet.ts";
import { handedOverKind } from "../hand-over/handed-over.ts";
import { keepersId, keepersKind } from "../keepers/keepers-record.ts";
import { LedgerEntry, ledgerKind, ledgerStep } from "../ledger.ts";
import { noticesKind } from "../notices/notices.ts";
import { observationKind } from "../observations/observations-view.ts";
import { isSharedBy, sharedAnswerKind, transcriptKind } from "../pages/page-records.ts";
import { personKind, personRecordId } from "../person/person-record.ts";
import { erasedAnswer, whyErased } from "../phrases/privacy.ts";
import { pinKind } from "../pins/pin.ts";
import { summaryBeside } from "../summary-beside.ts";
import { Erasure, erasureKind } from "./erasure-record.ts";
import {
  conversationWithout,
  handedOverWithout,
  isHeldBy,
  keepersWithout,
  nobody,
  noticesWithout,
  photographWithout,
  pinWithout,
  sightingWithout,
} from "./without-person.ts";

/** What is left of an answer. */
const answerErased: Reply = {
  blocks: [{ kind: "text", text: erasedAnswer, tone: "aside" }],
  summary: summaryBeside(undefined),
};

const gone = (): undefined => undefined;

/** Everything that is due in a community; `doorKinds`: what doors keep of people beside. Rejects when the store does; what is left is due still. */
export async function eraseDue(
  store: Store,
  community: string,
  at: number,
  doorKinds: readonly string[],
): Promise<void> {
  const prefix = `${community}/`;
  const due: { readonly id: string; readonly erasure: Erasure }[] = [];
  for await (const { id, state } of store.currents(erasureKind.kind, prefix)) {
    const parsed = Erasure.safeParse(state);
    if (parsed.success) due.push({ id: id.slice(prefix.length), erasure: parsed.data });
  }
  for (const { id, erasure } of due) await erasePerson(store, community, id, erasure, at, doorKinds);
}

/** Everything that is due anywhere: what a crash may have left. */
export async function eraseAllDue(store: Store, at: number, doorKinds: readonly string[]): Promise<void> {
  const communities = new Set<string>();
  for await (const { id } of store.currents(erasureKind.kind, "")) communities.add(communityOf(id));
  for (const community of communities) await eraseDue(store, community, at, doorKinds);
}

/** Ids of records are "COMMUNITY/ID", and an id has no stroke in it. */
function communityOf(id: string): string {
  return id.slice(0, id.lastIndexOf("/"));
}

async function erasePerson(
  store: Store,
  community: string,
  id: string,
  erasure: Erasure,
  at: number,
  doorKinds: readonly string[],
): Promise<void> {
  const { person, keepsSightings } = erasure;
  const also: ErasedToo = {
    // A message that comes again after its answer is gone is told so.
    outcome: () => answerErased,
    by: (by) => (by === person ? nobody : by),
    why: (why) => (why.includes(person) ? whyErased : why),
  };
  const change = (kind: string, of: string): Omit<Change, "message"> => ({
    kind,
    id: of,
    by: nobody,
    at,
    why: whyErased,
  });
  // Begun together, they share one rewriting of the store's files.
  const begun: Promise<void>[] = [];
  const rewrite = (kind: string, of: string, without: (state: unknown) => unknown) =>
    begun.push(store.erase(change(kind, of), without, also));

  const named: readonly (readonly [RecordIds, Without])[] = [
    [{ kind: observationKind.kind, ids: erasure.observations }, keepsSightings ? sightingWithout : gone],
    [{ kind: pinKind.kind, ids: erasure.pins }, (state) => pinWithout(person, state)],
    [{ kind: sharedSheetKind.kind, ids: erasure.shares }, gone],
    [{ kind: keepersKind.kind, ids: [keepersId] }, (state) => keepersWithout(person, state)],
    [{ kind: personKind.kind, ids: [personRecordId(person)] }, gone],
  ];
  for (const of of erasure.conversations) {
    rewrite("conversation", of, (state) => conversationWithout(person, state));
  }
  for (const [{ kind, ids }, without] of named) {
    for (const of of ids) rewrite(kind, `${community}/${of}`, without);
  }
  await erasePages(store, erasure, rewrite);
  for (const search of searchesFor(community, erasure, doorKinds)) {
    for await (const { id: of, state } of store.currents(search.kind, search.prefix)) {
      if (search.isMeant(of, state)) rewrite(search.kind, of, search.without);
    }
  }
  begun.push(eraseFromLedger(store, erasure, change(ledgerKind, community)));
  await allEnded(begun);
  // Every process reads again what has changed under it.
  const changed = [
    ...erasure.observations.map((of) => ({ kind: observationKind.kind, id: of })),
    ...erasure.pins.map((of) => ({ kind: pinKind.kind, id: of })),
    ...erasure.handedOver.map((of) => ({ kind: handedOverKind.kind, id: of })),
    { kind: keepersKind.kind, id: keepersId },
  ];
  await store.advance(change(erasureKind.kind, `${community}/${id}`), () => ({
    state: null,
    outcome: null,
    alongside: [ledgerStep(community, changed, nobody, at, whyErased)],
  }));
  await store.erase(change(erasureKind.kind, `${community}/${id}`), gone, also);
}

type Without = (state: unknown) => unknown;

interface RecordIds {
  readonly kind: string;
  /** Within the community. */
  readonly ids: readonly string[];
}

/** Records that are found by what is in them. */
interface Search {
  readonly kind: string;
  readonly prefix: string;
  readonly isMeant: (id: string, state: unknown) => boolean;
  readonly without: Without;
}

function searchesFor(
  community: string,
  { person, handedOver, observations }: Erasure,
  doorKinds: readonly string[],
): readonly Search[] {
  const prefix = `${community}/`;
  const ids = [...handedOver, ...observations];
  return [
    {
      kind: handedOverKind.kind,
      prefix,
      isMeant: (_, state) => JSON.stringify(state).includes(JSON.stringify(person)),
      without: (state) => handedOverWithout(person, state),
    },
    // Also those that were sent and belong to no observation.
    {
      kind: "photograph",
      prefix: "",
      isMeant: (_, state) => isHeldBy(person, state),
      without: (state) => photographWithout(person, state),
    },
    {
      kind: noticesKind.kind,
      prefix,
      isMeant: () => true,
      without: (state) => noticesWithout(person, ids, state),
    },
    ...doorKinds.map(
      (kind): Search => ({
        kind,
        prefix: "",
        isMeant: (id, state) => isOfDoor(person, id, state),
        without: gone,
      }),
    ),
  ];
}

/** A door's record goes when it is called by the person's own number, or names them: what it was for is theirs. */
function isOfDoor(person: string, id: string, state: unknown): boolean {
  const number = person.slice(person.indexOf(":") + 1);
  return id === number || id === person || JSON.stringify(state).includes(JSON.stringify(person));
}

/** All of them are waited for, also when one fails: it is due still, and is done again. */
async function allEnded(begun: readonly Promise<void>[]): Promise<void> {
  const ended = await Promise.allSettled(begun);
  const failed = ended.find((one) => one.status === "rejected");
  if (failed !== undefined) throw failed.reason;
}

/** What the pages keep: conversations as they show them, and answers made a page of. */
async function erasePages(
  store: Store,
  { person, conversations }: Erasure,
  rewrite: (kind: string, of: string, without: (state: unknown) => unknown) => void,
): Promise<void> {
  for (const of of conversations) rewrite(transcriptKind, of, gone);
  for await (const { id: of, state } of store.currents(sharedAnswerKind, "")) {
    if (isSharedBy(person, state)) rewrite(sharedAnswerKind, of, gone);
  }
}

/** Who did something is taken out, and with it what was said of it: a reason can hold anybody's words. */
async function eraseFromLedger(
  store: Store,
  { person, observations, pins, handedOver }: Erasure,
  change: Omit<Change, "message">,
): Promise<void> {
  const ids = [...observations, ...pins, ...handedOver];
  const isTheirs = (why: string) => why.includes(person) || ids.some((id) => why.includes(id));
  await store.erase(change, (state) => (LedgerEntry.safeParse(state).success ? state : undefined), {
    by: (by) => (by === person ? nobody : by),
    why: (why) => (isTheirs(why) ? whyErased : why),
  });
}
