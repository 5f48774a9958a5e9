/** What changed about one variant: its claims, its periods, and what else is said of it. */
import { stateName } from "../handbook/look-up.ts";
import type { Feature, PartKind, Variant } from "../handbook/schema.ts";
import { frequenciesOf, type HandbookChange, measureOf } from "./handbook-change.ts";

/** The changes from `older` to `newer`, features in the part kind's order. `part`: the newer edition's. */
export function variantChanges(part: PartKind, older: Variant, newer: Variant): readonly HandbookChange[] {
  const where = {
    part: { id: part.id, name: part.name },
    variant: { id: newer.id, name: newer.name },
  };
  const claims = part.features.flatMap((feature) => claimChanges(where, feature, older, newer));
  const periods = (["fitted", "sold"] as const).flatMap((which): readonly HandbookChange[] => {
    const [before, after] = [older[which].map(periodText), newer[which].map(periodText)];
    return before.join() === after.join() ? [] : [{ about: "periods", ...where, which, before, after }];
  });
  const [was, is] = [restOf(older), restOf(newer)];
  const words = [
    ...Object.keys(is).filter((key) => JSON.stringify(is[key]) !== JSON.stringify(was[key])),
    ...(areSourcesSame(older, newer) ? [] : ["sources"]),
  ];
  const reworded: readonly HandbookChange[] =
    words.length === 0
      ? []
      : [{ about: "reworded", what: "variant", ...where, thing: where.variant, detail: words.join(", ") }];
  return [...claims, ...periods, ...reworded];
}

type Where = Pick<Extract<HandbookChange, { about: "claim" }>, "part" | "variant">;

function claimChanges(
  where: Where,
  feature: Feature,
  older: Variant,
  newer: Variant,
): readonly HandbookChange[] {
  const [was, is] = [older.tells[feature.id], newer.tells[feature.id]];
  const named = { id: feature.id, name: feature.name };
  const [before, after] = [frequenciesOf(was), frequenciesOf(is)];
  const states = [...new Set([...after.keys(), ...before.keys()])].filter(
    (state) => before.get(state) !== after.get(state),
  );
  const changes = states.map(
    (state): HandbookChange => ({
      about: "claim",
      ...where,
      feature: named,
      state: { id: state, name: stateName(feature, state) },
      before: before.get(state),
      after: after.get(state),
    }),
  );
  const [measured, measures] = [measureOf(was), measureOf(is)];
  if (JSON.stringify(measured) === JSON.stringify(measures)) return changes;
  const unit = feature.kind === "measurement" ? feature.unit : "";
  return [
    { about: "measure", ...where, feature: named, unit, before: measured, after: measures },
    ...changes,
  ];
}

interface Period {
  readonly from: string;
  readonly to: string;
  readonly share?: number;
  readonly models?: readonly string[];
  readonly trims?: readonly string[];
  readonly markets?: readonly string[];
}

/** "1978-04 to 1980-11", with what it is limited to: " (tourer, home; share 0.5)". */
function periodText({ from, to, share = 1, models = [], trims = [], markets = [] }: Period): string {
  const limits = [[...models, ...trims, ...markets].join(", "), share === 1 ? "" : `share ${share}`].filter(
    (limit) => limit !== "",
  );
  return `${from} to ${to}${limits.length === 0 ? "" : ` (${limits.join("; ")})`}`;
}

/** A claim that is new or gone is told as such; of the others each has its own, in whatever order they stand. */
function areSourcesSame(older: Variant, newer: Variant): boolean {
  const isSame = (one: readonly string[], other: readonly string[]) => one.join() === other.join();
  return (
    isSame(older.sources, newer.sources) &&
    Object.entries(newer.tells).every(([feature, { sources }]) =>
      isSame(older.tells[feature]?.sources ?? sources, sources),
    )
  );
}

function restOf(variant: Variant): Readonly<Record<string, unknown>> {
  const { origin, summary, material, mounting, needs, resembles, remarks, drawing } = variant;
  return {
    origin,
    summary,
    material,
    mounting,
    "what it needs": needs,
    "look-alikes": resembles,
    remarks,
    drawing,
    "other words": variant.also,
    "how sure its dates are": variant.fitted.map(({ start, end, sources }) => [start, end, sources]),
  };
}
