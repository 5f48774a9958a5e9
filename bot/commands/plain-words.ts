/** The short words that always work, beside the many ordinary wordings the reader knows. */
import type { Intent } from "../../knowledge/index.ts";

const plainWords: Readonly<Record<string, Intent>> = {
  cases: { kind: "list-cases" },
  "list cases": { kind: "list-cases" },
  "show cases": { kind: "list-cases" },
  kinds: { kind: "list-variants", part: null },
  "list kinds": { kind: "list-variants", part: null },
  compare: { kind: "compare", variants: [], part: null },
  "compare the two": { kind: "compare", variants: [], part: null },
  photographs: { kind: "photographs" },
  photos: { kind: "photographs" },
  pictures: { kind: "photographs" },
  "what to photograph": { kind: "photographs" },
  withdraw: { kind: "withdraw" },
  fits: { kind: "what-fits" },
  "what fits": { kind: "what-fits" },
  facts: { kind: "what-do-you-know" },
  "ask a keeper": { kind: "where-from-here" },
  "hand over": { kind: "where-from-here" },
  sources: { kind: "sources" },
  help: { kind: "help" },
  "whats left": { kind: "what-do-you-know" },
  "what's left": { kind: "what-do-you-know" },
  ok: { kind: "small-talk" },
  okay: { kind: "small-talk" },
  k: { kind: "small-talk" },
  cool: { kind: "small-talk" },
  fine: { kind: "small-talk" },
  good: { kind: "small-talk" },
  great: { kind: "small-talk" },
  nice: { kind: "small-talk" },
  perfect: { kind: "small-talk" },
  alright: { kind: "small-talk" },
  "all right": { kind: "small-talk" },
  "got it": { kind: "small-talk" },
  "i see": { kind: "small-talk" },
  "are you sure": { kind: "what-do-you-know" },
  "how sure is that": { kind: "what-do-you-know" },
  "how sure are you": { kind: "what-do-you-know" },
  thx: { kind: "small-talk" },
  ty: { kind: "small-talk" },
};

/** The wish a message of such words alone makes; undefined for any other message. */
export function plainWish(text: string): Intent | undefined {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[.?!]+$/, "")
    .replace(/\s+/g, " ");
  return Object.hasOwn(plainWords, said) ? plainWords[said] : undefined;
}
