// Members and what they can do: write, mention, press, choose, fill in, type a command. Each act is the event that Discord
// would send; what they see is read from the double's messages.
import { channelAsSent, interactionHead, messageAsSent, userAsSent } from "./as-sent.ts";
import type { Gateway } from "./gateway.ts";
import {
  type Attachment,
  type Channel,
  type Component,
  type Interaction,
  intents,
  type Json,
  type Message,
  type User,
} from "./wire-shapes.ts";
import { directChannel, type World } from "./world.ts";

export interface Written {
  readonly replyTo?: Message;
  readonly mentions?: readonly User[];
  readonly files?: readonly { readonly name: string; readonly bytes: Uint8Array; readonly type: string }[];
}

export interface People {
  /** Writes a message; what the bot may read of it depends on its intents. */
  write(user: User, channel: Channel, text: string, written?: Written): Message;
  /** Writes it with a mention of the bot in front. */
  mention(user: User, channel: Channel, text: string, written?: Written): Message;
  direct(user: User, text: string, written?: Written): Message;
  slash(
    user: User,
    channel: Channel,
    name: string,
    options?: Readonly<Record<string, unknown>>,
    sub?: string,
  ): Interaction;
  menu(user: User, channel: Channel, name: string, message: Message): Interaction;
  /** Presses a button by its label. */
  press(user: User, message: Message, label: string): Interaction;
  /** Presses whatever has this custom_id, there or not. */
  pressId(user: User, message: Message, customId: string, values?: readonly string[]): Interaction;
  /** Chooses an option by its label from a select of the message. */
  choose(user: User, message: Message, ...labels: readonly string[]): Interaction;
  /** Chooses channels or roles in a select of that type. */
  pick(user: User, message: Message, ids: readonly string[]): Interaction;
  /** Sends a form that was opened, by the labels of its fields. */
  fill(interaction: Interaction, fields: Readonly<Record<string, string>>): Interaction;
  typing(user: User, channel: Channel, name: string, option: string, text: string): Interaction;
  /** Sends the same event a second time. */
  again(event: { readonly id: string }): void;
  erase(message: Message): void;
  eraseChannel(channel: Channel): void;
  leave(user: User, guild: string): void;
}

interface Event {
  readonly name: string;
  readonly guild: string | undefined;
  readonly data: (intents: number) => Json | undefined;
}

export function peopleIn(world: World, gateway: Gateway, host: () => string): People {
  const events = new Map<string, Event>();

  function emit(id: string, name: string, guild: string | undefined, data: Event["data"]): void {
    events.set(id, { name, guild, data });
    if (events.size > 500) events.delete(events.keys().next().value ?? "");
    gateway.send(name, guild, data);
  }

  function write(user: User, channel: Channel, text: string, written: Written = {}): Message {
    const referenced = written.replyTo;
    const replied = referenced === undefined ? [] : [referenced.author];
    const mentions = [
      ...new Map([...(written.mentions ?? []), ...replied].map((one) => [one.id, one])).values(),
    ];
    const message: Message = {
      id: world.nextId(),
      type: referenced === undefined ? 0 : 19,
      channel_id: channel.id,
      author: user,
      content: text,
      components: [],
      attachments: (written.files ?? []).map((file) => attached(file)),
      mentions,
      flags: 0,
      pinned: false,
      edits: 0,
      ...(channel.guild_id === undefined ? {} : { guild_id: channel.guild_id }),
      ...(referenced === undefined
        ? {}
        : {
            message_reference: { type: 0, message_id: referenced.id, channel_id: channel.id },
            referenced_message: world.messages.has(referenced.id) ? messageAsSent(world, referenced) : null,
          }),
    };
    world.messages.set(message.id, message);
    emit(message.id, "MESSAGE_CREATE", channel.guild_id, (has) => asSeen(message, channel, has));
    return message;
  }

  function asSeen(message: Message, channel: Channel, has: number): Json | undefined {
    const needed = channel.type === 1 ? intents.directMessages : intents.guildMessages;
    if ((has & needed) === 0) return undefined;
    const isOpen =
      channel.type === 1 ||
      (has & intents.messageContent) !== 0 ||
      message.mentions.some(({ id }) => id === world.bot.id);
    return messageAsSent(world, message, isOpen);
  }

  function attached(file: NonNullable<Written["files"]>[number]): Attachment {
    const id = world.nextId();
    const path = `/attachments/${id}/${file.name}`;
    world.files.set(path, file.bytes);
    const url = `${host()}${path}`;
    return { id, filename: file.name, size: file.bytes.length, url, proxy_url: url, content_type: file.type };
  }

  function interact(
    user: User,
    channel: Channel,
    type: number,
    data: Json,
    on?: Message,
    target?: Json,
  ): Interaction {
    const id = world.nextId();
    const interaction: Interaction = {
      id,
      token: `token-${id}`,
      user,
      channel: channel.id,
      sentAt: performance.now(),
      watchers: [],
      ...(on === undefined ? {} : { on }),
    };
    world.interactions.set(id, interaction);
    world.byToken.set(interaction.token, interaction);
    if (world.interactions.size > 5000) {
      const [oldest] = world.interactions.keys();
      const gone = world.interactions.get(oldest ?? "");
      world.interactions.delete(oldest ?? "");
      world.byToken.delete(gone?.token ?? "");
    }
    const sent = {
      ...interactionHead(world, channel, user),
      id,
      type,
      token: interaction.token,
      data: { ...data, ...target },
      ...(on === undefined ? {} : { message: messageAsSent(world, on) }),
    };
    emit(id, "INTERACTION_CREATE", channel.guild_id, () => sent);
    return interaction;
  }

  function channelOf(id: string): Channel {
    const channel = world.channels.get(id);
    if (channel === undefined) throw new RangeError(`people: no channel ${id}`);
    return channel;
  }

  function command(name: string, type: number): Record<string, unknown> {
    const known = world.commands.find((one) => one.name === name && one.type === type);
    if (known === undefined) throw new RangeError(`people: no command ${name}`);
    return known;
  }

  function component(message: Message, customId: string): Component | undefined {
    return message.components
      .flatMap(({ components }) => components ?? [])
      .find((one) => one.custom_id === customId);
  }

  function pressId(user: User, message: Message, customId: string, values?: readonly string[]): Interaction {
    const type = values === undefined ? 2 : (component(message, customId)?.type ?? 3);
    const chosen = values === undefined ? {} : { values, resolved: resolvedOf(type, message, values) };
    return interact(
      user,
      channelOf(message.channel_id),
      3,
      { custom_id: customId, component_type: type, ...chosen },
      message,
    );
  }

  function resolvedOf(type: number, message: Message, ids: readonly string[]): Json {
    const guild = world.guilds.get(message.guild_id ?? "");
    if (type === 8) {
      const channels = ids.flatMap((id) => world.channels.get(id) ?? []);
      return { channels: Object.fromEntries(channels.map((one) => [one.id, channelAsSent(world, one)])) };
    }
    if (type !== 6) return {};
    const roles = (guild?.roles ?? []).filter(({ id }) => ids.includes(id));
    return {
      roles: Object.fromEntries(
        roles.map((role) => [
          role.id,
          { ...role, permissions: String(role.permissions), position: 0, color: 0 },
        ]),
      ),
    };
  }

  return {
    write,
    mention: (user, channel, text, written) =>
      write(user, channel, `<@${world.bot.id}> ${text}`, {
        ...written,
        mentions: [world.bot, ...(written?.mentions ?? [])],
      }),
    direct: (user, text, written) => write(user, directChannel(world, user), text, written),
    slash(user, channel, name, options = {}, sub) {
      const known = command(name, 1);
      const given = Object.entries(options).map(([option, value]) => ({ name: option, ...typed(value) }));
      const data = sub === undefined ? given : [{ name: sub, type: 1, options: given }];
      const resolved = resolvedOptions(options);
      return interact(user, channel, 2, { id: known.id, name, type: 1, options: data, resolved });
    },
    menu(user, channel, name, message) {
      const known = command(name, 3);
      return interact(user, channel, 2, {
        id: known.id,
        name,
        type: 3,
        target_id: message.id,
        resolved: { messages: { [message.id]: messageAsSent(world, message) } },
      });
    },
    press(user, message, label) {
      const found = message.components
        .flatMap(({ components }) => components ?? [])
        .find((one) => one.type === 2 && one.label === label);
      if (found?.custom_id === undefined)
        throw new RangeError(`people: no button "${label}" on: ${message.content}`);
      return pressId(user, message, found.custom_id);
    },
    pressId,
    choose(user, message, ...labels) {
      for (const select of message.components.flatMap(({ components }) => components ?? [])) {
        const values = (select.options ?? [])
          .filter(({ label }) => labels.includes(label))
          .map(({ value }) => value);
        if (values.length > 0) return pressId(user, message, select.custom_id ?? "", values);
      }
      throw new RangeError(`people: no option "${labels.join(", ")}" on: ${message.content}`);
    },
    pick(user, message, ids) {
      const select = message.components
        .flatMap(({ components }) => components ?? [])
        .find(({ type }) => type === 6 || type === 8);
      if (select?.custom_id === undefined)
        throw new RangeError(`people: nothing to pick on: ${message.content}`);
      return pressId(user, message, select.custom_id, ids);
    },
    fill(opened, fields) {
      const { modal } = opened;
      if (modal === undefined) throw new RangeError("people: no form is open");
      const filled = modal.components.map((part) =>
        part.type === 18
          ? {
              type: 18,
              id: 1,
              component: {
                type: 4,
                id: 2,
                custom_id: part.component?.custom_id,
                value: fields[part.label ?? ""] ?? part.component?.value ?? "",
              },
            }
          : { type: part.type, id: 3 },
      );
      const unknown = Object.keys(fields).filter(
        (label) => !modal.components.some((part) => part.label === label),
      );
      if (unknown.length > 0) throw new RangeError(`people: no field ${unknown.join(", ")}`);
      return interact(
        opened.user,
        channelOf(opened.channel),
        5,
        { custom_id: modal.custom_id, components: filled },
        opened.on,
      );
    },
    typing(user, channel, name, option, text) {
      const known = command(name, 1);
      return interact(user, channel, 4, {
        id: known.id,
        name,
        type: 1,
        options: [{ name: option, type: 3, value: text, focused: true }],
      });
    },
    again({ id }) {
      const event = events.get(id);
      if (event !== undefined) gateway.send(event.name, event.guild, event.data);
    },
    erase(message) {
      world.messages.delete(message.id);
      const data = { id: message.id, channel_id: message.channel_id, guild_id: message.guild_id };
      gateway.send("MESSAGE_DELETE", message.guild_id, () => data);
    },
    eraseChannel(channel) {
      world.channels.delete(channel.id);
      gateway.send("CHANNEL_DELETE", channel.guild_id, () => channelAsSent(world, channel));
    },
    leave(user, guild) {
      world.guilds.get(guild)?.members.delete(user.id);
      gateway.send("GUILD_MEMBER_REMOVE", guild, (has) =>
        (has & 2) === 0 ? undefined : { guild_id: guild, user: userAsSent(user) },
      );
    },
  };

  function typed(value: unknown): Json {
    if (typeof value === "boolean") return { type: 5, value };
    if (typeof value === "string") return { type: 3, value };
    const place = value as { readonly channel?: Channel; readonly role?: string };
    if (place.channel !== undefined) return { type: 7, value: place.channel.id };
    return { type: 8, value: place.role };
  }

  function resolvedOptions(options: Readonly<Record<string, unknown>>): Json {
    const channels = Object.values(options).flatMap((value) => {
      const channel = (value as { readonly channel?: Channel } | null)?.channel;
      return channel === undefined ? [] : [[channel.id, channelAsSent(world, channel)] as const];
    });
    return channels.length === 0 ? {} : { channels: Object.fromEntries(channels) };
  }
}
