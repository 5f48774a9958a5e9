// Names of cars in the ways clubs say them: of the speaker's own car in a list or with a letter alone, and of any car that a
// question, a rule, a comparison or a donor names. Everyday English, no source.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords } from "../../support/reading-in-words.ts";

const car = (text: string, about = "") => carInWords(readDemo(text, about));

describe("the speaker's own car", () => {
  test.each([
    ["1979 model, home market, S. The mirror is alloy", "trim s"],
    ["S here, UK car, built march 1981", "trim s"],
    ["S, built June 1979. The spoiler is on", "trim s"],
    ["got my dads S here, built in March 1980", "trim s"],
    ["the wheel on my 1978-built S has a plastic rim", "trim s"],
    ["a pond in the barn and our S", "trim s"],
    ["WTB dash panel. Car is a 1979 S", "trim s"],
    ["WTB dash panel. Car is a 1979 S", "built 1979"],
    ["it's a Touring so I guess it should be wood", "trim touring"],
    ["My Touring's dash is covered in vinyl", "trim touring"],
    ["Clip in caps. Touring of course, 1983 model", "trim touring"],
    ["Touring, 1984", "built 1984"],
    ["Mine's only a bog standard one but it starts", "trim standard"],
    ["Car's a base one from '77", "trim standard"],
    ["Mk2 owner checking in", "model shrike-ii"],
    ["Retired toolmaker, Mk II owner", "model shrike-ii"],
    ["Car's a Mk2, 1983 model, British", "market home"],
    ["Car's a 1979 S, continental", "market continent"],
    ["Car made 1981, Belgian delivered", "market continent"],
    ["it was delivered new here in Netherlands", "market continent"],
    ["Built 7 Nov 1981 says the plaque", "built 7 November 1981"],
  ])("%s: %s", (text, expected) => {
    expect(car(text)).toContain(expected);
  });
});

describe("no car of the speaker's", () => {
  test.each([
    ["do Mk2 wheels fit a Mk1?", "road-wheel"],
    ["don't fit Mk2 rims to a Mk1", ""],
    ["mk1 column 36, mk2 column 40", ""],
    ["I keep hearing the wheels bolt straight onto a Mk1, is that so?", "road-wheel"],
    ["first model wings have the short flange", ""],
    ["on the Mk1 the foot takes two screws as a rule", ""],
    ["was polyurethane a Mk2 thing", ""],
    ["did the S leave the works with a black knob?", ""],
    ["suppose it was steel, would that rule out the S?", "road-wheel construction"],
    ["what was usual for the underside on an S?", "rear-spoiler"],
    ["the Shrike S in the magazine had six dials", "instrument-panel dials"],
    ["everything made in '82 has three screws", ""],
    ["my instructor in 1982 had a Shrike", ""],
    ["he's got a '77", ""],
    ["there is a mark so I looked again", ""],
  ])("%s (%s)", (text, about) => {
    expect(car(text, about)).toEqual([]);
  });
  test("the one a part came off names no car, and makes it a part by itself", () => {
    expect(car("got these wheels off a dead base model")).not.toContain("trim standard");
  });
});

describe("a part by itself", () => {
  test.each([
    ["a pair of door mirrors, no car with it, only the pair", ""],
    ["a mirror in the shed, there was never a car with it", ""],
    ["the spoiler was bought alone without car", ""],
    ["What I have: dash out of a scrapped car, wires all end in one big white block, back is ply", ""],
    [
      "Rear spoiler off a donor shell. Before I fix the crack: black under the paint, laid mat in sheets, rough as a badger inside. six screw holes. Weighs 3120 g on the parcel scale",
      "",
    ],
    ["mirror with two bolts. Bought it loose off a chap", ""],
    ["got these in a swap, so no idea which car", "road-wheel"],
    ["only the wing, no car", ""],
  ])("%s (%s)", (text, about) => {
    expect(car(text, about)).toContain("loose");
  });
  test.each([
    ["first time poster, no car yet, still saving", ""],
    ["Gary offered me a wing with no number. I passed", "front-wing"],
    ["wing is off. The chap I bought it from said never", ""],
  ])("not: %s (%s)", (text, about) => {
    expect(car(text, about)).not.toContain("loose");
  });
});
