/** What the store needs of a database engine: kysely over it, and the few things in which SQLite and Postgres really differ. */

import type { CompiledQuery, Kysely, Transaction } from "kysely";
import { OutsideError, UnavailableError } from "../errors.ts";
import type { Tables } from "./tables.ts";

/**
 * What a failure means. `again`: it passes by itself (locked, restarting, unreachable). `era`: a backup was put back meanwhile.
 * `storage`: nothing can be written until somebody mends it (full, read-only, damaged). `taken`: somebody else's row stands there.
 * `refused`: this row alone is at fault.
 */
export interface Trouble {
  readonly kind: "again" | "era" | "storage" | "taken" | "refused";
  /** One line: where, what, what to do. Never a password. */
  readonly message: string;
}

/** The failure as whoever asked the store sees it. */
export function problemOfTrouble({ kind, message }: Trouble, failure: unknown): OutsideError {
  return kind === "refused" ? new OutsideError(message, failure) : new UnavailableError(message, failure);
}

export interface Engine {
  readonly db: Kysely<Tables>;
  /** Where the store is, for messages. */
  readonly place: string;
  /** Runs an insertion whose text comes again and again, of `rows` rows; gives what it returns. */
  insert<Returned>(insertion: CompiledQuery<Returned>, rows: number): Promise<readonly Returned[]>;
  troubleOf(failure: unknown): Trouble;
  /** Throws when what is open is no longer what stands under its name. */
  stillThere(): void;
  /** From now on what is locked is an error at once, not a wait that stops the whole process. */
  neverBlock(): void;
  /** Reads one unchanging moment of the store, however long it takes; others write meanwhile. */
  readMoment<Value>(read: (moment: Transaction<Tables>) => Promise<Value>): Promise<Value>;
  /** Within the transaction that erases: the files have to be scrubbed, by the next process if this one dies. */
  markErased(one: Kysely<Tables>): Promise<void>;
  /** Takes what was erased out of the files. False: somebody still reads it there; again later. Does nothing when nothing is marked. */
  scrub(): Promise<boolean>;
  /** Brings the tables up to this program's; several processes may do so at once. */
  migrate(): Promise<void>;
  /** What the engine itself finds wrong with its files, a line each. */
  ownCheck(): Promise<readonly string[]>;
  close(): Promise<void>;
}
