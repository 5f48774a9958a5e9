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
        the steering wheel was changed by me in 1994
        I replaced this wing myself after a deer
        my dad renewed the lot
        replaced in the 90s
        fitted in 94 after a badger
        not the wing it was born with, not the one it left with
                off a donor
        the old part went in 1996
        I have the replacement wing
        replaced once according to the bills`,
      ),
    ).toEqual([]);
    expect(
      having(
        "known-replaced",
        "it was never replaced\nit has not been changed\nit changed hands\nit is the original\nI have now replaced the seal\nthe door seal was changed\nthings have changed\nmy dad replaced a bulb\ntwo wings in my life were replaced\nthey get swapped more than tyres\nthe badge must have been fitted later\ntwo of them are stainless replacements\nno idea what's been changed",
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
        works record
        wrote everything down
        kept all the bills
        a receipt for everything since it left the showroom
        receipts for every single part since new
        every MOT since the first registration`,
      ),
    ).toEqual([]);
    expect(
      having(
        "documented-from-new",
        "documented restoration\nno papers\none owner before me who kept every bill and swears nothing was changed",
      ),
    ).toEqual([]);
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
        from new by my
        owned by one lady till I got it
        owned by the same family
        these were on it when mum bought it from new
        my uncle is the only owner it ever had
        the only owner the car ever had`,
      ),
    ).toEqual([]);
    expect(
      having(
        "one-owner",
        "two owners\nnew paint\none owner before me\nsold as a one owner car\non Hector's they are chrome and he's had it from new\nstory was one lady owner",
      ),
    ).toEqual([]);
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
        history of the car unknown
        no idea about its past
        no idea before that
                don't know its history
        do not have any history
        no idea of the history
        barn find
        barnfind
        nobody knows where it was
        no idea what was done before
        know nothing about it
        nothing known of it
        nobody knows its past
        nobody knows the history of my car
        before that nobody knows anything
        no clue about its past
        what was before only God knows
        no idea what's been changed
        couldn't say if anything had been swapped`,
      ),
    ).toEqual([]);
    expect(
      having(
        "history-unknown",
        "the history is known\nI know the history\nsteering wheel out of a barn find\nthe wing from my barn find\nno idea who made it",
      ),
    ).toEqual([]);
  });
});

describe("a part by itself", () => {
  const notLoose = (phrases: string, about = ""): readonly string[] =>
    lines(phrases).filter((text) => !carInWords(readDemo(text, about)).includes("loose"));
  const loose = (phrases: string, about = ""): readonly string[] =>
    lines(phrases).filter((text) => carInWords(readDemo(text, about)).includes("loose"));
  test("is loose when its owner says so, or that there is no car", () => {
    expect(
      notLoose(
        `loose one
        a loose pair
        it is loose
        its loose
        bought loose
        loose
        not on a car
        not off any car
        off a car
        off an old car
        from a donor
        I don't have a car
        do you see, no car
        no car yet
        no car to go with it
        there's no car round it
        without a car
        never fitted
        never been on a car
        it's off ebay
        from a breaker, I think`,
        "door-mirror",
      ),
    ).toEqual([]);
    expect(
      notLoose("a loose mirror\na loose steering wheel\nI have two loose wings\nmirror pair, loose"),
    ).toEqual([]);
  });
  test("is loose when it came from where parts are sold, or is sold", () => {
    expect(
      notLoose(
        `mirror, swap meet find
        a mirror from the autojumble
        boot sale mirror
        wing from ebay for a project
        mirror on e bay
        mirror in the classifieds
        spare mirror
        mirror from a breaker
        the mirror has been on the shelf
        mirror, new old stock
        NOS mirror
        mirror in its original wrapper
        mirror in a box of bits
        mirror for sale
        selling my mirror
        mirror, up for grabs
        the mirror was offered me
        mirror, 40 quid posted
        The ad says: alloy mirror. £180 posted
        the seller wants too much for the mirror
        thinking of buying this mirror
        my mirror arrives thursday
        just bought a mirror
        I bought a steering wheel
        bought the mirror at a swap meet
        got a wing from a local breaker
        won the mirror on ebay
        found a mirror in a shed
        picked up a mirror at a farm sale
        the wing came off a scrapyard
        The mirror is plastic. Got it at a swap meet
        One mirror and one wing. Both bought from the same man`,
      ),
    ).toEqual([]);
    expect(
      notLoose(
        "bought this one used\nbought it at a swap meet\ngot these from a local breaker\nwon it on ebay\nfound one on a French site",
        "door-mirror",
      ),
    ).toEqual([]);
  });
  test("is not loose for lying on its owner's bench", () => {
    expect(
      loose(
        `mirror on the bench
        mirror, o/s, off the car and on the kitchen table
        I had the dash in my hands
        steering wheel off the car
        the mirror went back by itself
        my spare road wheel is steel
        mirror still on my car
        the steering wheel is loose at the boss`,
      ),
    ).toEqual([]);
  });
  test("is neither another thing that was sold, bought or found, nor a car", () => {
    expect(
      loose(
        `For sale: two bumper ends and a jack
        Selling: workshop manual, six inch rule
        set of 4 trailer wheels for sale
        beware of covers from the auction site
        list of things I take to the autojumble
        found a hairpin in the horn
        the plastic handle came off in my hand
        a pig was loose
        an N in its little box on the wing
        wee N in a box under the tip of the spoiler
        he threw in a box of mirrors
        the car is for sale
        none for sale
        For sale soon: my Shrike
        just bought a Shrike
        I bought a Shrike Mk II from a dealer
        first owner, bought it at the dealer in 77 with this dash
        bought it in 80, the mirror was on it
        picked at the paint on the wing
        as if bought with the mirror on another day`,
      ),
    ).toEqual([]);
    expect(
      loose("found it in the shed\nit's on ebay, look\nwater stands in the spare wheel well", "door-mirror"),
    ).toEqual([]);
  });
  test("is no loose one that was left where it was, or warned of", () => {
    expect(
      loose(
        `the mirror at the autojumble was rough. I left it on his table
        saw a mirror at the swap meet, didn't buy
        don't buy the mirrors from that stall`,
      ),
    ).toEqual([]);
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
    ["Mk2 S wing", ["model shrike-ii", "trim s"]],
    ["for my car, a Mk1 S", ["model shrike", "trim s"]],
    ["Mark II as you would expect", ["model shrike-ii"]],
    ["my late husband's Shrike S", ["trim s"]],
    ["home market S", ["market home", "trim s"]],
    ["my car is a base one", ["trim standard"]],
    ["car is right hand drive, standard one", ["market home", "trim standard"]],
    ["the mirror is a standard one", []],
    ["my car was sold new in Holland", ["market continent"]],
    ["a car sold new in the Netherlands", ["market continent"]],
    ["supplied new to the States", ["market america"]],
    ["delivered new in Sweden", ["market continent"]],
    ["delivered new in March", []],
    ["new to Holland, hello", []],
    ["it's a US one", ["market america"]],
    ["Dutch papers and all", ["market continent"]],
    ["car papers", []],
    ["a British Mark II", ["market home", "model shrike-ii"]],
    ["was it heated on the tourings only", []],
    ["which did the German cars get", []],
    ["heard of the Mk2 ones", []],
    ["seen a Touring at the lights", []],
    ["went to look at a Mk2 Touring", []],
    ["went to look at a Mk2 Touring and bought it", ["model shrike-ii", "trim touring"]],
    ["my brother in law's Mark II", []],
    ["on the Mk2 of my cousin they are", []],
    ["Wilf had the wing of a Mk1 on his Mk2", []],
    ["a chap next to us had a padded dash in a Mk1", []],
    ["Is it true turbines go straight on a Mk1?", []],
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
