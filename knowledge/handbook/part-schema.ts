/** A part kind with everything its file in parts/ may hold. */
import { z } from "zod";
import { Feature, Lead } from "./feature-schema.ts";
import { Variant } from "./variant-schema.ts";
import { Also, FrequencyText, Id, Name, SourceIds, Text } from "./written-forms.ts";

/** Features that go wrong or right together, for one reason. */
export const FeatureGroup = z.strictObject({
  id: Id,
  coupling: z.enum(["loose", "close", "one-cause"]),
  features: z.array(Id).min(2),
  reason: Text,
});
export type FeatureGroup = z.output<typeof FeatureGroup>;

/** A known hidden cause (which tool, which supplier) with its conditional table: replaces the tells of its features. */
export const Cause = z.strictObject({
  id: Id,
  name: Name,
  states: z.array(Id).min(2),
  /** variant -> cause state -> frequency */
  variants: z.record(Id, z.record(Id, FrequencyText)),
  /** feature -> cause state -> feature state -> frequency */
  features: z.record(Id, z.record(Id, z.record(Id, FrequencyText))),
  sources: SourceIds,
});
export type Cause = z.output<typeof Cause>;

export const Mounting = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  description: Text,
  drawing: Name.optional(),
});
/** How a part with one mounting goes on a car drilled for another; pairs not named do not fit. */
export const MountingFit = z.strictObject({
  part: Id,
  car: Id,
  fit: z.enum(["direct", "with-work", "no"]),
  how: Text,
  cautions: z.array(Id).default([]),
});

export const Misbelief = z.strictObject({
  id: Id,
  /** The belief as people say it. */
  claim: Text,
  /** Other ways of saying it; each is matched by its main words. */
  also: z.array(Text).max(20).default([]),
  correction: Text,
  sources: SourceIds,
});
export type Misbelief = z.output<typeof Misbelief>;

/** parts/*.yaml */
/** What the trade takes a part to lie before it is fitted, where a handbook says nothing (common practice, no source). */
export const usualLead = { median: 2, sigma: 0.7 } as const;

export const PartKind = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  summary: Text,
  /** Share of surviving cars on which this part was replaced, history unknown. */
  replaced: z.number().min(0.01).max(0.95).default(0.2),
  lead: Lead.default(usualLead),
  drawing: Name.optional(),
  features: z.array(Feature).min(1).max(400),
  groups: z.array(FeatureGroup).default([]),
  causes: z.array(Cause).default([]),
  mountings: z.array(Mounting).default([]),
  fits: z.array(MountingFit).default([]),
  variants: z.array(Variant).min(2).max(3000),
  misbeliefs: z.array(Misbelief).default([]),
});
export type PartKind = z.output<typeof PartKind>;
