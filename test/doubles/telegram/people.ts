// What people do: write, answer, press, send photographs, and change who may do what. Each becomes the update that the platform
// sends, or none, where the bot would not be told.
import type { CallbackQuery, ChatMember, User } from "@grammyjs/types";
import type { Entity } from "./html-entities.ts";
import {
  addUpdate,
  asChat,
  asMessage,
  botId,
  type Kept,
  keep,
  type MemberStatus,
  type Room,
  roomOf,
  type World,
} from "./world.ts";

export interface Said {
  readonly replyTo?: number;
  readonly topic?: number;
  readonly photo?: Buffer;
  readonly album?: string;
  readonly viaBot?: boolean;
}

export interface People {
  person(id: number, firstName: string, username?: string): User;
  privateChat(id: number): Room;
  group(
    id: number,
    title: string,
    kind?: { readonly type?: "group" | "supergroup"; readonly isForum?: boolean },
  ): Room;
  /** Members are made where they are missing. */
  join(chat: number, person: number, status?: MemberStatus): void;
  say(chat: number, person: number, text: string, said?: Said): Kept;
  /** Presses what a button says; gives the id of the press. */
  press(chat: number, message: number, person: number, label: string): string;
  /** Presses with data of one's own making, as a changed client can. */
  forge(chat: number, message: number, person: number, data: string): string;
  ask(person: number, query: string): string;
  setBot(chat: number, status: MemberStatus, by: number): void;
  block(person: number): void;
  upgrade(chat: number, to: number): Room;
  /** The update that was sent last, once more. */
  redeliver(update?: number): void;
}

export function peopleOf(world: World): People {
  let queries = 1;
  const newRoom = (id: number, type: Room["type"], title: string, isForum: boolean): Room => {
    const room: Room = {
      id,
      type,
      title,
      isForum,
      topics: new Set(),
      members: new Map([[botId, "member" as const]]),
      messages: [],
      mayWrite: true,
      hasStarted: type !== "private",
    };
    world.rooms.set(id, room);
    return room;
  };
  const pressed = (chat: number, message: number, person: number, data: string): string => {
    const room = roomOf(world, chat);
    const kept = room.messages.find(({ id }) => id === message);
    const id = `press-${queries++}`;
    world.callbacks.set(id, { count: 0 });
    const query: CallbackQuery = {
      id,
      from: userOf(world, person),
      chat_instance: `${chat}`,
      data,
      ...(kept === undefined ? {} : { message: asMessage(world, room, kept) as never }),
    };
    addUpdate(world, { callback_query: query });
    return id;
  };
  return {
    person(id, firstName, username) {
      const user: User = {
        id,
        is_bot: false,
        first_name: firstName,
        ...(username === undefined ? {} : { username }),
      };
      world.users.set(id, user);
      return user;
    },
    privateChat: (id) => {
      const room = world.rooms.get(id) ?? newRoom(id, "private", "", false);
      room.hasStarted = true;
      return room;
    },
    group: (id, title, kind = {}) => newRoom(id, kind.type ?? "supergroup", title, kind.isForum === true),
    join(chat, person, status = "member") {
      roomOf(world, chat).members.set(person, status);
    },
    say(chat, person, text, said = {}) {
      const room = roomOf(world, chat);
      if (room.type === "private") room.hasStarted = true;
      const kept = keep(world, room, saidBy(world, person, text, said));
      if (said.topic !== undefined) room.topics.add(said.topic);
      if (reachesBot(world, room, kept)) addUpdate(world, { message: asMessage(world, room, kept) as never });
      return kept;
    },
    press(chat, message, person, label) {
      const kept = roomOf(world, chat).messages.find(({ id }) => id === message);
      const button = kept?.buttons.flat().find(({ text }) => text === label);
      if (button?.callback_data === undefined) throw new RangeError(`no button ${label} under ${message}`);
      return pressed(chat, message, person, button.callback_data);
    },
    forge: pressed,
    ask(person, query) {
      const id = `query-${queries++}`;
      addUpdate(world, { inline_query: { id, from: userOf(world, person), query, offset: "" } });
      return id;
    },
    setBot(chat, status, by) {
      const room = roomOf(world, chat);
      const old = room.members.get(botId) ?? "left";
      room.members.set(botId, status);
      addUpdate(world, {
        my_chat_member: {
          chat: asChat(world, room),
          from: userOf(world, by),
          date: 1_790_000_000,
          old_chat_member: botMember(world, old),
          new_chat_member: botMember(world, status),
        },
      });
    },
    block(person) {
      this.setBot(person, "kicked", person);
    },
    upgrade(chat, to) {
      const old = roomOf(world, chat);
      const room = newRoom(to, "supergroup", old.title, old.isForum);
      for (const [id, status] of old.members) room.members.set(id, status);
      old.upgradedTo = to;
      const from = userOf(world, [...old.members.keys()].find((id) => id !== botId) ?? botId);
      const service = (here: Room) => ({
        message_id: keep(world, here, { from: from.id }).id,
        date: 1_790_000_000,
        from,
        chat: asChat(world, here),
      });
      addUpdate(world, { message: { ...service(old), migrate_to_chat_id: to } as never });
      addUpdate(world, { message: { ...service(room), migrate_from_chat_id: chat } as never });
      return room;
    },
    redeliver(update) {
      const again =
        update === undefined
          ? world.delivered.at(-1)
          : world.delivered.find(({ update_id }) => update_id === update);
      if (again === undefined) throw new RangeError("nothing was delivered");
      world.updates = [again, ...world.updates.filter(({ update_id }) => update_id !== again.update_id)];
      world.arrived();
    },
  };
}

function saidBy(
  world: World,
  person: number,
  text: string,
  { photo, topic, album, replyTo }: Said,
): Partial<Kept> & { readonly from: number } {
  const caption = text === "" ? {} : { caption: text };
  return {
    from: person,
    ...(photo === undefined ? { text } : { ...caption, photo: newFile(world, photo) }),
    ...(topic === undefined ? {} : { topic }),
    ...(album === undefined ? {} : { album }),
    ...(replyTo === undefined ? {} : { replyTo }),
    entities: typedEntities(text),
  };
}

function userOf(world: World, id: number): User {
  const user = world.users.get(id);
  if (user === undefined) throw new RangeError(`no person ${id}`);
  return user;
}

function botMember(world: World, status: MemberStatus): ChatMember {
  return { user: world.bot, status } as ChatMember;
}

function newFile(world: World, bytes: Buffer): { readonly name: string; readonly bytes: Buffer } {
  const name = `file-${world.nextFile++}`;
  world.files.set(name, bytes);
  return { name, bytes };
}

/** Commands and mentions, as the platform marks them in what people type. */
function typedEntities(text: string): readonly Entity[] {
  const found: Entity[] = [];
  for (const match of text.matchAll(/(?<![\w/])\/[a-z0-9_]{1,32}(?:@\w+)?/giu)) {
    found.push({ type: "bot_command", offset: match.index, length: match[0].length });
  }
  for (const match of text.matchAll(/(?<![\w/])@\w{3,32}/gu)) {
    found.push({ type: "mention", offset: match.index, length: match[0].length });
  }
  return found.sort((a, b) => a.offset - b.offset);
}

/** Privacy mode: in groups a bot gets commands that may be meant for it, mentions of it, and answers to its messages. */
function reachesBot(world: World, room: Room, kept: Kept): boolean {
  const status = room.members.get(botId);
  if (status === "left" || status === "kicked") return false;
  if (room.type === "private" || status === "administrator") return true;
  const text = kept.text ?? kept.caption ?? "";
  const command = /^\/[a-z0-9_]+(?:@(\w+))?/iu.exec(text);
  if (command !== null) return command[1] === undefined || command[1] === world.bot.username;
  if (text.includes(`@${world.bot.username}`)) return true;
  return room.messages.find(({ id }) => id === kept.replyTo)?.from === botId;
}
