// From what was typed to words: plain signs, one spelling, breaks and clauses, misspellings. Spellings are those of British and
// American usage; the distance is optimal string alignment (Damerau 1964, Communications of the ACM 7:171–176).
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { cleanText, longestRead } from "../../../knowledge/language/clean-text.ts";
import { boundedEditDistance } from "../../../knowledge/language/edit-distance.ts";
import {
  baseForms,
  foldWord,
  irregularForms,
  numberOf,
  stemWord,
} from "../../../knowledge/language/fold-word.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";

describe("a text as it may be read", () => {
  const clean = (raw: string): string => cleanText(raw).text;
  test("has plain quotes, dashes and fractions", () => {
    expect(clean("\u2018it\u2019s\u201b \u02bcn\u02bc 5\u2032")).toBe("'it's' 'n' 5'");
    expect(clean("\u201cwide\u201d 17\u2033 \u00abso\u00bb")).toBe(`"wide" 17'' "so"`);
    expect(clean("two\u2010hole \u2212 x\u2011y")).toBe("two-hole - x-y");
    expect(clean("17\u00bd wide, \u00be inch, 3 \u215c")).toBe("17 1/2 wide, 3/4 inch, 3 3/8");
    expect(clean("5\u20448")).toBe("5/8");
    expect(clean("3 at x\u00bd")).toBe("3 at x1/2");
    expect(clean("`a`")).toBe("`a`");
  });
  test("has long dashes between figures as ranges, and else between clauses", () => {
    expect(clean("1979\u20131981")).toBe("1979-1981");
    expect(clean("1979 \u2014 1981")).toBe("1979-1981");
    expect(clean("old\u2014not new")).toBe("old - not new");
    expect(clean("in 79\u2014rough")).toBe("in 79 - rough");
    expect(clean("rough\u201479")).toBe("rough - 79");
  });
  test("has no control, direction or lone half of a sign, and no heap of marks", () => {
    expect(clean("a\u0000b\u0007c")).toBe("a b c");
    expect(clean("a\u202eb\u200bc")).toBe("abc");
    expect(clean("a\ud800b\udc00c")).toBe("abc");
    expect(clean("ok \ud83d\ude00")).toBe("ok \ud83d\ude00");
    expect(clean("z\u0331\u0332\u0333\u0334a")).toBe("\u1e95a");
    expect(clean("cafe\u0301")).toBe("caf\u00e9");
    expect(clean("x\u0332y")).toBe("x\u0332y");
  });
  test("has single blanks, line ends of one kind, and no more than one empty line", () => {
    expect(clean("a\n b")).toBe("a\nb");
    expect(clean("a \nb")).toBe("a\nb");
    expect(clean("  a \t b \r\n c\rd\n\n\n\ne  ")).toBe("a b\nc\nd\n\ne");
  });
  test("is cut at eight thousand, and says so", () => {
    expect(cleanText("x".repeat(longestRead))).toEqual({ text: "x".repeat(8000), isCut: false });
    expect(cleanText("x".repeat(longestRead + 1))).toEqual({ text: "x".repeat(8000), isCut: true });
    // One sign that stands for three: what was short enough when typed is not any more.
    expect(cleanText("\ufb03".repeat(longestRead - 1))).toMatchObject({
      text: "ffi".repeat(3000).slice(0, 8000),
      isCut: true,
    });
  });
});

describe("words of one spelling", () => {
  test.each([
    ["Moulded", "molded"],
    ["colour", "color"],
    ["GREY", "gray"],
    ["centre", "center"],
    ["Aluminium", "aluminum"],
    ["alloy", "alloy"],
    ["ally", "aluminum"],
    ["alu", "aluminum"],
    ["tyre", "tire"],
    ["fibreglass", "fiberglass"],
    ["GRP", "fiberglass"],
    ["metre", "meter"],
    ["guage", "gauge"],
    ["pic", "photograph"],
    ["photos", "photograph"],
    ["photographer", "photographer"],
    ["single", "one"],
    ["twin", "two"],
    ["couple", "two"],
    ["triple", "three"],
    ["inner", "inside"],
    ["outer", "outside"],
    ["2", "two"],
    ["02", "two"],
    ["12", "twelve"],
    ["13", "13"],
    ["0", "0"],
    ["ii", "two"],
    ["IV", "four"],
    ["2nd", "second"],
    ["6th", "sixth"],
    ["7th", "7th"],
    ["w/o", "without"],
    ["&", "and"],
    ["mk", "mark"],
    ["half a dozen", "six"],
    ["isn't", "isnt"],
    ["caf\u00e9", "cafe"],
    ["constructor", "constructor"],
  ])("%s is %s", (written, folded) => {
    expect(foldWord(written)).toBe(folded);
  });
  test.each([
    ["screws", "screw"],
    ["glasses", "glass"],
    ["glass", "glass"],
    ["boxes", "box"],
    ["patches", "patch"],
    ["brushes", "brush"],
    ["bodies", "body"],
    ["ties", "tie"],
    ["bus", "bus"],
    ["axis", "axis"],
    ["gas", "gas"],
    ["lens", "len"],
    ["edge", "edge"],
    ["isnt", "not"],
    ["wouldnt", "not"],
    ["hubs", "hub"],
  ])("%s has the stem %s", (folded, stem) => {
    expect(stemWord(folded)).toBe(stem);
  });
  test("numbers are words up to twelve and figures up to six of them", () => {
    expect(
      ["zero", "one", "twelve", "13", "999999", "1234567", "x1", "1x", "thirteen"].map(numberOf),
    ).toEqual([0, 1, 12, 13, 999_999, undefined, undefined, undefined, undefined]);
  });
  test("strong verbs have their other forms, and other words none", () => {
    expect(irregularForms("sweeping")).toEqual(["sweep", "swept"]);
    expect(irregularForms("ground")).toEqual(["grind"]);
    expect(irregularForms("screw")).toEqual([]);
  });
  test("a word may be another in its past, its run, its adjective", () => {
    expect(baseForms("painted")).toEqual(expect.arrayContaining(["paint", "painte"]));
    expect(baseForms("casting")).toEqual(expect.arrayContaining(["cast", "caste"]));
    expect(baseForms("stepped")).toContain("step");
    expect(baseForms("rubbing")).toContain("rub");
    expect(baseForms("grained")).not.toContain("grain".slice(0, -1));
    expect(baseForms("grainy")).toEqual(expect.arrayContaining(["grained", "grain"]));
    expect(baseForms("reddish")).toContain("redd");
    expect(baseForms("hollow")).toEqual(["hollowed", "hollowd", "hollowing"]);
    expect(baseForms("trim")).toEqual(["trimmed"]);
    expect(baseForms("red")).toEqual(["redded"]);
    expect(baseForms("bed")).not.toContain("b");
    expect(baseForms("king")).not.toContain("k");
    expect(baseForms("ling")).toEqual([]);
  });
});

describe("words and what stands between them", () => {
  const words = (text: string): readonly string[] => tokenise(text).map(({ folded }) => folded);
  const breaks = (text: string): string =>
    tokenise(text)
      .map(({ breakBefore }) => breakBefore[0])
      .join("");
  test("figures and letters are parted, however a handbook or a member writes them", () => {
    expect(words("mk2 foot")).toEqual(["mark", "two", "foot"]);
    expect(words("2nd type")).toEqual(["second", "type"]);
    expect(words("the w/o badge & lip")).toEqual(["the", "without", "badge", "and", "lip"]);
    expect(words("w/ 3 screws")).toEqual([
      "with" === foldWord("w/") ? "with" : foldWord("w/"),
      "three",
      "screws",
    ]);
    expect(words("G R P or G.R.P")).toEqual(["fiberglass", "or", "fiberglass"]);
    expect(words("a dozen, half a dozen")).toEqual(["twelve", "six"]);
    expect(words("don't")).toEqual(["dont"]);
    expect(words("w/badge, P/N 21, p/n 22, the 21st type")).toEqual(
      "with badge partnumber 21 partnumber 22 the 21st type".split(" "),
    );
  });
  test("a comma, a bracket, a dash or a colon parts a little, a full stop, a line or a mark wholly", () => {
    expect(breaks("one two, red: blue (green) grey - white")).toBe("snccccc");
    expect(breaks("one. two! red? blue; green\ngrey... white")).toBe("sssssss");
    expect(breaks("44,5 or 5.5 or 5. six")).toBe("snnnnnns");
    expect(breaks("two-hole")).toBe("sn");
    expect(["one.two", "one.) two", "one / two", "one -two", "one- two"].map(breaks)).toEqual([
      "ss",
      "sc",
      "sc",
      "sc",
      "sc",
    ]);
    expect(["one /two", "one/ two", "one + two"].map(breaks)).toEqual(["sn", "sn", "snn"]);
  });
  test("a question mark asks, two of them or one in brackets doubt", () => {
    const marks = (text: string) =>
      tokenise(text).map(({ isAsked, isDoubted }) => (isDoubted ? "doubted" : isAsked ? "asked" : ""));
    expect(marks("is it rough? no")).toEqual(["", "", "asked", ""]);
    expect(marks("rough?? square(?) round ? ?")).toEqual(["doubted", "doubted", "doubted"]);
    expect(marks("rough?")).toEqual(["asked"]);
    expect(marks("rough?? square? round ( ? )")).toEqual(["doubted", "asked", "doubted"]);
    expect(marks("rough?? square?")).toEqual(["doubted", "asked"]);
    expect(marks("rough (so?)")).toEqual(["", "asked"]);
  });
  test("know where they stand, and whether they are written in capitals", () => {
    expect(tokenise("the WS mark").map(({ start, end, isCapital }) => [start, end, isCapital])).toEqual([
      [0, 3, false],
      [4, 6, true],
      [7, 11, false],
    ]);
  });
  test("are twelve hundred at most", () => {
    expect(tokenise("a ".repeat(1201))).toHaveLength(1200);
  });
});

describe("clauses", () => {
  const cut = (text: string): readonly string[] =>
    clausesOf(tokenise(text)).map(({ join, text: words }) => `${join}: ${words}`);
  test("end at commas, at contrasts and at and", () => {
    expect(cut("it is rough, the edge is square but the foot is new and shiny")).toEqual([
      "sentence: it is rough",
      "comma: the edge is square",
      "contrast: but the foot is new",
      "and: and shiny",
    ]);
  });
  test("after a comma that a contrast follows are contrasts, with or without and", () => {
    expect(cut("rough, but square")).toEqual(["sentence: rough", "contrast: but square"]);
    expect(cut("rough, and but square")[1]).toMatch(/^contrast: and/);
    expect(cut("rough, and square")).toEqual(["sentence: rough", "comma: and square"]);
  });
  test("are numbered by their sentences and know which were asked", () => {
    const all = clausesOf(tokenise("It is rough, not square. Is it old? Or new"));
    expect(all.map(({ sentence, isAsked, from, to }) => [sentence, isAsked, from, to])).toEqual([
      [0, false, 0, 2],
      [0, false, 3, 4],
      [1, true, 5, 7],
      [2, false, 8, 9],
    ]);
  });
  test("have every word once, whatever was typed", () => {
    const word = fc.constantFrom(
      "it",
      "is",
      "but",
      "and",
      "n",
      "N",
      "still",
      "only",
      "rough",
      ",",
      ".",
      "?",
      "however",
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 20 }), (typed) => {
        const tokens = tokenise(typed.join(" "));
        const places = clausesOf(tokens).flatMap(({ from, to }) =>
          Array.from({ length: to - from + 1 }, (_, index) => from + index),
        );
        expect(places).toEqual([...tokens.keys()]);
      }),
      { seed: 41 },
    );
  });
  test("of nothing there are none", () => {
    expect(clausesOf([])).toEqual([]);
  });
});

describe("the distance of two spellings", () => {
  /** The definition itself, without rows or bounds. */
  function distance(one: string, other: string): number {
    if (one === "" || other === "") return Math.max(one.length, other.length);
    const [head, tail] = [one.slice(0, -1), other.slice(0, -1)];
    const edits = [
      distance(head, other) + 1,
      distance(one, tail) + 1,
      distance(head, tail) + (one.at(-1) === other.at(-1) ? 0 : 1),
    ];
    if (one.length > 1 && other.length > 1 && one.at(-1) === other.at(-2) && one.at(-2) === other.at(-1))
      edits.push(distance(head.slice(0, -1), tail.slice(0, -1)) + 1);
    return Math.min(...edits);
  }
  test("is what its definition says, or one more than was asked for", () => {
    const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 5 });
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 4 }), (one, other, bound) => {
        expect(boundedEditDistance(one, other, bound)).toBe(Math.min(distance(one, other), bound + 1));
      }),
      { seed: 42, numRuns: 400 },
    );
  });
  test("counts a swap of neighbours once, and not twice over", () => {
    expect(boundedEditDistance("spoiler", "spolier", 3)).toBe(1);
    expect(boundedEditDistance("ca", "abc", 4)).toBe(3);
    expect(boundedEditDistance("mirror", "miror", 2)).toBe(1);
    expect(boundedEditDistance("foot", "boat", 2)).toBe(2);
  });
});
