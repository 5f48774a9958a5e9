// What takes several answers: anybody can leave it in plain words, nothing sent on the way is lost, and what was begun under another version harms nobody.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Block, readConversation } from "../../../bot/index.ts";
import { communityTalk, withKeepersPlace } from "../../support/community-talk.ts";

const own = "(ann) rear spoiler, rough inside, tips square, my car was built june 1980";
const leaving = [
  "never mind",
  "Nevermind.",
  "oh never mind",
  "forget it",
  "leave it",
  "cancel",
  "stop it",
  "cancel that",
];

async function talkAfter(...lines: readonly string[]) {
  const talk = await withKeepersPlace(communityTalk(memoryStore()));
  for (const line of lines) await talk.say(line);
  return talk;
}

const recordedLines = [
  own,
  "(ann) record an observation",
  "(ann) what I told decides",
  "(ann) one owner",
  "(ann) today",
  "(ann) none",
  "(ann) no",
  "(ann) record it",
];

describe.each(leaving)("%j", (words) => {
  test("leaves a recording at any of its questions", async () => {
    for (let answered = 2; answered < recordedLines.length - 1; answered += 1) {
      const { say, store } = await talkAfter(...recordedLines.slice(0, answered));
      expect(await say(`(ann) ${words}`)).toBe("Nothing is recorded.");
      expect(await store.ids("observation")).toEqual([]);
    }
  });

  test("leaves a pin, an erasure and words that were asked for, and does none of them", async () => {
    const { say, store } = await talkAfter(...recordedLines);
    await say("(kim, keeper) pin for the question where is the label: Inside.");
    expect(await say(`(kim, keeper) ${words}`)).toBe("Nothing is pinned.");
    await say("(kim, keeper) queue");
    await say("(kim, keeper) decline observation <1>");
    expect(await say(`(kim, keeper) ${words}`)).toBe("Nothing is changed.");
    expect(await say("(kim, keeper) queue")).toContain("One observation waits for a keeper");
    await say("(ann) erase mine");
    expect(await say(`(ann) ${words}`)).toContain("Nothing is erased.");
    expect(await store.ids("observation")).toHaveLength(1);
  });
});

test("words that were asked for are not taken from what is said after something else", async () => {
  const { say } = await talkAfter(...recordedLines, "(kim, keeper) queue");
  await say("(kim, keeper) decline observation <1>");
  await say("(kim, keeper) queue");
  expect(await say("(kim, keeper) which rear spoiler is the moulded one?")).not.toContain("Declined");
  await say("(kim, keeper) decline observation <1>");
  expect(await say("(kim, keeper) is it one at all?")).toContain(
    "has declined your observation <1> because is it one at all? “edit observation <1>”",
  );
});

test("undo takes the last answer of a recording back", async () => {
  const { say } = await talkAfter(...recordedLines.slice(0, 5));
  expect(await say("(ann) undo")).toContain("When did you see it?");
});

describe("photographs that come with the answer to another question of a recording", () => {
  test("are kept with it", async () => {
    const { bot, say } = await talkAfter(own, "(ann) record an observation");
    const from = { conversation: "club:bench", from: "ann", name: "ann" };
    const alone = await bot.receive({ ...from, photographs: ["p1"] });
    expect(textOf(alone.blocks)).toContain("Which kind of rear spoiler was it?");
    expect(textOf(alone.blocks)).not.toContain("could not read");
    await bot.receive({ ...from, text: "what I told decides", photographs: ["p2"] });
    for (const line of recordedLines.slice(3, 5)) await say(line);
    await bot.receive({ ...from, text: "here is one more", photographs: ["p3"] });
    const shown = await say("(ann) no");
    expect(shown).toContain("photograph 1, photograph 2, photograph 3");
  });
});

test("an errand whose kept form is no longer known is left, and its person is answered", async () => {
  const talk = await talkAfter(own);
  for (const affair of ["observations", "pins"]) {
    await talk.store.advance(
      { kind: "conversation", id: "club:bench", by: "update", at: 1, why: "of another version" },
      (state) => ({
        state: {
          ...readConversation(state),
          errands: [{ person: "ann", affair, state: { step: "colour" } }],
        },
        outcome: null,
      }),
    );
    expect(await talk.say("(ann) it has two drain notches")).toContain("drain notches");
  }
});

test("a member of whom the platform vouches for nothing but asking is told that recording is not for them", async () => {
  const { say } = await talkAfter(own);
  expect(await say("(ann, asker) record an observation")).toContain(
    "That is for members of this community to do.",
  );
});

function textOf(blocks: readonly Block[]): string {
  return JSON.stringify(blocks);
}
