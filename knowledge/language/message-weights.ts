// What each ground weighs for a message's telling anything, in nats: learnt by `node test/judge/fit.ts` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.01,
  weights: {
    "likeliest state": 3.95,
    "second state": 0.19,
    "third state": -0.27,
    "message tells at all": 2.41,
    "most telling sentence": 1.23,
    words: -0.29,
    "no case in hand": -0.01,
    "asked about it": 0.34,
    "asked about another": 0.99,
    "asks something": 0.88,
    "by its names": 0.88,
    "in plain words": 0,
    "heard alone": 0.59,
    "several sentences": -0.12,
    "something set aside": -0.27,
    denied: 0,
    doubted: -0.54,
    "foreign share": -1.81,
    "own share": -1.09,
    "figures told": 3.15,
    "somebody's": -1.62,
  },
};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.93,
  weights: {
    "likeliest state": 2.78,
    "second state": 0.01,
    "third state": 0.1,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0.2,
    "no case in hand": -0.02,
    "asked about it": -0.08,
    "asked about another": -0.21,
    "asks something": -0.05,
    "by its names": 3.34,
    "in plain words": 0.21,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": -1.24,
    denied: 1,
    doubted: -0.71,
    "foreign share": -3.49,
    "own share": -0.8,
    "figures told": 1.42,
    "somebody's": -0.77,
  },
};
