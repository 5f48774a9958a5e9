// Waiting for what another process does: there is nothing to listen to, so one looks again.
import { setTimeout as pause } from "node:timers/promises";

/** True as soon as `look` says so; false when it has not within `milliseconds`. */
export async function waitUntil(
  look: () => boolean | Promise<boolean>,
  milliseconds: number,
  every = 5,
): Promise<boolean> {
  const end = performance.now() + milliseconds;
  for (;;) {
    if (await look()) return true;
    if (performance.now() > end) return false;
    await pause(every);
  }
}

/** The last of a text that grows. */
export function fromEnd(text: string): string {
  return text.slice(-4000);
}
