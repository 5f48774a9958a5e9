// Members on Discord and on Telegram, on the doubles: each speaks in a place of their own, so that each is a conversation.
import type { DiscordDouble } from "../doubles/discord/index.ts";
import type { Channel, Guild, Message, User } from "../doubles/discord/wire-shapes.ts";
import { addChannel, addGuild, addRole } from "../doubles/discord/world.ts";
import type { TelegramDouble } from "../doubles/telegram/index.ts";
import { botId, type Kept } from "../doubles/telegram/world.ts";
import type { Role } from "./errands.ts";
import { type Said, type Speaker, saysLost } from "./speaker.ts";
import { waitUntil } from "./waiting.ts";

const MANAGE_MESSAGES = 1n << 13n;
const CHANNELS_OF_ONE = 200;

/** Makes members of Discord; all of them must be made before the program logs in. */
export function discordSpeakers(double: DiscordDouble): (role: Role) => Speaker {
  const { world, people } = double;
  const written = writtenByChannel(double);
  let guild: Guild | undefined;
  let keepers = "";
  let channels = 0;
  return (role) => {
    if (guild === undefined || channels % CHANNELS_OF_ONE === 0) {
      guild = addGuild(world, `Register ${channels}`, { id: world.nextId(), username: "Orla" });
      keepers = addRole(world, guild, "keepers", MANAGE_MESSAGES);
    }
    channels += 1;
    const user: User = { id: world.nextId(), username: `member ${channels}` };
    guild.members.set(user.id, { user, roles: role === "keeper" ? [keepers] : [] });
    const channel: Channel = addChannel(world, guild, `parts-${channels}`);
    const seen = () => written.get(channel.id) ?? [];
    // Every other asker uses the command; it must be acknowledged within three seconds, by one process alone.
    const isTyped = role !== "asker" || channels % 2 === 0;
    return {
      door: "discord",
      person: `discord:${user.id}`,
      conversation: `discord:${channel.id}`,
      async say(words, patience) {
        const before = snapshotOf(seen());
        const { id } = isTyped
          ? people.mention(user, channel, words)
          : people.slash(user, channel, "ask", { question: words });
        await waitUntil(() => changedIn(seen(), before).length > 0, patience);
        return { id, outcome: outcomeOf(changedIn(seen(), before).map(({ content }) => content)) };
      },
    };
  };
}

/** Kept as messages come in, because looking through all of them for each answer would take longer than the bot does. */
function writtenByChannel({ world }: DiscordDouble): ReadonlyMap<string, readonly Message[]> {
  const byChannel = new Map<string, Message[]>();
  const set = world.messages.set.bind(world.messages);
  world.messages.set = (id, message) => {
    if (message.author.id === world.bot.id) {
      const own = byChannel.get(message.channel_id) ?? [];
      own.push(message);
      byChannel.set(message.channel_id, own);
    }
    return set(id, message);
  };
  return byChannel;
}

/** Makes members of Telegram: askers write in private, who records or pins does so in a group, which is what gives them a standing. */
export function telegramSpeakers(double: TelegramDouble): (role: Role) => Speaker {
  const { people, world } = double;
  let members = 0;
  return (role) => {
    members += 1;
    const person = 100_000 + members;
    people.person(person, `Member ${members}`);
    people.privateChat(person);
    const isPrivate = role === "asker";
    const chat = isPrivate ? person : -1_000_000 - members;
    if (!isPrivate) {
      people.group(chat, `Club ${members}`);
      people.join(chat, person, role === "keeper" ? "creator" : "member");
    }
    const seen = (): readonly Kept[] =>
      (world.rooms.get(chat)?.messages ?? []).filter(({ from }) => from === botId);
    return {
      door: "telegram",
      person: `telegram:${person}`,
      conversation: `telegram:${chat}`,
      async say(words, patience) {
        const before = snapshotOf(seen());
        const { id } = people.say(chat, person, isPrivate ? words : `@${world.bot.username} ${words}`);
        await waitUntil(() => changedIn(seen(), before).length > 0, patience);
        return { id: `${chat}:${id}`, outcome: outcomeOf(changedIn(seen(), before).map(({ text }) => text)) };
      },
    };
  };
}

interface Shown {
  readonly id: string | number;
  readonly edits: number;
}

function snapshotOf(messages: readonly Shown[]): ReadonlyMap<string | number, number> {
  return new Map(messages.map(({ id, edits }) => [id, edits]));
}

/** New ones and edited ones: a case moves in its own message, which need not be the last. */
function changedIn<Message extends Shown>(
  messages: readonly Message[],
  before: ReadonlyMap<string | number, number>,
): readonly Message[] {
  return messages.filter(({ id, edits }) => edits > (before.get(id) ?? -1));
}

function outcomeOf(texts: readonly (string | undefined)[]): Said["outcome"] {
  if (texts.length === 0) return "silent";
  return texts.every((text) => saysLost.test(text ?? "")) ? "lost" : "answered";
}
