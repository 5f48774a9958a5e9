/**
 * The one path from an adapter to a reply: load, step, save, log. It is asynchronous only because the store is; messages
 * of one conversation are taken one after another, so that none overwrites what another has said.
 */

import { chooseKnowledge } from "./conversation/choose-knowledge.ts";
import { type Conversation, emptyConversation, readConversation } from "./conversation/conversation.ts";
import type { Knowledge } from "./conversation/knowledge.ts";
import { step } from "./conversation/step.ts";
import type { IncomingMessage } from "./message.ts";
import type { Clock, Log, Store } from "./ports.ts";
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

/** A function that answers messages. It rejects only when the store does; the conversation is then as it was. */
export function receiver(surroundings: Surroundings): Receive {
  const waiting = new Map<string, Promise<unknown>>();
  return (message) => {
    const id = message.conversation;
    const before = waiting.get(id) ?? Promise.resolve();
    const answered = before.then(
      () => receive(surroundings, message),
      () => receive(surroundings, message),
    );
    waiting.set(id, answered);
    const forget = () => {
      if (waiting.get(id) === answered) waiting.delete(id);
    };
    answered.then(forget, forget);
    return answered;
  };
}

async function receive(surroundings: Surroundings, message: IncomingMessage): Promise<Reply> {
  const { store, clock, log, platform } = surroundings;
  const begun = clock.milliseconds();
  const conversation = kept(await store.read(message.conversation), log);
  const today = clock.today();
  const knowledge = chooseKnowledge(surroundings.knowledge(), conversation, message, today);
  const taken = step(knowledge, conversation, message, today);
  await store.write(message.conversation, taken.conversation);
  log.info(
    {
      platform,
      outcome: outcomeOf(taken.reply),
      variantsLeft: taken.reply.summary.uncertainty.remaining.length,
      milliseconds: clock.milliseconds() - begun,
    },
    "question answered",
  );
  return taken.reply;
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
