/** Which part kind a sheet is about: what was named, what its note says, or what the sheet is called. */
import { cellText, type Handbook, type PartKind, type Sheet } from "../../../knowledge/index.ts";

/** The note stands under the head: "# door-handle". A handbook of one part kind leaves no choice. */
export function partOfSheet(
  { parts }: Handbook,
  { name, rows }: Sheet,
  named: string | undefined,
): PartKind | undefined {
  const notes = rows.slice(0, 3).flatMap((row) => /^#\s*(\S+)/u.exec(cellText(row[0]))?.[1] ?? []);
  const [noted] = notes;
  const wanted = named ?? noted;
  if (wanted !== undefined) return parts.find(({ id }) => id === wanted);
  const word = name.toLowerCase();
  const called = parts.find((part) => part.id === word || part.name.toLowerCase() === word);
  return called ?? (parts.length === 1 ? parts[0] : undefined);
}
