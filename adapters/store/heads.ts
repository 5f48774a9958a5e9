/**
 * Records as they are read: the newest version, a whole history, the answer to a message. The newest versions are kept in memory too;
 * one that is out of date is harmless, because the key of its next version is then taken.
 */
import type { Kysely } from "kysely";
import type { Change, Version } from "../../bot/index.ts";
import { type Head, noHead } from "./head.ts";
import type { Tables, VersionRow } from "./tables.ts";
import { headOrThrow, versionsFrom } from "./versions-from.ts";

/** What is kept in memory at most, in UTF-16 units. */
const MOST_CHARACTERS = 16_000_000;

export interface Heads {
  /** From memory, or read. */
  of(change: Change): Promise<Head>;
  remember(change: Change, head: Head): void;
  forget(change: Change): void;
  forgetAll(): void;
  era(): Promise<number>;
}

export function headsOf(db: Kysely<Tables>, place: string): Heads {
  const kept = new Map<string, Head>();
  let characters = 0;
  let era: number | undefined;

  function drop(key: string): void {
    characters -= kept.get(key)?.text?.length ?? 0;
    kept.delete(key);
  }

  function put(key: string, head: Head): void {
    drop(key);
    kept.set(key, head);
    characters += head.text?.length ?? 0;
    for (const oldest of kept.keys()) {
      if (characters <= MOST_CHARACTERS) break;
      drop(oldest);
    }
  }

  return {
    async of(change) {
      const known = kept.get(keyOf(change));
      if (known !== undefined) return known;
      return readHead(db, place, change.kind, change.id);
    },
    remember: (change, head) => put(keyOf(change), head),
    forget: (change) => drop(keyOf(change)),
    forgetAll() {
      kept.clear();
      characters = 0;
      era = undefined;
    },
    async era() {
      era ??= (await db.selectFrom("era").select("number").executeTakeFirstOrThrow()).number;
      return era;
    },
  };
}

export function keyOf({ kind, id }: Pick<Change, "kind" | "id">): string {
  return `${kind}\0${id}`;
}

/** What a state is put together from; the outcomes stay where they are. */
const stateColumns = [
  "kind",
  "id",
  "version",
  "at",
  "by",
  "why",
  "message",
  "kept_start",
  "kept_end",
  "state",
  "digest",
] as const;

export async function readHead(db: Kysely<Tables>, place: string, kind: string, id: string): Promise<Head> {
  const rows = await db
    .selectFrom("version")
    .select(stateColumns)
    .where("kind", "=", kind)
    .where("id", "=", id)
    .where("version", ">=", (from) =>
      from
        .selectFrom("version as whole")
        .select((each) => each.fn.max("whole.version").as("version"))
        .where("whole.kind", "=", kind)
        .where("whole.id", "=", id)
        .where("whole.kept_start", "is", null),
    )
    .orderBy("version")
    .execute();
  return rows.reduce((head: Head, row) => headOrThrow(head, row, place), noHead);
}

export async function readHistory(
  db: Kysely<Tables>,
  place: string,
  kind: string,
  id: string,
): Promise<readonly Version[]> {
  const rows = await db
    .selectFrom("version")
    .select(stateColumns)
    .where("kind", "=", kind)
    .where("id", "=", id)
    .orderBy("version")
    .execute();
  return versionsFrom(rows, place);
}

/**
 * The outcome of a change that is already there: by its message, or because it is one of `sent`, the digests of rows that were on their
 * way when the connection broke. undefined: it is not there.
 */
export async function readOutcome(
  db: Kysely<Tables>,
  change: Change,
  sent: readonly string[],
): Promise<Pick<VersionRow, "outcome" | "digest"> | undefined> {
  const { kind, id, message } = change;
  if (message === undefined && sent.length === 0) return undefined;
  return db
    .selectFrom("version")
    .select(["outcome", "digest"])
    .where("kind", "=", kind)
    .where("id", "=", id)
    .where((each) =>
      each.or([
        ...(message === undefined ? [] : [each("message", "=", message)]),
        ...(sent.length === 0 ? [] : [each("digest", "in", sent)]),
      ]),
    )
    .executeTakeFirst();
}
