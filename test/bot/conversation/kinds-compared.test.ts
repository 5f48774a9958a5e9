// "Compare" offers every pair of kinds as a choice: whatever it offers must be understood when it is pressed.
import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { communityMemories, openBot } from "../../../bot/index.ts";
import { clockFrom, silentLog } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";

function conversation() {
  const store = memoryStore();
  const bot = openBot({
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    secretKey: "tests only",
    platform: "club",
  });
  return (text: string) => bot.receive({ conversation: "club:1", from: "ann", text });
}

test("any two kinds of a part are laid side by side by their whole names, and no other beside them", async () => {
  for (const { name: part, variants } of demoKnowledge().handbook.parts) {
    const say = conversation();
    await say(`which ${part} is this?`);
    for (const [at, one] of variants.entries()) {
      for (const other of variants.slice(at + 1)) {
        const { blocks } = await say(`compare ${one.name} and ${other.name}`);
        const table = blocks.find(({ kind }) => kind === "table");
        expect(table, `${one.name} and ${other.name}`).toMatchObject({ head: ["", one.name, other.name] });
      }
    }
  }
});

test("nobody who has two kinds compared is asked what they meant by the name of one", async () => {
  const say = conversation();
  await say("which door mirror is this? two screws");
  const { blocks } = await say("compare first-type mirror with nylon ball and trade reproduction mirror");
  expect(blocks.map(({ kind }) => kind)).not.toContain("understood");
});
