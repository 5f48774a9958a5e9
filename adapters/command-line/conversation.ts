/** What the commands that hold a conversation share: one handbook, a store in memory or in a file, and the bot between them. */
import { knowledgeOf, type Log, type Receive, receiver, type Store } from "../../bot/index.ts";
import { systemClock } from "../clock.ts";
import { demonstrationHandbook, parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { type OpenHandbook, openHandbook } from "../handbooks.ts";
import { memoryStore } from "../store/memory.ts";

export interface OpenConversation {
  readonly handbook: OpenHandbook;
  readonly store: Store;
  readonly receive: Receive;
  readonly log: Log;
  close(): Promise<void>;
}

export interface ConversationPlace {
  readonly platform: string;
  readonly handbook: string | undefined;
  /** A file; undefined: memory. */
  readonly store: string | undefined;
}

/** Opens all of it, or throws OutsideError and leaves nothing open. */
export async function openConversation(place: ConversationPlace): Promise<OpenConversation> {
  const handbook = await openHandbook(place.handbook ?? demonstrationHandbook);
  const log = await scriptLog();
  const known = [knowledgeOf(handbook.handbook)];
  const { store, close } = await openStore(place.store, log);
  const receive = receiver({
    knowledge: () => known,
    store,
    clock: systemClock(),
    log,
    platform: place.platform,
  });
  return { handbook, store, receive, log, close };
}

async function openStore(
  file: string | undefined,
  log: Log,
): Promise<{ readonly store: Store; readonly close: () => Promise<void> }> {
  if (file === undefined) return { store: memoryStore(), close: async () => undefined };
  const { openStoreFile } = await import("../store/open-store.ts");
  const store = await openStoreFile(file, log);
  return { store, close: () => store.close() };
}

/**
 * stderr of a command is for its one line of failure: the log stays silent unless LOG_LEVEL asks for it, and pino is loaded only
 * then.
 */
async function scriptLog(): Promise<Log> {
  if ((process.env.LOG_LEVEL ?? "") === "") return silentLog;
  const parsed = parseConfiguration({ LOG_LEVEL: process.env.LOG_LEVEL });
  if (!parsed.ok) throw new OutsideError(parsed.problems.join("; "));
  const { openLog } = await import("../log.ts");
  return openLog({ level: parsed.configuration.logLevel });
}

const silentLog: Log = {
  info: () => undefined,
  warn: () => undefined,
  error: () => undefined,
};
