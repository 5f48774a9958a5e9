/**
 * What each variant is expected to answer to a question about one feature, compiled once per edition: the table
 * behind the choice of the next question. Variants that would answer alike share a row.
 */
import { notThere, type ReportValue } from "../evidence/report.ts";
import type { Feature, MeasurementFeature, StateFeature } from "../handbook/schema.ts";
import { chancesOfBins, sizeBins, valueOfBin } from "./answer-bins.ts";
import { KIN_LIKENESS } from "./likelihood.ts";
import type { MeasurementTable } from "./measurement-table.ts";
import type { StateTable } from "./state-table.ts";

/** One answer that may be pressed, and what it reports. */
export interface PlannedAnswer {
  readonly id: string;
  readonly label: string;
  readonly value: ReportValue;
}

export interface AnswerRows {
  readonly answers: readonly PlannedAnswer[];
  /** P(answer | variant), row-major, distinct rows × answers. */
  readonly rows: Float64Array;
  /** P(answer | kin of the variant), for the same rows. */
  readonly kinRows: Float64Array;
  /** The row of each variant. */
  readonly rowOf: Int32Array;
  readonly rowCount: number;
  /** P(answer | nothing known). */
  readonly flat: Float64Array;
}

/** Rows of a state feature: P(said | variant) = Σ_s θ_s · M[s][said], the answer being a firm one. */
export function stateAnswers(feature: StateFeature, table: StateTable): AnswerRows {
  const { states, chances } = table.channel;
  const width = states.length;
  const through = (source: Float64Array, offset: number): Float64Array => {
    const said = new Float64Array(width);
    for (let is = 0; is < width; is += 1) {
      for (let column = 0; column < width; column += 1) {
        said[column] =
          (said[column] as number) +
          (source[offset + is] as number) * (chances[is * width + column] as number);
      }
    }
    return said;
  };
  const rows = new Float64Array(table.rowCount * width);
  for (let row = 0; row < table.rowCount; row += 1) rows.set(through(table.rows, row * width), row * width);
  const answers = states.map((state): PlannedAnswer => {
    const named = feature.states.find(({ id }) => id === state);
    const label = named?.name ?? noneLabel(feature);
    return { id: state, label, value: { kind: "state", state } };
  });
  const flat = through(table.flat, 0);
  return {
    answers,
    rows,
    kinRows: kinsOf(rows, flat),
    rowOf: table.rowOf,
    rowCount: table.rowCount,
    flat,
  };
}

/** A kin answers as its variant or, less often, as anything. */
function kinsOf(rows: Float64Array, flat: Float64Array): Float64Array {
  return rows.map(
    (chance, index) => KIN_LIKENESS * chance + (1 - KIN_LIKENESS) * (flat[index % flat.length] as number),
  );
}

/** What the answer "there is none" is called. */
export function noneLabel(feature: Feature): string {
  return feature.none ?? `it has no ${feature.name}`;
}

/** Rows of a measured feature over its size bins; undefined when the variants' sizes do not differ. */
export function sizeAnswers(
  feature: MeasurementFeature,
  table: MeasurementTable,
  presence: StateTable | undefined,
): AnswerRows | undefined {
  const bins = sizeBins(feature, table);
  const { range } = table;
  if (!range || bins.length < 2) return undefined;
  const { byVariant, flat } = chancesOfBins(bins, feature, table, range);
  const answers = bins.map(
    (bin): PlannedAnswer => ({ id: bin.id, label: bin.label, value: valueOfBin(bin, feature) }),
  );
  return withPresence(feature, { answers, byVariant, flat }, presence);
}

interface PlainRows {
  readonly answers: readonly PlannedAnswer[];
  readonly byVariant: readonly Float64Array[];
  readonly flat: Float64Array;
}

/** Adds the answer "there is none" when a variant may lack the feature. */
function withPresence(feature: Feature, plain: PlainRows, presence: StateTable | undefined): AnswerRows {
  if (!presence) return rowPerVariant(plain.answers, plain.byVariant, plain.flat);
  const seen = presenceAnswers(presence);
  const extend = (row: Float64Array, isThere: number): Float64Array =>
    Float64Array.from([...row.map((chance) => chance * isThere), 1 - isThere]);
  const none: PlannedAnswer = {
    id: notThere,
    label: noneLabel(feature),
    value: { kind: "state", state: notThere },
  };
  return rowPerVariant(
    [...plain.answers, none],
    plain.byVariant.map((row, variant) => extend(row, seen.byVariant[variant] as number)),
    extend(plain.flat, seen.flat),
  );
}

/** P(reported as there | variant), and flat. */
export function presenceAnswers(presence: StateTable): {
  readonly byVariant: Float64Array;
  readonly flat: number;
} {
  const [isThere = 1, isNot = 0] = [presence.channel.chances[0], presence.channel.chances[2]];
  const said = (rows: Float64Array, row: number): number =>
    (rows[row * 2] as number) * isThere + (rows[row * 2 + 1] as number) * isNot;
  return {
    byVariant: Float64Array.from(presence.rowOf, (row) => said(presence.rows, row)),
    flat: said(presence.flat, 0),
  };
}

/** One row per variant: sizes are seldom alike, and comparing rows would cost more than it saves. */
function rowPerVariant(
  answers: readonly PlannedAnswer[],
  byVariant: readonly Float64Array[],
  flat: Float64Array,
): AnswerRows {
  const width = answers.length;
  const rows = new Float64Array(byVariant.length * width);
  byVariant.forEach((row, variant) => {
    rows.set(row, variant * width);
  });
  const rowOf = Int32Array.from(byVariant.keys());
  return { answers, rows, kinRows: kinsOf(rows, flat), rowOf, rowCount: byVariant.length, flat };
}
