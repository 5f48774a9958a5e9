// A case as a value: what is kept for undo, and what a store may give back.
import { describe, expect, test } from "vitest";
import {
  Case,
  type CaseFacts,
  historyLimit,
  noFacts,
  takenBack,
  withFacts,
} from "../../../bot/conversation/case.ts";
import {
  caseInHand,
  emptyConversation,
  newCase,
  readConversation,
  withCaseInHand,
  withoutOldHistories,
} from "../../../bot/conversation/conversation.ts";

const fresh = newCase(emptyConversation, "owner", "wexcombe-shrike");
const told = (words: string): CaseFacts => ({
  ...noFacts,
  part: "rear-spoiler",
  reports: [{ feature: "tips", by: "owner", certainty: 1, words, value: { kind: "state", state: "round" } }],
});

describe("a case", () => {
  test("keeps its earlier facts when new ones are told", () => {
    const kept = withFacts(fresh, told("rounded"));
    expect(kept.history).toEqual([noFacts]);
    expect(takenBack(kept)).toEqual(fresh);
  });

  test("keeps no history of a question that was only asked", () => {
    const asked = withFacts(fresh, { ...noFacts, open: { feature: "part" }, warned: ["grp-dust"] });
    expect(asked.history).toEqual([]);
  });

  test("keeps no history of the same fact in other words, and keeps the words", () => {
    const kept = withFacts(withFacts(fresh, told("rounded")), told("they are round"));
    expect(kept.history).toEqual([noFacts]);
    expect(kept.facts).toEqual(told("they are round"));
  });

  test("has nothing to take back while nothing was told", () => {
    expect(takenBack(fresh)).toBeUndefined();
  });

  test("forgets the oldest step beyond the limit", () => {
    const step = (count: number) => ({ ...told("rounded"), unplaced: [`say ${count}`] });
    let kept = fresh;
    for (let count = 0; count <= historyLimit; count += 1) kept = withFacts(kept, step(count));
    expect(kept.history).toHaveLength(historyLimit);
    expect(kept.history[0]).toEqual(step(0));
  });

  test("is the same after a journey through JSON", () => {
    const kept = withFacts(fresh, {
      ...told("rounded"),
      car: { built: { from: 23782, to: 23783 }, trim: "s" },
    });
    expect(Case.parse(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
  });
});

describe("a conversation", () => {
  const one = withCaseInHand(emptyConversation, fresh, "owner");

  test("gives each person the case in their hand, and the latest to whoever has none", () => {
    const second = newCase(one, "neighbour", "wexcombe-shrike");
    const both = withCaseInHand(one, second, "neighbour");
    expect(caseInHand(both, "owner")?.id).toBe("case-1");
    expect(caseInHand(both, "neighbour")?.id).toBe("case-2");
    expect(caseInHand(both, "passer-by")?.id).toBe("case-2");
  });

  test("keeps the facts of every case and the steps of the newest twenty", () => {
    let many = emptyConversation;
    for (let count = 0; count < 25; count += 1) {
      const kept = withFacts(newCase(many, "owner", "wexcombe-shrike"), told(`say ${count}`));
      many = withCaseInHand(many, kept, "owner");
    }
    const trimmed = withoutOldHistories(many);
    expect(trimmed.cases.map((kept) => kept.facts)).toEqual(many.cases.map((kept) => kept.facts));
    expect(trimmed.cases.filter((kept) => kept.history.length > 0).map((kept) => kept.number)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 6),
    );
  });

  test("does not take a person's name for something else", () => {
    expect(caseInHand(one, "constructor")?.id).toBe("case-1");
    expect(caseInHand(emptyConversation, "__proto__")).toBeUndefined();
  });

  test("gives everybody the case in hand back, whatever they are called", () => {
    const named = withCaseInHand(one, newCase(one, "__proto__", "wexcombe-shrike"), "__proto__");
    const later = withCaseInHand(named, newCase(named, "owner", "wexcombe-shrike"), "owner");
    const back = readConversation(JSON.parse(JSON.stringify(later)));
    expect(back).toEqual(later);
    expect(back && caseInHand(back, "__proto__")?.id).toBe("case-2");
  });

  test.each([
    undefined,
    null,
    42,
    "text",
    {},
    { ...emptyConversation, version: 2 },
    { ...emptyConversation, cases: [{ id: "case-1" }] },
    { ...emptyConversation, latest: 7 },
    { ...emptyConversation, inHand: { owner: 7 } },
    { ...emptyConversation, inHand: ["case-1"] },
  ])("that is damaged or of another version does not parse: %j", (state) => {
    expect(readConversation(state)).toBeUndefined();
  });
});
