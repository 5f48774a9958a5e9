// A file of what is kept: given to whoever asks for it, as often as its message comes, and not kept once more with every time.
import { afterAll, expect, test } from "vitest";
import type { Reply } from "../../../bot/index.ts";
import { communityTalk } from "../../support/community-talk.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";
import { keepSeen, seenCar } from "../../support/seen-cars.ts";

afterAll(closeStores);

const kim = { conversation: "club:bench", from: "kim", name: "kim", standing: "keeper" } as const;

function fileIn({ blocks }: Reply): string {
  return blocks.flatMap((block) => (block.kind === "file" ? [block.text] : [])).join();
}

test.each(Object.entries(newStores))(
  "an export is whole again when its message comes again, and stands a second time nowhere in %s",
  async (_engine, newStore) => {
    const store = await newStore();
    await keepSeen(store, [seenCar(1, { variant: "second", year: 1980, month: 6, by: "zanzibarred" })]);
    const { bot } = communityTalk(store);
    for (const text of ["export observations", "export observations as json"]) {
      const message = { ...kim, id: text, text };
      const first = await bot.receive(message);
      expect(fileIn(first)).toContain("zanzibarred");
      expect(await bot.receive(message)).toEqual(first);
      // Asked for by its number alone there is no file to be made.
      const { conversation, from, id } = message;
      const recalled = await bot.receive({ conversation, from, id, text: "" });
      expect(recalled.blocks).toEqual([
        { kind: "text", text: "That was a file, and is not kept. Ask again, and it is made anew." },
      ]);
    }
  },
);

test("what somebody takes along is made of what is kept when they ask, also when their message comes again", async () => {
  const { bot } = communityTalk();
  const ann = { conversation: "club:bench", from: "ann", name: "ann" };
  await bot.receive({ ...ann, text: "rear spoiler, rough inside" });
  const message = { ...ann, id: "m1", text: "export mine" };
  expect(fileIn(await bot.receive(message))).not.toContain("square");
  await bot.receive({ ...ann, text: "tips square" });
  expect(fileIn(await bot.receive(message))).toContain("square");
});
