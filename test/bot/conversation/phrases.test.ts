// The small grammar and the published edges of words.
import { describe, expect, test } from "vitest";
import { saysNothingEitherWay, shouldHaveOpen } from "../../../bot/conversation/phrases/answer.ts";
import { effortWords, misreadWords } from "../../../bot/conversation/phrases/effort.ts";
import { counted, listed, quoted, sentence, withThe } from "../../../bot/conversation/phrases/grammar.ts";
import { leadTime, usualLeadOf } from "../../../bot/conversation/phrases/lead-time.ts";
import { noVerdictYet } from "../../../bot/conversation/phrases/standing.ts";
import { strengthOf } from "../../../bot/conversation/phrases/strength.ts";
import { tradeReadingLine } from "../../../bot/conversation/phrases/trade.ts";
import { nothingFits, oddOnesOut } from "../../../bot/conversation/phrases/trouble.ts";
import { hearsayLeftAside, severalReadingsLeftAside } from "../../../bot/conversation/phrases/understood.ts";
import { copyLine, tellOfCopy } from "../../../bot/conversation/phrases/variants.ts";

describe("weights in words", () => {
  // Kass & Raftery (1995), section 3.2: edges at half a ban, one ban and two bans.
  test.each([
    [0.049, "says nothing"],
    [0.05, "weak"],
    [0.499, "weak"],
    [0.5, "fair"],
    [0.999, "fair"],
    [1, "strong"],
    [1.999, "strong"],
    [2, "very strong"],
  ])("%f bans are %s, either way", (bans, word) => {
    expect(strengthOf(bans)).toBe(word);
    expect(strengthOf(-bans)).toBe(word);
  });
});

describe("effort in words", () => {
  test("runs from a look from outside to dismantling", () => {
    expect([1, 2, 3, 6, 8].map(effortWords)).toEqual([
      "a look from outside",
      "a closer look",
      "a few minutes' work",
      "real work, with something taken off",
      "dismantling",
    ]);
  });

  test("a misreading is told as one in so many", () => {
    expect(misreadWords(0.2)).toBe("misread about once in five");
    expect(misreadWords(0.04)).toBe("misread about once in 25");
    expect(misreadWords(0.02)).toBe("hardly ever misread");
  });
});

describe("lead times in words", () => {
  const usual = { from: 1, to: 4, taught: 0 };
  test("a usual, a short and a long one are called so", () => {
    expect(leadTime("week mark", undefined, 3.1, usual)).toBe(
      "About three months from the week mark to the car: usual (most take one month to four).",
    );
    expect(leadTime("week mark", undefined, 0.2, usual)).toContain("Less than a month");
    expect(leadTime("week mark", undefined, 0.2, usual)).toContain("short");
    expect(leadTime("week mark", undefined, 14, usual)).toContain("About 14 months");
    expect(leadTime("week mark", undefined, 14, usual)).toContain("long");
  });

  test("says one month once where most take no more", () => {
    const quick = { from: 0.6, to: 1.4, taught: 0 };
    expect(leadTime("stamp", undefined, 1, quick)).toContain("(most take about one month)");
    expect(usualLeadOf("stamp", undefined, quick, false)).toContain("to the car most take about one month,");
    expect(usualLeadOf("stamp", undefined, { from: 1, to: 4, taught: 0 }, false)).toContain(
      "one month to four months",
    );
  });
});

describe("grammar", () => {
  test("lists take commas and one joint", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map((items) => listed(items))).toEqual([
      "",
      "a",
      "a and b",
      "a, b and c",
    ]);
    expect(listed(["a", "b"], "or")).toBe("a or b");
  });

  test("one is one and the rest are many", () => {
    expect([counted(0, "fact"), counted(1, "fact"), counted(2, "fact")]).toEqual([
      "0 facts",
      "1 fact",
      "2 facts",
    ]);
  });

  test("a sentence begins large and ends once", () => {
    expect(sentence("it fits")).toBe("It fits.");
    expect(sentence("Does it fit?")).toBe("Does it fit?");
  });

  test("a name with an article of its own gets no second", () => {
    expect([withThe("First spoiler"), withThe("the plain lid")]).toEqual([
      "the First spoiler",
      "the plain lid",
    ]);
  });

  test("a long quotation is cut", () => {
    expect(quoted("a".repeat(100), 10)).toBe(`“${"a".repeat(9)}…”`);
  });
});

describe("one thing and several", () => {
  test("take their own grammar", () => {
    expect(oddOnesOut(["black gel coat"])).toContain(
      "The odd one out is black gel coat. Please photograph it",
    );
    expect(oddOnesOut(["black gel coat", "woven cloth"])).toContain("The odd ones out are");
    expect(nothingFits("road wheel", 11, "")).toContain("none of the 11 kinds of road wheel");
  });

  test("of many words only the first few come back", () => {
    expect(hearsayLeftAside(["a", "b", "c", "d"])).toContain("“a”, “b”, “c” and the rest");
    expect(saysNothingEitherWay(["a", "b"], 2)).toBe("Says little either way: a, b and two more.");
  });

  test("a size is met with what it could be: nothing, one thing, several", () => {
    expect(severalReadingsLeftAside(["smooth and rough"])).toContain("in more than one way");
    expect(severalReadingsLeftAside(["6 kg"], [])).toContain("records no size");
    expect(severalReadingsLeftAside(["6 kg"], ["mass"])).toContain("does not look like the mass");
    expect(severalReadingsLeftAside(["6 mm"], ["width", "height"])).toContain("width or height");
  });

  test("what is missing leaves no gap", () => {
    expect(tellOfCopy("seam", "glued", [])).toBe("seam: glued");
    expect(copyLine("Copy", ["seam: glued"], "")).toBe("Copy – seam: glued");
    expect(tradeReadingLine("week 31", "", "a guide")).toBe("Week 31. [a guide]");
    expect(noVerdictYet("one", "the other", [])).toContain("nothing that I may still ask tells them apart");
    expect(shouldHaveOpen("First wing", "unlikely (30 %)", false)).toContain(
      "The build date would tell more.",
    );
  });
});
