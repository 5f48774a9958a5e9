/** What a turn took from the words: a card of items that can be corrected, and remarks on what was not taken. */
import type { Block } from "../reply.ts";
import { understoodLead } from "./phrases/understood.ts";

export interface UnderstoodItem {
  readonly label: string;
  readonly value: string;
  readonly doubt?: string;
}

/** An item with its doubts joined; no doubt at all when the list is empty. */
export function understoodItem(
  label: string,
  value: string,
  doubts: readonly (string | undefined)[] = [],
): UnderstoodItem {
  const named = doubts.filter((doubt) => doubt !== undefined);
  return named.length === 0 ? { label, value } : { label, value, doubt: named.join("; ") };
}

/** The block of a turn; undefined when nothing was taken and nothing is to be remarked. */
export function understoodBlock(
  items: readonly UnderstoodItem[],
  remarks: readonly string[],
): Block | undefined {
  if (items.length === 0 && remarks.length === 0) return undefined;
  return { kind: "understood", lead: understoodLead, items, remarks: [...new Set(remarks)] };
}
