// Whose sheet is shown and shared, where somebody has told of several cars.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Block, communityMemories, openBot, pagesOf } from "../../../bot/index.ts";
import { clockFrom, silentLog } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { keepSeen, seenCar } from "../../support/seen-cars.ts";

async function ownerOfTwo() {
  const store = memoryStore();
  const photographed = (at: number, photograph: string, market: string, handbook?: string) => {
    const seen = seenCar(at, { variant: "second", year: 1980, month: 6, by: "ann", car: { market } });
    const saw = { ...seen.saw, photographs: [photograph], ...(handbook === undefined ? {} : { handbook }) };
    return { ...seen, saw };
  };
  await keepSeen(store, [
    photographed(1, "of-the-home-car", "home"),
    photographed(2, "of-the-other-car", "north-america"),
    photographed(3, "of-another-make", "home", "another-handbook"),
  ]);
  const around = {
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    platform: "club",
    secretKey: "a secret that only tests know, and they tell everybody",
  };
  const bot = openBot(around);
  const say = async (text: string, conversation = "club:bench") =>
    (await bot.receive({ conversation, from: "ann", text })).blocks;
  await say("rear spoiler on my home market car built june 1980, rough inside");
  await say(
    "new case: rear spoiler on my other car, a north american market car built june 1980, smooth inside",
  );
  return { say, pages: pagesOf(around) };
}

const shareButton = (blocks: readonly Block[]) =>
  blocks
    .flatMap((block) => (block.kind === "choices" ? block.choices : []))
    .map(({ say }) => say)
    .find((say) => say.startsWith("share")) ?? "no button";

describe("of two cars", () => {
  test.each([1, 2])("the sheet that is shown, %i, is the one that its button shares", async (number) => {
    const { say, pages } = await ownerOfTwo();
    const shown = await say(`car sheet ${number}`);
    const market = number === 1 ? "Home market" : "North American market";
    expect(JSON.stringify(shown)).toContain(market);
    const [, link] = await say(shareButton(shown));
    const [, , community = "", id = ""] = (link?.kind === "page" ? link.path : "").split("/");
    expect(JSON.stringify((await pages.sheet(community, id))?.car)).toContain(market);
  });

  test("who asks to share from elsewhere is asked which, and pressing one shares it", async () => {
    const { say } = await ownerOfTwo();
    const asked = await say("share car sheet", "club:elsewhere");
    expect(JSON.stringify(asked)).toContain("You have told me of 2 cars.");
    const [words, link] = await say(shareButton(asked), "club:elsewhere");
    expect(words?.kind === "text" && words.text).toContain("Whoever has this link");
    expect(link?.kind).toBe("page");
  });

  test("photographs of the one are not on the sheet of the other, nor those of another make", async () => {
    const { say, pages } = await ownerOfTwo();
    const [, link] = await say("share car sheet 1");
    const [, , community = "", id = ""] = (link?.kind === "page" ? link.path : "").split("/");
    const sheet = await pages.sheet(community, id);
    expect(sheet?.parts.flatMap(({ photographs }) => photographs)).toEqual(["of-the-home-car"]);
  });
});
