/**
 * Where something is said. A place keeps its name for the bot when a group becomes a supergroup and gets another number: the name is
 * made of the first number, and what is sent goes to the newest.
 */
import type { Message } from "grammy/types";
import type { Records } from "./records.ts";

export interface Place {
  /** The chat's number now. */
  readonly chat: number;
  readonly topic?: number;
  /** The bot's name for the place. */
  readonly conversation: string;
  readonly community: string;
  readonly isPrivate: boolean;
}

/** The place of a message that somebody wrote, or that somebody pressed a button of. */
export async function placeOf(
  records: Records,
  {
    chat,
    message_thread_id: thread,
    is_topic_message: isTopic,
  }: Pick<Message, "chat" | "message_thread_id" | "is_topic_message">,
  person: number,
): Promise<Place> {
  if (chat.type === "private") return privatePlace(records, person);
  const { origin = chat.id, keepersOf } = await records.chat(chat.id);
  const topic = isTopic === true ? thread : undefined;
  return {
    chat: chat.id,
    ...(topic === undefined ? {} : { topic }),
    conversation: conversationOf(origin, topic),
    community: keepersOf ?? communityOf(origin),
    isPrivate: false,
  };
}

/** A private chat has the person's number; it speaks of the community the person spoke in last. */
export async function privatePlace(records: Records, person: number): Promise<Place> {
  return {
    chat: person,
    conversation: conversationOf(person, undefined),
    community: await records.communityOf(person),
    isPrivate: true,
  };
}

/** The place that a conversation's name stands for; undefined for a name of another platform. */
export async function placeNamed(
  records: Records,
  conversation: string,
  community: string,
): Promise<Place | undefined> {
  const [, id, topic] = /^telegram:(-?\d+)(?::(\d+))?$/u.exec(conversation) ?? [];
  if (id === undefined) return undefined;
  const { now = Number(id) } = await records.chat(Number(id));
  return {
    chat: now,
    ...(topic === undefined ? {} : { topic: Number(topic) }),
    conversation,
    community,
    isPrivate: Number(id) > 0,
  };
}

export function conversationOf(chat: number, topic: number | undefined): string {
  return topic === undefined ? `telegram:${chat}` : `telegram:${chat}:${topic}`;
}

export function communityOf(chat: number): string {
  return `telegram-${chat}`;
}

/** The chat whose community it is; undefined for a community of another platform. */
export function chatOfCommunity(community: string): number | undefined {
  const id = /^telegram-(-\d+)$/u.exec(community)?.[1];
  return id === undefined ? undefined : Number(id);
}
