import { expect, test } from "vitest";
import { annotatedMessages, type CorpusHalf } from "../../support/corpus-folder.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
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
/** Those from whom only the judge has learnt; the finders were written by the messages of the others. */
const isLater = ({ message }: ScoredMessage): boolean => /^(?:fir|gorse)-/.test(message.id);
const earlier = (): readonly ScoredMessage[] => scored("development").filter((each) => !isLater(each));
const later = (): readonly ScoredMessage[] => scored("development").filter(isLater);

/** Only counts: what the held-out messages say is for nobody's eyes. */
function inFigures(name: string, messages: readonly ScoredMessage[]): string {
  const empty = withoutFact(messages);
  return (
    `message corpus, ${name}: F1 ${f1(messages).toFixed(3)}, precision ${precision(messages).toFixed(3)}, ` +
    `recall ${recall(messages).toFixed(3)} on ${messages.length} messages; ` +
    `${empty.filter(assertsState).length} of ${empty.length} without a fact assert a state\n`
  );
}

// The aim is an F1 of 0.93 and no state from a message without a fact on the held-out half. It is not reached: 0.890
// (precision 0.917, recall 0.864) and 8 of 125. What is missing is recall in words that no name holds.
test("facts and car facts are read with an F1 of at least 0.88 on messages never looked at", () => {
  process.stdout.write(
    inFigures("development, earlier", earlier()) +
      inFigures("development, later", later()) +
      inFigures("held out", scored("held-out")),
  );
  expect(f1(scored("held-out"))).toBeGreaterThanOrEqual(0.88);
  expect(f1(earlier())).toBeGreaterThanOrEqual(0.95);
  expect(f1(later())).toBeGreaterThanOrEqual(0.87);
});

// Read before the judge had learnt from them, 72 of the 180 later messages without a fact asserted a state.
test("of messages that hold no fact one in fifteen asserts a state at most, and none of those the finders were written by", () => {
  expect(withoutFact(scored("held-out")).length).toBeGreaterThanOrEqual(100);
  expect(withoutFact(scored("held-out")).filter(assertsState).length).toBeLessThanOrEqual(8);
  expect(withoutFact(later()).filter(assertsState).length).toBeLessThanOrEqual(21);
  expect(
    withoutFact(earlier())
      .filter(assertsState)
      .map(({ message }) => message.id),
  ).toEqual([]);
});

/** Messages of the development half of which something is missed or made up. A message may leave this list; none may join it. */
const notYetRead: ReadonlySet<string> = new Set(
  [
    "amber-037 amber-075 amber-215 birch-025 birch-033 birch-193 cedar-004 cedar-015 cedar-030 cedar-036",
    "cedar-041 cedar-043 cedar-062 cedar-063 cedar-070 cedar-072 cedar-074 cedar-075 cedar-076 cedar-077",
    "cedar-107 cedar-116 cedar-120 cedar-135 cedar-149 cedar-150 cedar-153 cedar-162 cedar-166 cedar-174",
    "cedar-175 cedar-176 cedar-178 cedar-185 fir-004 fir-006 fir-010 fir-011 fir-012 fir-016",
    "fir-022 fir-023 fir-029 fir-035 fir-037 fir-039 fir-047 fir-054 fir-056 fir-058",
    "fir-078 fir-097 fir-120 fir-124 fir-130 fir-149 fir-152 fir-153 fir-160 fir-163",
    "fir-171 fir-177 fir-179 fir-189 fir-197 fir-200 fir-212 fir-223 fir-225 gorse-001",
    "gorse-032 gorse-047 gorse-059 gorse-065 gorse-066 gorse-069 gorse-079 gorse-086 gorse-092 gorse-093",
    "gorse-111 gorse-118 gorse-122 gorse-128",
  ].flatMap((line) => line.split(" ")),
);

test("what was read as its writer meant it is read so still, message by message of the development half", () => {
  const wrong = scored("development").filter(({ missed, invented }) => missed + invented > 0);
  expect(wrong.map(({ message }) => message.id).filter((id) => !notYetRead.has(id))).toEqual([]);
});
