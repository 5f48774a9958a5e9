// Which misbelief a sentence states, and which words come close enough to a name to be asked after. Beliefs and names of the demo handbook;
// wordings from memory.
import { expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";

function held(text: string, about: string): string {
  const { misbeliefs, nearMisses } = readDemo(text, about);
  return [
    ...misbeliefs.map(({ part, misbelief, words }) => `${part} ${misbelief} "${words}"`),
    ...nearMisses.map(({ words, meant, kind }) => `${words}: ${meant} (${kind})`),
  ].join(", ");
}

test.each([
  [
    "rear-spoiler",
    "originals were never rough inside",
    'rear-spoiler rough-means-copy "originals were never rough inside"',
  ],
  [
    "rear-spoiler",
    "originals were not rough inside",
    'rear-spoiler rough-means-copy "originals were not rough inside"',
  ],
  [
    "rear-spoiler",
    "originals aren't rough inside",
    'rear-spoiler rough-means-copy "originals aren\'t rough inside"',
  ],
  ["rear-spoiler", "originals were rough inside", ""],
  [
    "rear-spoiler",
    "rough inside so it is a copy",
    'rear-spoiler rough-means-copy "rough inside so it is a copy"',
  ],
  ["rear-spoiler", "rough inside, a copy", 'rear-spoiler rough-means-copy "rough inside, a copy"'],
  ["rear-spoiler", "rough inside and a copy of the old magazine with it", ""],
  ["rear-spoiler", "mine is rough inside. It is a copy", ""],
  [
    "rear-spoiler",
    "genuine spoilers are smooth inside",
    'rear-spoiler rough-means-copy "genuine spoilers are smooth inside"',
  ],
  [
    "rear-spoiler",
    "all genuine spoilers are smooth inside",
    'rear-spoiler rough-means-copy "all genuine spoilers are smooth inside"',
  ],
  ["rear-spoiler", "a genuine spoiler with a smooth inside, six screws and nice drain notches", ""],
  [
    "rear-spoiler",
    "every genuine spoiler with a smooth inside has six screws and nice drain notches",
    'rear-spoiler rough-means-copy "every genuine spoiler with a smooth inside has six screws and nice drain notches"',
  ],
  [
    "rear-spoiler",
    "the factory would never have left it hairy",
    'rear-spoiler rough-means-copy "the factory would never have left it hairy"',
  ],
  ["rear-spoiler", "the factory would have left it hairy", ""],
  [
    "rear-spoiler",
    "fibres showing means it is a cheap copy",
    'rear-spoiler rough-means-copy "fibres showing means it is a cheap copy"',
  ],
  ["rear-spoiler", "fibres showing means a copy", ""],
  [
    "rear-spoiler",
    "a fibre was showing, must be a cheap copy",
    'rear-spoiler rough-means-copy "a fibre was showing, must be a cheap copy"',
  ],
  ["", "rough inside must be a repro", 'rear-spoiler rough-means-copy "rough inside must be a repro"'],
  ["", "mirror: rough inside must be a repro", ""],
  ["door-mirror", "rough inside must be a repro", ""],
  [
    "rear-spoiler",
    "rough inside must be a repro, so rough inside must be a repro",
    'rear-spoiler rough-means-copy "rough inside must be a repro, so rough inside must be a repro"',
  ],
  [
    "rear-spoiler",
    "is it true that rough inside means a copy?",
    'rear-spoiler rough-means-copy "is it true that rough inside means a copy"',
  ],
  [
    "rear-spoiler",
    "the seller says rough inside means a copy. I doubt it",
    'rear-spoiler rough-means-copy "the seller says rough inside means a copy"',
  ],
  [
    "rear-spoiler",
    "two screws. Rough inside, he says, must be a repro. Nice",
    'rear-spoiler rough-means-copy "Rough inside, he says, must be a repro"',
  ],
  [
    "rear-spoiler",
    "proof: rough inside and a copy",
    'rear-spoiler rough-means-copy "proof: rough inside and a copy"',
  ],
  [
    "rear-spoiler",
    "because rough inside it is a copy with nice drain notches and all",
    'rear-spoiler rough-means-copy "because rough inside it is a copy with nice drain notches and all"',
  ],
  ["rear-spoiler", "rough copy", ""],
  ["rear-spoiler", "inside", ""],
  ["door-mirror", "symbol lamps", ""],
  [
    "instrument-panel",
    "symbol lamps are Mark II only",
    'instrument-panel words-mean-early "symbol lamps are Mark II only"',
  ],
  ["instrument-panel", "symbol lamps are Mark II", ""],
  [
    "instrument-panel",
    "only Mark II had symbol lamps",
    'instrument-panel words-mean-early "only Mark II had symbol lamps"',
  ],
  [
    "door-mirror",
    "the blured mark and the casthing and the gasgket",
    "blured: blurred diamond, no letter (state), gasgket: gasket groove (feature)",
  ],
  [
    "door-mirror",
    "blured, casthing, gasgket, hosing",
    "blured: blurred diamond, no letter (state), casthing: casting mark (feature), gasgket: gasket groove (feature)",
  ],
  ["door-mirror", "blured blured", "blured: blurred diamond, no letter (state)"],
  ["door-mirror", "gasgkets", "gasgkets: gasket groove (feature)"],
  ["door-mirror", "the gask", ""],
  ["door-mirror", "blu1red", ""],
  ["door-mirror", "rear spoilre", ""],
  ["", "spoilre", ""],
  ["", "the steering wheell", ""],
  ["", "gasgket", ""],
  ["rear-spoiler", "gasgket", ""],
  ["rear-spoiler", "spoiler with lamniator", ""],
  ["rear-spoiler", "with lamniator", "lamniator: laminator's date (feature)"],
  ["rear-spoiler", "lamniator. gasgket", "lamniator: laminator's date (feature)"],
  ["door-mirror", "glasss", "glasss: week mark on the glass (feature)"],
  ["door-mirror", "rplastic", ""],
  ["door-mirror", "morulded", "morulded: moulded plastic (state)"],
  ["door-mirror", "Gasgket", "Gasgket: gasket groove (feature)"],
  ["door-mirror", "gasgket groooove", "gasgket: gasket groove (feature)"],
  ["door-mirror", "supercalifragilistic", ""],
  ["door-mirror", "exactlly", ""],
  ["door-mirror", "dimond", "dimond: B in a diamond (state)"],
  ["door-mirror", "diamnod", "diamnod: B in a diamond (state)"],
  ["door-mirror", "diamand", "diamand: B in a diamond (state)"],
  ["door-mirror", "diumund", "diumund: B in a diamond (state)"],
  ["door-mirror", "dxxmond", "dxxmond: B in a diamond (state)"],
  ["door-mirror", "dxxxond", ""],
] as const)("(%s) %s", (about, text, expected) => {
  expect(held(text, about)).toBe(expected);
});
