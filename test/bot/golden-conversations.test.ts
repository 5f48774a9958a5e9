// Whole conversations as a restorer would hold them, kept as text and read by people; see test/conversations/README.md.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { emptyConversation, plainText, step } from "../../bot/index.ts";
import { demoKnowledge, demoToday } from "../support/demo-knowledge.ts";
import { asKept, parseGolden } from "../support/golden-conversation.ts";

const folder = join(import.meta.dirname, "../conversations");
const { edition } = demoKnowledge().handbook;
const files = readdirSync(folder).filter((name) => name.endsWith(".txt"));

describe("conversations with the demo handbook", () => {
  test.each(files)(
    "%s reads as it was written",
    (name) => {
      let conversation = emptyConversation;
      const turns = parseGolden(readFileSync(join(folder, name), "utf8"));
      expect(turns.length).toBeGreaterThan(0);
      for (const { message, said, reply } of turns) {
        const taken = step(demoKnowledge(), conversation, message, demoToday);
        conversation = taken.conversation;
        expect(`> ${said}\n${asKept(plainText(taken.reply), edition)}`).toBe(`> ${said}\n${reply}`);
      }
    },
    60_000,
  );
});
