// Several handbooks at once: the one that is named, else that of the case in hand.
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { chooseKnowledge } from "../../../bot/conversation/choose-knowledge.ts";
import { emptyConversation, knowledgeOf, step } from "../../../bot/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";

const folder = fileURLToPath(new URL("../../../knowledge/handbooks/ollerton-finch", import.meta.url));
const { handbook } = demoKnowledge();
const only = (id: string, part: string) =>
  knowledgeOf({
    ...handbook,
    cover: { ...handbook.cover, id },
    parts: handbook.parts.filter((one) => one.id === part),
  });
const mirrors = only("mirror-book", "door-mirror");
const spoilers = only("spoiler-book", "rear-spoiler");
const both = [mirrors, spoilers];
const say = (text: string) => ({ conversation: "c", from: "owner", text });

describe("the handbook a message is read against", () => {
  test("is the one whose part is named", () => {
    expect(chooseKnowledge(both, emptyConversation, say("rear spoiler"), demoToday)).toBe(spoilers);
    expect(chooseKnowledge(both, emptyConversation, say("door mirror"), demoToday)).toBe(mirrors);
  });

  test("is the one that has the whole name, where another knows a piece of it", async () => {
    const finch = knowledgeOf((await openHandbook(folder)).handbook);
    const shrike = demoKnowledge();
    for (const books of [
      [shrike, finch],
      [finch, shrike],
    ]) {
      const chosen = (text: string) => chooseKnowledge(books, emptyConversation, say(text), demoToday);
      expect(chosen("which hand wheel is this?")).toBe(finch);
      expect(chosen("which road wheel is this?")).toBe(shrike);
      expect(chosen("which steering wheel is this?")).toBe(shrike);
    }
  });

  test("is that of the case in hand when nothing is named", () => {
    const { conversation } = step(spoilers, emptyConversation, say("rear spoiler"), demoToday);
    expect(chooseKnowledge(both, conversation, say("rough inside"), demoToday)).toBe(spoilers);
  });

  test("is the first when nothing tells", () => {
    expect(chooseKnowledge(both, emptyConversation, say("hello"), demoToday)).toBe(mirrors);
  });

  test("must exist", () => {
    expect(() => chooseKnowledge([], emptyConversation, say("hello"), demoToday)).toThrow(RangeError);
  });

  test("opens a case of its own beside one of another handbook", () => {
    const { conversation } = step(spoilers, emptyConversation, say("rear spoiler, rough inside"), demoToday);
    const after = step(mirrors, conversation, say("door mirror"), demoToday).conversation;
    expect(after.cases.map((kept) => [kept.handbook, kept.facts.part])).toEqual([
      ["spoiler-book", "rear-spoiler"],
      ["mirror-book", "door-mirror"],
    ]);
  });
});
