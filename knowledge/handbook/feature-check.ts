/** The features of a part kind against one another: states, conditions, misreadings, chains of date marks, groups. */
import { notThere } from "../evidence/report.ts";
import { circles } from "./chain-check.ts";
import { type CheckSheet, checkKnown, checkUnique, fault, warn } from "./check-sheet.ts";
import type { ClaimRule } from "./claim-check.ts";
import type { DateFeature, Feature, PartKind, StateFeature } from "./schema.ts";
import type { Path } from "./yaml-reading.ts";

/** Ids with a meaning of their own where states are named. */
const RESERVED_STATES = new Set([notThere, "cannot-tell", "sources", "drawing", "mean", "spread"]);
/** A state that is misread more often than this is no state one can report. */
const MOST_MISREAD = 0.9;

type Rules = ReadonlyMap<string, ClaimRule>;

/** Checks every feature and every group of a part kind. */
export function checkFeatures(sheet: CheckSheet, part: PartKind, rules: Rules): void {
  const known = checkUnique(sheet, "feature", part.features, ["features"]);
  for (const [index, feature] of part.features.entries()) {
    const path = ["features", index];
    checkConditions(sheet, feature, rules, known, path);
    if (feature.kind === "states") checkStates(sheet, feature, rules, path);
  }
  checkDateChains(sheet, part.features);
  checkConditionCircles(sheet, part.features);
  checkGroups(sheet, part, known);
}

function checkStates(sheet: CheckSheet, feature: StateFeature, rules: Rules, path: Path): void {
  checkUnique(sheet, "state", feature.states, [...path, "states"]);
  for (const [index, { id }] of feature.states.entries()) {
    if (!RESERVED_STATES.has(id)) continue;
    const message = `"${id}" cannot be the id of a state: it has a meaning of its own`;
    const place = [...path, "states", index, "id"];
    fault(sheet, { code: "id-reserved", path: place, message, mend: "choose another id" });
  }
  const states = rules.get(feature.id)?.states;
  if (typeof feature.misread === "number") return;
  const totals = new Map<string, number>();
  for (const [index, confusion] of feature.misread.entries()) {
    const place = [...path, "misread", index];
    checkKnown(sheet, `state of ${feature.id}`, confusion.is, states, [...place, "is"]);
    checkKnown(sheet, `state of ${feature.id}`, confusion.said, states, [...place, "said"]);
    if (confusion.is === confusion.said)
      noteItself(sheet, "a state is misread as itself", [...place, "said"]);
    const total = (totals.get(confusion.is) ?? 0) + confusion.rate;
    totals.set(confusion.is, total);
    if (total > MOST_MISREAD) noteMisreadSum(sheet, confusion.is, [...place, "rate"]);
  }
}

function noteMisreadSum(sheet: CheckSheet, state: string, path: Path): void {
  const message = `"${state}" would be misread more often than ${MOST_MISREAD * 100} %`;
  fault(sheet, { code: "misread-sum", path, message, mend: "lower the rates" });
}

function noteItself(sheet: CheckSheet, message: string, path: Path): void {
  fault(sheet, { code: "id-itself", path, message, mend: "name another, or delete this" });
}

function checkConditions(
  sheet: CheckSheet,
  feature: Feature,
  rules: Rules,
  known: ReadonlySet<string>,
  path: Path,
): void {
  for (const [named, states] of Object.entries(feature.when)) {
    const place = [...path, "when", named];
    if (!checkKnown(sheet, "feature", named, known, place)) continue;
    if (named === feature.id) noteItself(sheet, "a feature cannot be its own condition", place);
    const rule = rules.get(named);
    for (const [index, state] of states.entries()) {
      checkKnown(sheet, `state of ${named}`, state, rule?.states, [...place, index]);
    }
  }
}

function checkConditionCircles(sheet: CheckSheet, features: readonly Feature[]): void {
  const conditions = new Map(features.map((feature) => [feature.id, Object.keys(feature.when)]));
  const rings = circles([...conditions.keys()], (id) => conditions.get(id) ?? []);
  for (const ring of rings) if (ring.length > 1) noteCircle(sheet, features, ring, "when");
}

function checkDateChains(sheet: CheckSheet, features: readonly Feature[]): void {
  const dates = new Map(
    features
      .filter((feature): feature is DateFeature => feature.kind === "date")
      .map((feature) => [feature.id, feature]),
  );
  const known = new Set(dates.keys());
  const predecessor = new Map<string, string>();
  for (const [index, feature] of features.entries()) {
    if (feature.kind !== "date" || feature.before === undefined) continue;
    const path = ["features", index, "before"];
    if (!checkKnown(sheet, "date feature", feature.before, known, path)) continue;
    const other = predecessor.get(feature.before);
    if (other !== undefined) noteFork(sheet, feature.before, other, path);
    predecessor.set(feature.before, feature.id);
  }
  const next = (id: string): readonly string[] => {
    const before = dates.get(id)?.before;
    return before === undefined ? [] : [before];
  };
  for (const ring of circles([...known], next)) noteCircle(sheet, features, ring, "before");
}

function noteFork(sheet: CheckSheet, before: string, other: string, path: Path): void {
  const message = `${before} is already preceded by ${other}`;
  const mend = "date marks form one chain: let each come before one other";
  warn(sheet, { code: "chain-fork", path, message, mend });
}

function noteCircle(
  sheet: CheckSheet,
  features: readonly Feature[],
  ring: readonly string[],
  key: "when" | "before",
): void {
  const index = features.findIndex(({ id }) => id === ring[0]);
  const message = `${[...ring, ring[0]].join(" → ")} goes round in a circle`;
  const mend = `remove one "${key}"`;
  fault(sheet, { code: "chain-cycle", path: ["features", index, key], at: "key", message, mend });
}

function checkGroups(sheet: CheckSheet, part: PartKind, known: ReadonlySet<string>): void {
  checkUnique(sheet, "group", part.groups, ["groups"]);
  const groupOf = new Map<string, string>();
  for (const [index, group] of part.groups.entries()) {
    for (const [position, feature] of group.features.entries()) {
      const path = ["groups", index, "features", position];
      checkKnown(sheet, "feature", feature, known, path);
      const other = groupOf.get(feature);
      if (other !== undefined) noteInTwoGroups(sheet, feature, other, path);
      groupOf.set(feature, group.id);
    }
  }
}

function noteInTwoGroups(sheet: CheckSheet, feature: string, other: string, path: Path): void {
  const message = `${feature} is already in the group ${other}`;
  fault(sheet, { code: "feature-in-two-groups", path, message, mend: "keep it in one group" });
}
