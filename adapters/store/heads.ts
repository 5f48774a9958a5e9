/**
 * The newest versions, kept in memory for the next change; one that is out of date is harmless, because the key of its next version is
 * then taken.
 */
import type { Kysely } from "kysely";
import type { Change } from "../../bot/index.ts";
import type { Head } from "./head.ts";
import { readHead } from "./reads.ts";
import type { Tables } from "./tables.ts";

/** What is kept in memory at most, in UTF-16 units. */
const MOST_CHARACTERS = 16_000_000;

export type RecordName = Pick<Change, "kind" | "id">;

export interface Heads {
  /** From memory, or read. */
  of(record: RecordName): Promise<Head>;
  /** As the database has it now. */
  read(record: RecordName): Promise<Head>;
  /** By `keyOf` the record. */
  remember(key: string, head: Head): void;
  forget(key: string): void;
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

  const read = ({ kind, id }: RecordName) => readHead(db, place, kind, id);

  return {
    of: async (record) => kept.get(keyOf(record)) ?? read(record),
    read,
    remember: put,
    forget: drop,
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

export function keyOf({ kind, id }: RecordName): string {
  return `${kind}\0${id}`;
}
