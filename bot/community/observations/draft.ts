/** An observation while it is being told: what is known already is not asked, and every step can be taken back. */
import { z } from "zod";
import { provenanceGrades } from "../../../knowledge/index.ts";
import { KeptCar, KeptReport, Span } from "../../conversation/case.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import type { CommunityScene } from "../affair.ts";
import type { Observation, Sighting } from "./observation.ts";

export const steps = ["part", "kind", "car", "grade", "seen", "photographs", "credit", "confirm"] as const;
export type Step = (typeof steps)[number];

export const Draft = z
  .strictObject({
    /** The observation that is being changed; null: a new one. */
    editing: z.string().nullable(),
    handbook: z.string(),
    part: z.string().nullable(),
    variant: z.string().nullable(),
    reports: z.array(KeptReport).readonly(),
    car: KeptCar,
    grade: z.enum(provenanceGrades).nullable(),
    seen: Span.nullable(),
    photographs: z.array(z.string()).readonly(),
    links: z.array(z.string()).readonly(),
    credit: z.boolean().nullable(),
    /** The steps that were answered, in their order. */
    answered: z.array(z.enum(steps)).readonly(),
  })
  .readonly();
export type Draft = z.output<typeof Draft>;

/** The first step that is neither answered nor known. */
export function nextStep(draft: Draft): Step {
  return steps.find((step) => !draft.answered.includes(step) && !isKnown(draft, step)) ?? "confirm";
}

function isKnown(draft: Draft, step: Step): boolean {
  switch (step) {
    case "part":
      return draft.part !== null;
    case "grade":
      return draft.grade !== null;
    case "credit":
      return draft.credit !== null;
    case "kind":
    case "car":
    case "seen":
    case "photographs":
    case "confirm":
      return false;
  }
}

/** Begun from the case in hand when it is the speaker's own: its part, what was told, its car. */
export function draftFromCase({ conversation, speaker, knowledge, message }: CommunityScene): Draft {
  const kept = caseInHand(conversation, speaker.id);
  const own = kept?.owner === speaker.id ? kept : undefined;
  const { car = {}, part = null, reports = [] } = own?.facts ?? {};
  const { grade, isLoosePart: _, ...described } = car;
  return {
    editing: null,
    handbook: own?.handbook ?? knowledge.handbook.cover.id,
    part,
    variant: null,
    reports: reports.filter(({ value }) => value.kind !== "cannot-tell"),
    car: described,
    grade: grade ?? null,
    seen: null,
    photographs: message.photographs ?? [],
    links: [],
    credit: null,
    answered: car.built === undefined ? [] : ["car"],
  };
}

/** Everything as it was recorded, to be gone through again. */
export function draftFrom(id: string, { saw }: Observation): Draft {
  const { part, credit, grade, ...rest } = saw;
  return {
    ...rest,
    editing: id,
    part,
    credit,
    grade,
    answered: [...steps.filter((step) => step !== "confirm")],
  };
}

/** What is recorded; undefined while something is missing. */
export function sightingOf(draft: Draft): Sighting | undefined {
  const { editing: _, answered: __, part, grade, credit, ...rest } = draft;
  if (part === null || grade === null || credit === null) return undefined;
  return { ...rest, part, grade, credit };
}

/** Without the last answered step and what it said. */
export function steppedBack(draft: Draft): Draft {
  const last = draft.answered.at(-1);
  const answered = draft.answered.slice(0, -1);
  switch (last) {
    case undefined:
    case "confirm":
      return { ...draft, answered };
    case "part":
      return { ...draft, answered, part: null, variant: null, reports: [] };
    case "kind":
      return { ...draft, answered, variant: null };
    case "car":
      return { ...draft, answered, car: {} };
    case "grade":
      return { ...draft, answered, grade: null };
    case "seen":
      return { ...draft, answered, seen: null };
    case "photographs":
      return { ...draft, answered, photographs: [], links: [] };
    case "credit":
      return { ...draft, answered, credit: null };
  }
}
