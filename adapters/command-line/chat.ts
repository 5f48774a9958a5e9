/** `witness-mark chat`: the terminal's conversation alone, without a server, a log file or a folder of its own. */

import { locateIn } from "../terminal/drawing-paths.ts";
import { greetingFor } from "../terminal/greeting.ts";
import { startTerminal } from "../terminal/index.ts";
import { openConversation } from "./conversation.ts";
import { readOptions } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("chat", written, { handbook: "text", store: "text" });
  const open = await openConversation({ platform: "terminal", ...options });
  const { handbook, bot, takePhotograph, log, prepare, close } = open;
  try {
    await startTerminal({
      input: process.stdin,
      output: process.stdout,
      greeting: await greetingFor([handbook.handbook]),
      greeted: prepare,
      bot,
      takePhotograph,
      log,
      folder: process.cwd(),
      exports: ".",
      locate: locateIn([handbook], process.cwd()),
    });
  } finally {
    await close();
  }
}
