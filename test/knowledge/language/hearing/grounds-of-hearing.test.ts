// What hearing a state by learnt words says for and against its being told: against the other states of its sentence, and alone.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../../knowledge/handbook/schema.ts";
import type { Candidate } from "../../../../knowledge/language/gather-observations.ts";
import type { GroundName } from "../../../../knowledge/language/grounds.ts";
import { chromed, ground, seen } from "../../../support/seen-states.ts";
import { mirrorLexicon } from "../../../support/tarn-mirror.ts";

describe("how a state is heard by the words that were learnt of it", () => {
  const learnt: LearntWords = {
    messages: 3,
    words: ["glint", "curl", "ferret", "no+glint"],
    // glint 2, ferret -9
    telling: { bias: 1, weights: "0 200 2 -900" },
    tellingAtAll: { bias: 0.5, weights: "0 100" },
    spokenOf: {},
    parts: {
      mirror: {
        // glint 3.5
        housing: { chromed: { bias: -2, weights: "0 350" }, painted: { bias: -1, weights: "0 200" } },
        // curl 2.75
        stalk: { bent: { bias: -2, weights: "1 275" }, straight: { bias: -20, weights: "" } },
      },
    },
  };
  const lexicon = mirrorLexicon(learnt);
  const value = (name: GroundName, text: string, candidate: Candidate, about = "mirror") =>
    6 * ground(name, text, candidate, { lexicon, about });
  const alone = chromed(1, { finder: "heard" });

  test("its odds, those of the likeliest other state and of another feature, and what its sentence and message tell", () => {
    expect(seen("a glint or curl. Hello", chromed(1), { lexicon }).heard).toEqual({
      odds: 1.5,
      otherState: 1,
      otherFeature: 0.75,
      telling: 3,
      mostTelling: 3,
      tellingAtAll: 1.5,
    });
    expect(seen("a ferret. A glint", chromed(1), { lexicon }).heard).toEqual({
      odds: -2,
      otherState: -1,
      otherFeature: -2,
      telling: -8,
      mostTelling: 3,
      tellingAtAll: 1.5,
    });
    expect(seen("a ferret. A glint", chromed(3, { clause: 1 }), { lexicon }).heard).toMatchObject({
      odds: 1.5,
      telling: 3,
    });
  });
  test("nothing is less heard than six nats against it", () => {
    const straight = chromed(1, { feature: "stalk", state: "straight" });
    expect(seen("a glint", straight, { lexicon }).heard).toMatchObject({ odds: -6, otherState: -2 });
    const bent = chromed(1, { feature: "stalk", state: "bent" });
    expect(seen("a glint", bent, { lexicon }).heard).toMatchObject({ odds: -2, otherState: -6 });
  });
  test("of an unknown state, another part, a denial or beyond the message nothing is heard", () => {
    for (const other of [
      { state: "plastic" },
      { feature: "screws" },
      { part: "door-handle" },
      { isDenied: true },
      { clause: 7 },
    ])
      expect(seen("a glint", chromed(1, other), { lexicon }).heard).toBeUndefined();
    expect(seen("a glint", chromed(1, { part: null }), { lexicon }).heard).toMatchObject({ odds: 1.5 });
    expect(seen("a glint", chromed(1)).heard).toBeUndefined();
  });

  test.each<[GroundName, number]>([
    ["heard so", 1.5],
    ["heard surely", 1.5],
    ["unheard", 0],
    ["heard rather than another state", 0.5],
    ["heard rather than another feature", 0.75],
    ["sentence tells", 3],
    ["message tells", 3],
    ["message tells at all", 1.5],
  ])("%s: %d nats", (name, expected) => {
    expect(value(name, "a glint or curl. Hello", chromed(1))).toBeCloseTo(expected, 12);
    expect(ground(name, "a glint or curl. Hello", chromed(1))).toBe(0);
  });
  test.each<[GroundName, number]>([
    ["heard alone, message tells at all", 1.5],
    ["heard alone so", 1.5],
    ["heard alone surely", 1.5],
    ["heard alone, rather than another state", 0.5],
    ["heard alone, sentence tells", 3],
    ["heard alone, ungrounded", 6],
    ["heard alone, one word", 6],
  ])("%s: %d nats where nothing else found it", (name, expected) => {
    expect(value(name, "a glint or curl. Hello", alone)).toBeCloseTo(expected, 12);
    expect(value(name, "a glint or curl. Hello", chromed(1))).toBe(0);
    expect(ground(name, "a glint or curl. Hello", alone)).toBe(0);
  });
  test("what is heard at all odds is heard so far as six nats go", () => {
    const loud = { ...learnt, telling: { bias: 9, weights: "" }, tellingAtAll: { bias: -9, weights: "" } };
    const asked = { lexicon: mirrorLexicon(loud) };
    expect(ground("sentence tells", "a glint", chromed(1), asked)).toBe(1);
    expect(ground("message tells at all", "a glint", chromed(1), asked)).toBe(-1);
  });
  test("what is heard against it is not heard surely", () => {
    expect(value("heard so", "a ferret", chromed(1))).toBe(-2);
    for (const name of ["heard surely", "heard alone surely"] as const)
      expect(value(name, "a ferret", alone)).toBe(0);
    const straight = chromed(1, { feature: "stalk", state: "straight" });
    expect(value("unheard", "a ferret", straight)).toBe(6);
    expect(value("unheard", "a ferret", chromed(1))).toBe(0);
  });
  test("heard where it was asked, or another was", () => {
    expect(value("heard, asked about it", "a glint", chromed(1), "mirror housing")).toBe(1.5);
    expect(value("heard, asked about it", "a glint", chromed(1), "mirror stalk")).toBe(0);
    expect(value("heard alone, asked about it", "a glint", alone, "mirror housing")).toBe(6);
    expect(value("heard alone, asked about it", "a glint", alone, "mirror stalk")).toBe(0);
    expect(value("heard alone, asked about another", "a glint", alone, "mirror stalk")).toBe(6);
    expect(value("heard alone, asked about another", "a glint", alone, "mirror housing")).toBe(0);
    expect(value("heard alone, asked about another", "a glint", alone)).toBe(0);
  });
  test("heard in words that deny", () => {
    expect(value("heard, denied words", "glint always", chromed(0, { to: 1 }))).toBe(0);
    expect(value("heard, denied words", "glint never", chromed(0, { to: 1 }))).toBe(1.5);
    expect(value("heard, denied words", "glint never", chromed(0))).toBe(0);
  });
  test("heard alone beside the feature's name, beside other facts, in several words", () => {
    expect(value("heard alone, feature named", "housing glint", alone)).toBe(6);
    expect(value("heard alone, feature named", "a glint", alone)).toBe(0);
    expect(value("heard alone, ungrounded", "housing glint", alone)).toBe(0);
    expect(value("heard alone, one word", "a glint", { ...alone, from: 0 })).toBe(0);
    const facts = [0, 1, 2, 4, 9].map((others) =>
      ground("heard alone, other facts", "a glint", alone, { lexicon, others }),
    );
    expect(facts).toEqual([0, 0.25, 0.5, 1, 1]);
  });
});
