// Everything offered for pressing can also be typed: a choice whose words are not understood is a dead end.
import { describe, expect, test } from "vitest";
import { notUnderstood } from "../../../bot/conversation/phrases/understood.ts";
import { type Choice, emptyConversation, type Reply, step } from "../../../bot/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";

const beginnings = [
  ["rear spoiler"],
  ["door mirror, cast alloy housing, two screws", "built november 1981"],
  ["what should my rear spoiler be? built may 1980, Shrike S, home market"],
  ["rear spoiler, rough inside, six screws, two drain notches, built may 1979, home market, Shrike S"],
  ["width 118", "rear spoiler"],
  ["door mirror and rear spoiler", "cases"],
  ["rear spoiler rough inside", "square tips", "withdraw a fact"],
];

function offered(reply: Reply): readonly Choice[] {
  return reply.blocks.flatMap((block) => {
    if (block.kind === "question") return [...block.answers, ...block.besides];
    return block.kind === "choices" ? block.choices : [];
  });
}

function isUnderstood(reply: Reply): boolean {
  return !reply.blocks.some((block) => block.kind === "text" && block.text === notUnderstood);
}

describe("choices", () => {
  test.each(beginnings)(
    "offered after %s are understood as words",
    (...said) => {
      let conversation = emptyConversation;
      for (const text of said) {
        const before = conversation;
        const taken = step(demoKnowledge(), before, { conversation: "c", from: "owner", text }, demoToday);
        conversation = taken.conversation;
        for (const { say } of offered(taken.reply)) {
          const message = { conversation: "c", from: "owner", text: say };
          const next = step(demoKnowledge(), conversation, message, demoToday);
          expect(isUnderstood(next.reply), `after "${text}": "${say}"`).toBe(true);
        }
      }
    },
    60_000,
  );

  test("that name a state report that state, for every feature of the handbook", () => {
    for (const part of demoKnowledge().handbook.parts) {
      const named = { conversation: "c", from: "owner", text: part.name };
      const { conversation } = step(demoKnowledge(), emptyConversation, named, demoToday);
      for (const feature of part.features) {
        const states = feature.kind === "states" ? feature.states : [];
        for (const { id, name } of states) {
          const cases = conversation.cases.map((kept) => ({
            ...kept,
            facts: { ...kept.facts, open: { feature: feature.id } },
          }));
          const message = { conversation: "c", from: "owner", text: name };
          const { reply } = step(demoKnowledge(), { ...conversation, cases }, message, demoToday);
          expect(
            reply.summary.understood.map((fact) => [fact.feature, fact.state]),
            `${part.id}: ${name}`,
          ).toContainEqual([feature.id, id]);
        }
      }
    }
  }, 60_000);
});
