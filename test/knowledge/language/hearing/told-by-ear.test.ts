// Which of the states that a sentence sounds like are brought forward, and where: words that tell, and words that do not.
import { describe, expect, test } from "vitest";
import type { Ear, LearntWords } from "../../../../knowledge/handbook/schema.ts";
import { observeHeard } from "../../../../knowledge/language/hearing/heard-states.ts";
import type { Observation } from "../../../../knowledge/language/observations.ts";
import { silent } from "../../../support/tarn-lexicon.ts";
import { mirrorLexicon, mirrorView } from "../../../support/tarn-mirror.ts";

type Weights = Readonly<Record<string, number>>;

/** Words in the order in which they are first weighed, and the ears that weigh them: "housing chromed" against two nats. */
function learnt(heard: Readonly<Record<string, Weights>>, bias = -2): LearntWords {
  const words = [...new Set(Object.values(heard).flatMap((weights) => Object.keys(weights)))];
  const ear = (weights: Weights): Ear => {
    let last = 0;
    const written = words.flatMap((word, at) => {
      const weight = weights[word];
      if (weight === undefined) return [];
      const step = at - last;
      last = at;
      return [step, Math.round(100 * weight)];
    });
    return { bias, weights: written.join(" ") };
  };
  const parts: Record<string, Record<string, Record<string, Ear>>> = {};
  for (const [key, weights] of Object.entries(heard)) {
    const [feature = "", state = "", part = "mirror"] = key.split(" ");
    parts[part] = {
      ...parts[part],
      [feature]: { ...parts[part]?.[feature], [state]: ear(weights) },
    };
  }
  return { messages: 3, words, telling: silent, tellingAtAll: silent, spokenOf: {}, parts };
}

function heardIn(
  text: string,
  heard: Readonly<Record<string, Weights>>,
  { told = [], bias = -2 }: { readonly told?: readonly Observation[]; readonly bias?: number } = {},
): string {
  const found = observeHeard(mirrorView(text, "mirror", mirrorLexicon(learnt(heard, bias))), told);
  return found.map(({ state, clause, from, to }) => `${state} ${clause} ${from}-${to}`).join(", ");
}

const told = (feature: string, state: string, rest: Partial<Observation> = {}): Observation => ({
  part: "mirror",
  feature,
  state,
  isDenied: false,
  clause: 0,
  from: 0,
  to: 0,
  ...rest,
});

describe("a word tells", () => {
  test.each([
    ["it has a glint", "glint", 3, "chromed 0 3-3", "that is neither talk nor a name"],
    ["a magnet", "magnet", 1.3, "chromed 0 1-1", "that is talk and speaks with more than a nat"],
    ["a magnet", "magnet", 1.29, "", "not one that is talk and speaks with less"],
    ["a glint", "glint", 0.5, "chromed 0 1-1", "that is no talk, however little it speaks"],
    ["a glint never", "not", 5, "", "not one that denies, however loud"],
    ["the housing", "housing", 5, "", "not the name of a feature"],
    ["the door mirror", "mirror", 5, "", "nor of a part"],
    ["the housing glint", "housing", 5, "", "nor where nothing else speaks for it"],
    ["a stalk and a glint", "glint", 5, "chromed 1 4-4", "that stands beside such a name"],
    ["plastic", "plastic", 5, "chromed 0 0-0", "of the name of another state"],
    ["an early mirror", "early", 5, "chromed 0 1-1", "of the name of a version"],
    ["with seven of them", "seven", 5, "chromed 0 1-1", "that is a number"],
    ["with 7 of them", "seven", 5, "chromed 0 1-1", "in figures as well"],
    ["with 2.7 of them", "two", 5, "", "not as the first figures of another number"],
    ["with 2,7 of them", "two", 5, "", "nor before a comma"],
    ["with 2.7 of them", "seven", 5, "", "nor as the last"],
    ["with 2,7 of them", "seven", 5, "", "nor behind a comma"],
    ["with 12.5 of them", "twelve", 5, "", "nor of more figures"],
    ["with 7, 2 of them", "seven", 5, "chromed 0 1-1", "before a comma and a space"],
    ["with 7. 2 of them", "two", 5, "chromed 1 2-2", "behind a full stop and a space"],
    ["90 mm of it", "#_of", 5, "", "not where a size is told"],
  ])("%s (%s, %d nats): %s: one %s", (text, gram, weight, expected) => {
    expect(heardIn(text, { "housing chromed": { [gram]: weight } }, { bias: 0 })).toBe(expected);
  });
  test("with what speaks beside it, from the first such word to the last of its clause", () => {
    const ears = { "housing chromed": { glint: 2, magnet: 1, gleam: -4, shine: 3 } };
    expect(heardIn("a magnet on a glint, a shine", ears)).toBe("chromed 0 1-4");
    expect(heardIn("a glint, a shine on the magnet", ears)).toBe("chromed 1 3-6");
    expect(heardIn("a magnet", ears, { bias: 0 })).toBe("");
    expect(heardIn("a glint, a gleam", ears, { bias: 0 })).toBe("chromed 0 1-1");
  });
  test("of two clauses that speak alike the first has it", () => {
    expect(heardIn("a glint, a shine", { "housing chromed": { glint: 3, shine: 3 } })).toBe("chromed 0 1-1");
  });
  test("of two clauses the one whose words speak most together", () => {
    const ears = { "housing chromed": { glint: 3, shine: 2, gleam: 2 } };
    expect(heardIn("a glint, a shine and a gleam", ears)).toBe("chromed 0 1-1");
    expect(heardIn("a glint, a shine with gleam", ears)).toBe("chromed 1 3-5");
  });
});

describe("a state is brought forward", () => {
  test.each([
    [-3, "chromed 0 1-1"],
    [-3.01, ""],
  ])("at %d nats: %j", (odds, expected) => {
    expect(heardIn("a glint", { "housing chromed": { glint: 1 } }, { bias: odds - 1 })).toBe(expected);
  });
  test("the likeliest alone of each feature", () => {
    const ears = {
      "housing chromed": { glint: 2 },
      "housing painted": { glint: 3 },
      "stalk bent": { glint: 1 },
    };
    expect(heardIn("a glint", ears)).toBe("painted 0 1-1, bent 0 1-1");
  });
  test("six of one sentence at most", () => {
    const states = [
      "screws two",
      "stamp stamped",
      "housing chromed",
      "stalk bent",
      "lever flat door-handle",
      "button brass door-handle",
      "spring coil door-handle",
      "foundry-mark star door-handle",
    ];
    const ears = Object.fromEntries(states.map((key, at) => [key, { glint: 5 - at / 10 }]));
    expect(heardIn("A glint on the mirror, on the door handle", ears).split(", ")).toHaveLength(6);
    expect(heardIn("A glint on the mirror, on the door handle. A glint", ears).split(", ")).toHaveLength(8);
  });
  test("once in a message", () => {
    expect(heardIn("a glint. A glint", { "housing chromed": { glint: 3 } })).toBe("chromed 0 1-1");
  });
  test("of another part than is spoken of not at all", () => {
    expect(heardIn("a glint", { "lever flat door-handle": { glint: 3 } })).toBe("");
  });
});

describe("what was told of the same feature", () => {
  const housing = { "housing chromed": { glint: 3 } };
  const screws = { "screws two": { glint: 3 } };
  test("stands where it is the same state, in whatever sentence", () => {
    expect(heardIn("hello. A glint", housing, { told: [told("housing", "chromed")] })).toBe("");
    expect(heardIn("a glint", housing, { told: [told("housing", "chromed")] })).toBe("");
  });
  test("stands in the way of others in its sentence where it was denied", () => {
    const denied = told("housing", "painted", { isDenied: true });
    expect(heardIn("well, a glint", housing, { told: [denied] })).toBe("");
    expect(heardIn("well, a glint", housing, { told: [{ ...denied, clause: 1 }] })).toBe("");
    expect(heardIn("well. A glint", housing, { told: [denied] })).toBe("chromed 1 2-2");
    expect(heardIn("a glint. Well", housing, { told: [{ ...denied, clause: 1 }] })).toBe("chromed 0 1-1");
  });
  test("does not where it is another state and was not denied, unless the feature may be missing altogether", () => {
    expect(heardIn("a glint", housing, { told: [told("housing", "painted")] })).toBe("chromed 0 1-1");
    expect(heardIn("a glint", screws, { told: [told("screws", "three")] })).toBe("");
    expect(heardIn("well. A glint", screws, { told: [told("screws", "three")] })).toBe("two 1 2-2");
  });
  test("is nothing to other features", () => {
    const denied = told("stalk", "chromed", { isDenied: true, from: 7, to: 7 });
    expect(heardIn("a glint", housing, { told: [denied] })).toBe("chromed 0 1-1");
  });
});

describe("what the words of another state say is no news", () => {
  const ears = { "housing chromed": { foam: 6.5, glint: 3.5 } };
  const heard = (observation: Observation, weights: Readonly<Record<string, Weights>> = ears) =>
    heardIn("a foam with glint", weights, { told: [observation] });
  test("unless a good third of what speaks for a state is said of nothing else", () => {
    expect(heard(told("stalk", "bent", { from: 1, to: 1 }))).toBe("chromed 0 1-3");
    const less = { "housing chromed": { foam: 6.6, glint: 3.4 } };
    expect(heard(told("stalk", "bent", { from: 1, to: 1 }), less)).toBe("");
    expect(heard(told("stalk", "bent", { from: 2, to: 3 }), less)).toBe("chromed 0 1-3");
    expect(heard(told("stalk", "bent", { from: 0, to: 3 }))).toBe("");
    expect(heard(told("stalk", "bent", { from: 0, to: 0 }), less)).toBe("chromed 0 1-3");
  });
  test("the same feature's words are its own", () => {
    expect(heard(told("housing", "painted", { from: 0, to: 3 }))).toBe("chromed 0 1-3");
  });
});
