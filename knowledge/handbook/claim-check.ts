/** Claims against their features: of the right kind, about states that exist, with shares that can be true together. */
import { notThere } from "../evidence/report.ts";
import { type CheckSheet, checkKnown, fault, warn } from "./check-sheet.ts";
import { parseFrequency } from "./frequency.ts";
import type { Claim, Feature } from "./schema.ts";
import type { Path } from "./yaml-reading.ts";

/** Means are rounded words, so a row may pass 1 a little; from here it is worth a look, and from there it is wrong. */
const ROW_WARNING = 1.25;
const ROW_FAULT = 1.5;

/** What a claim is checked against, worked out once a feature. */
export interface ClaimRule {
  readonly feature: Feature;
  readonly states: ReadonlySet<string>;
}

/** The rules of a part kind's features by id. */
export function claimRules(features: readonly Feature[]): ReadonlyMap<string, ClaimRule> {
  return new Map(
    features.map((feature) => {
      const states = feature.kind === "states" ? feature.states.map(({ id }) => id) : [];
      return [feature.id, { feature, states: new Set([...states, notThere]) }];
    }),
  );
}

/** Checks one claim of a variant; its sources are checked elsewhere. */
export function checkClaim(sheet: CheckSheet, rule: ClaimRule, claim: Claim, path: Path): void {
  const { feature } = rule;
  if (isMeasured(claim)) {
    if (feature.kind !== "measurement") wrongKind(sheet, path, feature);
    return;
  }
  const { sources: _, ...row } = claim;
  const states = Object.keys(row);
  if (states.length === 0) {
    const message = `the claim about ${feature.id} says nothing`;
    fault(sheet, {
      code: "claim-empty",
      path,
      at: "key",
      message,
      mend: "name a state and how often it is seen",
    });
    return;
  }
  if (feature.kind !== "states" && states.some((state) => state !== notThere)) {
    wrongKind(sheet, path, feature);
    return;
  }
  checkRow(sheet, rule, row, path);
}

function isMeasured(claim: Claim): claim is Extract<Claim, { mean: number }> {
  return typeof claim.mean === "number";
}

function wrongKind(sheet: CheckSheet, path: Path, feature: Feature): void {
  const wanted = {
    states: "its states with frequencies, such as { rough: usually }",
    measurement: "its mean and spread, such as { mean: 12.5, spread: 0.3 }",
    date: "nothing but not-there: what the mark reads follows from the periods",
  }[feature.kind];
  const message = `this claim does not suit ${feature.id}, a feature of the kind "${feature.kind}"`;
  const mend =
    feature.kind === "measurement" ? `write ${wanted}, or not-there with a frequency` : `write ${wanted}`;
  fault(sheet, { code: "claim-kind", path, at: "key", message, mend });
}

/** Checks the states of a row of frequencies and that their shares do not add up to far more than the whole. */
export function checkRow(
  sheet: CheckSheet,
  rule: ClaimRule,
  row: Readonly<Record<string, unknown>>,
  path: Path,
): void {
  for (const state of Object.keys(row)) {
    if (rule.states.has(state)) continue;
    checkKnown(sheet, `state of ${rule.feature.id}`, state, rule.states, [...path, state]);
  }
  checkSum(sheet, row, path);
}

/** Checks that the shares of a row do not add up to far more than the whole. */
export function checkSum(sheet: CheckSheet, row: Readonly<Record<string, unknown>>, path: Path): void {
  let sum = 0;
  for (const said of Object.values(row)) sum += typeof said === "string" ? shareOf(said) : 0;
  if (sum <= ROW_WARNING) return;
  const finding = {
    code: "claim-sum",
    path,
    at: "key",
    message: `these frequencies add up to about ${Math.round(sum * 100)} %`,
    mend: "they are shares of the same parts: make the rarer ones sometimes, rarely or never",
  } as const;
  if (sum > ROW_FAULT) fault(sheet, finding);
  else warn(sheet, finding);
}

function shareOf(text: string): number {
  const frequency = parseFrequency(text);
  if (frequency?.word) return frequency.word.mean;
  return frequency?.count ? frequency.count.seen / frequency.count.of : 0;
}
