// The summary of a reply that is about no part: for tests that make replies of their own.
import type { CaseSummary } from "../../bot/index.ts";

export const plainSummary: CaseSummary = {
  case: "case-1",
  part: null,
  goal: "which-variant",
  car: {},
  understood: [],
  ranking: [],
  verdict: null,
  question: null,
  done: false,
  uncertainty: { bits: 0, remaining: [] },
  pinned: [],
  cautions: [],
  sources: [],
};
