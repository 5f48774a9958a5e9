/** What every event handler of this door needs, and the few things they all do with it. */
import type { Client } from "discord.js";
import type { Bot, Clock, IncomingMessage, Log, Reply, Store } from "../../bot/index.ts";
import { fewAtOnce, type InTurn, inTurn } from "./in-turn.ts";
import { type Outlast, outlasting } from "./outlast.ts";
import type { Photographs, PictureMaking } from "./payload.ts";
import { openPlaces, type Place, type Places } from "./places.ts";
import { type SettingsReader, settingsReader } from "./server-settings.ts";

export interface HandbookName {
  readonly id: string;
  readonly name: string;
}

export interface DiscordOptions {
  readonly token: string;
  /** Another base of the HTTP API than Discord's own, without "/v10". */
  readonly apiBase: string | undefined;
  readonly bot: Bot;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly handbooks: readonly HandbookName[];
  readonly pngOf: (svg: string) => Promise<Uint8Array>;
  readonly photographs: Photographs;
  /** Of our own pages, when they can be reached. */
  readonly publicAddress?: string | undefined;
  /** How long trouble is outlasted; the tests are quicker. */
  readonly outlasting?: { readonly patienceMilliseconds: number };
}

export interface Desk extends PictureMaking {
  readonly client: Client;
  readonly bot: Bot;
  readonly clock: Clock;
  readonly store: Store;
  readonly log: Log;
  readonly handbooks: readonly HandbookName[];
  readonly photographs: Photographs;
  readonly address: string | undefined;
  readonly places: Places;
  readonly settings: SettingsReader;
  /** What stands in the way of a turn is outlasted in its place in the row. */
  readonly turns: InTurn;
  /** The same for what is done before a turn. */
  readonly outlast: Outlast;
  /** The bot's answer; few are worked out at once. */
  readonly receive: (message: IncomingMessage) => Promise<Reply>;
  /** The reply a place shows, as it was first given. */
  readonly recall: (conversation: string, place: Place) => Promise<Reply>;
  /** True the first time an event is seen: Discord may deliver one twice. */
  readonly isNew: (event: string) => boolean;
  /** Whether it was seen, without seeing it. */
  readonly isKnown: (event: string) => boolean;
}

const AT_ONCE = 2;
const MOST_REPLIES = 500;
const MOST_EVENTS = 2000;

/** `closing`: aborted once nothing more is to be waited for. */
export function openDesk(client: Client, options: DiscordOptions, closing: AbortSignal): Desk {
  const { bot, store, clock, log, handbooks, pngOf, photographs } = options;
  const outlaster = () => outlasting({ log, closing, ...options.outlasting });
  const row = inTurn();
  const few = fewAtOnce(AT_ONCE);
  const replies = new Map<string, Reply>();
  const events = new Set<string>();

  function remember(conversation: string, id: string | undefined, reply: Reply): Reply {
    if (id !== undefined) replies.set(`${conversation} ${id}`, reply);
    const [oldest] = replies.keys();
    if (replies.size > MOST_REPLIES && oldest !== undefined) replies.delete(oldest);
    return reply;
  }

  async function receive(message: IncomingMessage): Promise<Reply> {
    return remember(message.conversation, message.id, await few(() => bot.receive(message)));
  }

  return {
    client,
    bot,
    clock,
    store,
    log,
    handbooks,
    pngOf,
    photographs,
    address: options.publicAddress,
    places: openPlaces(store, clock),
    settings: settingsReader(bot, () => clock.milliseconds()),
    turns: {
      run(key, job) {
        const outlast = outlaster();
        return row.run(key, () => outlast(job));
      },
      drained: row.drained,
    },
    outlast: (work) => outlaster()(work),
    receive,
    async recall(conversation, { reply, from, community }) {
      const known = replies.get(`${conversation} ${reply}`);
      if (known !== undefined) return known;
      // The same id again changes nothing and gives the first reply.
      return receive({ conversation, id: reply, from, community, text: "" });
    },
    isKnown: (event) => events.has(event),
    isNew(event) {
      if (events.has(event)) return false;
      events.add(event);
      const [oldest] = events;
      if (events.size > MOST_EVENTS && oldest !== undefined) events.delete(oldest);
      return true;
    },
  };
}
