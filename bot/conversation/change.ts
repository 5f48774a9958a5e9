/** What one turn has done to a case so far; the steps of a turn pass it on and add to it. */
import type { Case, CaseFacts } from "./case.ts";
import type { UnderstoodItem } from "./understood.ts";

export interface Change {
  readonly kept: Case;
  /** The facts being built in this turn; they become the case's at its end. */
  readonly facts: CaseFacts;
  readonly items: readonly UnderstoodItem[];
  /** On what was read: doubts, what was left aside. */
  readonly remarks: readonly string[];
  /** On what was done: taken back, started over, withdrawn. */
  readonly notes: readonly string[];
  /** Facts that the person is to choose from, by name, when a withdrawal did not say which. */
  readonly withdrawable: readonly string[];
}

export function beginChange(kept: Case): Change {
  return { kept, facts: kept.facts, items: [], remarks: [], notes: [], withdrawable: [] };
}

export function withNote(change: Change, note: string): Change {
  return { ...change, notes: [...change.notes, note] };
}

export function withRemark(change: Change, remark: string): Change {
  return { ...change, remarks: [...change.remarks, remark] };
}
