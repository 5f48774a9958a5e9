// Holding a conversation in a test: words in, the last reply out, with the few questions tests ask of a reply.
import {
  type Block,
  type Conversation,
  emptyConversation,
  type IncomingMessage,
  plainText,
  type Reply,
  step,
} from "../../bot/index.ts";
import { demoKnowledge, demoToday } from "./demo-knowledge.ts";

export interface Talk {
  readonly conversation: Conversation;
  readonly reply: Reply;
  readonly text: string;
}

type Said = string | Partial<IncomingMessage>;

/** The conversation after these messages by the owner (or whoever a message names), and the last reply. */
export function talk(...messages: readonly Said[]): Talk {
  return talkOn(emptyConversation, ...messages);
}

export function talkOn(from: Conversation, ...messages: readonly Said[]): Talk {
  let conversation = from;
  let last: Reply | undefined;
  for (const said of messages) {
    const message = typeof said === "string" ? { text: said } : said;
    const taken = step(
      demoKnowledge(),
      conversation,
      { conversation: "workshop", from: "owner", ...message },
      demoToday,
    );
    conversation = taken.conversation;
    last = taken.reply;
  }
  if (last === undefined) throw new RangeError("talk: at least one message is needed");
  return { conversation, reply: last, text: plainText(last) };
}

export function blocksOf<K extends Block["kind"]>(
  reply: Reply,
  kind: K,
): readonly Extract<Block, { kind: K }>[] {
  return reply.blocks.filter((block): block is Extract<Block, { kind: K }> => block.kind === kind);
}
