import { expect, test } from "vitest";
import { type Row, readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";

test.each([
  ["seller says two screws", "hearsay"],
  ["the guy swears it has two screws", "hearsay"],
  ["supposedly alloy", "hearsay"],
  ["according to a mate it has two screws", "hearsay"],
  ["two screws, he says", "hearsay"],
  ["I was told it has three screws", "hearsay"],
  ['"two screws, alloy housing" says the advert', "hearsay"],
  ["> two screws and an alloy housing", "hearsay"],
  ["he wrote: three screws", "hearsay"],
  ["is it alloy or plastic?", "question"],
  ["does it matter if it has two screws?", "question"],
  ["are all mirrors with two screws early?", "question"],
  ["If it has two screws is it early?", "question"],
  ["wondering whether it should be alloy", "question"],
  ["what about two screws", "question"],
  ["my mate's has two screws", "another-car"],
  ["early ones have two screws", "another-car"],
  ["should have two screws", "another-car"],
  ["the other car has two screws", "another-car"],
  ["the bloke selling it reckons two screws", "hearsay"],
  ["my brother in law thinks it is alloy", "hearsay"],
  ["two screws and an alloy housing, apparently", "hearsay"],
  ["seller has confirmed two screws", "hearsay"],
  ["his mirror has two screws", "another-car"],
  ["they usually have two screws", "another-car"],
  ["all mirrors were alloy", "another-car"],
  ["I used to own a mirror with two screws", "another-car"],
  ["I will fit two screws and an alloy housing", "question"],
])("%s: nothing is taken as seen (%s)", (text, because) => {
  const reading = readDemo(text, "door-mirror");
  expect(findingsInWords(reading)).toEqual([]);
  expect(reading.leftAside.map((aside) => aside.because)).toContain(because);
});

const mixed: readonly Row[] = [
  ["seller says two screws but I count three", "door-mirror", ["door-mirror.screws three"]],
  ["the ad says alloy. It is plastic.", "door-mirror", ["door-mirror.housing moulded-plastic"]],
  ["my mate's spoiler has six screws, mine has four studs", "", ["rear-spoiler.fixing four-studs"]],
  [
    "which spoiler is this? rough inside, six screws",
    "",
    ["rear-spoiler.inside-finish rough", "rear-spoiler.fixing six-screws"],
  ],
  [
    "what is this mirror with two screws and an alloy housing?",
    "",
    ["door-mirror.screws two", "door-mirror.housing cast-alloy"],
  ],
  ["OEM or repro? six screws hold it", "rear-spoiler", ["rear-spoiler.fixing six-screws"]],
];
test.each(mixed)(
  "a message may hold somebody's word and the speaker's own eyes: %s",
  (text, about, expected) => {
    expect(findingsInWords(readDemo(text, about)).toSorted()).toEqual([...expected].toSorted());
  },
);

test.each([
  "I drove 300 miles to see it and the seller was rough",
  "my dog chewed 2 screws",
  "rough idea of the price?",
  "happy new year everyone",
  "the weather was smooth sailing, round the corner from square one",
  "https://example.com/alloy-two-screws",
  "bought it in 1995 for 200 quid",
  "lol that made my day",
  "WTB a leather rim steering wheel. Three spokes, cross stitch. Cash waiting.",
  "Had a dream about my dash last night. Six dials, all of them my mother in law.",
  "still no idea on the mark of this mirror",
  "what about the drain notches on the spoiler",
  "the spoiler drain notches, hmm",
  "hope the spoiler is rough inside, it would make my day",
  "someone asked 600 for a spoiler with a Q mark last week",
  "every Mk2 I've seen has the two spoke wheel",
  "`two screws` is what the code says",
  "Bloke says rough spoiler, six screws. Says the tips are square. I haven't seen it yet.",
  "thanks for the tip about the rough inside of the spoiler",
  "saw three Shrikes at the meet, one with a walnut dash",
  "What's a fair price for a leather rim steering wheel these days?",
])("chatter fills no fact: %s", (text) => {
  expect(readDemo(text).findings).toEqual([]);
});
