/** Marks of the trade told in a message: facts where the part has a feature for them, else notes with their earliest date. */
import { formatInterval, type Interval, type PartKind, type TradeEvidence } from "../../knowledge/index.ts";
import { applyFacts } from "./apply-facts.ts";
import type { CaseFacts } from "./case.ts";
import type { Change } from "./change.ts";
import type { Heard } from "./hear.ts";
import { markLabel, markTooYoung } from "./phrases/trade.ts";
import type { Speaker } from "./speaker.ts";
import { findingsOfMarks } from "./trade-evidence.ts";
import { understoodItem } from "./understood.ts";

export function applyMarks(
  part: PartKind | undefined,
  change: Change,
  heard: Heard,
  speaker: Speaker,
): Change {
  if (heard.marks.length === 0) return withDatedCar(change);
  const told = new Set(heard.reading.findings.map((finding) => finding.feature));
  const asked = change.facts.open?.feature;
  const found = part === undefined ? [] : findingsOfMarks(part, heard.marks, asked);
  // A weighing keeps its doubt, even where the reader has taken it for a fact.
  const findings = found.filter(({ feature, certainty }) => certainty < 1 || !told.has(feature));
  const applied =
    part === undefined
      ? { facts: change.facts, items: [] }
      : applyFacts(part, change.facts, findings, speaker);
  const noted = heard.marks.flatMap((mark) => (mark.kind === "not-before" ? [noteOf(mark)] : []));
  const { built } = applied.facts.car;
  const known = new Set(change.facts.marks.map((mark) => mark.words));
  const fresh = noted.filter((mark) => !known.has(mark.words));
  return {
    ...change,
    facts: { ...applied.facts, marks: [...applied.facts.marks, ...fresh] },
    items: [
      ...change.items,
      ...applied.items,
      ...fresh
        .filter((mark) => !isTooYoung(mark, built))
        .map((mark) => understoodItem(markLabel, mark.words)),
    ],
    remarks: [...change.remarks, ...fresh.flatMap((mark) => tooYoung(mark, built))],
  };
}

type Mark = CaseFacts["marks"][number];

/** Marks told before the car's date was: what they say of it is said once the date is told. */
function withDatedCar(change: Change): Change {
  const { marks, car } = change.facts;
  const before = change.kept.facts.car.built;
  if (car.built === undefined || JSON.stringify(car.built) === JSON.stringify(before)) return change;
  const remarks = marks
    .filter((mark) => !isTooYoung(mark, before))
    .flatMap((mark) => tooYoung(mark, car.built));
  return { ...change, remarks: [...change.remarks, ...remarks] };
}

function noteOf({ words, date }: Extract<TradeEvidence, { kind: "not-before" }>): Mark {
  return { words, notBefore: { from: date.from, to: date.to } };
}

function tooYoung(mark: Mark, built: Interval | undefined): readonly string[] {
  if (built === undefined || !isTooYoung(mark, built)) return [];
  return [markTooYoung(mark.words, formatInterval(built))];
}

function isTooYoung(mark: Mark, built: Interval | undefined): boolean {
  return built !== undefined && mark.notBefore.from >= built.to;
}
