/** A message handled by one sentence. */
import { text } from "../text-blocks.ts";
import type { Handled } from "./affair.ts";

export function say(words: string): Handled {
  return { blocks: [text(words)] };
}
