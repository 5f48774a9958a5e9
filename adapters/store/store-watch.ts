/** Whether the store can be written: told by what the writes meet, and asked of the engine itself while nobody writes. */
import { sql } from "kysely";
import type { Log } from "../../bot/index.ts";
import type { Engine, Trouble } from "./engine.ts";

/** What passes within this time is nobody's business: a lock, a restart of the connection. */
const PASSING_MILLISECONDS = 1000;
/** A write that takes longer than this means that messages had better go elsewhere. */
const SLOW_MILLISECONDS = 5000;
const ASK_EVERY_MILLISECONDS = 2000;

export interface StoreWatch {
  isWell(): boolean;
  /** A write begins; the function given back says that it has ended, however it did. */
  begin(): () => void;
  worked(): void;
  failed(trouble: Trouble): void;
  close(): Promise<void>;
}

export function watchStore(engine: Engine, log: Log, askEvery = ASK_EVERY_MILLISECONDS): StoreWatch {
  let failingSince: number | undefined;
  let isTroubled = false;
  let writingSince: number | undefined;
  let asking: Promise<void> = Promise.resolve();

  function worked(): void {
    if (isTroubled) log.info({}, "the store can be written again");
    failingSince = undefined;
    isTroubled = false;
  }

  function failed(trouble: Trouble): void {
    failingSince ??= performance.now();
    const isPassing = trouble.kind === "again" && performance.now() - failingSince < PASSING_MILLISECONDS;
    if (isTroubled || isPassing) return;
    isTroubled = true;
    log.error({ problem: trouble.message }, "the store cannot be written");
  }

  /** In trouble only a write can tell that it is over; else reading is enough to see that the database is there. */
  async function ask(): Promise<void> {
    try {
      engine.stillThere();
      if (failingSince === undefined) {
        await engine.db.selectFrom("era").select("number").execute();
        return;
      }
      await engine.db.updateTable("era").set({ begun: sql`begun` }).execute();
      worked();
    } catch (failure) {
      failed(engine.troubleOf(failure));
    }
  }

  let isAsking = false;
  const timer = setInterval(() => {
    if (isAsking || writingSince !== undefined) return;
    isAsking = true;
    asking = ask().finally(() => {
      isAsking = false;
    });
  }, askEvery);
  timer.unref();

  return {
    isWell: () =>
      !isTroubled && (writingSince === undefined || performance.now() - writingSince < SLOW_MILLISECONDS),
    begin() {
      writingSince = performance.now();
      return () => {
        writingSince = undefined;
      };
    },
    worked,
    failed,
    async close() {
      clearInterval(timer);
      await asking;
    },
  };
}
