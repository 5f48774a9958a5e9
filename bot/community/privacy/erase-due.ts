/**
 * Carries out what was asked to be erased, record by record; each can be done twice without harm, so that whoever is interrupted begins
 * again. Asynchronous because the store is.
 */
import type { Change, Store } from "../../ports.ts";
import { handedOverKind } from "../hand-over/handed-over.ts";
import { keepersId, keepersKind } from "../keepers/keepers-record.ts";
import { ledgerStep } from "../ledger.ts";
import { observationKind } from "../observations/observations-view.ts";
import { nobody } from "../person/person-record.ts";
import { whyErased } from "../phrases/privacy.ts";
import { pinKind } from "../pins/pin.ts";
import type { DoorKind } from "./door-kind.ts";
import { Erasure, erasureKind } from "./erasure-record.ts";
import { foundInLedger } from "./found-in-ledger.ts";
import { erasedToo, rewritingsFor } from "./rewritings.ts";

/** Everything that is due in a community; `doorKinds`: what doors keep of people beside. Rejects when the store does; what is left is due still. */
export async function eraseDue(
  store: Store,
  community: string,
  at: number,
  doorKinds: readonly DoorKind[],
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
export async function eraseAllDue(store: Store, at: number, doorKinds: readonly DoorKind[]): Promise<void> {
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
  asked: Erasure,
  at: number,
  doorKinds: readonly DoorKind[],
): Promise<void> {
  const change = (kind: string, of: string): Omit<Change, "message"> => ({
    kind,
    id: of,
    by: nobody,
    at,
    why: whyErased,
  });
  const own = change(erasureKind.kind, `${community}/${id}`);
  // Kept before the first thing is erased: whoever begins again no longer finds the name in the ledger.
  const erasure: Erasure = { ...asked, found: asked.found ?? (await foundInLedger(store, community, asked)) };
  if (asked.found === undefined) await store.advance(own, () => ({ state: erasure, outcome: null }));
  const rewritings = await rewritingsFor(store, community, erasure, doorKinds);
  // Begun together, they share one rewriting of the store's files.
  await allEnded(
    rewritings.map(({ kind, id: of, without, also }) => store.erase(change(kind, of), without, also)),
  );
  await store.advance(own, () => ({
    state: null,
    outcome: null,
    alongside: [ledgerStep(community, changedBy(erasure), nobody, at, whyErased)],
  }));
  await store.erase(own, () => undefined, erasedToo(erasure));
}

/** What every process reads again. */
function changedBy({ observations, pins, handedOver, found }: Erasure) {
  const records = [
    ...observations.map((id) => ({ kind: observationKind.kind, id })),
    ...pins.map((id) => ({ kind: pinKind.kind, id })),
    ...handedOver.map((id) => ({ kind: handedOverKind.kind, id })),
    { kind: keepersKind.kind, id: keepersId },
    ...(found?.changed ?? []),
  ];
  return [...new Map(records.map((one) => [`${one.kind}/${one.id}`, one])).values()];
}

/** All of them are waited for, also when one fails: it is due still, and is done again. */
async function allEnded(begun: readonly Promise<void>[]): Promise<void> {
  const ended = await Promise.allSettled(begun);
  const failed = ended.find((one) => one.status === "rejected");
  if (failed !== undefined) throw failed.reason;
}
