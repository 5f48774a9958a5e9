// A state as it stands in its message: its clause and its subject, the words beside it, and what of the message speaks of it.
import { describe, expect, test } from "vitest";
import type { Candidate } from "../../../knowledge/language/gather-observations.ts";
import type { GroundName } from "../../../knowledge/language/grounds.ts";
import { isUngrounded, placesFrom, wholeOf, wordAt } from "../../../knowledge/language/seen-candidate.ts";
import { chromed, ground, seen } from "../../support/seen-states.ts";
import { mirrorView } from "../../support/tarn-mirror.ts";

describe("a state in its clause", () => {
  test("the words beside it are those of its clause, thirty on either side at most", () => {
    expect(seen("Well, it is chromed here, yes", chromed(3, { clause: 1 })).beside).toEqual([1, 2, 4]);
    const long = `${"so ".repeat(40)}chromed${" so".repeat(40)}`;
    expect(seen(long, chromed(40)).beside).toEqual([...placesFrom(10, 39), ...placesFrom(41, 70)]);
    expect(seen(long, chromed(40, { from: 38 })).beside).toEqual([
      ...placesFrom(8, 37),
      ...placesFrom(41, 70),
    ]);
  });
  test("what is said are its words but for the smallest, from where its name begins", () => {
    expect(seen("it is painted in body colour", chromed(2, { state: "painted", to: 5 })).said).toEqual([
      2, 4, 5,
    ]);
    expect(seen("two big screws", chromed(0, { feature: "screws", state: "two", to: 2 })).said).toEqual([
      0, 1, 2,
    ]);
    const denied = chromed(1, { to: 2, isDenied: true });
    expect(seen("it isn't chromed", denied).said).toEqual([2]);
    expect(seen("it isn't shiny", denied).said).toEqual([1, 2]);
  });
  test("figures are everyday words", () => {
    expect(ground("everyday words", "it has 173", chromed(2))).toBe(1);
    expect(ground("everyday words", "it has ferrets", chromed(2))).toBe(0);
    expect(ground("everyday words", "it has ferrets 173", chromed(2, { to: 3 }))).toBe(0.5);
  });
  test("its name is the one that ends with it and means it", () => {
    const { spotted } = seen("no week stamp", chromed(0, { feature: "stamp", state: "unstamped", to: 2 }));
    expect(spotted).toMatchObject({ from: 0, to: 2 });
    expect(seen("it is chromed", chromed(1)).spotted).toBeUndefined();
    expect(seen("it is chromed", chromed(2, { feature: "screws" })).spotted).toBeUndefined();
    expect(seen("it is chromed", chromed(2, { part: "door-handle" })).spotted).toBeUndefined();
    expect(seen("it is chromed", chromed(2, { part: null })).spotted).toMatchObject({ from: 2 });
    expect(seen("the housing", chromed(1)).spotted).toBeUndefined();
    expect(seen("two screws of chromed", chromed(1)).spotted).toBeUndefined();
  });
  test("its verb is the first of the clause; -1 without one", () => {
    expect(seen("chromed, it was as it is", chromed(0)).verb).toBe(-1);
    expect(seen("chromed it was as it is", chromed(0)).verb).toBe(2);
    expect(seen("is it chromed", chromed(2))).toMatchObject({ verb: 0, subject: "pronoun" });
  });
  test("a verb at the head of its clause has no noun before it, whatever stands further back", () => {
    expect(seen("The kettle. Is chromed", chromed(3, { clause: 1 })).subject).toBe("pronoun");
    expect(seen("The kettle chromed", chromed(2)).subject).toBeUndefined();
    expect(seen("She and I, is chromed", chromed(4, { clause: 2 })).subject).toBe("pronoun");
  });
  test("foreign words are counted beside it, not within", () => {
    expect(seen("a ferret chromed weasel", chromed(2)).foreign).toBe(2);
    expect(seen("a ferret chromed weasel", chromed(1, { to: 3 })).foreign).toBe(0);
  });
});

describe("a short answer has the whole message for its clause", () => {
  const answer = (
    text: string,
    length: number,
    finder: Candidate["finder"] = "nod",
    about = "mirror housing",
  ) => seen(text, chromed(length, { to: length - 1, finder }), { about });
  test("all of its words stand beside it, in whatever clause", () => {
    const { clause, beside, said, spotted } = answer("well, yes, it is", 4);
    expect(clause).toEqual({
      from: 0,
      to: 3,
      join: "sentence",
      sentence: 0,
      isAsked: false,
      isDoubted: false,
      text: "",
    });
    expect({ beside, said, spotted }).toEqual({ beside: [0, 1, 2, 3], said: [], spotted: undefined });
  });
  test("its own feature's name in another clause is none of another", () => {
    const nod = chromed(3, { to: 2, finder: "nod" });
    expect(ground("another feature named", "well, the housing", nod)).toBe(0);
    expect(ground("another feature named", "well, the stalk", nod)).toBe(1);
    expect(ground("another feature named", "well, the kettle", nod)).toBe(0);
  });
  test("it asks when any of its clauses does", () => {
    expect(answer("yes. Is it?", 3).clause.isAsked).toBe(true);
    expect(answer("yes. It is.", 3).clause.isAsked).toBe(false);
  });
  test.each<[GroundName, Candidate["finder"]]>([
    ["answer by word", "word"],
    ["answer by nod", "nod"],
    ["answer by nearness", "nearness"],
    ["loose", "loose"],
    ["carried", "carried"],
    ["named feature", "named"],
    ["presence", "presence"],
    ["heard alone", "heard"],
  ])("the ground “%s” holds for what was found so, and for nothing else", (name, finder) => {
    expect(ground(name, "yes", chromed(0, { finder }))).toBe(1);
    expect(ground(name, "yes", chromed(0, { finder: finder === "nod" ? "word" : "nod" }))).toBe(0);
  });
  test("no word of it is everyday English, nor a figure", () => {
    for (const name of ["everyday words", "figures alone", "general word"] as const)
      expect(ground(name, "yes", chromed(1, { to: 0, finder: "nod" }))).toBe(0);
  });
});

describe("what of the message speaks of the feature", () => {
  test("its name outside of the state itself, in the clause and anywhere", () => {
    const place = (from: number, to: number, clause = 0) => {
      const { isNamed, isNamedHere } = seen("the housing is chromed, it is", chromed(from, { to, clause }));
      return [isNamed, isNamedHere];
    };
    expect(place(3, 3)).toEqual([true, true]);
    expect(place(1, 3)).toEqual([false, false]);
    expect(place(2, 3)).toEqual([true, true]);
    expect(place(0, 0)).toEqual([true, true]);
    expect(place(5, 5, 1)).toEqual([true, false]);
  });
  test("a feature that nobody names is not named, unless it was found by its name", () => {
    const named = (finder: Candidate["finder"]) => seen("it is chromed", chromed(2, { finder })).isNamed;
    expect((["name", "loose", "presence", "named", "heard"] as const).map(named)).toEqual([
      false,
      false,
      true,
      true,
      false,
    ]);
  });
  test("a word of this feature alone within the state names it", () => {
    const within = (
      text: string,
      feature: string,
      from: number,
      to: number,
      part: string | null = "mirror",
    ) => seen(text, chromed(from, { feature, state: "x", to, part })).isNamedWithin;
    expect(within("no week stamp", "stamp", 0, 2)).toBe(true);
    expect(within("no week stamp", "screws", 0, 2)).toBe(false);
    expect(within("stamp", "stamp", 0, 0)).toBe(false);
    expect(within("no week stamp", "stamp", 0, 2, null)).toBe(false);
    expect(within("no big ferret", "stamp", 0, 2)).toBe(false);
  });
  test("another state of it by its name, outside of this one", () => {
    const spoken = (part: string | null, from = 0, feature = "housing") =>
      seen("chromed not plastic housing", chromed(from, { part, feature })).isSpokenOf;
    expect([spoken("mirror"), spoken(null), spoken("door-handle")]).toEqual([true, true, false]);
    expect(spoken("mirror", 0, "screws")).toBe(false);
    expect(seen("it is chromed", chromed(2)).isSpokenOf).toBe(false);
    expect(seen("the housing", chromed(0)).isSpokenOf).toBe(false);
  });
  test("its part by name", () => {
    const named = (part: string | null) =>
      seen("my door mirror is chromed", chromed(4, { part })).isPartNamed;
    expect([named("mirror"), named("door-handle"), named(null)]).toEqual([true, false, false]);
  });
  test("any one of these is ground enough", () => {
    expect(isUngrounded(seen("it is chromed", chromed(2)))).toBe(true);
    expect(isUngrounded(seen("it is chromed", chromed(2), { about: "mirror housing" }))).toBe(false);
    expect(isUngrounded(seen("my door mirror, chromed", chromed(3)))).toBe(false);
    expect(isUngrounded(seen("the housing is chromed", chromed(3)))).toBe(false);
    expect(isUngrounded(seen("chromed not plastic housing", chromed(0)))).toBe(false);
    expect(isUngrounded(seen("no week stamp", chromed(0, { feature: "stamp", to: 2 })))).toBe(false);
  });
});

describe("what a message offers to all its states", () => {
  const whole = (text: string, candidates: readonly Candidate[] = [], others = 0, about = "mirror") =>
    wholeOf(mirrorView(text, about), candidates, others);
  test("the shares of the kinds of words come to one; of no words there are none", () => {
    expect(whole("the ferret is chromed two gasket").share).toEqual({
      own: 1 / 6,
      prose: 1 / 6,
      talk: 2 / 6,
      figure: 1 / 6,
      foreign: 1 / 6,
    });
    expect(whole("").share).toEqual({ own: 0, prose: 0, talk: 0, figure: 0, foreign: 0 });
  });
  test("the features told, each once, and those told otherwise", () => {
    const both = [chromed(0), chromed(1, { state: "painted" }), chromed(2, { feature: "screws" })];
    expect(whole("chromed", both).told).toBe(2);
    expect(whole("chromed", both, 2).told).toBe(4);
  });
  test("the parts named", () => {
    expect(whole("The door mirror and the door handle", [], 0, "").partsNamed).toEqual(
      new Set(["mirror", "door-handle"]),
    );
    expect(whole("hello there, two screws").partsNamed).toEqual(new Set());
  });
  test("the sentences that ask, but for mere doubt", () => {
    expect(whole("It is. Is it? Mine?? So, is it, or what?").asked).toEqual(new Set([1, 3]));
  });
  test("the states named, by their features", () => {
    const { statesNamed } = whole("the housing chromed, no screws, plastic housing, two screws");
    expect(
      [...statesNamed].map(([feature, spotted]) => [feature, ...spotted.map(({ from }) => from)]),
    ).toEqual([
      ["housing", 2, 5],
      ["screws", 3, 7],
      ["stalk", 5],
    ]);
  });
  test("things of another kind, a dozen at most, that are more than talk", () => {
    expect(whole("the kettle, the glasses and a boat").things).toEqual([1, 6]);
    expect(whole("kettle ".repeat(20)).things).toEqual(placesFrom(0, 11));
    expect(whole("two stalks").things).toEqual([]);
  });
});

test("words and places beyond the ends are none", () => {
  const view = mirrorView("It is chromed");
  expect([-1, 0, 2, 3].map((at) => wordAt(view, at))).toEqual(["", "it", "chromed", ""]);
  expect([placesFrom(2, 4), placesFrom(2, 2), placesFrom(2, 1), placesFrom(5, 1)]).toEqual([
    [2, 3, 4],
    [2],
    [],
    [],
  ]);
});
