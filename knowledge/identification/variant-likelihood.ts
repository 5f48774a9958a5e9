/** What one fact says of each variant, whatever way it came to the car. Date marks depend on the way: see date-evidence.ts. */
import { notThere, type Report } from "../evidence/report.ts";
import type { CauseTable } from "./cause-table.ts";
import { givenCause, isNamedByCause } from "./cause-table.ts";
import type { CompiledPart } from "./compiled-part.ts";
import type { Fact } from "./facts.ts";
import type { VariantLikelihood } from "./likelihood.ts";
import { type Reading, readingOf } from "./measurement-likelihood.ts";
import { overMeans } from "./measurement-table.ts";
import { reportsByState } from "./state-reports.ts";
import { overFlat, overRows, type StateTable, there } from "./state-table.ts";

/** A state table under a likelihood per state, variant by variant. */
export function overVariants(table: StateTable, byState: Float64Array): VariantLikelihood {
  const rows = overRows(table, byState);
  const byVariant = new Float64Array(table.rowOf.length);
  for (let variant = 0; variant < byVariant.length; variant += 1) {
    byVariant[variant] = rows[table.rowOf[variant] as number] as number;
  }
  return { byVariant, flat: overFlat(table, byState) };
}

/** P(a state, measurement or presence fact | variant); undefined when the fact says nothing of the variants. */
export function variantLikelihood(compiled: CompiledPart, fact: Fact): VariantLikelihood | undefined {
  const states = compiled.states.get(fact.feature);
  if (states) return overVariants(states, reportsByState(states.channel, fact.reports));
  const presence = presenceLikelihood(compiled, fact);
  const table = compiled.measurements.get(fact.feature);
  if (!table) return presence;
  const measured = overMeans(table, readingsOf(compiled, fact));
  if (!presence) return measured;
  return {
    byVariant: measured.byVariant.map((chance, variant) => chance * (presence.byVariant[variant] as number)),
    flat: measured.flat * presence.flat,
  };
}

/** The readings of a measurement fact, one per person who measured. */
export function readingsOf(compiled: CompiledPart, fact: Fact): readonly Reading[] {
  const feature = compiled.features.get(fact.feature);
  const range = compiled.measurements.get(fact.feature)?.range;
  if (feature?.kind !== "measurement" || !range) return [];
  return fact.reports.flatMap((report) => readingOf(report, feature, range) ?? []);
}

/** Whoever measures a feature or reads its mark has seen that it is there. */
export function presenceLikelihood(compiled: CompiledPart, fact: Fact): VariantLikelihood | undefined {
  const table = compiled.presence.get(fact.feature);
  if (!table) return undefined;
  const seen = fact.reports.map((report): Report => {
    const state = report.value.kind === "state" ? notThere : there;
    return { ...report, value: { kind: "state", state } };
  });
  return overVariants(table, reportsByState(table.channel, seen));
}

function allReports(table: StateTable, fact: Fact): Float64Array {
  return reportsByState(table.channel, fact.reports);
}

/** P(all facts governed by a cause | variant): Σ_z θ_z Π_i Σ_s θ_s|z,i · P(report_i | s). */
export function causeLikelihood(
  compiled: CompiledPart,
  cause: CauseTable,
  facts: readonly Fact[],
  byStateOf: (table: StateTable, fact: Fact) => Float64Array = allReports,
): VariantLikelihood {
  const size = compiled.part.variants.length;
  const given = new Float64Array(cause.stateCount).fill(1);
  const alone = new Float64Array(size).fill(1);
  let flat = 1;
  for (const fact of facts) {
    const table = compiled.states.get(fact.feature);
    if (!table) continue;
    const byState = byStateOf(table, fact);
    const byCause = givenCause(cause, fact.feature, byState);
    byCause.forEach((chance, z) => {
      given[z] = (given[z] as number) * chance;
    });
    const own = overVariants(table, byState);
    own.byVariant.forEach((chance, variant) => {
      alone[variant] = (alone[variant] as number) * chance;
    });
    flat *= own.flat;
  }
  const byVariant = alone.map((chance, variant) => {
    if (!isNamedByCause(cause, variant)) return chance;
    return given.reduce(
      (sum, product, z) => sum + (cause.shares[variant * cause.stateCount + z] as number) * product,
      0,
    );
  });
  return { byVariant, flat };
}
