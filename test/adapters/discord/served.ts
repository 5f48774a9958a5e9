// The real door, bot and handbook against the double of Discord: what every test of the door starts from.
import { inspect } from "node:util";
import { type DiscordDoor, startDiscord } from "../../../adapters/discord/index.ts";
import { photographKeeper } from "../../../adapters/photographs/index.ts";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Bot, communityMemories, openBot, type Store } from "../../../bot/index.ts";
import { type DiscordDouble, openDiscordDouble } from "../../doubles/discord/index.ts";
import type { Channel, Guild, Interaction, Message, User } from "../../doubles/discord/wire-shapes.ts";
import { addChannel, addGuild } from "../../doubles/discord/world.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { type LogLine, rememberingLog } from "../../support/logs.ts";

export interface Served {
  readonly double: DiscordDouble;
  readonly bot: Bot;
  readonly store: Store;
  readonly log: readonly LogLine[];
  readonly guild: Guild;
  readonly channel: Channel;
  readonly owner: User;
  readonly ann: User;
  readonly bert: User;
  readonly door: () => DiscordDoor;
  /** Waits until the door has nothing left to do and Discord has heard all of it. */
  settled(): Promise<void>;
  /** Ends the door and opens it anew on the same memory. */
  restart(): Promise<void>;
  /** The last message the bot has written in a channel that still stands. */
  last(channel?: Channel): Message;
  /** Waits for the message an interaction came to. */
  answer(interaction: Interaction): Promise<Message>;
  member(name: string, guild?: Guild): User;
  close(): Promise<void>;
}

export interface ServedOptions {
  readonly hasMessageContent?: boolean;
  readonly shards?: number;
  /** Puts something between the bot and the door. */
  readonly around?: (bot: Bot) => Bot;
  readonly publicAddress?: string;
  /** Puts something between the memory and everybody who uses it. */
  readonly aroundStore?: (store: Store) => Store;
  readonly patienceMilliseconds?: number;
}

export const clock = {
  today: () => demoToday,
  milliseconds: () => 1_793_523_600_000 + Math.round(performance.now()),
};

export async function served(options: ServedOptions = {}): Promise<Served> {
  const double = await openDiscordDouble(options);
  const { world } = double;
  const owner: User = { id: world.nextId(), username: "Orla" };
  const guild = addGuild(world, "Shrike Register", owner);
  const channel = addChannel(world, guild, "parts");
  const kept = memoryStore();
  const store = options.aroundStore?.(kept) ?? kept;
  const { log, lines } = rememberingLog();
  const memories = communityMemories(store);
  const plain = openBot({
    knowledge: () => [demoKnowledge()],
    store,
    memories,
    clock,
    log,
    secretKey: "a secret of the tests, long enough to be one",
    platform: "discord",
  });
  const bot = options.around?.(plain) ?? plain;
  const { cover } = demoKnowledge().handbook;
  const start = () =>
    startDiscord({
      token: world.token,
      apiBase: double.base,
      bot,
      store,
      clock,
      log,
      handbooks: [{ id: cover.id, name: cover.name }],
      pngOf,
      photographs: photographKeeper(store, clock),
      publicAddress: options.publicAddress,
      ...(options.patienceMilliseconds === undefined
        ? {}
        : { outlasting: { patienceMilliseconds: options.patienceMilliseconds } }),
    });
  let door = await start();

  function member(name: string, of = guild): User {
    const user: User = { id: world.nextId(), username: name };
    of.members.set(user.id, { user, roles: [] });
    return user;
  }

  async function settled(): Promise<void> {
    await double.quiet();
    await door.settled();
    await double.quiet(20);
  }

  return {
    double,
    bot,
    store,
    log: lines,
    guild,
    channel,
    owner,
    ann: member("Ann"),
    bert: member("Bert"),
    door: () => door,
    settled,
    async restart() {
      await door.close();
      door = await start();
    },
    last(of = channel) {
      const message = double.written(of.id).at(-1);
      if (message === undefined) throw new Error(`nothing was written in ${of.name}`);
      return message;
    },
    async answer(interaction) {
      await settled();
      if (interaction.original === undefined)
        throw new Error(
          `the interaction came to no message: ${inspect([lines.filter(({ level }) => level !== "info"), double.world.violations], { depth: 5 })}`,
        );
      return interaction.original;
    },
    member,
    async close() {
      await door.close();
      await double.close();
    },
  };
}
