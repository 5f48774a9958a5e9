/** Words of a reply exchanged where it goes out: one place, so that no sentence has to know of it, and none can be forgotten. */
import type { Block } from "../reply.ts";

/** Values that are read by programs, or are somebody's own words: handbook, keeper, member. */
const leftAlone: ReadonlySet<string> = new Set([
  "id",
  "say",
  "kind",
  "tone",
  "feature",
  "expects",
  "unit",
  "path",
  "svg",
  "pin",
  "photograph",
  "mediaType",
  "sources",
  "citation",
  "short",
]);

export type Reword = (text: string) => string;

/** The blocks with every sentence reworded; a keeper's own words, and a file to be kept, are nobody's to change. */
export function reworded(blocks: readonly Block[], reword: Reword): readonly Block[] {
  return blocks.map((block) =>
    block.kind === "pinned" || block.kind === "file" ? block : rewordedIn(block, reword),
  );
}

function rewordedIn<T>(value: T, reword: Reword): T;
function rewordedIn(value: unknown, reword: Reword): unknown {
  if (typeof value === "string") return reword(value);
  if (Array.isArray(value)) return value.map((item) => rewordedIn(item, reword));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, leftAlone.has(key) ? item : rewordedIn(item, reword)]),
  );
}

/** The text reworded, but for what stands in “quotes”: that stays as it was said. */
export function outsideQuotes(text: string, reword: Reword): string {
  return text
    .split(/(“[^”]*”)/u)
    .map((piece) => (piece.startsWith("“") ? piece : reword(piece)))
    .join("");
}
