/**
 * A part kind of one edition made ready for arithmetic: frequencies, channels, chains and spans as flat arrays.
 * Compiled once and kept by the caller; nothing in it depends on a case.
 */
import type { Interval } from "../calendar/interval.ts";
import type { Feature, Handbook, PartKind } from "../handbook/schema.ts";
import { type AnswerRows, sizeAnswers, stateAnswers } from "./answer-rows.ts";
import { fittedSpans, type MixGround } from "./as-built-mix.ts";
import { type BuildMix, buildMix } from "./build-mix.ts";
import type { CarGround } from "./car-ground.ts";
import { type CauseTable, causeTable } from "./cause-table.ts";
import { type DateLinks, dateLinks } from "./date-chain.ts";
import { markEra, productionSpan, yearlyProduction } from "./eras.ts";
import { type HypothesisSpace, hypothesisSpace } from "./hypothesis-space.ts";
import type { ObservedState } from "./identification.ts";
import type { LearntLead } from "./lead-time.ts";
import { type ChangeOfMix, changesFor, changesOf, type LearntChange } from "./learnt-change.ts";
import { type MeasurementTable, measurementTable } from "./measurement-table.ts";
import { saleSpans } from "./sale-spans.ts";
import { observedOf, presenceTable, type StateTable, stateTable } from "./state-table.ts";
import { timeGrid } from "./time-grid.ts";

export interface CompiledPart {
  readonly handbook: Handbook;
  readonly part: PartKind;
  readonly space: HypothesisSpace;
  readonly features: ReadonlyMap<string, Feature>;
  readonly states: ReadonlyMap<string, StateTable>;
  readonly measurements: ReadonlyMap<string, MeasurementTable>;
  /** For measurements and date marks that a variant may lack. */
  readonly presence: ReadonlyMap<string, StateTable>;
  /** What each variant is expected to answer, for state and measured features. */
  readonly answers: ReadonlyMap<string, AnswerRows>;
  readonly dates: DateLinks;
  /** Feature to the coupling of its group and the group's features. */
  readonly groups: ReadonlyMap<string, { readonly coupling: number; readonly features: readonly string[] }>;
  readonly causes: ReadonlyMap<string, CauseTable>;
  readonly productionSpan: Interval;
  readonly markEra: Interval;
  readonly yearlyProduction: ReadonlyMap<number, number>;
  /** What the as-built mix of any car is made of; its changes are those of cars of which nothing is known. */
  readonly fleet: MixGround;
  /** All changes that were taught, with the cars they are of. */
  readonly changes: readonly ChangeOfMix[];
  readonly sales: readonly (readonly Interval[])[];
  /** As-built mix over all cars, whatever their trim: where used parts come from. */
  readonly allCars: BuildMix;
  /** What was worked out for cars met before, most recent last: a cache, the same values each time. */
  readonly grounds: Map<string, CarGround>;
}

/** Coupling ρ of a group: how far one of its features already tells the others (judgement). */
const couplings = { loose: 0.3, close: 0.6, "one-cause": 1 } as const;

/**
 * `observed`: accepted sightings of states; `learnt`, `leads`: changeovers and leads as sightings taught them. Undefined
 * when the handbook has no such part kind. Cost: variants × (features + months of production).
 */
export function compilePart(
  handbook: Handbook,
  partId: string,
  observed: readonly ObservedState[] = [],
  learnt: readonly LearntChange[] = [],
  leads: readonly LearntLead[] = [],
): CompiledPart | undefined {
  const part = handbook.parts.find(({ id }) => id === partId);
  if (!part) return undefined;
  const tables = tablesOf(part, observed);
  const production = part.variants.flatMap(({ origin }, index) => (origin === "production" ? [index] : []));
  const span = productionSpan(handbook);
  const era = markEra(handbook);
  const changes = changesOf(part, learnt);
  const fleet: MixGround = {
    spans: fittedSpans(part),
    changes: changesFor(changes, {}),
    production,
    variantCount: part.variants.length,
  };
  const yearly = yearlyProduction(handbook);
  return {
    handbook,
    part,
    space: hypothesisSpace(part),
    features: new Map(part.features.map((feature) => [feature.id, feature])),
    ...tables,
    dates: dateLinks(part, leads),
    groups: groupsOf(part),
    causes: causesOf(part, tables.states),
    productionSpan: span,
    markEra: era,
    yearlyProduction: yearly,
    fleet,
    changes,
    sales: part.variants.map((variant) => saleSpans(variant, { from: span.from, to: era.to })),
    allCars: buildMix(timeGrid(span, yearly), fleet),
    grounds: new Map(),
  };
}

type Tables = Pick<CompiledPart, "states" | "measurements" | "presence" | "answers">;

function tablesOf(part: PartKind, observed: readonly ObservedState[]): Tables {
  const states = new Map<string, StateTable>();
  const measurements = new Map<string, MeasurementTable>();
  const presence = new Map<string, StateTable>();
  const answers = new Map<string, AnswerRows>();
  for (const feature of part.features) {
    const lacking = presenceTable(part, feature);
    if (lacking) presence.set(feature.id, lacking);
    if (feature.kind === "states") {
      const table = stateTable(part, feature, observedOf(part, feature.id, observed));
      states.set(feature.id, table);
      answers.set(feature.id, stateAnswers(feature, table));
    }
    if (feature.kind === "measurement") {
      const table = measurementTable(part, feature);
      measurements.set(feature.id, table);
      const rows = sizeAnswers(feature, table, lacking);
      if (rows) answers.set(feature.id, rows);
    }
  }
  return { states, measurements, presence, answers };
}

function groupsOf(part: PartKind): CompiledPart["groups"] {
  const groups = new Map<string, { readonly coupling: number; readonly features: readonly string[] }>();
  for (const { coupling, features } of part.groups) {
    for (const feature of features) {
      if (!groups.has(feature)) groups.set(feature, { coupling: couplings[coupling], features });
    }
  }
  return groups;
}

/** Each feature is governed by the first cause that names it. */
function causesOf(part: PartKind, states: ReadonlyMap<string, StateTable>): CompiledPart["causes"] {
  const causes = new Map<string, CauseTable>();
  for (const cause of part.causes) {
    const table = causeTable(part, cause, states);
    for (const feature of table.features.keys()) if (!causes.has(feature)) causes.set(feature, table);
  }
  return causes;
}
