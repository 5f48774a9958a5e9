/** The community's memory in a database, whichever: the front of the queue that writes and of the reads. */
import type { Advance, Change, Log, Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { problemOf } from "./alongside.ts";
import { readCurrents } from "./currents.ts";
import { type Engine, problemOfTrouble } from "./engine.ts";
import { erase } from "./erase.ts";
import { groupCommit } from "./group-commit.ts";
import { stateOf } from "./head.ts";
import { headsOf, keyOf } from "./heads.ts";
import { readHead, readHistory, readIds, readVersion } from "./reads.ts";
import { scrubbingOf } from "./scrubbing.ts";
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
  const { db, place } = engine;
  engine.neverBlock();
  const watch = watchStore(engine, log, options.askEveryMilliseconds);
  const heads = headsOf(db, place);
  const queue = groupCommit(engine, heads, watch);
  const scrubbing = scrubbingOf(engine, log, patienceMilliseconds);
  let isClosed = false;

  const closed = () => new OutsideError(`store: ${place} is closed`);

  async function reading<Value>(read: () => Promise<Value>): Promise<Value> {
    try {
      return await read();
    } catch (failure) {
      if (failure instanceof DamagedRecordError) throw failure;
      throw problemOfTrouble(engine.troubleOf(failure), failure);
    }
  }

  return {
    advance<Outcome>(change: Change, advance: Advance<Outcome>) {
      return new Promise<Outcome>((resolve, reject) => {
        const problem = isClosed ? closed() : problemOf(change);
        if (problem !== undefined) return reject(problem);
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
    current: (kind, id) => reading(async () => stateOf(await readHead(db, place, kind, id))),
    version: (kind, id) => reading(() => readVersion(db, kind, id)),
    history: (kind, id, after = 0) => reading(() => readHistory(db, place, kind, id, after)),
    ids: (kind) => reading(() => readIds(db, kind)),
    async *currents(kind, prefix) {
      const pages = readCurrents(db, place, kind, prefix);
      for (;;) {
        const { done, value } = await reading(() => pages.next());
        if (done === true) return;
        yield value;
      }
    },
    async erase(change, rewrite, also = {}) {
      const problem = problemOf(change);
      if (isClosed || problem !== undefined) throw problem ?? closed();
      const isThere = await erase(engine, { change, rewrite, also }, patienceMilliseconds);
      heads.forget(keyOf(change));
      if (isThere) await scrubbing.scrub();
    },
    isReady: () => !isClosed && watch.isWell(),
    async close() {
      isClosed = true;
      await queue.drained();
      await scrubbing.close();
      await watch.close();
      await engine.close();
    },
  };
}
