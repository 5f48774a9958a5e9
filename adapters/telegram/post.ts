/**
 * One thing sent to one place: a text, a photograph or an album, a file. Sent once as far as can be known, to wherever the chat has
 * moved, under a topic where it belongs.
 */
import { type Api, InputFile } from "grammy";
import type { InlineKeyboardMarkup } from "grammy/types";
import type { FollowMove } from "./follow-move.ts";
import type { NewestMessages } from "./newest-messages.ts";
import { patiently } from "./patiently.ts";
import type { Place } from "./places.ts";
import { sendOnce } from "./send-once.ts";
import { troubleOf } from "./trouble.ts";

export type Posted =
  | { readonly kind: "text"; readonly html: string; readonly keyboard?: InlineKeyboardMarkup }
  | {
      readonly kind: "photographs";
      readonly items: readonly { readonly bytes: Uint8Array; readonly caption: string }[];
    }
  | { readonly kind: "file"; readonly name: string; readonly bytes: Uint8Array; readonly caption: string };

export interface Circumstances {
  /** The message that is answered, shown above where several people talk. */
  readonly replyTo?: number;
  readonly after: number;
  readonly known: ReadonlySet<number>;
  readonly isSuspect: boolean;
}

export interface Post {
  /** Sends, and gives the number of the (first) message. Rejects with the platform's refusal. */
  send(place: Place, posted: Posted, circumstances: Circumstances): Promise<number>;
  /** Edits a text in place: false when that message can be edited no more. */
  edit(place: Place, message: number, html: string, keyboard?: InlineKeyboardMarkup): Promise<boolean>;
  /** Takes the buttons away, or the message itself, if the platform lets us. */
  retire(place: Place, message: number, how: "buttons" | "message"): Promise<void>;
}

export function postBy(api: Api, followMove: FollowMove, newest: NewestMessages): Post {
  return {
    async send(place, posted, circumstances) {
      const attempt = (chat: number) =>
        sendOnce({
          ...circumstances,
          after: circumstances.isSuspect
            ? circumstances.after
            : Math.max(circumstances.after, newest.in(chat)),
          send: () => sendTo(api, { ...place, chat }, posted, circumstances.replyTo),
          sameAgain: (message) => sameAgain(api, chat, message, posted),
        });
      try {
        const message = await attempt(place.chat);
        newest.saw(place.chat, message);
        return message;
      } catch (failure) {
        const trouble = troubleOf(failure);
        if (trouble.kind !== "moved") throw failure;
        await followMove(place.chat, trouble.to);
        return attempt(trouble.to);
      }
    },
    async edit({ chat }, message, html, keyboard) {
      try {
        await patiently(() => editText(api, chat, message, html, keyboard));
        return true;
      } catch (failure) {
        const { kind } = troubleOf(failure);
        if (kind === "unchanged") return true;
        // In a chat that has moved, numbers of messages begin anew.
        if (kind === "not editable" || kind === "moved") return false;
        throw failure;
      }
    },
    async retire({ chat }, message, how) {
      try {
        if (how === "buttons") await api.editMessageReplyMarkup(chat, message);
        else await api.deleteMessage(chat, message);
      } catch (failure) {
        // Old buttons still work and an old message does no harm; only what is no refusal is a fault of ours.
        if (troubleOf(failure).kind === "other" && !isRefusal(failure)) throw failure;
      }
    },
  };
}

function isRefusal(failure: unknown): boolean {
  return typeof failure === "object" && failure !== null && "error_code" in failure;
}

const look = { parse_mode: "HTML", link_preview_options: { is_disabled: true } } as const;

async function sendTo(api: Api, place: Place, posted: Posted, replyTo: number | undefined): Promise<number> {
  const where = {
    ...(place.topic === undefined ? {} : { message_thread_id: place.topic }),
    ...(replyTo === undefined
      ? {}
      : { reply_parameters: { message_id: replyTo, allow_sending_without_reply: true } }),
  };
  const { chat } = place;
  if (posted.kind === "text") {
    const markup = posted.keyboard === undefined ? {} : { reply_markup: posted.keyboard };
    return (await api.sendMessage(chat, posted.html, { ...look, ...where, ...markup })).message_id;
  }
  if (posted.kind === "file") {
    const file = new InputFile(posted.bytes, posted.name);
    return (await api.sendDocument(chat, file, { ...where, caption: posted.caption })).message_id;
  }
  const [first, ...others] = posted.items;
  if (first === undefined) throw new RangeError("sendTo: at least one photograph is needed");
  if (others.length === 0) {
    const photograph = new InputFile(first.bytes, "picture.png");
    return (await api.sendPhoto(chat, photograph, { ...where, caption: first.caption })).message_id;
  }
  const media = posted.items.map(({ bytes, caption }, index) => ({
    type: "photo" as const,
    media: new InputFile(bytes, `picture-${index + 1}.png`),
    caption,
  }));
  return (await api.sendMediaGroup(chat, media, where)).at(0)?.message_id ?? 0;
}

function editText(
  api: Api,
  chat: number,
  message: number,
  html: string,
  keyboard: InlineKeyboardMarkup | undefined,
): Promise<unknown> {
  const markup = keyboard === undefined ? {} : { reply_markup: keyboard };
  return api.editMessageText(chat, message, html, { ...look, ...markup });
}

function sameAgain(api: Api, chat: number, message: number, posted: Posted): Promise<unknown> {
  if (posted.kind === "text") return editText(api, chat, message, posted.html, posted.keyboard);
  const caption = posted.kind === "file" ? posted.caption : posted.items[0]?.caption;
  return api.editMessageCaption(chat, message, caption === undefined ? {} : { caption });
}
