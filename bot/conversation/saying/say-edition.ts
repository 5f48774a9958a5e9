/** What an answer rests on: the handbook's edition, and which observations were in it. */
import { shortEdition } from "../../../knowledge/index.ts";
import type { Knowledge } from "../knowledge.ts";
import { edition, observations } from "../phrases/answer.ts";

/** "Wexcombe Shrike, edition 3f2a81c0, 41 observations (b7c1d2e3)": the same words, the same answer. */
export function sayEdition({ handbook, snapshot }: Knowledge): string {
  const book = edition(handbook.cover.name, shortEdition(handbook.edition));
  if (snapshot === undefined) return book;
  const { count, mark } = snapshot();
  return `${book}, ${observations(count, mark)}`;
}
