/**
 * The one path from an adapter to a reply: step within the store's change of the conversation, then log. It is asynchronous only
 * because the store is, which takes the messages of one conversation one after another.
 */

import { chooseKnowledge } from "./conversation/choose-knowledge.ts";
import { type Conversation, emptyConversation, readConversation } from "./conversation/conversation.ts";
import type { Knowledge } from "./conversation/knowledge.ts";
import { step } from "./conversation/step.ts";
import type { IncomingMessage } from "./message.ts";
import type { Change, Clock, Log, Store } from "./ports.ts";
import type { Reply } from "./reply.ts";

export interface Surroundings {
  /** The handbooks that serve now, at least one; asked anew for every message, so that an edition can change. */
  readonly knowledge: () => readonly Knowledge[];
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  /** Named in the log: "terminal", "web" … */
  readonly platform: string;
}

export type Receive = (message: IncomingMessage) => Promise<Reply>;

/** The kind under which conversations are kept. */
export const conversationKind = "conversation";

/** A function that answers messages. It rejects only when the store does; the conversation is then as it was. */
export function receiver(surroundings: Surroundings): Receive {
  return (message) => receive(surroundings, message);
}

async function receive(surroundings: Surroundings, message: IncomingMessage): Promise<Reply> {
  const { store, clock, log, platform } = surroundings;
  const begun = clock.milliseconds();
  const today = clock.today();
  const reply = await store.advance(changeBy(message, begun), (state) => {
    const conversation = kept(state, log);
    const knowledge = chooseKnowledge(surroundings.knowledge(), conversation, message, today);
    const taken = step(knowledge, conversation, message, today);
    return { state: taken.conversation, outcome: taken.reply };
  });
  log.info(
    {
      platform,
      outcome: outcomeOf(reply),
      variantsLeft: reply.summary.uncertainty.remaining.length,
      milliseconds: clock.milliseconds() - begun,
    },
    "question answered",
  );
  return reply;
}

function changeBy(message: IncomingMessage, at: number): Change {
  return {
    kind: conversationKind,
    id: message.conversation,
    by: message.from,
    at,
    why: message.answer === undefined ? "said" : "answered",
    ...(message.id === undefined ? {} : { message: message.id }),
  };
}

/** A state that does not parse is not thrown away in silence: the log says so before a new conversation begins. */
function kept(state: unknown, log: Log): Conversation {
  if (state === undefined) return emptyConversation;
  const conversation = readConversation(state);
  if (conversation !== undefined) return conversation;
  log.warn({}, "kept conversation is not readable, begun anew");
  return emptyConversation;
}

function outcomeOf({ summary }: Reply): string {
  if (summary.part === null) return "part unknown";
  if (!summary.done) return "asked";
  return summary.verdict === null ? "left open" : summary.verdict.class;
}
