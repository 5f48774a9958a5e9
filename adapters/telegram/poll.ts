/**
 * Updates by long polling. An update is confirmed to the platform only once it was handled, so that a process that dies leaves none
 * behind; those of different chats are handled beside each other meanwhile.
 */
import { setTimeout as pause } from "node:timers/promises";
import type { Api } from "grammy";
import type { Update } from "grammy/types";
import type { Log } from "../../bot/index.ts";
import { troubleOf } from "./trouble.ts";

export interface Polling {
  readonly api: Api;
  readonly allowed: readonly Exclude<keyof Update, "update_id">[];
  /** Never rejects. */
  readonly handle: (update: Update) => Promise<void>;
  readonly isElected: () => boolean;
  readonly log: Log;
}

const POLL_SECONDS = 25;
const MOST_AT_ONCE = 100;
const NOT_ELECTED_MILLISECONDS = 300;
/** So many that wait are brought again if this process dies. */
const MOST_UNCONFIRMED = 90;
/** How long what is being handled may keep us from looking for more. */
const BUSY_MILLISECONDS = 500;
/** How long a process that ends waits for what it is handling. */
const PARTING_MILLISECONDS = 10_000;
const CONFLICT_MILLISECONDS = 5000;
const LONGEST_WAIT = 30_000;

/** Polls until closed; closing waits a little for what is being handled, and confirms what was. */
export function pollUpdates(polling: Polling): { close(): Promise<void> } {
  const closing = new AbortController();
  const running = polls(polling, closing.signal);
  return {
    async close() {
      closing.abort();
      await running;
    },
  };
}

async function polls(polling: Polling, signal: AbortSignal): Promise<void> {
  const { api, isElected } = polling;
  const book = handlingBook(polling.handle);
  let wait = 0;
  while (!signal.aborted) {
    if (!isElected()) book.forget();
    wait = isElected() ? await fetched(polling, book, wait, signal) : NOT_ELECTED_MILLISECONDS;
    if (wait > 0) await rest(wait, signal);
  }
  await Promise.race([book.allHandled(), pause(PARTING_MILLISECONDS, undefined, { ref: false })]);
  if (isElected()) await confirm(api, book.offset());
}

type Book = ReturnType<typeof handlingBook>;

/** Fetches once, and gives the milliseconds to wait before the next time. */
async function fetched(polling: Polling, book: Book, waited: number, signal: AbortSignal): Promise<number> {
  const { api, allowed, log } = polling;
  const timeout = book.isBusy() ? 0 : POLL_SECONDS;
  const wanted = { ...book.offset(), limit: MOST_AT_ONCE, timeout, allowed_updates: [...allowed] };
  try {
    book.take(await api.getUpdates(wanted, signal as never));
    if (book.isBusy()) await Promise.race([book.oneHandled(), rest(BUSY_MILLISECONDS, signal)]);
    return 0;
  } catch (failure) {
    if (signal.aborted) return 0;
    const { kind } = troubleOf(failure);
    log.warn({ reason: kind }, "updates could not be fetched; trying again");
    if (kind === "webhook") await withoutWebhook(polling);
    return kind === "conflict" ? CONFLICT_MILLISECONDS : Math.min(LONGEST_WAIT, Math.max(500, 2 * waited));
  }
}

async function withoutWebhook({ api, log }: Polling): Promise<void> {
  try {
    await api.deleteWebhook();
  } catch (failure) {
    log.warn({ reason: troubleOf(failure).kind }, "a webhook left over could not be removed");
  }
}

async function confirm(api: Api, { offset }: { readonly offset?: number }): Promise<void> {
  if (offset === undefined) return;
  try {
    await api.getUpdates({ offset, limit: 1, timeout: 0 });
  } catch (failure) {
    // What is not confirmed comes again, and changes nothing then.
    if (troubleOf(failure).kind === "other") throw failure;
  }
}

/** Waits, but not past the end. */
async function rest(milliseconds: number, signal: AbortSignal): Promise<void> {
  await pause(milliseconds, undefined, { signal }).catch(() => undefined);
}

/** Which updates are being handled, and up to which all have been. */
function handlingBook(handle: Polling["handle"]) {
  const running = new Map<number, Promise<void>>();
  const seen = new Set<number>();
  let next: number | undefined;
  return {
    take(updates: readonly Update[]): void {
      // Nothing waits: all that came is confirmed, and whatever number comes next is new.
      if (updates.length === 0 && running.size === 0) {
        next = undefined;
        seen.clear();
      }
      for (const update of updates) {
        const { update_id: id } = update;
        if (seen.has(id)) continue;
        seen.add(id);
        next = Math.max(next ?? 0, id + 1);
        running.set(
          id,
          handle(update).finally(() => running.delete(id)),
        );
      }
    },
    /**
     * The first that is not handled yet. The platform gives no more than a hundred from there: what would keep newer ones from everybody
     * is confirmed before it is handled, and only lost if this process dies.
     */
    offset(): { readonly offset?: number } {
      if (next === undefined) return {};
      const oldest = next - MOST_UNCONFIRMED;
      return { offset: Math.min(...[...running.keys()].filter((id) => id >= oldest), next) };
    },
    isBusy: () => running.size > 0,
    oneHandled: () => Promise.race(running.values()),
    allHandled: () => Promise.all(running.values()),
    /** Somebody else fetches now, and will be given what was not confirmed. */
    forget(): void {
      if (running.size > 0) return;
      next = undefined;
      seen.clear();
    },
  };
}
