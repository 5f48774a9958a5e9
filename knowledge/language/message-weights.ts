// What each ground weighs for a message's telling anything, in nats: learnt by `node test/judge/fit.ts` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.13,
  weights: {
    "likeliest state": 4.26,
    "second state": 0.26,
    "third state": -0.23,
    "message tells at all": 2.57,
    "most telling sentence": 0.99,
    words: -0.09,
    "no case in hand": 0.04,
    "asked about it": 0.36,
    "asked about another": 0.59,
    "asks something": 0.62,
    "by its names": 0,
    "in plain words": 0,
    "heard alone": 0.79,
    "several sentences": 0.12,
    "something set aside": -0.31,
    denied: 0,
    doubted: -0.58,
    "foreign share": -1.87,
    "own share": -1.25,
    "figures told": 3.36,
    "somebody's": -1.4,
  },
};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.96,
  weights: {
    "likeliest state": 5.99,
    "second state": 0.03,
    "third state": 0.13,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0.31,
    "no case in hand": -0.01,
    "asked about it": 0.01,
    "asked about another": -0.04,
    "asks something": -0.15,
    "by its names": 0,
    "in plain words": 0,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": -1.22,
    denied: 0.96,
    doubted: -0.67,
    "foreign share": -3.49,
    "own share": -0.68,
    "figures told": 1.5,
    "somebody's": -0.68,
  },
};
