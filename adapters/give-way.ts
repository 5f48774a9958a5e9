// Long work done piece by piece: between two stretches of it every timer, socket and message has its turn, so that a large handbook
// can be read anew while people are asking. A thread would keep more out of their way, but could not hand its words and handbook over but copied whole.
import { setImmediate } from "node:timers/promises";
import type { InPieces } from "../knowledge/index.ts";

/** After so many milliseconds of work, at the next place where it yields, others have their turn. */
const STRETCH = 15;

/** What the work comes to. Rejects with the signal's reason once it is aborted, and with whatever the work throws. */
export async function givingWay<T>(work: InPieces<T>, signal?: AbortSignal): Promise<T> {
  for (;;) {
    signal?.throwIfAborted();
    const until = performance.now() + STRETCH;
    do {
      const { done, value } = work.next();
      if (done === true) return value;
    } while (performance.now() < until);
    await setImmediate();
  }
}
