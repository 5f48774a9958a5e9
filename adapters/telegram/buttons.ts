/**
 * Button data: the name of a board and the number of a button on it, 14 bytes of the 64 that are allowed. What the button stands for is
 * looked up in what the door remembers of that very place, so data that somebody made up names nothing and changes nothing.
 */
import type { InlineKeyboardMarkup } from "grammy/types";
import type { Button } from "./render.ts";
import type { Board, Shown } from "./shown.ts";

export function keyboardOf(
  key: string,
  rows: readonly (readonly Button[])[],
): InlineKeyboardMarkup | undefined {
  if (rows.length === 0) return undefined;
  let index = 0;
  return {
    inline_keyboard: rows.map((row) =>
      row.map(({ label }) => ({ text: label, callback_data: `${key}.${(index++).toString(36)}` })),
    ),
  };
}

export interface Found {
  readonly board: Board;
  readonly pressed: Board["buttons"][number];
}

/** What button data stands for in this place; undefined for data that no button here has. */
export function pressedIn(shown: Shown, data: string): Found | undefined {
  const [, key, number] = /^([\w-]{11})\.([0-9a-z]{1,2})$/u.exec(data) ?? [];
  const board = shown.boards.find((one) => one.key === key);
  const pressed = board?.buttons[Number.parseInt(number ?? "", 36)];
  return board === undefined || pressed === undefined ? undefined : { board, pressed };
}
