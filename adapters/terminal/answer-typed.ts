/** One typed message to its reply, as lines: photographs are taken in from their paths before, files are saved after. */
import type { IncomingMessage, Reply } from "../../bot/index.ts";
import { messageLost } from "../errors.ts";
import type { TerminalOptions } from "./index.ts";
import { pageOf } from "./paper.ts";
import { renderReply } from "./render.ts";
import { saveFiles } from "./save-files.ts";
import { takePhotographs } from "./take-photographs.ts";
import { typedAgainst } from "./typed-choice.ts";
import { typedPhotographs } from "./typed-photographs.ts";
import { wrapped } from "./wrap.ts";

/** Whoever sits at the machine that runs the program owns what it keeps. */
const atThisTerminal = {
  conversation: "terminal",
  from: "you",
  name: "The owner",
  standing: "owner",
  isPrivate: true,
} as const;

export interface Answered {
  readonly lines: readonly string[];
  /** The reply that numbers typed next belong to; undefined: the one before still stands. */
  readonly reply: Reply | undefined;
}

/**
 * Somebody who sits here keeps the conversation when one message fails, and is told; a pipe has nobody to tell, and ends with
 * the failure.
 */
export async function answerTyped(
  options: TerminalOptions,
  typed: string,
  last: Reply | undefined,
): Promise<Answered> {
  if (options.output.isTTY !== true) return answered(options, typed, last);
  try {
    return await answered(options, typed, last);
  } catch (failure) {
    options.log.error({ err: failure }, "message lost");
    return { lines: wrapped(messageLost(failure), pageOf(options.output).width), reply: undefined };
  }
}

async function answered(options: TerminalOptions, typed: string, last: Reply | undefined): Promise<Answered> {
  const { output, bot, locate, folder, exports } = options;
  const { text, paths } = typedPhotographs(typed);
  const { from } = atThisTerminal;
  const { ids, refusals } = await takePhotographs(paths, folder, options.takePhotograph, from);
  const page = { ...pageOf(output), locate };
  const refused = refusals.flatMap((refusal) => wrapped(refusal, page.width, "! "));
  // A photograph that was all there was, and was not taken: nothing was said.
  if (text === "" && ids.length === 0) return { lines: refused, reply: undefined };
  const said: IncomingMessage = {
    ...atThisTerminal,
    ...typedAgainst(text, last),
    ...(ids.length === 0 ? {} : { photographs: [...ids] }),
  };
  const reply = await bot.receive(said);
  const saved = await saveFiles(reply, exports);
  const lines = renderReply(reply, { ...page, saved });
  return { lines: refused.length === 0 ? lines : [...refused, "", ...lines], reply };
}
