/** For what had to be given up: whoever spoke to the bot is told, in the place where they did. */
import type { CallbackQuery, Message } from "grammy/types";
import { messageLost } from "../errors.ts";
import type { Door } from "./door.ts";
import { heardIn } from "./heard.ts";
import { patiently } from "./patiently.ts";
import { lostHere, pressLost } from "./phrases.ts";

/** In a group only when it was surely spoken to: what is set aside cannot be asked of a store that fails. */
export async function sayMessageLost(door: Door, message: Message, failure: unknown): Promise<void> {
  const { id, type } = message.chat;
  if (type === "private") await patiently(() => door.api.sendMessage(id, messageLost(failure)));
  else if (heardIn(message, door.me, false) !== undefined)
    await patiently(() => door.api.sendMessage(id, lostHere, below(message)));
}

/** Below the message that was pressed, if that is still there. */
export async function sayPressLost(door: Door, { message }: CallbackQuery): Promise<void> {
  if (message !== undefined)
    await patiently(() => door.api.sendMessage(message.chat.id, pressLost, below(message)));
}

function below({ message_id }: Pick<Message, "message_id">) {
  return { reply_parameters: { message_id, allow_sending_without_reply: true } };
}
