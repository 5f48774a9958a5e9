// What people say of their car and of how a part came to them, wording by wording, with and without the words that may be
// left out. Everyday English of clubs and advertisements, no source.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords, findingsInWords } from "../../support/reading-in-words.ts";

const lines = (text: string): readonly string[] => text.trim().split(/\s*\n\s*/);
/** The wordings of which the reader does not find `wanted`. */
const without = (wanted: string, phrases: string): readonly string[] =>
  lines(phrases).filter((text) => !carInWords(readDemo(text)).includes(wanted));
/** The wordings of which it finds `unwanted` all the same. */
const having = (unwanted: string, phrases: string): readonly string[] =>
  lines(phrases).filter((text) => carInWords(readDemo(text)).includes(unwanted));

describe("a car's history", () => {
  test("is that of a replaced part", () => {
    expect(
      without(
        "known-replaced",
        `I replaced it
        they were swapped
        the garage has since renewed it
        fitted a new one
        put new mirrors on it
        it is a replacement
        they are later replacements
        not the one it left with
        not original to this car
        fitted later
        it isn't the original
        it is from a donor
        off a donor`,
      ),
    ).toEqual([]);
    expect(
      having(
        "known-replaced",
        "it was never replaced\nit has not been changed\nit changed hands\nit is the original",
      ),
    ).toEqual([]);
  });
  test("is documented", () => {
    expect(
      without(
        "documented-from-new",
        `documented
        fully documented car
        every receipt
        every bit of paper
        have its bills
        full history
        full file from new
        history complete from new
        history file is complete since new
        complete paperwork
        all paperwork from new
        history from new
        the build sheet matches
        works record`,
      ),
    ).toEqual([]);
    expect(having("documented-from-new", "documented restoration\nno papers")).toEqual([]);
  });
  test("is one owner's", () => {
    expect(
      without(
        "one-owner",
        `one owner
        only owner
        one family
        one family owned
        first owner
        one lady owner
        owned since new
        owned it from new
        had her from new
        mine since new
        in the family from new
        in our family since new
        bought it new
        bought brand new
        from new by my`,
      ),
    ).toEqual([]);
    expect(having("one-owner", "two owners\nnew paint")).toEqual([]);
  });
  test("is not known", () => {
    expect(
      without(
        "history-unknown",
        `unknown history
        no known history
        no paperwork
        not much documentation
        without any papers
        history unknown
        history is totally unknown
        history was lost
        don't know its history
        do not have any history
        no idea of the history
        barn find
        barnfind
        nobody knows where it was
        no idea what was done before
        know nothing about it
        nothing known of it`,
      ),
    ).toEqual([]);
    expect(having("history-unknown", "the history is known\nI know the history")).toEqual([]);
  });
});

describe("a part by itself", () => {
  test("is loose, on a bench or from somewhere", () => {
    expect(
      without(
        "loose",
        `loose one
        I have a loose mirror
        it is loose
        a loose pair of mirrors
        not on a car
        off a car
        it is on the bench
        on the workbench it is sitting on the work bench
        on the kitchen table
        in a box of bits
        in my hand
        swap meet
        autojumble
        boot sale
        from ebay
        on e bay
        for sale advert
        classified
        marketplace
        I don't have a car
        no car yet
        spare one
        spare mirror
        from a breaker
        bought this one used
        on the shelf
        found it in a shed
        bought it at a swap meet
        got these from a local breaker
        won it on ebay
        40 quid posted
        mirror, £180 posted
        up for grabs
        thinking of buying
        new old stock
        in its box
        in its original wrapper
        never fitted
        never been fitted
        the seller wants too much`,
      ),
    ).toEqual([]);
    expect(having("loose", "it is on my car\nstill fitted\nnone for sale\nthe car is for sale")).toEqual([]);
  });
  test("is none of a car that was bought", () => {
    expect(having("loose", "just bought a Shrike\nI bought a Shrike Mk II from a dealer")).toEqual([]);
  });
});

describe("model, trim and market", () => {
  const said = (text: string) =>
    carInWords(readDemo(text)).filter((line) => /^(?:model|trim|market) /.test(line));
  test.each([
    ["an 81 Shrike S", ["trim s"]],
    ["it's a Touring", ["trim touring"]],
    ["Home, June 1980, Shrike S", ["trim s", "market home"]],
    ["it is not a Touring", []],
    ["my mate has a Touring", []],
    ["the seller says it is a Touring", []],
    ["it is a federal car", ["market america"]],
    ["I live in america", []],
    ["letters S R and some digits", []],
    ["six screws on a Touring?", []],
  ])("%s", (text, expected) => {
    expect(said(text).toSorted()).toEqual([...expected].toSorted());
  });
});

describe("a short answer to a question", () => {
  const answer = (text: string, about: string) => findingsInWords(readDemo(text, about));
  test.each([
    ["the first", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish rough"]],
    ["last", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish painted"]],
    ["c", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish painted"]],
    ["2", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish smooth"]],
    ["rough maybe", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish rough"]],
    ["not rough", "rear-spoiler inside-finish", ["rear-spoiler.inside-finish smooth|painted"]],
    ["anything but that", "rear-spoiler inside-finish", []],
    ["can't tell", "rear-spoiler inside-finish", []],
    ["the seller says rough", "rear-spoiler inside-finish", []],
    ["two", "door-mirror screws", ["door-mirror.screws two"]],
    ["yep", "rear-spoiler drain-notches", ["rear-spoiler.drain-notches notches"]],
    ["none", "rear-spoiler drain-notches", ["rear-spoiler.drain-notches plain"]],
    ["47 inches", "rear-spoiler width", ["rear-spoiler.width 47±0.5 in"]],
    ["1180 mm by tape", "rear-spoiler width", ["rear-spoiler.width 1180±0.5 mm"]],
    ["31 81", "door-mirror glass-week", ["door-mirror.glass-week 27 July to 2 August 1981"]],
    ["it says 31 81, I think", "door-mirror glass-week", ["door-mirror.glass-week 27 July to 2 August 1981"]],
  ])("%s (%s)", (text, about, expected) => {
    expect(answer(text, about)).toEqual(expected);
  });
});
