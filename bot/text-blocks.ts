/** Blocks of words alone, for whoever has a sentence to say. */
import type { Block } from "./reply.ts";

export function text(words: string): Block {
  return { kind: "text", text: words };
}

export function strong(words: string): Block {
  return { kind: "text", text: words, tone: "answer" };
}

export function aside(words: string): Block {
  return { kind: "text", text: words, tone: "aside" };
}
