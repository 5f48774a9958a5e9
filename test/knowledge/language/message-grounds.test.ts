// What makes a message likely to tell anything: each ground by its name, of states whose likelihood the test gives.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import {
  type MessageGroundName,
  messageGroundNames,
  messageGroundsOf,
} from "../../../knowledge/language/message-grounds.ts";
import { wholeOf } from "../../../knowledge/language/seen-candidate.ts";
import type { WeighedCandidate } from "../../../knowledge/language/weighed-candidates.ts";
import { mirrorLexicon, mirrorView } from "../../support/tarn-mirror.ts";

const plain = mirrorLexicon();

/** A weighed state of the mirror; of another feature for each name. */
const weighed = (feature: string, probability: number, rest: Partial<WeighedCandidate> = {}) => ({
  part: "mirror",
  feature,
  state: feature,
  isDenied: false,
  clause: 0,
  from: 0,
  to: 0,
  finder: "name" as const,
  probability,
  isHeard: false,
  unheard: 0,
  isPlain: false,
  ...rest,
});

function messageGround(
  name: MessageGroundName,
  text: string,
  candidates: readonly WeighedCandidate[] = [],
  { about = "mirror", figures = 0, lexicon = plain } = {},
): number {
  const view = mirrorView(text, about, lexicon);
  const { values } = messageGroundsOf(view, candidates, wholeOf(view, candidates, 0), figures);
  expect(values).toHaveLength(messageGroundNames.length);
  for (const value of values) expect(Math.abs(value)).toBeLessThanOrEqual(1);
  return values[messageGroundNames.indexOf(name)] ?? Number.NaN;
}

describe("what speaks for a message's telling anything", () => {
  const three = [weighed("stalk", 0.5), weighed("housing", 0.75), weighed("screws", 0.25)];
  test("the odds of its likeliest states of different features, six nats at most", () => {
    expect(messageGround("likeliest state", "x", three)).toBeCloseTo(Math.log(3) / 6, 12);
    expect(messageGround("second state", "x", three)).toBe(0);
    expect(messageGround("third state", "x", three)).toBeCloseTo(-Math.log(3) / 6, 12);
    expect(messageGround("likeliest state", "x", [weighed("stalk", 1)])).toBe(1);
    expect(messageGround("likeliest state", "x", [weighed("stalk", 0)])).toBe(-1);
    const rivals = [weighed("stalk", 0.5), weighed("stalk", 0.75, { state: "bent" })];
    expect(messageGround("likeliest state", "x", rivals)).toBeCloseTo(Math.log(3) / 6, 12);
    expect(messageGround("second state", "x", rivals)).toBe(-1);
    expect(messageGround("third state", "x", rivals)).toBe(-1);
    expect(messageGround("likeliest state", "x")).toBe(-1);
  });

  const stalk = [weighed("stalk", 0.3), weighed("housing", 0.1)];
  test.each<[MessageGroundName, string, number, (readonly WeighedCandidate[])?, string?, number?]>([
    ["words", "one two three", 3 / 60],
    ["words", "so ".repeat(60), 1],
    ["words", "so ".repeat(70), 1],
    ["no case in hand", "hello", 1, [], ""],
    ["no case in hand", "hello", 0],
    ["asked about it", "hello", 1, stalk, "mirror stalk"],
    ["asked about it", "hello", 0, stalk, "mirror housing"],
    ["asked about it", "hello", 0, stalk],
    ["asked about another", "hello", 1, stalk, "mirror housing"],
    ["asked about another", "hello", 0, stalk, "mirror stalk"],
    ["asked about another", "hello", 0, stalk],
    ["asks something", "is it? well", 1],
    ["asks something", "it is", 0],
    ["by its names", "hello", 0],
    ["by its names", "hello", 0.5, [weighed("stalk", 0.3, { unheard: 3 })]],
    ["by its names", "hello", -1, [weighed("stalk", 0.3, { unheard: -8 })]],
    ["by its names", "hello", 1, [weighed("stalk", 0.3, { unheard: 8 })]],
    ["in plain words", "hello", 1, [weighed("stalk", 0.3, { isPlain: true })]],
    ["in plain words", "hello", 0, stalk],
    ["in plain words", "hello", 0],
    ["heard alone", "hello", 1, [weighed("stalk", 0.3, { finder: "heard" })]],
    ["heard alone", "hello", 0, stalk],
    ["several sentences", "hello. There", 0],
    ["something set aside", "It is mine. He says it is chromed", 1],
    ["something set aside", "It is mine. It is chromed", 0],
    ["denied", "hello", 1, [weighed("stalk", 0.3, { isDenied: true })]],
    ["denied", "hello", 0, stalk],
    ["doubted", "I think it is chromed. Hello", 1],
    ["doubted", "I think it is chromed. It is bent", 0, [weighed("stalk", 0.3, { clause: 1 })]],
    ["doubted", "It is chromed. I think it is bent", 1, [weighed("stalk", 0.3, { clause: 1 })]],
    ["doubted", "It is chromed", 0, [weighed("stalk", 0.3, { clause: 7 })]],
    ["foreign share", "a ferret", 0.5],
    ["own share", "chromed ferret", 0.5],
    ["figures told", "hello", 1, [], "mirror", 1],
    ["figures told", "hello", 0],
    ["somebody's", "Steve's mirrors", 1],
    ["somebody's", "Steve\u2019s mirrors", 1],
    ["somebody's", "the mirrors. Klaus' panel", 0],
    ["somebody's", "of Klaus' panel", 1],
    ["somebody's", "of Klaus\u2019 panel", 1],
    ["somebody's", "the other. Steve's mirrors", 0],
    ["somebody's", "say! Steve's mirrors", 0],
    ["somebody's", "and Steve's mirrors", 1],
    ["somebody's", "steve's mirrors", 0],
    ["somebody's", "and S's mirrors", 0],
    ["somebody's", "and StEve's mirrors", 0],
    ["somebody's", "and Steve'self", 0],
  ])("%s: %j", (name, text, expected, candidates, about, figures) => {
    expect(
      messageGround(name, text, candidates, {
        ...(about === undefined ? {} : { about }),
        ...(figures === undefined ? {} : { figures }),
      }),
    ).toBeCloseTo(expected, 12);
  });

  test("what is heard in it: its most telling sentence, and all of it", () => {
    const learnt: LearntWords = {
      messages: 3,
      words: ["glint", "ferret"],
      telling: { bias: -1, weights: "0 250 1 -500" },
      tellingAtAll: { bias: 1.5, weights: "1 -300" },
      spokenOf: {},
      parts: {},
    };
    const lexicon = mirrorLexicon(learnt);
    const ground = (name: MessageGroundName, text: string) => messageGround(name, text, [], { lexicon });
    expect(ground("most telling sentence", "A ferret. A glint. Hello.")).toBeCloseTo(1.5 / 6, 12);
    expect(ground("most telling sentence", "A ferret")).toBe(-1);
    expect(ground("message tells at all", "A ferret. A glint.")).toBeCloseTo(-1.5 / 6, 12);
    expect(ground("message tells at all", "A glint.")).toBeCloseTo(1.5 / 6, 12);
    expect(ground("several sentences", "A ferret. A glint.")).toBe(1);
    expect(ground("several sentences", "A ferret, a glint.")).toBe(0);
    expect(messageGround("most telling sentence", "A glint")).toBe(0);
    expect(messageGround("message tells at all", "A glint")).toBe(0);
  });

  test("whether words of its likeliest state were learnt", () => {
    const isHeard = (...candidates: readonly WeighedCandidate[]) => {
      const view = mirrorView("hello");
      return messageGroundsOf(view, candidates, wholeOf(view, candidates, 0), 0).isHeard;
    };
    expect(isHeard(weighed("stalk", 0.3), weighed("housing", 0.6, { isHeard: true }))).toBe(true);
    expect(isHeard(weighed("stalk", 0.7), weighed("housing", 0.6, { isHeard: true }))).toBe(false);
    expect(isHeard()).toBe(false);
  });
});
