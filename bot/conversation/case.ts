/**
 * A case is one owner's question about one part: what was said, by whom, and which question is open. All of it is a
 * plain JSON value with one schema, so that a store may keep it anywhere and a damaged or older state is found at once.
 */
import { z } from "zod";
import type { CarDescription, Interval, Report } from "../../knowledge/index.ts";
import { goals, provenanceGrades } from "../../knowledge/index.ts";

export const Span: z.ZodType<Interval> = z.strictObject({ from: z.number(), to: z.number() }).readonly();

const ReportedValue = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("state"), state: z.string() }),
  z.strictObject({ kind: z.literal("weighed-states"), weights: z.record(z.string(), z.number()) }),
  z.strictObject({
    kind: z.literal("measurement"),
    value: z.number(),
    halfWidth: z.number(),
    unit: z.enum(["mm", "cm", "in", "g", "kg", "lb", "oz"]).nullable(),
    instrument: z.enum(["tape", "rule", "caliper", "kitchen-scale", "guess"]).exactOptional(),
    unitConfirmed: z.boolean().exactOptional(),
  }),
  z.strictObject({
    kind: z.literal("date"),
    readings: z.array(z.strictObject({ interval: Span, weight: z.number() })),
  }),
  z.strictObject({ kind: z.literal("cannot-tell") }),
]);

export const KeptReport: z.ZodType<Report> = z.strictObject({
  feature: z.string(),
  by: z.string(),
  certainty: z.number().min(0).max(1),
  words: z.string(),
  value: ReportedValue,
});

export const KeptCar: z.ZodType<CarDescription> = z.strictObject({
  model: z.string().exactOptional(),
  trim: z.string().exactOptional(),
  market: z.string().exactOptional(),
  built: Span.exactOptional(),
  modelYear: z.number().exactOptional(),
  grade: z.enum(provenanceGrades).exactOptional(),
  isLoosePart: z.boolean().exactOptional(),
  maskedSerial: z.string().exactOptional(),
  serialDigest: z.string().exactOptional(),
});

/** The question that waits for an answer; `unit` is the one we proposed, for "420, that is mm?". */
const OpenQuestion = z.strictObject({ feature: z.string(), unit: z.string().exactOptional() }).readonly();
export type OpenQuestion = z.output<typeof OpenQuestion>;

/** Stands for the question of a case that was told something while another was talked of: it has one, or an answer, unsaid. */
export const notYetPut = "not-yet-put";

/** Everything that a step may change and that an undo brings back. */
const CaseFacts = z
  .strictObject({
    part: z.string().nullable(),
    goal: z.enum(goals),
    car: KeptCar,
    reports: z.array(KeptReport).readonly(),
    /** Marks of general trade knowledge that cannot be older than a date. */
    marks: z.array(z.strictObject({ words: z.string(), notBefore: Span }).readonly()).readonly(),
    /** Questions about the car ("car.built" …) to which the answer was "cannot tell". */
    unanswerable: z.array(z.string()).readonly(),
    /** Messages that told something before the part was named; read again when it is. */
    unplaced: z.array(z.string()).readonly(),
    /** Facts already looked at a second time; they are not doubted aloud again. */
    rechecked: z.array(z.string()).readonly(),
    /** Cautions given in full so far. */
    warned: z.array(z.string()).readonly(),
    open: OpenQuestion.nullable(),
    /** What the last message may have meant, asked back: a bare "yes" takes it. */
    inDoubt: z
      .strictObject({ feature: z.string(), state: z.string(), words: z.string() })
      .readonly()
      .exactOptional(),
  })
  .readonly();
export type CaseFacts = z.output<typeof CaseFacts>;

/** The first of the answers that the goal allows. */
const Answered = z
  .strictObject({ edition: z.string(), class: z.string(), probability: z.number().min(0).max(1) })
  .readonly();

export const Case = z
  .strictObject({
    id: z.string(),
    /** Counts from one within the conversation; what people call it by. */
    number: z.number().int().positive(),
    /** Who asked; the car is theirs, and facts by others are marked as such. */
    owner: z.string(),
    /** Which of the owner's cars it is about, from two on; the first when not given. */
    ofCar: z.number().int().positive().exactOptional(),
    /** Id of the handbook it is read against. */
    handbook: z.string(),
    facts: CaseFacts,
    /** What it came to when it was last answered, and by which edition: another edition may turn it. */
    answered: Answered.exactOptional(),
    /** Earlier facts, oldest first, at most `historyLimit`. */
    history: z.array(CaseFacts).readonly(),
  })
  .readonly();
export type Case = z.output<typeof Case>;

/** How many steps can be taken back. */
export const historyLimit = 60;

/** Facts of a case about which nothing has been said yet. */
export const noFacts: CaseFacts = {
  part: null,
  goal: "which-variant",
  car: {},
  reports: [],
  marks: [],
  unanswerable: [],
  unplaced: [],
  rechecked: [],
  warned: [],
  open: null,
};

/** The case with new facts, the old ones kept for undo; the same case when nothing but the open question changed. */
export function withFacts(kept: Case, facts: CaseFacts): Case {
  if (saysTheSame(kept.facts, facts)) return { ...kept, facts };
  return { ...kept, facts, history: [...kept.history, kept.facts].slice(-historyLimit) };
}

/** The case as it was before its last change; undefined when there is nothing to take back. */
export function takenBack(kept: Case): Case | undefined {
  const before = kept.history.at(-1);
  return before && { ...kept, facts: before, history: kept.history.slice(0, -1) };
}

/**
 * Whether two states of a case hold the same said things: in other words is the same, and which question is open is not said by anybody.
 */
export function saysTheSame(one: CaseFacts, other: CaseFacts): boolean {
  const spoken = (facts: CaseFacts) => {
    const reports = facts.reports.map((report) => ({ ...report, words: "" }));
    return JSON.stringify({ ...facts, reports, open: null, warned: [], inDoubt: undefined });
  };
  return spoken(one) === spoken(other);
}

/** How many questions were answered with "cannot tell". */
export function cannotTells({ reports, unanswerable }: CaseFacts): number {
  return unanswerable.length + reports.filter((report) => report.value.kind === "cannot-tell").length;
}
