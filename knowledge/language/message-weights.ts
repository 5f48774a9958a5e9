// What each ground weighs for a message's telling anything, in nats: learnt by `node test/judge/fit.ts` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.02,
  weights: {
    "likeliest state": 4.02,
    "second state": 0.16,
    "third state": -0.27,
    "message tells at all": 2.37,
    "most telling sentence": 1.16,
    words: -0.22,
    "no case in hand": -0.01,
    "asked about it": 0.31,
    "asked about another": 0.94,
    "asks something": 0.81,
    "by its names": 0.75,
    "in plain words": 0.03,
    "heard alone": 0.63,
    "several sentences": -0.06,
    "something set aside": -0.33,
    denied: 0,
    doubted: -0.52,
    "foreign share": -1.77,
    "own share": -1.19,
    "figures told": 3.06,
    "somebody's": -1.53,
  },
};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 1.01,
  weights: {
    "likeliest state": 2.71,
    "second state": 0.02,
    "third state": 0.12,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0.12,
    "no case in hand": -0.02,
    "asked about it": -0.02,
    "asked about another": -0.07,
    "asks something": -0.04,
    "by its names": 3.25,
    "in plain words": 0.22,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": -1.22,
    denied: 1.04,
    doubted: -0.71,
    "foreign share": -3.45,
    "own share": -0.8,
    "figures told": 1.5,
    "somebody's": -0.72,
  },
};
