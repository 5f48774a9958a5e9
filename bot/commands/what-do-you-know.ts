/** "what do you know so far?": every fact with who said it and in which words, the car, and where it stands. */
import { featureById, type PartKind, type Report } from "../../knowledge/index.ts";
import { carAsked } from "../conversation/answer-open-question.ts";
import { carInWords } from "../conversation/apply-car.ts";
import type { Case } from "../conversation/case.ts";
import {
  knownByAnother,
  knownLead,
  knownLine,
  knownNothing,
  knownWaiting,
  knownWords,
  noPartYet,
} from "../conversation/phrases/commands.ts";
import { markLabel } from "../conversation/phrases/trade.ts";
import { cannotTellValue } from "../conversation/phrases/understood.ts";
import { sayStanding } from "../conversation/saying/say-standing.ts";
import { sayValue } from "../conversation/saying/say-value.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

export function whatDoYouKnow(scene: Scene): readonly Block[] {
  const { assessed, kept, knowledge } = scene;
  const car = Object.entries(carInWords(knowledge.handbook.cars, kept.facts.car)).map(([label, value]) =>
    knownLine(label, value, ""),
  );
  const facts = assessed === undefined ? [] : factLines(assessed.part, kept);
  const marks = kept.facts.marks.map(({ words }) => knownLine(markLabel, words, ""));
  const unsure = kept.facts.unanswerable.map((ask) => knownLine(carAsked(ask), cannotTellValue, ""));
  const waiting = kept.facts.unplaced.map((words) => knownWaiting(words));
  const lines = [...car, ...unsure, ...facts, ...marks, ...waiting];
  const lead = knownLead(kept.number, assessed?.part.name ?? noPartYet);
  const list: Block = { kind: "list", lead, items: lines.length === 0 ? [knownNothing] : lines };
  return assessed === undefined ? [list] : [list, ...sayStanding(assessed, [])];
}

/** One line a report: feature, value, the words it rests on, and whether another member said it. */
function factLines(part: PartKind, kept: Case): readonly string[] {
  return kept.facts.reports.flatMap((report) => {
    const feature = featureById(part, report.feature);
    if (feature === undefined) return [];
    const value = sayValue(feature, report.value);
    return [knownLine(feature.name, `${value}${wordsBehind(report, value)}`, byWhom(kept, report))];
  });
}

function wordsBehind(report: Report, value: string): string {
  const words = report.words.trim();
  return words === "" || words.toLowerCase() === value.toLowerCase() ? "" : knownWords(words);
}

function byWhom(kept: Case, report: Report): string {
  return report.by === kept.owner ? "" : knownByAnother;
}
