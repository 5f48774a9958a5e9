// Dials told pip by pip, dates put among quotation marks or behind what they were written with, and sizes beside words that make
// them none of the part. Wordings of the trade's talk, from memory.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";

const read = (text: string, about = "") => findingsInWords(readDemo(text, about));

describe("a dial", () => {
  test.each([
    ["pip at six is struck flat, 80 in the middle", "door-mirror.casting-date June 1980"],
    ["pip for may is missing and it says 80 in the middle", "door-mirror.casting-date May 1980"],
    [
      "dial has 81 in the middle and the june pip is the one that's gone flat",
      "door-mirror.casting-date June 1981",
    ],
    ["the dial: pip missing at 3, seventy nine in the middle", "door-mirror.casting-date March 1979"],
    ["the dial: pip missing at 3, eighty in the middle", "door-mirror.casting-date March 1980"],
    ["dial beside the mark: 12 pips, no. 8 struck flat, figures 81", "door-mirror.casting-date August 1981"],
    [
      "the clock thing with pips: fifth one is flattened and 80 in the middle",
      "door-mirror.casting-date May 1980",
    ],
    [
      "screw spacing is 62 mm. Casting dial, the missing pip is march and the figures say 79",
      "door-mirror.screw-spacing 62±0.5 mm",
    ],
  ])("%s: %s", (text, expected) => {
    expect(read(text, "door-mirror")).toContain(expected);
  });
  test("is told beside a week on the hub, each of its own feature", () => {
    expect(read("dial says Jun 80, hub stamped week 9 80", "road-wheel")).toEqual([
      "road-wheel.cast-date June 1980",
      "road-wheel.machining-stamp 25 February to 2 March 1980",
    ]);
    expect(read("dial on the back of this one: pointer on Oct, year 82", "road-wheel")).toEqual([
      "road-wheel.cast-date October 1982",
    ]);
  });
});

test("a month of that year is of the year last said", () => {
  expect(read("glass says week 47 1982. Housing dial says September that year", "door-mirror")).toEqual([
    "door-mirror.glass-week 22 to 28 November 1982",
    "door-mirror.casting-date September 1982",
  ]);
  expect(read("the housing dial says September that year", "door-mirror")).toEqual([]);
  expect(read("I was there in the seventies, the dial says May of the same year", "door-mirror")).toEqual([]);
});

describe("a mark", () => {
  test.each([
    ["JT 2/78 in felt tip under resin", "front-wing", "front-wing.laid-date February 1978"],
    ['laid date "6.81" and initials', "front-wing", "front-wing.laid-date June 1981"],
    ['pencilled under the resin, "14 2 79"', "rear-spoiler", "rear-spoiler.laminator-date 14 February 1979"],
    [
      "pencil date under the resin which I read as June 1980",
      "rear-spoiler",
      "rear-spoiler.laminator-date June 1980",
    ],
    [
      "someone hit 31/81 in by hand on the hub face",
      "road-wheel",
      "road-wheel.machining-stamp 27 July to 2 August 1981",
    ],
    [
      "week 31 of 1981 according to the etching",
      "door-mirror",
      "door-mirror.glass-week 27 July to 2 August 1981",
    ],
    [
      "since the speedo is out: 2/80 by the cable",
      "instrument-panel",
      "instrument-panel.speedo-date February 1980",
    ],
    ["breath on the glass and 12 80 pops up", "door-mirror", "door-mirror.glass-week 17 to 23 March 1980"],
  ])("%s (%s): %s", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
  test.each([
    ["it looks all very eighties", "instrument-panel"],
    ["I can't date it, reckon about 83", "instrument-panel"],
    ["one of them 80s glove things on the wheel rim", "steering-wheel rim-cover"],
    ["the stamp said 1931", "road-wheel"],
  ])("not: %s (%s)", (text, about) => {
    expect(read(text, about).join()).not.toMatch(/date|stamp/);
  });
  test("a stop before a weight is no figure with a dot", () => {
    expect(read("I had the mirror glass out (swearing). 1 lb 2 oz on the scales")).toEqual([
      "door-mirror.mass 1.125±0.0313 lb",
    ]);
  });
});

describe("no size of the part", () => {
  test.each([
    ["my scale gave up at 12 pounds", "front-wing mass"],
    ["my scales only go to 2 kg and the needle hit the stop", "rear-spoiler mass"],
    ["the tape has a kink at the one foot mark", "front-wing length"],
    ["they missed by 5 mm", "instrument-panel"],
    ['laid my 6" rule on it', "door-mirror"],
    ["gaps go 60, 71, 58, 66", "front-wing"],
    ["gaps of 80, 110, 95", "front-wing"],
    ["gaps run 118, 80, 110", "front-wing"],
    ["no two inches the same", "rear-spoiler"],
    ["it has play, about two inches", "road-wheel"],
    ["car sits two inches lower", "road-wheel"],
    ["I drove 600 of them", "instrument-panel"],
    ["my rule starts 1/8 in from the end", "rear-spoiler"],
    ["the bird has one foot rubbed away", "steering-wheel"],
    ["I might fit a smaller wheel, 13 inch leather", "steering-wheel"],
  ])("%s (%s)", (text, about) => {
    expect(read(text, about).filter((each) => /\d/.test(each))).toEqual([]);
  });
});

describe("a size", () => {
  test.each([
    ["laminate at the lip: 5.2mm / 5.4 / 5.3, so 5.3 mm", "front-wing", "front-wing.thickness 5.3±0.05 mm"],
    ["weighed it while the wife was out, 2.4 kg", "rear-spoiler mass", "rear-spoiler.mass 2.4±0.05 kg"],
    [
      "1) width 1192mm 2) weight 3.1kg 3) front flange 3.8 mm 4) no idea",
      "rear-spoiler",
      "rear-spoiler.mass 3.1±0.05 kg",
    ],
    ["38.4 inches over all", "instrument-panel", "instrument-panel.panel-width 38.4±0.05 in"],
    ["rim thickness twenty eight mil", "steering-wheel", "steering-wheel.rim-thickness 28±0.5 mm"],
    ["lip height two and 3/8 inches", "rear-spoiler", "rear-spoiler.lip-height 2.375±0.0625 in"],
  ])("%s (%s): %s", (text, about, expected) => {
    expect(read(text, about)).toContain(expected);
  });
});
