// Where the names of a handbook stand in what somebody typed: which words belong together, how far apart they may be, what parts them, which slips
// of the hand are forgiven, and which of several names that overlap is meant. The names are written here; no handbook is needed.
import { describe, expect, test } from "vitest";
import type { Lexicon } from "../../../knowledge/language/lexicon.ts";
import type { Meaning, Phrase } from "../../../knowledge/language/meaning.ts";
import { findPhrase, withSharedNouns } from "../../../knowledge/language/shared-nouns.ts";
import { isPreposition, joinSplit, splitJoined } from "../../../knowledge/language/split-words.ts";
import { findPhrases, longestFirst, type Spotted } from "../../../knowledge/language/spot-terms.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import {
  allowedEdits,
  compileVocabulary,
  findWords,
  lookUpOnce,
} from "../../../knowledge/language/vocabulary.ts";
import { wordings } from "../../support/wordings.ts";

const state = (feature: string): Meaning => ({ kind: "state", part: "mirror", feature, state: "one" });
const part: Meaning = { kind: "part", part: "mirror" };
const variant: Meaning = { kind: "variant", part: "mirror", variant: "early" };

function phrase(words: string, meanings: readonly Meaning[], rest: Partial<Phrase> = {}): Phrase {
  const stems = words.split(" ");
  return { stems, meanings, isSaying: false, isGeneral: false, isOrdered: false, ...rest };
}

/** Each phrase is looked up under its last word. */
function lexiconOf(phrases: readonly Phrase[]): Lexicon {
  const phrasesByWord = new Map<string, Phrase[]>();
  for (const each of phrases) {
    const last = each.stems.at(-1) ?? "";
    phrasesByWord.set(last, [...(phrasesByWord.get(last) ?? []), each]);
  }
  const words = phrases.flatMap(({ stems }) => stems);
  return { phrasesByWord, vocabulary: compileVocabulary(words, words) } as unknown as Lexicon;
}

const names = lexiconOf([
  phrase("door mirror", [part]),
  phrase("three screw", [state("screws")]),
  phrase("raised numeral r", [state("mark")]),
  phrase("steel steel", [state("joint")]),
  phrase("narrow flange", [variant], { isOrdered: true }),
  phrase("hairy", [state("inside")]),
  phrase("bonded", [state("glass")], { literal: ["bonded", "on"] }),
  phrase("seized", [state("joint")], { literal: ["half", "seized"] }),
  phrase("fluted rubber gasket", [state("seal")], { isSaying: true }),
  phrase("corrugated washer", [state("washer")]),
  phrase("q", [state("mark")]),
  phrase("snap", [state("cap")]),
  phrase("windscreen clip", [state("clip")]),
  phrase("hollow", [state("back")]),
  phrase("tapeted", [state("bush")]),
  phrase("tapered bush", [state("bush")]),
  phrase("grain grained", [state("leather")]),
  phrase("grained", [state("leather")]),
  phrase("grained bush", [state("bush")]),
  phrase("gearlever", [state("lever")]),
  phrase("gear lever", [part]),
  phrase("round edge", [state("edge")]),
  phrase("oval lamp", [part, variant]),
  phrase("no drain notch", [state("notches")], { isOrdered: true }),
]);

const inWords = ({ phrase: { stems }, from, to, edits }: Spotted): string =>
  `${stems.join(" ")} ${from}-${to}${edits === 0 ? "" : ` (${edits})`}`;
const found = (text: string, taken: readonly number[] = []): readonly string[] =>
  findPhrases(tokenise(text), names, new Set(taken), lookUpOnce(names.vocabulary)).map(inWords);

describe("the words of a name", () => {
  test.each([
    ["three screws", ["three screw 0-1"]],
    ["it has 3 screws", ["three screw 2-3"]],
    ["three of the screws", ["three screw 0-3"]],
    ["screws: three", []],
    ["screws three", ["three screw 0-1"]],
    ["three shiny screws", ["three screw 0-2"]],
    ["three long shiny screws", []],
    ["screws shiny three", []],
    ["three, screws", []],
    ["three. screws", []],
    ["three not screws", []],
    ["three shiny and screws", []],
    ["three two screws", []],
    ["three", []],
    ["screws", []],
    ["screws three screws", ["three screw 0-1", "three screw 1-2"]],
    ["door mirror", ["door mirror 0-1"]],
    ["door of the mirror", ["door mirror 0-3"]],
    ["door left mirror", []],
    ["raised numeral R", ["raised numeral r 0-2"]],
    ["numeral R raised", ["raised numeral r 0-2"]],
    ["R numeral so crudely raised", ["raised numeral r 0-4"]],
    ["raised crudely numeral R", ["raised numeral r 0-3"]],
    ["raised crudely done numeral R", []],
    ["raised crudely numeral faint R", []],
    ["steel on steel", ["steel steel 0-2", "steel steel 0-2"]],
    ["steel", []],
    ["narrow flange", ["narrow flange 0-1"]],
    ["narrow old flange", ["narrow flange 0-2"]],
    ["flange narrow", []],
    ["narrowflange", ["narrow flange 0-0"]],
    ["three and screws", ["three screw 0-2"]],
    ["oval old lamp", ["oval lamp 0-2"]],
    ["it is the round edge", ["round edge 3-4"]],
    ["round the edge", []],
    ["gearlever", ["gearlever 0-0"]],
    ["gear lever", ["gearlever 0-1", "gear lever 0-1"]],
  ])("%s: %j", (text, expected) => {
    expect(found(text)).toEqual(expected);
  });
  test("that were read as a figure or a date are no part of a name", () => {
    expect(found("three screws", [0])).toEqual([]);
    expect(found("three screws", [1])).toEqual([]);
    expect(found("three screws", [2])).toEqual(["three screw 0-1"]);
  });
  test.each([
    ["bonded on", ["bonded 0-0"]],
    ["bonded", []],
    ["bonded to it", []],
    ["on bonded", []],
    ["half seized", ["seized 1-1"]],
    ["seized half", []],
    ["seized", []],
  ])("of a name that is one word with its small words must stand as written: %s", (text, expected) => {
    expect(found(text)).toEqual(expected);
  });
});

test("of a denial are over where the speaker starts anew", () => {
  const over = "no clock {it has,its,I,they have,theyre,theres} drain notches\nno drain clock it has notches";
  expect(wordings(over).filter((text) => found(text).length > 0)).toEqual([]);
  const one = "no {,visible ,big old }drain notches\nno drain plugs in the notches";
  expect(wordings(one).filter((text) => found(text).length !== 1)).toEqual(["no big old drain notches"]);
  expect(found("raised crudely its numeral R")).toEqual(["raised numeral r 0-4"]);
});

describe("a slip of the hand", () => {
  test.each([
    ["hairry", ["hairy 0-0 (1)"]],
    ["hairt", ["hairy 0-0 (1)"]],
    ["hary", []],
    ["bondad on", ["bonded 0-0 (1)"]],
    ["grain", []],
    ["grained", ["grained 0-0"]],
    ["grain bush", ["grained bush 0-1 (1)"]],
    ["three scews", ["three screw 0-1 (1)"]],
    ["corugated washer", ["corrugated washer 0-1 (1)"]],
    ["corugeted washer", ["corrugated washer 0-1 (2)"]],
    ["corugeted wahser", []],
    ["fluted rubber gasket", ["fluted rubber gasket 0-2"]],
    ["fluted rubbr gasket", []],
    ["the Q", ["q 1-1"]],
    ["the q", []],
    ["a Q", []],
    ["Q", []],
    ["snap", ["snap 0-0"]],
    ["soap", []],
    ["snpa", []],
    ["tapered", []],
    ["tapeded bush", ["tapered bush 0-1 (1)"]],
    ["tapeded", []],
    ["raised crudely numral R", ["raised numeral r 0-3 (1)"]],
    ["R numral so crudely raised", []],
    ["R numral raised", ["raised numeral r 0-2 (1)"]],
    ["wind screen clip", ["windscreen clip 0-2"]],
    ["wind, screen clip", []],
    ["doormirror", ["door mirror 0-0"]],
    ["doormirrors", ["door mirror 0-0"]],
    ["steelsteel", ["steel steel 0-0", "steel steel 0-0"]],
    ["hollowed", ["hollow 0-0 (1)"]],
    ["hollows", ["hollow 0-0"]],
  ])("%s: %j", (text, expected) => {
    expect(found(text)).toEqual(expected);
  });
});

describe("of names that overlap", () => {
  const spotted = (name: Phrase, used: readonly number[], edits = 0): Spotted => ({
    phrase: name,
    from: Math.min(...used),
    to: Math.max(...used),
    used,
    edits,
  });
  const two = (feature: string): Phrase => phrase("black plastic", [state(feature)]);
  const one = (feature: string): Phrase => phrase("plastic", [state(feature)]);
  const kept = (...all: readonly Spotted[]): readonly string[] => longestFirst(all).map(inWords);

  test("the longest is meant, wherever it was found", () => {
    const [long, short] = [spotted(two("finish"), [0, 1]), spotted(phrase("black", [state("colour")]), [0])];
    expect(kept(long, short)).toEqual(["black plastic 0-1"]);
    expect(kept(short, long)).toEqual(["black plastic 0-1"]);
  });
  test("the one typed rightly is meant, then the one whose words stand closer, then the first", () => {
    const [wrong, right] = [spotted(two("finish"), [0, 1], 1), spotted(two("housing"), [1, 2])];
    expect(kept(wrong, right)).toEqual(["black plastic 1-2"]);
    const [apart, together] = [spotted(two("finish"), [0, 2]), spotted(two("housing"), [2, 3])];
    expect(kept(apart, together)).toEqual(["black plastic 2-3"]);
    const [first, second] = [spotted(two("finish"), [1, 2]), spotted(two("housing"), [2, 3])];
    expect(kept(second, first)).toEqual(["black plastic 2-3"]);
  });
  test("those that do not overlap are all meant, in the order of their places", () => {
    expect(
      kept(spotted(two("finish"), [3, 4]), spotted(one("housing"), [1]), spotted(one("rim"), [0])),
    ).toEqual(["plastic 0-0", "plastic 1-1", "black plastic 3-4"]);
    expect(
      kept(spotted(two("finish"), [0, 3]), spotted(two("rim"), [0, 1]), spotted(one("housing"), [2])),
    ).toEqual(["black plastic 0-1", "plastic 2-2"]);
  });
  test("the last word of a state tells a state of another feature as well", () => {
    const holder = spotted(two("finish"), [0, 1]);
    expect(kept(holder, spotted(one("housing"), [1]))).toEqual(["black plastic 0-1", "plastic 1-1"]);
    expect(kept(holder, spotted(one("finish"), [1]))).toEqual(["black plastic 0-1"]);
    expect(kept(holder, spotted(one("housing"), [0]))).toEqual(["black plastic 0-1"]);
    expect(kept(holder, spotted(phrase("plastic", [part]), [1]))).toEqual(["black plastic 0-1"]);
    expect(kept(holder, spotted(phrase("plastic", [state("housing")], { isGeneral: true }), [1]))).toEqual([
      "black plastic 0-1",
    ]);
    expect(kept(holder, spotted(phrase("plastic", [state("housing"), state("finish")]), [1]))).toEqual([
      "black plastic 0-1",
    ]);
    expect(kept(holder, spotted(two("housing"), [1, 2]))).toEqual(["black plastic 0-1"]);
    expect(kept(spotted(two("finish"), [0, 2]), spotted(one("housing"), [2]))).toEqual(["black plastic 0-2"]);
    expect(kept(spotted(phrase("black plastic", [part]), [3, 4]), spotted(one("housing"), [4]))).toEqual([
      "black plastic 3-4",
      "plastic 4-4",
    ]);
    const alsoNamed = phrase("plastic", [
      state("housing"),
      { kind: "feature", part: "mirror", feature: "shell" },
    ]);
    expect(kept(holder, spotted(alsoNamed, [1]))).toEqual(["black plastic 0-1", "plastic 1-1"]);
  });
  test("a variant's words stay free for states and for nothing else", () => {
    const holder = spotted(phrase("black plastic wing", [part, variant]), [0, 1, 2]);
    expect(kept(holder, spotted(two("housing"), [0, 1]))).toEqual([
      "black plastic 0-1",
      "black plastic wing 0-2",
    ]);
    expect(kept(holder, spotted(phrase("wing", [part]), [2]))).toEqual(["black plastic wing 0-2"]);
    expect(kept(spotted(phrase("black plastic", [part]), [0, 1]), spotted(one("housing"), [0]))).toEqual([
      "black plastic 0-1",
    ]);
  });
});

describe("a noun that stands once for two", () => {
  const screws = lexiconOf([
    phrase("two screw", [state("screws")]),
    phrase("three screw", [state("screws")]),
    phrase("screw first", [variant]),
    phrase("screw fifth", [variant], { isOrdered: true }),
    phrase("second screw", [variant]),
    phrase("black", [state("colour")]),
    phrase("chrome black", [state("colour")]),
  ]);
  const shared = (text: string): readonly string[] => {
    const tokens = tokenise(text);
    return withSharedNouns(
      longestFirst(findPhrases(tokens, screws, new Set(), lookUpOnce(screws.vocabulary))),
      tokens,
      screws,
    ).map(inWords);
  };
  test.each([
    ["two or three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two and three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two versus three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two vs the three screws", ["two screw 0-0", "three screw 3-4"]],
    ["two nor three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two to three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two from three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two than three screws", ["two screw 0-0", "three screw 2-3"]],
    ["two of the or three screws", ["two screw 0-0", "three screw 4-5"]],
    ["two it is the or three screws", ["three screw 5-6"]],
    ["two or with all the three screws", ["three screw 5-6"]],
    ["the first and second screw", ["screw first 1-1", "second screw 3-4"]],
    ["two long three screws", ["three screw 2-3"]],
    ["screw first or second screw", ["screw first 0-1", "second screw 3-4"]],
    ["the screw fifth or second screw", ["screw fifth 1-2", "second screw 4-5"]],
    ["the fifth or second screw", ["screw fifth 1-1", "second screw 3-4"]],
    ["two three screws", ["three screw 1-2"]],
    ["four or three screws", ["three screw 2-3"]],
    ["or three screws", ["three screw 1-2"]],
    ["two screws or three screws", ["two screw 0-1", "three screw 3-4"]],
    ["chrome or black", ["black 2-2"]],
    ["three screws", ["three screw 0-1"]],
  ])("%s: %j", (text, expected) => {
    expect(shared(text)).toEqual(expected);
  });
  test("is looked for in names of just these words, in whatever order and under whichever of them", () => {
    expect(findPhrase(["screw", "two"], screws)?.stems).toEqual(["two", "screw"]);
    expect(findPhrase(["first", "screw"], screws)?.stems).toEqual(["screw", "first"]);
    expect(findPhrase(["black"], screws)?.stems).toEqual(["black"]);
    expect(findPhrase(["screw"], screws)).toBeUndefined();
    expect(findPhrase(["two", "screw", "black"], screws)).toBeUndefined();
    expect(findPhrase(["rough"], screws)).toBeUndefined();
  });
});

describe("a word written as two, or two run together", () => {
  const known = lexiconOf([
    phrase("windscreen door mirror", [part]),
    phrase("rim", [part]),
    phrase("cover bolts boxin", [part]),
  ]);
  const joined = (text: string): string | undefined => {
    const [first, second] = tokenise(text);
    return first === undefined ? undefined : joinSplit(first, second, known)?.stem;
  };
  test.each([
    ["wind screen", "windscreen"],
    ["wind screens", "windscreen"],
    ["wind, screen", undefined],
    ["wind. screen", undefined],
    ["wind", undefined],
    ["wind scream", undefined],
    ["r im", undefined],
    ["cov er", undefined],
    ["mir ror", "mirror"],
  ])("%s: %s", (text, expected) => {
    expect(joined(text)).toBe(expected);
  });
  test.each([
    ["doormirror", "door mirror"],
    ["doormirrors", "door mirror"],
    ["rimdoor", "rim door"],
    ["doorrim", "door rim"],
    ["rimrim", undefined],
    ["doorhinge", undefined],
    ["hingedoor", undefined],
    ["thedoor", undefined],
    ["mirror", undefined],
    ["windscreenwindscreenwindscreenwindscreen", undefined],
    [`door${"mirror".repeat(7)}`, undefined],
    ["discover", undefined],
  ])("%s: %s", (text, expected) => {
    expect(
      splitJoined(text, known)
        ?.map(({ stem, edits }) => (edits === 0 ? stem : `${stem} (${edits})`))
        .join(" "),
    ).toBe(expected);
  });
  test("an everyday word is not cut in two, and none longer than any word of a handbook", () => {
    const long = "a".repeat(36);
    const odd = lexiconOf([phrase(`some thing door ${long} ${long}s`, [part])]);
    expect(splitJoined("something", odd)).toBeUndefined();
    expect(splitJoined("thingdoor", odd)).toHaveLength(2);
    expect(splitJoined(`door${long}`, odd)).toHaveLength(2);
    expect(splitJoined(`thing${long}`, odd)).toBeUndefined();
  });
  test.each([
    ["round the edge", true],
    ["round my wing", true],
    ["round it", true],
    ["round edge", false],
    ["round, the edge", false],
    ["round", false],
    ["square the edge", false],
    ["round them all", true],
    ["round theme", false],
    ["round items", false],
  ])("%s: a word of place rather than of shape is %s", (text, expected) => {
    const [first, second] = tokenise(text);
    expect(first !== undefined && isPreposition(first, second)).toBe(expected);
  });
});

describe("the words that a typed one stands for", () => {
  const words =
    "spoiler spoker screw stud bolt snap grain grained groove rubber ribbed rim hollow hollowed painted paint cast steel flange mirror wood 17-inch ab gasket gaskets casket basket tapered tapeted spoke spline hairy smothered fused roped rimmed studded brakedrum allways advertx".split(
      " ",
    );
  const vocabulary = compileVocabulary([...words, "sayings"], words);
  const standsFor = (word: string): string =>
    findWords(word, vocabulary)
      .map(({ stem, edits }) => (edits === 0 ? stem : `${stem} (${edits})`))
      .join(" ");
  test.each([
    ["spoiler", "spoiler"],
    ["spoilers", "spoiler"],
    ["gaskets", "gasket"],
    ["spoier", "spoiler (1)"],
    ["spolier", "spoiler (1)"],
    ["spoilre", "spoiler (1)"],
    ["psoiler", "spoiler (1)"],
    ["zpoiler", "spoiler (1)"],
    ["szoiler", "spoiler (1)"],
    ["zzoiler", ""],
    ["spoilerzz", ""],
    ["spoilerzzz", ""],
    ["flnge", "flange (1)"],
    ["fange", "flange (1)"],
    ["flnag", ""],
    ["soap", ""],
    ["snpa", "snap (1)"],
    ["sap", ""],
    ["snapp", "snap (1)"],
    ["stud", "stud studded (1)"],
    ["ri", ""],
    ["rm", ""],
    ["wodd", ""],
    ["wod", ""],
    ["woood", "wood (1)"],
    ["tapered", "tapered"],
    ["tapeded", "tapered (1) tapeted (1)"],
    ["tapeed", "tapered (1) tapeted (1)"],
    ["sayings", "sayings"],
    ["sayinsg", ""],
    ["grain", "grain grained (1)"],
    ["grained", "grained grain (1)"],
    ["screws", "screw bolt (1)"],
    ["painting", "paint (1)"],
    ["paint", "paint painted (1)"],
    ["schraube", "screw"],
    ["schrauben", "screw"],
    ["leder", ""],
    ["bothered", ""],
    ["used", ""],
    ["hoped", ""],
    ["always", ""],
    ["adverts", ""],
    ["brakedrun", "brakedrum (1)"],
    ["furry", "hairy (1)"],
    ["gairy", "hairy (1)"],
    ["tsud", ""],
    ["rim", "rim"],
    ["mirrored", "mirror (1)"],
    ["m1rror", ""],
    ["mirro1", ""],
    ["the", ""],
    ["three", ""],
    ["x".repeat(41), ""],
  ])("%s: %s", (word, expected) => {
    expect(standsFor(word)).toBe(expected);
  });
  test("a word longer than any of a handbook is not even looked up", () => {
    const long = "a".repeat(40);
    const odd = compileVocabulary([long, `${long}a`], []);
    expect(findWords(long, odd)).toHaveLength(1);
    expect(findWords(`${long}a`, odd)).toHaveLength(0);
  });
  test("of many equally near no more than four are kept", () => {
    const many = "tapered tapeted tapebed tapeged tapehed".split(" ");
    expect(findWords("tapexed", compileVocabulary(many, many)).map(({ stem }) => stem)).toEqual(
      many.slice(0, 4),
    );
  });
  test("a word lost, doubled or swapped is likelier than one letter for another", () => {
    const nearest = (typed: string, ...known: readonly string[]): readonly string[] =>
      findWords(typed, compileVocabulary(known, known)).map(({ stem }) => stem);
    expect(nearest("spoier", "spoker", "spoiler")).toEqual(["spoiler"]);
    expect(nearest("spokerr", "spokery", "spoker")).toEqual(["spoker"]);
    expect(nearest("corrugeted", "carrugated", "corrugated")).toEqual(["corrugated"]);
  });
  test("none of fewer than three letters or with a figure stands for a misspelt one", () => {
    const { buckets } = compileVocabulary([], ["ab", "rim", "17-inch", "rims", "rid"]);
    expect([...buckets].map(([key, those]) => `${key} ${those.join(" ")}`)).toEqual([
      "3.r rim rid",
      "3-i rim rid",
      "4.r rims",
      "4-i rims",
    ]);
  });
  test("fewer than four letters allow no slip, fewer than eight one, the others two", () => {
    expect([3, 4, 7, 8, 20].map(allowedEdits)).toEqual([0, 1, 1, 2, 2]);
  });
});
