/**
 * The one definition of a handbook: a club's YAML folder is checked against these shapes, and the JSON Schema
 * for editors is made from them. Keys are single plain words, because historians write them by hand.
 * Dates and frequencies stay the words that were written; they are read where they are used.
 */
import { z } from "zod";
import { parseDateText } from "../calendar/date-text.ts";
import { parseFrequency } from "./frequency.ts";

const Text = z.string().trim().min(1).max(2000);
const Name = z.string().trim().min(1).max(120);

/** A short handle: lower-case words joined by hyphens ("inside-finish"). */
export const Id = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "an id is lower-case letters and figures joined by hyphens, such as inside-finish")
  .max(60);

/** Other words people use for the same thing; typing slips and plurals need not be listed. */
const Also = z.array(Name).max(60).default([]);
const SourceIds = z.array(Id).max(30).default([]);

/** `1980`, `1980-05`, `1980-05-17` or `1981-W31`, always in quotes or with a hyphen so that YAML keeps the text. */
export const DateText = z.union([z.string(), z.number().int()]).transform(String).refine((text) => parseDateText(text) !== undefined, {
  message: "a date is written 1980, 1980-05, 1980-05-17 or 1981-W31 and must exist in the calendar",
});

/** `always`, `usually` …, a count `17 of 20`, or both: `usually, 17 of 20`. */
export const FrequencyText = z.string().refine((text) => parseFrequency(text) !== undefined, {
  message:
    "a frequency is always, nearly always, usually, often, about half, sometimes, rarely, never, or a count such as 17 of 20",
});

export const EndSureness = z.enum(["exact", "about", "rough"]);

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

/** A state may name what it is made of: a moulded material mark or a density then speaks about it. */
export const State = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  material: z
    .strictObject({ symbols: z.array(Name).default([]), density: z.tuple([z.number().positive(), z.number().positive()]).optional() })
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
  /** Forms the mark is written in, for the reader of marks: clock, month-year, week-year, year-week, figure-and-dots … */
  forms: z.array(Id).min(1),
});
export const Feature = z.discriminatedUnion("kind", [StateFeature, MeasurementFeature, DateFeature]);
export type StateFeature = z.output<typeof StateFeature>;
export type MeasurementFeature = z.output<typeof MeasurementFeature>;
export type DateFeature = z.output<typeof DateFeature>;
export type Feature = z.output<typeof Feature>;

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

export const Mounting = z.strictObject({ id: Id, name: Name, also: Also, description: Text, drawing: Name.optional() });
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

export const PartKind = z.strictObject({
  id: Id,
  name: Name,
  also: Also,
  summary: Text,
  /** Share of surviving cars on which this part was replaced, history unknown. */
  replaced: z.number().min(0.01).max(0.95).default(0.2),
  lead: Lead.default({ median: 2, sigma: 0.7 }),
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

const Edition = z.strictObject({
  format: z.literal(1),
  id: Id,
  name: Name,
  summary: Text,
  /** How much of what exists this handbook covers. */
  completeness: z.enum(["complete", "good", "fair", "poor"]),
  /** The month this edition was closed. */
  edited: DateText,
});
/** handbook.yaml */
export const Cover = Edition;
export type Cover = z.output<typeof Cover>;

export const Source = z.strictObject({
  id: Id,
  kind: z.enum([
    "works-record",
    "parts-list",
    "service-bulletin",
    "period-photograph",
    "brochure",
    "measured",
    "survey",
    "register",
    "witness",
    "club-paper",
    "restorer",
    "hearsay",
  ]),
  /** Who, what, where: the citation as it stands in brackets behind a claim. */
  citation: Text,
  /** The short form shown in a reply. */
  short: Name,
  date: DateText.optional(),
  /** A record of the time; B seen and measured; C told by somebody who was there; D repeated. */
  grade: z.enum(["A", "B", "C", "D"]),
});
export type Source = z.output<typeof Source>;

const CarName = z.strictObject({ id: Id, name: Name, also: Also, from: DateText, to: DateText });
/** cars.yaml */
export const Cars = z.strictObject({
  models: z.array(CarName).min(1),
  trims: z.array(z.strictObject({ ...CarName.shape, models: z.array(Id).default([]) })).default([]),
  markets: z.array(z.strictObject({ id: Id, name: Name, also: Also })).default([]),
  /** Cars finished in each calendar year. */
  production: z.record(z.string().regex(/^\d{4}$/, "a year of four figures"), z.number().nonnegative()),
  serials: z
    .strictObject({
      /** What the plate looks like: letters stand for themselves, # for a figure ("WS-####"). */
      form: Name,
      /** Documented pairs of serial and build date, rising. */
      anchors: z.array(z.strictObject({ serial: z.number().int().nonnegative(), built: DateText, sources: SourceIds })).min(2),
      remark: Text.optional(),
    })
    .optional(),
});
export type Cars = z.output<typeof Cars>;

/** sources.yaml */
export const Sources = z.strictObject({ sources: z.array(Source).max(2000) });
/** parts/*.yaml */
export const PartFile = PartKind;

/** A sound handbook in memory. `edition` is a hash of the content: every answer cites it. */
export interface Handbook {
  readonly cover: Cover;
  readonly edition: string;
  readonly cars: Cars;
  readonly sources: readonly Source[];
  readonly parts: readonly PartKind[];
  /** SVG text by path inside the folder ("drawings/foot.svg"). */
  readonly drawings: ReadonlyMap<string, string>;
}
