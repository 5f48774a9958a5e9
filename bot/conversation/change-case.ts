/** What one message does to one case: wishes that change it first, then the facts, then answers to the open question. */
import type { Feature, Interval, MessageReading, PartKind } from "../../knowledge/index.ts";
import { readMessage, readTradeEvidence } from "../../knowledge/index.ts";
import { startOver } from "../commands/start-over.ts";
import { undo } from "../commands/undo.ts";
import { withdraw, withdrawOfCar } from "../commands/withdraw.ts";
import { cannotTell, yesOrNo } from "./answer-open-question.ts";
import { applyCar } from "./apply-car.ts";
import { applyFacts } from "./apply-facts.ts";
import { applyMarks } from "./apply-marks.ts";
import type { Case, CaseFacts } from "./case.ts";
import { type Change, withNote, withRemark } from "./change.ts";
import { featuresNamed } from "./features-named.ts";
import type { Heard } from "./hear.ts";
import { findPart, type Knowledge } from "./knowledge.ts";
import { mayTakeBack } from "./may-take-back.ts";
import { withPartOnCar } from "./on-the-car.ts";
import { needsPart, othersSaidThat } from "./phrases/commands.ts";
import { goalWords } from "./phrases/goals.ts";
import { sameTwice } from "./phrases/trouble.ts";
import { comparedWithTheCar, goalChanged, keptForLater, partLabel } from "./phrases/understood.ts";
import { firstDoubt, readingRemarks, unclearRemark } from "./reading-remarks.ts";
import { sayReported } from "./saying/say-value.ts";
import { type Speaker, speakerOf } from "./speaker.ts";
import { findingsOfMarks } from "./trade-evidence.ts";
import { understoodItem } from "./understood.ts";

/** How many messages wait for the part to be named. */
const mostUnplaced = 5;

/** What was begun, changed by the message; `part` is the part kind the message is about here, null when none is known. */
export function changeCase(
  knowledge: Knowledge,
  begun: Change,
  heard: Heard,
  part: string | null,
  person: string,
  today: Interval,
): Change {
  const speaker = speakerOf(begun.kept, person);
  const { reading } = heard;
  const wished = wishes(knowledge, begun, reading, speaker);
  const placed = withPart(knowledge, wished, part);
  const told = withFacts(knowledge, placed, heard, speaker, today);
  const turned = towardsTheCar(told, reading);
  const marked = applyMarks(findPart(knowledge, turned.facts.part), turned, heard, speaker);
  const answered = answers(knowledge, marked, heard, speaker);
  const remarked = readingRemarks(knowledge, answered, heard).reduce(withRemark, answered);
  return withDoubt(partOf(knowledge, remarked), remarked, reading);
}

/** Keeps what is asked back until the next message, which may say yes to it. */
function withDoubt(part: PartKind | undefined, change: Change, reading: MessageReading): Change {
  const doubt = firstDoubt(part, reading);
  const { inDoubt: _, ...facts } = change.facts;
  if (doubt === undefined) return { ...change, facts };
  const { feature, state, words } = doubt;
  return { ...change, facts: { ...facts, inDoubt: { feature, state, words } } };
}

function wishes(knowledge: Knowledge, begun: Change, reading: MessageReading, speaker: Speaker): Change {
  const lastGoal = reading.intents.findLast(({ kind }) => kind === "goal");
  return reading.intents.reduce<Change>((change, intent) => {
    switch (intent.kind) {
      case "undo":
        return mayTakeBack(change, speaker)
          ? undo(knowledge.handbook, change)
          : withNote(change, othersSaidThat);
      case "start-over":
        return speaker.isOwner ? startOver(change) : withNote(change, othersSaidThat);
      case "withdraw":
        // "I polished it myself, so ignore that" tells something new and takes nothing back.
        if (intent.feature === undefined && reading.findings.length + reading.car.length > 0) return change;
        return withdrawn(knowledge, change, intent.feature, reading, speaker);
      case "goal":
        return intent === lastGoal ? withGoal(change, intent.goal) : change;
      default:
        return change;
    }
  }, begun);
}

function withdrawn(
  knowledge: Knowledge,
  change: Change,
  feature: string | undefined,
  { shownText }: MessageReading,
  speaker: Speaker,
): Change {
  // "The build date" may sound like a date mark of the part that nobody told.
  const wasTold = change.facts.reports.some((report) => report.feature === feature);
  const ofCar = wasTold ? undefined : withdrawOfCar(knowledge.handbook.cars, change, shownText, speaker);
  return ofCar ?? withdraw(partOf(knowledge, change), change, feature, speaker);
}

function withGoal(change: Change, goal: Case["facts"]["goal"]): Change {
  if (change.facts.goal === goal) return change;
  return withRemark({ ...change, facts: { ...change.facts, goal } }, goalChanged(goalWords[goal]));
}

function withPart(knowledge: Knowledge, change: Change, id: string | null): Change {
  const part = findPart(knowledge, id);
  if (part === undefined || change.facts.part === part.id) return change;
  return {
    ...change,
    facts: { ...change.facts, part: part.id },
    items: [understoodItem(partLabel, part.name), ...change.items],
  };
}

function withFacts(
  knowledge: Knowledge,
  change: Change,
  heard: Heard,
  speaker: Speaker,
  today: Interval,
): Change {
  const { reading } = heard;
  const { handbook } = knowledge;
  const found = withPartOnCar(handbook, change, reading, speaker);
  const car = applyCar(handbook.cars, found.facts, reading.car, speaker);
  const withCar: Change = {
    ...found,
    facts: car.facts,
    items: [...found.items, ...car.items],
    remarks: [...found.remarks, ...car.remarks],
  };
  const part = partOf(knowledge, withCar);
  if (part === undefined) return keepForLater(withCar, heard);
  const waited = withCar.facts.unplaced.map((text) =>
    readMessage(text, knowledge.lexicon, { part: part.id, today }),
  );
  const marks = withCar.facts.unplaced.flatMap((text) => readTradeEvidence(text, { today }));
  const waiting = [...findingsOfMarks(part, marks, undefined), ...waited.flatMap(({ findings }) => findings)];
  const own = [...waiting, ...reading.findings].filter(
    (finding) => finding.part === null || finding.part === part.id,
  );
  const applied = applyFacts(part, { ...withCar.facts, unplaced: [] }, own, speaker);
  const confirmed = lookedTwice(part, withCar.facts, applied.facts);
  const notes = confirmed.map((feature) => sameTwice(sayReported(feature, applied.facts.reports)));
  const items = applied.items.filter(({ label }) => !confirmed.some((feature) => feature.name === label));
  return {
    ...withCar,
    facts: applied.facts,
    notes: [...withCar.notes, ...notes],
    items: [...withCar.items, ...items],
    remarks: [...withCar.remarks, ...waited.flatMap((one) => unclearRemark(part, one))],
  };
}

// Who was told what the car should have, and then says what it has, wants the two compared.
function towardsTheCar(change: Change, reading: MessageReading): Change {
  const hasAsked = reading.intents.some((intent) => intent.kind === "goal");
  const isTelling = change.facts.reports.some((report) => !change.kept.facts.reports.includes(report));
  if (change.facts.goal !== "what-should-it-have" || hasAsked || !isTelling) return change;
  return withRemark({ ...change, facts: { ...change.facts, goal: "right-for-car" } }, comparedWithTheCar);
}

/** Features whose fact a second look confirmed. */
function lookedTwice(part: PartKind, before: CaseFacts, after: CaseFacts): readonly Feature[] {
  const fresh = after.rechecked.filter((id) => !before.rechecked.includes(id));
  return featuresNamed(part, fresh).filter(
    (feature) => sayReported(feature, before.reports) === sayReported(feature, after.reports),
  );
}

/** What could belong to more than one part or feature; the part, once named, may settle which. */
function isUnclear({ because }: MessageReading["leftAside"][number]): boolean {
  return because === "several-readings";
}

function keepForLater(change: Change, { reading, marks }: Heard): Change {
  const isMarked = marks.some((mark) => mark.kind === "material");
  if (reading.findings.length === 0 && !isMarked && !reading.leftAside.some(isUnclear)) return change;
  if (reading.shownText.trim() === "") return withRemark(change, needsPart);
  const unplaced = [...change.facts.unplaced, reading.shownText].slice(-mostUnplaced);
  return withRemark({ ...change, facts: { ...change.facts, unplaced } }, keptForLater);
}

function answers(knowledge: Knowledge, told: Change, { reading, isNod }: Heard, speaker: Speaker): Change {
  const isAnswered = reading.findings.length > 0 || reading.car.length > 0;
  return reading.intents.reduce<Change>((change, intent) => {
    const part: PartKind | undefined = partOf(knowledge, change);
    switch (intent.kind) {
      case "cannot-tell":
        return isAnswered && (intent.feature === undefined || isTold(reading, intent.feature))
          ? change
          : cannotTell(part, change, intent.feature, speaker);
      case "yes":
      case "no":
        return isAnswered ? change : yesOrNo(part, change, intent.kind, speaker, isNod);
      default:
        return change;
    }
  }, told);
}

function isTold({ findings }: MessageReading, feature: string): boolean {
  return findings.some((finding) => finding.feature === feature);
}

function partOf(knowledge: Knowledge, change: Change): PartKind | undefined {
  return findPart(knowledge, change.facts.part);
}
