/** What an answer to a step of the recording means: pressed, or in words that the reader understands. */
import {
  type CarFinding,
  dateAgo,
  dayOfMilliseconds,
  findDates,
  type Lexicon,
  parseDateText,
  provenanceGrades,
  type Report,
  readMessage,
} from "../../../knowledge/index.ts";
import { answerOfCar } from "../../conversation/answer-of-car.ts";
import { describedCar } from "../../conversation/apply-car.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import type { Draft, Step } from "./draft.ts";

/** `undefined`: the answer could not be read. */
export type StepAnswer = Draft | undefined;

/** The draft with the step answered by `said`: the id of a pressed answer, or words. */
export function answeredStep(scene: CommunityScene, draft: Draft, step: Step, said: string): StepAnswer {
  const answered = [...draft.answered, step];
  switch (step) {
    case "part": {
      const part = partNamed(scene, draft, said);
      return part === undefined ? undefined : { ...draft, answered, part };
    }
    case "kind":
      return kindAnswer(scene, draft, said);
    case "car":
      return carAnswer(scene, draft, said);
    case "grade": {
      const grade = gradeNamed(scene, draft, said);
      return grade === undefined ? undefined : { ...draft, answered, grade };
    }
    case "seen":
      return seenAnswer(scene, draft, said);
    case "photographs":
      return photographsAnswer(scene, draft, said);
    case "credit": {
      const credit = yesOrNo(said);
      return credit === undefined ? undefined : { ...draft, answered, credit };
    }
    case "confirm":
      return undefined;
  }
}

const doesNotKnow =
  /^(?:i )?(?:(?:cannot|can['’]?t|could ?n['’]?t)[ -](?:tell|say|remember)|(?:['’]?a?m )?not[ -]sure|(?:don['’]?t|do not) know|dunno|idk|no (?:idea|clue)|unknown)[.!]?$/iu;
/** Of a list of kinds with what was told at its head: that, and no other of it. */
const leavesItToFacts =
  /^(?:as (?:i )?(?:told|said)|(?:just |go by )?what i (?:told|said|saw|described)(?: decides)?|the facts(?: decide)?|yes|that|that one|same)[.!]?$/iu;

function partNamed(scene: CommunityScene, draft: Draft, said: string): string | undefined {
  const { handbook, lexicon } = knowledgeFor(scene, draft);
  if (handbook.parts.some(({ id }) => id === said)) return said;
  return readMessage(said, lexicon, { today: scene.today }).parts[0]?.part;
}

/** A kind by its id or name, facts in words, or "what I told decides". */
function kindAnswer(scene: CommunityScene, draft: Draft, said: string): StepAnswer {
  const knowledge = knowledgeFor(scene, draft);
  const part = findPart(knowledge, draft.part);
  if (part === undefined) return undefined;
  const answered = [...draft.answered, "kind" as const];
  if (part.variants.some(({ id }) => id === said)) return { ...draft, answered, variant: said };
  const isLeftToFacts =
    said === "as-told" ||
    said.toLowerCase() === phrases.asTold.toLowerCase() ||
    leavesItToFacts.test(said) ||
    doesNotKnow.test(said);
  if (isLeftToFacts) return draft.reports.length === 0 ? undefined : { ...draft, answered, variant: null };
  const read = readMessage(said, knowledge.lexicon, { today: scene.today, part: part.id });
  const named = read.variants.find((mention) => mention.part === part.id)?.variant;
  const byName = part.variants.find(({ name }) => name.toLowerCase() === said.toLowerCase())?.id;
  const reports = read.findings
    .filter((finding) => finding.part === part.id || finding.part === null)
    .map(
      ({ feature, value, certainty, words }): Report => ({
        feature,
        value,
        certainty,
        words,
        by: scene.speaker.id,
      }),
    );
  const variant = byName ?? named ?? null;
  if (variant === null && reports.length === 0) return undefined;
  const told = [
    ...draft.reports.filter((one) => !reports.some(({ feature }) => feature === one.feature)),
    ...reports,
  ];
  return { ...draft, answered, variant, reports: told };
}

function carAnswer(scene: CommunityScene, draft: Draft, said: string): StepAnswer {
  const answered = [...draft.answered, "car" as const];
  if (doesNotKnow.test(said)) return { ...draft, answered };
  const { lexicon } = knowledgeFor(scene, draft);
  const car = carSaid(scene, lexicon, said);
  const serials = scene.message.serials.map(
    (serial): CarFinding => ({ about: "serial", ...serial, words: serial.masked }),
  );
  const findings = [...serials, ...car.filter(({ about }) => about !== "loose-part" && about !== "grade")];
  const grade = gradeSaid(car) ?? draft.grade;
  // Its history alone is kept, and which car it was is asked again.
  if (findings.length === 0) return grade === draft.grade ? undefined : { ...draft, grade };
  return { ...draft, answered, car: describedCar(draft.car, findings), grade };
}

/** "june 1980" and "S" too, which by themselves would tell of nothing. */
function carSaid({ today }: CommunityScene, lexicon: Lexicon, said: string): readonly CarFinding[] {
  const read = readMessage(said, lexicon, { today });
  if (read.car.length > 0) return read.car;
  return answerOfCar(said, lexicon, { today, askedFeature: "car.built" }, { ...read, findings: [] });
}

function gradeSaid(car: readonly CarFinding[]): Draft["grade"] | undefined {
  return car.flatMap((one) => (one.about === "grade" ? [one.grade] : []))[0];
}

function gradeNamed(scene: CommunityScene, draft: Draft, said: string): Draft["grade"] | undefined {
  const wanted = said.toLowerCase().replace(/[.!]$/u, "");
  const chosen = provenanceGrades.find((grade) => grade === wanted || phrases.gradeChoices[grade] === wanted);
  if (chosen !== undefined) return chosen;
  const { lexicon } = knowledgeFor(scene, draft);
  const read = gradeSaid(readMessage(said, lexicon, { today: scene.today }).car);
  return read ?? (doesNotKnow.test(said) || unknownHistory.test(said) ? "history-unknown" : undefined);
}

const unknownHistory = /\b(?:not|un|isn['’]t) ?known\b|\bno (?:papers|history|idea)\b/iu;

/** A two-figure year is one of the last fifty years; in months. */
const longestMemory = 600;

function seenAnswer({ today, at }: CommunityScene, draft: Draft, said: string): StepAnswer {
  const answered = [...draft.answered, "seen" as const];
  if (doesNotKnow.test(said)) return { ...draft, answered, seen: null };
  const era = { production: { from: today.to - longestMemory, to: today.to }, today };
  const seen =
    parseDateText(said) ??
    findDates(said.toLowerCase(), era)[0]?.interval ??
    dateAgo(said.toLowerCase(), dayOfMilliseconds(at));
  return seen === undefined || seen.from >= today.to ? undefined : { ...draft, answered, seen };
}

const mostLinks = 10;
const hasNone =
  /^(?:sorry,? )?(?:i )?(?:(?:have |have ?n['’]?t |did ?n['’]?t take )?(?:none|no|nope|nothing|any|not yet|skip)(?: (?:photographs?|photos?|pictures?|pics?|links?|of those|either|of it|yet))*)[.!]?$/iu;

function photographsAnswer({ message }: CommunityScene, draft: Draft, said: string): StepAnswer {
  const answered = [...draft.answered, "photographs" as const];
  const links = [...said.matchAll(/https?:\/\/[^\s<>"]{1,500}/giu)].map(([link]) => link);
  const photographs = [...draft.photographs, ...(message.photographs ?? [])];
  const isNone = hasNone.test(said) || doesNotKnow.test(said);
  if (!isNone && links.length === 0 && (message.photographs ?? []).length === 0) return undefined;
  return { ...draft, answered, photographs, links: [...draft.links, ...links].slice(0, mostLinks) };
}

function yesOrNo(said: string): boolean | undefined {
  if (/^(?:yes|y|yes please|sure|of course|ok(?:ay)?)[.!]?$/iu.test(said)) return true;
  return /^(?:no|n|no thanks|rather not|better not)[.!]?$/iu.test(said) ? false : undefined;
}

export function knowledgeFor(
  { loaded, knowledge }: CommunityScene,
  { handbook }: Pick<Draft, "handbook">,
): Knowledge {
  return loaded.find((one) => one.handbook.cover.id === handbook) ?? knowledge;
}
