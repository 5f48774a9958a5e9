/**
 * Text that Discord shows as it was meant: nothing a member wrote becomes formatting, a mention, a link behind other words or
 * a heading. Mentions are switched off in every message as well; this is so that they do not even look like one.
 */

/** An address, as far as it has none of the marks that could end in formatting: a backslash in it would lead elsewhere. */
const address = /(https?:\/\/[^\s<>()[\]`\\|*]+)/u;

/** `text` with everything that Discord's markdown would obey made harmless; line ends and addresses stay. */
export function escaped(text: string): string {
  return withoutControls(text)
    .split(address)
    .map((part, at) => (at % 2 === 1 ? part : part.replaceAll(/[\\*_~`|<]/gu, (mark) => `\\${mark}`)))
    .join("")
    .replaceAll("](", "]\\(")
    .replaceAll(/@(?=everyone|here)/gu, "@\u200b")
    .replaceAll(/^(\s*)(#{1,3}|-#|>{1,3}|[-+])(?=\s)/gmu, "$1\\$2")
    .replaceAll(/^(\s*\d+)([.)])(?=\s)/gmu, "$1\\$2");
}

/** Text for labels, options and titles, where Discord reads no markdown: one line, no invisible marks. */
export function plainLine(text: string): string {
  return withoutControls(text).replaceAll(/\s+/gu, " ").trim();
}

/** What fits into `room` characters, cut between words with an ellipsis; for labels only, never for sentences. */
export function fitted(text: string, room: number): string {
  const line = plainLine(text);
  if (line.length <= room) return line;
  const cut = line.slice(0, room - 2);
  const space = cut.lastIndexOf(" ");
  return `${(space > room / 2 ? cut.slice(0, space) : withoutHalfCharacter(cut)).trimEnd()} …`;
}

function withoutHalfCharacter(text: string): string {
  return text.replace(/[\ud800-\udbff]$/u, "");
}

function withoutControls(text: string): string {
  return text.replaceAll("\t", " ").replaceAll(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069\u200e\u200f]/gu, "");
}
