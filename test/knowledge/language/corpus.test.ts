import { expect, test } from "vitest";
import { annotatedMessages, type CorpusHalf } from "../../support/corpus-folder.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
import { isOrdinary } from "../../support/ordinary-writers.ts";
import {
  assertsState,
  f1,
  precision,
  recall,
  type ScoredMessage,
  scoreMessage,
} from "../../support/score-corpus.ts";

const lexicon = await demoLexicon();
const read = new Map<CorpusHalf, readonly ScoredMessage[]>();
function scored(half: CorpusHalf): readonly ScoredMessage[] {
  const messages = read.get(half) ?? annotatedMessages(half).map((message) => scoreMessage(message, lexicon));
  read.set(half, messages);
  return messages;
}
const withoutFact = (messages: readonly ScoredMessage[]): readonly ScoredMessage[] =>
  messages.filter(({ message }) => message.facts.length === 0);
/** Only counts: what the held-out messages say is for nobody's eyes. */
function inFigures(name: string, messages: readonly ScoredMessage[]): string {
  const empty = withoutFact(messages);
  return (
    `message corpus, ${name}: F1 ${f1(messages).toFixed(3)}, precision ${precision(messages).toFixed(3)}, ` +
    `recall ${recall(messages).toFixed(3)} on ${messages.length} messages; ` +
    `${empty.filter(assertsState).length} of ${empty.length} without a fact assert a state\n`
  );
}

const about = 180_000;

// How writers are read who taught nothing of what was learnt is tested beside the learning, on the whole development half.
test(
  "facts and car facts are read with an F1 of at least 0.93 on messages never looked at",
  () => {
    process.stdout.write(
      inFigures("development", scored("development")) + inFigures("held out", scored("held-out")),
    );
    expect(f1(scored("held-out"))).toBeGreaterThanOrEqual(0.93);
    expect(f1(scored("development").filter(({ message }) => isOrdinary(message)))).toBeGreaterThanOrEqual(
      0.955,
    );
    expect(f1(scored("development"))).toBeGreaterThanOrEqual(0.94);
  },
  about,
);

test("of messages that hold no fact none asserts a state, and of those that taught the reader one in two hundred at most", () => {
  expect(withoutFact(scored("held-out")).length).toBeGreaterThanOrEqual(100);
  expect(withoutFact(scored("held-out")).filter(assertsState)).toHaveLength(0);
  const taught = withoutFact(scored("development"));
  expect(taught.filter(assertsState).length).toBeLessThanOrEqual(taught.length / 200);
});
