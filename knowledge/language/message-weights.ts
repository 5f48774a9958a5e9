import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

export const heardMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0,
  weights: {
    "likeliest state": 0,
    "second state": 0,
    "third state": 0,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0,
    "no case in hand": 0,
    "asked about it": 0,
    "asked about another": 0,
    "asks something": 0,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": 0,
    denied: 0,
    doubted: 0,
    "foreign share": 0,
    "own share": 0,
    "figures told": 0,
    "somebody's": 0,
  },
};

export const plainMessageWeights: JudgeWeights<MessageGroundName> = {
  bias: 0,
  weights: {
    "likeliest state": 0,
    "second state": 0,
    "third state": 0,
    "message tells at all": 0,
    "most telling sentence": 0,
    words: 0,
    "no case in hand": 0,
    "asked about it": 0,
    "asked about another": 0,
    "asks something": 0,
    "heard alone": 0,
    "several sentences": 0,
    "something set aside": 0,
    denied: 0,
    doubted: 0,
    "foreign share": 0,
    "own share": 0,
    "figures told": 0,
    "somebody's": 0,
  },
};
