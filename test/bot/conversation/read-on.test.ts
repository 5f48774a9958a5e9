// Words that go on from what was told before.
import { describe, expect, test } from "vitest";
import { talk } from "../../support/talking.ts";

const reading = (said: ReturnType<typeof talk>) =>
  said.reply.summary.understood.map((fact) => `${fact.feature} ${fact.reading}`);

describe("a size that was told", () => {
  test("is put right by another figure with a word of correction", () => {
    expect(reading(talk("rear spoiler, width 46 inches", "no sorry 47 inches"))).toEqual(["width 47 in"]);
  });

  test("keeps its unit when only the figure is put right", () => {
    expect(reading(talk("rear spoiler, width 1180 mm", "no 1181"))).toEqual(["width 1181 mm"]);
  });

  test("is said once more without harm", () => {
    expect(reading(talk("rear spoiler, width 1180 mm", "yes 1180 mm"))).toEqual(["width 1180 mm"]);
  });

  test("gets its unit from a unit alone", () => {
    expect(reading(talk("rear spoiler is 420 wide", "mm"))).toEqual(["width 420 mm"]);
  });

  test("is not changed by a unit alone when it has one", () => {
    expect(reading(talk("rear spoiler, width 1180 mm", "cm"))).toEqual(["width 1180 mm"]);
  });

  test("is said again in full where its unit is asked for", () => {
    expect(reading(talk("rear spoiler, width 118", "118 cm"))).toEqual(["width 118 cm"]);
  });

  test("of one person is not put right by another", () => {
    const said = talk("rear spoiler, width 46 inches", { from: "dora", text: "no sorry 47 inches" });
    expect(reading(said)).toEqual(["width 46 in"]);
  });

  test("stays when a correction names a figure that it cannot be", () => {
    expect(reading(talk("rear spoiler, width 46 inches", "no sorry, 3 kg"))).toEqual(
      expect.arrayContaining(["width 46 in"]),
    );
  });

  test("stays when yes, no or undo is said", () => {
    expect(reading(talk("rear spoiler, width 118", "yes"))).toEqual(["width 118 cm"]);
    expect(reading(talk("rear spoiler, width 118", "no"))).toEqual([]);
  });
});

describe("a state that was told", () => {
  const states = (said: ReturnType<typeof talk>) =>
    said.reply.summary.understood.map(({ feature, state }) => `${feature} ${state}`);

  test.each(["no its rough", "sorry, rough", "actually rough"])(
    "is put right by %s, whatever is asked meanwhile",
    (said) => {
      expect(states(talk("rear spoiler, smooth inside", said))).toEqual(["inside-finish rough"]);
    },
  );

  test("stays when nothing is put in its place", () => {
    expect(states(talk("rear spoiler, two drain notches", "no"))).toEqual(["drain-notches notches"]);
    expect(states(talk("rear spoiler, two drain notches", "sorry, no idea"))).toEqual([
      "drain-notches notches",
    ]);
  });
});
