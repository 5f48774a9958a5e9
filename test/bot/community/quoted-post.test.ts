import { expect, test } from "vitest";
import { stepOfMessage, wordsOfAll } from "../../../bot/community/quoted-post.ts";
import { emptyConversation } from "../../../bot/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";

const post = { from: "cecil", name: "Cecil", text: "which rear spoiler is this? square tips" };
const place = { conversation: "club", from: "dora" };

test("a post that is asked about is its author's case with its author's facts", () => {
  const message = { ...place, text: "", quoted: post };
  const { conversation, reply } = stepOfMessage(demoKnowledge(), emptyConversation, message, demoToday);
  expect(reply.summary).toMatchObject({ part: "rear-spoiler", case: "case-1" });
  expect(conversation.cases.map(({ owner }) => owner)).toEqual(["cecil"]);
  expect(conversation.cases[0]?.facts.reports.map(({ by }) => by)).toEqual(["cecil"]);
  expect(conversation.inHand).toEqual({ cecil: "case-1", dora: "case-1" });
});

test("what the one who asks says beside it is added as theirs", () => {
  const message = { ...place, text: "it has two drain notches", quoted: post };
  const { conversation } = stepOfMessage(demoKnowledge(), emptyConversation, message, demoToday);
  expect(conversation.cases).toHaveLength(1);
  expect(conversation.cases[0]?.facts.reports.map(({ by }) => by)).toEqual(["cecil", "dora"]);
});

test("which handbook is meant is read from the post too", () => {
  expect(wordsOfAll({ ...place, text: "mine too", quoted: post })).toBe(`${post.text}\nmine too`);
  expect(wordsOfAll({ ...place, text: "mine too" })).toBe("mine too");
});
