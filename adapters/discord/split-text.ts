/** Long text in pieces that fit: broken between paragraphs, else lines, else sentences, else words; nothing is left out. */

const borders: readonly RegExp[] = [/(?<=\n\n)/u, /(?<=\n)/u, /(?<=[.!?;] )/u, /(?<= )/u];

/** Pieces of at most `room` characters, in order, without empty ones; joined they are the text but for blanks at the borders. */
export function splitText(text: string, room: number): readonly string[] {
  return packed(pieces(text, room, 0), room);
}

function pieces(text: string, room: number, level: number): readonly string[] {
  if (text.length <= room) return [text];
  const border = borders[level];
  if (border === undefined) return cut(text, room);
  return text.split(border).flatMap((part) => pieces(part, room, level + 1));
}

/** A word longer than a whole message has no good border; it is cut between characters. */
function cut(text: string, room: number): readonly string[] {
  const parts: string[] = [];
  let part = "";
  for (const character of text) {
    if (part.length + character.length > room) {
      parts.push(part);
      part = "";
    }
    part += character;
  }
  return [...parts, part];
}

function packed(parts: readonly string[], room: number): readonly string[] {
  const pages: string[] = [];
  let page = "";
  for (const part of parts) {
    if (page !== "" && (page + part).trimEnd().length > room) {
      pages.push(page);
      page = "";
    }
    page += part;
  }
  return [...pages, page].map((one) => one.trim()).filter((one) => one !== "");
}
