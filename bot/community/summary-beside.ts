/** What scripts read beside something that was no question about a part: which case is in hand, and nothing worked out anew. */
import type { Case } from "../conversation/case.ts";
import type { CaseSummary } from "../reply.ts";

/** Without a case the id is empty. */
export function summaryBeside(kept: Case | undefined): CaseSummary {
  return {
    case: kept?.id ?? "",
    part: kept?.facts.part ?? null,
    goal: kept?.facts.goal ?? "which-variant",
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
}
