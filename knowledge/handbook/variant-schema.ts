/** One version of a part kind: when the works fitted it, when it was sold, and what is seen on it (its tells). */
import { z } from "zod";
import { Also, DateText, EndSureness, FrequencyText, Id, Name, SourceIds, Text } from "./written-forms.ts";

/** When the works fitted a variant; an empty list of models, trims or markets means all of them. */
export const FittedPeriod = z.strictObject({
  from: DateText,
  to: DateText,
  start: EndSureness.default("about"),
  end: EndSureness.default("about"),
  models: z.array(Id).default([]),
  trims: z.array(Id).default([]),
  markets: z.array(Id).default([]),
  share: z.number().positive().max(1).default(1),
  sources: SourceIds,
});
export type FittedPeriod = z.output<typeof FittedPeriod>;

/** When a part could be bought over the counter (service part, reproduction, other maker's). */
export const SalePeriod = z.strictObject({ from: DateText, to: DateText, sources: SourceIds });
export type SalePeriod = z.output<typeof SalePeriod>;

/** What a variant measures: the mean and the maker's spread (one standard deviation), in the feature's unit. */
export const MeasurementClaim = z.strictObject({
  mean: z.number().positive(),
  spread: z.number().positive(),
  sources: SourceIds,
});
/** How often each state is seen on a variant; `not-there` says the variant has no such feature at all. */
export const StateClaim = z.object({ sources: SourceIds }).catchall(FrequencyText);
export const Claim = z.union([MeasurementClaim, StateClaim]);
export type MeasurementClaim = z.output<typeof MeasurementClaim>;
export type StateClaim = z.output<typeof StateClaim>;
export type Claim = z.output<typeof Claim>;

export const Origin = z.enum(["production", "service", "reproduction", "other-maker"]);
export type Origin = z.output<typeof Origin>;

export const Variant = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  origin: Origin,
  summary: Text,
  fitted: z.array(FittedPeriod).max(20).default([]),
  sold: z.array(SalePeriod).max(20).default([]),
  material: Text.optional(),
  mounting: Id.optional(),
  needs: z.array(Text).max(20).default([]),
  resembles: z.array(Id).max(20).default([]),
  remarks: z.array(Text).max(20).default([]),
  drawing: Name.optional(),
  sources: SourceIds,
  tells: z.record(Id, Claim).default({}),
});
export type Variant = z.output<typeof Variant>;
