/** New turns of a conversation as server-sent events (HTML Living Standard, 9.2), as they come: from another window, or from a keeper. */
import type { Context } from "hono";
import { streamSSE } from "hono/streaming";
import { UnavailableError } from "../errors.ts";
import type { LiveTurns } from "./live-turns.ts";

/** Programs between here and the reader close what is silent for a minute. */
const KEEP_ALIVE_MILLISECONDS = 25_000;

/** `last`: the id of the newest turn. A page that was cut off sees by it that it has missed something. */
export function liveEvents(
  context: Context,
  live: LiveTurns,
  conversation: string,
  last: () => Promise<string | undefined>,
): Response {
  const queue = turnQueue();
  const stop = live.listen(conversation, queue.put);
  // 204 tells a browser not to try again.
  if (stop === undefined) return context.body(null, 204);
  // A server in between that gathers answers before it hands them on, as nginx does, is told not to.
  context.header("x-accel-buffering", "no");
  return streamSSE(context, async (stream) => {
    stream.onAbort(() => queue.put(undefined));
    try {
      await stream.writeSSE({ event: "open", data: "1" });
      await stream.writeSSE({ event: "last", data: await newest(last) });
      for (;;) {
        const next = await queue.take(KEEP_ALIVE_MILLISECONDS);
        if (next === "ended" || stream.aborted) break;
        if (next === "quiet") await stream.writeSSE({ event: "alive", data: "1" });
        else await stream.writeSSE({ event: "turn", data: next.turn });
      }
    } finally {
      stop();
    }
  });
}

/** Without the store nothing is known of it; new turns are told all the same. */
async function newest(last: () => Promise<string | undefined>): Promise<string> {
  try {
    return (await last()) ?? "";
  } catch (failure) {
    if (failure instanceof UnavailableError) return "";
    throw failure;
  }
}

interface TurnQueue {
  put(turn: string | undefined): void;
  /** The oldest turn; "quiet" when none came within `milliseconds`. */
  take(milliseconds: number): Promise<{ readonly turn: string } | "quiet" | "ended">;
}

function turnQueue(): TurnQueue {
  const waiting: (string | undefined)[] = [];
  let wake: (() => void) | undefined;
  const come = (milliseconds: number) =>
    new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, milliseconds);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  return {
    put(turn) {
      waiting.push(turn);
      wake?.();
    },
    async take(milliseconds) {
      if (waiting.length === 0) await come(milliseconds);
      if (waiting.length === 0) return "quiet";
      const turn = waiting.shift();
      return turn === undefined ? "ended" : { turn };
    },
  };
}
