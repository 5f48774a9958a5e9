import { expect, test } from "vitest";
import { annotatedMessages, type CorpusHalf } from "../../support/corpus-folder.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
import { f1, type ScoredMessage, scoreMessage } from "../../support/score-corpus.ts";

const lexicon = await demoLexicon();
const scored = (half: CorpusHalf): readonly ScoredMessage[] =>
  annotatedMessages(half).map((message) => scoreMessage(message, lexicon));
const development = scored("development");
const heldOut = scored("held-out");

// Measured floors: 0.889 held out, 0.979 on the development half, when last worked on. The aim is 0.93 held out;
// what is missed there is figurative speech and words that no name of the handbook holds.
test("facts and car facts are read with an F1 of at least 0.88 on messages never looked at", () => {
  process.stdout.write(
    `message corpus: F1 ${f1(development).toFixed(3)} on ${development.length} development messages, ` +
      `${f1(heldOut).toFixed(3)} on ${heldOut.length} held-out messages\n`,
  );
  expect(f1(heldOut)).toBeGreaterThanOrEqual(0.88);
  expect(f1(development)).toBeGreaterThanOrEqual(0.97);
});

test("of messages that hold no fact at most one in fifty asserts a state, none on the development half", () => {
  const empty = [...development, ...heldOut].filter(({ message }) => message.facts.length === 0);
  expect(empty.length).toBeGreaterThanOrEqual(100);
  // Only a count: what the held-out messages say is for nobody's eyes.
  const asserting = empty.filter(({ reading }) =>
    reading.findings.some(
      (finding) => finding.value.kind === "state" || finding.value.kind === "weighed-states",
    ),
  );
  expect(asserting.length).toBeLessThanOrEqual(empty.length / 50);
  expect(asserting.filter((each) => development.includes(each)).length).toBe(0);
});
