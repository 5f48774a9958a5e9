/** A date mark as a question with answers: half years or years, and what each hypothesis is expected to show. */
import { formatInterval } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import { notThere } from "../evidence/report.ts";
import { noneLabel, type PlannedAnswer, presenceAnswers } from "./answer-rows.ts";
import type { Belief } from "./belief.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { dateLikelihood, marksRead } from "./date-likelihood.ts";
import { type MarkReading, markReading } from "./date-marks.ts";
import { KIN_LIKENESS } from "./likelihood.ts";

/** Production is cut into half years when it lasted no longer than this, else into whole years (months). */
const HALF_YEARS_UP_TO = 48;
/** And into steps of several years when there would be more stretches than this. */
const MOST_STRETCHES = 12;

/** The answers to a date question, in order of time. */
export function dateAnswersOf(compiled: CompiledPart, feature: string): readonly PlannedAnswer[] {
  const answers = stretches(compiled).map((interval): PlannedAnswer => {
    const label = labelOf(interval, compiled.markEra);
    return { id: idOf(interval), label, value: { kind: "date", readings: [{ interval, weight: 1 }] } };
  });
  const named = compiled.features.get(feature);
  if (!named || !compiled.presence.has(feature)) return answers;
  const none: PlannedAnswer = {
    id: notThere,
    label: noneLabel(named),
    value: { kind: "state", state: notThere },
  };
  return [...answers, none];
}

function stretches(compiled: CompiledPart): readonly Interval[] {
  const { markEra: era, productionSpan: production } = compiled;
  const length = production.to - production.from;
  const years = Math.ceil(length / 12 / MOST_STRETCHES);
  const step = length <= HALF_YEARS_UP_TO ? 6 : 12 * years;
  const first = Math.floor(production.from / 12) * 12;
  const cuts: number[] = [era.from];
  for (let cut = first; cut < production.to; cut += step) cuts.push(cut);
  cuts.push(Math.ceil(production.to / 12) * 12, laterSales(compiled), era.to);
  const rising = [...new Set(cuts)].filter((cut) => cut <= era.to).sort((one, other) => one - other);
  return rising.slice(1).map((to, index) => ({ from: rising[index] as number, to }));
}

/** The first year in which reproductions and other makers' parts came on sale after production. */
function laterSales({ part, sales, productionSpan }: CompiledPart): number {
  const starts = part.variants.flatMap(({ origin }, variant) =>
    origin === "reproduction" || origin === "other-maker"
      ? (sales[variant] ?? []).map(({ from }) => from)
      : [],
  );
  const later = starts.filter((start) => start > productionSpan.to);
  return later.length > 0 ? Math.floor(Math.min(...later) / 12) * 12 : productionSpan.to;
}

function idOf({ from, to }: Interval): string {
  const text = (instant: number): string =>
    `${Math.floor(instant / 12)}-${String(Math.floor(instant % 12) + 1).padStart(2, "0")}`;
  return `${text(from)}..${text(to - 1)}`;
}

function labelOf(interval: Interval, era: Interval): string {
  if (interval.from === era.from) return formatInterval({ from: -Infinity, to: interval.to });
  if (interval.to === era.to) return formatInterval({ from: interval.from, to: Infinity });
  return formatInterval(interval);
}

/**
 * P(answer | h, the marks already read), row-major, hypotheses × answers. Computed once a car while no other mark of
 * the part has been read; cost: answers × variants × build instants.
 */
export function dateRows(belief: Belief, feature: string, answers: readonly PlannedAnswer[]): Float64Array {
  const { compiled, ground } = belief;
  const readings = new Map<string, MarkReading>();
  for (const fact of belief.facts) {
    const reading = compiled.dates.has(fact.feature) && markReading(fact.reports, compiled.markEra);
    if (reading) readings.set(fact.feature, reading);
  }
  const kept = readings.size === 0 ? ground.questionRows.get(feature) : undefined;
  if (kept) return kept;
  const rows = withPresence(
    compiled,
    feature,
    answers.length,
    stretchRows(belief, feature, answers, readings),
  );
  if (readings.size === 0) ground.questionRows.set(feature, rows);
  return rows;
}

/** The stretches alone, row-major with `answers.length` columns; a column for "not there" stays 0. */
function stretchRows(
  { compiled, ground }: Belief,
  feature: string,
  answers: readonly PlannedAnswer[],
  readings: ReadonlyMap<string, MarkReading>,
): Float64Array {
  const width = answers.length;
  const rows = new Float64Array(compiled.space.size * width);
  answers.forEach(({ value }, column) => {
    const said = { feature, by: "", certainty: 1, words: "", value };
    const reading = markReading([said], compiled.markEra);
    if (!reading) return;
    const marks = marksRead(compiled, new Map([...readings, [feature, reading]]));
    if (!marks) return;
    const likelihood = dateLikelihood(compiled, ground, marks);
    likelihood.forEach((chance, h) => {
      rows[h * width + column] = chance;
    });
  });
  for (let start = 0; start < rows.length; start += width) {
    let total = 0;
    for (let column = 0; column < width; column += 1) total += rows[start + column] as number;
    for (let column = 0; column < width; column += 1)
      rows[start + column] = (rows[start + column] as number) / total;
  }
  return rows;
}

function withPresence(
  compiled: CompiledPart,
  feature: string,
  width: number,
  rows: Float64Array,
): Float64Array {
  const presence = compiled.presence.get(feature);
  if (!presence) return rows;
  const seen = presenceAnswers(presence);
  const { space } = compiled;
  for (let h = 0; h < space.size; h += 1) {
    const variant = space.variants[h] as number;
    const own = variant < 0 ? seen.flat : (seen.byVariant[variant] as number);
    const isThere = h < space.inHandbook ? own : KIN_LIKENESS * own + (1 - KIN_LIKENESS) * seen.flat;
    const row = rows.subarray(h * width, (h + 1) * width);
    for (let column = 0; column < width; column += 1) row[column] = (row[column] as number) * isThere;
    row[width - 1] = 1 - isThere;
  }
  return rows;
}
