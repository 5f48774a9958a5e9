/** For what had to be given up: whoever spoke to the bot is told, in the place where they did. */
import type { CallbackQuery, Message } from "grammy/types";
import type { Door } from "./door.ts";
import { heardIn } from "./heard.ts";
import { patiently } from "./patiently.ts";
import { lost, notShown, pressLost } from "./phrases.ts";
import { isOfPlatform } from "./trouble.ts";

/** In a group only when it was surely spoken to: what is set aside cannot be asked of a store that fails. */
export async function sayMessageLost(door: Door, message: Message, failure: unknown): Promise<void> {
  if (heardIn(message, door.me, false) === undefined) return;
  const text = isOfPlatform(failure) ? notShown : lost;
  await patiently(() => door.api.sendMessage(message.chat.id, text, below(message)));
}

/** Below the message that was pressed, if that is still there. */
export async function sayPressLost(door: Door, { message }: CallbackQuery, failure: unknown): Promise<void> {
  const text = isOfPlatform(failure) ? notShown : pressLost;
  if (message !== undefined)
    await patiently(() => door.api.sendMessage(message.chat.id, text, below(message)));
}

function below({ message_id }: Pick<Message, "message_id">) {
  return { reply_parameters: { message_id, allow_sending_without_reply: true } };
}
