// A conversation as a text file: "> words" is said by the owner, "> (name) words" by another member, "> [feature: state]"
// is pressed; what stands between two of them is the reply as plain text. Lines that begin with "# " are remarks.
import type { IncomingMessage } from "../../bot/index.ts";

export interface GoldenTurn {
  readonly message: IncomingMessage;
  readonly said: string;
  readonly reply: string;
}

export function parseGolden(text: string): readonly GoldenTurn[] {
  const turns: { said: string; lines: string[] }[] = [];
  for (const line of text.split("\n")) {
    if (line.startsWith("# ")) continue;
    if (line.startsWith("> ")) turns.push({ said: line.slice(2), lines: [] });
    else turns.at(-1)?.lines.push(line);
  }
  return turns.map(({ said, lines }) => ({
    said,
    message: messageOf(said),
    reply: lines.join("\n").trim(),
  }));
}

export function messageOf(said: string): IncomingMessage {
  const base = { conversation: "golden" };
  const pressed = /^\[([^:\]]+(?::[^:\]]+)?): ([^\]]+)\]$/.exec(said);
  if (pressed?.[1] !== undefined && pressed[2] !== undefined) {
    return { ...base, from: "owner", answer: { feature: pressed[1], state: pressed[2] } };
  }
  const other = /^\((\w+)\) (.*)$/.exec(said);
  if (other?.[1] !== undefined) return { ...base, from: other[1], text: other[2] ?? "" };
  return { ...base, from: "owner", text: said };
}

/** The reply as it stands in a file: the edition changes with every word of the handbook, so its place is marked only. */
export function asKept(text: string, edition: string): string {
  return text.replaceAll(edition.slice(0, 8), "current");
}
