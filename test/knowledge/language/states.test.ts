import { expect, test } from "vitest";
import { type Row, readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";

const named: readonly Row[] = [
  [
    "alloy housing, three screws, nylon ball",
    "door-mirror",
    ["door-mirror.housing cast-alloy", "door-mirror.screws three", "door-mirror.joint nylon"],
  ],
  [
    "my mirror has an alloy housing and three screws",
    "",
    ["door-mirror.housing cast-alloy", "door-mirror.screws three"],
  ],
  [
    "the rim is leather, three spokes, cross stitch",
    "steering-wheel",
    ["steering-wheel.rim-cover leather", "steering-wheel.spokes three", "steering-wheel.stitch cross"],
  ],
  [
    "steering wheel, the wheel has two spokes and a foam rim",
    "",
    ["steering-wheel.spokes two", "steering-wheel.rim-cover foam"],
  ],
  [
    "wheel is 6J x 13, eight spokes, hollow backs",
    "",
    ["road-wheel.size-stamp six-thirteen", "road-wheel.pattern eight", "road-wheel.spoke-back hollow"],
  ],
  [
    "fixing: four studs. edge: sawn. tips: square",
    "rear-spoiler",
    ["rear-spoiler.fixing four-studs", "rear-spoiler.edge ground", "rear-spoiler.tips square"],
  ],
  [
    "**inside:** rough, *tips:* round",
    "rear-spoiler",
    ["rear-spoiler.inside-finish rough", "rear-spoiler.tips round"],
  ],
  ["gel coat looks grey", "rear-spoiler", ["rear-spoiler.gel-coat grey"]],
  [
    "its the moulded housing but it has the milled groove",
    "door-mirror",
    ["door-mirror.housing moulded-plastic", "door-mirror.groove square"],
  ],
  [
    "wing has a narrow flange and the magnet sticks",
    "",
    ["front-wing.flange narrow", "front-wing.bonded-plate plate"],
  ],
  ["I have the six-screw spoiler", "", ["rear-spoiler.fixing six-screws"]],
  [
    "mirrors: plastic, three screws. Then the wing, which has a wide flange",
    "",
    ["door-mirror.housing moulded-plastic", "door-mirror.screws three", "front-wing.flange wide"],
  ],
];
test.each(named)("states named outright are read: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
});

const misspelt: readonly Row[] = [
  [
    "moulded plastc, three scews, no castng mark",
    "door-mirror",
    ["door-mirror.housing moulded-plastic", "door-mirror.screws three", "door-mirror.casting-mark no-mark"],
  ],
  ["wingmirror with roundd groove", "", ["door-mirror.groove rounded"]],
  ["spoier with sixscrews", "", ["rear-spoiler.fixing six-screws"]],
  ["spoiler is fibre glass and hand-laid", "", ["rear-spoiler.flex stiff"]],
  [
    "cast aluminum housing, chromed",
    "door-mirror",
    ["door-mirror.housing cast-alloy", "door-mirror.finish bright"],
  ],
];
test.each(misspelt)(
  "typing slips, joined and split words do not hide a term: %s",
  (text, about, expected) => {
    expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
  },
);

const paraphrased: readonly Row[] = [
  ["it's furry inside", "rear-spoiler", ["rear-spoiler.inside-finish rough"]],
  ["six phillips screws", "instrument-panel", ["instrument-panel.panel-screws six-cross"]],
  ["half a dozen screws", "rear-spoiler", ["rear-spoiler.fixing six-screws"]],
  ["Steering wheel says CORVANE on the back", "", ["steering-wheel.maker-stamp corvane"]],
  ["Q and a long number moulded in", "rear-spoiler", ["rear-spoiler.maker-mark quellam-q"]],
  ["mirror joint is plastic", "", ["door-mirror.joint nylon"]],
  ["the bolt holes are even", "front-wing", ["front-wing.bolt-holes even"]],
  ["tips sweep forward round the wings", "rear-spoiler", ["rear-spoiler.tips swept"]],
  ["Letters A B S with no arrows", "door-mirror material-mark", ["door-mirror.material-mark plain-letters"]],
  ["its white as milk under the paint", "rear-spoiler gel-coat", ["rear-spoiler.gel-coat white"]],
  [
    "3 spokes, silver",
    "steering-wheel",
    ["steering-wheel.spoke-finish silver", "steering-wheel.spokes three"],
  ],
  ["hollowed with a rib down the middle", "road-wheel", ["road-wheel.spoke-back ribbed"]],
  ["machined week stamp on the hub face", "road-wheel", []],
];
test.each(paraphrased)(
  "words that no handbook lists are led back to its own: %s",
  (text, about, expected) => {
    expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
  },
);

const denied: readonly Row[] = [
  [
    "two screws, no mark anywhere",
    "door-mirror",
    ["door-mirror.screws two", "door-mirror.casting-mark no-mark"],
  ],
  ["isnt painted", "rear-spoiler", ["rear-spoiler.inside-finish rough|smooth"]],
  ["it isn't rough or painted inside", "rear-spoiler", ["rear-spoiler.inside-finish smooth"]],
  ["not painted, not rough", "rear-spoiler", ["rear-spoiler.inside-finish smooth"]],
  ["cant find a casting mark", "door-mirror", ["door-mirror.casting-mark no-mark"]],
  ["doesn't have any drain notches", "rear-spoiler", ["rear-spoiler.drain-notches plain"]],
  ["without drain holes", "rear-spoiler", ["rear-spoiler.drain-notches plain"]],
  ["lacks a moulders mark", "rear-spoiler", ["rear-spoiler.maker-mark no-mark"]],
  ["the moulder's mark isn't there", "rear-spoiler", ["rear-spoiler.maker-mark no-mark"]],
  ["the mark is missing", "rear-spoiler", ["rear-spoiler.maker-mark no-mark"]],
  ["maker's mark? none", "rear-spoiler", ["rear-spoiler.maker-mark no-mark"]],
  ["no sign of a clock", "rear-spoiler", ["rear-spoiler.clock not-there"]],
  ["mirror has three screws not two", "", ["door-mirror.screws three"]],
  ["not two but three screws", "door-mirror", ["door-mirror.screws three"]],
  ["neither polished nor turned, painted silver lip", "road-wheel", ["road-wheel.lip painted"]],
  ["gelcoat is not black, its white", "rear-spoiler", ["rear-spoiler.gel-coat white"]],
  ["theres a logo moulded in", "rear-spoiler", ["rear-spoiler.maker-mark wc-ring|quellam-q|norrick-n|ghost"]],
  ["it doesn't flex", "rear-spoiler", ["rear-spoiler.flex stiff"]],
  ["no logo no letter no nothing", "rear-spoiler", ["rear-spoiler.maker-mark no-mark"]],
  ["no steel plate, just big washers", "front-wing", ["front-wing.bonded-plate no-plate"]],
  ["no diamond inside the casting", "door-mirror", ["door-mirror.casting-mark no-mark"]],
];
test.each(denied)("a negation reaches as far as its clause: %s", (text, about, expected) => {
  expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
});

const weighed: readonly Row[] = [
  ["more rough than smooth inside", "rear-spoiler", ["rear-spoiler.inside-finish rough"]],
  ["two or three screws", "door-mirror", ["door-mirror.screws two|three"]],
  ["three screws, sorry, two screws", "door-mirror", ["door-mirror.screws two"]],
  ["rough inside. No wait, smooth", "rear-spoiler", ["rear-spoiler.inside-finish smooth"]],
  ["the left one has two screws, the right one has three", "door-mirror", []],
  ["made of ABS", "rear-spoiler", ["rear-spoiler.flex thin-plastic"]],
  [
    "marked >ABS< inside",
    "door-mirror",
    ["door-mirror.housing moulded-plastic", "door-mirror.material-mark bracketed"],
  ],
  ["density came out at 1.05", "rear-spoiler", ["rear-spoiler.flex gives|thin-plastic"]],
];
test.each(weighed)(
  "comparisons, choices, corrections and materials are weighed: %s",
  (text, about, expected) => {
    expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
  },
);

test.each([
  ["two screws", 1],
  ["I think it has two screws", 0.75],
  ["looks like two screws", 0.75],
  ["two screws, I think", 0.75],
  ["maybe two screws", 0.5],
  ["IIRC it had two screws", 0.5],
  ["two screws right?", 0.75],
  ["has two screws, doesn't it?", 0.75],
])("doubt lowers certainty: %s", (text, certainty) => {
  expect(readDemo(text, "door-mirror").findings.map((finding) => finding.certainty)).toEqual([certainty]);
});
