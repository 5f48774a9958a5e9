/** "undo": the case is again what it was before its last change, exactly, the open question included. */
import type { PartKind } from "../../knowledge/index.ts";
import { type CaseFacts, takenBack } from "../conversation/case.ts";
import { type Change, withNote } from "../conversation/change.ts";
import { nothingToTakeBack, takenBack as takenBackWords } from "../conversation/phrases/commands.ts";
import { sayFact } from "../conversation/say-value.ts";

/** The change with the last step of the case taken back, naming the facts that went. */
export function undo(parts: readonly PartKind[], change: Change): Change {
  const before = takenBack(change.kept);
  if (before === undefined) return withNote(change, nothingToTakeBack);
  const gone = factsLost(parts, change.facts, before.facts);
  const back = factsLost(parts, before.facts, change.facts);
  return withNote({ ...change, kept: before, facts: before.facts }, takenBackWords(gone, back));
}

/** Facts of `now` that `before` does not have. */
function factsLost(parts: readonly PartKind[], now: CaseFacts, before: CaseFacts): readonly string[] {
  const features = parts.find((part) => part.id === now.part)?.features ?? [];
  return now.reports
    .filter((report) => !before.reports.some((earlier) => JSON.stringify(earlier) === JSON.stringify(report)))
    .flatMap((report) => {
      const feature = features.find((one) => one.id === report.feature);
      return feature === undefined ? [] : [sayFact(feature, report.value)];
    });
}
