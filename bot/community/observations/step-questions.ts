/** The questions of the recording, and the draft as it stands. */
import {
  featureById,
  formatInterval,
  identify,
  notInHandbook,
  provenanceGrades,
  variantById,
} from "../../../knowledge/index.ts";
import { carInWords } from "../../conversation/apply-car.ts";
import { findPart } from "../../conversation/knowledge.ts";
import { sayValue } from "../../conversation/saying/say-value.ts";
import type { Block, Choice, QuestionBlock } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import type { Draft, Step } from "./draft.ts";
import type { Sighting } from "./observation.ts";
import { knowledgeFor } from "./step-answers.ts";
import { stepPrefix } from "./step-names.ts";

export function stepQuestion(scene: CommunityScene, draft: Draft, step: Step): QuestionBlock {
  return {
    kind: "question",
    feature: `${stepPrefix}${step}`,
    text: textOf(scene, draft, step),
    effort: 1,
    photographDoes: step === "photographs",
    answers: answersTo(scene, draft, step),
    expects: step === "car" || step === "photographs" ? "words" : step === "seen" ? "date" : "choice",
    besides: [phrases.back, phrases.leaveIt].map(choice),
  };
}

function textOf(scene: CommunityScene, draft: Draft, step: Step): string {
  switch (step) {
    case "part":
      return phrases.whichPart;
    case "kind":
      return phrases.whichKind(findPart(knowledgeFor(scene, draft), draft.part)?.name ?? "");
    case "car":
      return phrases.whichCar;
    case "grade":
      return phrases.howKnown;
    case "seen":
      return phrases.whenSeen;
    case "photographs":
      return phrases.anyPhotographs;
    case "credit":
      return phrases.mayCredit;
    case "confirm":
      return phrases.isThisRight;
  }
}

function answersTo(scene: CommunityScene, draft: Draft, step: Step): readonly Choice[] {
  switch (step) {
    case "part":
      return knowledgeFor(scene, draft).handbook.parts.map(({ id, name }) => ({
        id,
        label: name,
        say: name,
      }));
    case "kind":
      return kindAnswers(scene, draft);
    case "car":
      return [choice(phrases.cannotTell)];
    case "grade":
      return provenanceGrades.map((id) => ({
        id,
        label: phrases.gradeChoices[id],
        say: phrases.gradeChoices[id],
      }));
    case "seen":
      return [choice(phrases.today), choice(phrases.notSure)];
    case "photographs":
      return [choice(phrases.noneOfIt)];
    case "credit":
      return [choice(phrases.yes), choice(phrases.no)];
    case "confirm":
      return [choice(phrases.recordIt)];
  }
}

/** The likeliest first by what was told; and that what was told decides, when something was. */
function kindAnswers(scene: CommunityScene, draft: Draft): readonly Choice[] {
  const knowledge = knowledgeFor(scene, draft);
  const compiled = draft.part === null ? undefined : knowledge.compiled(draft.part);
  if (compiled === undefined) return [];
  const { ranking } = identify(compiled, { car: draft.car, goal: "which-variant", reports: draft.reports });
  const kinds = ranking
    .filter(({ variant }) => variant !== notInHandbook)
    .map(({ variant, name }) => ({ id: variant, label: name, say: name }));
  return draft.reports.length === 0
    ? kinds
    : [{ id: "as-told", label: phrases.asTold, say: phrases.asTold }, ...kinds];
}

function choice(words: string): Choice {
  return { id: words.replaceAll(" ", "-"), label: words, say: words };
}

type Shown = Omit<Sighting, "part" | "grade" | "credit"> & {
  readonly part: string | null;
  readonly grade: Sighting["grade"] | null;
  readonly credit: boolean | null;
};

/** What has been told, line by line. */
export function sightingBlock(
  scene: CommunityScene,
  saw: Shown,
  lead: string,
): Extract<Block, { kind: "understood" }> {
  const knowledge = knowledgeFor(scene, saw);
  const part = findPart(knowledge, saw.part);
  const kind = saw.variant === null || part === undefined ? undefined : variantById(part, saw.variant)?.name;
  const facts = saw.reports.flatMap((report) => {
    const feature = part && featureById(part, report.feature);
    return feature === undefined ? [] : [phrases.told(feature.name, sayValue(feature, report.value))];
  });
  const car = Object.entries(carInWords(knowledge.handbook.cars, saw.car)).map(
    ([label, value]) => `${label} ${value}`,
  );
  const pictures = [...saw.photographs.map((_, at) => `photograph ${at + 1}`), ...saw.links];
  const items = [
    { label: phrases.labelPart, value: part?.name ?? "" },
    { label: phrases.labelKind, value: kind ?? (facts.length === 0 ? "" : phrases.kindFromFacts) },
    { label: phrases.labelSeen, value: facts.join("; ") },
    { label: phrases.labelCar, value: car.length === 0 ? phrases.carUnknown : car.join(", ") },
    { label: phrases.labelGrade, value: saw.grade === null ? "" : phrases.gradeChoices[saw.grade] },
    { label: phrases.labelDate, value: saw.seen === null ? "" : formatInterval(saw.seen) },
    { label: phrases.labelPhotographs, value: pictures.join(", ") },
    { label: phrases.labelCredit, value: saw.credit === null ? "" : saw.credit ? phrases.yes : phrases.no },
  ].filter(({ value }) => value !== "");
  return { kind: "understood", lead, items, remarks: [] };
}
