// The methods of the Bot API that a chat bot may call here, each as the platform carries it out upon the world.

import { type Answer, badRequest, done, forbidden, Refused, upgraded } from "./answers.ts";
import { buttonsOf, mostCaption, mostText, ringsFor, wordsOf } from "./limits.ts";
import type { SentFile } from "./read-body.ts";
import { asChat, asMessage, botId, type Command, type Kept, keep, type Room, type World } from "./world.ts";

export interface Call {
  readonly method: string;
  readonly payload: Readonly<Record<string, unknown>>;
  readonly files: ReadonlyMap<string, SentFile>;
}

/** Everything but waiting for updates, which is the server's. */
export function carryOut(world: World, call: Call, rang: (name: string) => void): Answer {
  const method = methods[call.method];
  if (method === undefined) return { ok: false, error_code: 404, description: "Not Found: method not found" };
  return method({ world, call, payload: call.payload, rang });
}

interface Doing {
  readonly world: World;
  readonly call: Call;
  readonly payload: Readonly<Record<string, unknown>>;
  readonly rang: (name: string) => void;
}

const methods: Readonly<Record<string, (doing: Doing) => Answer>> = {
  getMe: ({ world }) =>
    done({
      ...world.bot,
      can_join_groups: true,
      can_read_all_group_messages: false,
      supports_inline_queries: true,
      can_connect_to_business: false,
      has_main_web_app: false,
    }),
  sendMessage(doing) {
    const room = roomToWriteIn(doing);
    const words = said(doing, doing.payload, "text", mostText);
    if (words.text === "") throw new Refused(badRequest("message text is empty"));
    return sent(doing, room, words);
  },
  sendPhoto(doing) {
    const room = roomToWriteIn(doing);
    const { text: caption, entities } = said(doing, doing.payload, "caption", mostCaption);
    return sent(doing, room, { caption, entities, photo: fileOf(doing.call, doing.payload.photo) });
  },
  sendDocument(doing) {
    const room = roomToWriteIn(doing);
    const { text: caption, entities } = said(doing, doing.payload, "caption", mostCaption);
    return sent(doing, room, { caption, entities, document: fileOf(doing.call, doing.payload.document) });
  },
  sendMediaGroup(doing) {
    const room = roomToWriteIn(doing);
    const media = doing.payload.media as readonly Record<string, unknown>[];
    if (media.length < 2 || media.length > 10)
      throw new Refused(badRequest("wrong number of media in the album"));
    const album = `album-${doing.world.nextFile++}`;
    const kept = media.map((item) => {
      const { text: caption, entities } = said(doing, item, "caption", mostCaption);
      return keptIn(doing, room, { caption, entities, photo: fileOf(doing.call, item.media), album });
    });
    return done(kept.map((one) => asMessage(doing.world, room, one)));
  },
  editMessageText(doing) {
    const { room, kept } = editable(doing);
    if (kept.text === undefined) throw new Refused(badRequest("there is no text in the message to edit"));
    const { text, entities } = said(doing, doing.payload, "text", mostText);
    if (text === "") throw new Refused(badRequest("message text is empty"));
    return edited(doing, room, kept, { text, entities });
  },
  editMessageCaption(doing) {
    const { room, kept } = editable(doing);
    const { text: caption, entities } = said(doing, doing.payload, "caption", mostCaption);
    return edited(doing, room, kept, { caption, entities });
  },
  editMessageReplyMarkup(doing) {
    const { room, kept } = editable(doing);
    return edited(doing, room, kept, {});
  },
  deleteMessage(doing) {
    const room = roomToWriteIn(doing);
    const kept = room.messages.find(({ id, isDeleted }) => id === doing.payload.message_id && !isDeleted);
    if (kept === undefined) throw new Refused(badRequest("message to delete not found"));
    if (kept.from !== botId || kept.isTooOld) throw new Refused(badRequest("message can't be deleted"));
    kept.isDeleted = true;
    return done(true);
  },
  sendChatAction(doing) {
    roomToWriteIn(doing);
    return done(true);
  },
  answerCallbackQuery({ world, payload }) {
    const press = world.callbacks.get(String(payload.callback_query_id));
    if (press === undefined) {
      return badRequest("query is too old and response timeout expired or query ID is invalid");
    }
    if (typeof payload.text === "string" && payload.text.length > 200) return badRequest("MESSAGE_TOO_LONG");
    press.count += 1;
    press.answer = typeof payload.text === "string" ? payload.text : "";
    return done(true);
  },
  answerInlineQuery({ world, payload }) {
    const results = payload.results as readonly Record<string, unknown>[];
    if (results.length > 50) return badRequest("RESULTS_TOO_MUCH");
    const ids = results.map(({ id }) => String(id));
    if (new Set(ids).size < ids.length) return badRequest("RESULT_ID_DUPLICATE");
    if (ids.some((id) => id === "" || Buffer.byteLength(id) > 64)) return badRequest("RESULT_ID_INVALID");
    for (const { input_message_content: content } of results) {
      const { message_text, parse_mode } = content as Record<string, unknown>;
      if (wordsOf(message_text, parse_mode, mostText).text === "") return badRequest("MESSAGE_EMPTY");
    }
    world.inlineAnswers.set(String(payload.inline_query_id), results);
    return done(true);
  },
  getFile({ world, payload }) {
    const id = String(payload.file_id);
    const bytes = world.files.get(id);
    if (bytes === undefined) return badRequest("wrong file_id or the file is temporarily unavailable");
    if (bytes.length > 20 * 1024 * 1024) return badRequest("file is too big");
    return done({ file_id: id, file_unique_id: id, file_size: bytes.length, file_path: `photos/${id}.jpg` });
  },
  getChat(doing) {
    const room = roomNamed(doing);
    return done({ ...asChat(doing.world, room), accent_color_id: 0, max_reaction_count: 11 });
  },
  getChatMember(doing) {
    const room = roomNamed(doing);
    const id = Number(doing.payload.user_id);
    return done({ user: doing.world.users.get(id), status: room.members.get(id) ?? "left" });
  },
  getChatAdministrators(doing) {
    const room = roomNamed(doing);
    if (room.type === "private")
      throw new Refused(badRequest("there are no administrators in the private chat"));
    const admins = [...room.members].filter(
      ([id, status]) => id !== botId && (status === "creator" || status === "administrator"),
    );
    return done(admins.map(([id, status]) => ({ user: doing.world.users.get(id), status })));
  },
  setMyCommands({ world, payload }) {
    const commands = payload.commands as readonly Command[];
    for (const { command, description } of commands) {
      if (!/^[a-z0-9_]{1,32}$/u.test(command)) return badRequest("BOT_COMMAND_INVALID");
      if (description.length < 1 || description.length > 256)
        return badRequest("BOT_COMMAND_DESCRIPTION_INVALID");
    }
    if (commands.length > 100) return badRequest("BOT_COMMANDS_TOO_MUCH");
    world.commands.set(scopeOf(payload), commands);
    return done(true);
  },
  deleteMyCommands({ world, payload }) {
    world.commands.delete(scopeOf(payload));
    return done(true);
  },
  getMyCommands: ({ world, payload }) => done(world.commands.get(scopeOf(payload)) ?? []),
  setWebhook({ world, payload }) {
    const url = String(payload.url);
    if (url !== "" && !url.startsWith("https://") && !url.startsWith("http://127.0.0.1")) {
      return badRequest("bad webhook: An HTTPS URL must be provided for webhook");
    }
    if (payload.secret_token !== undefined && !/^[\w-]{1,256}$/u.test(String(payload.secret_token))) {
      return badRequest("secret token contains unallowed characters");
    }
    world.webhook = { url, secret: String(payload.secret_token ?? "") };
    return done(true);
  },
  deleteWebhook({ world }) {
    world.webhook = { url: "", secret: "" };
    return done(true);
  },
  getWebhookInfo: ({ world }) =>
    done({
      url: world.webhook.url,
      has_custom_certificate: false,
      pending_update_count: world.updates.length,
    }),
};

function scopeOf(payload: Doing["payload"]): string {
  const scope = payload.scope as { readonly type: string; readonly chat_id?: number } | undefined;
  const type = scope?.type ?? "default";
  return [type, scope?.chat_id, payload.language_code].filter((part) => part !== undefined).join(" ");
}

function said(doing: Doing, from: Readonly<Record<string, unknown>>, field: string, most: number) {
  const words = wordsOf(from[field], from.parse_mode, most);
  for (const name of ringsFor(words.text)) doing.rang(name);
  return words;
}

function roomNamed({ world, payload }: Doing): Room {
  const room = world.rooms.get(Number(payload.chat_id));
  if (room === undefined) throw new Refused(badRequest("chat not found"));
  if (room.upgradedTo !== undefined) throw new Refused(upgraded(room.upgradedTo));
  if (room.members.get(botId) === "kicked") {
    const words =
      room.type === "private" ? "bot was blocked by the user" : `bot was kicked from the ${room.type} chat`;
    throw new Refused(forbidden(words));
  }
  if (room.members.get(botId) === "left")
    throw new Refused(forbidden(`bot is not a member of the ${room.type} chat`));
  return room;
}

function roomToWriteIn(doing: Doing): Room {
  const room = roomNamed(doing);
  if (!room.hasStarted) throw new Refused(forbidden("bot can't initiate conversation with a user"));
  if (!room.mayWrite) throw new Refused(badRequest("not enough rights to send text messages to the chat"));
  const topic = doing.payload.message_thread_id;
  if (typeof topic === "number" && !room.topics.has(topic))
    throw new Refused(badRequest("message thread not found"));
  const reply = doing.payload.reply_parameters as
    | { readonly message_id: number; readonly allow_sending_without_reply?: boolean }
    | undefined;
  if (reply !== undefined && reply.allow_sending_without_reply !== true) {
    const there = room.messages.some(({ id, isDeleted }) => id === reply.message_id && !isDeleted);
    if (!there) throw new Refused(badRequest("message to be replied not found"));
  }
  return room;
}

function sent(doing: Doing, room: Room, content: Partial<Kept>): Answer {
  return done(asMessage(doing.world, room, keptIn(doing, room, content)));
}

function keptIn({ world, payload }: Doing, room: Room, content: Partial<Kept>): Kept {
  const topic = payload.message_thread_id;
  const reply = payload.reply_parameters as { readonly message_id: number } | undefined;
  return keep(world, room, {
    from: botId,
    ...content,
    ...(typeof topic === "number" ? { topic } : {}),
    ...(reply === undefined ? {} : { replyTo: reply.message_id }),
    buttons: buttonsOf(payload.reply_markup),
  });
}

function editable(doing: Doing): { readonly room: Room; readonly kept: Kept } {
  const room = roomToWriteIn(doing);
  const kept = room.messages.find(({ id, isDeleted }) => id === doing.payload.message_id && !isDeleted);
  if (kept === undefined) throw new Refused(badRequest("message to edit not found"));
  if (kept.from !== botId || kept.isTooOld) throw new Refused(badRequest("message can't be edited"));
  return { room, kept };
}

function edited(doing: Doing, room: Room, kept: Kept, content: Partial<Kept>): Answer {
  const buttons = buttonsOf(doing.payload.reply_markup);
  const next = { ...kept, ...content, buttons };
  if (JSON.stringify(next) === JSON.stringify(kept)) {
    throw new Refused(
      badRequest(
        "message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message",
      ),
    );
  }
  Object.assign(kept, content, { buttons, edits: kept.edits + 1 });
  return done(asMessage(doing.world, room, kept));
}

function fileOf(call: Call, value: unknown): SentFile {
  const name = typeof value === "string" && value.startsWith("attach://") ? value.slice(9) : undefined;
  const file = name === undefined ? undefined : call.files.get(name);
  if (file === undefined) throw new Refused(badRequest("wrong file identifier/HTTP URL specified"));
  if (file.bytes.length === 0) throw new Refused(badRequest("file must be non-empty"));
  return file;
}
