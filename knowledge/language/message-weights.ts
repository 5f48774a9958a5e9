// What each ground weighs for a message's telling anything, in nats: learnt by `node test/judge/fit.ts` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.05,
  weights: {
    "likeliest state": 4.06,
    "second state": 0.18,
    "third state": -0.25,
    "message tells at all": 2.34,
    "most telling sentence": 1.24,
    words: -0.34,
    "no case in hand": -0.03,
    "asked about it": 0.33,
    "asked about another": 0.96,
    "asks something": 0.86,
    "by its names": 0.84,
    "in plain words": 0.01,
    "heard alone": 0.63,
    "several sentences": -0.1,
    "something set aside": -0.32,
    denied: 0,
    doubted: -0.57,
    "foreign share": -1.64,
    "own share": -1.21,
    "figures told": 3.19,
    "somebody's": -1.63,
  },
};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.93,
  weights: {
    "likeliest state": 2.79,
    "second state": 0.01,
    "third state": 0.1,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0.19,
    "no case in hand": -0.02,
    "asked about it": -0.07,
    "asked about another": -0.21,
    "asks something": -0.05,
    "by its names": 3.35,
    "in plain words": 0.2,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": -1.24,
    denied: 1.06,
    doubted: -0.72,
    "foreign share": -3.48,
    "own share": -0.79,
    "figures told": 1.47,
    "somebody's": -0.74,
  },
};
