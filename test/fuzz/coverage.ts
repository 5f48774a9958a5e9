// Which places of our own code an attempt has been at, and about how often, by V8's own counters. Whatever answers over the loopback in
// the same process is counted with it.
import type { Profiler } from "node:inspector";
import { Session } from "node:inspector/promises";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const ROOMS = ["knowledge/", "bot/", "adapters/"].map((room) => `file://${root}${room}`);

export interface Coverage {
  /** Places that were met since the last look and never before; a place met 1, 2, 4, 8 … times is another place. */
  fresh(): Promise<number>;
  /** All places so far. */
  places(): number;
  close(): Promise<void>;
}

export async function openCoverage(): Promise<Coverage> {
  const session = new Session();
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
  const seen = new Set<string>();

  function take({ url, functions }: Profiler.ScriptCoverage): void {
    for (const { startOffset, endOffset, count } of functions.flatMap(({ ranges }) => ranges)) {
      if (count === 0) continue;
      seen.add(`${url}:${startOffset}-${endOffset}*${Math.min(8, Math.floor(Math.log2(count)))}`);
    }
  }

  return {
    async fresh() {
      const before = seen.size;
      const { result } = await session.post("Profiler.takePreciseCoverage");
      for (const script of result) {
        if (ROOMS.some((room) => script.url.startsWith(room))) take(script);
      }
      return seen.size - before;
    },
    places: () => seen.size,
    async close() {
      await session.post("Profiler.stopPreciseCoverage");
      session.disconnect();
    },
  };
}
