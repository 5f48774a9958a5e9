/**
 * Notices between messages: after each reply, and at a terminal also while nothing is being typed. One telling at a time, so that none is
 * told twice; what cannot be told now waits.
 */
import { clearLine, cursorTo, type Interface } from "node:readline";
import type { TerminalOptions } from "./index.ts";
import { pageOf, write } from "./paper.ts";
import { tellNotices } from "./tell-notices.ts";

const EVERY_MILLISECONDS = 2000;

export interface Between {
  /** To be called after each reply, before the prompt. */
  now(): Promise<void>;
  /** Whether the prompt stands and a line may be begun. */
  atPrompt(stands: boolean): void;
  /** Resolves once nothing is being told any more. */
  end(): Promise<void>;
}

/** `lines`: undefined in a pipe, where nothing is told but after a reply. */
export function betweenMessages(options: TerminalOptions, lines: Interface | undefined): Between {
  const { output, bot, log } = options;
  /** At a terminal an empty line stands before the prompt already. */
  const apart = lines === undefined ? [""] : [];
  let isPrompting = false;
  let telling: Promise<void> = Promise.resolve();

  function tellAll(mayTell: () => boolean, before: () => void, after: () => void): Promise<void> {
    telling = telling.then(async () => {
      try {
        const { renderReply } = await import("./render.ts");
        await tellNotices(bot, (reply) => {
          if (!mayTell()) return false;
          before();
          write(output, [...apart, ...renderReply(reply, { ...pageOf(output), isBetween: true })]);
          after();
          return true;
        });
      } catch (failure) {
        // Whoever sits here is told of messages that are lost; a notice is not lost, it waits.
        log.error({ err: failure }, "notices not told, tried again");
      }
    });
    return telling;
  }

  const timer =
    lines === undefined
      ? undefined
      : setInterval(() => {
          void tellAll(
            () => isPrompting && lines.line === "",
            () => {
              cursorTo(output, 0);
              clearLine(output, 0);
            },
            () => {
              write(output, []);
              lines.prompt();
            },
          );
        }, EVERY_MILLISECONDS);

  return {
    now: () =>
      tellAll(
        () => true,
        () => undefined,
        () => (lines === undefined ? undefined : write(output, [])),
      ),
    atPrompt(stands) {
      isPrompting = stands;
    },
    async end() {
      isPrompting = false;
      clearInterval(timer);
      await telling;
    },
  };
}
