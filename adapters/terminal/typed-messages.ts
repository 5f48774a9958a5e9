/**
 * Lines into messages. In a pipe each line is one. At a terminal nobody types two lines within a few milliseconds:
 * lines that arrive together were pasted together, and are one message.
 */
import { on } from "node:events";
import type { Interface } from "node:readline";
import { setTimeout as pause } from "node:timers/promises";

/** Longer than a terminal needs to hand over a paste, shorter than any two keystrokes of a person. */
const PASTE_MILLISECONDS = 30;

/** The messages typed, until the input ends. Must be asked for before the first line can arrive. */
export function typedMessages(lines: Interface, isTerminal: boolean): AsyncIterable<string> {
  return isTerminal ? pastedTogether(lines) : lines;
}

async function* pastedTogether(lines: Interface): AsyncGenerator<string> {
  const events = on(lines, "line", { close: ["close"] });
  let next = events.next();
  for (;;) {
    const first = await next;
    if (first.done === true) return;
    const message = [String(first.value[0])];
    next = events.next();
    for (;;) {
      const more = await Promise.race([next, pause(PASTE_MILLISECONDS, undefined)]);
      if (more === undefined || more.done === true) break;
      message.push(String(more.value[0]));
      next = events.next();
    }
    yield message.join("\n");
  }
}
