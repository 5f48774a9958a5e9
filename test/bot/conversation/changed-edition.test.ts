// A case outlives the edition it was begun with: what the new edition no longer has is passed over, never an error.
import { describe, expect, test } from "vitest";
import { knowledgeOf, step } from "../../../bot/index.ts";
import type { PartKind } from "../../../knowledge/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { talk } from "../../support/talking.ts";

const { handbook } = demoKnowledge();
const say = (text: string) => ({ conversation: "workshop", from: "owner", text });

/** The handbook as if its historians had changed one part. */
function withPart(id: string, change: (part: PartKind) => readonly PartKind[]) {
  const parts = handbook.parts.flatMap((part) => (part.id === id ? change(part) : [part]));
  return knowledgeOf({ ...handbook, edition: "changed", parts });
}

describe("a case under another edition", () => {
  const { conversation } = talk("rear spoiler, rough inside, square tips, 1180 mm wide, built May 1980");

  test("goes on without the part kind it was about, and asks for the part", () => {
    const changed = withPart("rear-spoiler", () => []);
    const { reply } = step(changed, conversation, say("why this?"), demoToday);
    expect(reply.summary.question?.feature).toBe("part");
  });

  test("goes on without a feature that was told or is open", () => {
    const changed = withPart("rear-spoiler", (part) => [
      {
        ...part,
        features: part.features.filter(({ id }) => id !== "tips" && id !== "drain-notches"),
        groups: [],
        variants: part.variants.map((variant) => ({
          ...variant,
          tells: Object.fromEntries(
            Object.entries(variant.tells).filter(([id]) => id !== "tips" && id !== "drain-notches"),
          ),
        })),
      },
    ]);
    for (const text of [
      "what do you know so far",
      "where do I go from here?",
      "why this?",
      "cannot tell",
      "undo",
    ]) {
      const { reply } = step(changed, conversation, say(text), demoToday);
      if (text !== "undo") expect(reply.summary.ranking.length).toBeGreaterThan(1);
      expect(JSON.stringify(reply.blocks)).not.toContain("undefined");
    }
  });

  test("goes on without a variant that led", () => {
    const changed = withPart("rear-spoiler", (part) => [
      { ...part, variants: part.variants.filter(({ id }) => id !== "first" && id !== "first-drained") },
    ]);
    const { reply } = step(changed, conversation, say("six screws"), demoToday);
    expect(reply.summary.ranking.map((one) => one.variant)).not.toContain("first");
  });
});
