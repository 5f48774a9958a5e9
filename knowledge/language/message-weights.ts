// What each ground weighs for a message's telling anything, in nats: learnt by `node test/judge/fit.ts` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: -0.07,
  weights: {
    "likeliest state": 4.16,
    "second state": 0.21,
    "third state": -0.29,
    "message tells at all": 2.39,
    "most telling sentence": 1.13,
    words: -0.16,
    "no case in hand": -0.08,
    "asked about it": 0.31,
    "asked about another": 0.91,
    "asks something": 0.86,
    "by its names": 0.85,
    "in plain words": 0.02,
    "heard alone": 0.73,
    "several sentences": -0.1,
    "something set aside": -0.31,
    denied: 0,
    doubted: -0.55,
    "foreign share": -1.65,
    "own share": -1.17,
    "figures told": 3.32,
    "somebody's": -1.58,
  },
};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0.93,
  weights: {
    "likeliest state": 2.81,
    "second state": 0.01,
    "third state": 0.1,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0.19,
    "no case in hand": -0.03,
    "asked about it": -0.08,
    "asked about another": -0.21,
    "asks something": -0.03,
    "by its names": 3.35,
    "in plain words": 0.2,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": -1.25,
    denied: 1.1,
    doubted: -0.72,
    "foreign share": -3.56,
    "own share": -0.79,
    "figures told": 1.47,
    "somebody's": -0.76,
  },
};
