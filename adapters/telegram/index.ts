/**
 * The bot on Telegram: by long polling, or by webhook where one is configured. Messages of one chat are heard one after another, those of
 * different chats beside each other; of several processes one fetches updates and tells what is to be told.
 */

import { autoRetry } from "@grammyjs/auto-retry";
import { Bot as Client } from "grammy";
import type { Message, Update } from "grammy/types";
import type { Bot, Log, Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { albums } from "./albums.ts";
import type { Door } from "./door.ts";
import { type DutyTimes, doDuties } from "./duties.ts";
import { candidate, type ElectionOptions } from "./election.ts";
import { moveFollower } from "./follow-move.ts";
import { forTheLog } from "./for-the-log.ts";
import { hearMessages } from "./hear-message.ts";
import { hearPress } from "./hear-press.ts";
import { inlineAnswerer } from "./inline.ts";
import { newestMessages } from "./newest-messages.ts";
import { oneAtATime } from "./one-at-a-time.ts";
import { persistently } from "./persistent.ts";
import { pollUpdates } from "./poll.ts";
import { postBy } from "./post.ts";
import { recordsIn } from "./records.ts";
import { sayMessageLost, sayPressLost } from "./say-lost.ts";
import { standingsBy } from "./standings.ts";
import { type Photographs, photographTaker } from "./take-photograph.ts";
import { openWebhook, type WebhookPlace } from "./webhook.ts";

export interface TelegramOptions {
  readonly token: string;
  /** The root of the Bot API, without a slash at the end. */
  readonly root: string;
  readonly bot: Bot;
  readonly store: Store;
  readonly log: Log;
  readonly pictureOf: (svg: string) => Promise<Uint8Array>;
  readonly photographs: Photographs;
  readonly publicAddress?: string | undefined;
  /** Absent: long polling. */
  readonly webhook?: WebhookPlace | undefined;
  /** How the one that fetches updates is found; the tests are quicker. */
  readonly duties?: DutyTimes;
  /** How long is waited before what failed is tried again; the tests are quicker. */
  readonly wait?: (milliseconds: number) => Promise<unknown>;
  readonly election?: Pick<ElectionOptions, "lookEvery" | "patience" | "callEvery">;
}

export interface OpenTelegram {
  readonly name: string;
  readonly way: string;
  close(): Promise<void>;
}

const allowed = [
  "message",
  "callback_query",
  "inline_query",
  "my_chat_member",
] as const satisfies readonly Exclude<keyof Update, "update_id">[];

/** A call that waits longer is not waited for; long polls last half as long. */
const CALL_SECONDS = 60;

export async function openTelegram(options: TelegramOptions): Promise<OpenTelegram> {
  const { token, root, store, log, webhook } = options;
  const client = new Client(token, { client: { apiRoot: root, timeoutSeconds: CALL_SECONDS } });
  // Lost answers are looked into by ourselves: a blind second try would say things twice.
  client.api.config.use(
    autoRetry({
      maxRetryAttempts: 3,
      maxDelaySeconds: 60,
      rethrowHttpErrors: true,
      rethrowInternalServerErrors: true,
    }),
  );
  await known(client);
  const door = doorFor(options, client);
  listen(client, door, options.wait);
  const election = candidate({ store, what: `${client.botInfo.id}`, ...options.election });
  await election.look();
  election.start((failure) => log.warn(forTheLog(failure), "who fetches updates could not be found out"));
  const updates =
    webhook === undefined
      ? await polled(client, election.isElected, log)
      : await hooked(client, webhook, log);
  const duties = doDuties(door, election.isElected, options.duties ?? {});
  return {
    name: client.botInfo.username,
    way: updates.way,
    async close() {
      await updates.close();
      await duties.close();
      await election.close();
    },
  };
}

/** Who the bot is, or why that cannot be had: a wrong token must not look like a broken program. */
async function known(client: Client): Promise<void> {
  try {
    await client.init(AbortSignal.timeout(30_000) as never);
  } catch (failure) {
    const code =
      typeof failure === "object" && failure !== null && "error_code" in failure ? failure.error_code : 0;
    throw new OutsideError(
      code === 401 || code === 404
        ? "TELEGRAM_BOT_TOKEN: the platform does not know this token; ask BotFather for the bot's token"
        : "telegram: does not answer; look at the network and TELEGRAM_API_ROOT",
      failure,
    );
  }
}

function doorFor(
  { token, root, bot, store, log, pictureOf, photographs, publicAddress }: TelegramOptions,
  client: Client,
): Door {
  const { api } = client;
  const records = recordsIn(store);
  const followMove = moveFollower(store, records);
  const post = postBy(api, followMove, newestMessages());
  return {
    api,
    me: client.botInfo,
    bot,
    store,
    log,
    records,
    post,
    followMove,
    standings: standingsBy(api, records),
    delivering: { store, post, pictureOf, photographs, publicAddress, log },
    inOrder: oneAtATime(),
    takePhotograph: photographTaker(api, { root, token }, photographs),
  };
}

function listen(client: Client, door: Door, wait: TelegramOptions["wait"]): void {
  const inPlace = (chat: number, work: () => Promise<void>, onLost: (failure: unknown) => Promise<void>) =>
    door.inOrder(chat, () => persistently(door.log, work, onLost, wait));
  const hear = albums((first, whole) =>
    inPlace(
      first.chat.id,
      async () => hearMessages(door, await whole()),
      (failure) => sayMessageLost(door, first, failure),
    ),
  );
  const answerWhileTyped = inlineAnswerer(door);
  client.on("message", async ({ message }) => {
    const move = movedBy(message);
    if (move === undefined) await hear(message);
    else await inPlace(message.chat.id, () => door.followMove(move.from, move.to), noWord);
  });
  client.on("inline_query", async ({ inlineQuery }) => {
    await answerWhileTyped(inlineQuery);
  });
  client.on("callback_query", async ({ callbackQuery }) => {
    const chat = callbackQuery.message?.chat.id ?? callbackQuery.from.id;
    await inPlace(
      chat,
      () => hearPress(door, callbackQuery),
      (failure) => sayPressLost(door, callbackQuery, failure),
    );
  });
}

/** Nobody waits for a word. */
async function noWord(): Promise<void> {}

function movedBy({ chat, migrate_to_chat_id: to, migrate_from_chat_id: from }: Message) {
  if (to !== undefined) return { from: chat.id, to };
  return from === undefined ? undefined : { from, to: chat.id };
}

async function polled(client: Client, isElected: () => boolean, log: Log) {
  const { api } = client;
  // A webhook left over from another time would keep all updates away.
  if (isElected()) await api.deleteWebhook();
  const polling = pollUpdates({
    api,
    allowed,
    isElected,
    log,
    handle: (update) => client.handleUpdate(update),
  });
  return { way: "long polling", close: polling.close };
}

async function hooked(client: Client, webhook: WebhookPlace, log: Log) {
  const server = await openWebhook(client, webhook, log);
  await client.api.setWebhook(webhook.url, { secret_token: webhook.secret, allowed_updates: [...allowed] });
  return { way: `webhook at ${server.address}`, close: server.close };
}
