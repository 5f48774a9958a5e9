import { expect, test } from "vitest";
import { parseNumber } from "../../../knowledge/language/written-numbers.ts";
import { type Row, readDemo } from "../../support/read-demo.ts";
import { carInWords, findingsInWords } from "../../support/reading-in-words.ts";

const measured: readonly Row[] = [
  ['17 3/8" wide', "rear-spoiler", ["rear-spoiler.width 17.375±0.0625 in"]],
  ["47 inches across the tips", "rear-spoiler", ["rear-spoiler.width 47±0.5 in"]],
  ["1,180 mm tip to tip", "rear-spoiler", ["rear-spoiler.width 1180±0.5 mm"]],
  ["44,5 cm across", "instrument-panel", ["instrument-panel.panel-width 44.5±0.05 cm"]],
  ["about 44cm across", "instrument-panel", ["instrument-panel.panel-width 44±1 cm"]],
  ["3 ft 10 wide", "rear-spoiler", ["rear-spoiler.width 46±0.5 in"]],
  ["3' 10 1/2\" tip to tip", "rear-spoiler", ["rear-spoiler.width 46.5±0.25 in"]],
  ["it weighs 3 lb 4 oz", "rear-spoiler", ["rear-spoiler.mass 3.25±0.0313 lb"]],
  ["it weighs 1.2kg", "rear-spoiler", ["rear-spoiler.mass 1.2±0.05 kg"]],
  ["weighs between 2.1 and 2.3 kg", "rear-spoiler", ["rear-spoiler.mass 2.2±0.1 kg"]],
  ["1.18 m wide", "rear-spoiler", ["rear-spoiler.width 118±0.5 cm"]],
  [
    "it's 1182 wide, 62 high at the lip and 2150 grams on the kitchen scales",
    "rear-spoiler",
    ["rear-spoiler.width 1182±0.5 ?", "rear-spoiler.lip-height 62±0.5 ?", "rear-spoiler.mass 2150±0.5 g"],
  ],
  ["2.1kg", "rear-spoiler", ["rear-spoiler.mass 2.1±0.05 kg"]],
  ["2 kilos 350 on the scales", "rear-spoiler", ["rear-spoiler.mass 2.35±0.0005 kg"]],
  ["half an inch thick", "front-wing", ["front-wing.thickness 0.5±0.25 in"]],
  ["it weighs two kilos and a half", "rear-spoiler", ["rear-spoiler.mass 2.5±0.25 kg"]],
  ["weighed it, 1980 grams bare", "rear-spoiler", ["rear-spoiler.mass 1980±0.5 g"]],
  ["rim width 5.5 in between the flanges", "road-wheel", ["road-wheel.rim-width 5.5±0.05 in"]],
  ["Spoiler width? 46 1/2 inches.", "", ["rear-spoiler.width 46.5±0.25 in"]],
  ["lip height 600 mm", "rear-spoiler", ["rear-spoiler.lip-height 600±0.5 mm"]],
  ["30 g in water", "rear-spoiler", []],
  ["rim about 27 mm thick at 3 o'clock", "steering-wheel", ["steering-wheel.rim-thickness 27±1 mm"]],
  ["car was built november 1981", "rear-spoiler width", []],
  ["2.1 kg", "", []],
  ["44", "rear-spoiler lip-height", ["rear-spoiler.lip-height 44±0.5 ?"]],
  ["the car weighs 900 kg", "rear-spoiler", []],
  ["8mm studs", "rear-spoiler", []],
  ["420 mm", "rear-spoiler", []],
];
test.each(measured)("a size hangs on the feature it speaks of, or on none: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about))).toEqual(expected);
});

test.each([
  ["1-1/4", 1.25, 1 / 8],
  ["17 3/8", 17.375, 1 / 16],
  ["1,275", 1275, 0.5],
  ["44.5", 44.5, 0.05],
  ["44,5", 44.5, 0.05],
])("%s is read with half of the last place said", (written, value, halfWidth) => {
  expect(parseNumber(written)?.value).toBeCloseTo(value, 12);
  expect(parseNumber(written)?.halfWidth).toBeCloseTo(halfWidth, 12);
});

const built: readonly (readonly [string, readonly string[]])[] = [
  ["car was finished 2 november 1981", ["built 2 November 1981"]],
  ["built 11/81", ["built November 1981"]],
  ["Nov 81 car", ["built November 1981"]],
  ["an 81", ["built 1981"]],
  ["early 1980", ["built January to April 1980"]],
  ["it's a late '79 car", ["built September to December 1979"]],
  ["my car was built in the summer of 80", ["built June to August 1980"]],
  ["built between 79 and 81", ["built 1979 to 1981"]],
  ["built 1981-11-02", ["built 2 November 1981"]],
  ["built 1980-05", ["built May 1980"]],
  ["Square or round tips on a 79?", []],
  ["1981 model", ["model year 1981"]],
  ["first registered in march 1982", ["built September 1981 to March 1982"]],
  ["resprayed in 92, built 1981", ["built 1981"]],
  ["I bought it in 1995", []],
  ["the brochure is from 1978", []],
  ["seller says it was built in 1979", []],
  ["my mate's car was built in 1979", []],
  ["built in 2031", []],
];
test.each(built)("a car's date is told from an errand's: %s", (text, expected) => {
  expect(carInWords(readDemo(text)).filter((line) => /built|model year/.test(line))).toEqual(expected);
});

const marks: readonly Row[] = [
  ["glass marked week 31 81", "door-mirror", ["door-mirror.glass-week 27 July to 2 August 1981"]],
  ["week 31 of 1981 on the glass", "door-mirror", ["door-mirror.glass-week 27 July to 2 August 1981"]],
  ["the clock arrow is at 5, 80 in the centre", "rear-spoiler", ["rear-spoiler.clock May 1980"]],
  ["clock reads 5/80", "rear-spoiler", ["rear-spoiler.clock May 1980"]],
  ["pencil date says 14/3/79", "rear-spoiler", ["rear-spoiler.laminator-date 14 March 1979"]],
  ["stamped 7/79 on the spoke", "steering-wheel", ["steering-wheel.stamp-date July 1979"]],
  ["hub face stamp is 31/81", "road-wheel", ["road-wheel.machining-stamp 27 July to 2 August 1981"]],
  [
    "cast date 3 80 and machining stamp 12/80",
    "road-wheel",
    ["road-wheel.cast-date March 1980", "road-wheel.machining-stamp 17 to 23 March 1980"],
  ],
  [
    "glass stamped wk 12/79, casting dial says 7/79",
    "door-mirror",
    ["door-mirror.casting-date July 1979", "door-mirror.glass-week 19 to 25 March 1979"],
  ],
];
test.each(marks)("a mark on the part goes to the date it is: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
  expect(carInWords(readDemo(text, about))).toEqual([]);
});

test("figure and dots keep both habits of every year that fits, those of the cars' years weighing most", () => {
  const [finding] = readDemo("two dots before a 1 on the glass", "door-mirror").findings;
  expect(finding?.feature).toBe("glass-dots");
  const readings = finding?.value.kind === "date" ? finding.value.readings : [];
  const first = readings.filter((reading) => reading.weight === 1).map((reading) => reading.interval.from);
  expect(first).toEqual([12 * 1981 + 1, 12 * 1981 + 4]);
});
