/**
 * The sentences of this program speak of cars. A handbook about something else names it on its cover, and the name is put in where a
 * reply goes out: one place, so that no sentence has to know of it, and none can be forgotten. Quoted words stay as they were said.
 */
import type { Handbook } from "../../knowledge/index.ts";
import type { Block, Reply } from "../reply.ts";
import { outsideQuotes, reworded } from "./reworded.ts";

/** What a handbook is about, one and many; a car when its cover does not say. */
export function thingOf({ cover }: Handbook): { readonly one: string; readonly many: string } {
  const one = cover.thing ?? "car";
  return { one, many: cover.things ?? `${one}s` };
}

/** The reply in the handbook's word for what it is about. */
export function inWordsOf(handbook: Handbook, reply: Reply): Reply {
  if (thingOf(handbook).one === "car") return reply;
  const { blocks, summary } = reply;
  const question = summary.question && {
    ...summary.question,
    text: wordedFor(handbook, summary.question.text),
  };
  return { ...reply, blocks: blocksInWordsOf(handbook, blocks), summary: { ...summary, question } };
}

/** Blocks that are told elsewhere. */
export function blocksInWordsOf(handbook: Handbook, blocks: readonly Block[]): readonly Block[] {
  if (thingOf(handbook).one === "car") return blocks;
  return reworded(blocks, (text) => wordedFor(handbook, text));
}

/** "your car's date" as "your machine's date"; what stands in “quotes” is not touched. */
export function wordedFor(handbook: Handbook, text: string): string {
  const { one, many } = thingOf(handbook);
  return outsideQuotes(text, (piece) => inPlain(piece, one, many));
}

function inPlain(text: string, one: string, many: string): string {
  const article = /^[aeiou]/iu.test(one) ? "an" : "a";
  return text
    .replaceAll(/\b([Cc])hassis number\b/gu, (_, first: string) => (first === "C" ? "Number" : "number"))
    .replaceAll(
      /\b(a|A) car\b/gu,
      (_, a: string) => `${a === "A" ? article.replace("a", "A") : article} ${one}`,
    )
    .replaceAll(/\b([Cc])(ars?)\b/gu, (_, first: string, rest: string) => {
      const word = rest === "ars" ? many : one;
      return first === "C" ? word.slice(0, 1).toUpperCase() + word.slice(1) : word;
    });
}
