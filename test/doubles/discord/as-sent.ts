// The kept state in the shape Discord sends it. Only what discord.js reads, with values a server would have.
import { type Channel, ephemeral, type Guild, type Json, type Message, type User } from "./wire-shapes.ts";
import { botPermissionsIn, permissionsOf, type World } from "./world.ts";

export function userAsSent(user: User): Json {
  return {
    id: user.id,
    username: user.username,
    global_name: user.username,
    discriminator: "0",
    avatar: null,
    bot: user.bot === true,
    flags: 0,
    public_flags: 0,
  };
}

export function memberAsSent(world: World, guild: Guild, user: string): Json {
  const member = guild.members.get(user);
  return {
    user: userAsSent(member?.user ?? { id: user, username: "gone" }),
    roles: member?.roles ?? [],
    nick: null,
    avatar: null,
    joined_at: "2026-01-01T00:00:00.000Z",
    premium_since: null,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
    permissions: String(permissionsOf(guild, user)),
    application: world.application,
  };
}

export function channelAsSent(world: World, channel: Channel): Json {
  const { lacking, recipients, archived, ...rest } = channel;
  if (channel.type === 1) {
    return {
      id: channel.id,
      type: 1,
      recipients: (recipients ?? []).map(userAsSent),
      last_message_id: lastIn(world, channel),
      flags: 0,
    };
  }
  const overwrites = lacking === 0n ? [] : [{ id: world.bot.id, type: 1, allow: "0", deny: String(lacking) }];
  const thread =
    channel.type === 11
      ? {
          owner_id: world.bot.id,
          message_count: 0,
          member_count: 1,
          thread_metadata: {
            archived: archived === true,
            auto_archive_duration: 1440,
            archive_timestamp: "2026-01-01T00:00:00.000Z",
            locked: false,
          },
        }
      : {};
  return {
    ...rest,
    position: 0,
    topic: null,
    nsfw: false,
    last_message_id: lastIn(world, channel),
    permission_overwrites: overwrites,
    flags: 0,
    ...thread,
  };
}

function lastIn(world: World, { id }: Channel): string | null {
  let last: string | null = null;
  for (const message of world.messages.values()) if (message.channel_id === id) last = message.id;
  return last;
}

/** As the channel's own list gives it: that says nothing of the author's standing. */
export function messageAsListed(world: World, message: Message): Json {
  const isDirect = world.channels.get(message.channel_id)?.type === 1;
  const isOpen =
    isDirect ||
    world.hasMessageContent ||
    message.author.id === world.bot.id ||
    message.mentions.some(({ id }) => id === world.bot.id);
  const { member: _, guild_id: __, ...listed } = messageAsSent(world, message, isOpen);
  return listed;
}

export function guildAsSent(world: World, guild: Guild): Json {
  const channels = [...world.channels.values()].filter((channel) => channel.guild_id === guild.id);
  return {
    id: guild.id,
    name: guild.name,
    owner_id: guild.owner,
    roles: guild.roles.map((role, position) => ({
      ...role,
      permissions: String(role.permissions),
      position,
      color: 0,
      colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
      hoist: false,
      managed: false,
      mentionable: false,
      flags: 0,
    })),
    channels: channels.filter(({ type }) => type === 0).map((channel) => channelAsSent(world, channel)),
    threads: channels.filter(({ type }) => type === 11).map((channel) => channelAsSent(world, channel)),
    members: [memberAsSent(world, guild, world.bot.id)],
    member_count: guild.members.size,
    emojis: [],
    stickers: [],
    features: [],
    voice_states: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
    joined_at: "2026-01-01T00:00:00.000Z",
    large: false,
    unavailable: false,
    afk_timeout: 300,
    verification_level: 0,
    default_message_notifications: 0,
    explicit_content_filter: 0,
    mfa_level: 0,
    nsfw_level: 0,
    premium_tier: 0,
    preferred_locale: "en-GB",
    system_channel_flags: 0,
    premium_progress_bar_enabled: false,
  };
}

/** `isOpen`: the content may be read by the bot. */
export function messageAsSent(world: World, message: Message, isOpen = true): Json {
  const { onlyFor: _, edits: __, thread: ___, mentions, author, ...rest } = message;
  const guild = world.guilds.get(message.guild_id ?? "");
  const channelType = world.channels.get(message.channel_id)?.type;
  return {
    ...rest,
    ...(channelType === undefined ? {} : { channel_type: channelType }),
    content: isOpen ? message.content : "",
    components: isOpen ? message.components : [],
    attachments: isOpen ? message.attachments : [],
    author: userAsSent(author),
    ...(guild === undefined || !guild.members.has(author.id)
      ? {}
      : { member: { ...memberAsSent(world, guild, author.id), user: undefined } }),
    mentions: mentions.map(userAsSent),
    mention_roles: [],
    mention_everyone: false,
    embeds: [],
    tts: false,
    timestamp: "2026-11-01T09:00:00.000Z",
    edited_timestamp: message.edits > 0 ? "2026-11-01T09:00:00.000Z" : null,
    flags: message.onlyFor === undefined ? message.flags : message.flags | ephemeral,
  };
}

/** The head that every interaction has: where, by whom, with which permissions. */
export function interactionHead(world: World, channel: Channel, user: User): Json {
  const guild = world.guilds.get(channel.guild_id ?? "");
  const who =
    guild === undefined
      ? { user: userAsSent(user) }
      : { member: memberAsSent(world, guild, user.id), guild_id: guild.id, guild_locale: "en-GB" };
  return {
    application_id: world.application,
    channel_id: channel.id,
    channel: channelAsSent(world, channel),
    ...who,
    app_permissions: String(botPermissionsIn(world, channel)),
    locale: "en-GB",
    entitlements: [],
    authorizing_integration_owners: guild === undefined ? { 1: user.id } : { 0: guild.id },
    context: guild === undefined ? 1 : 0,
    attachment_size_limit: 10_485_760,
    version: 1,
  };
}
