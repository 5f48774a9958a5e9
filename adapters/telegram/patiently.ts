/** Calls that may be made again without harm, because they say the same again: an edit, an acknowledgement. A lost answer costs more tries. */
import { setTimeout as pause } from "node:timers/promises";
import { troubleOf } from "./trouble.ts";

const waits = [0, 500, 2000];

/** Rejects with what the platform refused, or when the network stays away. */
export async function patiently<Value>(call: () => Promise<Value>): Promise<Value> {
  for (const wait of waits) {
    try {
      return await call();
    } catch (failure) {
      const { kind } = troubleOf(failure);
      if (kind !== "unknown fate" && kind !== "not sent") throw failure;
      await pause(wait);
    }
  }
  return call();
}
