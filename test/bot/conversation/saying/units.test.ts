import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inUnits, sizesIn } from "../../../../bot/conversation/saying/in-units.ts";
import { inOtherUnits } from "../../../../bot/conversation/saying/said-size.ts";
import { communityTalk } from "../../../support/community-talk.ts";

describe("a size in the other units", () => {
  test("is what a rule, a caliper or a scale shows", () => {
    // An inch is 25.4 mm, a pound 453.59237 g (NIST SP 811): 442 mm are 17.402 in, the nearest sixteenth is 17 6/16.
    for (const [said, other] of [
      ["442 mm", "17 3/8 in"],
      ["44.2 cm", "17 3/8 in"],
      ["1180 mm ± 1.5", "46 7/16 in ± 1/16"],
      ["355 or 370 mm", "14 or 14 9/16 in"],
      ["420 to 425 mm", "16 9/16 to 16 3/4 in"],
      ["6 mm ± 0.2", "0.236 in ± 0.008"],
      ["114.3 mm", "4.500 in"],
      ["640 g", "22.6 oz"],
      ["1.4 kg", "3.1 lb"],
      ["1400 g ± 40", "3.1 lb ± 0.1"],
    ] as const) {
      expect(sizesIn("imperial", said), said).toBe(other);
      expect(sizesIn("both", said), said).toBe(`${said} (${other})`);
    }
    expect(sizesIn("both", "17 3/8 in")).toBe("17 3/8 in (441 mm)");
    expect(sizesIn("both", "0.25 in")).toBe("0.25 in (6.35 mm)");
    expect(sizesIn("imperial", "17.375 in lies far from all.")).toBe("17 3/8 in lies far from all.");
  });

  test("is off by no more than half of what the tool shows", () => {
    fc.assert(
      fc.property(fc.integer({ min: 51, max: 5000 }), (millimetres) => {
        const [, whole = "0", over = "0", under = "1"] =
          /^(\d+)(?: (\d+)\/(\d+))? in$/u.exec(inOtherUnits({ values: [millimetres], unit: "mm" }) ?? "") ??
          [];
        const inches = Number(whole) + Number(over) / Number(under);
        expect(Math.abs(inches * 25.4 - millimetres)).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
      }),
      { seed: 8 },
    );
  });

  test("leaves names, years, quoted words and metric readers alone", () => {
    for (const text of [
      "4 × 108 mm",
      "M8 x 20 mm",
      "three layers of 450 g mat",
      "31 in white paint",
      "built in 1979 in May, or 1980 in.",
      "said as “442 mm”",
      "Give it again with its unit, such as 420 mm or 42 cm.",
    ]) {
      expect(sizesIn("imperial", text)).toBe(text);
      expect(sizesIn("both", text)).toBe(text);
    }
    fc.assert(
      fc.property(fc.string(), (text) => sizesIn("metric", text) === text),
      { seed: 8 },
    );
  });
});

describe("a community that measures in inches", () => {
  async function inInches() {
    const talk = communityTalk();
    await talk.say("(olga, owner) set units to imperial");
    await talk.say("(ann) rear spoiler, home market car built may 1980, which one?");
    return talk;
  }

  test("is asked in inches, and a bare number is inches", async () => {
    const talk = await inInches();
    expect(await talk.say("(ann) why this?")).toContain("(in inches, or name your unit)");
    expect(await talk.say("(ann) 39")).toContain("distance between the outer fixings: 39 in");
    const { summary } = await talk.bot.receive({
      conversation: "club:bench",
      from: "ann",
      text: "what do you know?",
    });
    expect(summary.understood).toContainEqual(expect.objectContaining({ reading: "39 in" }));
  });

  test("hears what millimetres in place of inches would be", async () => {
    const talk = await inInches();
    const reply = await talk.say("(ann) 1020");
    expect(reply).toContain("You wrote 1020 in. Did you mean 1020 mm?");
    expect(await talk.say("(ann) yes")).toContain("40 3/16 in");
  });

  test("hears the handbook's sizes in inches, and both where both are wanted", async () => {
    const talk = await inInches();
    expect(await talk.say("(ann) compare first spoiler and second spoiler")).toContain("40 3/16 in ± 1/16");
    await talk.say("(olga, owner) set units to both");
    expect(await talk.say("(ann) compare first spoiler and second spoiler")).toContain(
      "1020 mm ± 0.8 (40 3/16 in ± 1/16)",
    );
  });

  test("keeps pinned answers in their keeper's words", () => {
    const pinned = {
      kind: "pinned",
      pin: "1",
      author: "kim",
      date: "1 March 2026",
      text: "Measure 442 mm.",
      sources: [],
    } as const;
    const summary = {} as Parameters<typeof inUnits>[1]["summary"];
    expect(inUnits("both", { blocks: [pinned], summary: { ...summary, question: null } }).blocks).toEqual([
      pinned,
    ]);
  });
});
