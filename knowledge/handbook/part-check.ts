/** One part kind as a whole: its features, variants, causes, mountings and misbeliefs against one another. */
import { type CheckSheet, checkAllKnown, checkKnown, checkUnique, fault, warn } from "./check-sheet.ts";
import { type ClaimRule, checkRow, checkSum, claimRules } from "./claim-check.ts";
import { checkFeatures } from "./feature-check.ts";
import type { Cause, PartKind } from "./schema.ts";
import { checkVariants, type Surroundings } from "./variant-check.ts";
import type { Path } from "./yaml-reading.ts";

/** Checks a part kind; sources and drawings are checked over the whole file by the caller. */
export function checkPart(sheet: CheckSheet, part: PartKind, around: Surroundings): void {
  const rules = claimRules(part.features);
  checkFeatures(sheet, part, rules);
  checkVariants(sheet, part, rules, around);
  checkCauses(sheet, part, rules);
  checkMountings(sheet, part);
  checkUnique(sheet, "misbelief", part.misbeliefs, ["misbeliefs"]);
  if (sheet.file === `parts/${part.id}.yaml`) return;
  const message = `the file is not named after its part kind, ${part.id}`;
  warn(sheet, { code: "file-name", path: ["id"], message, mend: `rename it to parts/${part.id}.yaml` });
}

function checkCauses(sheet: CheckSheet, part: PartKind, rules: ReadonlyMap<string, ClaimRule>): void {
  checkUnique(sheet, "cause", part.causes, ["causes"]);
  const variants = new Set(part.variants.map(({ id }) => id));
  for (const [index, cause] of part.causes.entries()) {
    const path = ["causes", index];
    const states = checkUniqueNames(sheet, cause, path);
    for (const [variant, row] of Object.entries(cause.variants)) {
      const place = [...path, "variants", variant];
      checkKnown(sheet, "variant", variant, variants, place);
      checkCauseStates(sheet, cause, Object.keys(row), states, place);
      checkSum(sheet, row, place);
    }
    checkCauseFeatures(sheet, cause, rules, states, path);
  }
}

function checkUniqueNames(sheet: CheckSheet, cause: Cause, path: Path): ReadonlySet<string> {
  const states = new Set(cause.states);
  for (const [index, state] of cause.states.entries()) {
    const first = cause.states.indexOf(state);
    if (first === index) continue;
    const line = sheet.placeOf([...path, "states", first]).line;
    fault(sheet, {
      code: "id-twice",
      path: [...path, "states", index],
      message: `two states of the cause have the id "${state}"`,
      mend: `the first stands in line ${line}: rename one of them`,
    });
  }
  return states;
}

function checkCauseStates(
  sheet: CheckSheet,
  cause: Cause,
  named: readonly string[],
  states: ReadonlySet<string>,
  path: Path,
): void {
  for (const state of named)
    checkKnown(sheet, `state of the cause ${cause.id}`, state, states, [...path, state]);
}

function checkCauseFeatures(
  sheet: CheckSheet,
  cause: Cause,
  rules: ReadonlyMap<string, ClaimRule>,
  states: ReadonlySet<string>,
  path: Path,
): void {
  const known = new Set(rules.keys());
  for (const [feature, rows] of Object.entries(cause.features)) {
    const place = [...path, "features", feature];
    const rule = rules.get(feature);
    if (!checkKnown(sheet, "feature", feature, known, place) || rule === undefined) continue;
    if (rule.feature.kind !== "states") {
      const message = `${feature} has no states: a cause can speak about features of the kind "states" alone`;
      fault(sheet, { code: "claim-kind", path: place, at: "key", message, mend: "remove it from the cause" });
      continue;
    }
    checkCauseStates(sheet, cause, Object.keys(rows), states, place);
    for (const [state, row] of Object.entries(rows)) checkRow(sheet, rule, row, [...place, state]);
  }
}

function checkMountings(sheet: CheckSheet, part: PartKind): void {
  const mountings = checkUnique(sheet, "mounting", part.mountings, ["mountings"]);
  for (const [index, fit] of part.fits.entries()) {
    checkAllKnown(sheet, "mounting", [fit.part], mountings, ["fits", index, "part"]);
    checkAllKnown(sheet, "mounting", [fit.car], mountings, ["fits", index, "car"]);
    const first = part.fits.findIndex((other) => other.part === fit.part && other.car === fit.car);
    if (first === index) continue;
    fault(sheet, {
      code: "id-twice",
      path: ["fits", index],
      message: `the fit of ${fit.part} on ${fit.car} is given twice`,
      mend: `the first stands in line ${sheet.placeOf(["fits", first]).line}: keep one`,
    });
  }
}
