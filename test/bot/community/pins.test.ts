// What keepers and others are told of a pinned answer, when it is looked at again, and what an answered case can be pinned for.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { knowledgeOf } from "../../../bot/index.ts";
import { clockFrom, communityTalk, withKeepersPlace } from "../../support/community-talk.ts";
import { shippedHandbook } from "../../support/demo-handbook.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";

async function pinnedAs(...words: readonly string[]) {
  const talk = await withKeepersPlace(communityTalk());
  await talk.say("(kim, keeper) rear spoiler, which kind is it?");
  await talk.say("(kim, keeper) pin this: Look at the tips first.");
  for (const one of words) await talk.say(`(kim, keeper) ${one}`);
  expect(await talk.say("(kim, keeper) keep it")).toContain("Pinned as <1>");
  return talk;
}

describe("a pinned answer that the evidence of a case speaks against", () => {
  const evidence =
    "(ann) rear spoiler, rough inside, tips square, my car was built june 1980, shrike S, home market";

  test("is told to its asker as what they told, and to the keepers as what was told in a case", async () => {
    const { say } = await pinnedAs("says Tallis ducktail");
    const [toAsker = "", toKeepers = ""] = (await say(evidence)).split("--> to the keepers:");
    expect(toAsker).toContain("What you told speaks against this: it is not the Tallis ducktail but the");
    expect(toKeepers).toContain(
      "What was told in a case speaks against this: it is not the Tallis ducktail but the",
    );
    expect(await say("(kim, keeper) queue")).toContain("What was told in a case speaks against this");
    expect(toKeepers).not.toContain("you told");
  });

  test("is spoken against on no page that everybody reads", async () => {
    const { say, pages } = await pinnedAs("says Tallis ducktail");
    await say(evidence);
    expect((await pages.pins("home")).map(({ block }) => [block.pin.length, block.dispute])).toEqual([
      [9, undefined],
    ]);
  });

  test("stands against nothing in the queue any more once it has other words", async () => {
    const { say } = await pinnedAs("says Tallis ducktail");
    await say(evidence);
    await say("(kim, keeper) replace pin <1>: Look at the label first.");
    expect(await say("(kim, keeper) queue")).toContain("Nothing waits for a keeper");
  });
});

describe("a pinned answer whose review is due", () => {
  const due = "Pinned answers whose review is due:";

  test("is due no longer once it has other words", async () => {
    const { say } = await pinnedAs("review by March 2026");
    expect(await say("(kim, keeper) queue")).toContain(due);
    await say("(bea, keeper) replace pin <1>: Look at the label first.");
    expect(await say("(kim, keeper) queue")).not.toContain(due);
    expect(await say("(ann) rear spoiler, which kind is it?")).not.toContain("wanted to look at it again");
  });

  test("keeps a day to come when its words are replaced", async () => {
    const { say, store } = await pinnedAs("review by March 2028");
    await say("(bea, keeper) replace pin <1>: Look at the label first.");
    const [id = ""] = await store.ids("pin");
    expect(await store.current("pin", id)).toMatchObject({
      text: "Look at the label first.",
      review: { from: 12 * 2028 + 2, to: 12 * 2028 + 3 },
    });
  });

  test("is looked at again by another day when it still holds, and only a keeper says so", async () => {
    const { say } = await pinnedAs("review by March 2026");
    expect(await say("(ann) review pin <1> by March 2028")).toContain("That is for a keeper to do.");
    expect(await say("(bea, keeper) review pin <1> by March 2026")).toContain(
      "Say a day, month or year to come",
    );
    expect(await say("(bea, keeper) review pin <1> by whenever")).toContain(
      "Say a day, month or year to come",
    );
    expect(await say("(bea, keeper) review pin <1> again by March 2028.")).toBe(
      "Pinned answer <1> is to be looked at again by March 2028.",
    );
    expect(await say("(kim, keeper) queue")).toContain("Nothing waits for a keeper");
  });
});

describe("a case that was handed over and answered", () => {
  test("names its part in the queue and in the pin, whichever handbook the keeper spoke of last", async () => {
    const served = [demoKnowledge(), knowledgeOf(shippedHandbook("marlpit-wren"))];
    const talk = communityTalk(memoryStore(), clockFrom(), () => served);
    await talk.say("(ann) window catch on my Marlpit Wren, brass lever");
    await talk.say("(ann) ask a keeper");
    await talk.say("(kim, keeper) new case");
    await talk.say("(kim, keeper) rear spoiler");
    expect(await talk.say("(kim, keeper) queue")).toContain("<1>: window catch, asked by ann");
    expect(await talk.say("(ann) mine")).toContain("1 case handed to the keepers");
    await talk.say("(kim, keeper) answer <1>: Brass is early.");
    expect(await talk.say("(kim, keeper) pin <1>")).toContain("holds for: window catch;");
    await talk.say("(kim, keeper) keep it");
    expect(await talk.say("(bert) window catch on my Marlpit Wren")).toContain("Pinned answer by kim");
  });

  test("without a part is not pinned for nothing: the keeper is told to name a question", async () => {
    const talk = communityTalk();
    await talk.say("(ann) it is marked >PA66<");
    expect(await talk.say("(ann) ask a keeper")).toContain("as <1>");
    expect(await talk.say("(kim, keeper) pin <1>")).toContain("There is no pinned answer <1> here.");
    await talk.say("(kim, keeper) answer <1>: It holds the horn.");
    expect(await talk.say("(kim, keeper) pin <1>")).toBe(
      "That case names no part that the answer could hold for. Pin it for a plain question: “pin for the question …: It holds the horn.”.",
    );
  });
});

test("an answer that was taken back is not taken back a second time", async () => {
  const { say } = communityTalk();
  await say("(ann) rear spoiler, tips square");
  await say("(ann) share this answer");
  await say("(ann) share this answer");
  expect(await say("(ann) stop sharing answers")).toContain("Taken back: 2 pages.");
  await say("(ann) share this answer");
  expect(await say("(ann) stop sharing answers")).toContain("Taken back: 1 page.");
  expect(await say("(ann) stop sharing answers")).toContain("None of your answers is shared.");
});
