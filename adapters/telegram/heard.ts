/**
 * What the bot is told of a message, if anything: it speaks when spoken to. A private chat, a command, its name, an answer to one of its
 * messages, a chat set aside for it; not to other bots, not when others are called, not to a lone sign.
 */
import type { Message, MessageEntity, User, UserFromGetMe } from "grammy/types";

export interface Heard {
  readonly text: string;
  /** A command, its name in small letters; the text is then what stands behind it. */
  readonly command?: string;
  /** The command was given by the bot's name, as "/help@name". */
  readonly isNamed?: true;
  /** The message of ours that is answered. */
  readonly inAnswerTo?: number;
  /** Not said to the bot by name, by answering it or in private: read along in a chat set aside. */
  readonly isOverheard?: true;
  /** Somebody else's post that is asked about. */
  readonly quoted?: { readonly from: User; readonly text: string; readonly post: Message };
}

/** What was said to the bot; undefined when it was not spoken to. */
export function heardIn(message: Message, me: UserFromGetMe, isSetAside: boolean): Heard | undefined {
  if (!isSaidByPerson(message)) return undefined;
  const words = message.text ?? message.caption ?? "";
  const entities = message.entities ?? message.caption_entities ?? [];
  const command = commandIn(words, entities);
  if (command?.bot !== undefined && !isName(command.bot, me)) return undefined;
  const isCalled = command !== undefined || entities.some((entity) => callsBot(entity, words, me));
  const answered = answeredPost(message);
  const text = withoutName(command?.rest ?? words, me);
  const isDirect = isCalled || message.chat.type === "private";
  if (!isDirect && !isSpokenTo(message, text, answered, me, isSetAside)) return undefined;
  return {
    text,
    ...(isDirect || answered !== undefined ? {} : { isOverheard: true }),
    ...commandHeard(command),
    ...(answered?.from?.id === me.id ? { inAnswerTo: answered.message_id } : {}),
    ...(isCalled ? quotedIn(message, answered, me) : {}),
  };
}

/** Without being called: in answer to the bot, or where everything is for it; never when others are called. */
function isSpokenTo(
  message: Message,
  text: string,
  answered: Message | undefined,
  me: UserFromGetMe,
  isSetAside: boolean,
): boolean {
  const entities = message.entities ?? message.caption_entities ?? [];
  const isForOthers = entities.some(({ type }) => type === "mention" || type === "text_mention");
  if (isForOthers || isLoneSign(text, message)) return false;
  return answered === undefined ? isSetAside : answered.from?.id === me.id;
}

/** People, and administrators who speak as the group itself; no bots, no channels passed on. */
function isSaidByPerson({
  from,
  sender_chat: sender,
  chat,
  via_bot,
  is_automatic_forward,
}: Message): boolean {
  if (from === undefined || via_bot !== undefined || is_automatic_forward === true) return false;
  return from.is_bot ? sender?.id === chat.id : sender === undefined || sender.id === chat.id;
}

/** In a topic every message answers the one that opened it; that is no answer. */
function answeredPost({
  reply_to_message: answered,
  message_thread_id,
  is_topic_message,
}: Message): Message | undefined {
  if (answered === undefined) return undefined;
  const opensTopic = is_topic_message === true && answered.message_id === message_thread_id;
  return opensTopic || answered.forum_topic_created !== undefined ? undefined : (answered as Message);
}

function commandHeard(command: ReturnType<typeof commandIn>): Pick<Heard, "command" | "isNamed"> {
  if (command === undefined) return {};
  return { command: command.name, ...(command.bot === undefined ? {} : { isNamed: true }) };
}

function commandIn(words: string, entities: readonly MessageEntity[]) {
  const entity = entities.find(({ type, offset }) => type === "bot_command" && offset === 0);
  if (entity === undefined) return undefined;
  const [name = "", bot] = words.slice(1, entity.length).split("@");
  return { name: name.toLowerCase(), bot, rest: words.slice(entity.length).trim() };
}

function callsBot(entity: MessageEntity, words: string, me: UserFromGetMe): boolean {
  if (entity.type === "text_mention") return entity.user.id === me.id;
  if (entity.type !== "mention") return false;
  return isName(words.slice(entity.offset + 1, entity.offset + entity.length), me);
}

function isName(name: string, me: UserFromGetMe): boolean {
  return name.toLowerCase() === me.username.toLowerCase();
}

function withoutName(text: string, me: UserFromGetMe): string {
  return text
    .replace(new RegExp(`@${me.username}\\b[,:]?`, "giu"), "")
    .replace(/ {2,}/gu, " ")
    .trim();
}

/** A part of a post that was marked counts for the whole; a post of one's own is one's own words. */
function quotedIn(message: Message, answered: Message | undefined, me: UserFromGetMe): Pick<Heard, "quoted"> {
  const from = answered?.from;
  if (answered === undefined || from === undefined || from.id === me.id || from.is_bot) return {};
  const text = message.quote?.text ?? answered.text ?? answered.caption ?? "";
  return { quoted: { from, text, post: answered } };
}

function isLoneSign(text: string, message: Message): boolean {
  return message.photo === undefined && message.document === undefined && !/[\p{L}\p{N}]/u.test(text);
}
