// What a handbook's names become when it is compiled for reading: phrases and their kinds, the words that tell a state or point to a feature, which
// state says that a thing is not there, and the plain nouns for its parts and cars. Names are invented; the rules are those of the files tested.
import { describe, expect, test } from "vitest";
import { monthInterval } from "../../../knowledge/calendar/interval.ts";
import type { Handbook } from "../../../knowledge/handbook/schema.ts";
import { PartKind, type StateFeature } from "../../../knowledge/handbook/schema.ts";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { namesOfState } from "../../../knowledge/language/handbook-names.ts";
import { layOut } from "../../../knowledge/language/lay-out.ts";
import { compileLexicon, type Lexicon } from "../../../knowledge/language/lexicon.ts";
import { observeLooseWords } from "../../../knowledge/language/loose-words.ts";
import type { Meaning, Phrase } from "../../../knowledge/language/meaning.ts";
import { stemsOf, tellingStems } from "../../../knowledge/language/name-stems.ts";
import { nearestState } from "../../../knowledge/language/nearest-state.ts";
import { negationsOf } from "../../../knowledge/language/observations.ts";
import { compilePartWords, denyingName, lendingNames } from "../../../knowledge/language/part-words.ts";
import { withPlainNouns } from "../../../knowledge/language/plain-nouns.ts";
import { polarityOf } from "../../../knowledge/language/polarity.ts";
import { statesLeft } from "../../../knowledge/language/states-left.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import {
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
  type WrittenFeature,
} from "../../support/small-handbook.ts";

type Names = Readonly<Record<string, readonly string[]>>;

/** Of each state the name and then what else it is called. */
function called(
  id: string,
  names: readonly string[],
  states: Names,
  rest: { none?: string } = {},
): WrittenFeature {
  const [name = id, ...also] = names;
  return stateFeature(id, [], {
    name,
    also,
    states: Object.entries(states).map(([state, [first = state, ...others]]) => ({
      id: state,
      name: first,
      also: others,
    })),
    ...rest,
  });
}

const many = Array.from(
  { length: 36 },
  (_, at) => `quaint${String.fromCharCode(97 + (at % 26))}${at < 26 ? "x" : "y"} joint`,
);
const book: Handbook = smallHandbook({
  features: [
    called("seal", ["Seal", "rubber seal"], {
      felt: ["Felt strip", ...many, "gaffer taped", "one two three", "eleven", "seven rivets", "pierced"],
      cork: [
        "Cork",
        "stuck on",
        "set in it",
        ">CRK<",
        "a b c d e f g h i j k l m",
        "bb cc dd ee ff gg hh jj",
        "nine ten",
        "lip of rubber",
      ],
    }),
    called("vent", ["Vent holes"], {
      vented: [
        "Has vent holes",
        "with vent holes",
        "pierced",
        "stuck in",
        "with gauze",
        "notch cut",
        "piano hinge",
      ],
      blind: ["No vent holes"],
    }),
    called("mirror-back", ["Back"], {
      ribbed: ["Stiff, ribbed back", "red or blue back"],
      plain: ["Plain", "strip felt", "dark plain"],
    }),
    called(
      "label",
      ["Label", "length"],
      { paper: ["Paper label"], foil: ["Foil label", "shrike"] },
      { none: "no label" },
    ),
    measurementFeature("breadth", { name: "Breadth", also: ["width"] }),
    measurementFeature("pitch", { name: "Bolt spacing", also: ["depth"] }),
    measurementFeature("reach", { name: "Reach", also: ["constructor"], none: "no reach" }),
  ],
  variants: [
    variant("early", { name: "Early foot", also: ["cork", "cork"], origin: "production" }),
    variant("late", { name: "Late foot", origin: "production" }),
  ],
  rest: { name: "Mirror foot", also: ["mirror base", "the pedestal"] },
  cars: {
    models: [
      { id: "shrike", name: "Wexcombe Shrike", also: ["WS"], from: "1977-01", to: "1981-12" },
      { id: "shrike-two", name: "Wexcombe Shrike Mark 2", also: [], from: "1982-01", to: "1984-12" },
    ],
    trims: [{ id: "sport", name: "Sport", also: [], models: [], from: "1977-01", to: "1984-12" }],
    markets: [
      { id: "valley", name: "Valleyland market", also: [] },
      { id: "home", name: "Home market", also: [] },
      { id: "other", name: "Other market", also: [] },
      { id: "isle", name: "Isle market", also: [] },
      { id: "marsh", name: "Old Marshland market", also: [] },
      { id: "moor", name: "Moorland market north", also: [] },
    ],
  },
});
const lexicon = compileLexicon(book);
const phrases = [...lexicon.phrasesByWord.values()].flat();
const named = (words: string): Phrase | undefined => phrases.find(({ stems }) => stems.join(" ") === words);
const meant = (words: string): readonly string[] => (named(words)?.meanings ?? []).map(inWords);

function inWords(meaning: Meaning): string {
  if (meaning.kind === "part") return "part";
  if (meaning.kind === "feature") return `feature ${meaning.feature}`;
  if (meaning.kind === "state") return `${meaning.feature} ${meaning.state}`;
  return meaning.kind === "variant" ? `variant ${meaning.variant}` : `${meaning.kind} ${meaning.id}`;
}

describe("a name is found as", () => {
  test.each([
    ["mirror foot", ["part"]],
    ["mirror base", ["part"]],
    ["foot", ["part"]],
    ["base", []],
    ["early foot", ["variant early"]],
    ["cork", ["seal cork", "variant early"]],
    ["seal", ["feature seal"]],
    ["rubber seal", ["feature seal"]],
    ["felt strip", ["seal felt", "mirror-back plain"]],
    ["strip felt", []],
    ["eleven", ["seal felt"]],
    ["seven rivet", ["seal felt"]],
    ["nine ten", ["seal cork"]],
    ["bb cc dd ee ff gg hh jj", ["seal cork"]],
    ["gauze", ["vent vented"]],
    ["long", []],
    ["marshland spec", []],
    ["moorland spec", []],
    ["gaffer taped", ["seal felt"]],
    ["one two three", []],
    ["stuck", ["seal cork"]],
    ["crk", []],
    ["vent hole", ["feature vent"]],
    ["pierced", ["seal felt", "vent vented"]],
    ["no vent hole", ["vent blind"]],
    ["stiff", ["mirror-back ribbed"]],
    ["ribbed back", ["mirror-back ribbed"]],
    ["stiff ribbed back", ["mirror-back ribbed"]],
    ["red", []],
    ["red or blue back", ["mirror-back ribbed"]],
    ["no label", ["label not-there"]],
    ["no reach", ["reach not-there"]],
    ["width", ["feature breadth"]],
    ["wide", ["feature breadth"]],
    ["large", ["feature breadth"]],
    ["deep", ["feature pitch"]],
    ["apart", ["feature pitch"]],
    ["tall", []],
    ["constructor", ["feature reach"]],
    ["wexcombe shrike", ["model shrike"]],
    ["wexcombe shrike mark two", ["model shrike-two"]],
    ["sport", ["trim sport"]],
    ["valleyland market", ["market valley"]],
    ["valleyland spec", ["market valley"]],
    ["valleyland car", ["market valley"]],
    ["valleyland model", ["market valley"]],
    ["valleyland version", ["market valley"]],
    ["valleyland export", ["market valley"]],
    ["home spec", []],
    ["other spec", []],
    ["isle spec", []],
  ])("%s: %j", (words, expected) => {
    expect(meant(words)).toEqual(expected);
  });
  test("and has as many words as names are made of, eight at most", () => {
    expect(phrases.filter(({ stems }) => stems.length === 0 || stems.length > 8)).toEqual([]);
  });
  test("a saying, if it stands so far down a list that its words are nobody's", () => {
    const sayings = phrases.filter(({ isSaying }) => isSaying).map(({ stems }) => stems.join(" "));
    expect(sayings).toEqual(["gaffer taped", "eleven", "seven rivet"]);
    expect(lexicon.vocabulary.stems.has("gaffer")).toBe(true);
    expect([...lexicon.vocabulary.buckets.values()].flat()).not.toContain("gaffer");
    expect([...lexicon.vocabulary.buckets.values()].flat()).toContain("felt");
  });
  test("a phrase that must stand as written, if one word of it tells", () => {
    expect(named("stuck")?.literal).toEqual(["stuck", "on"]);
    expect(phrases.find(({ literal }) => literal?.includes("it"))?.stems).toEqual(["set"]);
    expect(
      phrases.filter(({ stems }) => stems.join() === "stuck").map(({ literal }) => literal?.join(" ")),
    ).toEqual(["stuck on", "stuck in"]);
    expect(["pierced", "pedestal", "lip rubber"].map((words) => named(words)?.literal)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(named("foot")?.literal).toBeUndefined();
  });
  test("words in their order, where it names more than a feature or denies", () => {
    const ordered = [
      "mirror foot",
      "early foot",
      "cork",
      "gaffer taped",
      "no vent hole",
      "sport",
      "valleyland spec",
    ];
    expect(ordered.filter((words) => named(words)?.isOrdered !== true)).toEqual([]);
    const free = ["felt strip", "vent hole", "ribbed back", "rubber seal", "notch cut", "piano hinge"];
    expect(free.filter((words) => named(words)?.isOrdered !== false)).toEqual([]);
  });
  test("a general word that needs its feature, where that is all it is", () => {
    expect(["plain", "wide"].map((words) => named(words)?.isGeneral)).toEqual([true, true]);
    expect(named("felt strip")?.isGeneral).toBe(false);
    expect(named("dark plain")?.isGeneral).toBe(false);
    expect(named("cork")?.isGeneral).toBe(false);
  });
  test("tells no state by a word of the cars", () => {
    expect(meant("shrike")).toEqual(["label foil"]);
    expect(lexicon.parts.get("foot")?.distinctive.has("shrike")).toBe(false);
    expect(lexicon.parts.get("foot")?.distinctive.has("cork")).toBe(true);
  });
  test("the last word of a part's name stands for it, unless another's ends so", () => {
    const [foot] = book.parts;
    if (foot === undefined) throw new Error("no part");
    const bare = { ...foot, also: [], features: [], variants: [] };
    const three = compileLexicon({
      ...book,
      parts: [
        bare,
        { ...bare, id: "lamp", name: "Lamp foot" },
        { ...bare, id: "arm", name: "Outer mirror arm" },
      ],
    });
    const parts = [...three.phrasesByWord.values()]
      .flat()
      .flatMap(({ stems, meanings }) =>
        meanings.flatMap((each) => (each.kind === "part" ? [`${stems.join(" ")}: ${each.part}`] : [])),
      );
    expect(parts.toSorted()).toEqual([
      "arm: arm",
      "lamp foot: lamp",
      "mirror foot: foot",
      "outside mirror arm: arm",
    ]);
  });
  test.each([
    ["width", "wide large"],
    ["height", "high tall"],
    ["length", "long"],
    ["depth", "deep"],
    ["thickness", "thick"],
    ["diameter", "across"],
    ["mass", "heavy weighing weigh"],
    ["weight", "heavy weighing weigh"],
  ])("what is called its %s is said to be %s", (name, said) => {
    const two = [variant("a", { origin: "production" }), variant("b", { origin: "production" })];
    const sized = compileLexicon(
      smallHandbook({ features: [measurementFeature("size", { also: [name] })], variants: two }),
    );
    const found = [...sized.phrasesByWord.values()]
      .flat()
      .filter(({ meanings }) => meanings.some((each) => each.kind === "feature"))
      .map(({ stems }) => stems.join(" "));
    expect(found.toSorted()).toEqual(["size", name, ...said.split(" ")].toSorted());
  });
  test("is looked up under the rarest of its words", () => {
    const under = (word: string): readonly string[] =>
      (lexicon.phrasesByWord.get(word) ?? []).map(({ stems }) => stems.join(" "));
    expect(under("felt")).toContain("felt strip");
    expect(under("valleyland")).toEqual(["valleyland market"]);
    expect(under("spec")).toEqual(["valleyland spec"]);
    expect(under("joint")).toEqual([]);
    expect(under("market")).not.toContain("valleyland market");
  });
});

test.each([
  ["stiff, glass fibre", ["stiff, glass fibre", "stiff", "glass fibre"]],
  ["painted or flow-coated", ["painted or flow-coated", "painted", "flow-coated"]],
  ["two or three, by hand", ["two or three, by hand", "two or three", "by hand"]],
  ["wide, with a lip", ["wide, with a lip"]],
  ["wide, without a lip", ["wide, without a lip"]],
  ["wide, or so", ["wide, or so"]],
  ["a, b, cut", ["a, b, cut"]],
  ["abc, de, wide", ["abc, de, wide", "abc", "wide"]],
  ["wide", ["wide"]],
])("a state's name may be several: %s", (name, expected) => {
  expect(namesOfState(name)).toEqual(expected);
});

describe("plain nouns", () => {
  const plain = (compiled: Lexicon, text: string): string => {
    const tokens = tokenise(text);
    return withPlainNouns(clausesOf(tokens), tokens, compiled)
      .map((clause) => clause.text)
      .join(", ");
  };
  test("stand for what a handbook calls its parts and its cars", () => {
    expect([...lexicon.plainNouns]).toEqual([
      ["foot", "part"],
      ["foots", "parts"],
      ["base", "part"],
      ["bases", "parts"],
      ["pedestal", "part"],
      ["pedestals", "parts"],
      ["wexcombe", "car"],
      ["wexcombes", "cars"],
      ["shrike", "car"],
      ["shrikes", "cars"],
    ]);
    expect(plain(lexicon, "his foot and the bases of all shrikes")).toBe(
      "his part, and the parts of all cars",
    );
    expect(plain(lexicon, "the mirror foot base is rough")).toBe("the mirror part is rough");
    expect(plain(lexicon, "the foots base is rough")).toBe("the part is rough");
    expect(plain(lexicon, "it is rough")).toBe("it is rough");
  });
  test("know plurals in -es and what a handbook calls its things", () => {
    const other = compileLexicon({
      ...book,
      cover: { ...book.cover, thing: "boat", things: "boats" },
      parts: book.parts.map((part) => ({ ...part, name: "Rear bench", also: ["switch box", "glass"] })),
    });
    const nouns = other.plainNouns;
    expect(["bench", "benches", "box", "boxes", "glass", "glasses"].map((word) => nouns.get(word))).toEqual([
      "part",
      "parts",
      "part",
      "parts",
      "part",
      "parts",
    ]);
    expect([nouns.get("boat"), nouns.get("bases"), nouns.get("rear")]).toEqual([
      "cars",
      undefined,
      undefined,
    ]);
    const marks = compileLexicon({
      ...book,
      cars: {
        ...book.cars,
        models: ["One", "Two"].map((name) => ({
          id: name,
          name: `Benchmark Marksman Mark ${name} GT`,
          also: [],
          from: "1977-01",
          to: "1981-12",
        })),
      },
    }).plainNouns;
    expect(["benchmark", "marksman", "mark", "one", "gt"].map((word) => marks.get(word))).toEqual([
      "car",
      "car",
      undefined,
      undefined,
      undefined,
    ]);
    const things = compileLexicon({ ...book, cover: { ...book.cover, thing: "sailing punt" } }).plainNouns;
    expect([things.get("punt"), things.get("sailing"), things.get("car")]).toEqual([
      "cars",
      undefined,
      undefined,
    ]);
  });
  test("of one part beside another is one part, and a clause with none is itself", () => {
    const tokens = tokenise("it is rough, the foot is");
    const clauses = clausesOf(tokens);
    const made = withPlainNouns(clauses, tokens, lexicon);
    expect(made[0]).toBe(clauses[0]);
    expect(made[1]).toEqual({ ...clauses[1], text: "the part is" });
  });
});

describe("the words of a part", () => {
  const part = PartKind.parse({
    id: "lamp",
    name: "Side lamp",
    also: ["parking light"],
    summary: "The lamp on the wing.",
    features: [
      called("lens", ["Lens", "lens colour", "lens of the lamp"], {
        amber: ["Amber lens", "amber glow", "amber tint", "like a worn marigold"],
        clear: ["Milky lens", "milky glow", "no amber left", "fluted glow"],
        dim: ["Fluted tint", "ribbing"],
      }),
      called("rim", ["Rim", "outer rim", "chrome or paint"], {
        chrome: ["Chrome rim", "chrome"],
        paint: ["Paint on the rim", "amber paint", "bore paint", "worn bore"],
      }),
      called("stamp", ["Stamp", "date mark"], {
        deep: ["Deep stamp"],
        faint: ["Faint stamp", "mark of a pen"],
      }),
      called(
        "mark",
        [
          "Mark under the lens",
          "maker's mark",
          "mark on the back",
          "number on it",
          "held on with",
          "made of",
          "made with",
          "zag or dots",
        ],
        {
          ring: ["Ring", "zigzag"],
          star: ["Star", "zag"],
        },
      ),
      called("bezel", ["Bezel", "brass bezel", "lamp bezel"], {
        brass: ["Brass bezel", "dull sheen", "pale sheen"],
        steel: ["Steel bezel", "lamp steel", "dusky sheen"],
      }),
      measurementFeature("bore", { name: "Bore", also: ["bore of the lens"] }),
    ],
    variants: [variant("one", { origin: "production" }), variant("two", { origin: "production" })],
  });
  const words = compilePartWords(part, new Set(["zigzag"]));
  const of = (feature: string) => {
    const those = words.features.get(feature);
    if (those === undefined) throw new Error(feature);
    return those;
  };
  test("of its own names, and the last of them", () => {
    expect([...words.nameWords]).toEqual(["side", "lamp", "parking", "light"]);
    expect([...words.nameHeads]).toEqual(["lamp", "light"]);
  });
  test("that tell a state stand three times as often in its names as in another's, twice if all else is the feature's", () => {
    expect([...of("lens").tellingWords]).toEqual([
      ["amber", "amber"],
      ["glow", "clear"],
      ["milky", "clear"],
      ["ribbing", "dim"],
    ]);
    expect([...of("lens").soleWords]).toEqual(["amber", "milky", "glow", "ribbing"]);
    expect([...of("lens").often]).toEqual(["amber", "glow", "milky", "ribbing"]);
    expect([...of("rim").tellingWords]).toEqual([
      ["chrome", "chrome"],
      ["paint", "paint"],
      ["amber", "paint"],
      ["bore", "paint"],
      ["worn", "paint"],
    ]);
    expect([...of("bezel").tellingWords.keys()]).toEqual(["brass", "dull", "pale", "steel", "dusky"]);
    expect([...of("bezel").soleWords]).toEqual(["dull", "pale", "steel", "dusky"]);
    expect([...of("rim").soleWords]).toEqual(["chrome", "paint"]);
    expect([...of("mark").tellingWords.keys()]).toEqual(["ring", "zigzag", "star", "zag"]);
    expect(of("bore").tellingWords.size).toBe(0);
    expect(words.stateWords.has("milky")).toBe(true);
    expect(words.stateWords.has("fluted")).toBe(false);
  });
  test("that point to a feature", () => {
    expect([...(words.cues.get("len") ?? [])]).toEqual(["lens", "mark", "bore"]);
    expect([...(words.cues.get("outside") ?? words.cues.get("outer") ?? [])]).toEqual(["rim"]);
    expect(words.cues.get("amber")).toBeUndefined();
  });
  test("whose states they are used for", () => {
    expect(words.owners.get("milky")).toBe("lens");
    expect(words.owners.get("amber")).toBeUndefined();
    expect(words.owners.get("marigold")).toBeUndefined();
    expect(words.owners.get("zigzag")).toBe("mark");
  });
  test("that stand for one state and nothing else", () => {
    expect([...words.distinctive]).toEqual([
      ["glow", { feature: "lens", state: "clear" }],
      ["milky", { feature: "lens", state: "clear" }],
      ["ribbing", { feature: "lens", state: "dim" }],
    ]);
  });
  test("that are the main noun of a feature", () => {
    expect([...words.heads]).toEqual([
      ["len", "lens"],
      ["rim", "rim"],
      ["mark", "mark"],
      ["bezel", "bezel"],
    ]);
  });
  test("are lent by its name and the first thirty-six others", () => {
    const also = Array.from({ length: 40 }, (_, at) => `saying ${at}`);
    expect(lendingNames({ id: "x", name: "X", also })).toEqual(["X", ...also.slice(0, 36)]);
  });
  test.each([
    "no mark",
    "not cut",
    "nothing there",
    "none",
    "never cut",
    "without a lip",
    "can't read",
    "missing",
  ])("%s denies", (name) => {
    expect(denyingName.test(name)).toBe(true);
    expect(denyingName.test(`k${name}s`)).toBe(false);
  });
});

describe("the state that says that a thing is not there", () => {
  const feature = (states: Names, none?: string): StateFeature =>
    PartKind.parse({
      id: "x",
      name: "x",
      summary: "x.",
      features: [called("f", ["F"], states, none === undefined ? {} : { none })],
      variants: [variant("one", { origin: "production" }), variant("two", { origin: "production" })],
    }).features.find((each) => each.kind === "states") as StateFeature;
  test.each<[string, Names, string | undefined]>([
    ["by its name", { a: ["Wide"], b: ["No lip"], c: ["Tall"] }, "b"],
    ["by its id", { a: ["Wide"], "without-lip": ["Plain"], c: ["Tall"] }, "without-lip"],
    ["by its name before a hyphen or a comma", { a: ["Wide"], b: ["Missing, mostly"], c: ["Tall"] }, "b"],
    ["of three none, if none denies", { a: ["Wide"], b: ["Plain", "no lip"], c: ["Tall"] }, undefined],
    ["of two the one that undoes the other", { unpainted: ["Bare"], painted: ["Coated"] }, "unpainted"],
    ["of two the one that undoes the other", { painted: ["Coated"], unpainted: ["Bare"] }, "unpainted"],
    ["of two the one that is not the other", { "not-cut": ["Bare"], cut: ["Sawn"] }, "not-cut"],
    ["of two the one that is not the other", { cut: ["Sawn"], "non-cut": ["Bare"] }, "non-cut"],
    ["of two the one beside the present one", { a: ["Plain"], b: ["Present"] }, "a"],
    ["of two the one beside the present one", { a: ["Has a lip"], b: ["Plain"] }, "b"],
    ["of two the one that is called so", { a: ["Wide", "lipped"], b: ["Plain", "tidy", "no lip"] }, "b"],
    ["of two neither", { a: ["Wide"], b: ["Plain"] }, undefined],
  ])("%s", (_, states, absent) => {
    const found = polarityOf(feature(states));
    expect(found.absent).toBe(absent);
    expect(found.present).toEqual(
      absent === undefined ? [] : Object.keys(states).filter((id) => id !== absent),
    );
  });
  test("or the handbook's own word for none", () => {
    expect(polarityOf(feature({ a: ["Wide"], b: ["Tall"] }, "no lip"))).toEqual({
      absent: "not-there",
      present: ["a", "b"],
    });
    expect(polarityOf(feature({ a: ["Wide"], b: ["No lip"] }, "no lip")).absent).toBe("b");
    const [size] = book.parts.flatMap(({ features }) => features.filter(({ id }) => id === "reach"));
    const [breadth] = book.parts.flatMap(({ features }) => features.filter(({ id }) => id === "breadth"));
    expect(size && polarityOf(size)).toEqual({ absent: "not-there", present: [] });
    expect(breadth && polarityOf(breadth)).toEqual({ absent: undefined, present: [] });
  });
  test("leaves the others, narrowed by a word that only some of them hold", () => {
    const marks = feature({
      bare: ["Plain ABS letters"],
      arrows: ["ABS between arrows", "arrows"],
      none: ["No monogram", "no ABS"],
      dated: ["Dated"],
    });
    const left = (denied: readonly string[], ...said: readonly string[]) =>
      statesLeft(marks, new Set(denied), said);
    expect(left(["arrows"])).toEqual(["bare", "none", "dated"]);
    expect(left(["arrows"], "abs")).toEqual(["bare"]);
    expect(left(["arrows"], "plain")).toEqual(["bare", "none", "dated"]);
    expect(left(["bare"], "abs", "arrow")).toEqual(["arrows"]);
    expect(left(["arrows", "none"], "abs")).toEqual(["bare"]);
    expect(left(["arrows"], "monogram")).toEqual(["none"]);
    expect(left(["bare", "arrows", "none"], "abs")).toEqual(["dated"]);
    expect(left(["bare", "arrows", "none", "dated"])).toEqual([]);
    expect(left([], "abs")).toEqual(["bare", "arrows"]);
  });
});

test("the stems of a name are without glue words, unless it has no others", () => {
  expect(stemsOf("the Stamps of it")).toEqual(["stamp"]);
  expect(stemsOf("of it")).toEqual(["of", "it"]);
  expect(stemsOf("17\u00bd wide")).toEqual(["17", "one", "two", "wide"]);
  expect(tellingStems("the Stamps of it")).toEqual(["stamp"]);
  expect(tellingStems("of it")).toEqual([]);
  expect(stemsOf("the Stamps of it")).toBe(stemsOf("the Stamps of it"));
});

describe("the state that words come nearest to", () => {
  const edge = PartKind.parse({
    id: "x",
    name: "x",
    summary: "x.",
    features: [
      called("edge", ["Edge"], {
        sawn: ["Sawn across", "chewed at the corner", "grubby corner", "toothy", "q", "zz"],
        filed: ["Filed smooth", "grubby and smooth", "tidy corner", "wide corner", "no toothy corner"],
        ground: ["Ground round", "grubby wheel", "tidy wheel"],
      }),
    ],
    variants: [variant("one", { origin: "production" }), variant("two", { origin: "production" })],
  }).features.find((each) => each.kind === "states");
  if (edge?.kind !== "states") throw new Error("no states");
  const nearest = (words: string): string | undefined => nearestState(edge, words.split(" "));
  test.each([
    ["chewed", "sawn"],
    ["toothy", "sawn"],
    ["wheel", "ground"],
    ["grubby", undefined],
    ["corner", undefined],
    ["corner wheel", "ground"],
    ["corner corner corner chewed", "sawn"],
    ["tidy", undefined],
    ["tidy wheel", "ground"],
    ["tidy filed", "filed"],
    ["smooth", "filed"],
    ["wide", undefined],
    ["wide wide", undefined],
    ["wide round", undefined],
    ["chewed filed", undefined],
    ["chewed toothy filed", "sawn"],
    ["at", undefined],
    ["q", undefined],
    ["zz", "sawn"],
    ["hamster", undefined],
  ])("%s: %s", (words, expected) => {
    expect(nearest(words)).toBe(expected);
    expect(nearest(words)).toBe(expected);
  });
});

test("what something says is a word of a feature that is written, stamped or cast", () => {
  const told = (noun: string): readonly string[] => {
    const feature = called("f", ["Odd one", `odd ${noun}`], {
      a: ["Zorbic alpha", "zorbic beta"],
      b: ["Plain alpha"],
    });
    const two = [variant("a", { origin: "production" }), variant("b", { origin: "production" })];
    const compiled = compileLexicon(smallHandbook({ features: [feature], variants: two }));
    const { view } = layOut("it says zorbic", compiled, { today: monthInterval(2024, 6), part: "foot" });
    return observeLooseWords(view, negationsOf(view), []).map(({ state }) => state);
  };
  const written =
    "mark marks stamp stamps letter letters lettering number numbers date dates badge button push logo legend legends scale size dial".split(
      " ",
    );
  expect(written.filter((noun) => told(noun).join() !== "a")).toEqual([]);
  expect(["edge", "markup", "birthdates", "sized"].filter((noun) => told(noun).length > 0)).toEqual([]);
});
