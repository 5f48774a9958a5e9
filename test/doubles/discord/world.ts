// What Discord would keep: servers, channels, members, messages, interactions. Plain state; http.ts and gateway.ts speak for it.
import type { Channel, Guild, Interaction, Message, User } from "./wire-shapes.ts";

export interface World {
  readonly token: string;
  readonly application: string;
  readonly bot: User;
  /** How many shards Discord asks for. */
  readonly shards: number;
  /** The developer's page allows the privileged intent. */
  readonly hasMessageContent: boolean;
  readonly guilds: Map<string, Guild>;
  readonly channels: Map<string, Channel>;
  readonly messages: Map<string, Message>;
  readonly interactions: Map<string, Interaction>;
  readonly byToken: Map<string, Interaction>;
  /** Messages by channel and nonce, for as long as Discord would remember. */
  readonly nonces: Map<string, string>;
  readonly files: Map<string, Uint8Array>;
  commands: readonly Record<string, unknown>[];
  /** How often commands were written. */
  registrations: number;
  /** Whatever a strict platform would have refused. */
  readonly violations: string[];
  readonly nextId: () => string;
}

/** Snowflakes of ascending order, far apart enough to be told apart by time too. */
function snowflakes(): () => string {
  let last = 1_300_000_000_000_000_000n;
  return () => {
    last += 4_194_304n;
    return String(last);
  };
}

export function newWorld(
  options: { readonly hasMessageContent?: boolean; readonly shards?: number } = {},
): World {
  const nextId = snowflakes();
  const application = nextId();
  return {
    token: "MTMwMDAwMDAwMDAwMDAwMDAw.GAAAAA.invented-token-of-the-double-000000000",
    application,
    bot: { id: application, username: "witness-mark", bot: true },
    shards: options.shards ?? 1,
    hasMessageContent: options.hasMessageContent === true,
    guilds: new Map(),
    channels: new Map(),
    messages: new Map(),
    interactions: new Map(),
    byToken: new Map(),
    nonces: new Map(),
    files: new Map(),
    commands: [],
    registrations: 0,
    violations: [],
    nextId,
  };
}

/** What the bot is granted when it is invited with the link it prints. */
export const granted =
  (1n << 10n) | (1n << 11n) | (1n << 15n) | (1n << 16n) | (1n << 35n) | (1n << 38n) | (1n << 51n);

const everybody = (1n << 10n) | (1n << 11n) | (1n << 16n) | (1n << 31n);

export function addGuild(world: World, name: string, owner: User): Guild {
  const id = world.nextId();
  const roles = [
    { id, name: "@everyone", permissions: everybody },
    { id: world.nextId(), name: "witness-mark", permissions: granted },
  ];
  const guild: Guild = { id, name, owner: owner.id, roles, members: new Map() };
  guild.members.set(world.bot.id, { user: world.bot, roles: [roles[1]?.id ?? id] });
  guild.members.set(owner.id, { user: owner, roles: [] });
  world.guilds.set(id, guild);
  return guild;
}

export function addRole(world: World, guild: Guild, name: string, permissions = 0n): string {
  const id = world.nextId();
  guild.roles.push({ id, name, permissions });
  return id;
}

export function addChannel(world: World, guild: Guild, name: string): Channel {
  const channel: Channel = { id: world.nextId(), type: 0, name, guild_id: guild.id, lacking: 0n };
  world.channels.set(channel.id, channel);
  return channel;
}

export function directChannel(world: World, user: User): Channel {
  for (const channel of world.channels.values()) {
    if (channel.type === 1 && channel.recipients?.[0]?.id === user.id) return channel;
  }
  const channel: Channel = {
    id: world.nextId(),
    type: 1,
    name: user.username,
    recipients: [user],
    lacking: 0n,
  };
  world.channels.set(channel.id, channel);
  return channel;
}

/** The permissions of a member in a server, as one number; the owner has all. */
export function permissionsOf(guild: Guild, user: string): bigint {
  if (guild.owner === user) return (1n << 52n) - 1n;
  const member = guild.members.get(user);
  return guild.roles
    .filter((role) => role.id === guild.id || member?.roles.includes(role.id) === true)
    .reduce((sum, role) => sum | role.permissions, 0n);
}

/** What the bot may do in a channel; a thread goes by the channel it hangs on. */
export function botPermissionsIn(world: World, channel: Channel): bigint {
  const guild = world.guilds.get(channel.guild_id ?? "");
  if (guild === undefined) return granted;
  const parent = world.channels.get(channel.parent_id ?? "");
  return permissionsOf(guild, world.bot.id) & ~channel.lacking & ~(parent?.lacking ?? 0n);
}
