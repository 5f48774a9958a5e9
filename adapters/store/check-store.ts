/** `witness-mark store check`: reads every row there is, and says what is wrong with any. */
import type { Engine } from "./engine.ts";
import { rowsOf } from "./row-stream.ts";
import { historyCheck } from "./sound-history.ts";

export interface StoreCheck {
  /** A line each; none: the store is sound. */
  readonly problems: readonly string[];
  readonly records: number;
  readonly versions: number;
}

/** May run beside programs that write. Linear in the size of the store. */
export async function checkStore(engine: Engine): Promise<StoreCheck> {
  const own = await engine.ownCheck();
  const check = historyCheck();
  const problems = [...own];
  try {
    await engine.readMoment(async (moment) => {
      for await (const row of rowsOf(moment)) {
        const problem = check.take(row);
        if (problem !== undefined) problems.push(problem);
      }
    });
  } catch (failure) {
    problems.push(engine.troubleOf(failure).message);
  }
  return { problems, records: check.records, versions: check.versions };
}
