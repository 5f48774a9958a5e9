/** What the commands that hold a conversation share: one handbook, a store in memory or in a file, and the bot between them. */
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Bot, Log, Store } from "../../bot/index.ts";
import { systemClock } from "../clock.ts";
import { demonstrationHandbook, parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { type OpenHandbook, openHandbook } from "../handbooks.ts";
import type { PhotographKeeper } from "../photographs/index.ts";
import { freshSecret, secretKeyIn } from "../secret-key.ts";
import { memoryStore } from "../store/memory.ts";

export interface OpenConversation {
  readonly handbook: OpenHandbook;
  readonly store: Store;
  /** The bot is loaded and learns the handbook's words with the first message, or when `prepare` was called. */
  readonly bot: Pick<Bot, "receive" | "notices" | "noticeSettled">;
  readonly takePhotograph: PhotographKeeper["take"];
  readonly log: Log;
  /** Begins what the first message needs. Should that fail, the first message says so. */
  prepare(): void;
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
  const { store, close } = await openStore(place.store, log);
  let opening: Promise<Bot> | undefined;
  const bot = (): Promise<Bot> => {
    opening ??= botWith(handbook, place, { store, log });
    return opening;
  };
  return {
    handbook,
    store,
    bot: {
      receive: async (message) => (await bot()).receive(message),
      notices: async (limit) => (await bot()).notices(limit),
      noticeSettled: async (id, outcome) => (await bot()).noticeSettled(id, outcome),
    },
    async takePhotograph(bytes, by) {
      const { photographKeeper } = await import("../photographs/index.ts");
      return photographKeeper(store, systemClock()).take(bytes, by);
    },
    log,
    prepare: () => void bot().catch(() => undefined),
    close,
  };
}

/** A second of work on a slow machine, which nobody who only reads the greeting should wait for. */
async function botWith(
  { handbook }: OpenHandbook,
  { platform, store: file }: ConversationPlace,
  kept: { readonly store: Store; readonly log: Log },
): Promise<Bot> {
  const { communityMemories, knowledgeOf, openBot } = await import("../../bot/index.ts");
  const known = [knowledgeOf(handbook)];
  const secretKey = file === undefined ? freshSecret() : await secretKeyIn(secretBeside(file));
  const memories = communityMemories(kept.store);
  return openBot({ ...kept, platform, secretKey, memories, knowledge: () => known, clock: systemClock() });
}

/** The store of `npm start` has its secret beside it: the same cars are recognised from here. */
function secretBeside(file: string): string {
  const ofService = join(dirname(file), "secret.key");
  return existsSync(ofService) ? ofService : `${file}.key`;
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
