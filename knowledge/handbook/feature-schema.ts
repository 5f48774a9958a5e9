/** What can be looked at, measured or read off on a part, and how to check it. */
import { z } from "zod";
import { dateMarkForms } from "../trade/date-marks/date-mark-reading.ts";
import { Also, Id, Name, SourceIds, Text } from "./written-forms.ts";

/** A state may name what it is made of: a moulded material mark or a density then speaks about it. */
export const State = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  material: z
    .strictObject({
      symbols: z.array(Name).default([]),
      density: z.tuple([z.number().positive(), z.number().positive()]).optional(),
    })
    .optional(),
  drawing: Name.optional(),
});
export type State = z.output<typeof State>;

/** One confusion people make: they see `is` and say `said`, at this rate. */
export const Confusion = z.strictObject({ is: Id, said: Id, rate: z.number().min(0).max(0.5) });

const featureBase = {
  id: Id,
  name: Name,
  also: Also,
  /** The question as put to the owner, one sentence. */
  question: Text,
  /** Why it is worth asking, in the trade's words. */
  why: Text.optional(),
  /** How to look, step by step. */
  check: Text,
  /** 1 a look from outside … 8 dismantling. */
  effort: z.number().min(1).max(8),
  photograph: z.boolean(),
  tools: z.array(Name).max(12).default([]),
  /** Share of owners who look and cannot tell. */
  unsure: z.number().min(0).max(0.9).default(0.1),
  /** Ids of general cautions (knowledge/trade) to be shown before the check. */
  cautions: z.array(Id).max(8).default([]),
  /** The feature is worth asking only when each named feature may be in one of these states. */
  when: z.record(Id, z.array(Id).min(1)).default({}),
  drawing: Name.optional(),
  /** What to call it when the part has no such feature at all. */
  none: Name.optional(),
  sources: SourceIds,
};

export const StateFeature = z.strictObject({
  ...featureBase,
  kind: z.literal("states"),
  states: z.array(State).min(2).max(12),
  /** How often a look is misread: one rate for all, or single confusions. */
  misread: z.union([z.number().min(0).max(0.5), z.array(Confusion).min(1)]).default(0.04),
});
export const MeasurementFeature = z.strictObject({
  ...featureBase,
  kind: z.literal("measurement"),
  unit: z.enum(["mm", "cm", "in", "g", "kg", "lb", "oz"]),
  instrument: z.enum(["tape", "rule", "caliper", "kitchen-scale", "guess"]),
});
export const Lead = z.strictObject({ median: z.number().positive(), sigma: z.number().positive() });
export const DateFeature = z.strictObject({
  ...featureBase,
  kind: z.literal("date"),
  /** Months from this mark to the next mark of the chain, or to the car's build: median, and sigma of its logarithm. */
  lead: Lead.optional(),
  /** The mark that is made after this one on the same part; none: the car's build date comes next. */
  before: Id.optional(),
  /** Forms the mark is written in, by the names of the reader of marks. */
  forms: z.array(z.enum(dateMarkForms)).min(1),
});
export const Feature = z.discriminatedUnion("kind", [StateFeature, MeasurementFeature, DateFeature]);
export type StateFeature = z.output<typeof StateFeature>;
export type MeasurementFeature = z.output<typeof MeasurementFeature>;
export type DateFeature = z.output<typeof DateFeature>;
export type Feature = z.output<typeof Feature>;
