/** "undo": the case is again what it was before its last change, exactly, the open question included. */
import { featureById, type Handbook, partById } from "../../knowledge/index.ts";
import { carAsked } from "../conversation/answer-open-question.ts";
import { carInWords } from "../conversation/apply-car.ts";
import { type CaseFacts, noFacts, takenBack } from "../conversation/case.ts";
import { type Change, withNote } from "../conversation/change.ts";
import {
  nothingToTakeBack,
  takenBack as takenBackWords,
  wantingToKnow,
} from "../conversation/phrases/commands.ts";
import { goalWords } from "../conversation/phrases/goals.ts";
import { markLabel } from "../conversation/phrases/trade.ts";
import { cannotTellValue } from "../conversation/phrases/understood.ts";
import { sayFact } from "../conversation/saying/say-value.ts";

/** The change with the last step of the case taken back, naming the facts that went. */
export function undo(handbook: Handbook, change: Change): Change {
  const before = takenBack(change.kept);
  if (before === undefined) return withNote(change, nothingToTakeBack);
  const gone = factsLost(handbook, change.facts, before.facts);
  const back = factsLost(handbook, before.facts, change.facts);
  return withNote({ ...change, kept: before, facts: before.facts }, takenBackWords(gone, back));
}

/** What `now` holds and `before` does not: the part, the car's particulars, the facts. */
function factsLost(handbook: Handbook, now: CaseFacts, before: CaseFacts): readonly string[] {
  const part = now.part === null ? undefined : partById(handbook, now.part);
  const known = carInWords(handbook.cars, before.car);
  const car = Object.entries(carInWords(handbook.cars, now.car))
    .filter(([label, value]) => known[label] !== value)
    .map(([label, value]) => `${label} (${value})`);
  const facts = now.reports
    .filter((report) => !before.reports.some((earlier) => JSON.stringify(earlier) === JSON.stringify(report)))
    .flatMap((report) => {
      const feature = part && featureById(part, report.feature);
      return feature === undefined ? [] : [sayFact(feature, report.value)];
    });
  const unsure = now.unanswerable
    .filter((ask) => !before.unanswerable.includes(ask))
    .map((ask) => `${carAsked(ask)} (${cannotTellValue})`);
  const marks = now.marks
    .filter(({ words }) => !before.marks.some((mark) => mark.words === words))
    .map(({ words }) => `${markLabel} (${words})`);
  const goal =
    before.goal === now.goal || now.goal === noFacts.goal ? [] : [wantingToKnow(goalWords[now.goal])];
  const named = part !== undefined && before.part !== now.part ? [part.name] : [];
  return [...named, ...car, ...unsure, ...facts, ...marks, ...goal];
}
