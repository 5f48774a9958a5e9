/**
 * Inline mode: somebody types the bot's name and a few words in any chat, and chooses what to post there: two kinds side by side, or a
 * pinned answer. It is answered in a conversation of its own, so that no case is moved by it.
 */
import { createHash } from "node:crypto";
import type { InlineQuery, InlineQueryResultArticle } from "grammy/types";
import type { IncomingMessage, Reply, Suggestion } from "../../bot/index.ts";
import type { Door } from "./door.ts";
import { forTheLog } from "./for-the-log.ts";
import { begun } from "./html.ts";
import { patiently } from "./patiently.ts";
import { inlineHint } from "./phrases.ts";
import { renderReply } from "./render.ts";
import { keyOf } from "./shown.ts";

/** Fewer letters name nothing. */
const fewestLetters = 3;
const mostPins = 8;
const mostComparisons = 5;
const cacheSeconds = 20;

async function answerInline(door: Door, { id, from, query }: InlineQuery): Promise<void> {
  const typed = query.trim().slice(0, 200);
  const results = typed.length < fewestLetters ? [] : await resultsFor(door, id, from.id, typed);
  const hint = results.length > 0 ? {} : { button: { text: inlineHint, start_parameter: "inline" } };
  const options = { is_personal: true, cache_time: cacheSeconds, ...hint };
  await patiently(() => door.api.answerInlineQuery(id, results, options));
}

async function resultsFor(door: Door, id: string, person: number, typed: string) {
  const community = await door.records.communityOf(person);
  const ask = (text: string): Promise<Reply> => {
    const message: IncomingMessage = {
      conversation: `telegram:inline:${person}`,
      from: `telegram:${person}`,
      id: `inline:${id}:${keyOf(id, text)}`,
      text,
      community,
      isPrivate: true,
      standing: "asker",
    };
    return door.bot.receive(message);
  };
  const suggestions = await door.bot.suggest(community, typed.replace(/^compare\s+/iu, ""));
  const pins = suggestions.filter(({ say }) => say.startsWith("pin ")).slice(0, mostPins);
  const found: InlineQueryResultArticle[] = [];
  for (const text of await comparisonsOf(ask, typed, suggestions))
    found.push(...article(text, await ask(text)));
  for (const { name, say } of pins) found.push(...article(name, await ask(say)));
  return found;
}

/** What is compared: as typed, when two kinds are named; one with each other kind; or the two nearest to what was typed. */
async function comparisonsOf(
  ask: (text: string) => Promise<Reply>,
  typed: string,
  suggestions: readonly Suggestion[],
): Promise<readonly string[]> {
  const asked = /^compare\b/iu.test(typed) ? typed : undefined;
  const versus = /^(.+?)\s+(?:vs\.?|versus|against)\s+(.+)$/iu.exec(typed);
  const text = asked ?? (versus === null ? undefined : `compare ${versus[1]} and ${versus[2]}`);
  if (text !== undefined) {
    const { blocks } = await ask(text);
    if (blocks.some(({ kind }) => kind === "table")) return [text];
    const choices = blocks.flatMap((block) => (block.kind === "choices" ? block.choices : []));
    return choices
      .filter(({ say }) => say.startsWith("compare "))
      .slice(0, mostComparisons)
      .map(({ say }) => say);
  }
  const kinds = suggestions.filter(({ say }) => say.includes(": "));
  const [first] = kinds;
  const part = first?.say.split(": ")[0];
  const second = kinds.find((kind) => kind !== first && kind.say.startsWith(`${part}: `));
  return first === undefined || second === undefined
    ? []
    : [`compare ${kindOf(first)} and ${kindOf(second)}`];
}

function kindOf({ say }: Suggestion): string {
  return say.slice(say.indexOf(": ") + 2);
}

/** Only what tells something: a question back helps nobody in whose chat it is posted. */
function article(title: string, reply: Reply): readonly InlineQueryResultArticle[] {
  if (!reply.blocks.some(({ kind }) => kind === "table" || kind === "pinned")) return [];
  const [page] = renderReply({
    ...reply,
    blocks: reply.blocks.filter(({ kind }) => kind !== "question"),
  }).pages;
  if (page === undefined) return [];
  return [
    {
      type: "article",
      id: idOf(title),
      title: begun(title, 100),
      input_message_content: {
        message_text: page,
        parse_mode: "HTML",
        link_preview_options: { is_disabled: true },
      },
    },
  ];
}

/** Ids have 64 bytes at most, and no two results the same: two comparisons often begin alike. */
function idOf(title: string): string {
  return createHash("sha256").update(title).digest("base64url");
}

/**
 * Each letter that is typed asks anew: only the newest is answered, once, and in a row of its own. What comes too late is no use to anybody,
 * and must not keep the person's messages waiting.
 */
export function inlineAnswerer(door: Door): (query: InlineQuery) => Promise<void> {
  const newest = new Map<number, string>();
  return async (query) => {
    const { id, from } = query;
    newest.set(from.id, id);
    await door.inOrder(`inline:${from.id}`, async () => {
      if (newest.get(from.id) !== id) return;
      try {
        await answerInline(door, query);
      } catch (failure) {
        door.log.warn(forTheLog(failure), "what was typed could not be answered in time");
      } finally {
        if (newest.get(from.id) === id) newest.delete(from.id);
      }
    });
  };
}
