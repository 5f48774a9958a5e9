// What keepers are told of a pinned answer, when it is looked at again, and what an answered case can be pinned for.
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

test("a pinned answer that its handbook speaks against stands in the queue, whichever handbook its keeper spoke of last", async () => {
  const served = [demoKnowledge(), knowledgeOf(shippedHandbook("marlpit-wren"))];
  const { say } = communityTalk(memoryStore(), clockFrom(), () => served);
  await say("(kim, keeper) rear spoiler on my Wexcombe Shrike, which kind is it?");
  await say("(kim, keeper) pin this: Cars of early 1979 have the moulded spoiler.");
  await say("(kim, keeper) says moulded spoiler");
  await say("(kim, keeper) only for built february to april 1979");
  await say("(kim, keeper) keep it");
  await say("(kim, keeper) new case");
  await say("(kim, keeper) window catch on my Marlpit Wren, brass lever");
  expect(await say("(kim, keeper) queue")).toContain("The handbook speaks against this");
});

describe("a pinned answer whose review is due", () => {
  test("is looked at again by another day when it still holds, and only a keeper says so", async () => {
    const { say } = await pinnedAs("review by March 2026");
    expect(await say("(ann) review pin <1> by March 2028")).toContain("That is for a keeper to do.");
    expect(await say("(bea, keeper) review pin <1> by March 2026")).toContain(
      "Say a day, month or year to come",
    );
    expect(await say("(bea, keeper) review pin <1> by whenever")).toContain(
      "Say a day, month or year to come",
    );
    expect(await say("(kim, keeper) queue")).toContain("Pinned answers whose review is due:");
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
