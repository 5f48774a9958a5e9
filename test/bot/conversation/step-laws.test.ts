// Laws of a turn, whatever is said: it never fails, never loses a case, always says the same, and can be taken back.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Conversation,
  emptyConversation,
  type IncomingMessage,
  plainText,
  type Reply,
  readConversation,
  step,
} from "../../../bot/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { anyMessage, tellings } from "../../support/spoken-fragments.ts";

const seed = 19811102;
/** Whole conversations on a busy machine, with coverage. */
const timeout = 60_000;

function talk(messages: readonly IncomingMessage[], from: Conversation = emptyConversation) {
  const replies: Reply[] = [];
  let conversation = from;
  for (const message of messages) {
    const taken = step(demoKnowledge(), conversation, message, demoToday);
    conversation = taken.conversation;
    replies.push(taken.reply);
  }
  return { conversation, replies };
}

const owner = (text: string): IncomingMessage => ({ conversation: "workshop", from: "owner", text });

describe("a turn", { timeout }, () => {
  test(
    "answers every message with something to read, and keeps every case",
    () => {
      fc.assert(
        fc.property(fc.array(anyMessage, { minLength: 1, maxLength: 8 }), (messages) => {
          let conversation = emptyConversation;
          for (const message of messages) {
            const taken = step(demoKnowledge(), conversation, message, demoToday);
            expect(taken.reply.blocks.length).toBeGreaterThan(0);
            const kept = taken.conversation.cases.map((one) => one.id);
            expect(kept).toEqual(expect.arrayContaining(conversation.cases.map((one) => one.id)));
            conversation = taken.conversation;
          }
        }),
        { seed, numRuns: 40 },
      );
    },
    timeout,
  );

  test(
    "says the same bytes for the same messages",
    () => {
      fc.assert(
        fc.property(fc.array(anyMessage, { minLength: 1, maxLength: 6 }), (messages) => {
          expect(JSON.stringify(talk(messages))).toBe(JSON.stringify(talk(messages)));
        }),
        { seed, numRuns: 25 },
      );
    },
    timeout,
  );

  test(
    "goes on the same after the conversation was kept as JSON and read back",
    () => {
      fc.assert(
        fc.property(fc.array(anyMessage, { minLength: 1, maxLength: 5 }), anyMessage, (messages, next) => {
          const { conversation } = talk(messages);
          const back = readConversation(JSON.parse(JSON.stringify(conversation)));
          expect(back).toEqual(conversation);
          expect(talk([next], back ?? emptyConversation)).toEqual(talk([next], conversation));
        }),
        { seed, numRuns: 25 },
      );
    },
    timeout,
  );

  test(
    "is taken back exactly by undo when it told something",
    () => {
      fc.assert(
        fc.property(
          fc.array(fc.constantFrom(...tellings), { minLength: 1, maxLength: 4 }),
          fc.constantFrom(...tellings),
          (told, last) => {
            const { conversation: before } = talk(["rear spoiler", ...told].map(owner));
            const { conversation: after } = talk([owner(last)], before);
            const inHand = before.inHand.owner;
            const caseOf = (one: Conversation) => one.cases.find((kept) => kept.id === inHand);
            const isToldHere =
              after.inHand.owner === inHand &&
              caseOf(after)?.history.length !== caseOf(before)?.history.length;
            fc.pre(isToldHere);
            const { conversation: undone } = talk([owner("undo")], after);
            expect(caseOf(undone)).toEqual(caseOf(before));
          },
        ),
        { seed, numRuns: 40 },
      );
    },
    timeout,
  );

  test(
    "asks at most one question",
    () => {
      fc.assert(
        fc.property(fc.array(anyMessage, { minLength: 1, maxLength: 5 }), (messages) => {
          for (const reply of talk(messages).replies) {
            expect(reply.blocks.filter((block) => block.kind === "question").length).toBeLessThanOrEqual(1);
            expect(plainText(reply)).not.toMatch(/\b100 %|\(0 %\)/);
          }
        }),
        { seed, numRuns: 30 },
      );
    },
    timeout,
  );
});
