import { expect, test } from "vitest";
import { smallTalkInCase } from "../../../bot/conversation/phrases/commands.ts";
import { notUnderstood } from "../../../bot/conversation/phrases/understood.ts";
import { type Block, isWorthSaying, type Reply } from "../../../bot/index.ts";

function reply(part: string | null, ...blocks: readonly Block[]): Reply {
  return { blocks, summary: { part } as Reply["summary"] };
}

const question: Block = {
  kind: "question",
  feature: "foot",
  text: "How long is the foot?",
  effort: 1,
  photographDoes: false,
  answers: [],
  expects: "measurement",
  besides: [],
};
const text = (words: string, tone: "plain" | "aside" | "answer" = "plain"): Block => ({
  kind: "text",
  text: words,
  tone,
});
const understood = (...items: readonly { readonly label: string; readonly value: string }[]): Block => ({
  kind: "understood",
  lead: "I read",
  items,
  remarks: ["I read that as a question."],
});

test("what took something in, or tells something, is worth saying to those who did not ask", () => {
  expect(isWorthSaying(reply("mirror", understood({ label: "screws", value: "two" }), question))).toBe(true);
  expect(isWorthSaying(reply("mirror", text("Likely (80 %): the first type.", "answer")))).toBe(true);
  expect(isWorthSaying(reply(null, { kind: "list", lead: "Changes:", items: ["one"] }))).toBe(true);
  expect(isWorthSaying(reply("mirror", text("It is often lost."), question))).toBe(true);
});

test("that nothing was made of their words is not, nor a question for its own sake", () => {
  expect(isWorthSaying(reply("mirror", text(notUnderstood, "aside"), question))).toBe(false);
  expect(isWorthSaying(reply("mirror", text(smallTalkInCase), question))).toBe(false);
  expect(
    isWorthSaying(reply("mirror", understood(), { kind: "cautions", lines: ["gloves"] }, question)),
  ).toBe(false);
  expect(isWorthSaying(reply(null, text("Good day."), question))).toBe(false);
  expect(isWorthSaying(reply("mirror", text("It is often lost.")))).toBe(false);
  expect(isWorthSaying(reply("mirror", question))).toBe(false);
});
