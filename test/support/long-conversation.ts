// One owner who talks on and presses buttons: a conversation driven by words and by the answers that the bot offers.

import {
  type Conversation,
  emptyConversation,
  type IncomingMessage,
  type Knowledge,
  type QuestionBlock,
  type Reply,
  step,
} from "../../bot/index.ts";
import type { Interval } from "../../knowledge/index.ts";
import { pick } from "./draws.ts";
import type { Chance } from "./random-tables.ts";

type StepTaken = ReturnType<typeof step>;

export interface Talk {
  readonly knowledge: Knowledge;
  readonly today: Interval;
  readonly texts: readonly string[];
  /** Messages before the owner begins anew. */
  readonly length: number;
  readonly chance: Chance;
  /** Measures one step; gives back what the step gave. */
  readonly around: (work: () => StepTaken) => StepTaken;
}

/** Plays `turns` steps. Two answers are pressed for each message in words, where there is one to press. */
export function playTurns(talk: Talk, turns: number): void {
  let conversation: Conversation = emptyConversation;
  let reply: Reply | undefined;
  for (let turn = 0; turn < turns; turn += 1) {
    if (turn % talk.length === 0) {
      conversation = emptyConversation;
      reply = undefined;
    }
    const message = nextMessage(talk, reply);
    const before = conversation;
    const taken = talk.around(() => step(talk.knowledge, before, message, talk.today));
    conversation = taken.conversation;
    reply = taken.reply;
  }
}

function nextMessage({ texts, chance }: Talk, reply: Reply | undefined): IncomingMessage {
  const base = { conversation: "workshop", from: "owner" };
  const question = reply?.blocks.find((block): block is QuestionBlock => block.kind === "question");
  if (question === undefined || question.answers.length === 0 || chance() < 1 / 3) {
    return { ...base, text: pick(chance, texts) };
  }
  const { feature } = question;
  if (chance() < 0.1) return { ...base, answer: { feature, cannotTell: true } };
  return { ...base, answer: { feature, state: pick(chance, question.answers).id } };
}
