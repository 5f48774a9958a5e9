// Each date of a message in its place: the car's, a mark's on the part spoken of or just asked for, one that was put aside because it may be of
// several marks, one that is not yet, or nobody's. Everyday English, no source; weeks are ISO 8601.
import { expect, test } from "vitest";
import { layOut } from "../../../knowledge/language/lay-out.ts";
import { readDates } from "../../../knowledge/language/read-dates.ts";
import { demoLexicon, testToday } from "../../support/demo-lexicon.ts";
import { carFindingInWords, findingInWords } from "../../support/reading-in-words.ts";

const lexicon = await demoLexicon();

/** What is made of the dates, and which of them were given a place. `about`: "part" or "part askedFeature". */
function datesOf(text: string, about: string): string {
  const [part = "", askedFeature] = about.split(" ");
  const { view, lower, dates } = layOut(text, lexicon, {
    today: testToday,
    ...(part === "" ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });
  const { findings, car, leftAside, notYet, used } = readDates(view, lower, dates);
  return [
    ...car.map((each) => `${carFindingInWords(each)} "${each.words}"`),
    ...findings.map((each) => `${findingInWords(each)} "${each.words}" ${each.certainty}`),
    ...leftAside.map((words) => `several: ${words}`),
    ...notYet.map((words) => `not yet: ${words}`),
    `used ${used.map((each) => each.text).join("+")}`.trim(),
  ].join(" | ");
}

test.each([
  ["", "built 1981", 'built 1981 "1981" | used 1981'],
  ["", "June 1980, Shrike S", 'built June 1980 "June 1980" | used june 1980'],
  ["", "Touring, 1984", 'built 1984 "1984" | used 1984'],
  ["", "standard, 1984", "used"],
  ["", "built 1981, no, built 1982", 'built 1982 "1982" | used 1981+1982'],
  ["", "built in 1981, model year 1982", 'built 1981 "1981" | model year 1982 "1982" | used 1981+1982'],
  ["", "built in 2030", "not yet: 2030 | used"],
  ["", "built in may 2025", "used may 2025"],
  ["", "built june 2025", "used june 2025"],
  ["", "built july 2025", "not yet: july 2025 | used"],
  ["", "built 1974, a Shrike", 'built 1974 "1974" | used 1974'],
  ["", "built 1975", 'built 1975 "1975" | used 1975'],
  ["", "built 1986", 'built 1986 "1986" | used 1986'],
  ["", "built in 1990", "used 1990"],
  ["", "his was built in 1981", "used 1981"],
  ["", "the seller says it was built in 1981", "used 1981"],
  ["", "is it right for a car built in 1981?", 'built 1981 "1981" | used 1981'],
  ["", "5/80", "used"],
  ["", "1981", 'built 1981 "1981" | used 1981'],
  ["", "81", 'built 1981 "81" | used 81'],
  ["door-mirror", "1981", 'built 1981 "1981" | used 1981'],
  [
    "door-mirror glass-week",
    "31 81",
    'door-mirror.glass-week 27 July to 2 August 1981 "31 81" 1 | used 31 81',
  ],
  ["door-mirror glass-week", "31 81?", "used 31 81"],
  [
    "door-mirror glass-week",
    "it says 31 81, so summer of 1981?",
    'door-mirror.glass-week 27 July to 2 August 1981 "it says 31 81, so summer of 1981?" 1 | used 31 81+summer of 1981',
  ],
  [
    "door-mirror glass-week",
    "31/81",
    'door-mirror.glass-week 27 July to 2 August 1981 "31/81" 1 | used 31/81',
  ],
  [
    "door-mirror glass-week",
    "I think the glass is dated 31 81",
    'door-mirror.glass-week 27 July to 2 August 1981 "I think the glass is dated 31 81" 0.75 | used 31 81',
  ],
  ["door-mirror glass-week", "the seller says 31 81", "used 31 81"],
  [
    "door-mirror glass-week",
    "there is 31 81 beside the nut, in the corner of the whole thing",
    'door-mirror.glass-week 27 July to 2 August 1981 "31 81" 1 | used 31 81',
  ],
  [
    "door-mirror glass-week",
    "may 1980 on the glass",
    'door-mirror.glass-week May 1980 "may 1980" 1 | used may 1980',
  ],
  ["door-mirror screws", "1981", "used"],
  ["door-mirror screws", "31 81", 'door-mirror.glass-week 27 July to 2 August 1981 "31 81" 1 | used 31 81'],
  [
    "door-mirror casting-date",
    "arrow at 5, centre 80",
    'door-mirror.casting-date May 1980 "arrow at 5, centre 80" 1 | used',
  ],
  [
    "door-mirror",
    "arrow at 5, centre 80",
    'door-mirror.casting-date May 1980 "arrow at 5, centre 80" 1 | used',
  ],
  [
    "door-mirror",
    "arrow at 5, centre 80, which I take for may 1980",
    'door-mirror.casting-date May 1980 "arrow at 5, centre 80" 1 | used',
  ],
  ["door-mirror", "3180 on the glass", "used"],
  [
    "door-mirror",
    "glass stamped 31 80, casting dial arrow at 5, centre 80",
    'door-mirror.casting-date May 1980 "dial arrow at 5, centre 80" 1 | door-mirror.glass-week 28 July to 3 August 1980 "31 80" 1 | used 31 80',
  ],
  ["door-mirror", "stamped 31 80", 'door-mirror.glass-week 28 July to 3 August 1980 "31 80" 1 | used 31 80'],
  ["door-mirror", "stamped 5/80", 'door-mirror.casting-date May 1980 "5/80" 1 | used 5/80'],
  ["door-mirror", "marked may 1980", 'door-mirror.glass-week May 1980 "may 1980" 1 | used may 1980'],
  [
    "rear-spoiler",
    "laminator wrote 5/80, in pencil",
    'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80',
  ],
  ["rear-spoiler", "dated 5/80, so may 1980", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  ["rear-spoiler", "dated 5/80, taken for 6/80", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  [
    "rear-spoiler",
    "5/80 in pencil. bought 7/94",
    'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80',
  ],
  ["rear-spoiler", "stencil reads 61", "used"],
  ["rear-spoiler", "stamp said 1931", "used"],
  ["rear-spoiler", "dated 5/80 and 6/80", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80+6/80'],
  ["rear-spoiler", "is it dated 5/80?", "used 5/80"],
  ["rear-spoiler", "his is dated 5/80", "used 5/80"],
  ["rear-spoiler", "5/80", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  ["rear-spoiler", "IH 5/80", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  ["rear-spoiler", "5/80 primer on it", "used"],
  ["rear-spoiler", "replaced 5/80", "used"],
  ["rear-spoiler", "5/60 in there", "used"],
  ["rear-spoiler", "5/72 in there", 'rear-spoiler.laminator-date May 1972 "5/72" 1 | used 5/72'],
  ["rear-spoiler", "5/71 in there", "used"],
  ["rear-spoiler", "5/90 in there", 'rear-spoiler.laminator-date May 1990 "5/90" 1 | used 5/90'],
  ["rear-spoiler", "5/91 in there", "used"],
  ["rear-spoiler", "may 1980 there", "used"],
  ["steering-wheel", "stamped 0480", 'steering-wheel.stamp-date April 1980 "0480" 1 | used 0480'],
  [
    "steering-wheel",
    "hub stamped 5 80, tyre made 31 81",
    'steering-wheel.stamp-date May 1980 "5 80" 1 | used 5 80',
  ],
  ["steering-wheel stamp-date", "5 80 by the nut", 'steering-wheel.stamp-date May 1980 "5 80" 1 | used 5 80'],
  ["steering-wheel stamp-date", "5/80 by weight", "used"],
  [
    "steering-wheel stamp-date",
    "12/7/80 there",
    'steering-wheel.stamp-date 12 July 1980 "12/7/80" 1 | used 12/7/80',
  ],
  [
    "steering-wheel stamp-date",
    "7/95 there",
    'steering-wheel.stamp-date July 1995 "7/95 there" 1 | used 7/95',
  ],
  [
    "road-wheel",
    "machined 3181, cast dial arrow at 5, centre 80",
    'road-wheel.cast-date May 1980 "dial arrow at 5, centre 80" 1 | used',
  ],
  [
    "road-wheel",
    "stamped 31 81",
    'road-wheel.machining-stamp 27 July to 2 August 1981 "31 81" 1 | used 31 81',
  ],
  [
    "road-wheel",
    "stamped 5 81",
    'road-wheel.machining-stamp 26 January to 1 February 1981 "5 81" 1 | used 5 81',
  ],
  [
    "front-wing",
    "laid 5/80, car built 6/80",
    'built June 1980 "6/80" | front-wing.laid-date May 1980 "5/80" 1 | used 5/80+6/80',
  ],
  ["front-wing", "laid 5/2030", "used"],
  ["instrument-panel", "speedo says 5/80", 'instrument-panel.speedo-date May 1980 "5/80" 1 | used 5/80'],
  ["", "the tyres were made 31/81", "used"],
  ["", "everything built in 1981", "used"],
  [
    "",
    "car is a 1981, registered may 1981",
    'built November 1980 to May 1981 "may 1981" | used 1981+may 1981',
  ],
  ["", "week 31 81", "used week 31 81"],
  ["", "registered may 1981", 'built November 1980 to May 1981 "may 1981" | used may 1981'],
  ["", "my shrike of 1980", 'built 1980 "1980" | used 1980'],
  ["", "the clock says 3 with 83 in the middle so march 83?", "used"],
  [
    "rear-spoiler",
    "the clock says 3 with 83 in the middle so march 83?",
    'rear-spoiler.clock March 1983 "clock says 3 with 83" 1 | used',
  ],
  ["rear-spoiler", "the clock says 3 with 83?", "used"],
  ["rear-spoiler", "about 5/80 stamped in it", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  ["rear-spoiler", "'5/80' written in it", 'rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80'],
  ["door-mirror", "12 81 on the glass", 'door-mirror.glass-week 16 to 22 March 1981 "12 81" 1 | used 12 81'],
  ["door-mirror", "12/82 in the corner", 'door-mirror.casting-date December 1982 "12/82" 1 | used 12/82'],
  ["door-mirror", "dial says may 1980", 'door-mirror.casting-date May 1980 "dial says may 1980" 1 | used'],
  ["road-wheel", "12 81 struck in the hub", "used"],
  ["", "glass stamped 31 80", 'door-mirror.glass-week 28 July to 3 August 1980 "31 80" 1 | used 31 80'],
  ["", "hub stamped 5/80", 'road-wheel.machining-stamp 28 January to 3 February 1980 "5/80" 1 | used 5/80'],
  [
    "",
    "mirror glass week mark: 31 80. spoiler moulding clock arrow at 5, centre 80",
    'rear-spoiler.clock May 1980 "clock arrow at 5, centre 80" 1 | door-mirror.glass-week 28 July to 3 August 1980 "31 80" 1 | used 31 80',
  ],
  ["rear-spoiler", "moulding clock? arrow at 5, centre 80", "used"],
  [
    "rear-spoiler",
    "moulding clock 3/79, laminator's date 5/80",
    'rear-spoiler.clock March 1979 "clock 3/79" 1 | rear-spoiler.laminator-date May 1980 "5/80" 1 | used 5/80',
  ],
  [
    "rear-spoiler",
    "I think the pencil says 5/80",
    'rear-spoiler.laminator-date May 1980 "5/80" 0.75 | used 5/80',
  ],
  [
    "rear-spoiler",
    "the arrow points to 5 and in the middle 80, I take it for may 1980, stamped",
    'rear-spoiler.clock May 1980 "arrow points to 5 and in the middle 80" 1 | used',
  ],
  ["rear-spoiler", "9 with five dots, which I take for may 1979", "several: 9 with five dots | used"],
  [
    "rear-spoiler",
    "clock: arrow at 5, centre 80. Bought may 1995",
    'rear-spoiler.clock May 1980 "clock: arrow at 5, centre 80" 1 | used',
  ],
  ["door-mirror", "dated 5/80, making it may 1980", 'door-mirror.casting-date May 1980 "5/80" 1 | used 5/80'],
  ["door-mirror", "dated 5/80. so may 1980 it is", 'door-mirror.casting-date May 1980 "5/80" 1 | used 5/80'],
  ["door-mirror", "dated 5/80 = may 1980", 'door-mirror.casting-date May 1980 "5/80" 1 | used 5/80'],
  [
    "door-mirror",
    "dated 5/80, it was so good that all of the men of the works say may 1980",
    'door-mirror.casting-date May 1980 "5/80" 1 | used 5/80+may 1980',
  ],
  ["front-wing", "laid about 5/80", 'front-wing.laid-date May 1980 "5/80" 1 | used 5/80'],
  [
    "front-wing",
    "laid circa may 1980",
    'front-wing.laid-date April to June 1980 "circa may 1980" 1 | used circa may 1980',
  ],
  ["front-wing", "laid 'may 80'", 'front-wing.laid-date May 1980 "may 80" 1 | used may 80'],
  ["front-wing", "date on it is 1980", 'front-wing.laid-date 1980 "1980" 1 | used 1980'],
  ["front-wing", "date on it is 80s", "used"],
  ["rear-spoiler", "8/71 in there", "used"],
  ["rear-spoiler", "9/71 in there", 'rear-spoiler.laminator-date September 1971 "9/71" 1 | used 9/71'],
  ["rear-spoiler", "6/90 in there", 'rear-spoiler.laminator-date June 1990 "6/90" 1 | used 6/90'],
  ["rear-spoiler", "7/90 in there", "used"],
  ["", "built 8/74", "used 8/74"],
  ["", "built 9/74", 'built September 1974 "9/74" | used 9/74'],
  ["", "built 6/87", 'built June 1987 "6/87" | used 6/87'],
  ["", "built 7/87", "used 7/87"],
  ["rear-spoiler", "stamped 1971", "several: 1971 | used 1971"],
  ["rear-spoiler", "written 71", 'rear-spoiler.laminator-date 1971 "71" 1 | used 71'],
  ["rear-spoiler", "written 70", "used"],
  ["rear-spoiler", "may 1980 in the corner of it", "used"],
  [
    "rear-spoiler laminator-date",
    "may 1980 in the corner of it",
    'rear-spoiler.laminator-date May 1980 "may 1980" 1 | used may 1980',
  ],
  ["rear-spoiler laminator-date", "bought may 1980", "used"],
  [
    "door-mirror glass-week",
    "31 81, I think",
    'door-mirror.glass-week 27 July to 2 August 1981 "31 81, I think" 0.75 | used 31 81',
  ],
] as const)("(%s) %s", (about, text, expected) => {
  expect(datesOf(text, about)).toBe(expected);
});
