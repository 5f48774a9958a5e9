// The price of our way of asking over the least price that any way of asking could have, proven, on random tables.

import { comparePolicyWithOptimum } from "../policy-against-optimum.ts";
import type { Row } from "../row.ts";

const TABLES = 200;
const START = 7;

export const policyOnRandomTables: Row = {
  name: "policy-on-random-tables",
  about: `effort + λ·wrong over the proven optimum, ${TABLES} random tables`,
  starts: [START],
  measure: () => {
    const { ratios, drawn } = comparePolicyWithOptimum(TABLES, START);
    const own = ratios["tapered search"];
    return [
      { what: "our questions: mean", value: own.mean, unit: "x", budget: { atMost: 1.005 } },
      {
        what: "our questions: worst",
        value: own.worst,
        unit: "x",
        budget: { atMost: 1.05 },
        remark: `${TABLES} provable of ${drawn} drawn`,
      },
      { what: "greedy until 95 %: mean", value: ratios["greedy until 95 %"].mean, unit: "x" },
      { what: "fixed order until 95 %: mean", value: ratios["fixed order until 95 %"].mean, unit: "x" },
    ];
  },
};
