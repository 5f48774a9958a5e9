/** The community's memory in a database, whichever: the front of the queue that writes and of the reads. */
import type { Advance, Change, Log, Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";
import { groupCommit } from "./group-commit.ts";
import { headsOf, readHead, readHistory } from "./heads.ts";
import { watchStore } from "./store-watch.ts";
import { DamagedRecordError } from "./versions-from.ts";

export interface DatabaseStore extends Store {
  /** Can changes be made now? */
  isReady(): boolean;
  /** Waits for what is being written, then lets the database go. */
  close(): Promise<void>;
}

export interface StoreOptions {
  readonly log: Log;
  /** How long trouble that passes (a lock, a database that restarts) is waited out before a change is rejected. */
  readonly patienceMilliseconds?: number;
  /** How often the database is asked whether it is there. */
  readonly askEveryMilliseconds?: number;
}

const PATIENCE_MILLISECONDS = 10_000;

/** The store on an engine whose tables are in order; closing it closes the engine. */
export function databaseStore(engine: Engine, options: StoreOptions): DatabaseStore {
  const { log, patienceMilliseconds = PATIENCE_MILLISECONDS } = options;
  engine.neverBlock();
  const watch = watchStore(engine, log, options.askEveryMilliseconds);
  const queue = groupCommit(engine, headsOf(engine.db, engine.place), watch);
  let isClosed = false;

  async function reading<Value>(read: () => Promise<Value>): Promise<Value> {
    try {
      return await read();
    } catch (failure) {
      if (failure instanceof DamagedRecordError) throw failure;
      throw new OutsideError(engine.troubleOf(failure).message, failure);
    }
  }

  return {
    advance<Outcome>(change: Change, advance: Advance<Outcome>) {
      return new Promise<Outcome>((resolve, reject) => {
        const problem = isClosed ? "is closed" : problemOf(change);
        if (problem !== undefined) return reject(new OutsideError(`store: ${engine.place} ${problem}`));
        queue.add({
          change: { ...change, at: Math.round(change.at) },
          advance,
          deadline: performance.now() + patienceMilliseconds,
          // What comes out is what this very function gave, or gave when the message came first.
          resolve: (outcome) => resolve(outcome as Outcome),
          reject,
        });
      });
    },
    current: (kind, id) =>
      reading(async () => {
        const { text } = await readHead(engine.db, engine.place, kind, id);
        return text === undefined ? undefined : JSON.parse(text);
      }),
    history: (kind, id) => reading(() => readHistory(engine.db, engine.place, kind, id)),
    ids: (kind) =>
      reading(async () => {
        const rows = await engine.db
          .selectFrom("version")
          .select("id")
          .where("kind", "=", kind)
          .where("version", "=", 1)
          .orderBy("id")
          .execute();
        return rows.map(({ id }) => id);
      }),
    isReady: () => !isClosed && watch.isWell(),
    async close() {
      isClosed = true;
      await queue.drained();
      await watch.close();
      await engine.close();
    },
  };
}

/** What no database keeps as it is: a zero character, half of a surrogate pair. */
function problemOf({ kind, id, by, why, message = "" }: Change): string | undefined {
  const isSound = [kind, id, by, why, message].every(
    (text) => !text.includes("\0") && !/\p{Surrogate}/u.test(text),
  );
  return isSound ? undefined : "cannot keep an id or a name with a zero character or half a character in it";
}
