/**
 * When the works fitted each kind of a part, for whoever draws it, and the same as a table for whoever cannot see it. An end is a stretch of
 * time: as wide as the handbook is unsure of it, or what members' cars say of the change.
 */
import {
  type Cars,
  endDeviationMonths,
  formatInterval,
  type Handbook,
  type Interval,
  midpoint,
  type PartKind,
  parseDateText,
  type Variant,
} from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import {
  carBuilt,
  carLegend,
  fittedFor,
  fittedHead,
  fittedLegend,
  fittedNowhere,
  fittedTitle,
  unsureLegend,
} from "../phrases/charts.ts";
import { listed } from "../phrases/grammar.ts";
import { fittedTimes } from "./say-variant.ts";

export interface FittedChart {
  readonly title: string;
  /** Everything that is in the drawing, in sentences. */
  readonly description: string;
  /** By the first car they were on. */
  readonly rows: readonly FittedRow[];
  readonly car?: Interval;
  readonly legend: readonly { readonly sign: "fitted" | "unsure" | "car"; readonly words: string }[];
}

export interface FittedRow {
  readonly variant: string;
  readonly name: string;
  /** "about June 1978 to November 1981". */
  readonly times: string;
  readonly periods: readonly FittedStretch[];
}

/** Both ends in months; of length 0 where the handbook is exact. */
export interface FittedStretch {
  readonly begins: Interval;
  readonly ends: Interval;
}

/** What is known of a change beside the handbook: its 90 % interval. */
export interface KnownChange {
  readonly old: string;
  readonly new: string;
  readonly interval: Interval;
}

/** The chart of a part kind; undefined when no kind of it has a date. `car`: when a car was built, to be shown on it. */
export function fittedChart(
  part: PartKind,
  known: { readonly changes?: readonly KnownChange[]; readonly car?: Interval } = {},
): FittedChart | undefined {
  const { changes = [], car } = known;
  const rows = part.variants
    .flatMap((variant) => rowOf(variant, changes))
    .toSorted((one, other) => beginningOf(one) - beginningOf(other));
  if (rows.length === 0) return undefined;
  const isUnsure = rows.some((row) => row.periods.some(({ begins, ends }) => isWide(begins) || isWide(ends)));
  const never = part.variants.filter(({ id }) => rows.every((row) => row.variant !== id));
  return {
    title: fittedTitle(part.name),
    description: [
      ...rows.map(({ name, times }) => `${name}: ${times}.`),
      ...(car === undefined ? [] : [carBuilt(formatInterval(car))]),
      ...(never.length === 0 ? [] : [fittedNowhere(listed(never.map(({ name }) => name)))]),
    ].join(" "),
    rows,
    ...(car === undefined ? {} : { car }),
    legend: [
      { sign: "fitted", words: fittedLegend },
      ...(isUnsure ? [{ sign: "unsure" as const, words: unsureLegend }] : []),
      ...(car === undefined ? [] : [{ sign: "car" as const, words: carLegend }]),
    ],
  };
}

/** One row a kind that the works fitted, in the order of the drawing. */
export function fittedTable({ cars }: Handbook, part: PartKind): Extract<Block, { kind: "table" }> {
  const rows = fittedChart(part)?.rows ?? [];
  return {
    kind: "table",
    caption: fittedTitle(part.name),
    head: fittedHead,
    rows: rows.map(({ variant, name, times }) => [name, times, whomFor(cars, part, variant)]),
  };
}

function whomFor(cars: Cars, part: PartKind, id: string): string {
  const periods = part.variants.find((variant) => variant.id === id)?.fitted ?? [];
  const named = (known: Cars["trims"] | Cars["markets"], ids: readonly string[]): readonly string[] =>
    known.filter((one) => ids.includes(one.id)).map(({ name }) => name);
  return fittedFor(
    named(
      cars.trims,
      periods.flatMap(({ trims }) => trims),
    ),
    named(
      cars.markets,
      periods.flatMap(({ markets }) => markets),
    ),
  );
}

function rowOf(variant: Variant, changes: readonly KnownChange[]): readonly FittedRow[] {
  const times = fittedTimes(variant);
  const periods = joined(variant.fitted.flatMap((period) => stretchOf(period) ?? []));
  if (times === undefined || periods.length === 0) return [];
  const begun = changes.find((change) => change.new === variant.id)?.interval;
  const ended = changes.find((change) => change.old === variant.id)?.interval;
  const sharpened = periods.map(({ begins, ends }, index) => ({
    begins: index === 0 ? (begun ?? begins) : begins,
    ends: index === periods.length - 1 ? (ended ?? ends) : ends,
  }));
  return [{ variant: variant.id, name: variant.name, times, periods: sharpened }];
}

/** Periods of one kind for several trims or markets, those that meet made one, by their beginning. */
function joined(stretches: readonly FittedStretch[]): readonly FittedStretch[] {
  const done: FittedStretch[] = [];
  const inOrder = stretches.toSorted((one, other) => midpoint(one.begins) - midpoint(other.begins));
  for (const stretch of inOrder) {
    const last = done.at(-1);
    if (last === undefined || midpoint(stretch.begins) > midpoint(last.ends)) done.push(stretch);
    else if (midpoint(stretch.ends) > midpoint(last.ends))
      done.splice(-1, 1, { ...last, ends: stretch.ends });
  }
  return done;
}

function stretchOf({ from, to, start, end }: Variant["fitted"][number]): FittedStretch | undefined {
  const [first, last] = [parseDateText(from), parseDateText(to)];
  if (first === undefined || last === undefined) return undefined;
  return { begins: around(first.from, start), ends: around(last.to, end) };
}

function around(instant: number, sureness: Variant["fitted"][number]["start"]): Interval {
  const months = sureness === "exact" ? 0 : endDeviationMonths[sureness];
  return { from: instant - months, to: instant + months };
}

function beginningOf({ periods }: FittedRow): number {
  return Math.min(...periods.map(({ begins }) => midpoint(begins)));
}

function isWide({ from, to }: Interval): boolean {
  return to > from;
}
