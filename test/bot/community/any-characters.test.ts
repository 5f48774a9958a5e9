// Whatever is in a message, it is kept and answered: on every engine, for each refuses other characters than the next.
import { afterAll, expect, test } from "vitest";
import { quoted } from "../../../bot/conversation/phrases/grammar.ts";
import { plainText } from "../../../bot/index.ts";
import { communityTalk } from "../../support/community-talk.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";

afterAll(closeStores);

const half = "\ud83d";

test.each(Object.entries(newStores))(
  "a zero character or half a sign in what is said loses nothing in %s",
  async (_engine, newStore) => {
    const { bot } = communityTalk(await newStore());
    const keeper = {
      conversation: "club:bench",
      from: "kim",
      name: `kim${half}`,
      standing: "keeper",
    } as const;
    const say = async (text: string) => plainText(await bot.receive({ ...keeper, text }));
    await say(`rear spoiler\0${half}`);
    expect(await say(`pin this: Ask for\0 the ${half}label.`)).toContain("This would be pinned:");
    expect(await say("keep it")).toContain("Pinned as");
    const pressed = { feature: "observation.kind", reading: `0${half}` };
    await bot.receive({ ...keeper, answer: pressed });
    const quotes = { from: "ann", name: `ann${half}`, text: `which mirror is this?\0${half}` };
    expect(plainText(await bot.receive({ ...keeper, text: "", quoted: quotes }))).toContain("door mirror");
  },
);

test("words whose quotation ends in the middle of a sign of two units are kept as well", async () => {
  const { bot } = communityTalk();
  const keeper = { conversation: "club:bench", from: "kim", name: "kim", standing: "keeper" } as const;
  await bot.receive({ ...keeper, text: "rear spoiler" });
  await bot.receive({ ...keeper, text: `pin this: ${"a".repeat(58)}\u{1f600} and more words that are cut` });
  expect(plainText(await bot.receive({ ...keeper, text: "keep it" }))).toContain("Pinned as");
});

test("a quotation leaves a sign of two units out whole", () => {
  expect(quoted(`abc\u{1f600}def`, 5)).toBe("“abc…”");
  expect(quoted(`abc\u{1f600}def`, 6)).toBe("“abc\u{1f600}…”");
});
