// Each thing that can be asked beside a question, and what its answer must hold.
import { describe, expect, test } from "vitest";
import { demoKnowledge } from "../support/demo-knowledge.ts";
import { blocksOf, talk, talkOn } from "../support/talking.ts";

const list = (said: ReturnType<typeof talk>) => blocksOf(said.reply, "list")[0];

describe("why this?", () => {
  test("names what is left, what the look costs, how often it is misread, and a source", () => {
    const { text, reply } = talk("rear spoiler, rough inside", "why this?");
    const asked = reply.summary.question?.feature;
    expect(asked).toBe("tips");
    expect(text).toContain("What is left is the First spoiler");
    expect(text).toContain("a look from outside");
    expect(text).toContain("misread about once in");
    expect(text).toMatch(/\[[^\]]*photographs[^\]]*\]/);
  });

  test("leaves the question open", () => {
    const before = talk("rear spoiler, rough inside");
    const after = talkOn(before.conversation, "why this?");
    expect(after.conversation).toEqual(before.conversation);
    expect(after.reply.summary.question).toEqual(before.reply.summary.question);
  });

  test("explains the question for the part and for the date as well", () => {
    expect(talk("hello", "why this?").text).toContain("Each part has its own tells");
    expect(talk("what rear spoiler should my car have?", "why this?").text).toContain("The build date says");
  });
});

describe("how do I check?", () => {
  test("gives cautions, then steps and tools, then the drawing", () => {
    const { reply } = talk("rear spoiler", "how do I check the inside finish?");
    const kinds = reply.blocks.map((block) => block.kind);
    expect(kinds.slice(0, 3)).toEqual(["cautions", "text", "picture"]);
    expect(blocksOf(reply, "picture")[0]?.svg).toContain("<svg");
  });
});

describe("compare", () => {
  test("lays two variants side by side and says what tells them apart, best first", () => {
    const said = talk("compare the first spoiler and the second spoiler");
    expect(blocksOf(said.reply, "table")[0]?.head).toEqual(["", "First spoiler", "Second spoiler"]);
    expect(list(said)?.items[0]).toContain("shape of the tips");
  });

  test("opens no case and changes none", () => {
    const { conversation } = talk("compare the first spoiler and the second spoiler");
    expect(conversation.cases.map((kept) => kept.facts.part)).toEqual([null]);
  });

  test("with one name alone offers the others", () => {
    const { reply } = talk("rear spoiler", "compare the splash copy");
    expect(blocksOf(reply, "choices")[0]?.choices).toHaveLength(8);
  });

  test("without names takes the two that lead", () => {
    const said = talk("rear spoiler, rough inside", "compare the two");
    expect(blocksOf(said.reply, "table")[0]?.head.slice(1)).toEqual(
      said.reply.summary.ranking.slice(0, 2).map((one) => one.name),
    );
  });
});

describe("photographs", () => {
  test("lists only what a photograph shows and is not told yet", () => {
    const { reply } = talk("rear spoiler, rounded tips", "what photographs should I ask the seller for?");
    const part = demoKnowledge().handbook.parts.find((one) => one.id === "rear-spoiler");
    const lines = blocksOf(reply, "list")[0]?.items.slice(0, -1) ?? [];
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) {
      const feature = part?.features.find((one) => line.startsWith(one.name));
      expect(feature?.photograph, line).toBe(true);
      expect(feature?.id).not.toBe("tips");
    }
  });
});

describe("what fits", () => {
  test("follows the mounting of the car's own date, cautions before the work", () => {
    const { reply, text } = talk(
      "rear spoiler, built June 1978, Shrike S, home market",
      "what would fit without drilling?",
    );
    expect(text).toContain("six-hole lid");
    const kinds = reply.blocks.map((block) => block.kind);
    const cautions = kinds.indexOf("cautions");
    expect(cautions).toBeGreaterThan(kinds.indexOf("list"));
    expect(kinds.lastIndexOf("list")).toBeGreaterThan(cautions);
  });
});

describe("handing over", () => {
  test("the notes hold every fact in the owner's words, who else spoke, and the edition", () => {
    const { text } = talk(
      "rear spoiler, hairy inside",
      { from: "dora", text: "rounded tips" },
      "where do I go from here?",
    );
    expect(text).toContain("inside finish: rough, fibres showing, said as “hairy");
    expect(text).toContain("(another member)");
    expect(text).toContain(demoKnowledge().handbook.edition.slice(0, 8));
  });
});

describe("sources", () => {
  test("are given in their long form with their grade", () => {
    const { reply } = talk("rear spoiler, rough inside", "show the sources");
    const sources = blocksOf(reply, "sources")[0]?.items ?? [];
    expect(sources.map((source) => source.short)).toContain("Sarrow's spoiler measurements");
    expect(sources.every((source) => /^[A-D]$/.test(source.grade))).toBe(true);
  });
});

describe("misbeliefs", () => {
  test("are corrected with their source", () => {
    expect(talk("rear spoiler: a rough inside means that the spoiler is a copy").text).toMatch(
      /Often said: “A rough inside means that the spoiler is a copy\.” .*\[/,
    );
  });
});

describe("trade questions", () => {
  test("are answered in mid-case, and the case stays where it was", () => {
    const before = talk("rear spoiler, rough inside");
    const after = talkOn(before.conversation, "what does DOT 3199 mean on a tyre?");
    expect(after.text).toContain("August 1999");
    expect(after.text).toContain("It dates the tyre, never the car");
    expect(after.reply.summary.question).toEqual(before.reply.summary.question);
    expect(after.conversation).toEqual(before.conversation);
  });

  test("a mark that is told counts, and one younger than the car is remarked", () => {
    const { reply, text } = talk("rear spoiler, built 1980", "there is a >PUR< mark moulded inside");
    expect(reply.summary.understood).toContainEqual(
      expect.objectContaining({ feature: "flex", state: "gives" }),
    );
    expect(text).toContain("the part that carries it came later");
  });
});

describe("help", () => {
  test("shows three messages one could send and the parts of the handbook", () => {
    const said = talk("help");
    expect(list(said)?.items).toHaveLength(3);
    expect(said.text).toContain("rear spoiler");
  });
});

describe("prices", () => {
  test("are not kept, and somebody who knows is named", () => {
    expect(talk("rear spoiler", "how much is it worth?").text).toContain("I keep no prices");
  });
});

describe("the short words", () => {
  test.each([
    ["cases", "There is no case yet."],
    ["photographs", "Name the part, and I list the photographs"],
    ["fits", "Tell me first which part it is."],
    ["sources", "Tell me first which part it is."],
    ["hand over", "Tell me first which part it is."],
    ["kinds", "Name the part, and I lay its kinds"],
    ["compare", "Name the part, and I lay its kinds"],
    ["facts", "You have told me nothing yet."],
  ])("%s answers even before there is a part", (word, answer) => {
    expect(talk(word).text).toContain(answer);
  });

  test("kinds lists every variant with where it comes from", () => {
    const { reply } = talk("rear spoiler", "kinds");
    const part = demoKnowledge().handbook.parts.find((one) => one.id === "rear-spoiler");
    expect(blocksOf(reply, "table")[0]?.rows.map((row) => row[0])).toEqual(
      part?.variants.map((variant) => variant.name),
    );
  });
});

describe("questions about the bot's own question", () => {
  const about = ["car.built", "car.trim", "car.market", "car.model"] as const;

  test.each(about)("why and how are answered for %s", (feature) => {
    const { conversation } = talk("rear spoiler");
    const asked = about.filter((one) => one !== feature);
    const others = asked.map((one) => ({ answer: { feature: one, cannotTell: true } as const }));
    const narrowed = talkOn(conversation, ...others, "what rear spoiler should my car have?");
    if (narrowed.reply.summary.question?.feature !== feature) return;
    expect(talkOn(narrowed.conversation, "why this?").text).not.toContain("Nothing is being asked");
    expect(talkOn(narrowed.conversation, "how do I check?").text).toMatch(/build sheet|plate/);
  });

  test("for a unit", () => {
    const { conversation } = talk("rear spoiler, width 118");
    expect(talkOn(conversation, "why this?").text).toContain("without the right unit");
    expect(talkOn(conversation, "how do I check?").text).toContain("scale you read it from");
  });

  test("for a second look", () => {
    const { conversation } = talk("door mirror, moulded plastic housing", "casting mark B in a diamond");
    expect(talkOn(conversation, "why this?").text).toContain("do not go together");
  });

  test("and when nothing is asked, that is said", () => {
    const { conversation } = talk("rear spoiler, it flexes, moulding clock 9 in 83, smooth inside, q mark");
    const done = talkOn(conversation, ...Array.from({ length: 20 }, () => "cannot tell"));
    expect(done.reply.summary.question).toBeNull();
    expect(talkOn(done.conversation, "why this?").text).toContain("Speaks for the Moulded spoiler");
    expect(talkOn(done.conversation, "how do I check?").text).toContain("Nothing is being asked");
  });
});

describe("withdrawing", () => {
  test("without a name, of several facts, asks which and offers them", () => {
    const { reply, text } = talk("rear spoiler, rough inside, square tips", "forget what I said");
    expect(text).toContain("Say which one to withdraw:");
    expect(blocksOf(reply, "choices")[0]?.choices.map((choice) => choice.label)).toEqual([
      "inside finish",
      "shape of the tips",
    ]);
  });

  test("without a name takes the only fact", () => {
    const { reply } = talk("rear spoiler, rough inside", "forget what I said");
    expect(reply.summary.understood).toEqual([]);
  });

  test("of what was not told says so", () => {
    expect(talk("rear spoiler, rough inside", "withdraw the width").text).toContain("You have not told me");
    expect(talk("rear spoiler", "withdraw the width").text).toContain("nothing that could be withdrawn");
  });
});

describe("how can I tell if it is a repro?", () => {
  test("lists for each copy what gives it away, beside what genuine ones show", () => {
    const said = talk("door mirror", "how can I tell if it is a repro?");
    expect(said.reply.summary.goal).toBe("genuine");
    expect(list(said)?.items[0]).toContain("Trade reproduction mirror – thickness of the glass: 3 mm");
    expect(list(said)?.items[0]).toContain("(genuine: 1.9, 2, 2.1 or 2.2)");
  });

  test("names no look by which a genuine kind would be condemned", () => {
    const items = list(talk("door mirror, how can I tell a genuine one from a copy"))?.items ?? [];
    expect(items.join()).not.toContain("two screws");
  });

  test("asks for the part first when none is in hand", () => {
    const { reply } = talk("how can I tell if it is a repro?");
    expect(reply.summary.goal).toBe("genuine");
    expect(reply.summary.question?.feature).toBe("part");
    expect(blocksOf(reply, "list")).toEqual([]);
  });

  test("with a feature named explains how that is looked at", () => {
    const { text } = talk("rear spoiler", "how do I check the inside finish of a copy?");
    expect(text).not.toContain("What gives copies");
  });
});

describe("when did they change?", () => {
  test("is answered by the kinds with their times, and tells nothing", () => {
    const { reply } = talk("rear spoiler", "which year got rounded tips");
    expect(blocksOf(reply, "table")[0]?.rows).toHaveLength(9);
    expect(reply.summary.understood).toEqual([]);
  });
});

describe("a price that is asked for in other words", () => {
  test.each(["how much can I ask for it?", "what is a fair price"])("%s is met with none", (asked) => {
    expect(talk("road wheel, eight spokes", asked).text).toContain("I keep no prices");
  });
});

describe("why, after the answer", () => {
  test("lays out what it rests on", () => {
    const { text, reply } = talk(
      "rear spoiler, rough inside, six screws, square tips, built june 1978, home market, no drain notches, WC in a ring",
      "why?",
    );
    expect(reply.summary.question).toBeNull();
    expect(text).toContain("Speaks for the First spoiler rather than");
  });
});

describe("before a part is named", () => {
  test.each([
    ["show the sources", "Tell me first which part it is"],
    ["what would fit without drilling?", "Tell me first which part it is"],
    ["where do I go from here?", "Tell me first which part it is"],
    ["what photographs should I ask for?", "Name the part"],
  ])("%s asks for it", (asked, said) => {
    expect(talk(asked).text).toContain(said);
  });
});

describe("cases without a fact", () => {
  test("are listed as such", () => {
    expect(talk("rear spoiler", "new case", "door mirror", "cases").text).toContain("nothing told yet");
  });
});

describe("compare, when little is known", () => {
  test("without a part asks for it", () => {
    expect(talk("compare").text).toContain("Name the part, and I lay its kinds side by side");
  });

  test("of a part that is not in hand offers its kinds", () => {
    const { text, reply } = talk("rear spoiler", "compare the mirrors");
    expect(text).toContain("Name the two that I shall compare");
    expect(reply.summary.part).toBe("rear-spoiler");
  });
});
