/** Which handbook a message is read against, when several are loaded: the one that is named, else that of the case in hand. */
import { type Interval, readMessage } from "../../knowledge/index.ts";
import type { IncomingMessage } from "../message.ts";
import { type Conversation, caseInHand, findCase } from "./conversation.ts";
import { contextOf, longestMessage } from "./hear.ts";
import type { Knowledge } from "./knowledge.ts";

/** Ties go to the longer name ("hand wheel" to the book that has more than wheels), to the case in hand, then to the order of the list. Throws RangeError on an empty list. */
export function chooseKnowledge(
  loaded: readonly Knowledge[],
  conversation: Conversation,
  message: IncomingMessage,
  today: Interval,
): Knowledge {
  const [first] = loaded;
  if (first === undefined) throw new RangeError("chooseKnowledge: at least one handbook is needed");
  if (loaded.length === 1) return first;
  const named = message.case === undefined ? undefined : findCase(conversation, message.case);
  const kept = named ?? caseInHand(conversation, message.from);
  const current = loaded.find((one) => one.handbook.cover.id === kept?.handbook) ?? first;
  if (named !== undefined) return current;
  const text = (message.text ?? "").slice(0, longestMessage);
  const spoken = (knowledge: Knowledge): number => {
    const { parts, car } = readMessage(text, knowledge.lexicon, contextOf(undefined, today));
    const named = parts.length + 2 * car.filter((finding) => finding.about === "model").length;
    const letters = parts.reduce((sum, { words }) => sum + words.length, 0);
    return named + letters / (2 * longestMessage);
  };
  return loaded.reduce((best, one) => (spoken(one) > spoken(best) ? one : best), current);
}
