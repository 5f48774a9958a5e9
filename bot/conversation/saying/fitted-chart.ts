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
  type ProvenanceGrade,
  parseDateText,
  provenanceGrades,
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
  gradeLegend,
  seenOnCars,
  suspectLegend,
  unsureLegend,
} from "../phrases/charts.ts";
import { listed } from "../phrases/grammar.ts";
import { originWords } from "../phrases/variants.ts";
import { fittedTimes } from "./say-variant.ts";

export interface FittedChart {
  readonly title: string;
  /** Everything that is in the drawing, in sentences. */
  readonly description: string;
  /** By the first car they were on. */
  readonly rows: readonly FittedRow[];
  readonly car?: Interval;
  /** Only what is in the drawing. */
  readonly legend: readonly {
    readonly sign: "fitted" | "unsure" | "car" | "suspect" | ProvenanceGrade;
    readonly words: string;
  }[];
}

export interface FittedRow {
  readonly variant: string;
  readonly name: string;
  /** "about June 1978 to November 1981". */
  readonly times: string;
  readonly periods: readonly FittedStretch[];
  readonly marks: readonly SeenOnCar[];
}

/** Both ends in months; of length 0 where the handbook is exact. */
export interface FittedStretch {
  readonly begins: Interval;
  readonly ends: Interval;
}

/** A car that members have seen the kind on. */
export interface SeenOnCar {
  readonly variant: string;
  readonly built: Interval;
  readonly grade: ProvenanceGrade;
  readonly isSuspect: boolean;
  /** In words, for whoever rests on the mark. */
  readonly words: string;
}

/** What is known of a change beside the handbook: its 90 % interval. */
export interface KnownChange {
  readonly old: string;
  readonly new: string;
  readonly interval: Interval;
}

export interface KnownOfPart {
  readonly changes?: readonly KnownChange[];
  readonly sightings?: readonly SeenOnCar[];
  /** When a car was built, to be shown too. */
  readonly car?: Interval | undefined;
}

/** The chart of a part kind; undefined when no kind of it has a date or was seen. */
export function fittedChart(part: PartKind, known: KnownOfPart = {}): FittedChart | undefined {
  const { car } = known;
  const rows = part.variants
    .flatMap((variant) => rowOf(variant, known))
    .toSorted((one, other) => beginningOf(one) - beginningOf(other));
  if (rows.length === 0) return undefined;
  const never = part.variants.filter(({ id }) => rows.every((row) => row.variant !== id));
  return {
    title: fittedTitle(part.name),
    description: [
      ...rows.map(({ name, times, marks }) =>
        marks.length === 0 ? `${name}: ${times}.` : `${name}: ${times}; ${seenOnCars(marks.length)}.`,
      ),
      ...(car === undefined ? [] : [carBuilt(formatInterval(car))]),
      ...(never.length === 0 ? [] : [fittedNowhere(listed(never.map(({ name }) => name)))]),
    ].join(" "),
    rows,
    ...(car === undefined ? {} : { car }),
    legend: legendOf(rows, car),
  };
}

function legendOf(rows: readonly FittedRow[], car: Interval | undefined): FittedChart["legend"] {
  const stretches = rows.flatMap(({ periods }) => periods);
  const marks = rows.flatMap((row) => row.marks);
  const isUnsure = stretches.some(({ begins, ends }) => isWide(begins) || isWide(ends));
  const shown = (isShown: boolean, sign: FittedChart["legend"][number]["sign"], words: string) =>
    isShown ? [{ sign, words }] : [];
  return [
    ...shown(stretches.length > 0, "fitted", fittedLegend),
    ...shown(isUnsure, "unsure", unsureLegend),
    ...shown(car !== undefined, "car", carLegend),
    ...provenanceGrades.flatMap((grade) =>
      shown(
        marks.some((mark) => mark.grade === grade),
        grade,
        gradeLegend[grade],
      ),
    ),
    ...shown(
      marks.some(({ isSuspect }) => isSuspect),
      "suspect",
      suspectLegend,
    ),
  ];
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

function rowOf(variant: Variant, { changes = [], sightings = [] }: KnownOfPart): readonly FittedRow[] {
  const marks = sightings.filter((one) => one.variant === variant.id);
  const periods = joined(variant.fitted.flatMap((period) => stretchOf(period) ?? []));
  if (periods.length === 0 && marks.length === 0) return [];
  const begun = changes.find((change) => change.new === variant.id)?.interval;
  const ended = changes.find((change) => change.old === variant.id)?.interval;
  const sharpened = periods.map(({ begins, ends }, index) => ({
    begins: index === 0 ? (begun ?? begins) : begins,
    ends: index === periods.length - 1 ? (ended ?? ends) : ends,
  }));
  const times = fittedTimes(variant) ?? originWords(variant.origin);
  return [{ variant: variant.id, name: variant.name, times, periods: sharpened, marks }];
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

function beginningOf({ periods, marks }: FittedRow): number {
  return Math.min(
    ...periods.map(({ begins }) => midpoint(begins)),
    ...marks.map(({ built }) => midpoint(built)),
  );
}

function isWide({ from, to }: Interval): boolean {
  return to > from;
}
