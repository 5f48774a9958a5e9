// A club on the double: the door open on a fresh store, a few people, and what a member would see of the conversation.
import { setTimeout as pause } from "node:timers/promises";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type OpenTelegram, openTelegram, type TelegramOptions } from "../../../adapters/telegram/index.ts";
import {
  type Bot,
  communityMemories,
  type IncomingMessage,
  openBot,
  type Reply,
  type Store,
} from "../../../bot/index.ts";
import { openTelegramDouble, type TelegramDouble } from "../../doubles/telegram/index.ts";
import type { Kept, Room } from "../../doubles/telegram/world.ts";
import { botId } from "../../doubles/telegram/world.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { silentLog } from "../../support/logs.ts";

export const anna = 101;
export const hans = 102;
export const karl = 103;
export const group = -1001;

export interface Club {
  readonly double: TelegramDouble;
  readonly door: OpenTelegram;
  readonly bot: Bot;
  readonly store: Store;
  /** What the bot was told, oldest first. */
  readonly heard: readonly IncomingMessage[];
  /** What it replied, oldest first. */
  readonly replies: readonly Reply[];
  /** Waits until every update was handled. */
  settled(): Promise<void>;
  /** What the bot has written in a chat and not taken back, oldest first. */
  written(chat: number): readonly Kept[];
  /** Forgets what was heard and replied: for sessions that last. */
  forget(): void;
  close(): Promise<void>;
}

export interface ClubOptions extends Partial<TelegramOptions> {
  readonly double?: TelegramDouble;
}

const quickElection = { lookEvery: 30, patience: 400, callEvery: 100 };

export async function openClub(options: ClubOptions = {}): Promise<Club> {
  const double = options.double ?? (await newDouble());
  const store = options.store ?? memoryStore();
  const heard: IncomingMessage[] = [];
  const replies: Reply[] = [];
  const bot = hearing(options.bot ?? botOn(store), heard, replies);
  const photographs = new Map<string, Uint8Array>();
  const door = await openTelegram({
    token: double.token,
    root: double.root,
    store,
    log: silentLog,
    pictureOf: (svg) => pngOf(svg),
    photographs: {
      take: async (bytes) => {
        const id = `photograph-${photographs.size + 1}`;
        photographs.set(id, bytes);
        return { ok: true, id };
      },
      read: async (id) => {
        const bytes = photographs.get(id);
        return bytes === undefined ? undefined : { bytes };
      },
    },
    election: quickElection,
    duties: { noticesEvery: 50 },
    ...options,
    bot,
  });
  return {
    heard,
    replies,
    double,
    door,
    bot,
    store,
    settled: () => settled(double),
    written: (chat) => writtenIn(double.world.rooms.get(chat)),
    forget() {
      heard.length = 0;
      replies.length = 0;
      double.forget();
    },
    close: async () => {
      await door.close();
      if (options.double === undefined) await double.close();
    },
  };
}

export function botOn(store: Store): Bot {
  const knowledge = () => [demoKnowledge()];
  const clock = { today: () => demoToday, milliseconds: () => Date.now() };
  const memories = communityMemories(store);
  const secretKey = "a key for tests";
  return openBot({ knowledge, store, memories, clock, log: silentLog, secretKey, platform: "telegram" });
}

function hearing(bot: Bot, heard: IncomingMessage[], replies: Reply[]): Bot {
  return {
    ...bot,
    async receive(message) {
      heard.push(message);
      const reply = await bot.receive(message);
      replies.push(reply);
      return reply;
    },
  };
}

/** Anna, Hans and Karl; Karl made the group, Hans is an administrator. */
export async function newDouble(): Promise<TelegramDouble> {
  const double = await openTelegramDouble();
  const { people } = double;
  people.person(anna, "Anna", "anna_of_wexcombe");
  people.person(hans, "Hans");
  people.person(karl, "Karl");
  people.group(group, "Shrike owners");
  people.join(group, anna);
  people.join(group, hans, "administrator");
  people.join(group, karl, "creator");
  for (const person of [anna, hans, karl]) people.privateChat(person);
  return double;
}

/** Every update fetched, handled and confirmed: the next fetch asks for a number past the last. */
async function settled({ world, calls }: TelegramDouble): Promise<void> {
  const last = world.nextUpdate - 1;
  const until = Date.now() + 40_000;
  while (Date.now() < until) {
    const isTaken = world.updates.every(({ update_id }) => update_id > last);
    if (isTaken && world.webhook.url === "") return;
    if (calls.length > 100_000) break;
    await pause(5);
  }
  throw new Error("not settled within 40 seconds");
}

function writtenIn(room: Room | undefined): readonly Kept[] {
  return (room?.messages ?? []).filter(({ from, isDeleted }) => from === botId && !isDeleted);
}

/** A message with its buttons as a member sees it. */
export function seen({ text, caption, buttons, photo, document }: Kept): string {
  const attached =
    photo !== undefined ? "(photograph) " : document === undefined ? "" : `(file ${document.name}) `;
  const rows = buttons.map((row) => row.map(({ text: label }) => `[${label}]`).join(" "));
  return [`${attached}${text ?? caption ?? ""}`, ...rows].join("\n");
}
