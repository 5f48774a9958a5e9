/**
 * The columns of a part kind's table: the variant, then for each feature one column a state (or mean and spread) and one for the
 * sources. A head names its column by ids, "inside-finish: rough", so that a renamed state does not lose its column.
 */
import { notThere } from "../evidence/report.ts";
import { nearestName } from "../handbook/nearest-name.ts";
import type { Feature, PartKind } from "../handbook/schema.ts";

export const variantHead = "variant";
/** Columns about the variant itself; of a variant that is known they only say which row is which. */
export const variantKeys = ["name", "origin", "from", "to", "summary"] as const;
export type VariantKey = (typeof variantKeys)[number];

export type Column =
  | { readonly kind: "variant" }
  | { readonly kind: "about"; readonly key: VariantKey }
  | { readonly kind: "state"; readonly feature: Feature; readonly state: string }
  | { readonly kind: "mean" | "spread" | "sources" | "whole"; readonly feature: Feature };

/** The columns a table of this part kind is written with. */
export function columnsOf(part: PartKind): readonly Column[] {
  return [
    { kind: "variant" },
    { kind: "about", key: "name" },
    { kind: "about", key: "origin" },
    ...part.features.flatMap((feature) => featureColumns(part, feature)),
  ];
}

function featureColumns(part: PartKind, feature: Feature): readonly Column[] {
  const states = feature.kind === "states" ? feature.states.map(({ id }) => id) : [];
  const isLacked = part.variants.some(({ tells }) => Object.hasOwn(tells[feature.id] ?? {}, notThere));
  const lacking = isLacked || feature.kind === "date" ? [notThere] : [];
  return [
    ...(feature.kind === "measurement"
      ? [{ kind: "mean", feature } as const, { kind: "spread", feature } as const]
      : []),
    ...[...states, ...lacking].map((state) => ({ kind: "state", feature, state }) as const),
    { kind: "sources", feature },
  ];
}

/** The head of a column. */
export function headOf(column: Column): string {
  switch (column.kind) {
    case "variant":
      return variantHead;
    case "about":
      return column.key;
    case "state":
      return `${column.feature.id}: ${column.state}`;
    case "whole":
      return column.feature.id;
    case "mean":
    case "spread":
    case "sources":
      return `${column.feature.id}: ${column.kind}`;
  }
}

/** The line under the head, for people: names, and the unit of a measure. */
export function nameLine(part: PartKind, column: Column): string {
  switch (column.kind) {
    case "variant":
      return `${noteMark} ${part.id}`;
    case "about":
      return column.key;
    case "state":
      return stateLabel(column.feature, column.state);
    case "mean":
      return `${column.feature.name}${column.feature.kind === "measurement" ? `, ${column.feature.unit}` : ""}`;
    case "spread":
      return "± one standard deviation";
    case "sources":
    case "whole":
      return column.kind;
  }
}

/** A row whose first cell begins so is a note and says nothing; the first one carries the part kind's id. */
export const noteMark = "#";

function stateLabel(feature: Feature, state: string): string {
  const named = feature.kind === "states" ? feature.states.find(({ id }) => id === state)?.name : undefined;
  return `${feature.name}: ${named ?? (state === notThere ? (feature.none ?? "not there") : state)}`;
}

export type ReadHead = { readonly column: Column } | { readonly message: string; readonly mend: string };

/** The column that a head means, by ids or by names in any case; or why none, and what it may have meant. */
export function readHead(part: PartKind, head: string): ReadHead {
  const plain = folded(head);
  if (plain === variantHead || plain === "id") return { column: { kind: "variant" } };
  const key = variantKeys.find((one) => one === plain);
  if (key !== undefined) return { column: { kind: "about", key } };
  const [first = "", ...others] = head.split(/[:/]/u);
  const feature = part.features.find((one) => isCalled(one, first));
  if (feature === undefined) {
    const names = part.features.map(({ id }) => id);
    const near = nearestName(first, [...names, variantHead, ...variantKeys]);
    const mend =
      near === undefined
        ? `head it with a feature, such as ${names[0] ?? ""}, or leave it out`
        : `did you mean "${[near, ...others].join(":")}"?`;
    return { message: "no such feature", mend };
  }
  if (others.length === 0) return { column: { kind: "whole", feature } };
  return columnOfFeature(feature, others.join(":"));
}

function columnOfFeature(feature: Feature, rest: string): ReadHead {
  const word = folded(rest).replace(/\s*\(.*\)$/u, "");
  if (word === "sources" || word === "source") return { column: { kind: "sources", feature } };
  const isMeasured = feature.kind === "measurement";
  if (isMeasured && (word === "mean" || word === "spread")) return { column: { kind: word, feature } };
  const states = feature.kind === "states" ? feature.states : [];
  const state = states.find((one) => isCalled(one, rest));
  if (state !== undefined) return { column: { kind: "state", feature, state: state.id } };
  if (word === notThere || word === "not there" || word === folded(feature.none ?? notThere)) {
    return { column: { kind: "state", feature, state: notThere } };
  }
  const known = [...(isMeasured ? ["mean", "spread"] : states.map(({ id }) => id)), notThere, "sources"];
  const near = nearestName(word, known);
  return {
    message: `${feature.id} has no ${isMeasured ? "such column" : `state "${rest.trim()}"`}`,
    mend: near === undefined ? `known: ${known.join(", ")}` : `did you mean "${feature.id}: ${near}"?`,
  };
}

export function isCalled(named: { readonly id: string; readonly name: string }, written: string): boolean {
  const word = folded(written);
  return folded(named.id) === word || folded(named.name) === word;
}

export function folded(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/gu, " ")
    .replaceAll("- ", "-");
}

export function featureOf(column: Column | undefined): Feature | undefined {
  return column !== undefined && "feature" in column ? column.feature : undefined;
}
