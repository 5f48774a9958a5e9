/** Writes down which edition serves from now on, and finds out what is different from the one before, even one of another day. */
import {
  atOnce,
  findingChanges,
  type Handbook,
  type HandbookChange,
  type HandbookFile,
  type InPieces,
  loadingHandbook,
} from "../../knowledge/index.ts";
import { changeInWords } from "../conversation/phrases/editions.ts";
import type { Change, Clock, Store } from "../ports.ts";
import {
  EditionFiles,
  EditionRecord,
  editionFilesKind,
  editionKeeper,
  editionKind,
  mostChangesKept,
} from "./edition-record.ts";

export interface EditionKeeping {
  readonly store: Store;
  readonly clock: Clock;
  /** How the changes of a large handbook are found; at once when left out. */
  readonly inPieces?: DoInPieces | undefined;
}

export interface KeptEdition {
  /** Undefined when this handbook never served before. */
  readonly older: string | undefined;
  readonly changes: readonly HandbookChange[];
  /** False when it was known already, or another process was quicker: then there is nothing to tell. */
  readonly isNew: boolean;
}

/** How long work is done: all at once, or with others having their turn between its pieces. */
export type DoInPieces = <T>(work: InPieces<T>) => Promise<T>;

export const doAtOnce: DoInPieces = async (work) => atOnce(work);

/** Keeps an edition with its files. `served`: what served until now, if it is at hand. Rejects when the store does. */
export async function keepEdition(
  { store, clock, inPieces = doAtOnce }: EditionKeeping,
  handbook: Handbook,
  files: readonly HandbookFile[],
  served?: Handbook,
): Promise<KeptEdition> {
  const { cover, edition } = handbook;
  const known = EditionRecord.safeParse(await store.current(editionKind, cover.id)).data;
  if (known?.edition === edition && known.refused.length === 0) {
    return { older: edition, changes: [], isNew: false };
  }
  const before =
    known &&
    (served?.edition === known.edition ? served : await keptHandbook(store, known.edition, inPieces));
  const changes = before === undefined ? [] : await inPieces(findingChanges(before, handbook));
  const after: EditionRecord = {
    edition,
    name: cover.name,
    changes: changes.slice(0, mostChangesKept).map(changeInWords),
    refused: [],
  };
  const at = clock.milliseconds();
  const by = editionKeeper;
  const snapshot = { kind: editionFilesKind, id: edition, by, at, why: "kept" };
  const isTaken = await store.advance(changeOf(cover.id, at, "taken"), (state) => {
    const now = EditionRecord.safeParse(state).data;
    const isNew = now?.edition !== edition;
    return {
      // Served again after files that were refused, it is what it was.
      state: isNew || now === undefined ? after : { ...after, changes: now.changes },
      outcome: isNew,
      alongside: isNew ? [{ change: snapshot, advance: () => ({ files: files.map(asKept) }) }] : [],
    };
  });
  return { older: known?.edition, changes, isNew: isTaken && known !== undefined };
}

/** Writes down that changed files were not taken, and why. True for the one process that is first to say so. */
export async function refuseEdition(
  store: Store,
  clock: Clock,
  handbook: Handbook,
  problems: readonly string[],
): Promise<boolean> {
  const { cover, edition } = handbook;
  return store.advance(changeOf(cover.id, clock.milliseconds(), "refused"), (state) => {
    const now = EditionRecord.safeParse(state).data ?? {
      edition,
      name: cover.name,
      changes: [],
      refused: [],
    };
    const isNew = JSON.stringify(now.refused) !== JSON.stringify(problems);
    return { state: { ...now, refused: problems }, outcome: isNew };
  });
}

/** A kept edition by its whole hash; undefined when it never served here, or this program cannot read it any more. */
export async function keptHandbook(
  store: Store,
  edition: string,
  inPieces: DoInPieces = doAtOnce,
): Promise<Handbook | undefined> {
  const kept = EditionFiles.safeParse(await store.current(editionFilesKind, edition)).data;
  const loaded = kept && (await inPieces(loadingHandbook(kept.files)));
  return loaded?.ok === true ? loaded.handbook : undefined;
}

function changeOf(id: string, at: number, why: string): Change {
  return { kind: editionKind, id, by: editionKeeper, at, why };
}

function asKept({ path, text }: HandbookFile): HandbookFile {
  return { path, text };
}
