// The platform's world in memory: people, chats, messages, updates waiting for the bot. What people do here becomes updates as
// the platform would send them: in groups only commands, mentions and replies reach the bot (privacy mode).
import type { Message, MessageEntity, PhotoSize, Update, User } from "@grammyjs/types";
import type { Entity } from "./html-entities.ts";
import type { SentFile } from "./read-body.ts";

export type MemberStatus = "creator" | "administrator" | "member" | "restricted" | "left" | "kicked";

/** A message as it stands now, whoever wrote it. */
export interface Kept {
  readonly id: number;
  readonly from: number;
  readonly topic?: number;
  readonly album?: string;
  readonly replyTo?: number;
  text?: string;
  caption?: string;
  entities: readonly Entity[];
  photo?: SentFile;
  document?: SentFile;
  buttons: readonly (readonly Button[])[];
  edits: number;
  isDeleted: boolean;
  isTooOld: boolean;
}

export interface Button {
  readonly text: string;
  readonly callback_data?: string;
  readonly url?: string;
}

export interface Room {
  readonly id: number;
  readonly type: "private" | "group" | "supergroup";
  readonly title: string;
  readonly isForum: boolean;
  readonly topics: Set<number>;
  readonly members: Map<number, MemberStatus>;
  readonly messages: Kept[];
  upgradedTo?: number;
  mayWrite: boolean;
  hasStarted: boolean;
}

export interface Command {
  readonly command: string;
  readonly description: string;
}

export interface World {
  readonly bot: User & { readonly username: string };
  readonly users: Map<number, User>;
  readonly rooms: Map<number, Room>;
  /** Not yet confirmed by an offset. */
  updates: Update[];
  readonly delivered: Update[];
  readonly files: Map<string, Buffer>;
  readonly callbacks: Map<string, { answer?: string; count: number }>;
  readonly inlineAnswers: Map<string, readonly unknown[]>;
  readonly commands: Map<string, readonly Command[]>;
  webhook: { url: string; secret: string };
  nextUpdate: number;
  nextOfAccount: number;
  readonly nextOfRoom: Map<number, number>;
  nextFile: number;
  /** Called when an update was added. */
  arrived: () => void;
}

export const botId = 7_000_001;

export function newWorld(): World {
  return {
    bot: {
      id: botId,
      is_bot: true,
      first_name: "Witness Mark",
      username: "witness_mark_bot",
    },
    users: new Map(),
    rooms: new Map(),
    updates: [],
    delivered: [],
    files: new Map(),
    callbacks: new Map(),
    inlineAnswers: new Map(),
    commands: new Map(),
    webhook: { url: "", secret: "" },
    nextUpdate: 500_001,
    nextOfAccount: 1,
    nextOfRoom: new Map(),
    nextFile: 1,
    arrived: () => undefined,
  };
}

/** Private chats and plain groups share one count of the account; a supergroup has its own. */
export function newMessageId(world: World, room: Room): number {
  if (room.type !== "supergroup") return world.nextOfAccount++;
  const next = world.nextOfRoom.get(room.id) ?? 1;
  world.nextOfRoom.set(room.id, next + 1);
  return next;
}

export function roomOf(world: World, id: number): Room {
  const room = world.rooms.get(id);
  if (room === undefined) throw new RangeError(`no chat ${id}`);
  return room;
}

export function addUpdate(world: World, update: Omit<Update, "update_id">): number {
  const id = world.nextUpdate++;
  world.updates.push({ update_id: id, ...update } as Update);
  world.arrived();
  return id;
}

export function keep(world: World, room: Room, message: Partial<Kept> & { readonly from: number }): Kept {
  const kept: Kept = {
    id: newMessageId(world, room),
    entities: [],
    buttons: [],
    edits: 0,
    isDeleted: false,
    isTooOld: false,
    ...message,
  };
  room.messages.push(kept);
  return kept;
}

/** A message as updates and answers carry it. */
export function asMessage(world: World, room: Room, kept: Kept, isNested = false): Message {
  const from = world.users.get(kept.from) ?? world.bot;
  const answered = room.messages.find(({ id }) => id === kept.replyTo);
  return {
    message_id: kept.id,
    date: 1_790_000_000 + kept.id,
    from,
    chat: asChat(world, room),
    ...(kept.topic === undefined ? {} : { message_thread_id: kept.topic, is_topic_message: true }),
    ...(kept.album === undefined ? {} : { media_group_id: kept.album }),
    ...(kept.text === undefined ? {} : { text: kept.text, entities: asEntities(kept.entities) }),
    ...(kept.caption === undefined
      ? {}
      : { caption: kept.caption, caption_entities: asEntities(kept.entities) }),
    ...(kept.photo === undefined ? {} : { photo: photoSizes(kept) }),
    ...(kept.buttons.length === 0 ? {} : { reply_markup: { inline_keyboard: kept.buttons } }),
    ...(answered === undefined || isNested
      ? {}
      : { reply_to_message: asMessage(world, room, answered, true) }),
  } as Message;
}

export function asChat(world: World, room: Room): Message["chat"] {
  if (room.type === "private") {
    const person = world.users.get(room.id);
    return { id: room.id, type: "private", first_name: person?.first_name ?? "somebody" };
  }
  return room.type === "group"
    ? { id: room.id, type: "group", title: room.title }
    : {
        id: room.id,
        type: "supergroup",
        title: room.title,
        ...(room.isForum ? { is_forum: true as const } : {}),
      };
}

function asEntities(entities: readonly Entity[]): MessageEntity[] {
  return entities.map((entity) => ({ ...entity }) as MessageEntity);
}

function photoSizes(kept: Kept): PhotoSize[] {
  const large = kept.photo?.name ?? "";
  return [
    { file_id: `${large}-small`, file_unique_id: `${large}-s`, width: 90, height: 60 },
    {
      file_id: large,
      file_unique_id: large,
      width: 1280,
      height: 853,
      file_size: kept.photo?.bytes.length ?? 0,
    },
  ];
}
