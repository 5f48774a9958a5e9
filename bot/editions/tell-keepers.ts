/** Tells the keepers of every community that goes by a handbook what became of it, where they meet. */
import { type HandbookChange, shortEdition, touchedBy } from "../../knowledge/index.ts";
import { noticeChanges } from "../community/notices/notices.ts";
import { type Pin, pinKind } from "../community/pins/pin.ts";
import { alongside } from "../community/record-change.ts";
import { settingsId, settingsKind } from "../community/settings-record.ts";
import {
  changeInWords,
  editionChanged,
  editionRefused,
  moreChanges,
  nothingChanged,
  pinsTouched,
} from "../conversation/phrases/editions.ts";
import type { Clock, Store } from "../ports.ts";
import type { Block } from "../reply.ts";
import { editionKeeper } from "./edition-record.ts";

/** More are counted; the history has them all. */
const mostListed = 30;

interface Told {
  readonly store: Store;
  readonly clock: Clock;
  /** The handbook's id and name. */
  readonly handbook: { readonly id: string; readonly name: string };
}

/** What is different in the edition that serves now; each change with the pinned answers of the community that it touches. */
export async function tellTaken(
  told: Told,
  older: string,
  newer: string,
  changes: readonly HandbookChange[],
): Promise<void> {
  const { handbook } = told;
  const lead = editionChanged(handbook.name, shortEdition(older), shortEdition(newer));
  await tellAll(told, `taken ${older} ${newer}`, async (community) => {
    const pins = await pinsOf(told.store, community, handbook.id);
    const items = changes
      .slice(0, mostListed)
      .map(
        (change) => changeInWords(change) + pinsTouched(pins.filter((pin) => isTouched(pin, change)).length),
      );
    const more = changes.length > mostListed ? [moreChanges(changes.length - mostListed)] : [];
    if (items.length === 0) return [{ kind: "text", text: `${lead} ${nothingChanged}` }];
    return [{ kind: "list", lead, items: [...items, ...more] }];
  });
}

/** Why the changed files are not taken; `problems`: a line each. */
export async function tellRefused(told: Told, edition: string, problems: readonly string[]): Promise<void> {
  const more = problems.length > mostListed ? [moreChanges(problems.length - mostListed)] : [];
  const items = [...problems.slice(0, mostListed), ...more];
  const blocks: readonly Block[] = [{ kind: "list", lead: editionRefused(told.handbook.name), items }];
  await tellAll(told, `refused ${edition} ${problems.join()}`, async () => blocks);
}

async function tellAll(
  { store, clock, handbook }: Told,
  source: string,
  blocksFor: (community: string) => Promise<readonly Block[]>,
): Promise<void> {
  const at = clock.milliseconds();
  for await (const { id, state } of store.currents(settingsKind.kind, "")) {
    const settings = settingsKind.shape.safeParse(state).data;
    if (settings === undefined || !id.endsWith(`/${settingsId}`)) continue;
    if (settings.handbooks?.includes(handbook.id) === false) continue;
    const community = id.slice(0, -settingsId.length - 1);
    const telling = { audience: "keepers", blocks: await blocksFor(community) } as const;
    for (const notice of noticeChanges(community, [telling], settings, `${source} ${at}`)) {
      const { change, advance } = alongside(community, notice, editionKeeper, at);
      await store.advance(change, (before) => ({ state: advance(before), outcome: null }));
    }
  }
}

async function pinsOf(store: Store, community: string, handbook: string): Promise<readonly Pin[]> {
  const pins: Pin[] = [];
  for await (const { state } of store.currents(pinKind.kind, `${community}/`)) {
    const pin = pinKind.shape.safeParse(state).data;
    if (pin?.stands === "standing" && pin.scope.handbook === handbook) pins.push(pin);
  }
  return pins;
}

/** A pin is touched by a change of its part kind, and where it speaks of variants only by a change of one of those or of all. */
function isTouched({ scope, says }: Pin, change: HandbookChange): boolean {
  const touched = touchedBy(change);
  if (touched === undefined || scope.part !== touched.part) return false;
  const named = [...scope.variants, ...says];
  return touched.variant === undefined || named.length === 0 || named.includes(touched.variant);
}
