// What a community does beside asking, as whole conversations that people have read; see test/conversations/README.md.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { communityTalk, withKeepersPlace } from "../../support/community-talk.ts";
import { parseGolden } from "../../support/golden-conversation.ts";

const folder = join(import.meta.dirname, "../../conversations/community");
const files = readdirSync(folder).filter((name) => name.endsWith(".txt"));

describe("conversations of a community", () => {
  test.each(files)(
    "%s reads as it was written",
    async (name) => {
      const talk = await withKeepersPlace(communityTalk());
      const turns = parseGolden(readFileSync(join(folder, name), "utf8"));
      expect(turns.length).toBeGreaterThan(0);
      for (const { said, reply } of turns)
        expect(`> ${said}\n${await talk.say(said)}`).toBe(`> ${said}\n${reply}`);
    },
    60_000,
  );
});
