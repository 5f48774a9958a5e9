// What the judge takes, asks back and leaves, given how likely each state and each message is.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import { gatherObservations } from "../../../knowledge/language/gather-observations.ts";
import { groundNames } from "../../../knowledge/language/grounds.ts";
import { judge, takenFrom } from "../../../knowledge/language/judge.ts";
import { type Judging, learntJudging } from "../../../knowledge/language/judging.ts";
import { messageGroundNames } from "../../../knowledge/language/message-grounds.ts";
import type { WeighedCandidate } from "../../../knowledge/language/weighed-candidates.ts";
import { silent } from "../../support/tarn-lexicon.ts";
import { mirrorLexicon, mirrorView } from "../../support/tarn-mirror.ts";
import { judgedBy, nats, weighing, weighingMessages } from "../../support/weighing.ts";

const plain = mirrorLexicon();
/** "Glint" speaks for chromed. */
const learnt: LearntWords = {
  messages: 3,
  words: ["glint"],
  telling: silent,
  tellingAtAll: silent,
  spokenOf: {},
  parts: { mirror: { housing: { chromed: { bias: -2, weights: "0 500" } } } },
};
const hearing = mirrorLexicon(learnt);

function judged(
  text: string,
  judging: Partial<Judging>,
  besides: { readonly others?: number; readonly figures?: number } = {},
  lexicon = plain,
): string {
  const view = mirrorView(text, "mirror", judgedBy(lexicon, judging));
  const { taken, doubtful } = judge(view, gatherObservations(view).candidates, besides);
  const names = (all: readonly WeighedCandidate[]) => all.map(({ state }) => state).join(" ");
  return `${names(taken)} / ${names(doubtful)}`;
}

describe("a state is taken, asked back or left by how likely it is", () => {
  test.each([
    [0.99, "chromed / "],
    [takenFrom + 0.001, "chromed / "],
    [takenFrom - 0.001, " / chromed"],
    [0.201, " / chromed"],
    [0.199, " / "],
  ])("at %d", (probability, expected) => {
    expect(judged("It is chromed", { plain: weighing(nats(probability)) })).toBe(expected);
  });
  test("each for itself", () => {
    const table = weighing(nats(0.9), { "two words": -9, "three words": nats(0.3) - nats(0.9) });
    expect(judged("Chromed with two screws, no week stamp", { plain: table })).toBe("chromed / unstamped");
  });
  test("a feature that is told keeps its doubtful rivals, not its unlikely ones", () => {
    const rival = (probability: number) =>
      judged("Chromed at the left, painted in body colour at the right, two screws", {
        plain: weighing(nats(0.9), {
          "two words": nats(0.3) - nats(0.9),
          "three words": nats(probability) - nats(0.9),
        }),
      });
    expect(rival(0.3)).toBe("chromed painted / two");
    expect(rival(0.1)).toBe("chromed / two");
  });
  test("of no candidates nothing is made", () => {
    expect(judge(mirrorView("hello there"), [])).toEqual({ taken: [], doubtful: [] });
  });
});

test("what was learnt weighs each ground of states and of messages, by a finite weight", () => {
  const counted = Object.entries(learntJudging).map(([name, { bias, weights }]) => {
    expect([bias, ...weights].every(Number.isFinite)).toBe(true);
    return [name, weights.length];
  });
  expect(Object.fromEntries(counted)).toEqual({
    plain: groundNames.length,
    heard: groundNames.length,
    plainMessages: messageGroundNames.length,
    heardMessages: messageGroundNames.length,
  });
});

describe("in a message that is not likely to tell anything nothing is taken", () => {
  /** Likely enough, and no more. */
  const likely = { plain: weighing(nats(0.7)) };
  const message = (probability: number, besides = {}) =>
    judged("It is chromed", { ...likely, plainMessages: weighingMessages(nats(probability)) }, besides);
  test.each([
    [0.801, "chromed / "],
    [0.799, " / chromed"],
    [0.01, " / chromed"],
  ])("at %d", (probability, expected) => {
    expect(message(probability)).toBe(expected);
  });
  test("unless it told other facts before", () => {
    expect(message(0.01, { others: 1 })).toBe("chromed / ");
    expect(message(0.01, { others: 0 })).toBe(" / chromed");
  });
  test("other facts are known to the grounds of each state", () => {
    const table = { plain: weighing(-9, { "other facts": 40 }) };
    expect(judged("It is chromed", table, { others: 1 })).toBe("chromed / ");
    expect(judged("It is chromed", table)).toBe(" / ");
  });
  test("figures that it tells speak for it where they are weighed", () => {
    const table = { ...likely, plainMessages: weighingMessages(-9, { "figures told": 18 }) };
    expect(judged("It is chromed", table, { figures: 1 })).toBe("chromed / ");
    expect(judged("It is chromed", table)).toBe(" / chromed");
  });
  test("where words of its likeliest state were learnt, another table holds", () => {
    const hardly = weighingMessages(-9);
    expect(judged("A glint to it", { heardMessages: hardly }, {}, hearing)).toBe(" / chromed");
    expect(judged("A glint to it", { plainMessages: hardly }, {}, hearing)).toBe("chromed / ");
    expect(judged("It has two screws", { ...likely, plainMessages: hardly }, {}, hearing)).toBe(" / two");
  });
});

describe("a plain statement tells, whatever is thought of its message", () => {
  const hardly = { plainMessages: weighingMessages(-9), heardMessages: weighingMessages(-9) };
  const at = (text: string, probability: number) =>
    judged(text, { ...hardly, plain: weighing(nats(probability)) });
  test("a feature said to be there or not, from three quarters on", () => {
    const there = "The screws are there, as far as I could see from here";
    expect(at(there, 0.751)).toBe("none / ");
    expect(at(there, 0.749)).toBe(" / none");
  });
  test("a state in six plain words at most, from 0.88 on", () => {
    expect(at("It is chromed, all of it", 0.881)).toBe("chromed / ");
    expect(at("It is chromed, all of it", 0.879)).toBe(" / chromed");
    expect(at("It is chromed, all of it here", 0.881)).toBe(" / chromed");
    expect(at("The spoiler is chromed", 0.99)).toBe(" / chromed");
  });
  test("where words of it were learnt, from one and three quarters nats by its names on", () => {
    const heard = (names: number, words: number) =>
      judged("It is chromed", { ...hardly, plain: weighing(names), heard: weighing(words) }, {}, hearing);
    expect(heard(1.75, 2.1)).toBe("chromed / ");
    expect(heard(1.74, 2.1)).toBe(" / chromed");
    expect(heard(1.75, 1.9)).toBe(" / chromed");
  });
  test("for all that is told beside it", () => {
    const table = { ...hardly, plain: weighing(nats(0.9), { "two words": nats(0.6) - nats(0.9) }) };
    expect(judged("It is chromed, two screws", table)).toBe("chromed two / ");
  });
});
