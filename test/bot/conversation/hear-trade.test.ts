// Questions of general trade knowledge: they come before what their figures would mean for a part, and a described part
// comes before them.
import { describe, expect, test } from "vitest";
import { blocksOf, talk, talkOn } from "../../support/talking.ts";

describe("a question of general trade knowledge", () => {
  test.each([
    ["it weighs 1412 g dry and 620 g in water at 18 C, what is it made of", "Density"],
    ["how do i tell 5x120 from 5x120.65", "Bolt circle"],
    ["tyre says DOT XYZ 318, how old is it", "Tyre date"],
    ["how old is glass with dots ..7", "Glass date"],
    ["what is the difference between AS1 and AS2", "Glass mark"],
    ["whats the colour code for lucas wiring brown", "Wiring"],
  ])("%s is answered as one and opens no case of a part nobody named", (asked, topic) => {
    const { reply, text } = talk(asked);
    expect(text).toContain(topic);
    expect(reply.summary.part).toBeNull();
    expect(reply.summary.understood).toEqual([]);
    expect(blocksOf(reply, "question")).toEqual([]);
  });

  test("is answered while the part is still asked for", () => {
    const { text, reply } = talk("hello", "tyre says DOT XYZ 318, how old is it");
    expect(text).toContain("Tyre date");
    expect(reply.summary.question?.feature).toBe("part");
  });

  test("leaves the case in hand and its open question as they were", () => {
    const before = talk("rear spoiler, rough inside, four studs");
    const after = talkOn(before.conversation, "how do i tell 5x120 from 5x120.65");
    expect(after.conversation).toEqual(before.conversation);
    expect(after.text).toContain("0.38 mm");
    expect(after.text).not.toContain("side by side");
  });

  test("about a vehicle number ends without asking for a part", () => {
    const { reply, text } = talk("my vin is WBA12345678901234 what does it say");
    expect(text).toContain("Vehicle number");
    expect(blocksOf(reply, "question")).toEqual([]);
    expect(blocksOf(reply, "understood")[0]?.items.map((item) => item.label)).toEqual(["chassis number"]);
  });

  test("with a size told of the part in hand keeps the size", () => {
    const { text, reply } = talk(
      "rear spoiler",
      "it weighs 1412 g dry and 620 g in water, what is it made of",
    );
    expect(text).toContain("Density");
    expect(reply.summary.understood.map(({ feature }) => feature)).toEqual(["mass"]);
  });

  test("does not take a description of the part for itself", () => {
    const { text, reply } = talk("rear spoiler, it says >PUR< inside, six screws, is it genuine?");
    expect(text).not.toContain("Material mark");
    expect(reply.summary.understood.map(({ feature }) => feature).toSorted()).toEqual(["fixing", "flex"]);
  });
});

describe("a figure alone", () => {
  test("opens no case, and counts once the part is named", () => {
    const { conversation, reply } = talk("it weighs 1.2 kg");
    expect(reply.summary.part).toBeNull();
    const named = talkOn(conversation, "rear spoiler");
    expect(named.reply.summary.understood.map(({ feature }) => feature)).toEqual(["mass"]);
  });

  test("that no question asked for is met with the sizes that are known of the part", () => {
    expect(talk("front wing, rough inside, narrow flange", "1104").text).toContain(
      "say what you measured: length along the top edge, thickness at the arch lip or mass of the bare wing",
    );
  });

  test("of a kind that the part has no size of is said to be so", () => {
    expect(talk("road wheel", "it weighs 6.2 kg").text).toContain(
      "no size of this part that “6.2 kg” could be",
    );
  });

  test("that cannot be the part's one such size is said to be so", () => {
    expect(talk("rear spoiler", "1180 kg").text).toContain("does not look like the mass of the bare spoiler");
  });
});

describe("a question by its time", () => {
  test("about a rule is one of trade knowledge, whatever part is in hand", () => {
    const { reply } = talk("door mirror", "when was the 43R mark introduced?");
    expect(reply.summary.understood).toEqual([]);
    expect(reply.summary.part).toBe("door-mirror");
  });
});
