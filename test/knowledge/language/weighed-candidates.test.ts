// How likely a state is the speaker's word on the part, given what each ground weighs: the weights here are the test's own.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import { type Candidate, gatherObservations } from "../../../knowledge/language/gather-observations.ts";
import type { Judging } from "../../../knowledge/language/judging.ts";
import { wholeOf } from "../../../knowledge/language/seen-candidate.ts";
import { oddsBy, shareOf, weighCandidates } from "../../../knowledge/language/weighed-candidates.ts";
import { silent } from "../../support/tarn-lexicon.ts";
import { mirrorLexicon, mirrorView } from "../../support/tarn-mirror.ts";
import { judgedBy, weighing } from "../../support/weighing.ts";

const plain = mirrorLexicon();
/** "Glint" speaks for chromed; words were learnt of the states of the housing alone. */
const learnt: LearntWords = {
  messages: 3,
  words: ["glint"],
  telling: silent,
  tellingAtAll: silent,
  spokenOf: {},
  parts: { mirror: { housing: { chromed: { bias: -2, weights: "0 500" }, painted: silent } } },
};
const heard = mirrorLexicon(learnt);

function weigh(text: string, judging: Partial<Judging>, { about = "mirror", lexicon = plain } = {}) {
  const view = mirrorView(text, about, judgedBy(lexicon, judging));
  const { candidates } = gatherObservations(view);
  return weighCandidates(view, candidates, wholeOf(view, candidates, 0));
}

describe("the odds of a state are the bias and the weights of the grounds that hold", () => {
  const table = weighing(-1, { "asked about it": 2.5, "two words": -0.5, "own share of message": 3 });
  test("a ground that holds adds its weight, one that holds in part adds its part", () => {
    const [asked] = weigh("It is chromed", { plain: table }, { about: "mirror housing" });
    expect(asked?.unheard).toBeCloseTo(-1 + 2.5 + 1, 12);
    expect(asked?.probability).toBeCloseTo(1 / (1 + Math.exp(-2.5)), 12);
    const [counted] = weigh("It has two screws", { plain: table });
    expect(counted?.unheard).toBeCloseTo(-1 - 0.5 + 0.75, 12);
  });
  test("a weight that is missing weighs nothing, and no odds are even", () => {
    expect(oddsBy({ bias: 0.5, weights: [2] }, [1, 1])).toBe(2.5);
    expect(oddsBy({ bias: 0.5, weights: [2, -4] }, [1, 0.5])).toBe(0.5);
    expect(shareOf(0)).toBe(0.5);
    expect(shareOf(Math.log(3))).toBeCloseTo(0.75, 12);
  });
  test("of what others say, or what is asked outright, nothing is weighed", () => {
    expect(weigh("The seller says it is chromed", { plain: weighing(9) })).toMatchObject([
      { probability: 0, isHeard: false, unheard: -6, isPlain: false, state: "chromed" },
    ]);
    expect(weigh("But mine is chromed", { plain: weighing(1) })).toMatchObject([{ unheard: 1 }]);
  });
  test("an answer of the whole of a message without words is weighed all the same", () => {
    const view = mirrorView("", "mirror housing", judgedBy(plain, { plain: weighing(1) }));
    const answer: Candidate = {
      part: "mirror",
      feature: "housing",
      state: "chromed",
      isDenied: false,
      clause: 0,
      from: 0,
      to: -1,
      finder: "nod",
    };
    expect(weighCandidates(view, [answer], wholeOf(view, [answer], 0))).toMatchObject([{ unheard: 1 }]);
  });
  test("no more than two hundred are weighed", () => {
    const view = mirrorView("It is chromed", "mirror", judgedBy(plain));
    const { candidates } = gatherObservations(view);
    const many = Array.from({ length: 250 }, () => candidates[0] as Candidate);
    expect(weighCandidates(view, many, wholeOf(view, many, 0))).toHaveLength(200);
  });
});

describe("where words of a state were learnt, another table holds", () => {
  const probability = (bias: number, byEar: number, text: string) =>
    weigh(text, { plain: weighing(bias), heard: weighing(byEar) }, { lexicon: heard })[0]?.probability;
  test("by it the state is weighed, and the other table is only noted", () => {
    const [chromed, two] = weigh(
      "Chromed with two screws",
      { plain: weighing(1), heard: weighing(-1) },
      { lexicon: heard },
    );
    expect(chromed).toMatchObject({ isHeard: true, unheard: 1, probability: shareOf(-1) });
    expect(two).toMatchObject({ isHeard: false, unheard: 1, probability: shareOf(1) });
  });
  test("said plainly, the better of both holds, unless it is hardly heard", () => {
    expect(probability(1.5, -2.5, "It is chromed")).toBe(shareOf(1.5));
    expect(probability(1.49, -2.5, "It is chromed")).toBe(shareOf(-2.5));
    expect(probability(1.5, -2.51, "It is chromed")).toBe(shareOf(-2.51));
    expect(probability(1.5, 4, "It is chromed")).toBe(shareOf(4));
  });
  test("what only hearing found is never said plainly", () => {
    expect(probability(2, -1, "Such a glint to it")).toBe(shareOf(-1));
  });
});

describe("a state is said plainly", () => {
  const isPlain = (text: string, state: string, about = "mirror") =>
    weigh(text, {}, { about }).find((each) => each.state === state)?.isPlain;
  const long = "and so on and so on and so on and so on and so on and so on";
  test.each([
    ["It is chromed", "chromed", true, "in a few words"],
    ["It is here and it is there and it is all of it, chromed", "chromed", true, "in fourteen"],
    ["It is here and it is there and it is all of it, oh, chromed", "chromed", false, "in fifteen"],
    ["The spoiler is big and chromed", "chromed", true, "with one foreign word in six"],
    ["The spoiler is as chromed", "chromed", true, "with one in five"],
    ["The spoiler is chromed", "chromed", false, "with one in four"],
    ["What have I got with two screws?", "two", true, "where one asks what has it"],
    ["Which mirror is it if the housing is chromed", "chromed", false, "not in a question"],
    [`The mirror: chromed. ${long}`, "chromed", true, "in however many, alone in its clause"],
    [`The mirror, it is chromed. ${long}`, "chromed", true, "beside nothing but talk"],
    [`The mirror, plastic the stalk it is. ${long}`, "moulded", true, "with a small word within"],
    [`The mirror, chromed housing. ${long}`, "chromed", false, "not beside another word of its own"],
    [`The mirror, the housing chromed. ${long}`, "chromed", false, "nor behind one"],
    [`The gasket chromed, the mirror. ${long}`, "chromed", false, "nor behind one of its prose"],
    [`The stalk. Chromed. The mirror. ${long}`, "chromed", true, "whatever other clauses say"],
    [`Chromed, all of it. ${long}`, "chromed", false, "not where the part is not named"],
    [`The mirror, the stalk bent. ${long}`, "bent", true, "by a name of several words"],
    [`The mirror, it has screws. ${long}`, "none", false, "by a whole name alone"],
  ])("%s (%s): %s, %s", (text, state, expected) => {
    expect(isPlain(text, state)).toBe(expected);
  });
  test("and not below one and a half nats", () => {
    expect(weigh("It is chromed", { plain: weighing(1.5) })[0]?.isPlain).toBe(true);
    expect(weigh("It is chromed", { plain: weighing(1.49) })[0]?.isPlain).toBe(false);
  });
});

describe("who leaves it open between two states tells each as surely as the surer", () => {
  const table = weighing(-1, { "two words": 2, "three words": 1, denied: 0.5 });
  const odds = (text: string, about = "mirror") =>
    weigh(text, { plain: table }, { about }).map(
      ({ state, probability }) => `${state} ${Math.log(probability / (1 - probability)).toFixed(1)}`,
    );
  test.each([
    ["chromed or painted in body colour", "chromed 0.0, painted 0.0"],
    ["painted in body colour or chromed", "painted 0.0, chromed 0.0"],
    ["chromed not painted in body colour", "chromed -1.0, painted 0.5"],
    ["chromed, or painted in body colour", "chromed -1.0, painted 0.0"],
    ["chromed and painted in body colour", "chromed -1.0, painted 0.0"],
    ["or chromed with it painted in body colour", "chromed -1.0, painted 0.0"],
    ["chromed with it painted in body colour or so", "chromed -1.0, painted 0.0"],
    ["chromed or two screws", "chromed -1.0, two 1.0"],
    ["chromed or chromed", "chromed -1.0, chromed -1.0"],
    ["not chromed or painted in body colour", "chromed -0.5, painted 0.5"],
  ])("%s: %s", (text, expected) => {
    expect(odds(text).join(", ")).toBe(expected);
  });
});
