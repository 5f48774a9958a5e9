// The limits of messages, enforced: lengths after entities are parsed, buttons and their data, and text that would break.
import { badRequest, Refused } from "./answers.ts";
import { type Entity, readHtml } from "./html-entities.ts";
import type { Button } from "./world.ts";

export const mostText = 4096;
export const mostCaption = 1024;
const mostData = 64;
const mostEntities = 100;
const mostButtons = 100;
const mostInRow = 8;

export interface Words {
  readonly text: string;
  readonly entities: readonly Entity[];
}

/** Text or caption as it will stand; refuses what is empty, too long or badly formed. */
export function wordsOf(html: unknown, parseMode: unknown, most: number): Words {
  if (typeof html !== "string") return { text: "", entities: [] };
  if (parseMode !== undefined && parseMode !== "HTML")
    throw new Refused(badRequest("unsupported parse_mode"));
  const read =
    parseMode === "HTML"
      ? readHtml(html)
      : { ok: true as const, text: html, entities: [] as readonly Entity[] };
  if (!read.ok) throw new Refused(badRequest(read.problem));
  // The platform takes blanks from both ends.
  const text = read.text.trim();
  if (text.length > most) {
    throw new Refused(badRequest(most === mostText ? "message is too long" : "message caption is too long"));
  }
  if (read.entities.length > mostEntities)
    throw new Refused(badRequest("too many entities; the rest is lost"));
  return { text, entities: read.entities };
}

export function buttonsOf(markup: unknown): readonly (readonly Button[])[] {
  if (typeof markup !== "object" || markup === null || !("inline_keyboard" in markup)) return [];
  const rows = markup.inline_keyboard as readonly (readonly Button[])[];
  const buttons = rows.flat();
  if (buttons.length > mostButtons) throw new Refused(badRequest("REPLY_MARKUP_TOO_LONG"));
  for (const row of rows) {
    if (row.length > mostInRow) throw new Refused(badRequest("too many buttons in a row"));
  }
  for (const { text, callback_data, url } of buttons) {
    if (text.trim() === "")
      throw new Refused(badRequest("Text buttons are unallowed in the inline keyboard"));
    if (callback_data === undefined && url === undefined)
      throw new Refused(badRequest("Text buttons are unallowed in the inline keyboard"));
    if (callback_data !== undefined && !isData(callback_data))
      throw new Refused(badRequest("BUTTON_DATA_INVALID"));
  }
  return rows.filter((row) => row.length > 0);
}

function isData(data: string): boolean {
  const bytes = Buffer.byteLength(data);
  return bytes >= 1 && bytes <= mostData;
}

/** Names that a client would turn into a mention, and so ring for somebody. */
export function ringsFor(text: string): readonly string[] {
  return [...text.matchAll(/(?<![\p{L}\p{N}_/])@[a-z]\w{3,31}/giu)].map(([name]) => name);
}
